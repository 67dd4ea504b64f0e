### Was jede Änderung aus der kühlen Seite macht, als Zellen einer Tabelle.

mend-column-change = Änderung
mend-column-cool = Kühle Seite dann
mend-column-verdict = Das ist
mend-change = { $room ->
    [none] { $lid ->
        [none] { mend-lamp }
        [solid] ein geschlossener Deckel
        [part_mesh] ein Deckel mit etwas Gitter
       *[full_mesh] ein Gitterdeckel
      }
   *[some] ein Raum mit { TEMP($room) }
  }
mend-lamp = { $lamp ->
    [none] { $part ->
        [none] die Lampe weiter innen
       *[some] { SHARE($part) } der Watt
      }
   *[some] { $step ->
        [second_weaker_lamp] { WATTS($lamp) } mehr in der Mitte
       *[other] eine Lampe mit { WATTS($lamp) }
      }
  }
mend-cool = { TEMP($cool, form: "range") }
