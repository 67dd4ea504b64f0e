### Facts: FirstLamp, LampSize, TooFar, BoxTooHot, RoomTooWarm

watts-title = A first wattage for { TEMP($aimed) } on the surface
watts-size = { WATTS($size) }

## The answer in brief
watts-expect = { $several ->
    [yes] Expect { WATTS($span, form: "range") } from { LENGTH($distance) }.
   *[no] Expect about { WATTS($span) } from { LENGTH($distance) }.
  }
watts-narrow = A narrow spot is not for basking.
watts-if-narrow = Else expect { WATTS($span, form: "range") } from { LENGTH($distance) }.
# Only with: $holder
watts-holder-short = First: your { WATTS($holder) } holder is too weak.
watts-assumed-shape = I assumed a flood lamp.
watts-do-buy = { $smaller ->
    [none] Buy one of { WATTS($larger) } and a dimmer.
   *[some] Buy { WATTS($smaller) } and { WATTS($larger) }.
  }
watts-do-start = { $smaller ->
    [none] Start far away, and let the thermometer decide.
   *[some] Start far away with the smaller, and let the thermometer decide.
  }
watts-do-flood = Take a flood: ask with lamp:flood.
watts-do-holder = Get a holder for { WATTS($larger) } or more.

## No lamp for it
watts-far-title = Too far away for { TEMP($aimed) } on the surface
watts-far = No lamp is sure to bring { TEMP($aimed) } from { LENGTH($distance) }.
watts-far-range = It would take { WATTS($found, form: "range") }. { WATTS($strongest) } is the most sold.
watts-do-near = Bring lamp and surface to { LENGTH($near) }.
watts-step-near = Build the basking spot higher, or hang the lamp lower, but never closer than its label allows or where the animal can touch it.
watts-step-ask-near = Ask watts again with that distance, such as { LENGTH($near) }.
watts-box-title = Too hot a box for such a lamp
watts-box-hot = No: { WATTS($larger) } makes this box too hot.
watts-box-why = Its cool end would be at about { TEMP($cool) }. Nothing in it stays cool enough.
watts-do-box = Take a longer box or more mesh.
watts-step-box = Take a longer box, more mesh or a cooler room, or a weaker lamp closer to the surface. Then ask again.
watts-room-title = Too warm a room for a lamp
watts-room-warm = No: a lamp can only warm, and the room is warm.
watts-room-why = For { TEMP($aimed) } a room must be { DIFF($least) } cooler. Yours is at { $room }.
watts-do-room = Ask with { $example }.
watts-step-room = Cool the room first, or leave the lamp out.

## Why
watts-why-wide = Lamps of one wattage are not alike. Two heat lamps of 175 W, at one distance, warmed areas that differed twofold. Beam, reflector, stone and the air beside it can move the surface by tens of degrees. So this is a range to buy from and no forecast.

## Steps
watts-step-flood = Better take a flood, and ask again with lamp:flood. If you must use a narrow spot, go on.
# Only with: $holder
watts-step-holder = Your holder is marked for { WATTS($holder) } and must not bear what this takes. First get one marked for { WATTS($larger) } or more, or bring lamp and surface closer together and ask again.
watts-step-buy = { $smaller ->
    [none] Buy one of { WATTS($larger) }, with a dimmer. No smaller one is sold, so start far away with it.
   *[some] { $dims ->
        [larger] Buy one of { WATTS($larger) } and one of { WATTS($smaller) }, or the larger with a dimmer made for it.
       *[none] Buy one of { WATTS($larger) } and one of { WATTS($smaller) }.
      }
  }
watts-step-hang = Hang it, or the smaller of two, farther away than you think you need and never closer than its label allows. Let it run for two to three hours.
watts-step-read = Measure the surface with an infrared gun and the air beside it with a probe. Then ask basking with both: that answer is much better than this one.

## Numbers
watts-label-sizes = Sizes sold in that range
watts-sizes-told = { LIST($sizes) }
watts-label-shape = Lamp
watts-shape-told = flood. You did not say lamp:, so I assumed it. Say lamp:flood, lamp:wide dome or lamp:narrow.
watts-label-held = Cool end then
# Only with: $held
watts-held-told = about { TEMP($held) } with a { WATTS($larger) } lamp, within { TEMP($held, form: "range") }
watts-label-found = Worked out
watts-found-told = { WATTS($found, form: "range") } in nine cases of ten

## Care
watts-care-narrow = A narrow spot is not for basking: its hot patch is smaller than the animal. Take a flood.
watts-care-narrow-short = Its small hot patch burns.
watts-care-label = Never hang it closer than its label allows, or where the animal can touch it.
watts-care-label-short = Never closer than its label allows.

## The picture
watts-picture-aim = aim for { TEMP($aimed, form: "range") }
