### Facts: HeatReading, HeatStep, HeatAim
### Readings of temperatures, and the steps that mend them.

## Where it is read
heat-place = { $place ->
    [basking_surface] Basking surface
    [cool_air] Cool end
    [warm_air] Warm end
    [water] Water
   *[night_air] Night
  }
heat-spot = { $place ->
    [basking_surface] Basking spot
    [cool_air] Cool end
    [warm_air] Warm end
    [water] Water
   *[night_air] Night
  }
heat-the = { $place ->
    [basking_surface] The basking surface
    [cool_air] The cool end
    [warm_air] The warm end
    [water] The water
   *[night_air] The night
  }
heat-listed = { $place ->
    [basking_surface] basking spot
    [cool_air] cool end
    [warm_air] warm end
    [water] water
   *[night_air] night
  }
heat-clause = { heat-listed } { heat-read }

## How it stands
heat-off = { $touch ->
    [yes] a little
   *[no] { DIFF($off) }
  }
heat-hot = { $place ->
    [basking_surface] hot
   *[other] warm
  }
heat-verdict = { $stand ->
    [too_low] { heat-the } is { heat-off } too cool { heat-where }.
    [too_high] { heat-the } is { heat-off } too { heat-hot } { heat-where }.
    [probably_low] { heat-the } is probably too cool { heat-where }.
    [probably_high] { heat-the } is probably too { heat-hot } { heat-where }.
    [cannot_tell] { heat-the } may be right or just off { heat-where }.
    [keepers_differ] Keepers differ about a night of { TEMP($read) }.
    [no_need] { heat-the } is { TEMP($read) }. It needs no hot spot: the air counts.
    [no_target] { heat-the } is { TEMP($read) }. I know no target for it.
   *[right] { heat-the } is right { heat-where }.
  }
# What was read: one value, or from one end to the other; and the end that a verdict is about.
heat-read = { $span ->
    [none] { TEMP($read) }
   *[some] { TEMP($span, form: "range") }
  }
heat-where = { $at ->
    [low_end] at its low end, { TEMP($read) }
    [high_end] at its high end, { TEMP($read) }
   *[whole] at { heat-read }
  }
heat-spot-at = { $at ->
    [low_end] { heat-spot } at its coolest
    [high_end] { heat-spot } at its warmest
   *[whole] { heat-spot }
  }
# One line of the brief.
heat-line = { $stand ->
    [too_low] { heat-spot-at }: { heat-off } too cool.
    [too_high] { heat-spot-at }: { heat-off } too { heat-hot }.
    [probably_low] { heat-spot-at }: probably too cool.
    [probably_high] { heat-spot-at }: probably too { heat-hot }.
    [cannot_tell] { heat-spot-at }: right or just off.
    [keepers_differ] { heat-spot }: keepers differ.
    [no_need] { heat-spot }: it needs none.
    [no_target] { heat-spot }: I know no target.
   *[right] { heat-spot } { heat-read }: right.
  }
heat-off-by = { $unchecked ->
    [yes] if the range is right
   *[no] and a thermometer may be off by as much
  }
heat-stand = { $stand ->
    [too_low] { heat-off } too cool
    [too_high] { heat-off } too { heat-hot }
    [probably_low] probably too cool ({ heat-off }, { heat-off-by })
    [probably_high] probably too { heat-hot } ({ heat-off }, { heat-off-by })
    [cannot_tell] I cannot tell ({ heat-off } off, and a thermometer may be off by as much)
    [keepers_differ] keepers differ
    [no_need] it needs no basking spot
    [no_target] I know no target
   *[right] right
  }
heat-row = { $at ->
    [low_end] { heat-read }, at its low end: { heat-stand }. { heat-for }
    [high_end] { heat-read }, at its high end: { heat-stand }. { heat-for }
   *[whole] { heat-read }: { heat-stand }. { heat-for }
  }
# Where the readings contradict each other, none is judged.
heat-row-unjudged = { heat-read }. { heat-for }
heat-for = { $aim ->
    [none] Ask a keeper or reptile vet you trust.
   *[some] { $place ->
        [night_air] It needs heat below { $aim }.
       *[other] Aim for { $aim }.
      }
  }
heat-aim = { $has_best ->
    [yes] { TEMP($wanted, form: "range") }, best { TEMP($wanted) } ({ $known })
   *[no] { TEMP($wanted, form: "range") } ({ $known })
  }

