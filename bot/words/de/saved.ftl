### Warum eine Frage nach Gespeichertem keine Antwort hat, und was geht.

saved-no-no_enclosure = Du hast noch kein Terrarium gespeichert.
saved-no-other_enclosure = Ein Terrarium „{ $read }“ hast du nicht.
saved-no-which_enclosure = Welches Terrarium meinst du?
saved-known = Gespeichert: { LIST($known, join: "list-and") }.
saved-step = Versuch: { $example }
