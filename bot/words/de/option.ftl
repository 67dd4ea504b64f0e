### Wozu jede Angabe einer Frage dient.

## distance
option-distance-tube = Stärke auf dem Aufdruck der Röhre: 12%, 6%; mit Messwerten nicht nötig
option-distance-reflector = hinter der Röhre: polished, plain oder not sure; mit Messwerten nicht nötig
option-distance-screen = was dazwischen ist: none, 45% (hält ab), passes 55%, 18x16 0.011in, mesh oder not sure
option-distance-animal = das Tier, etwa bearded dragon
option-distance-uvi = der UV-Index, den du statt dem des Tieres willst, etwa 3-5
option-distance-length = Länge der Röhre oder die Watt darauf: 22in, 85cm, 39W
option-distance-age = wie lange die Röhre schon brennt, etwa 6 months
option-distance-readings = deine Messwerte dieser Röhre durch dieses Gitter: 4.2 at 12 in
option-distance-enclosure = Länge des Terrariums, wenn du die der Röhre nicht kennst: 4ft, 120cm
option-distance-lamp = Art der UV-Lampe, etwa T5 HO tube, T8, compact; für die meisten ohne Zahlen
option-distance-tubes = wie viele solche Röhren nebeneinander hängen, 1 bis 4
option-distance-gap = von Mitte zu Mitte der Röhren; sonst rechne ich mit einer Stelle
option-distance-state = Zustand: young (jung), pale (Albino), gravid (trächtig), female (weiblich), ill (krank)

## uvi
option-uvi-tube = { option-distance-tube }
option-uvi-reflector = { option-distance-reflector }
option-uvi-screen = { option-distance-screen }
option-uvi-animal = { option-distance-animal }
option-uvi-uvi = { option-distance-uvi }
option-uvi-length = { option-distance-length }
option-uvi-age = { option-distance-age }
option-uvi-readings = { option-distance-readings }
option-uvi-enclosure = { option-distance-enclosure }
option-uvi-lamp = { option-distance-lamp }
option-uvi-tubes = { option-distance-tubes }
option-uvi-gap = { option-distance-gap }
option-uvi-state = { option-distance-state }
option-uvi-distance = von der Röhre zum Rücken des Tieres, etwa 14in oder 35cm

## tube
option-tube-distance = { option-uvi-distance }
option-tube-screen = was dazwischen ist: none, 45% (hält so viel ab), passes 55% oder 18x16 0.011in
option-tube-animal = { option-distance-animal }
option-tube-uvi = { option-distance-uvi }
option-tube-enclosure = Länge des Terrariums oder alle Maße: 4ft, 120cm, 48x24x24in
option-tube-length = Länge der Röhre, wenn auch die feststeht
option-tube-readings = { option-distance-readings }
option-tube-lamp = { option-distance-lamp }
option-tube-tubes = { option-distance-tubes }
option-tube-gap = { option-distance-gap }
option-tube-state = { option-distance-state }

option-compare-distance = { option-uvi-distance }
option-compare-tube = { option-uvi-tube }
option-compare-reflector = { option-uvi-reflector }
option-compare-screen = { option-uvi-screen }
option-compare-with_tube = am zweiten: die Stärke, etwa 6%
option-compare-with_reflector = am zweiten: polished oder plain
option-compare-with_screen = am zweiten: was dazwischen ist, etwa none oder 45%
option-compare-with_distance = am zweiten: der Abstand, etwa 25cm
option-compare-with_length = am zweiten: die Länge
option-compare-with_age = am zweiten: das Alter, etwa 12 months
option-compare-animal = { option-uvi-animal }
option-compare-uvi = { option-uvi-uvi }
option-compare-length = { option-uvi-length }
option-compare-age = { option-uvi-age }
option-compare-state = { option-uvi-state }

