### Ein Pflegeblatt zum Weitergeben.

sheet-title = Pflegeblatt: { NAME($animal) }
sheet-told-on = Stand: { DAY($day) }, wie du es mir gesagt hast.
sheet-planned-on = Geplant am { DAY($day) }; noch nichts gemessen.
sheet-uvi = UVI { UVI($read) }
sheet-who-says = Wer das sagt:
sheet-source = { $citation ->
    [none] • { $kind }
   *[some] • { $citation } ({ $kind })
  }
sheet-known-common_practice = übliche Praxis in der Haltung
sheet-known-memory = aus dem Gedächtnis, keine Quelle gelesen
