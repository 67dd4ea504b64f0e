### Facts: LevelTold
### What a plan gets beyond the bare minimum.

level-label-later = Can wait
level-later = a white light, a second heat lamp, plants, seasons: the minimum keeps it from getting sick, the way up comes after. Ask next
level-label-bar = White LED bar
# Only with: $bar
level-bar = { LUMENS($bar, form: "range") }, over the lit half, off at night{ $held ->
    [yes] ; more would warm the cool end past its range
   *[no] {""}
  }. How bright that is, Brightness above tells; no need is published. It gives no UV and never replaces the tube; measure the cool end again after it
level-no-bar = none for now: it may warm the cool end past its range. A cooler room comes first
level-label-better = Beyond that
level-better = one thing at a time, after all reads fine: two weaker floods for a wider warm patch, live plants, hours by season. No more UV by default. Ask next
# Only with: $bar
level-do = Bar: { LUMENS($bar) }. Run empty, measure.
