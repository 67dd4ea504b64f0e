### Warum eine Frage nach Gespeichertem keine Antwort hat, und was geht.

saved-no-no_enclosure = Du hast noch kein Terrarium gespeichert.
saved-no-other_enclosure = Ein Terrarium „{ $read }“ hast du nicht.
saved-no-which_enclosure = Welches Terrarium meinst du?
saved-known = Du hast: { LIST($known, join: "list-and") }.
saved-step = Versuch: { $example }
saved-no-server = Frag das auf einem Server, nicht in einer Nachricht.

## Messwerte
saved-no-no_reading = In deiner Frage ist kein Messwert.
saved-no-cannot_be = „{ $read }“ kann bei { $option } nicht stimmen.
saved-no-to_come = „{ $read }“ kommt erst noch.
saved-no-few_days = Zum Vergleichen brauche ich Messwerte von zwei Tagen.
saved-no-other_day = Von „{ $read }“ hast du keine Messwerte.
saved-no-other_lamp = Welche Lampe meinst du?
saved-no-no_strength = Ich weiß nicht, wie stark „{ $read }“ ist.

## Erinnerungen
saved-no-no_reminder = Du hast keine Erinnerungen.
saved-no-other_reminder = Eine Erinnerung { $read } hast du nicht.
saved-no-no_channel = Hier geht das nicht: Das ist kein Kanal eines Servers.
saved-no-no_right = Hier geht das nicht: In diesem Kanal darf ich nicht schreiben.
