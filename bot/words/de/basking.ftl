### Der Sonnenplatz

basking-title = Von { TEMP($surface) } auf { TEMP($aimed) } am Sonnenplatz

## Die Antwort in Kürze
# Only with: $move
basking-head-raise = Häng die Lampe auf { LENGTH($move, form: "high") } hoch.
# Only with: $move
basking-head-lower = Häng die Lampe tiefer: { LENGTH($move, form: "high") }.
basking-head-inside = Lass es so: Die Fläche passt.
basking-head-leave = Lass die Lampe, wo sie ist.
basking-head-smaller = { $other ->
    [none] Nimm eine kleinere Lampe.
   *[some] { $beyond ->
        [yes] Nimm etwa { WATTS($other) }, in einer Fassung dafür.
       *[no] Nimm eine Lampe mit etwa { WATTS($other) }.
      }
  }
basking-head-stronger = { $other ->
    [none] Nimm eine stärkere Lampe.
   *[some] { $beyond ->
        [yes] Nimm etwa { WATTS($other) }, in einer Fassung dafür.
       *[no] Nimm eine Lampe mit etwa { WATTS($other) }.
      }
  }
# Only with: $move
basking-range-raise = Jetzt { LENGTH($distance) }, richtig sind { LENGTH($move, form: "range") }.
# Only with: $move
basking-range-lower = Jetzt { LENGTH($distance) }, richtig sind { LENGTH($move, form: "range") }.
# Only with: $move
basking-range-inside = Willst du näher an { TEMP($aimed) }, fang bei { LENGTH($move, form: "high") } an.
basking-range-leave = { TEMP($surface) } sind so nah an { TEMP($aimed) }, wie man messen kann.
basking-range-smaller = Mit dieser kommst du nicht auf { TEMP($aimed) }.
basking-range-stronger = Mit dieser kommst du nicht sicher auf { TEMP($aimed) }.
basking-turn-up = Dreh zuerst den Dimmer langsam auf. Reicht volle Leistung nicht:
basking-do-measure = Miss nach zwei Stunden wieder.
basking-do-leave = Miss jede Jahreszeit wieder.
basking-do-hang = Nicht näher als { LENGTH($away) }.
basking-do-again = Lass sie 2 bis 3 Stunden an, dann frag wieder.
basking-stopped-title = Bring das in Ordnung, bevor du den Sonnenplatz änderst
basking-stopped-range = Vorher nenne ich keinen Abstand.

## Keine Antwort
basking-refused-title = Das lässt sich noch nicht ausrechnen
basking-refused-dimmer_on = Der Dimmer ist aus: Dreh ihn erst auf.
basking-refused-lamp_heat = Die Luft muss kühler sein als die Fläche.
basking-refused-cooler_air = Eine Lampe kann nur wärmen, und die Luft ist warm.
basking-refused-why-dimmer_on = Dann miss noch einmal.
basking-refused-why-lamp_heat = Deine Luft hat { $read }. Ist die Lampe an und der Fühler nicht in ihrem Strahl?
basking-refused-why-cooler_air = Deine Luft ist mit { $read } so warm, wie die Fläche werden soll. Kühl zuerst den Raum.
basking-do-ask = Frag mit { $example }.

## Warum
basking-why-rise = Die Lampe bringt den Anstieg, den Rest bringt der Raum. Darum rechne ich mit dem Anstieg und nicht mit der Zahl auf dem Thermometer.
basking-why-range = Je heißer etwas ist, desto mehr Wärme verliert es, und der Strahl beginnt irgendwo hinter der Vorderseite der Lampe. Auch die Luft neben dem Platz ändert sich etwas.

## Schritte
basking-step-turn-up = Dreh zuerst den Dimmer auf, jedes Mal ein wenig, und miss danach. Was jetzt kommt, gilt für eine Lampe, die mit voller Leistung nicht reicht.
basking-step-leave = Miss wieder, wenn sich die Jahreszeit oder der Raum ändert.
# Only with: $move
basking-step-set = { $cooling ->
    [yes] Häng die Lampe auf { LENGTH($move, form: "high") }, das vorsichtige Ende, gemessen von ihrer Vorderseite bis zur Fläche. Bleib danach innerhalb von { LENGTH($move, form: "range") }.
   *[no] Sieh auf der Lampe nach, welchen Abstand sie mindestens braucht. Häng sie dann auf { LENGTH($move, form: "high") }, das vorsichtige Ende, gemessen von ihrer Vorderseite bis zur Fläche. Bleib danach innerhalb von { LENGTH($move, form: "range") }.
  }
