### Ein Pflegeblatt für ein gespeichertes Terrarium, zum Weitergeben.

mine-sheet-title = Pflegeblatt: „{ $name }“
mine-sheet-over = { mine-sheet-title }
mine-sheet-no-animal = Ich weiß nicht, wer darin wohnt.
mine-sheet-do-animal = Speichere das Tier und frag noch mal.
mine-sheet-step-animal = Speichere, wer darin wohnt: mine save name:{ $name } animal:bearded dragon
# Only with: $since
mine-sheet-since = UV-Lampe in Betrieb seit { DAY($since) }.
# Only with: $read_on
mine-sheet-read-on = Zuletzt gemessen: { DAY($read_on) }.
mine-sheet-unread = Noch nichts gemessen.
mine-sheet-do = Gib das Bild weiter.
mine-sheet-step-hand = Zeig es vor dem Terrarium der Person, die das Tier versorgt: Platz für Platz, mit dem Thermometer in der Hand.
mine-sheet-step-measure = Schreib jeden Messwert auf, dann steht er auf dem nächsten Blatt: mine reading name:{ $name } cool:26C
