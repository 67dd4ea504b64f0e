### Facts: GaugeTold, GaugesTold
### The picture of readings: a thermometer a place.

gauge-title = Temperatures for { NAME($animal, form: "a") }
gauge-subtitle = where each thermometer goes, what it reads, what to aim for
gauge-axis = Temperature
gauge-note = Bar: what to aim for. Diamond: what you read, with its doubt.
gauge-alt = Gauges: temperatures for { NAME($animal, form: "a") }.
gauge-label = { $place ->
    [basking_surface] Basking surface
    [cool_air] Cool end
    [warm_air] Warm end
    [water] Water
   *[night_air] Night
  }
gauge-where = { $place ->
    [basking_surface] Measure the basking surface, with an infrared gun
    [cool_air] Measure the air at the cool end, with a digital probe at the animal's height
    [warm_air] Measure the air at the warm end, with a digital probe out of the beam
    [water] Measure the water, with a water thermometer
   *[night_air] Measure the coldest of the night, with a thermometer that remembers it
  }
# Only with: $wanted
gauge-wanted = { $place ->
    [night_air] needs heat below { gauge-span }
   *[other] aim for { gauge-span }
  }
# Only with: $wanted
gauge-span = { $has_best ->
    [yes] { TEMP($wanted, form: "range") }, best { TEMP($wanted) }
   *[no] { TEMP($wanted, form: "range") }
  }
# Only with: $read
gauge-read = reads { TEMP($read) }
gauge-verdict = { $read ->
    [none] not read yet
   *[some] { $differ ->
        [yes] keepers differ
       *[no] { gauge-judged }
      }
  }
gauge-judged = { $verdict ->
    [none] no target known
    [far_too_low] { verdict-far_too_low }
    [low] { verdict-low }
    [probably_low] { verdict-probably_low }
    [fine] { verdict-fine }
    [cannot_tell] { verdict-cannot_tell }
    [probably_high] { verdict-probably_high }
    [high] { verdict-high }
   *[dangerous] { verdict-dangerous }
  }
gauge-told = { gauge-label }: { $read ->
    [none] { gauge-verdict }.
   *[some] { gauge-read }, { gauge-verdict }.
  }