basking-step-dim = Oder lass die Lampe, wo sie ist, und dreh am Dimmer. Mach das eine, nicht beides.
basking-step-or-change = Oder wechsle die Lampe, wie in der Tabelle. Mach das eine, nicht beides.
basking-step-change = Wechsle die Lampe, wie in der Tabelle.
basking-step-fit = { $other ->
    [none] { $cooling ->
        [yes] Nimm eine kleinere Lampe, und häng sie nicht näher als { LENGTH($away) } und nicht näher, als auf ihr steht.
       *[no] Nimm eine stärkere Lampe, und häng sie nicht näher als { LENGTH($away) } und nicht näher, als auf ihr steht.
      }
   *[some] { $beyond ->
        [yes] Nimm eine Lampe mit etwa { WATTS($other) } in einer Fassung, die dafür reicht, und häng sie nicht näher als { LENGTH($away) } und nicht näher, als auf ihr steht.
       *[no] Nimm eine Lampe mit etwa { WATTS($other) }, und häng sie nicht näher als { LENGTH($away) } und nicht näher, als auf ihr steht.
      }
  }
basking-step-again = Lass die Lampe zwei bis drei Stunden brennen. Miss dann die Fläche und die Luft daneben noch einmal, und frag basking wieder.

## Zahlen
basking-label-move = Neuer Abstand
# Only with: $move
basking-move-told = von { LENGTH($distance) } auf etwa { LENGTH($move) }, irgendwo innerhalb von { LENGTH($move, form: "range") }
basking-label-other = Andere Lampe
basking-other-told = { $other ->
    [none] nicht näher als { LENGTH($away) }
   *[some] etwa { WATTS($other) }, nicht näher als { LENGTH($away) }
  }
basking-label-rise = Über der Luft
basking-rise-told = jetzt { DIFF($rise) }, sein sollen es { DIFF($rise_wanted) }
basking-label-dimmer = Dimmer
basking-dimmer-beyond_full = Auch volle Leistung reicht nicht: Häng die Lampe näher, oder nimm eine stärkere. { basking-filaments }
basking-dimmer-too_much = Sie müsste mit etwa { SHARE($setting) } der vollen Leistung laufen. Mehr als etwa { SHARE($most) } zu dimmen ist zu viel (übliche Praxis, ohne Quelle): { $smaller ->
    [none] Nimm lieber eine kleinere Lampe.
   *[some] Nimm lieber eine Lampe mit { WATTS($smaller) }.
  } { basking-filaments }
basking-dimmer-within = Von { SHARE($present) } auf etwa { SHARE($setting) } der vollen Leistung, innerhalb von { SHARE($setting, form: "range") }. Die Striche am Dimmer sind keine Leistung: Dreh in kleinen Schritten, und richte dich nach dem Thermometer. { basking-filaments }
basking-filaments = Nur eine Glüh- oder Halogenlampe lässt sich dimmen: Dimm nie eine Quecksilberdampflampe oder eine UV-Röhre.
basking-label-dimming = Was das Dimmen tut
basking-dimming-told = Mit { SHARE($power) } ihrer Leistung gibt sie etwa { SHARE($light) } ihres Lichts, und es wird orangefarbener (Farbtemperatur { SHARE($colour) } der vollen).
basking-column-change = Änderung
basking-column-surface = Fläche dann
basking-column-so = Also
# Only with: $move
basking-cell-move = diese Lampe auf { LENGTH($move, form: "high") }
# Only with: $at_start
basking-cell-at-start = { TEMP($at_start) }
basking-cell-start = der vorsichtige Anfang
basking-cell-lamp = { WATTS($size) } derselben Form aus { LENGTH($away) }
basking-cell-expected = { TEMP($expected, form: "range") }
basking-cell-beyond = mehr, als auf der Fassung steht

## Vorsicht
basking-care-label = Häng die Lampe nie näher, als die Angabe auf ihr erlaubt.
basking-care-label-short = Nie näher, als die Lampe erlaubt.

## Das Bild
basking-picture-read = zeigt { TEMP($surface) }
basking-picture-aim = richtig sind { TEMP($aimed, form: "range") }
