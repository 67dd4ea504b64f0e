### Facts: Planned, PlanHeat, PlanAim, PlanAssumed, PlanChange, PlanWay, PlanSeen, PlanReading, NotPlanned, NoBack

plan-title = A starting set-up for { NAME($animal, form: "a") }
plan-place = { $stand ->
    [dock] dock
    [branch] branch or shelf
   *[platform] platform
  }

## The answer in brief
plan-yes = Yes. Tube to back: { LENGTH($away) }.
plan-range = Good: { LENGTH($away, form: "range") }.
# Only with: $floor_long, $floor_deep, $code
plan-small = Too small by { $code }. Grown: { LENGTH($floor_long, units: "first") } by { LENGTH($floor_deep, units: "first") } ({ LENGTH($floor_long, units: "second") } by { LENGTH($floor_deep, units: "second") }).
plan-for-now = For now: tube to back { LENGTH($away) }.
# Only with: $room_taken, $mesh_blocks
plan-assumed-short = Assumed: mesh { SHARE($mesh_blocks) }, { TEMP($room_taken) }.
# Only with: $mesh_blocks
plan-assumed-short-mesh = I assumed the mesh blocks { SHARE($mesh_blocks) }.
# Only with: $room_taken
plan-assumed-short-room = I assumed a room of { TEMP($room_taken) }.
plan-do-tube = { $place ->
    [inside] Inside
   *[above_mesh] On the mesh
  }{ $way ->
    [across] , across
    [whole_length] , end to end
   *[other] {""}
  }: { $lamp_short }, { LENGTH($long) }.
# Only with: $sizes
plan-do-heat-one_size = Heat beside it: { WATTS($sizes) }.
# Only with: $sizes
plan-do-heat-two_sizes = Heat beside it: { WATTS($sizes, form: "low") } or { WATTS($sizes, form: "high") }.
# Only with: $sizes
plan-do-heat-yours = Heat beside it: your { WATTS($sizes) } lamp.
plan-do-heat-gentle = { $open ->
    [yes] Too cool? Warm the room.
   *[no] Too cool? Heater on a thermostat.
  }
plan-do-heat-room = No heat lamp yet: measure first.
plan-do-night = { $open ->
    [yes] Night: warm the room, with no light.
   *[no] Night: dark heat, on a thermostat.
  }
plan-do-empty = Run it empty first, and measure.

## Why
plan-tried-platform_too_high = Not on the mesh: the { plan-place } would have to be higher than I would build it.
plan-tried-too_low = Not on the mesh: the back would be too close for every usual tube.
plan-tried-no_room_for_heat = Not on the mesh: there is no room for the heat lamp.
plan-tried-too_close = Not on the mesh: every usual tube would have to hang too close.
plan-tried-too_weak = Not on the mesh: every usual tube is too weak through it.
plan-tried-too_strong = Not on the mesh: every usual tube is too strong there.
plan-tried-length_untold = Not on the mesh: how far away it goes depends on its length.
plan-tried-solid_lid = Not on the lid: no UV passes a solid one.
plan-tried-tube_too_long = Not on the mesh: your tube is too long for it.
plan-tried-no_tube_short_enough = Not on the mesh: no usual tube is short enough.
plan-tried-too_short = Not on the mesh: the box is too short.
plan-tried-air_too_warm = Not on the mesh: the box would get too warm.
plan-tried-room_too_warm = Not on the mesh: the room is too warm.
plan-why-strength = Your tube has another strength? Ask again with it, such as tube:10%. A weaker one is safe at that distance but may give too little, a stronger one is not.
plan-why-ranges = Tubes of one kind differ by about a third. A UV meter settles it.
# Only with: $heat_span
plan-why-lamps = Heat lamps of one wattage differ twofold. This one may take { WATTS($heat_span, form: "range") }{ $larger_too ->
    [yes] , so buy two sizes
   *[no] {""}
  }.

## Steps
plan-step-before = Before the animal comes: build it, and run tube and lamp for two to three hours.
plan-step-hang = { $place ->
    [inside] Hang the tube inside, { plan-lies }, { LENGTH($under_lid) } under the lid: { $lamp }, { LENGTH($long) } long.
   *[above_mesh] Lay the tube on the mesh, { plan-lies }: { $lamp }, { LENGTH($long) } long.
  } Build the { plan-place } so that its top is { LENGTH($top) } over the floor.
