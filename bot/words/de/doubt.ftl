### Warum ein UV-Index ein Bereich ist, der größte Grund zuerst.

doubt-first = Der UV-Index ist ein Bereich, und das sind die Gründe, der größte zuerst.
doubt-lamp = Zwei Röhren derselben Art sind verschieden, um etwa { SHARE($about) }.
doubt-class = Die üblichen Abstände streuen, um etwa { SHARE($about) }.
doubt-rules = Niemand sagt, für welche Röhrenlänge diese Abstände gelten, etwa { SHARE($about) }.
doubt-label = Für diese Stärke habe ich keine eigenen Zahlen, etwa { SHARE($about) }.
doubt-fixture = Leuchten sind verschieden, um etwa { SHARE($about) }.
doubt-age = Röhren werden mit dem Alter schwächer, und eine neue ist in den ersten 100 Stunden stärker, um etwa { SHARE($about) }.
doubt-temperature = Wärme ändert die Leistung, um etwa { SHARE($about) }.
doubt-tape = Ein Maßband kann um einen Zentimeter danebenliegen, etwa { SHARE($about) }.
doubt-screen = Gitter unterscheiden sich in Draht, Schmutz und Glanz, um etwa { SHARE($about) }.
doubt-readings = Deine Messwerte streuen, und ein Handgerät kann danebenliegen, um etwa { SHARE($about) }.
doubt-group = Röhren dieser Klasse unterscheiden sich bei den Haltern deiner Gruppe, um etwa { SHARE($about) }.
doubt-spread = Jeder Reflektor streut UV anders zur Seite, etwa { SHARE($about) }.
doubt-length = Ich weiß nicht, wie lang die Röhre ist, und das zählt, um etwa { SHARE($about) }.
doubt-end-meter = Ein UV-Messgerät klärt das meiste davon.
doubt-end-yours = Deine eigenen Messwerte haben das meiste davon schon geklärt.
doubt-end-groups = Die Messwerte der Gruppe haben das meiste davon schon geklärt.
doubt-end-again = Deine Messwerte widersprechen sich: Miss noch einmal.
