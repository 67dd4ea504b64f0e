### Facts: Needs, OneNeed

needs-title = What { NAME($animal, form: "a") } needs

## The answer in brief
needs-head = { $uvi ->
    [none] { CAP($animal, form: "a") } needs:
   *[some] { CAP($animal, form: "a") } needs UV index { UVI($uvi, form: "range") }.
  }
needs-nothing = I know too little of what { NAME($animal, form: "a") } needs.
# Only with: $warmth
needs-line-warmth = { $need ->
    [basking_surface] { needs-spot }: { needs-span }.
    [cool_air] Cool end: { needs-span }.
    [water] Water: { needs-span }.
    [night_floor] Night: no heat above { needs-floor }.
   *[other] { needs-span }.
  }
# Only with: $warmth
needs-span = { TEMP($warmth, form: "range") }
# Only with: $warmth
needs-floor = { TEMP($warmth, form: "high") }
# Only with: $light
needs-line-light = Light: { HOURS($light, form: "range") } a day.
needs-spot = { $basks ->
    [yes] Basking
   *[no] Warmest
  }
needs-do = Measure what yours has now.
needs-do-ask = Ask a reptile vet.

needs-no-spot = It needs no basking spot.

needs-no-heat = No heat lamp: it needs no basking spot.
needs-do-climbs = Measure at its highest perch.
needs-step-life-water = { $has_air ->
    [yes] { $water_deep ->
        [none] Give it water to swim in, a dry place that it can climb onto, and a drip loop in every cable. How deep the water should be I do not know.
       *[some] Give it water at least as deep as said here, a dry place that it can climb onto, and a drip loop in every cable.
      }
   *[no] It lives in water alone: keep that cool and dim, and give every cable a drip loop.
  }
needs-step-life-climbs = It climbs: the highest perch under the lamp is its hottest and brightest place. Measure heat and UV there, at its back. No lamp may be in its reach.
needs-step-life-digs = It digs: give it a deep floor that holds a burrow, with no heater under it. In the burrow it cools down.
needs-step-life-night = It rests by day. UV and light reach it only where it rests in the open, so give full shade and a dark hide too.
needs-step-life-giant = It grows huge. Plan the room for a grown one before you buy lamps.
# Only with: $water_deep
needs-deep = Depth: { LENGTH($water_deep) } or more.
# Only with: $water_deep
needs-deep-own = Depth: { LENGTH($water_deep, form: "range") }.
needs-deep-unknown = Depth: I have no figure.
needs-label-water-deep = Depth of water
# Only with: $water_deep, $floor_citation
needs-water-deep = { LENGTH($water_deep) } or more: { $floor_citation }
# Only with: $water_deep, $deep_known
needs-water-deep-own = { LENGTH($water_deep, form: "range") } ({ $deep_known })

## Steps
needs-step-measure = Measure the surface where it lies with an infrared gun, and the cool end with a digital probe. Then ask, with your own readings: temps { needs-readings }
needs-readings = { $basking ->
    [none] { needs-cool }
   *[some] basking:{ TEMP($basking, units: "first") } { needs-cool }
  }
needs-cool = { $cool ->
    [none] animal:{ $called }
   *[some] cool:{ TEMP($cool, units: "first") } animal:{ $called }
  }
needs-step-tube = For the UV ask, with your own distance and screen: tube distance:{ LENGTH($shelf, units: "first") } screen:none animal:{ $called }
needs-step-plan = Nothing bought yet? Ask, with your own box and room: plan animal:{ $called } enclosure:{ LENGTH($length, units: "first") } x { LENGTH($depth, units: "first") } x { LENGTH($height, units: "first") } lid:full mesh room:{ TEMP($room, units: "first") } night:{ TEMP($night, units: "first") }
needs-step-again = Measure again after every change. These are ranges to aim for: your own meters and your animal decide.

## Numbers
needs-label-uvi = { $basks ->
    [yes] UV index where it basks
   *[no] UV index at its brightest place
  }
needs-label-basking_surface = { $basks ->
    [yes] Basking surface
   *[no] Warmest surface
  }
needs-label-warm_air = Warm-end air
needs-label-cool_air = Cool-end air
needs-label-night_floor = Night heat only below
needs-label-night_heat_off = Night heat off at
needs-label-light_hours = Hours of light
needs-unknown = not known here: ask an experienced keeper or a reptile vet
# Only with: $uvi
needs-aim-uvi = { $has_best ->
    [yes] { UVI($uvi, form: "range") }, best about { UVI($uvi, form: "given") }
   *[no] { UVI($uvi, form: "range") }
  }