## meter
option-meter-readings = gemessener UV-Index und wie weit von der Röhre: 4.2 at 12 in, 2.9 at 15 in
option-meter-animal = { option-distance-animal }
option-meter-uvi = { option-distance-uvi }
option-meter-screen = was zwischen Lampe und Messgerät war, wenn etwas: 45%, 18x16 0.011in
option-meter-without = dasselbe ohne Gitter gemessen, um zu sehen, was es durchlässt
option-meter-distance = von der Röhre zum Rücken des Tieres am Liegeplatz
option-meter-length = { option-distance-length }
option-meter-tube = Stärke auf dem Aufdruck, zum Vergleich mit der Lampe
option-meter-reflector = die Leuchte hinter der Röhre: polished (spiegelnd) oder plain
option-meter-lamp = { option-distance-lamp }
option-meter-tubes = { option-distance-tubes }
option-meter-gap = { option-distance-gap }

## decline
option-decline-readings = UV-Index an einer Stelle, mit Tagen: 2026-01-03 4.2, 2026-03-01 3.9
option-decline-animal = { option-distance-animal }
option-decline-uvi = { option-distance-uvi }
option-decline-age = wie lange die Röhre schon brennt, ohne Messgerät
option-decline-lamp = welche Art von UV-Lampe es ist

## section
option-section-tube = Stärke auf dem Aufdruck der Röhre: 12%, 6%
option-section-reflector = die Leuchte hinter der Röhre: polished (spiegelnd), plain oder not sure
option-section-screen = { option-distance-screen }
option-section-distance = von der Röhre zum Rücken des Tieres auf seinem Platz
option-section-enclosure = Länge, Tiefe und Höhe: 48x24x24in oder 120x60x60 cm
option-section-animal = { option-distance-animal }
option-section-uvi = { option-distance-uvi }
option-section-length = Länge der Röhre; sonst etwa das halbe Terrarium
option-section-tubes = { option-distance-tubes }
option-section-gap = { option-distance-gap }
option-section-start = von der Wand der warmen Seite bis zum Anfang der Röhre
option-section-across = von der Rückwand zur Mitte der Röhren
option-section-platform = Länge vom Liegeplatz, ab der warmen Seite
option-section-back = Höhe des Rückens über dem, worauf das Tier liegt
option-section-heat = von der Wand der warmen Seite zur Mitte der Wärmelampe
option-section-patch = Breite vom Fleck, den die Wärmelampe wärmt
option-section-lamp = { option-distance-lamp }
option-section-readings = { option-distance-readings }
option-section-light = auch eine weiße Lampe, etwa 24W led bar

## dose
option-dose-uvi = UV-Index am Sonnenplatz, etwa 4
option-dose-hours = Stunden am Tag, die die Lampe an ist, etwa 10
option-dose-distance = von der Lampe zu diesem Platz, um zu sagen, was es für dich heißt
option-dose-length = { option-distance-length }
option-dose-latitude = Breite der Sonne zum Vergleich: 40N, 27S
option-dose-month = Monat der Sonne zum Vergleich: June
option-dose-lamp = Art der UV-Lampe, etwa T5 HO tube, compact, oder eine eigene der Gruppe beim Namen
option-dose-readings = { option-distance-readings }

## plan
option-plan-animal = { option-distance-animal }
option-plan-enclosure = Länge, Tiefe und Höhe innen, etwa 48x24x24in oder 120x60x60cm
option-plan-lid = der Deckel: solid (geschlossen), part mesh (zum Teil Gitter) oder full mesh (Gitter)
option-plan-material = die Wände: glass, wood, pvc, melamine oder mesh (Gitter)
option-plan-room = die Luft im Raum am Tag, etwa 21C
option-plan-night = wie kalt der Raum nachts höchstens wird, etwa 17C
option-plan-place = die Röhre hängt innen (inside) oder über einem Gitterdeckel (above); sonst wähle ich
option-plan-screen = { option-tube-screen }
option-plan-tube = eine Röhre, die du hast, nach ihrem Aufdruck: 12%
option-plan-reflector = die Leuchte, die du hast: polished (spiegelnd) oder plain
option-plan-length = Länge deiner Röhre oder die Watt darauf: 85cm, 39W
option-plan-lamp = Form der Wärmelampe: wide dome, flood oder narrow
option-plan-watts = Watt einer Wärmelampe, die du hast, etwa 75W
option-plan-back = Höhe des Rückens über dem, worauf das Tier liegt, etwa 2in oder 5cm
option-plan-uvi = { option-distance-uvi }
option-plan-tubes = { option-distance-tubes }
option-plan-gap = { option-distance-gap }
option-plan-state = { option-distance-state }
option-plan-level = wie weit du gehst: minimum, good (auch weißes Licht) oder better
option-plan-light = { option-section-light }

