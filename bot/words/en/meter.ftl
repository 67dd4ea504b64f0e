### Facts: Metered, FitTold, ReadingMade

meter-title = { $animal ->
    [none] Your lamp by your readings
   *[some] Your lamp by your readings, for { NAME($animal, form: "a") }
  }

## The answer in brief
# Only with: $begin
meter-head-fits = Hang it { LENGTH($begin) } above its back.
meter-head-too_weak = No: your lamp is too weak for that.
meter-head-too_close = No: it would have to hang too close.
meter-head-out_of_range = No: your lamp is too strong for that.
meter-head-by_length = It depends on how long the tube is.
# Only with: $away
meter-span = Range: { LENGTH($away, form: "range") }.
meter-here = { LENGTH($at) }: UV index { UVI($here) }, { $judged }.
meter-do-nearer = Read again closer, at 1 or more.
meter-do-again = Then read again: { UVI($wanted, form: "range") } is right.

## Why
meter-why-class = { $differ ->
    [none] Two lamps of one class differ by a third
   *[some] Two lamps of this class differ by about { SHARE($differ) } among the keepers of your group
  }, and an old or dusty one gives less. Where your readings are weak, the class counts beside them.

## Steps
meter-step-again = Read again after every change: { UVI($wanted, form: "range") } is right. Write each reading down with its date, to see the tube fade.

## Numbers
meter-label-range = Tube to back
# Only with: $away, $begin
meter-range = { LENGTH($away, form: "range") } by your readings, start at { LENGTH($begin) }
# Only with: $away, $begin
meter-range-not-yet = Do not hang it by them yet. All taken together they say { LENGTH($away, form: "range") }, from { LENGTH($begin) }.
meter-label-basks = Where it basks
meter-label-first = Where you read first
meter-place = UV index { UVI($here, form: "doubt") } at { LENGTH($at) }: { $judged }
meter-label-readings = Your readings
meter-label-others = The others
meter-pattern-too_few = { $contradicts ->
    [yes] No { meter-one } gives them both, so at least one of them is off.
   *[no] { $point ->
        [yes] Two readings fix a small lamp, but cannot show whether one of them is off.
       *[no] Two readings or fewer cannot show whether one of them is off.
      }
  }
meter-pattern-consistent = They agree with one { meter-one-dat }, as careful readings do.
meter-pattern-near_low = They are low close by, or high far away, for one { meter-one }.
meter-pattern-near_high = They are high close by, or low far away, for one { meter-one }.
meter-pattern-rising = They rise in the order you took them.
meter-pattern-scattered = They scatter more than careful readings do.
meter-one = { $point ->
    [yes] small lamp
   *[no] tube
  }
meter-one-dat = { meter-one }
meter-label-suspects = Possible reasons
meter-suspects = { LIST($suspects, join: "list-or") }
meter-suspect-off_axis = taken beside the middle of the tube
meter-suspect-not_facing = the sensor not facing the tube
meter-suspect-other_lamp = another lamp or daylight in the reading
meter-suspect-warm_up = the tube on for less than 20 to 30 minutes
meter-suspect-measured_point = the distance not measured from the lit tube to the sensor
meter-suspect-tube_length = a tube longer or shorter than you told me
meter-suspect-shaded = a hand, a wire or a branch in the way
meter-label-sure = How sure
meter-sure = { $contradicts ->
    [yes] Hardly at all: the lamp can be { NUMBER($times) } times as strong or as weak.
   *[no] Your readings fix the lamp to about { SHARE($fixed) }.
  } A hand meter itself can be off by about { SHARE($meter_doubt) }.
# Only with: $passes
meter-passes = By your readings your own screen lets through about { SHARE($passes) } ({ SHARE($passes, form: "range") }).
meter-label-class = Against its class
# Only with: $against, $named
meter-class = { $keepers ->
    [none] About { SHARE($against) } of what I assume for its class: { $named }.
   *[other] About { SHARE($against) } of what { $keepers } keepers of your group read of its class: { $named }.
  }
meter-column-at = From the lamp
meter-column-read = You read
meter-column-all = The lamp by all readings
meter-column-used = Used
meter-at = { LENGTH($at) }
meter-read = { UVI($shows, form: "given") }
meter-by-all = { UVI($by_all) }
meter-used = { $used ->
    [yes] yes
   *[no] set aside
  }

## The picture
# Only with: $begin
meter-point-start = start: { LENGTH($begin) }
