### Zwei Tage eines Terrariums nebeneinander.

mine-compare-title = „{ $name }“: zwei Tage im Vergleich
mine-compare-head = { $count ->
    [0] An beiden Tagen hast du nichts Gleiches gemessen.
    [one] { $count } Messwert gibt es von beiden Tagen.
   *[other] { $count } Messwerte gibt es von beiden Tagen.
  }
mine-compare-days = { DAY($first) } und { DAY($second) }.
mine-compare-what = Was
mine-compare-change = Änderung
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
mine-compare-step = Sieh den ganzen Verlauf an: mine show name:{ $name }