plan-lies = { $way ->
    [across] from back to front
    [whole_length] over the whole length
   *[other] along the box
  }
plan-step-tape = First day: measure from the underside of the tube to { LENGTH($back) } over the { plan-place }, where the back will be. It should be { LENGTH($away) }. If not, build that place higher or lower.
plan-step-meter = First day: hold a UV meter at back height, facing the tube. It should show a UV index of { UVI($wanted, form: "range") }. No meter? { $new_tube ->
    [yes] A new tube is stronger for its first 100 hours, so go
   *[no] Go
  } a little farther away, up to { LENGTH($away, form: "high") }.
# Only with: $surface
plan-step-surface = First day: point an infrared gun at the { plan-place }. It should show { TEMP($surface, form: "range") }. { $lit_by_lamp ->
    [yes] Too hot: dim the lamp, or raise it. Too cool: take { $larger_too ->
        [yes] the larger lamp
       *[no] a lamp of the next size
      }.
   *[no] Too cool: take the smallest lamp, far away.
  }
plan-step-cool = First day: hold a probe in the shade of the cool end, at the animal's height. { $in_shade ->
    [none] Ask a keeper what it should be.
   *[some] It should show { TEMP($in_shade, form: "range") }.
  }
plan-step-write = First week: note each day the surface, the cool end, the coldest it gets at night, and where it sits.
plan-step-again = First week: change one thing at a time, measure again two hours later, then ask temps.

## Numbers
plan-label-floor = Floor for a grown one
# Only with: $floor_long, $floor_deep
plan-floor = { LENGTH($floor_long) } by { LENGTH($floor_deep) } or more
plan-label-away = Tube to back
plan-away = { LENGTH($away) }, good from { LENGTH($away, form: "range") }, with { $through }{ $held_by ->
    [by_floor] . Lower is not possible, so this is closer than I would start.
    [by_reach] . Higher than that I would not build it, so this is on the weak side.
   *[nothing] .
  }
plan-label-uvi = UV index there
plan-uvi = { UVI($uvi, form: "doubt") }
plan-stand-platform = Platform
plan-stand-branch = Branch or shelf
plan-stand-dock = Dock
plan-top = Its top is { LENGTH($top) } over the floor. From { LENGTH($top, form: "range") } keeps the UV right. Make it about { LENGTH($stand_long) } long and { LENGTH($stand_deep) } deep, no shorter than the body.{ $in_water ->
    [yes] {" "}Keep the water below it. How warm the water should be I do not know.
   *[no] {""}
  }
plan-label-along = Along the box
plan-along = { $way ->
    [across] The tube lies from back to front, just on the warm side of the middle of the { plan-place }, which is { LENGTH($along) } from the warm end wall.
    [whole_length] The tube lies over the whole length. The middle of the { plan-place } is { LENGTH($along) } from the warm end wall.
   *[other] The tube begins at the warm end wall. The { plan-place } goes under its middle, { LENGTH($along) } from that wall.
  }{ $patch ->
    [none] {""}
   *[some] {" "}{ $way ->
        [across] The heat lamp hangs beside the tube, towards the cool end.
       *[other] The heat lamp hangs there too, in front of the tube.
      } About { SHARE($patch) } of the warm patch has the UV.
  }
plan-label-heat = Heat lamp
# Only with: $lamp_away, $span
plan-heat-one_size = { plan-heat-where } It may take { WATTS($span, form: "range") }, as lamps differ twofold.
# Only with: $lamp_away, $span
plan-heat-two_sizes = { plan-heat-where } It may take { WATTS($span, form: "range") }, as lamps differ twofold, so buy two sizes.
# Only with: $lamp_away, $sizes
plan-heat-yours = Yours, { WATTS($sizes) }. { plan-heat-where }
plan-heat-gentle = { $open ->
    [yes] No lamp. If it reads too cool, warm the room: mesh holds no warm air.
   *[no] No lamp. If the warm end reads too cool: { $extra ->
        [none] a gentle heater
       *[some] a { WATTS($extra) } heater
      } without light, on a thermostat.
  }
plan-heat-room = No lamp to begin with: the room is nearly warm enough. Measure first.
# Only with: $lamp_away
plan-heat-where = { $place ->
    [above_mesh] On the mesh
   *[inside] Inside, with a guard
  }, its face { LENGTH($lamp_away) } over the { plan-place }.
