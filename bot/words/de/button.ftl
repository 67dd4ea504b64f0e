### Facts: PageTitle, PagesFromTo, AnimalsFromTo
### Was auf Knöpfen und Listen steht.

button-picture = Bild
button-sheet = Pflegeblatt
button-change = Ändern
button-fill = Ausfüllen
button-which = Such aus, was du meinst
button-animals = Tier: { $first } bis { $last }
button-share = Teilen
button-offer = Der Gruppe geben
button-wrong = Das stimmt nicht
button-helper = Helfer fragen
button-post-helper = Das posten
button-board-post = Hier aufhängen
button-reply = Im Kanal antworten
button-ask-missing = Nach Fehlendem fragen
button-correct = Berichtigen
button-in = In Zoll
button-cm = In cm
button-agree = Ich stimme zu
button-case = Fall ansehen
button-sure = Ja, endgültig löschen
button-show = Zeig es mir
button-all = Alles zeigen

## Der Teil, der offen ist
button-hide-steps = Schritte zuklappen
button-hide-numbers = Zahlen zuklappen
button-hide-why = Warum zuklappen
button-hide-care = Vorsicht zuklappen
button-hide-sources = Quellen zuklappen

## Der Leitfaden
button-page-open = Leitfaden: { $title }
button-page-back = Zurück: { $title }
button-page-on = Weiter: { $title }
button-pages = Eine andere Seite im Leitfaden
button-pages-from = Seiten { $first } bis { $last } im Leitfaden
button-welcome-animal = Ich habe ein neues Tier
button-welcome-check = Prüf meinen Aufbau
button-welcome-reading = Stimmt dieser Messwert?
button-welcome-wrong = Etwas stimmt nicht
