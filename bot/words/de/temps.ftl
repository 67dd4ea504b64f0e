### Messwerte und was zuerst zu tun ist

temps-title = Temperaturen für { NAME($animal, form: "acc") }

## Die Antwort in Kürze
temps-nothing-read = Nenn mir einen Messwert, dann helfe ich dir.
temps-contradict = Diese Werte widersprechen sich.
temps-read = Gemessen: { LIST($told) }.
temps-too-soon = Für ein Urteil ist es zu früh.
temps-open = Wofür ich ein Ziel kenne, das stimmt.
temps-all-right = Ja. Alle deine Werte stimmen.
temps-head-right = Passt. { heat-verdict }
temps-head-too_low = { heat-verdict }
temps-head-too_high = { heat-verdict }
temps-head-probably_low = { heat-verdict }
temps-head-probably_high = { heat-verdict }
temps-head-cannot_tell = Schwer zu sagen. { heat-verdict }
temps-head-keepers_differ = { heat-verdict }
temps-head-no_need = { heat-verdict }
temps-head-no_target = Schwer zu sagen. { heat-verdict }
temps-right = Richtig: { LIST($right) }.
temps-lamp-time = Lampe 2 bis 3 Stunden an? Sonst warte.
# Only with: $mistaken
temps-mistaken-short = { $mistaken }: Meinst du °F, frag noch einmal mit F.
temps-do-open = Frag zum Rest erfahrene Halter oder die Tierarztpraxis.
temps-do-after = Miss nach zwei Stunden neu.

## Schritte
temps-step-open = Lass, was stimmt, wie es ist. Frag zu dem Wert, für den ich kein Ziel kenne, jemanden mit Erfahrung oder eine reptilienkundige Tierarztpraxis, bevor du ihn änderst oder dich darauf verlässt.
temps-step-read-and-ask = Miss dann noch einmal, wenn die Lampe 2 bis 3 Stunden an war, und frag wieder.
temps-step-one-change = Ändere immer nur eine Sache. Miss nach zwei Stunden neu und mach in kleinen Schritten weiter. Die Zahlen sind ein Anfang: Dein Thermometer entscheidet.
temps-step-after-a-night = Miss am nächsten Morgen noch einmal das Kälteste der Nacht.

## Zahlen
temps-label-missing = Noch zu messen
temps-missing = { LIST($unread) }
temps-label-room = Raum
# Only with: $room
temps-room = { TEMP($room) }
# Only with: $warm_past
temps-room-untold = Du hast nicht gesagt, wie warm der Raum ist. Ab { TEMP($warm_past) } hilft nur ein kühlerer Raum. Nenn ihn mir mit room:.
temps-label-mistaken = Falsche Einheit?
# Only with: $mistaken
temps-mistaken = { $mistaken } sind in °C viel zu heiß. Zeigt dein Thermometer °F, frag noch einmal mit F.
