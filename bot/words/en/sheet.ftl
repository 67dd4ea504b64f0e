### Facts: CareFor, SheetUvi, SheetSource
### A care sheet, to hand over.

sheet-title = Care sheet: { NAME($animal) }
sheet-told-on = As told on { DAY($day) }.
sheet-planned-on = Planned on { DAY($day) }; nothing was read yet.
sheet-uvi = UVI { UVI($read) }
sheet-who-says = Who says so:
sheet-source = { $citation ->
    [none] • { $kind }
   *[some] • { $citation } ({ $kind })
  }
sheet-known-common_practice = common practice among keepers
sheet-known-memory = from memory, no source read
