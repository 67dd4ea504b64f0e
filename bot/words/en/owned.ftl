### Facts: OwnLampTold, OwnScreenTold, OwnRangeTold, OwnLimitTold, OwnSet, OwnLatin
### The figures that a group set for itself.

owned-lamp-kind = { $kind ->
    [other_tube] T8 or other tube,
    [compact] compact lamp,
    [metal_halide] metal halide lamp,
    [mercury] mercury vapour lamp,
    [led] LED bar,
   *[t5_ho] T5 HO tube,
  }
owned-lamp-sure = good to about { SHARE($doubt) }, from { $readings ->
    [one] one meter reading
   *[other] { $readings } meter readings
  }
# Only with: $constant, $lit
owned-lamp = { owned-lamp-kind } { NUMBER($constant) } UVI·m, { owned-lamp-sure }, lit part { LENGTH($lit) }{ $set_on ->
    [none] {""}
   *[some] ; set on { DAY($set_on) }
  }
# Only with: $there, $at
owned-lamp-small = { owned-lamp-kind } UV index { UVI($there) } at { LENGTH($at) }, { owned-lamp-sure }{ $set_on ->
    [none] {""}
   *[some] ; set on { DAY($set_on) }
  }
owned-lamp-named = { $name }: { $law }
owned-screen = lets { SHARE($passes) } of the UV through, blocks { SHARE($blocks) }{ $set_on ->
    [none] {""}
   *[some] ; set on { DAY($set_on) }
  }
owned-set = { LIST($told, join: "list-with") }{ $set_on ->
    [none] {""}
   *[some] ; set on { DAY($set_on) }
  }
owned-latin = { $scientific }

## Targets
# Only with: $uvi
owned-uvi = UV index { UVI($uvi, form: "range") }{ $has_best ->
    [yes] , best { UVI($uvi, form: "given") }
   *[no] {""}
  }
# Only with: $light
owned-light = light { HOURS($light, form: "range") }{ $has_best ->
    [yes] , best { HOURS($light) }
   *[no] {""}
  }
# Only with: $deep
owned-deep = { owned-of } { LENGTH($deep, form: "range") }{ $has_best ->
    [yes] , best { LENGTH($deep) }
   *[no] {""}
  }
# Only with: $warmth
owned-warmth = { owned-of } { TEMP($warmth, form: "range") }{ $has_best ->
    [yes] , best { TEMP($warmth) }
   *[no] {""}
  }
owned-of = { $of ->
    [uvi] UV index
    [warm_air] warm-end air
    [cool_air] cool-end air
    [night_floor] night heat only below
    [night_heat_off] night heat off at
    [water] water
    [water_depth] depth of water
    [light_hours] light
   *[other] basking surface
  }
# Only with: $uvi
owned-value-uvi = UV index { UVI($uvi, form: "given") }
# Only with: $light
owned-value-light = { HOURS($light) } of light
# Only with: $deep
owned-value-deep = { LENGTH($deep) }
# Only with: $warmth
owned-value-warmth = { TEMP($warmth) }

## Limits
# Only with: $uvi
owned-limit-uvi = UV index under { UVI($uvi, form: "given") }{ $by ->
    [group] , set by this group
    [careful] , a careful one of mine
   *[nobody] {""}
  }
# Only with: $warmth
owned-limit-warmth = { $what ->
    [coolest] coolest place under
    [night] no night under
   *[surface] no surface over
  } { TEMP($warmth) }{ $by ->
    [group] , set by this group
    [careful] , a careful one of mine
   *[nobody] {""}
  }
# Only with: $uvi
owned-span-uvi = UV index { UVI($uvi, form: "range") }
# Only with: $warmth
owned-span-warmth = { TEMP($warmth, form: "range") }
