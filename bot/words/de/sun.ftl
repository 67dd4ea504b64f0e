### Wo UV, Wärme und Licht sich treffen, wie hell es ist, und wo Schatten von allen dreien ist.

sun-label = Ein Fleck Sonne
sun-patch = UV, Wärme und { $white ->
    [yes] Licht
   *[no] das Licht der Wärmelampe
  } treffen sich auf { SHARE($sun) } des Platzes ({ SHARE($sun, form: "range") })
sun-label-shade = Schatten von allen dreien
sun-shade = { SHARE($open_shade) } des Terrariums ({ SHARE($open_shade, form: "range") }), ohne Verstecke und Pflanzen{ $white ->
    [yes] {""}
   *[no] ; eine weiße Leiste lässt weniger
  }
sun-label-light = Helligkeit
sun-light = { $said }, etwa { LUX($spot) } am Rücken ({ LUX($spot, form: "range") }) und { LUX($cool) } auf der kühlen Seite, vom weißen Licht; die Wärmelampe gibt ihres dazu.{ $fair ->
    [none] {""}
   *[some] {" "}{ SHARE($fair) } des Platzes sind mittel oder heller.
  } Dunkel, mittel und hell sind unsere Worte: Ein Bedarf ist unbekannt. UV gibt es keines
sun-words-dim = eher dunkel
sun-words-dim_or_fair = dunkel bis mittel
sun-words-fair = mittel
sun-words-fair_or_bright = mittel bis hell
sun-words-bright = hell
sun-words-cannot_tell = dunkel oder hell, das ist offen
sun-words-no_band = ohne eigene Stufe von uns dafür
sun-words-night = wer nachts wach ist, braucht keinen hellen Platz
sun-light-unknown = nicht bekannt: Du hast keine weiße Lampe genannt. Häng eine an, etwa light:24W led bar
sun-label-warms = Wärme vom weißen Licht
sun-warms = { WATTS($power) } wärmen die kühle Seite um etwa { DIFF($rise) }{ $fits ->
    [yes] : miss sie nach zwei Stunden neu
   *[no] , über ihren Bereich: nimm weniger Watt, oder erst einen kühleren Raum
  }
sun-care-warms = Das weiße Licht würde die kühle Seite über ihren Bereich wärmen. Nimm weniger Watt.
sun-care-warms-short = Weißes Licht: weniger Watt.
sun-here = UV, Wärme, Licht
sun-note = Gold am Sonnenplatz: Dort treffen sich UV, Wärme und Licht.
sun-bar = weißes Licht
sun-alt = UV, Wärme und Licht treffen sich auf { SHARE($sun) } des Platzes.
sun-alt-light = Mit dem weißen Licht ist es { $said }, etwa { LUX($spot) } am Rücken.
