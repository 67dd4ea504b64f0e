### Was dieser Bot ist.

about-title = Über Noonstone
about-head = Ich bin ein Bot. Ich rechne Licht und Wärme aus.
about-ranges = Ich nenne Bereiche; miss lieber nach.
about-kept = Was du fragst, wird nicht behalten.
about-known = { $count } Quellen, jede mit ihrer Art.
about-do-delete = Gespeichertes ansehen oder löschen: mine export, mine forget.
about-step-export = Nimm alles mit, was für dich gespeichert ist: mine export
about-step-forget = Lösch alles auf einmal: mine forget
about-step-server = Ein Server löscht sofort, was er festgelegt hat: server forget. Sonst verschwindet es 30 Tage, nachdem er mich entfernt hat.
about-label-not-kept = Nicht gespeichert
about-not-kept = Was du tippst. Eine Frage wird beantwortet und vergessen. Ein Knopf trägt seine eigene Frage.
about-label-kept = Gespeichert
about-is-kept = Was ich für dich behalten soll: Terrarien, Messwerte, Erinnerungen, Einheit, Sprache und Zeitzone. Und was die Moderation festlegt, mit der Nummer von dem, der es geändert hat.
about-label-counts = Gezählt
about-counts = Wie oft etwas gefragt wird. Kein Text und kein Mensch steckt darin.
about-label-sources = Woher die Zahlen kommen
about-sources = { $count } Quellen, jede bei ihrer Zahl genannt: { LIST($kinds, join: "list-and") }. „Übliche Praxis“ und „aus dem Gedächtnis“ heißen, dass ich keine veröffentlichte Quelle gelesen habe.
about-kind-paper = { $count } Aufsätze
about-kind-standard = { $count } Normen
about-kind-handbook = { $count } Handbücher
about-kind-dataset = { $count } Datensätze
about-kind-derivation = { $count } Herleitungen
about-kind-common_practice = { $count } aus üblicher Praxis
about-kind-memory = { $count } aus dem Gedächtnis
about-label-will-not = Was ich nicht tue
about-will-not = Produkte nennen, ein krankes Tier beurteilen, Messgerät, Thermometer oder Tierarztpraxis ersetzen

## Vorsicht
about-care-vet = Ist dein Tier schwach, zittert es, ist es geschwollen oder verbrannt, oder frisst es nicht? Ruf jetzt eine reptilienkundige Tierarztpraxis an.
about-care-vet-short = Tier krank? Ruf eine Tierarztpraxis an.
about-care-mercury = Eine Lampe mit Quecksilber ist zerbrochen? Menschen und Tiere raus, lüften, nicht staubsaugen.
