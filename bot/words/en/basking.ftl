### Facts: Basking, LampChoice, Dimming, Unreckoned

basking-title = From { TEMP($surface) } to { TEMP($aimed) } on the basking surface

## The answer in brief
# Only with: $move
basking-head-raise = Raise the lamp to { LENGTH($move, form: "high") }.
# Only with: $move
basking-head-lower = Lower the lamp to { LENGTH($move, form: "high") }.
basking-head-inside = Leave it: the surface is right.
basking-head-leave = Leave the lamp where it is.
basking-head-smaller = { $other ->
    [none] Use a smaller lamp.
   *[some] { $beyond ->
        [yes] Use about { WATTS($other) }, in a holder marked for it.
       *[no] Use a lamp of about { WATTS($other) }.
      }
  }
basking-head-stronger = { $other ->
    [none] Use a stronger lamp.
   *[some] { $beyond ->
        [yes] Use about { WATTS($other) }, in a holder marked for it.
       *[no] Use a lamp of about { WATTS($other) }.
      }
  }
# Only with: $move
basking-range-raise = Now { LENGTH($distance) }, right is { LENGTH($move, form: "range") }.
# Only with: $move
basking-range-lower = Now { LENGTH($distance) }, right is { LENGTH($move, form: "range") }.
# Only with: $move
basking-range-inside = To come closer to { TEMP($aimed) }, start at { LENGTH($move, form: "high") }.
basking-range-leave = { TEMP($surface) } is as close to { TEMP($aimed) } as a gun can tell.
basking-range-smaller = Moving this one cannot bring { TEMP($aimed) }.
basking-range-stronger = Moving this one cannot safely bring { TEMP($aimed) }.
basking-turn-up = First turn the dimmer up, bit by bit. If full power is not enough:
basking-do-measure = Measure again after two hours.
basking-do-leave = Measure again each season.
basking-do-hang = No closer than { LENGTH($away) }.
basking-do-again = Let it run 2 to 3 hours, then ask again.
basking-stopped-title = Put this right before you change the basking spot
basking-stopped-range = I tell no move before that.

## No answer
basking-refused-title = This cannot be worked out yet
basking-refused-dimmer_on = The dimmer is off: turn it up first.
basking-refused-lamp_heat = The air must be cooler than the surface.
basking-refused-cooler_air = A lamp can only warm, and the air is warm.
basking-refused-why-dimmer_on = Then measure again.
basking-refused-why-lamp_heat = You told air at { $read }. Is the lamp on, and the probe out of its beam?
basking-refused-why-cooler_air = Your air at { $read } is as warm as the surface you aim for. Cool the room first.
basking-do-ask = Ask with { $example }.

## Why
basking-why-rise = The lamp makes the rise, the room makes the rest. So I scale the rise and not the thermometer's number.
basking-why-range = Heat loss grows as things get hotter, and the beam begins somewhere behind the lamp's face. The air beside the spot will change a little, too.

## Steps
basking-step-turn-up = First turn the dimmer up, a little at a time, and measure after each turn. What follows is for a lamp that is not enough at full power.
basking-step-leave = Measure it again when the season or the room changes.
# Only with: $move
basking-step-set = { $cooling ->
    [yes] Set the lamp at { LENGTH($move, form: "high") }, the careful end, measured from its face to the surface. Go on within { LENGTH($move, form: "range") }.
   *[no] Look on the label of the lamp for the least distance. Then set it at { LENGTH($move, form: "high") }, the careful end, measured from its face to the surface. Go on within { LENGTH($move, form: "range") }.
  }
basking-step-dim = Or leave the lamp in its place and turn the dimmer. Do one, not both.
basking-step-or-change = Or change the lamp, as in the table. Do one, not both.
basking-step-change = Change the lamp, as in the table.
basking-step-fit = { $other ->
    [none] { $cooling ->
        [yes] Fit a smaller lamp, and hang it no closer than { LENGTH($away) } or what its label says.
       *[no] Fit a stronger lamp, and hang it no closer than { LENGTH($away) } or what its label says.
      }
   *[some] { $beyond ->
        [yes] Fit a lamp of about { WATTS($other) } in a holder that is marked for it, and hang it no closer than { LENGTH($away) } or what its label says.
       *[no] Fit a lamp of about { WATTS($other) }, and hang it no closer than { LENGTH($away) } or what its label says.
      }
  }
basking-step-again = Let the lamp run for two to three hours. Then measure the surface and the air beside it again, and ask basking again.

## Numbers
basking-label-move = New distance
# Only with: $move
basking-move-told = from { LENGTH($distance) } to about { LENGTH($move) }, somewhere within { LENGTH($move, form: "range") }
basking-label-other = Other lamp
basking-other-told = { $other ->
    [none] no closer than { LENGTH($away) }
   *[some] about { WATTS($other) }, no closer than { LENGTH($away) }
  }
basking-label-rise = Rise over the air
basking-rise-told = { DIFF($rise) } now, { DIFF($rise_wanted) } to aim for
basking-label-dimmer = Dimmer
basking-dimmer-beyond_full = Even full power is not enough: move the lamp closer or use a stronger one. { basking-filaments }
basking-dimmer-too_much = It would have to run at about { SHARE($setting) } of full power. More than about { SHARE($most) } of dimming is too much (common practice, no source): { $smaller ->
    [none] use a smaller lamp instead.
   *[some] use a { WATTS($smaller) } lamp instead.
  } { basking-filaments }
basking-dimmer-within = From { SHARE($present) } to about { SHARE($setting) } of full power, within { SHARE($setting, form: "range") }. A dimmer's own marks are not power: turn it in small steps and go by the thermometer. { basking-filaments }
basking-filaments = Only an incandescent or halogen lamp can be dimmed: never dim a mercury-vapour lamp or a UV tube.
basking-label-dimming = What dimming does
basking-dimming-told = At { SHARE($power) } of its power it gives about { SHARE($light) } of its light, and a more orange one (colour temperature { SHARE($colour) } of full).
basking-column-change = Change
basking-column-surface = Surface to expect
basking-column-so = So
# Only with: $move
basking-cell-move = this lamp at { LENGTH($move, form: "high") }
# Only with: $at_start
basking-cell-at-start = { TEMP($at_start) }
basking-cell-start = the careful start
basking-cell-lamp = { WATTS($size) } of the same shape at { LENGTH($away) }
basking-cell-expected = { TEMP($expected, form: "range") }
basking-cell-beyond = more than the holder is marked for

## Care
basking-care-label = Never hang the lamp closer than its label allows.
basking-care-label-short = Never closer than its label allows.

## The picture
basking-picture-read = reads { TEMP($surface) }
basking-picture-aim = aim for { TEMP($aimed, form: "range") }