plan-aim-label-basking_surface = Basking surface
plan-aim-label-warm_air = Air, warm end
plan-aim-label-cool_air = Air, cool end
plan-aim-label-uvi = UV index
plan-aim-label-zone = UV zone
plan-aim-label-night_floor = Night
plan-aim-label-night_heat_off = Heat off
plan-aim-label-light_hours = Hours of light
plan-aim-label-home_latitude = Where it is from
plan-aim = { $range ->
    [none] not known here
   *[some] { TEMP($range, form: "range") }{ $known ->
        [none] {""}
       *[some] {" "}({ $known })
      }
  }
plan-label-air = Air by day
# Only with: $held
plan-air = About { TEMP($held) } at the cool end with the lamp on ({ TEMP($held, form: "range") }). { $air ->
    [fine] That suits the cool end.
    [cool] { $open ->
        [yes] That is too cool there, and mesh holds no warm air: warm the room.
       *[no] That is too cool there, so plan a second heater.
      }
    [maybe_cool] { $open ->
        [yes] That may be too cool: read the cool end, and warm the room if it is.
       *[no] That may be too cool: read the cool end before you buy a second heater.
      }
    [maybe_warm] That may be too warm: read the cool end, take the smaller lamp, or let more air through.
   *[unknown] I know no range for the cool end to hold it against.
  }
plan-label-shade = Shade
plan-shade = { $shading ->
    [there] The weakest place has a UV index of { UVI($weakest) }, at the cool end. Add a hide there too.
    [hardly] The weakest place has a UV index of { UVI($weakest) }, hardly under { UVI($shade_uvi) }. Add a hide at the cool end.
   *[covered] The weakest place{ $upright ->
        [yes] , low down,
       *[no] {""}
      } has a UV index of { UVI($weakest) }. The tube covers most of the box, so leaves and hides must give shade.
  }
plan-label-night = Night
plan-dark = All lamps off, and dark.
# Only with: $floor, $floor_known
plan-night-untold = { plan-dark } Heat without light only if the room falls below { TEMP($floor, form: "range") } ({ $floor_known }).
plan-night-untold_unknown = { plan-dark } How cool it may get is not known here.
# Only with: $room_night
plan-night-nothing = { plan-dark } { TEMP($room_night) } needs no heat.
# Only with: $room_night
plan-night-too_warm = { plan-dark } { TEMP($room_night) } is warm for a night, so let it get cooler.
plan-night-unknown = { plan-dark } How cool it may get is not known here: ask a keeper or a vet.
# Only with: $room_night
plan-night-heat = { TEMP($room_night) } is too cold. { $open ->
    [yes] Warm the room, as mesh holds no warm air.
   *[no] Use { plan-night-use }.
  } { plan-dark }
# Only with: $room_night
plan-night-keepers_differ = Keepers differ about { TEMP($room_night) }. If you heat, { $open ->
    [yes] warm the room, as mesh holds no warm air
   *[no] use { plan-night-use }
  }. { plan-dark }
plan-night-use = { $one ->
    [none] { $need ->
        [none] a heater without light
       *[some] heaters without light, { WATTS($need, form: "range") } in all, more than one gives
      }
   *[some] { $need ->
        [none] one { WATTS($one) } heater without light
       *[some] one { WATTS($one) } heater without light ({ WATTS($need, form: "range") } needed)
      }
  }, on a thermostat{ $off ->
    [none] {""}
   *[some] , off at { TEMP($off) }
  }
plan-label-hours = Hours
plan-hours = 12 h on and 12 h off, tube and lamp on one timer{ $year ->
    [none] {" "}(common practice)
   *[some] . { HOURS($year, form: "range") } over the year is usual too.
  }
plan-label-assumed = I assumed
plan-all-assumed = { LIST($all_assumed, join: "list-and") }
# Only with: $room_taken
plan-assumed-room = a room of { TEMP($room_taken) } by day
# Only with: $back_taken
plan-assumed-back = a back { LENGTH($back_taken) } over what it lies on ({ LENGTH($back_taken, form: "range") } in an adult, from memory)
# Only with: $mesh_blocks
plan-assumed-mesh = a mesh that blocks { SHARE($mesh_blocks) } of the UV, as a common one does
plan-assumed-fits = a tube of the length for this box. Is yours another? Then add length:

## What to buy
plan-buy = To buy
plan-which = Which
plan-buy-tube = UV tube
plan-tube = { $whose ->
    [class] { $has_tube ->
        [yes] you have it: { plan-tube-kind }
       *[no] { plan-tube-kind }
      }
   *[other] you have it: by its readings
  }
plan-tube-kind = T5 HO, { SHARE($strength, form: "given") }{ $new_tube ->
    [yes] {" "}or weaker
   *[no] {""}
  }, { LENGTH($long) }{ $power ->
    [none] {""}
   *[some] , { WATTS($power) }
  }
plan-buy-fixture = UV fixture
plan-fixture = { $has_fixture ->
    [yes] you have it: { $fixture }
   *[no] { $fixture }
  } for that length
plan-buy-day = Day heater
plan-day-heater = only if the warm end reads too cool: { plan-heater }
plan-heater = { $extra ->
    [none] { $most ->
        [none] one without light
       *[some] up to { WATTS($most) } without light in all. Less mesh needs less.
      }
   *[some] { WATTS($extra) } without light, with thermostat
  }
plan-buy-lamp = Heat lamp
# Only with: $sizes
plan-lamp = { $day ->
    [yours] you have it: { plan-shape }, { WATTS($sizes) }
    [two_sizes] { plan-shape }, { WATTS($sizes, form: "low") } and { WATTS($sizes, form: "high") }
   *[other] { plan-shape }, { WATTS($sizes) }
  }
plan-shape = { $shape ->
    [wide_dome] bulb for a wide dome
    [narrow] narrow spot
   *[flood] flood
  }
plan-buy-holder = Lamp holder
# Only with: $sizes
plan-holder = ceramic, marked { WATTS($sizes, form: "high") } or more, two supports{ $place ->
    [inside] , guard that it cannot get behind
   *[above_mesh] {""}
  }
plan-buy-dimmer = Dimmer
plan-dimmer = made for that kind of lamp and its watts
plan-buy-second = Second heater
plan-second-heater = { $extra_surely ->
    [yes] { plan-heater }
   *[no] only if the cool end reads too cool: { plan-heater }
  }
plan-buy-timer = Timer
plan-timer = one, for tube and lamp together
plan-platform = { $stand ->
    [platform] stone or wood
   *[other] firm enough to lie on
  }, { LENGTH($stand_long) } by { LENGTH($stand_deep) }
plan-buy-thermometers = Thermometers
plan-thermometers = infrared gun, and two digital probes, one that remembers the coldest
plan-buy-meter = UV meter
plan-meter = to borrow, for one day
plan-buy-hides = Hides
plan-hides = one at each end
plan-buy-night = Night heater
plan-night-heater = { $night ->
    [keepers_differ] if you heat: { plan-night-size }
   *[other] { plan-night-size }
  }, without light, with on/off thermostat
plan-night-size = { $one ->
    [none] several, sharing the watts
   *[some] { WATTS($one) }
  }

## Care
plan-care-water = Water near mains power: give every cable a drip loop, keep sockets above the water, and follow your local electrical codes.
plan-care-water-short = Give every cable a drip loop.
plan-care-size = This plans light and heat. Whether the box is big enough for a grown animal, and what it eats and drinks, ask a keeper you trust.

## Not in that box
plan-not-title = Not in that box for { NAME($animal, form: "a") }
plan-not-too_low = No: { LENGTH($high) } is too low for { plan-any-tube }.
plan-not-no_room_for_heat = No: { LENGTH($high) } is too low for a heat lamp inside.
plan-not-platform_too_high = No: { LENGTH($high) } is too high for { plan-any-tube } on the lid.
plan-not-too_close = No: { plan-any-tube } would have to hang too close.
plan-not-too_weak = No: { plan-any-tube } is too weak there.
plan-not-too_strong = No: { plan-any-tube } is too strong there.
plan-not-length_untold = Not yet: how long is the tube?
plan-not-solid_lid = No: no UV passes a solid lid.
# Only with: $owned
plan-not-tube_too_long = No: your tube of { LENGTH($owned) } does not fit in.
plan-not-no_tube_short_enough = No: every usual T5 HO tube is too long for it.
plan-not-too_short = No: { LENGTH($long) } leaves no cool end.
plan-not-air_too_warm = No: the lamp would make the whole box too warm.
plan-not-room_too_warm = No: a room of { TEMP($room) } is too warm.
plan-any-tube = { $owns ->
    [yes] your tube
   *[no] any usual tube
  }
