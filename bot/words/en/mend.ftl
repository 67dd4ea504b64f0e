### Facts: HeatChangeTold
### What each change would make of the cool end, as the cells of a table.

mend-column-change = Change
mend-column-cool = Cool end then
mend-column-verdict = That is
mend-change = { $room ->
    [none] { $lid ->
        [none] { mend-lamp }
        [solid] a closed lid
        [part_mesh] a lid part mesh
       *[full_mesh] a mesh lid
      }
   *[some] a room of { TEMP($room) }
  }
mend-lamp = { $lamp ->
    [none] { $part ->
        [none] the lamp further inward
       *[some] { SHARE($part) } of the watts
      }
   *[some] { $step ->
        [second_weaker_lamp] { WATTS($lamp) } more in the middle
       *[other] a { WATTS($lamp) } lamp
      }
  }
mend-cool = { TEMP($cool, form: "range") }
