### Eine Größe eines Terrariums: wie die kurze Antwort sagt, was nicht stimmt, ihr Wert und ihr Ziel in einer Tabelle.

cell-head = { heat-the } ist zu { $stand ->
    [too_low] kühl
    [probably_low] kühl
   *[other] { heat-hot }
  }: { TEMP($read) }.
cell-read = { TEMP($read) }
# Only with: $wanted
cell-aim = { TEMP($wanted, form: "range") }
cell-apart = { DIFF($apart) }
cell-apart-aim = { DIFF($least) } oder mehr
cell-hours = { HOURS($lit) }
cell-hours-aim = { HOURS($day, form: "range") }
cell-night = { TEMP($coldest) }
# Only with: $floor
cell-night-aim = nicht kälter als { TEMP($floor, form: "high") }
