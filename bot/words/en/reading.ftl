### Facts: Off, WasIt, Aside, Falls
### What a keeper's own readings of a lamp say.

reading-title = These readings cannot be
reading-off-nothing = Your readings agree with one lamp.
reading-off-contradict = Your readings do not fit one { $tube ->
    [yes] tube
   *[no] lamp
  }: read again before you move anything.
reading-off-strong = You read far more than { $strongest ->
    [yes] a very strong tube
   *[no] such a tube
  } gives (T5 HO, { SHARE($strength, form: "given") }): about { $many } times as much. Keep your animal out of it, and read again.
reading-off-weak = You read far less than such a tube gives (T5 HO, { SHARE($strength, form: "given") }): about { SHARE($part) } of it. Do not hang it closer, and read again. Is the sensor or the tube dirty, or is a screen in the way?
reading-was-it = { $meant ->
    [uvi] Was it { UVI($uvi_meant, form: "given") }, not { UVI($uvi_read, form: "given") }?
    [centimetres] Was it { $number_meant } cm, not inches?
    [inches] Was it { $number_meant } inches, not cm?
   *[distance] { $inches ->
        [yes] Was it { $number_meant } in, not { $number_read } in?
       *[no] Was it { $number_meant } cm, not { $number_read } cm?
      }
  }
reading-left-out = UV index { UVI($read, form: "given") } at { $typed } does not fit the others, so I left it out.
reading-aside-label = Set aside
reading-aside = UV index { UVI($read, form: "given") } at { LENGTH($at) }. By the others it should be about { UVI($by_others) }. Read it again.
reading-falls-label = How it falls
reading-falls = { $by_readings ->
    [yes] Your readings say that it falls as from one small lamp.
   *[no] I assumed that it falls as from one small lamp, as this kind does.
  } { $at_face ->
    [yes] The light comes from its face: a quarter at twice that distance.
   *[no] The light comes from { LENGTH($behind) } behind its face: a quarter at twice that distance.
  } That is no mistake in measuring. Is it a tube after all? Then tell me its length.

## What to do first
reading-again = Read again after 30 minutes with the lamp on: under the middle of the tube, sensor facing it, other lamps off.
reading-wipe = Wipe the sensor, and the tube while it is cold and unplugged. { reading-again }
reading-worn = If it shows the same again, the tube is worn out: fit a new one rather than go closer.
reading-check = { reading-again } Check that the meter shows a UV index and not µW/cm², and that you measured from the lit tube to the sensor.
reading-nearer = Read again closer to the tube, where the meter shows 1 or more. So weak a reading is rounded too much to go by.
reading-then-ask = Then ask again with the new readings. Move nothing before.
reading-again-short = Lamp on 30 min, then read again.
reading-nothing-moves = Read again before you move it.
reading-left-out-short = I left out { UVI($read, form: "given") } at { $typed }.
reading-wipe-short = Lamp off: wipe it and the sensor.
reading-head-nothing = Your readings agree.
reading-head-contradict = Not yet: your readings do not agree.
reading-head-strong = Keep your animal out: far too much UV.
reading-head-weak = Not closer: you read far too little.
