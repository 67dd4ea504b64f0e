### Facts: GaugeTold, GaugesTold, BoxLong
### The picture of readings: a thermometer a place.

gauge-title = Temperatures for { NAME($animal, form: "a") }
gauge-box = An example box: only the places count.
gauge-own = The box has your size; what you did not tell me is drawn in a usual place.
gauge-length = { LENGTH($seen) }
gauge-note = Bar: what to aim for. Diamond: what you read, with its doubt.
gauge-label = { $place ->
    [basking_surface] Basking surface
    [cool_air] Cool end
    [warm_air] Warm end
    [water] Water
   *[night_air] Night
  }
gauge-tool = { $place ->
    [basking_surface] with an infrared gun
    [cool_air] digital probe at its height
    [warm_air] digital probe out of the beam
    [water] water thermometer
   *[night_air] thermometer that keeps the lowest
  }
# Only with: $wanted
gauge-wanted = { $place ->
    [night_air] needs heat below { gauge-span }
   *[other] aim for { gauge-span }
  }
# Only with: $wanted
gauge-span = { TEMP($wanted, form: "range") }
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
    [none] { $wanted ->
        [none] { gauge-verdict }
       *[some] { gauge-wanted }
      }.
   *[some] { gauge-read }, { gauge-verdict }.
  }

## A place by itself
gauge-place-basking_surface = Basking surface
gauge-place-warm_air = Warm end
gauge-place-cool_air = Cool end
gauge-place-night_air = Night
