### Was einer Frage noch fehlt, je ein Satzglied: steht hinter „sag mir“.

## Licht und Wärme
lack-animal = welches Tier es ist
lack-tube = wie stark die Röhre ist (an einem Ende: 12%, 5.0)
lack-reflector = was dahinter ist: polished (Spiegel), plain (weiß) oder not sure
lack-screen = was dazwischen ist: none, was das Gitter schluckt (45%), oder not sure
lack-screen-known = was dazwischen ist: none oder was das Gitter schluckt (45%)
lack-screen-mesh = wie viel UV dein Gitter schluckt (weißt du es nicht, nimm 45%)
lack-distance = wie weit es von der Röhre bis zum Rücken deines Tiers ist
lack-distance-lamp = wie weit es von der Lampe bis zur Fläche am Sonnenplatz ist
lack-lamp = welche Art Lampe das Licht gibt, etwa led bar
lack-enclosure = wie groß das Terrarium innen ist: Länge, Tiefe und Höhe
lack-material = woraus die Wände sind: glass, wood, pvc, melamine oder mesh
lack-material-surface = worauf du das Infrarot-Thermometer gehalten hast: slate, tile, wood, brick, metal
lack-latitude = die Breite deines Ortes, etwa 50N
lack-month = den Monat, etwa in June
lack-lid = wie der Deckel ist: solid (zu), part mesh (halb Gitter) oder full mesh (ganz Gitter)
lack-room = wie warm das Zimmer ist
lack-room-night = wie kalt das Zimmer nachts wird
lack-surface = wie heiß die Fläche am Sonnenplatz jetzt ist, mit Infrarot-Thermometer
lack-air = wie warm die Luft neben dem Sonnenplatz ist, außerhalb des Lichtkegels
lack-reading = was das Infrarot-Thermometer zeigt
lack-readings = was das Messgerät zeigt, und wie weit von der Röhre
lack-uvi = der UV-Index am Sonnenplatz
lack-hours = wie viele Stunden am Tag die Röhre an ist
lack-value = welche Länge oder Temperatur, mit Einheit
lack-question = deine Frage in eigenen Worten

## Was aufgehoben wird
lack-about = worum es geht: meter, tube, season oder check
lack-until = wann: in 2 days, tomorrow 8:00
lack-number = die Nummer der Erinnerung oder des Falls
lack-day = der Tag, dessen Messwerte weg sollen
lack-file = die JSON-Datei aus einem Export
lack-name = der Name
lack-line = der Kanal, die Nummer oder die Adresse, oder none
lack-ask = der Kanal, oder nowhere
lack-of = wovon das Ziel ist
lack-range = von wo bis wo
lack-show = wer die Antworten sieht: private, public oder usual
lack-topic = worum es auf der Tafel geht: distances, temperatures, first-day oder guide
