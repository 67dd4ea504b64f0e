### Eine Größe eines Terrariums: wie die kurze Antwort sagt, was nicht stimmt, ihr Wert und ihr Ziel in einer Tabelle.

cell-head = { $at ->
    [low_end] { heat-the } ist im unteren Bereich { cell-way }: { TEMP($read) }.
    [high_end] { heat-the } ist im oberen Bereich { cell-way }: { TEMP($read) }.
   *[whole] { heat-the } ist { cell-way }: { heat-read }.
  }
cell-way = { $stand ->
    [too_low] zu kühl
    [probably_low] wahrscheinlich zu kühl
    [probably_high] wahrscheinlich zu { heat-hot }
   *[other] zu { heat-hot }
  }
cell-read = { heat-read }
# Only with: $wanted
cell-aim = { TEMP($wanted, form: "range") }
cell-apart = { DIFF($apart) }
cell-apart-aim = { DIFF($least) } oder mehr
cell-hours = { HOURS($lit) }
cell-hours-aim = { HOURS($day, form: "range") }
cell-night = { TEMP($coldest) }
# Only with: $floor
cell-night-aim = nicht kälter als { TEMP($floor, form: "high") }