## card
option-outdoors-latitude = Breite deines Ortes: 40N, 27S
option-outdoors-month = Monat: June
option-outdoors-hour = Stunde nach der Sonne, etwa 9:00
option-outdoors-place = open (Gehege), window (Fenster) oder greenhouse (Gewächshaus)
option-outdoors-shade = Temperatur draußen im Schatten
option-outdoors-animal = { option-distance-animal }
option-outdoors-uvi = { option-distance-uvi }
option-outdoors-state = { option-distance-state }
option-card-animal = { option-distance-animal }
option-card-uvi = { option-distance-uvi }
option-card-screens = was dazwischen sein kann, eins bis vier: none; 30%; 45%
option-card-tubes = Stärken der Röhren, eine bis vier: 6%; 12%
option-card-length = { option-distance-length }
option-card-state = { option-distance-state }

## needs
option-needs-animal = { option-distance-animal }
option-needs-about = das eine, was du zuerst wissen willst
option-needs-heard = eine Temperatur, die man dir gesagt hat: stimmt sie?
option-needs-state = { option-distance-state }

## temps
option-temps-basking = Liegeplatz, mit Infrarotthermometer, etwa 37C
option-temps-cool = Luft auf der kühlen Seite, mit Digitalfühler, etwa 24C
option-temps-warm = Luft auf der warmen Seite, neben dem Strahl, etwa 28C
option-temps-night = der kälteste Wert nachts, etwa 18C
option-temps-water = das Wasser, in dem es schwimmt, etwa 26C
option-temps-lamp_on = wie lange die Lampe schon an war, etwa 3 hours
option-temps-measured = womit du gemessen hast: infrared gun, digital probe, dial (Zeiger) oder strip (Streifen)
option-temps-animal = dein Tier, etwa bearded dragon; jedes braucht etwas anderes
option-temps-room = die Luft im Raum am Tag; damit rechne ich aus, was der kühlen Seite hilft
option-temps-enclosure = { option-plan-enclosure }
option-temps-material = { option-plan-material }
option-temps-lid = { option-plan-lid }
option-temps-watts = die Watt der Wärmelampe, etwa 75W
option-temps-state = { option-distance-state }

## basking
option-basking-surface = der Liegeplatz jetzt, mit Infrarotthermometer, etwa 33C
option-basking-air = die Luft daneben, außerhalb vom Strahl, etwa 27C
option-basking-distance = von der Lampe zum Liegeplatz, etwa 10in oder 25cm
option-basking-want = die Temperatur, die du willst; ohne sie nenn das Tier, dann nehme ich seine
option-basking-animal = { option-temps-animal }
option-basking-watts = die Watt der Lampe, etwa 75W
option-basking-dimmer = wie weit der Dimmer offen ist: 100% ist voll
option-basking-safe = der kleinste Abstand, den der Aufdruck der Lampe erlaubt
option-basking-holder = die höchsten Watt, die auf der Fassung stehen
option-basking-reach = kann das Tier die Lampe berühren: yes oder no
option-basking-wood = das heißeste Holz bei der Lampe, wenn dort welches ist

## watts
option-watts-room = die Luft im Raum, etwa 21C
option-watts-distance = { option-basking-distance }
option-watts-lamp = Form der Lampe: wide dome, flood oder narrow
option-watts-want = { option-basking-want }
option-watts-animal = { option-temps-animal }
option-watts-holder = { option-basking-holder }
option-watts-enclosure = { option-plan-enclosure }
option-watts-material = { option-plan-material }
option-watts-lid = { option-plan-lid }
option-watts-place = die Lampe ist innen (inside) oder über einem Gitterdeckel (above)

## air
option-air-enclosure = { option-plan-enclosure }
option-air-material = { option-plan-material }
option-air-lid = { option-plan-lid }
option-air-room = die Luft im Raum, etwa 20C
option-air-want = { option-basking-want }
option-air-animal = { option-temps-animal }
option-air-watts = die Watt der Wärmelampe, um zu sehen, ob sie reicht
option-air-place = { option-watts-place }

