### Facts: Placed, ByLength, OfLength, NoPlace, At

distance-title = { $animal ->
    [none] Distance from tube to back
   *[some] Distance from tube to back for { NAME($animal, form: "a") }
  }
distance-title-by-length = { $animal ->
    [none] It depends on how long the tube is
   *[some] For { NAME($animal, form: "a") } it depends on how long the tube is
  }
distance-title-no = { $animal ->
    [none] This tube will not do
   *[some] This tube will not do for { NAME($animal, form: "a") }
  }

## The answer in brief
distance-head = Hang it { LENGTH($start) } above its back.
distance-range = { $short_only ->
    [yes] If short: { LENGTH($span, form: "range") }.
   *[no] Range: { LENGTH($span, form: "range") }.
  }
distance-only-meter = Only a UV meter tells if it is right.
distance-held-nothing = A long tube gives more, so I start farther.
distance-held-kind = A long tube gives more, so I start farther.
distance-held-length = I do not know its length. A long tube gives more, so I start farther.
distance-held-both = I assumed a T5 HO tube. A long one gives more, so I start farther.
distance-do-measure = Lamp off, then measure to its back.
distance-do-length = Find its length and ask again.
distance-do-meter = A UV meter should show { UVI($wanted, form: "range") }.
distance-head-weaker = Choose a weaker tube.
distance-this-one = This one belongs { LENGTH($start) } away.
distance-any-length-too-far = At any length this one hangs too far away.
distance-do-weaker = Use a weaker tube.
distance-head-by-length = It depends on how long the tube is.
# Only with: $away
distance-if-long = If { LENGTH($long) } long: { LENGTH($away, form: "range") }.
distance-do-measure-tube = Measure the tube, then ask again.
distance-no-fits = It fits.
distance-no-too_weak = No: this tube is too weak here.
distance-no-too_close = No: it would hang too close.
distance-no-out_of_range = No: this tube is too strong here.
distance-no-by_length = It depends on how long the tube is.
distance-no-range-fits = It fits.
distance-no-range-too_weak = UV index { UVI($safe_uvi) } at { LENGTH($safe) }, the closest safe place.
distance-no-range-too_close = It would have to hang at { LENGTH($would) }.
distance-no-range-out_of_range = Too strong even { LENGTH($farthest) } away.
distance-no-range-by_length = It depends on how long the tube is.

## Why
distance-why-held = A long tube gives more UV than a short one. You did not tell me the length, so I start where even the longest is not too strong.
distance-why-measure = That is a place to start from: only a UV meter tells whether it is right.
distance-why-weaker = This tube is so strong that it has to hang farther away than most enclosures allow.
distance-why-by-length = No one distance is right for every length that it may have. The table has them all.
distance-why-too-far = Whatever its length, this tube has to hang too far away.
distance-why-fits = It fits.
distance-why-too_weak = Even at { LENGTH($safe) }, the closest safe place, it gives UV index { UVI($safe_uvi, form: "doubt") } and not { UVI($wanted, form: "range") }.
distance-why-too_close = For UV index { UVI($wanted, form: "range") } it would have to hang { LENGTH($would) } from the back. That is too close for comfort. An animal that lifts itself by { LENGTH($inch) } gets about { SHARE($more) } more UV (index { UVI($more_uvi) }, give or take a third). It can also touch the fixture.
distance-why-out_of_range = It gives more than UV index { UVI($wanted, form: "range") } even { LENGTH($farthest) } away.
distance-why-by_length = It depends on how long the tube is.

## Steps
distance-step-measure = Measure from the underside of the tube, where it shines, straight down to the animal's back where it basks. Not to the platform or the floor.
distance-step-hang = Hang the tube at { LENGTH($start) }. Not sure? Go a little farther away.
distance-step-meter = If you can borrow a UV meter, hold it at back height, facing the tube. Move the tube until it shows { UVI($wanted, form: "range") }.
distance-step-own-meter = Hold your UV meter at back height, facing the tube. Move the tube until it shows { UVI($wanted, form: "range") }.
distance-step-again = Measure again whenever tube, fixture, screen or platform change.
distance-step-then-hang = Then hang it, and measure with a UV meter if you can.
distance-step-then-measure = Then measure again, with a UV meter if you can.

## Numbers
distance-label-range = Tube to back
distance-whole-range = { LENGTH($span, form: "range") }; start at { LENGTH($start) }
distance-label-uvi = UV index
distance-at = { UVI($uvi, form: "doubt") } at { LENGTH($at) }
distance-label-held = Limit
distance-held-near = I stop at { LENGTH($nearest) }: no tube should hang closer.
distance-held-far = I stop at { LENGTH($farthest) }, the farthest I answer for.
distance-column-long = Tube, end to end
distance-column-away = Tube to back
distance-column-start = Start
distance-cell-long = { LENGTH($long) }
# Only with: $away
distance-cell-away = { LENGTH($away, form: "range") }
# Only with: $begin
distance-cell-start = { LENGTH($begin) }
distance-cell-none = –

## Picture
# Only with: $start
distance-point-start = start at { LENGTH($start) }
distance-point-would = would hang at { LENGTH($at) }
distance-point-mild = mild at any length: { LENGTH($at) }
distance-point-here = UV index { UVI($uvi, form: "doubt") } at { LENGTH($at) }
