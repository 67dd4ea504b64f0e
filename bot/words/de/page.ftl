### Die Wörter der Website um die Anleitung und die Antworten herum.

## Um eine Antwort herum
page-caution = Vorsicht:

## Jede Seite
## A care sheet
page-sheet = Pflegeblatt zum Ausdrucken
page-sheet-print = Druck diese Seite: Sie passt auf ein Blatt A4 oder Letter.
page-sheet-keeper = Halterin oder Halter, Telefon:
page-sheet-vet = Reptilienkundige Tierarztpraxis, Telefon:
page-sheet-notes = Notizen:
page-sheet-none = Zu dieser Frage gibt es kein Pflegeblatt. Frag check oder plan mit deinem Tier.

page-language = Deutsch
page-described = Licht und Wärme für Reptilien, von Anfang an.
page-skip = Direkt zum Text
page-main = Wichtige Seiten
page-all = Alle Seiten
page-look-up = Nachschlagen
page-footer = Jede Zahl hier ist ein Startwert mit einem Bereich. Dein Thermometer, dein UV-Index-Messgerät und deine reptilienkundige Tierarztpraxis wissen es besser. Halte dich an die Elektrovorschriften bei dir. Schau nie in eine leuchtende UV-Röhre.
page-topic-start = Hier geht es los
page-topic-animals = Dein Tier
page-topic-uv = UV-Licht
page-topic-heat = Wärme
page-topic-day = Tag und Nacht
page-topic-safety = Sicher bleiben

## Die erste Seite
page-index-title = Licht und Wärme für Reptilien, von Anfang an
page-index = Licht und Wärme für dein Reptil, Schritt für Schritt
page-index-lead = Wie hoch soll die UV-Röhre hängen? Ist der Sonnenplatz zu heiß? Kurze Seiten in einfachen Worten, mit Zahlen in Zentimetern und °C und in Zoll und °F.
page-start = Hier anfangen
page-by-steps = Schritt für Schritt fragen
page-guide = Die Anleitung
page-more = Mehr
page-your-animal = Dein Tier
page-worries = Was macht dir Sorgen?
page-worry-distance = Wie weit weg gehört die Röhre?
page-worry-basking = Ist der Sonnenplatz zu heiß?
page-worry-warm = Wohin kommt welche Lampe?
page-worry-cool = Die kühle Seite ist zu warm oder zu kalt
page-worry-night = Braucht die Nacht Wärme?
page-worry-hours = Wie lange soll das Licht an sein?
page-worry-vet = Es sieht krank aus
page-worry-burns = Etwas brennt oder riecht verschmort
page-worry-broken = Eine Lampe ist zerbrochen
page-worry-worn = Ist meine Röhre verbraucht?
page-worry-bones = Weiche Knochen, krumme Beine
page-worry-first = Ich habe es gerade erst bekommen
page-worry-else = Etwas anderes
page-home-alt = Ein Terrarium von der Seite, mit Röhre, Wärmelampe und Tier; Zahlen zeigen, wo jede Sorge anfängt.
page-figure-lizard = Echsen
page-figure-gecko = Geckos
page-figure-snake = Schlangen
page-figure-tortoise = Schildkröten
page-figure-chameleon = Chamäleons
page-figure-frog = Amphibien

## Eine Seite der Anleitung
page-ask-bot = Frag den Bot
page-type-this = Tippe das, mit deinen eigenen Zahlen:
page-try-yours = Mit deinen Zahlen probieren
page-drawn = Das zeichnet der Bot, wenn du ihn fragst:
page-it-answers = Die Antwort:
page-next-reading = Lies als Nächstes
page-sources-here = Woher das kommt
page-turn = Vorige und nächste Seite
page-before = Zurück
page-next = Weiter
page-contents = Auf dieser Seite

## Tiere
page-animals = Tiere
page-animals-lead = Was jedes Tier braucht, und wie sicher jede Zahl ist.
page-column-animal = Tier
page-column-uvi = UV-Index am Sonnenplatz
page-column-basking_surface = Wärmste Fläche
page-column-cool_air = Luft, kühle Seite
page-unknown = hier nicht bekannt
page-needs-none = braucht es nicht
page-distances = Abstände der Röhren
page-animal-care = Miss, bevor du einer Zahl traust, und achte auf dein Tier. Wirkt es krank, ruf eine reptilienkundige Tierarztpraxis an.
page-ask-tube = tube distance:{ LENGTH($shelf, units: "first") } screen:none animal:{ $called }
page-ask-temps = temps { needs-readings }
page-ask-night = night room:{ TEMP($night, units: "first") } animal:{ $called }
page-ask-hours = hours latitude:home animal:{ $called }

## Wörter
page-glossary = Wörter und was sie bedeuten
page-glossary-lead = Ein Name für eine Sache. Der Bot und diese Anleitung nehmen immer den Namen links.
page-also = Auch genannt:

