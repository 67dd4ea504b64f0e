### Facts: Compared, LampsBeside, Beside, Stood, BoxDiffers, BoxName
### Two days of an enclosure, or two enclosures, beside each other.

mine-compare-title = “{ $name }”: two days compared
# Only with: $other
mine-compare-title-boxes = “{ $name }” and “{ $other }” compared
mine-compare-box = { $name }
mine-compare-lead-nothing = Nothing alike was read on both sides.
# Only with: $what
mine-compare-lead-alike = { $what } differs most; none is judged otherwise.
# Only with: $what $was $is_now
mine-compare-lead-turned = { $what }: first { $was }, then { $is_now }.
# Only with: $what $was $is_now
mine-compare-lead-turned_boxes = { $what }: { $was } in the first, { $is_now } in the second.
# Only with: $other
mine-compare-title-lamps = “{ $name }” and “{ $other }”: their lamps
mine-compare-changed = { $what }: { $said }
mine-compare-days = { DAY($first) } and { DAY($second) }.
# Only with: $other
mine-compare-boxes = By the last readings of both.
mine-compare-what = What
mine-compare-change = Change
mine-compare-sign = { $way ->
    [more] +
   *[less] −
  }
# Only with: $degrees
mine-compare-degrees = { mine-compare-sign }{ DIFF($degrees) }
# Only with: $part
mine-compare-part = { mine-compare-sign }{ SHARE($part) }
# Only with: $index
mine-compare-index = { mine-compare-sign }{ UVI($index, form: "given") }
# Only with: $judged
mine-compare-judged = { $told }: { $judged }
mine-compare-differs = { $here ->
    [none] not told
   *[some] { $here }
  } / { $there ->
    [none] not told
   *[some] { $there }
  }
mine-compare-picture-note = Bar: what to aim for. Diamond: what you read, with its doubt.
mine-compare-step = See the whole history: mine show name:{ $name }
