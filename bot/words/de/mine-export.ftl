### Alles über jemanden als Datei.

mine-export-title = Alles, was ich für dich aufhebe
mine-export-head = Hier ist deine Datei.
mine-export-alone = Heb sie da auf, wo nur du sie lesen kannst.
mine-export-step = So nehme ich sie zurück: mine import file:mine.json