# Only with: $warmth
needs-aim-warmth = { $has_best ->
    [yes] { TEMP($warmth, form: "range") }, best about { TEMP($warmth) }
   *[no] { TEMP($warmth, form: "range") }
  }
# Only with: $light
needs-aim-light = { HOURS($light, form: "range") } a day
# Only with: $uvi, $known
needs-known-uvi = { needs-aim-uvi } ({ $known })
# Only with: $warmth, $known
needs-known-warmth = { needs-aim-warmth } ({ $known })
# Only with: $light, $known
needs-known-light = { needs-aim-light } ({ $known })
needs-label-zone = UV zone
# Only with: $zone_is
needs-zone = { $zone_is }
needs-zone-1 = 1 of 4: keeps to cover, in shade or twilight, and is warmed by what is around it
needs-zone-2 = 2 of 4: comes into the open for short spells of sun
needs-zone-3 = 3 of 4: spends much of its day in sun and half-shade
needs-zone-4 = 4 of 4: seeks the strongest sun of the day
needs-step-water = Measure the water with a digital probe, away from heater and pump.
needs-label-water = Water
needs-label-awake = Awake
needs-awake-diurnal = by day
needs-awake-nocturnal = at night
needs-awake-crepuscular = at dusk and dawn
needs-awake-cathemeral = by day and by night
needs-label-adult = Grown up
# Only with: $adult, $group
needs-adult = { $group ->
    [tortoise] shell of { needs-length }
    [turtle] shell of { needs-length }
   *[other] { needs-length } long
  } (from memory, unchecked)
# Only with: $adult
needs-length = { LENGTH($adult, form: "range") }
needs-label-floor = Smallest floor
# Only with: $floor_long, $floor_deep, $floor_citation
needs-floor-told = { LENGTH($floor_long) } by { LENGTH($floor_deep) } or as much: { $floor_citation }
needs-no-lamp = { CAP($animal, form: "a") } needs no lamp, no heater and no UV.
needs-unchecked = From memory, unchecked.
# Only with: $too_hot
needs-too-hot = { $has_air ->
    [yes] If even its coolest place has { TEMP($too_hot) }, it cannot cool down: switch all heat off at once.
   *[no] Water of { TEMP($too_hot) } kills it.
  }

## One thing was asked about
# Only with: $uvi
needs-uv-yes = Yes. { needs-head }
# Only with: $uvi
needs-uv-maybe = Maybe a little: up to UV index { UVI($uvi, form: "high") }. It may do without.
needs-uv-no = No. { CAP($animal, form: "a") } needs no UV.
needs-uv-unknown = I do not know how much UV { NAME($animal, form: "a") } needs.
needs-about-unknown = I do not know that of { NAME($animal, form: "a") }.
needs-about-uvi = { needs-head }
# Only with: $warmth
needs-about-basking = { $may_bask ->
    [yes] Basking for { NAME($animal, form: "a") }: { TEMP($warmth, form: "range") }.
   *[no] Warmest place for { NAME($animal, form: "a") }: { TEMP($warmth, form: "range") }.
  }
# Only with: $warmth
needs-about-cool = Cool end for { NAME($animal, form: "a") }: { TEMP($warmth, form: "range") }.
# Only with: $warmth
needs-about-night = { $warmth_is_range ->
    [yes] No heat at night above { TEMP($warmth, form: "high") }. Below { TEMP($warmth, form: "low") } it needs some.
   *[no] No heat at night down to { TEMP($warmth, form: "high") }. If colder, it needs some.
  }
# Only with: $warmth
needs-about-water = { CAP($animal, form: "a") } needs { TEMP($warmth, form: "range") }. That is for its water.
# Only with: $light
needs-about-hours = { CAP($animal, form: "a") } needs { HOURS($light, form: "range") } of light daily.
# Only with: $heard
needs-heard-right = Good: { TEMP($heard) } is right { needs-where }.
# Only with: $heard
needs-heard-borderline = Maybe: { TEMP($heard) } is borderline { needs-where }.
# Only with: $heard
needs-heard-between = Not for a place of its own. { TEMP($heard) } is only right between the two ends.
# Only with: $heard
needs-heard-too_hot = Too hot: { TEMP($heard) } { needs-where }.
# Only with: $heard
needs-heard-too_cool = Too cool: { TEMP($heard) } { needs-where }.
needs-where = { $about ->
    [cool] at its cool end
    [night] at night
    [water] for its water
   *[other] { $may_bask ->
        [yes] where it basks
       *[no] at its warmest place
      }
  }
