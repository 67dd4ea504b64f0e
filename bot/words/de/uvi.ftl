### Welcher UV-Index in einem Abstand zu erwarten ist

uvi-title = UV-Index bei { LENGTH($at) }

## Die Antwort in Kürze
uvi-head = Erwarte UV-Index { UVI($here, form: "doubt") }.
uvi-there = { LENGTH($at) }: { $judged }, Ziel { UVI($wanted, form: "range") }.
# Only with: $longest
uvi-if-long = Eine lange Röhre gibt { UVI($longest) }: zu viel.
uvi-only-meter = Sicher zeigt es nur ein Messgerät.
uvi-head-too-near = Zu nah für jede Röhre: mach sie aus.
# Only with: $away
uvi-do-away = Häng sie { LENGTH($away) } über den Rücken.
uvi-do-distance = Frag distance, was stattdessen geht.
uvi-do-length = Miss die Röhre, frag noch einmal.
uvi-do-meter = Ziel am UV-Messgerät: { UVI($wanted, form: "range") }.

## Warum
uvi-why-longest = Eine lange Röhre gibt mehr UV als eine kurze, und die Länge hast du nicht genannt.
uvi-why-meter = Es kann so weit danebenliegen, dass nur ein UV-Messgerät es sicher zeigt.

## Schritte
# Only with: $away
uvi-step-away = Egal welcher UV-Index: { LENGTH($at) } ist zu nah. Mach die Röhre aus und häng sie { LENGTH($away) } vom Rücken des Tieres.
uvi-step-distance = Egal welcher UV-Index: { LENGTH($at) } ist zu nah. Mach die Röhre aus und frag distance mit denselben Angaben, was stattdessen geht.
uvi-step-measure = Miss von der Unterseite der leuchtenden Röhre bis zum Rücken des Tieres am Sonnenplatz.
uvi-step-meter = Hast du ein UV-Messgerät? Halt es auf Rückenhöhe und richte dich danach: { UVI($wanted, form: "range") } ist richtig. Miss nach jeder Änderung neu.

## Zahlen
uvi-label = UV-Index
uvi-place = { UVI($here, form: "doubt") } bei { LENGTH($at) }: { $judged }
uvi-place-not-yet = Nach diesen Messwerten { UVI($here, form: "doubt") } bei { LENGTH($at) }. Miss neu, bevor du dich danach richtest.
uvi-label-longest = Wenn sie lang ist
# Only with: $longest
uvi-longest = dort UV-Index { UVI($longest) }, mehr als { UVI($wanted, form: "range") }

## Bild
uvi-point-here = deine: UV-Index { UVI($here, form: "doubt") }
# Only with: $start
uvi-point-start = Anfang bei { LENGTH($start) }
