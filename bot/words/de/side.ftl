### Wie eine Zeichnung vom Terrarium seine Teile nennt.

side-warm = warme Seite
side-cool = kühle Seite
side-screen = Gitter
side-lamp = Wärmelampe
side-tube = UV-Röhre
side-stand = Sonnenplatz
side-from-warm = Von der warmen Seite, durch den Sonnenplatz
