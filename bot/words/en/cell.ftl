### Facts: HeatReading, HeatApart, LightRead, NightRead
### A quantity of a set-up: how the brief says it is wrong, its reading and its aim as the cells of a table.

cell-head = { $at ->
    [low_end] { heat-the } is { cell-way } at its low end: { TEMP($read) }.
    [high_end] { heat-the } is { cell-way } at its high end: { TEMP($read) }.
   *[whole] { heat-the } is { cell-way }: { heat-read }.
  }
cell-way = { $stand ->
    [too_low] too cool
    [probably_low] probably too cool
    [probably_high] probably too { heat-hot }
   *[other] too { heat-hot }
  }
cell-read = { heat-read }
# Only with: $wanted
cell-aim = { TEMP($wanted, form: "range") }
cell-apart = { DIFF($apart) }
cell-apart-aim = { DIFF($least) } or more
cell-hours = { HOURS($lit) }
cell-hours-aim = { HOURS($day, form: "range") }
cell-night = { TEMP($coldest) }
# Only with: $floor
cell-night-aim = no colder than { TEMP($floor, form: "high") }
