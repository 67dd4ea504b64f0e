### Zwei Tage eines Terrariums oder zwei Terrarien nebeneinander.

mine-compare-title = „{ $name }“: zwei Tage im Vergleich
# Only with: $other
mine-compare-title-boxes = „{ $name }“ und „{ $other }“ im Vergleich
mine-compare-box = { $name }
mine-compare-lead-nothing = Auf beiden Seiten ist nichts Gleiches gemessen.
# Only with: $what
mine-compare-lead-alike = Am meisten anders: { $what }. Beurteilt wird alles gleich.
# Only with: $what $was $is_now
mine-compare-lead-turned = { $what }: erst { $was }, dann { $is_now }.
# Only with: $what $was $is_now
mine-compare-lead-turned_boxes = { $what }: im ersten { $was }, im zweiten { $is_now }.
# Only with: $other
mine-compare-title-lamps = „{ $name }“ und „{ $other }“: ihre Lampen
mine-compare-changed = { $what }: { $said }
mine-compare-days = { DAY($first) } und { DAY($second) }.
# Only with: $other
mine-compare-boxes = Nach den letzten Messwerten von beiden.
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
# Only with: $judged
mine-compare-judged = { $told }: { $judged }
mine-compare-differs = { $here ->
    [none] nicht genannt
   *[some] { $here }
  } / { $there ->
    [none] nicht genannt
   *[some] { $there }
  }
mine-compare-picture-note = Balken: Ziel. Raute: dein Messwert mit seiner Unsicherheit.
mine-compare-step = Sieh den ganzen Verlauf an: mine show name:{ $name }