## Fragen
page-questions = Alles, was du fragen kannst
page-questions-short = Fragen
page-questions-described = Alle Fragen, die der Bot beantwortet, mit Angaben und Beispielen.
page-questions-lead = Tippe den Namen einer Frage, dann jede Angabe als Name, Doppelpunkt und Wert. Es gehen Zentimeter oder Zoll, °C oder °F.
page-questions-try = Jedes Beispiel öffnet sich auf einer eigenen Seite und wird dort beantwortet.
page-part-anyone = Gleich fragen
page-part-kept = Was für dich gespeichert wird
page-part-moderator = Für die Moderation
page-kept-note = Diese lesen oder ändern, was gespeichert ist. Sie gehen deshalb auf Discord und in der Konsole.
page-needed = nötig
page-options = Beispiele, und was dazugehört
page-read-more = Mehr dazu:

## Suche
page-search = Suche
page-search-label = Wonach suchst du?
page-find = Suchen
page-found = Gefunden:
page-ask-this = Das lieber als Frage stellen
page-found-none = Nichts gefunden. Nimm weniger Wörter oder sieh in der Liste unten nach.
page-everything = Alles in einer Liste
page-pages = Seiten
page-words = Wörter
page-entry-term = Wort
page-entry-animal = Tier
page-entry-question = Frage

## Quellen
page-sources = Woher die Zahlen kommen
page-sources-lead = Jede Quelle hinter den Rechnungen und dieser Anleitung, die sichersten zuerst. Die Quellen stehen auf Englisch da; ein Wort wie „abstract“ sagt, wie viel davon wir gelesen haben.
page-kind-standard = Normen: von einer Stelle beschlossen, die Regeln setzt.
page-kind-paper = Studien: gemessen, aufgeschrieben und veröffentlicht.
page-kind-handbook = Handbücher und öffentliche Ratgeber.
page-kind-dataset = Offene Messdaten, die jeder lesen kann.
page-kind-derivation = Hier aus anderen Quellen errechnet und geprüft.
page-kind-common_practice = Übliche Praxis: Halter sind sich einig, aber wir haben keine Quelle gelesen.
page-kind-memory = Aus dem Gedächtnis: oft gesagt oder unser eigenes Urteil. Wir konnten es nicht prüfen.

## Fragen auf der Website
page-ask = Fragen
page-ask-question = Stell eine Frage
page-ask-lead = Tippe deine Frage so, wie du sie dem Bot stellen würdest. Nichts wird gespeichert.
page-rather-steps = Lieber eine kleine Frage nach der anderen?
page-your-question = Deine Frage
page-units = Zuerst zeigen
page-units-typed = wie ich es tippe
page-units-in = Zoll und °F
page-units-cm = Zentimeter und °C
page-answer = Antwort
page-known = Was ich bisher weiß
page-begin-anew = Neu anfangen
page-can-ask = Was du fragen kannst
page-all-options = Alle Fragen mit allen Angaben
page-too-long = Das sind { $count } Zeichen; höchstens { $most } passen hinein.
page-wait = Das waren viele Fragen auf einmal. Versuch es in { $seconds } s noch einmal.

## Was schiefging
page-sorry = Das ging nicht
page-to-first = Zur ersten Seite
page-missing = Diese Seite gibt es hier nicht.
page-read-only = Diese Seite kann man nur lesen.
page-fault = Bei uns ging etwas kaputt. Die Nummer dazu: { $number }.
page-unread = Das war nicht zu lesen. Eine Frage hat höchstens { $most } Zeichen.

## Zum Mitnehmen
page-offline = Die Anleitung mitnehmen
page-offline-lead = Alles hier lässt sich ohne Netz lesen.
page-offline-folder = Als Ordner
page-offline-archive = Lade eine Datei herunter, entpack sie und öffne darin index.html. Seiten, Bilder und die Suche sind dabei. Sie fragt bei keinem anderen Rechner nach.
page-offline-download = Die Anleitung herunterladen
page-offline-copy = Du liest gerade die Kopie: einen Ordner auf deinem eigenen Gerät. Kopier den ganzen Ordner, um sie weiterzugeben.
page-offline-phone = Auf dem Telefon
page-offline-opened = Jede Seite, die du hier öffnest, bleibt auf deinem Gerät. Ohne Netz siehst du sie so, wie sie war. Du bist hier statt auf einer anderen Seite? Die war noch nicht gespeichert.
page-keep-all = Alle Seiten auf diesem Gerät speichern
page-keep-busy = Sie werden gespeichert. Das dauert eine Minute.
page-keep-done = Alle Seiten sind gespeichert. Du kannst sie ohne Netz lesen.
page-keep-failed = Es ist abgebrochen. Versuch es mit besserem Netz noch einmal.
page-offline-install = Soll sie bei deinen Apps liegen, such im Menü des Browsers nach „Zum Startbildschirm“ oder „Installieren“.
page-offline-paper = Auf Papier
page-offline-print = Druck jede Seite aus: Was um sie herum führt, bleibt weg. Die Seite eines Tiers passt gut an die Tür seines Terrariums.
page-offline-old = Eine Kopie erneuert sich nicht. Hol ein- oder zweimal im Jahr eine neue: Zahlen hier ändern sich, wenn wir mehr wissen.
