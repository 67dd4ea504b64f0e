### Facts: AnimalsMeant, KnownLine, KnownSoFar
### Eins nach dem anderen gefragt, in einem Gespräch: Die nächste Zeile sagt es.

talk-title = Noch eins
talk-which = Welches ist es: { LIST($here, join: "list-or") }?
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
talk-known = Bisher: { LIST($told, join: "list-semi") }.
# Only with: $asked
talk-known-asked = Letzte Frage: { $asked }
talk-known-line = { $text }
talk-known-none = Noch weiß ich nichts von deinem Aufbau. Erzähl mir davon, oder frag mich etwas.
talk-known-new = Neu anfangen: neu
