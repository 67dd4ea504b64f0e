### Facts: StateTold
### What the state of an animal changes, and that nothing is known to change.

## In brief
state-short-young = { $less_uv ->
    [yes] Very young: half the UV.
   *[no] { $water ->
        [none] Very young: the same ranges.
       *[some] Very young: water from { TEMP($water, form: "low") }.
      }
  }
state-short-pale = { $less_uv ->
    [yes] Little pigment: half the UV.
   *[no] Little pigment: the same ranges.
  }
state-short-gravid = { $surface ->
    [none] { $brood ->
        [yes] With eggs or young: the same ranges.
       *[no] With eggs: I know no figures of that. The same ranges.
      }
   *[some] With eggs: { TEMP($surface, form: "high") } at most where she basks.
  }
# Only with: $surface
state-short-female = Female: { TEMP($surface, form: "high") } at most where she basks.
state-short-ill = { $night ->
    [none] Ill: the same ranges.
   *[some] Ill: heat at night below { TEMP($night, form: "high") }.
  }
state-short-quarantine = Quarantine: the same ranges.

## Why
state-why-young = { $less_uv ->
    [yes] Very young ones get half the UV of their kind here: our judgement.
   *[no] I know no figures of my own for very young ones. The ranges are those of grown ones.
  }
state-why-pale = { $less_uv ->
    [yes] Skin and eyes with little pigment bear less light. Half the UV of its kind is our judgement. Nobody I know of has measured it.
   *[no] Skin and eyes with little pigment bear less light: give it more dark hides. No other figure changes.
  }
state-why-gravid = { $surface ->
    [none] { $brood ->
        [yes] A female with eggs or young keeps the ranges of her kind. Let her choose between warm and cool.
       *[no] I know no figures for { NAME($animal, form: "a") } with eggs. She keeps the ranges of her kind: no more heat, no more UV, and a free way to the cool end.
      }
   *[some] Keepers hold the basking spot of females lower, so that they make fewer eggs. From memory, unchecked.
  } If she strains, is weak or stops moving, call a reptile vet today.
state-why-female = Keepers hold the basking spot of females lower, so that they make fewer eggs. From memory, unchecked.
state-why-ill = { $night ->
    [none] I know no figures for { NAME($animal, form: "a") } that is ill. It keeps the ranges of its kind: extra heat or UV heals nothing.
   *[some] Without cool nights a sick reptile stays in its own range: our judgement. Never warmer than the range of its kind by day.
  }
state-why-quarantine = In quarantine it keeps the ranges of its kind, in a bare box that is easy to clean, with a hide at both ends.
state-care-ill = It is ill: ask a reptile vet before you change its heat or its UV.

## Beside a target
state-note-uvi = half of what its kind gets: our judgement
state-note-night_floor = no cool nights while it is ill
state-note-water = warmer than for grown ones
state-note-basking_surface = lower than for males
