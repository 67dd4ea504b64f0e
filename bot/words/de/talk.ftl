### Facts: AnimalsMeant, KnownLine, KnownSoFar, Noted, NowAt, SpokenOf, TakenAs
### Eins nach dem anderen gefragt, in einem Gespräch: Die nächste Zeile sagt es.

talk-title = Noch eins
talk-hello = Hallo! Welches Tier hältst du? Oder frag mich nach Licht, UV, Wärme oder Nächten.
talk-which = Welches ist es: { LIST($here, join: "list-or") }{ $more ->
    [yes] , oder ein anderes mit eigenem Namen
   *[no] {""}
  }?
talk-animal = Für welches Tier ist es?
talk-tube = Wie stark ist die Röhre? An einem Ende steht es: 12%, 5.0.
talk-reflector = Was ist hinter der Röhre: ein Spiegel oder einfach Weiß?
talk-screen = Was ist zwischen Röhre und Tier: nichts oder Gitter?
talk-screen-tube = Was ist zwischen Röhre und Tier: nichts oder Gitter? Wie viel schluckt es? Weißt du es nicht, sag 45%.
talk-distance = Wie weit ist es von der Röhre bis zum Rücken deines Tiers?
talk-distance-lamp = Wie weit ist es von der Lampe bis zur Fläche am Sonnenplatz?
talk-enclosure = Wie groß ist das Terrarium innen: Länge, Tiefe und Höhe?
talk-material = Woraus sind die Wände: Glas, Holz, PVC?
talk-lid = Wie ist der Deckel: zu, halb Gitter oder ganz Gitter?
talk-room = Wie warm ist das Zimmer?
talk-room-night = Wie kalt wird das Zimmer nachts?
talk-surface = Wie heiß ist die Fläche am Sonnenplatz jetzt, mit Infrarot-Thermometer?
talk-air = Wie warm ist die Luft neben dem Sonnenplatz, außerhalb des Lichtkegels?
talk-reading = Was zeigt das Infrarot-Thermometer?
talk-readings = Was zeigt das Messgerät, und wie weit von der Röhre?
talk-uvi = Welcher UV-Index ist am Sonnenplatz?
talk-value = Welche Länge oder Temperatur, mit Einheit?
talk-basking = Wie heiß ist die Fläche am Sonnenplatz, mit Infrarot-Thermometer?
talk-cool = Wie warm ist die Luft auf der kühlen Seite?
talk-warm = Wie warm ist die Luft auf der warmen Seite, außerhalb des Lichtkegels?
talk-night = Wie kalt wird es nachts im Terrarium?
talk-meter = Was zeigt ein UV-Index-Messgerät an seinem Rücken?
talk-latitude = Wie weit im Norden oder Süden wohnst du: welcher Breitengrad?
talk-month = Um welchen Monat geht es?
talk-watts = Wie viel Watt hat die Wärmelampe?
talk-lamp = Was für eine Lampe ist es?
talk-lumens = Wie viel Lumen stehen auf ihr?
talk-length = Wie lang ist die Lampe, oder wie viel Watt stehen drauf?
talk-age = Wie lange ist die Röhre schon in Gebrauch?
talk-hours = Wie viele Stunden am Tag ist das Licht an?
talk-there = Was von einem guten Aufbau ist schon da?
talk-with_tube = Wie stark ist die andere Röhre?
talk-known = Bisher: { LIST($told, join: "list-semi") }.
# Only with: $asked
talk-known-asked = Letzte Frage: { $asked }
talk-known-line = { $text }
talk-known-none = Noch weiß ich nichts von deinem Aufbau. Erzähl mir davon, oder frag mich etwas.
talk-known-new = Neu anfangen: neu

## Neben einer Antwort
talk-which-only = Ist es { LIST($here, join: "list-or", form: "a") }? Für andere habe ich keine Zahlen.
talk-if-it-is = Das gilt für: { LIST($here, join: "list-or") }. Für andere habe ich keine Zahlen.
talk-simpler = Auf die erste Zeile kommt es an; dann mach Schritt 1.
talk-units = War eine Zahl in der anderen Einheit gemeint, sag sie noch einmal mit Einheit: 12C, 54F.
talk-noted = Gemerkt: { $text }. Hier ändert es nichts.
talk-done = Gut. Sag Bescheid, wenn sich ein Wert ändert.
talk-correct = Dann sag mir, was stimmt, und wo: Sonnenplatz 35 °C, Röhre 30 cm entfernt.
talk-taken-as = Als { TEMP($degrees) } gelesen, wie zuvor.
talk-taken-likely = Gelesen als { TEMP($degrees) }. Falsch?
talk-mesh-least = Gitter: 30 % gerechnet, das Mindeste.
talk-mesh-none = Ohne Gitter gerechnet: am stärksten.
talk-moved = Ich rechne nach dem Umhängen mit { LENGTH($distance) }.
talk-measure-again = Warte 2 Stunden, dann miss den Sonnenplatz neu.
talk-open-tube = Noch offen: wie stark die Röhre ist.
talk-open-reflector = Noch offen: was hinter der Röhre ist.
talk-open-screen = Noch offen: was zwischen Röhre und Tier ist.
talk-open-distance = Noch offen: wie weit weg es ist.
talk-open-enclosure = Noch offen: wie groß das Terrarium ist.
talk-open-material = Noch offen: woraus die Wände sind.
talk-open-lid = Noch offen: wie der Deckel ist.
talk-open-room = Noch offen: wie warm das Zimmer ist.
talk-open-surface = Noch offen: wie heiß die Fläche ist.
talk-open-air = Noch offen: wie warm die Luft ist.
talk-open-reading = Noch offen: was das Infrarot-Thermometer zeigt.
talk-open-readings = Noch offen: was das Messgerät zeigt.
talk-open-uvi = Noch offen: welcher UV-Index dort ist.
talk-open-value = Noch offen: welche Zahl.

## Wo eine Zeile nichts meint oder zweierlei
talk-unclear = Das habe ich nicht verstanden. Sag mir das Tier oder eine Zahl mit Einheit: 30 cm, 35C.
talk-unclear-animal = Das habe ich nicht verstanden. Wir reden von: { NAME($animal) }. Du kannst sagen:
talk-way-night = und nachts?
talk-way-hours = wie viele Stunden Licht?
talk-way-basking = welcher Sonnenplatz?
talk-either = Ist das der Abstand der Röhre oder eine Temperatur?
talk-either-distance = der Abstand
talk-either-heat = eine Temperatur