plan-why-too_low = Even on a flat stone the back of { NAME($animal, form: "a") } would be closer to the tube than a UV index of { UVI($wanted, form: "range") } allows, with { $through }.
plan-why-no_room_for_heat = Under a solid lid of { LENGTH($high) } a heat lamp would hang too close to the animal.
plan-why-platform_too_high = The basking place of { NAME($animal, form: "a") } would be higher than I would build it.
plan-why-too_close = For a UV index of { UVI($wanted, form: "range") }, with { $through }, it would hang closer than { LENGTH($nearest) } to the back. No tube should be closer than that.
plan-why-too_weak = It does not give a UV index of { UVI($wanted, form: "range") } with { $through }.
plan-why-too_strong = It gives more than a UV index of { UVI($wanted, form: "range") } with { $through }.
plan-why-length_untold = How far { plan-any-tube } hangs depends on how long it is.
plan-why-solid_lid = No UV passes a solid lid, so the tube cannot lie on it.
# Only with: $owned
plan-why-tube_too_long = Your tube of { LENGTH($owned) } is longer than the box of { LENGTH($long) }.
plan-why-no_tube_short_enough = The shortest usual T5 HO tube is { LENGTH($shortest) } long, the box { LENGTH($long) }. I cannot work out shorter kinds.
plan-why-too_short = { LENGTH($long) } is too short to have a warm and a cool end. Even the shortest tube would light nearly all of it, and { NAME($animal, form: "a") } must be able to leave light and heat.
plan-why-air_too_warm = A lamp that makes the basking spot would warm the whole box more than the cool end of { NAME($animal, form: "a") } may have.
plan-why-room_too_warm = { $cool ->
    [none] A room of { TEMP($room) } is too warm for { NAME($animal, form: "a") }.
   *[some] The room has { TEMP($room) }, and the cool end of { NAME($animal, form: "a") } may have { TEMP($cool, form: "high") } at most.
  }
plan-do-way = Would work: { LIST($changes, join: "list-and") }.
plan-do-measure = Measure it, and add length:34in.
plan-do-floor = Take a box with that floor or more.
plan-do-none = Choose a longer and taller box.
plan-way = { $small ->
    [yes] For now
   *[no] Would work
  }: { LIST($changes, join: "list-and") }. Then { $lamp }, { $place ->
    [inside] inside
   *[above_mesh] on the mesh
  }, { LENGTH($away) } from the back, with the { plan-place } { LENGTH($top) } high.
plan-change-hang_inside = hang the tube inside, with no mesh between
plan-change-other_tube = another tube
# Only with: $passes
plan-change-opener_screen = a wider mesh over the tube's length that lets { SHARE($passes) } through
plan-change-mesh_lid = a lid that is { $fully ->
    [yes] fully
   *[no] partly
  } mesh, with tube and lamp on it
plan-change-smaller_lamp = a smaller heat lamp, or a dimmer on yours
# Only with: $cooler
plan-change-cooler_room = a room of { TEMP($cooler) } or cooler
# Only with: $least
plan-change-taller_box = a box at least { LENGTH($least) } high
# Only with: $least
plan-change-longer_box = a box at least { LENGTH($least) } long
plan-step-measure = Measure the tube, and ask again with its length, such as length:34in.
plan-step-none = No single change that I know makes it work: choose a longer and taller box.
# Only with: $floor_long, $floor_deep
plan-step-floor = Best of all: take a box with a floor of { LENGTH($floor_long) } by { LENGTH($floor_deep) } or more. A grown animal needs that.
plan-step-other-kinds = Other kinds, such as a compact lamp, are short enough, but I cannot work out their UV. Use one only where you can read it with a UV meter at the animal's back.
plan-step-gentle = Or no lamp at all: a panel or mat without light, on a thermostat. Ask lamp radiant panel, or lamp heat mat.
plan-step-ask-again = Then ask plan again, and measure before the animal moves in.
plan-box = { LENGTH($long) } long, { LENGTH($deep) } deep, { LENGTH($high) } high inside, { $lid ->
    [solid] solid lid
    [part_mesh] part mesh lid
   *[full_mesh] full mesh lid
  }