## night
option-night-room = wie kalt der Raum nachts höchstens wird, etwa 14C
option-night-animal = { option-temps-animal }
option-night-enclosure = { option-plan-enclosure }
option-night-material = { option-plan-material }
option-night-lid = { option-plan-lid }
option-night-place = der Heizer ist innen (inside) oder über einem Gitterdeckel (above)
option-night-state = { option-distance-state }

## hours
option-hours-animal = { option-distance-animal }
option-hours-on = wann das Licht angehen soll, etwa 8:00
option-hours-off = wann es ausgeht, um zu prüfen, wie lange es hell ist
option-hours-latitude = wessen Jahreszeiten: 35N, 30S oder home für die Heimat des Tieres
option-hours-zone = deine Zeitzone, etwa Europe/Berlin
option-hours-months = own, oder turned: um ein halbes Jahr gedreht, damit sein Sommer auf deinen fällt
option-hours-year = das Jahr der Zeitumstellungen; sonst dieses Jahr

## surface
option-surface-reading = was das Infrarotthermometer zeigt, etwa 37C
option-surface-material = worauf du gemessen hast, etwa slate (Schiefer), tile, wood, brick oder metal
option-surface-air = die Luft ringsum, die sich darin spiegelt
option-surface-setting = der eingestellte Emissionsgrad in Prozent; meist 95%
option-surface-glass = hast du durch Glas gemessen: yes oder no

## lamp
option-lamp-kind = die Art der Lampe oder des Heizers; ohne Angabe kommen alle
option-lamp-about = was du davon wissen willst: uv, light, night oder use

## ask
option-ask-question = deine Frage in eigenen Worten

## check
option-check-setup = dein Aufbau in eigenen Worten, wie du ihn einem Freund erzählst
option-check-animal = { option-distance-animal }
option-check-tube = Stärke auf dem Aufdruck der Röhre
option-check-reflector = { option-meter-reflector }
option-check-screen = was dazwischen ist: none, 45% (hält so viel ab), passes 55%
option-check-distance = von der Röhre zum Rücken des Tieres
option-check-length = Länge der Röhre
option-check-age = wie lange die Röhre schon brennt
option-check-meter = UV-Index, den ein Messgerät am Rücken des Tieres zeigt
option-check-basking = Liegeplatz, mit Infrarotthermometer
option-check-cool = Luft auf der kühlen Seite, mit Digitalfühler
option-check-warm = Luft auf der warmen Seite, neben dem Strahl
option-check-night = der kälteste Wert nachts im Terrarium oder im Raum
option-check-water = { option-temps-water }
option-check-lamp_on = wie lange die Lampe an war, als du gemessen hast
option-check-measured = { option-temps-measured }
option-check-hours = wie lange das Licht am Tag an ist
option-check-lamp = { option-distance-lamp }
option-check-tubes = { option-distance-tubes }
option-check-gap = { option-distance-gap }
option-check-state = { option-distance-state }

## convert
option-convert-value = eine Länge, eine Temperatur oder ein Unterschied: 14in, 35 C, difference 10F

## guide
option-guide-page = die Seite zum Öffnen; ohne Angabe kommen alle
option-guide-part = der Teil der Seite, mit dem sie beginnt, nach seiner Überschrift

## help
option-help-command = die Frage, die ich erklären soll; ohne Angabe kommen alle

## mine save
option-mine-save-name = ein Name für das Terrarium
option-mine-save-words = der Aufbau in eigenen Worten; behalten werden die Angaben, nicht die Worte
option-mine-save-animal = wer darin lebt, etwa bearded dragon
option-mine-save-tube = { option-section-tube }
option-mine-save-reflector = { option-meter-reflector }
option-mine-save-screen = { option-check-screen }
option-mine-save-distance = von der Röhre zum Rücken des Tieres, etwa 14in
option-mine-save-length = { option-distance-length }
option-mine-save-age = { option-distance-age }
option-mine-save-enclosure = Länge, Tiefe und Höhe: 48x24x24in
option-mine-save-lamp = { option-distance-lamp }
option-mine-save-tubes = { option-distance-tubes }
option-mine-save-gap = { option-distance-gap }

