### Facts: WishPast, WishUnknown, SurfaceAim
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
warmth-step-help = For more about this question: help { $command }
warmth-label-own = Right for it
# Only with: $own, $own_known
warmth-own-known = { TEMP($own, form: "range") } ({ $own_known })

## A basking surface
warmth-surface-past = { $animal ->
    [none] No: { $wish } is too hot. It burns.
   *[some] No: { $wish } would burn { NAME($animal, form: "a") }.
  }
warmth-surface-most = { $animal ->
    [none] Over { TEMP($most) } is too hot for nearly every animal I know.
   *[some] Nothing over { TEMP($most) } may be in reach of { NAME($animal, form: "your") }.
  }
warmth-do-name = Another animal? Name it with animal:.
# Only with: $animal
warmth-surface-unknown = I know no basking surface for { NAME($animal, form: "a") }.
# Only with: $animal
warmth-surface-needless = No basking lamp: { NAME($animal, form: "a") } needs no hot spot.
warmth-needless-why = Only the air or the water counts.
warmth-do-needs = Ask needs for the figures that count.
warmth-ask-whom = Use what a keeper or vet you trust has named.
warmth-label-aim = Surface to aim for
warmth-asked = { $animal ->
    [none] { TEMP($aim) }, as you gave it; not checked for an animal: name yours, such as animal:corn snake, to have it checked.
   *[some] { TEMP($aim) }, as you gave it
  }
# Only with: $animal, $known
warmth-target = { TEMP($aim, form: "range") }{ $has_best ->
    [yes] , best { TEMP($aim) }
   *[no] {""}
  } for { NAME($animal, form: "a") } ({ $known })
warmth-label-usual = Look again
# Only with: $animal, $usual, $usual_known
warmth-usual = That is not what is usual for { NAME($animal, form: "a") }: { TEMP($usual, form: "range") }{ $usual_has_best ->
    [yes] , best { TEMP($usual) }
   *[no] {""}
  } ({ $usual_known })
# Only with: $animal
warmth-unusual = Not usual for { NAME($animal, form: "a") }.
warmth-unchecked = Not checked for your animal.