plan-back-title = How high is its back?
plan-back-unknown = I need to know how high the back of { NAME($animal, form: "your") } is.
plan-do-back = Measure from what it lies on, and add { $example }.

## The picture
plan-picture-length = { LENGTH($seen) }
plan-picture-title = The set-up for { NAME($animal, form: "a") }
plan-picture-subtitle = { $lamp }, with { $through }
plan-picture-tube = { $whose ->
    [class] UV tube, { SHARE($strength, form: "given") }
   *[other] UV tube
  }
plan-picture-tubes = { $count ->
    [one] UV tube
   *[other] { $count } UV tubes
  }
# Only with: $sizes
plan-picture-lamp = heat lamp, { $day ->
    [two_sizes] { WATTS($sizes, form: "low") } or { WATTS($sizes, form: "high") }
   *[other] { WATTS($sizes) }
  }
plan-picture-across = Seen from the warm end, cut { LENGTH($along) } from it
plan-picture-note = The middle of the { plan-place } is { LENGTH($along) } from the warm end wall. Hides are not in the picture.
plan-picture-warm-is = UV index { UVI($wanted, form: "range") }{ $lit_by_lamp ->
    [yes] {" "}and heat
   *[no] {""}
  }
plan-picture-cool-is = down to UV index { UVI($weakest) }, and a hide
# Only with: $read_uvi
plan-picture-meter = UV meter at back height: { UVI($read_uvi, form: "range") }
# Only with: $read_temp
plan-picture-gun = Infrared gun where it basks: { TEMP($read_temp, form: "range") }
# Only with: $read_temp
plan-picture-probe = Probe in the shade: { TEMP($read_temp, form: "range") }
plan-picture-alt = Side view to scale: { plan-picture-title }, { plan-picture-subtitle }.
plan-picture-alt-reach = From the warm end, on the left, the tube reaches { LENGTH($seen) }.
plan-picture-alt-across = The tube lies from back to front, { LENGTH($seen) } from the warm end, on the left.
plan-picture-alt-stand = The { plan-place }: its top is { LENGTH($top) } over the floor, its middle { LENGTH($along) } from the warm end.
plan-picture-alt-away = From tube to back { LENGTH($away) }: UV index { UVI($uvi, form: "doubt") }.
plan-picture-alt-lamp = The heat lamp hangs beside the tube.
plan-picture-alt-warm = Warm end: { plan-picture-warm-is }.
plan-picture-alt-cool = Cool end: { plan-picture-cool-is }.

## For now, and by which code
plan-code-austria2004 = Austrian law
plan-code-austria_snakes2004 = Austrian law
plan-code-eu2010_63 = EU lab rules
plan-code-leopard_gecko_leaflet = a welfare leaflet
plan-code-nsw2013 = the New South Wales code
plan-code-swiss_2001 = Swiss law
plan-code-swiss_tschv = Swiss law
plan-code-tvt_tortoise = a leaflet of German vets
plan-code-enclosure_judgement = our own rule
plan-code-tortoise_judgement = our own rule
plan-code-giant_snake_judgement = our own rule
# Only with: $sizes
plan-now-one_size = For now: no tube, { WATTS($sizes) } at one end.
# Only with: $sizes
plan-now-two_sizes = For now: no tube, { WATTS($sizes, form: "low") } or { WATTS($sizes, form: "high") } at one end.
# Only with: $sizes
plan-now-yours = For now: no tube, your { WATTS($sizes) } at one end.
plan-now-gentle = For now: no tube. Gentle heat if too cool.
plan-now-room = For now: no tube and no heat lamp.
plan-step-now = It lives there already? Then leave the tube out, warm one end only, and read the cool end with a probe{ $cool ->
    [none] .
   *[some] : { TEMP($cool, form: "high") } at most.
  } Without UV its vitamin D must come from its food: ask a reptile vet how.
plan-label-water = Depth of water
# Only with: $water_deep
plan-water-deep = { $deep_is_own ->
    [yes] { LENGTH($water_deep, form: "range") } (the group's own figure)
   *[no] { LENGTH($water_deep) } or more (EU rules for laboratories)
  }
plan-night-water = { plan-dark } Its water counts at night. Heat that, on a thermostat of its own, if the room lets it fall too far.
plan-aim-label-water = Water
plan-aim-label-gradient = Whole box