## mine reading
option-mine-reading-name = der Name des Terrariums; nicht nötig, wenn du eines hast
option-mine-reading-uvi = der UV-Index am Liegeplatz, etwa 4.2
option-mine-reading-distance = wie weit von der Röhre gemessen wurde
option-mine-reading-basking = der Liegeplatz, etwa 39C
option-mine-reading-warm = die Luft auf der warmen Seite, etwa 29C
option-mine-reading-cool = die Luft auf der kühlen Seite, etwa 26C
option-mine-reading-night = der kälteste Wert nachts, etwa 20C
option-mine-reading-day = der Tag der Messung: today, yesterday oder 2026-05-04; sonst heute

## mine show
option-mine-show-name = { option-mine-reading-name }

## mine sheet
option-mine-sheet-name = { option-mine-reading-name }

## mine compare
option-mine-compare-name = { option-mine-reading-name }
option-mine-compare-first = der frühere Tag; sonst der erste
option-mine-compare-second = der spätere Tag; sonst der letzte

option-mine-compare-other = ein zweites Terrarium: beide nach ihren letzten Messwerten
option-mine-compare-lamp = eine Ersatzlampe, oder ein Terrarium für die Lampe darüber
option-mine-compare-other_lamp = die zweite Lampe

## mine share, mine case, mine unshare, cases
option-mine-share-name = { option-mine-reading-name }
option-mine-share-sure = yes: Du stimmst zu, dass Helfer es hier sehen
option-mine-case-name = { option-mine-reading-name }
option-mine-unshare-name = { option-mine-reading-name }
option-cases-show-number = die Nummer des Falls
option-cases-end-number = { option-cases-show-number }
option-cases-advise-number = { option-cases-show-number }
option-cases-advise-distance = die Röhre so weit über den Rücken hängen: 35cm
option-cases-advise-tube = die Röhre tauschen: new oder eine Klasse wie 12%
option-cases-advise-screen = none: die Röhre unter das Gitter hängen
option-cases-advise-measure = ein Messwert, den du brauchst: uvi, basking, warm, cool, night
option-cases-advise-basking = den Sonnenplatz bringen auf: 39C
option-cases-advise-warm = die Luft der warmen Seite bringen auf: 29C
option-cases-advise-cool = die Luft der kühlen Seite bringen auf: 26C
option-cases-advise-night = den tiefsten Wert der Nacht bringen auf: 20C
option-cases-advise-vet = yes: mit dem Tier in eine Tierarztpraxis

## mine spare, mine timer
option-mine-spare-name = ein Name für die Ersatzlampe
option-mine-spare-tube = { option-section-tube }
option-mine-spare-length = { option-distance-length }
option-mine-spare-lamp = { option-distance-lamp }
option-mine-spare-bought = der Tag des Kaufs: today oder 2026-01-10
option-mine-spare-into = das Terrarium, über dem sie ab heute hängt
option-mine-spare-gone = yes: verbraucht oder verschenkt
option-mine-timer-on = wann der längste Tag beginnt, etwa 8:00

## mine unread
option-mine-unread-name = { option-mine-reading-name }
option-mine-unread-day = der Tag, dessen Messwerte weg sollen: 2026-05-04
option-mine-unread-of = nur diese Art: uvi, basking, warm, cool, night

## mine offer
option-mine-offer-name = das Terrarium, dessen letzten UV-Wert du gibst
option-mine-offer-readings = oder was du gemessen hast, und wo: 4,2 bei 30 cm
option-mine-offer-tube = die Röhre nach ihrem Aufdruck: 12%; oder eine eigene Lampe der Gruppe
option-mine-offer-reflector = was hinter der Röhre ist
option-mine-offer-screen = was zwischen Messgerät und Lampe war: none, 45%
option-mine-offer-length = wie lang die Röhre ist, oder ihre Watt
option-mine-offer-age = wie lange sie schon läuft
option-mine-offer-lamp = welche Art Lampe, falls es keine T5-HO-Röhre ist
option-mine-offer-day = der Tag, an dem du gemessen hast; sonst heute
option-mine-offer-sure = yes gibt ihn der Gruppe

## mine withdraw
option-mine-withdraw-reading = seine Nummer, oder all

## mine remove
option-mine-remove-name = das Terrarium, das weg soll

## mine prefer
option-mine-prefer-units = in (mit °F), cm (mit °C) oder none
option-mine-prefer-language = die Sprache der Antworten: en, de oder none
option-mine-prefer-zone = deine Zeitzone, etwa Europe/Berlin, oder none