## What is still to be measured
heat-missing-basking_surface = the basking surface, with an infrared gun
heat-missing-cool_air = the air at the cool end, with a digital probe at the animal's height
heat-missing-warm_air = the air at the warm end, with a digital probe out of the beam
heat-missing-water = the water, with a water thermometer
heat-missing-night_air = the coldest it gets at night, with a thermometer that remembers it

## Why not to trust a reading yet
heat-doubt-not_yet_a_reading = Your lamp had been on for less than two hours. What is too low or right now may still rise. What is too hot already is too hot.
heat-doubt-lamp_time_not_said = You did not say how long the lamp had been on. Before 2 to 3 hours nothing counts.
heat-doubt-dial_not_trusted = Do not trust a dial or strip gauge.
heat-doubt-probe_for_surface = A probe does not read a surface.
heat-doubt-gun_for_air = An infrared gun does not read the air.
heat-doubt-cool_end_above_surface = The cool end cannot be as hot as the basking surface.
heat-doubt-cool_end_above_warm_end = The cool end cannot be warmer than the warm end.
heat-doubt-warm_probe_in_beam = The warm end reads so hot that its probe is probably in the beam.

## What to do, short
heat-do-switch_lamp_off = Switch the basking lamp off now and let everything cool down.
heat-do-warm_it_tonight = Move your animal to a warmer room for the nights.
heat-do-wait_and_read_again = Change nothing. Read again when the lamp has been on for 2 to 3 hours.
heat-do-use_trusted_thermometer = Measure again with an infrared gun and a digital probe.
heat-do-measure_surface_with_gun = Read the basking surface with an infrared gun.
heat-do-measure_air_with_probe = Read the air with a digital probe.
heat-do-check_probe_places = Check which reading is which.
heat-do-cool_down_if_true = If it really is so hot: lamp off, shade the box, cool the room.
heat-do-move_probe_out_of_beam = Move the warm-end probe out of the beam.
heat-do-measure_surface = Read the basking surface with an infrared gun.
heat-do-measure_cool_end = Read the cool end with a digital probe.
heat-do-measure_water = Read the water with a water thermometer.
heat-do-lower_lamp = Lower the lamp a little, never closer than its label allows.
heat-do-raise_lamp = Raise the lamp a little.
heat-do-more_power = { $lamp ->
    [none] Use the next stronger lamp, if its holder is marked for it.
   *[some] Use a { WATTS($lamp) } lamp, if its holder is marked for it.
  }
heat-do-less_power = { $lamp ->
    [none] { $part ->
        [none] Use the next smaller lamp, or dim it by no more than 20 %.
       *[some] Use a lamp of about { SHARE($part) } of the watts, and no dimmer.
      }
   *[some] Use a { WATTS($lamp) } lamp instead.
  }
heat-do-move_lamp_inward = Move the lamp a bit to the middle.
heat-do-second_weaker_lamp = { $lamp ->
    [none] Add a second, weaker heat lamp nearer to the middle.
   *[some] Add a second heat lamp of { WATTS($lamp) } nearer to the middle.
  }
heat-do-more_air = Let more air through the lid.
heat-do-less_air = Close more of the lid with something that cannot burn.
heat-do-cooler_room = { $room ->
    [none] Cool the room: shade the window, let cool air in.
   *[some] Cool the room to about { TEMP($room) } or less.
  }
heat-do-warmer_room = { $room ->
    [none] Warm the room a little.
   *[some] Warm the room to about { TEMP($room) }.
  }
heat-do-longer_enclosure = Think about a longer enclosure.
heat-do-check_warm_probe = Check that the warm-end probe hangs in shade.
heat-do-watch_warm_end = Change nothing else. Read the warm end again tomorrow.
heat-do-heat_the_night = Give heat without light at night, on a thermostat.
heat-do-consider_night_heat = Ask your vet or an experienced keeper about the night.
heat-do-cooler_night = Let the night be cooler: heaters off with the lights.
heat-do-warmer_water = Warm the water slowly: a heater with a guard, on a thermostat.
heat-do-cooler_water = Cool the water slowly: heater down, shade, cool room.
heat-do-check_the_range = Leave it, and check the range first.
heat-do-measure_again = Leave it, and measure again.
heat-do-leave_as_it_is = Well done. Leave everything as it is.

