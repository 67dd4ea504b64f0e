### Facts: WishPast, WishUnknown
### Wishes past a limit, and animals of which no target is known.

warmth-past-title = Too hot to work towards
warmth-unknown-title = I have no figure for this animal
warmth-air-past = No: { $wish } is too hot for the cool end.
warmth-air-most = { $animal ->
    [none] At { TEMP($most) } nearly no animal can cool down.
   *[some] At { TEMP($most) } { NAME($animal, form: "your") } cannot cool down.
  }
# Only with: $animal
warmth-air-unknown = I know no air to aim for with { NAME($animal, form: "a") }.
# Only with: $own, $animal
warmth-own = Right for { NAME($animal, form: "your") }: { TEMP($own, form: "range") }.
warmth-do = Ask with { $example }.
warmth-step-help = For more about this question, ask help { $command }.
warmth-label-own = Right for it
# Only with: $own, $own_known
warmth-own-known = { TEMP($own, form: "range") } ({ $own_known })
