### Wo UV, Wärme und Licht sich treffen, und wo Schatten von allen dreien ist.

sun-label = Ein Fleck Sonne
sun-patch = UV, Wärme und das Licht der Wärmelampe treffen sich auf { SHARE($sun) } des Platzes ({ SHARE($sun, form: "range") })
sun-label-shade = Schatten von allen dreien
sun-shade = { SHARE($open_shade) } des Terrariums ({ SHARE($open_shade, form: "range") }), ohne Verstecke und Pflanzen; eine weiße Leiste lässt weniger
sun-label-light = Helligkeit
sun-light-unknown = nicht bekannt: In dieser Antwort ist keine weiße Lampe. Dafür frag bright, mit Art, Watt und Abstand
sun-here = UV, Wärme, Licht
sun-note = Gold am Sonnenplatz: Dort treffen sich UV, Wärme und Licht.
sun-alt = UV, Wärme und Licht treffen sich auf { SHARE($sun) } des Platzes.
