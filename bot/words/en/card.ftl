### Facts: Card, CardRow, Cell, Between, CardAltCell, CardAltRow

card-title = { $animal ->
    [none] Tube distances for UV index { UVI($wanted, form: "range") }
   *[some] Tube distances for { NAME($animal, form: "a") }
  }

## The answer in brief
card-head-all = All { $asked } set-ups can give UV index { UVI($wanted, form: "range") }.
card-head-some = { $fits } of { $asked } set-ups can give UV index { UVI($wanted, form: "range") }.
card-head-none = No: none of these tubes gives UV index { UVI($wanted, form: "range") } safely.
card-range = The table tells each, tube to back.
card-assumed = No length told, so it fits any length.
card-by-group = Some go by your group's readings.
# Only with: $group, $newest
card-group = { card-short }: { $keepers } keepers of your group read tubes of this class, the last on { DAY($newest) }. Never nearer than my own figure allows.
card-do-start = Start mid-range. Not sure? Farther.
card-do-far = Start at the far end of the range.
card-do-ask = Ask distance for one tube to see why.

## Steps
card-step-measure = Measure from the underside of the lit tube straight down to your animal's back.
card-step-start = Start in the middle of the range. Not sure? Go a little farther away.
card-step-far = Start at the far end: the near end is for a short tube. Tell me the length, and I can say more.
card-step-meter = Have a UV meter? Go by { UVI($wanted, form: "range") } at back height.
card-step-again = Measure again whenever tube, fixture, screen or platform change.

## Numbers
card-label-sure = How sure
# Only with: $sure
card-sure = In the middle of a range the UV index can be { UVI($sure, form: "range") }, because lamps differ. A UV meter can tell.
card-label-own = The group's own
card-column = Tube and fixture
card-row = { $tube_long ->
    [none] { card-short }
   *[some] { card-short }, { $any_length ->
        [yes] any length
       *[no] { LENGTH($tube_long) }
      }
  }
card-short = { $own ->
    [none] { SHARE($strength, form: "given") }, { tubes-fixture }
   *[some] { $own }
  }
card-screen = { $open ->
    [none] { $net ->
        [none] no screen
       *[flat] screen blocks { SHARE($blocks) }
      }
   *[some] mesh, { SHARE($open) } open
  }
# Only with: $away
card-cell-fits = { LENGTH($away, form: "range") }
card-cell-too_weak = { card-first-too_weak }: { card-second-too_weak }
card-cell-too_close = { card-first-too_close }: { card-second-too_close }
card-cell-out_of_range = { card-first-out_of_range }: { card-second-out_of_range }
card-cell-by_length = { card-first-by_length }: { card-second-by_length }
# Only with: $away
card-first-fits = { LENGTH($away, form: "range", units: "first") }
card-first-too_weak = too weak
card-first-too_close = too close
card-first-out_of_range = too strong
card-first-by_length = by its length
# Only with: $away
card-second-fits = { LENGTH($away, form: "range", units: "second") }
card-second-too_weak = do not use
card-second-too_close = do not use
card-second-out_of_range = do not use
card-second-by_length = tell it

## The picture
card-picture-subtitle = For UV index { UVI($wanted, form: "range") }, from the lit tube to the back
card-picture-corner = T5 HO tube, { $any_length ->
    [yes] any length
   *[no] { LENGTH($long) }
  }
card-picture-far = { card-step-far }
card-picture-never = Never closer than { LENGTH($nearest) }. Measure after any change.
# Only with: $sure
card-picture-sure = How sure: { card-sure }
card-picture-alt = Table: { card-title }. { card-picture-subtitle }.
card-alt-row = { $lamp }: { LIST($cells, join: "list-semi") }.
card-alt-cell = { $screen }, { $cell }