## mine import
option-mine-import-file = die JSON-Datei aus einem Export

## mine forget
option-mine-forget-sure = yes löscht endgültig

## remind me
option-remind-me-about = meter (messen), tube (Röhre tauschen), season (Jahreszeit) oder check
option-remind-me-when = in 3 months, tomorrow 8:00, 2026-06-01 9:00
option-remind-me-name = welches Terrarium
option-remind-me-every = immer wieder: 3 months, 2 weeks
option-remind-me-where = als Direktnachricht oder hier in diesem Kanal (here)
option-remind-me-zone = deine Zeitzone, etwa Europe/Berlin

## remind snooze
option-remind-snooze-number = die Nummer der Erinnerung
option-remind-snooze-until = in 2 days, tomorrow 8:00

## remind off
option-remind-off-number = { option-remind-snooze-number }

## server set
option-server-set-units = steht zuerst: in (mit °F), cm (mit °C) oder none
option-server-set-animal = gilt, wenn keines genannt ist, oder none
option-server-set-site = wo die Anleitung steht, oder none
option-server-set-language = die Sprache der Antworten hier: en, de oder none
option-server-set-zone = die Zeitzone der Gruppe, oder none

## server answers
option-server-answers-show = private: nur wer fragt; public: der Kanal; usual: wie üblich

## server lamp
option-server-lamp-name = ein Name für die Lampe
option-server-lamp-readings = { option-meter-readings }
option-server-lamp-length = { option-distance-length }
option-server-lamp-screen = was zwischen Lampe und Messgerät war, wenn etwas
option-server-lamp-lamp = Art der UV-Lampe, etwa metal halide lamp; ohne Angabe: eine T5-HO-Röhre

## server screen
option-server-screen-name = ein Name für das Gitter
option-server-screen-screen = der Anteil: blocks 45% oder passes 55%
option-server-screen-readings = UV-Index, durch es gemessen: 3.3 at 12 in
option-server-screen-without = dasselbe ohne Gitter gemessen

## server target
option-server-target-animal = das Tier
option-server-target-of = wovon es der Zielwert ist
option-server-target-range = von wo bis wo: 35-43C, 3-5 für UV, 10-14h, 30-40cm
option-server-target-best = worauf man zielt, wenn bekannt: 39C

## server animal
option-server-animal-name = der Name des Tieres
option-server-animal-scientific = sein wissenschaftlicher Name
option-server-animal-uvi = UV-Index am Liegeplatz: 2-3
option-server-animal-basking = Liegeplatz: 31-34C
option-server-animal-warm = Luft auf der warmen Seite: 27-29C
option-server-animal-cool = Luft auf der kühlen Seite: 21-24C
option-server-animal-night = Nachtwärme erst unter: 14-18C
option-server-animal-night_off = Nachtwärme aus bei: 18-19C
option-server-animal-water = Wasser, in dem es lebt: 22-26C
option-server-animal-depth = wie tief dieses Wasser ist: 30-40cm
option-server-animal-hours = Licht am Tag: 12-14 hours
option-server-animal-surface_limit = heißer darf nichts sein: 40C
option-server-animal-cool_limit = das erreicht die kühlste Stelle nie: 30C
option-server-animal-night_limit = kälter darf keine Nacht sein: 11C
option-server-animal-uvi_limit = das erreicht kein UV-Index: 6
option-server-animal-back = Höhe seines Rückens über dem, worauf es liegt: 5cm
option-server-animal-life = wie es lebt: climbs, water, digs oder night

## server remove
option-server-remove-lamp = die Lampe, die weg soll
option-server-remove-screen = das Gitter, das weg soll
option-server-remove-animal = ein eigenes Tier der Gruppe oder das, dessen Zielwert weg soll
option-server-remove-of = welcher Zielwert weg soll

