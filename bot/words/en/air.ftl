### Facts: AirHeat, AirLamp

air-title = Watts to hold { TEMP($aim) } in the air

## The answer in brief
air-need = About { WATTS($need) } to hold { TEMP($aim) }.
air-range = It could be { WATTS($need, form: "range") }, all lamps together.
air-none = No heat: the room is already { TEMP($room) }.
air-none-why = Without a cooler room it cannot get down to { TEMP($aim) }.
air-lamp-fine = Yes: your { WATTS($power) } lamp covers it.
air-lamp-short = No: your { WATTS($power) } lamp does not cover it.
air-lamp-just = Maybe: your { WATTS($power) } lamp may just do.
air-lamp-maybe_more = Your { WATTS($power) } lamp may give too much.
air-lamp-more = No: your { WATTS($power) } lamp gives too much.
air-lamp-harms = No: do not use your { WATTS($power) } lamp here.
air-harms-why = It would hold the air at { TEMP($held) }. Nothing in it stays cool enough.
air-takes = Holding { TEMP($aim) } takes { WATTS($need, form: "range") }, likely { WATTS($need) }.
air-assumed = I assumed the lamp hangs { $place ->
    [above_mesh] above the mesh.
   *[inside] inside.
  }
air-do-spot = Set up the basking spot first.
air-do-measure = Measure the cool end 2 hours later.
air-do-room = Warm the room, not the box: fire risk.
air-do-cool = Cool the room. No lamp can help here.
air-do-off = Leave that lamp off. Take a weaker one.

## Why
air-why-range = I had to assume floor, mesh, vents and draughts. It could be off by a third.
air-why-open = Mesh on all sides lets the air through, so it has the room's air, hardly warmer. A lamp warms what it shines on.
air-why-ends = The watts are for the cool end, with the heat at the warm end.

## Steps
air-step-off = Leave that lamp off. Take a weaker one, closer to the basking spot, or let more air through the lid. Then ask again with its watts.
air-step-cool = Cool the room, or let more of its air through. No lamp can help here.
air-step-read-again = Then measure the cool end again in the hottest hour of the day.
air-step-spot = Set the basking spot first, with one lamp. Its heat counts towards these watts.
air-step-measure = Then measure the cool end after two to three hours.
air-step-second = Still too cool? Add a second, weaker heat lamp near the middle, or a radiant panel on a thermostat. Do not just fit a much stronger basking lamp.
air-step-cover = Cover the back and one or two sides with something that cannot burn, away from the lamps, and leave the front and the lid open. Draughts then cool it less.
air-step-leaks = Much leaves through the mesh. Close a part of it, away from the lamps, with something that cannot burn.

## Numbers
air-label-aim = Air to aim for
air-asked = { TEMP($aim) }, as you gave it
# Only with: $animal, $known
air-target = { TEMP($target, form: "range") }{ $has_best ->
    [yes] , best { TEMP($target) }
   *[no] {""}
  } at the cool end for { NAME($animal, form: "a") } ({ $known })
air-label-need = Watts
air-need-told = about { WATTS($need) }, from { WATTS($need, form: "range") }, all lamps together
air-label-lost = Where it goes
air-lost = about { WATTS($walls) } ({ SHARE($walls_share) }) through walls, floor and lid, { WATTS($leaving) } ({ SHARE($leaving_share) }) with the air that leaves
air-label-warm = Warm end then
air-warm-told = about { TEMP($warm) }
air-label-lamp = Basking lamp
air-lamp-told = { $all_inside ->
    [yes] { WATTS($power) }, { air-where }. All of it warms the inside.
   *[no] { WATTS($power) }, { air-where }. About { WATTS($inside) } of it warms the inside.
  } By itself it holds about { TEMP($held) } at the cool end, from { TEMP($held, form: "range") }, and { TEMP($warm_held) } at the warm end.
air-where = { $place ->
    [above_mesh] above the mesh
   *[inside] inside
  }{ $place_told ->
    [no] {" "}(you did not say place:, so I assumed it; place:above is above the mesh)
   *[yes] {""}
  }

## The picture
air-picture-warm = about { TEMP($warm) } then
air-picture-cool = { TEMP($aim) } to be held
air-picture-walls = { SHARE($walls_share) } through walls, floor and lid
air-picture-leaving = { SHARE($leaving_share) } with the air
