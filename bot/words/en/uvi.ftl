### Facts: Expected

uvi-title = UV index at { LENGTH($at) }

## The answer in brief
uvi-head = Expect UV index { UVI($here, form: "doubt") }.
uvi-there = { LENGTH($at) }: { $judged }, aim for { UVI($wanted, form: "range") }.
# Only with: $longest
uvi-if-long = A long tube gives { UVI($longest) }: too much.
uvi-only-meter = Only a UV meter can be sure.
uvi-head-too-near = Too close for any tube: switch it off.
# Only with: $away
uvi-do-away = Hang it { LENGTH($away) } above its back.
uvi-do-distance = Ask distance what to use instead.
uvi-do-length = Measure the tube, then ask again.
uvi-do-meter = A UV meter should show { UVI($wanted, form: "range") }.

## Why
uvi-why-longest = A long tube gives more UV than a short one, and you did not tell me the length.
uvi-why-meter = It could be off by so much that only a UV meter can be sure.

## Steps
# Only with: $away
uvi-step-away = Whatever the UV index, { LENGTH($at) } is too close to be safe. Switch the tube off and hang it { LENGTH($away) } from the animal's back.
uvi-step-distance = Whatever the UV index, { LENGTH($at) } is too close to be safe. Switch the tube off, and ask distance with the same words to see what to use instead.
uvi-step-measure = Measure from the underside of the lit tube to the animal's back where it basks.
uvi-step-meter = Have a UV meter? Hold it at back height and go by it: { UVI($wanted, form: "range") } is right. Measure again after every change.

## Numbers
uvi-label = UV index
uvi-place = { UVI($here, form: "doubt") } at { LENGTH($at) }: { $judged }
uvi-place-not-yet = By these readings { UVI($here, form: "doubt") } at { LENGTH($at) }. Read again before you go by it.
uvi-label-longest = If it is long
# Only with: $longest
uvi-longest = UV index { UVI($longest) } there, more than { UVI($wanted, form: "range") }

## Picture
uvi-point-here = yours: UV index { UVI($here, form: "doubt") }
# Only with: $start
uvi-point-start = start at { LENGTH($start) }
