### Facts: Compared, Changed
### Two days of an enclosure beside each other.

mine-compare-title = “{ $name }”: two days compared
mine-compare-head = { $count ->
    [0] You read nothing alike on both days.
    [one] You read { $count } thing on both days.
   *[other] You read { $count } things on both days.
  }
mine-compare-days = { DAY($first) } and { DAY($second) }.
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
mine-compare-step = See the whole history: mine show name:{ $name }
