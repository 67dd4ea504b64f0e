### Was zu Worten gefragt wird, die nicht klar sind.

unclear-animal = Dieses Tier kenne ich nicht: Welches ist es?
unclear-which = Welches Tier ist es?
unclear-which-of = Welches ist es: { LIST($names, join: "list-or") }?
unclear-holds = Was stimmt: { LIST($names, join: "list-or") }?
unclear-long = Das ist mehr, als ich auf einmal lesen kann. Geht es kürzer?
unclear-need = Schreib { $what }.
unclear-number = Welche Zahl ist gemeint? Schreib sie mit Punkt statt Komma.
unclear-degrees = Ist { $text } in °F oder in °C?
unclear-where = Wo hast du das gemessen: Sonnenplatz, warme Seite, kühle Seite, nachts oder im Zimmer?
unclear-inches = Sind das Zoll oder Zentimeter?
unclear-far = Keine Lampe hängt mehr als 3 m über einem Tier. Was ist es, etwa 40cm?
unclear-label = Auf Röhren steht 1% bis 20%. Was steht auf deiner, etwa 12%?
unclear-tube = Welche Stärke steht auf der Röhre, die dort hängt?
unclear-lamp = Benutzt du diese Lampe schon?
unclear-between = Was ist dann zwischen Röhre und Tier: nichts, oder ein Gitter, und wie viel schluckt es (45%)?
unclear-whose = Ist { $text } die Stärke der Röhre, oder wie viel das Gitter schluckt? Dann schreib: mesh blocks 45%
unclear-mesh = Wie viel schluckt dieses Gitter (45%), oder was sind Maschen und Draht (18x16 0.011in)? Und ist die Röhre darüber oder innen?