## server vets, server helpers, server wrong
option-server-vets-line = ein Kanal, eine Nummer oder eine Adresse, oder none
option-server-helpers-ask = here: in diesem Kanal; nowhere: nirgends
option-server-public-who = everybody: alle; helpers: wer die Rolle hat; moderators: Moderation; usual: wie üblich
option-server-public-where = here: hier; parent: der Kanal oder das Forum darum; everywhere: überall
option-server-public-most = öffentliche Posts in der Stunde, je Person, 1 bis 100, oder none
option-server-public-role = die Rolle eurer Helfer, etwa @helfer, oder none
option-server-wrong-clear = yes nimmt sie weg
option-server-wrong-file = alle als Datei: csv oder json

## server readings
option-server-readings-clear = die Nummer des Messwerts, der weg soll

## server stats
option-server-stats-weeks = wie viele Wochen zurück, 1 bis 104

## server import
option-server-import-file = { option-mine-import-file }

## server forget
option-server-forget-sure = { option-mine-forget-sure }

## board preview
option-board-preview-topic = worum es geht: distances, temperatures, first-day, guide oder welcome
option-board-preview-animal = die Tiere, bis zu vier, getrennt mit „;“; sonst das der Gruppe

## board post
option-board-post-topic = { option-board-preview-topic }
option-board-post-animal = { option-board-preview-animal }

## board remove
option-board-remove-topic = { option-board-preview-topic }

## bright
option-bright-lamp = welche Art Lampe das Licht gibt, etwa led bar
option-bright-lumens = die Lumen auf dem Etikett; sonst die Watt
option-bright-watts = die Watt, die sie wirklich braucht, nicht die sie ersetzt
option-bright-distance = von der Lampe bis dahin, wo das Tier sich sonnt
option-bright-length = Länge der Leiste oder Röhre, oder eine Seite des Panels
option-bright-beam = der Winkel des Lichtkegels, von der Packung: 36 degrees
option-bright-screen = was dazwischen ist: none, 45% (hält zurück), 18x16 0.011in
option-bright-reflector = ob hinter der Röhre ein Reflektor ist: yes oder no
option-bright-lamps = wie viele, oder mehrere: 24W led bar + 75W flood
option-bright-enclosure = Länge, Tiefe und Höhe, dann sage ich auch die kühle Seite
option-bright-animal = { option-distance-animal }
option-bright-hours = Stunden Licht am Tag, für Pflanzen; sonst 12
option-bright-reading = was ein Messgerät dort zeigt: 6000 lux, 560 fc
option-bright-by = womit du gemessen hast: meter oder phone
option-bright-latitude = { option-dose-latitude }
option-bright-month = { option-dose-month }

## next
option-next-setup = { option-check-setup }
option-next-animal = { option-check-animal }
option-next-tube = { option-check-tube }
option-next-reflector = { option-check-reflector }
option-next-screen = { option-check-screen }
option-next-distance = { option-check-distance }
option-next-length = { option-check-length }
option-next-age = { option-check-age }
option-next-meter = { option-check-meter }
option-next-basking = { option-check-basking }
option-next-cool = { option-check-cool }
option-next-warm = { option-check-warm }
option-next-night = { option-check-night }
option-next-water = { option-check-water }
option-next-lamp_on = { option-check-lamp_on }
option-next-measured = { option-check-measured }
option-next-hours = { option-check-hours }
option-next-lamp = { option-check-lamp }
option-next-tubes = { option-check-tubes }
option-next-gap = { option-check-gap }
option-next-state = { option-check-state }
option-next-there = was du schon hast: hides, uv meter, white light, long tube, seasons, plants

## arrange
option-arrange-animal = { option-plan-animal }
option-arrange-enclosure = { option-plan-enclosure }
option-arrange-lid = { option-plan-lid }
option-arrange-material = { option-plan-material }
option-arrange-room = { option-plan-room }
option-arrange-night = { option-plan-night }
option-arrange-place = { option-plan-place }
option-arrange-screen = { option-plan-screen }
option-arrange-tube = { option-plan-tube }
option-arrange-reflector = { option-plan-reflector }
option-arrange-length = { option-plan-length }
option-arrange-lamp = { option-plan-lamp }
option-arrange-watts = { option-plan-watts }
option-arrange-back = { option-plan-back }
option-arrange-uvi = { option-plan-uvi }
option-arrange-tubes = { option-plan-tubes }
option-arrange-gap = { option-plan-gap }
option-arrange-state = { option-plan-state }
option-arrange-level = { option-plan-level }
option-arrange-light = { option-section-light }
