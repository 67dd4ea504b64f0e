### Ein Zielwert, der sich geändert hat, seit er genannt wurde.

retarget-one = { $now ->
    [none] keine Angabe mehr (bisher { $before })
   *[some] { $now } (bisher { $before })
  }
retarget-board = { $animal ->
    [none] Geändert am { DAY($day) }: { LIST($changed, join: "list-semi") }.
   *[some] Geändert am { DAY($day) }, { NAME($animal) }: { LIST($changed, join: "list-semi") }.
  }
