### Facts: SideBySide, Side
### Two set-ups under a UV tube beside each other.

compare-title = Two set-ups beside each other

## The answer in brief
compare-head-near_first = The first is too close for any tube.
compare-head-near_second = The second is too close for any tube.
compare-head-near_both = Both are too close for any tube.
compare-head-first = Only the first is right there.
compare-head-second = Only the second is right there.
compare-head-both = Both are right there.
compare-head-neither = Neither is surely right there.
compare-first = First: UV index { UVI($there, form: "doubt") }, { $judged }.
compare-second = Second: UV index { UVI($there, form: "doubt") }, { $judged }.
compare-times-first = The first gives { DIGITS($times) } times the UV.
compare-times-second = The second gives { DIGITS($times) } times the UV.
compare-times-alike = They give nearly the same UV.
compare-unsure = Two real lamps may be the other way round.
compare-do-away = Hang any tube { LENGTH($nearest) } away or more.
compare-do-meter = A UV meter should show { UVI($wanted, form: "range") }.

## Steps
compare-step-measure = Measure from the underside of the lit tube to the animal's back where it basks.
compare-step-meter = Check the one that you take with a UV meter at back height: { UVI($wanted, form: "range") } is right.
compare-step-ask = Ask distance for one of them to see where to start and how to move it.

## Why
compare-why = Both ranges tell what one such lamp may give. How much they differ is surer than either figure, as the lamp is the same or far enough apart.
compare-why-unsure = The ranges overlap: two lamps of one class differ so much that a strong one of the weaker kind may give more than a weak one of the stronger kind.

## Beside each other
compare-column = What
compare-column-first = First
compare-column-second = Second
compare-row-there = UV index there
compare-row-verdict = Verdict
compare-row-hangs = Right place
compare-row-lamp = Tube
compare-row-between = Screen
compare-row-at = Distance
compare-row-age = Age
compare-cell-there = { UVI($there, form: "doubt") }
compare-cell-verdict = { $judged }
compare-cell-hangs = { $hangs ->
    [none] none, or it depends on the length
   *[some] { LENGTH($hangs, form: "range") }
  }
compare-cell-lamp = { $lamp }, { $long_known ->
    [unknown] length not told
   *[other] { LENGTH($long) }
  }
compare-cell-between = { $between }
compare-cell-at = { LENGTH($at) }
compare-cell-age = { $months ->
    [none] not told
   *[some] { NUMBER($months) } months
  }

## Picture
compare-picture-below = Solid: the first. Dashed: the second.
compare-picture-aim = aim for { UVI($wanted, form: "range") }
compare-picture-note = Pale: what one such lamp may give.
compare-picture-alt = Chart: the UV index of two set-ups falls with distance. Aim for { UVI($wanted, form: "range") }.
# Only with: $group
compare-by-one = One goes by { $keepers } keepers of your group.
# Only with: $group, $newest
compare-group = { $lamp }: { $keepers } keepers of your group read tubes of this class, the last on { DAY($newest) }. What they read takes the place of my own figure here.
