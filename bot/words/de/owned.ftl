### Die Zahlen, die eine Gruppe selbst festgelegt hat.

owned-lamp-kind = { $kind ->
    [other_tube] T8- oder andere Röhre,
    [compact] Kompaktlampe,
    [metal_halide] Metalldampflampe,
    [mercury] Quecksilberdampflampe,
    [led] LED-Leiste,
   *[t5_ho] T5-HO-Röhre,
  }
owned-lamp-sure = auf etwa { SHARE($doubt) } genau, aus { $readings ->
    [one] einem Messwert
   *[other] { $readings } Messwerten
  }
# Only with: $constant, $lit
owned-lamp = { owned-lamp-kind } { NUMBER($constant) } UVI·m, { owned-lamp-sure }, leuchtender Teil { LENGTH($lit) }{ $set_on ->
    [none] {""}
   *[some] ; festgelegt am { DAY($set_on) }
  }
# Only with: $there, $at
owned-lamp-small = { owned-lamp-kind } UV-Index { UVI($there) } bei { LENGTH($at) }, { owned-lamp-sure }{ $set_on ->
    [none] {""}
   *[some] ; festgelegt am { DAY($set_on) }
  }
owned-lamp-named = { $name }: { $law }
owned-screen = lässt { SHARE($passes) } vom UV durch, hält { SHARE($blocks) } ab{ $set_on ->
    [none] {""}
   *[some] ; festgelegt am { DAY($set_on) }
  }
owned-set = { LIST($told, join: "list-with") }{ $set_on ->
    [none] {""}
   *[some] ; festgelegt am { DAY($set_on) }
  }
owned-latin = { $scientific }

## Zielwerte
# Only with: $uvi
owned-uvi = UV-Index { UVI($uvi, form: "range") }{ $has_best ->
    [yes] , am besten { UVI($uvi, form: "given") }
   *[no] {""}
  }
# Only with: $light
owned-light = Licht { HOURS($light, form: "range") }{ $has_best ->
    [yes] , am besten { HOURS($light) }
   *[no] {""}
  }
# Only with: $deep
owned-deep = { owned-of } { LENGTH($deep, form: "range") }{ $has_best ->
    [yes] , am besten { LENGTH($deep) }
   *[no] {""}
  }
# Only with: $warmth
owned-warmth = { owned-of } { TEMP($warmth, form: "range") }{ $has_best ->
    [yes] , am besten { TEMP($warmth) }
   *[no] {""}
  }
owned-of = { $of ->
    [uvi] UV-Index
    [warm_air] Luft auf der warmen Seite
    [cool_air] Luft auf der kühlen Seite
    [night_floor] nachts heizen nur unter
    [night_heat_off] Nachtwärme aus bei
    [water] Wasser
    [water_depth] Wassertiefe
    [light_hours] Licht
   *[other] Fläche am Sonnenplatz
  }
# Only with: $uvi
owned-value-uvi = UV-Index { UVI($uvi, form: "given") }
# Only with: $light
owned-value-light = { HOURS($light) } Licht
# Only with: $deep
owned-value-deep = { LENGTH($deep) }
# Only with: $warmth
owned-value-warmth = { TEMP($warmth) }

## Grenzen
# Only with: $uvi
owned-limit-uvi = UV-Index unter { UVI($uvi, form: "given") }{ $by ->
    [group] , von dieser Gruppe festgelegt
    [careful] , vorsichtig von mir gesetzt
   *[nobody] {""}
  }
# Only with: $warmth
owned-limit-warmth = { $what ->
    [coolest] kühlster Platz unter
    [night] keine Nacht unter
   *[surface] keine Fläche über
  } { TEMP($warmth) }{ $by ->
    [group] , von dieser Gruppe festgelegt
    [careful] , vorsichtig von mir gesetzt
   *[nobody] {""}
  }
# Only with: $uvi
owned-span-uvi = UV-Index { UVI($uvi, form: "range") }
# Only with: $warmth
owned-span-warmth = { TEMP($warmth, form: "range") }
