### Facts: TargetChanged, BoardChanged
### A target that changed since it was told.

retarget-one = { $now ->
    [none] no figure any more (it was { $before })
   *[some] { $now } (it was { $before })
  }
retarget-board = { $animal ->
    [none] Changed on { DAY($day) }: { LIST($changed, join: "list-semi") }.
   *[some] Changed on { DAY($day) } for { NAME($animal, form: "a") }: { LIST($changed, join: "list-semi") }.
  }