## What to do, and why
heat-step-switch_lamp_off = { heat-do-switch_lamp_off } A surface this hot can burn, and without a cool place an animal cannot save itself. If yours gapes, lies limp or has a burn, call a reptile vet at once.
heat-step-warm_it_tonight = { heat-do-warm_it_tonight } A night this cold harms it, and a heater in the box may not be enough. If it is limp or does not move, warm it slowly and call a reptile vet at once.
heat-step-wait_and_read_again = { heat-do-wait_and_read_again } Stone, walls and air are still warming up, so this is not yet a reading.
heat-step-use_trusted_thermometer = { heat-do-use_trusted_thermometer } The gun is for the surface, the probe for the air. A dial or strip can be wrong by more than your animal can bear.
heat-step-measure_surface_with_gun = { heat-do-measure_surface_with_gun } A probe that lies on it reads half air and half lamp.
heat-step-measure_air_with_probe = { heat-do-measure_air_with_probe } Hang it at your animal's height. A gun shows the surface it points at, never the air.
heat-step-check_probe_places = { heat-do-check_probe_places } Look where each one was taken. The cool end cannot be warmer than the end with the lamp: two readings were swapped, or sun or a radiator heats that end.
heat-step-cool_down_if_true = { heat-do-cool_down_if_true } Without a cool place an animal cannot save itself.
heat-step-move_probe_out_of_beam = { heat-do-move_probe_out_of_beam } Hang it in shade at your animal's height. In the beam it reads the lamp and not the air.
heat-step-measure_surface = { heat-do-measure_surface } Aim right where your animal lies. It is the most important of all the readings.
heat-step-measure_cool_end = { heat-do-measure_cool_end } Hang it at the far end, at your animal's height. It comes next after the basking surface.
heat-step-measure_water = { heat-do-measure_water } Read it where your animal rests, away from a heater.
heat-step-lower_lamp = { heat-do-lower_lamp } That warms the spot and hardly changes the far end. Keep it where your animal cannot touch it. Ask basking, and I tell you how far.
heat-step-raise_lamp = { heat-do-raise_lamp } That cools the spot and hardly changes the far end. Ask basking, and I tell you how far.
heat-step-more_power = { heat-do-more_power } Moving a lamp only shifts the warmth about. A stronger one warms the whole box.
heat-step-less_power = { heat-do-less_power } That takes warmth out of the whole box. Then set the spot again by the lamp's distance.
heat-step-move_lamp_inward = { heat-do-move_lamp_inward } Keep it at the same height. The cool end gets more of its warmth and the spot stays as hot. Move the stone and the UV tube with it.
heat-step-second_weaker_lamp = { heat-do-second_weaker_lamp } It lifts the cool end without making the basking spot hotter.
heat-step-more_air = { heat-do-more_air } Open a vent, or put mesh in part of a solid lid. Warm air leaves at the top, and the far end cools first.
heat-step-less_air = { heat-do-less_air } Do it away from the lamps. Much of the warmth leaves through the mesh.
heat-step-cooler_room = { heat-do-cooler_room } Shade the window, let cool air in, or move the box. No box is cooler than its room.
heat-step-warmer_room = { heat-do-warmer_room } The whole box gets warmer with it, and no lamp has to do it alone.
heat-step-longer_enclosure = { heat-do-longer_enclosure } In a short one both ends are nearly alike, whatever you do with the lamp.
heat-step-check_warm_probe = { heat-do-check_warm_probe } It must hang out of the beam. The warm end is mostly an early warning. The spot and the cool end count for more.
heat-step-watch_warm_end = { heat-do-watch_warm_end } As long as the spot and the cool end are right, your animal can choose.
heat-step-heat_the_night = { heat-do-heat_the_night } A simple on/off thermostat will do. This night is colder than your animal can cope with. Ask night, and I tell you how much heat.
heat-step-consider_night_heat = { heat-do-consider_night_heat } Keepers differ about a night like this. A young or ill animal needs the warmer side.
heat-step-cooler_night = { heat-do-cooler_night } A night warmer than the cool end's day gives no rest.
heat-step-warmer_water = { heat-do-warmer_water } No more than 2 °F (1 °C) in an hour, and out of reach of teeth and claws.
heat-step-cooler_water = { heat-do-cooler_water } Never put ice or much cold water in at once. Water that is too warm holds too little air.
heat-step-check_the_range = { heat-do-check_the_range } It is off by more than a thermometer may be, but my range is from memory. Compare it with a book or ask a reptile vet before you change anything.
heat-step-measure_again = { heat-do-measure_again } It is off by no more than a thermometer may be, so there is nothing to change yet.
heat-step-leave_as_it_is = { heat-do-leave_as_it_is } What you measured is right. Read again when the season or the room changes.
