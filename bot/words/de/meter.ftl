### Die eigene Lampe nach Messwerten

meter-title = { $animal ->
    [none] Deine Lampe nach deinen Messwerten
   *[some] Deine Lampe nach deinen Messwerten, für { NAME($animal, form: "your-acc") }
  }

## Die Antwort in Kürze
# Only with: $begin
meter-head-fits = Häng sie { LENGTH($begin) } über den Rücken.
meter-head-too_weak = Nein: Dafür ist deine Lampe zu schwach.
meter-head-too_close = Nein: Sie müsste zu nah hängen.
meter-head-out_of_range = Nein: Dafür ist deine Lampe zu stark.
meter-head-by_length = Es kommt auf die Länge der Röhre an.
# Only with: $away
meter-span = Bereich: { LENGTH($away, form: "range") }.
meter-here = { LENGTH($at) }: UV-Index { UVI($here) }, { $judged }.
meter-do-nearer = Miss noch einmal näher, bei 1 oder mehr.
meter-do-again = Miss dann neu: { UVI($wanted, form: "range") } ist richtig.

## Warum
meter-why-class = { $differ ->
    [none] Zwei Lampen einer Klasse unterscheiden sich um ein Drittel
   *[some] Zwei Lampen dieser Klasse unterscheiden sich bei den Haltern deiner Gruppe um etwa { SHARE($differ) }
  }, und eine alte oder staubige gibt weniger. Sind deine Messwerte schwach, zählt die Klasse mit.

## Schritte
meter-step-again = Miss nach jeder Änderung neu: { UVI($wanted, form: "range") } ist richtig. Schreib jeden Wert mit Datum auf, dann siehst du, wie die Röhre nachlässt.

## Zahlen
meter-label-range = Röhre bis Rücken
# Only with: $away, $begin
meter-range = { LENGTH($away, form: "range") } nach deinen Messwerten, fang bei { LENGTH($begin) } an
# Only with: $away, $begin
meter-range-not-yet = Häng sie noch nicht danach. Alle zusammen ergeben { LENGTH($away, form: "range") }, Anfang bei { LENGTH($begin) }.
meter-label-basks = Am Sonnenplatz
meter-label-first = Wo du zuerst gemessen hast
meter-place = UV-Index { UVI($here, form: "doubt") } bei { LENGTH($at) }: { $judged }
meter-label-readings = Deine Messwerte
meter-label-others = Die anderen
meter-pattern-too_few = { $contradicts ->
    [yes] Keine { meter-one } gibt beide, also stimmt mindestens einer nicht.
   *[no] { $point ->
        [yes] Zwei Messwerte legen eine kleine Lampe fest, zeigen aber nicht, ob einer falsch ist.
       *[no] Zwei Messwerte oder weniger zeigen nicht, ob einer falsch ist.
      }
  }
meter-pattern-consistent = Sie passen zu einer einzigen { meter-one-dat }, so wie sorgfältige Messwerte.
meter-pattern-near_low = Für eine einzige { meter-one } sind sie nah zu niedrig oder fern zu hoch.
meter-pattern-near_high = Für eine einzige { meter-one } sind sie nah zu hoch oder fern zu niedrig.
meter-pattern-rising = Sie steigen in der Reihenfolge, in der du gemessen hast.
meter-pattern-scattered = Sie streuen mehr, als sorgfältige Messwerte es tun.
meter-one = { $point ->
    [yes] kleine Lampe
   *[no] Röhre
  }
meter-one-dat = { $point ->
    [yes] kleinen Lampe
   *[no] Röhre
  }
meter-label-suspects = Mögliche Gründe
meter-suspects = { LIST($suspects, join: "list-or") }
meter-suspect-off_axis = neben der Mitte der Röhre gemessen
meter-suspect-not_facing = der Sensor nicht zur Röhre gerichtet
meter-suspect-other_lamp = eine andere Lampe oder Tageslicht im Messwert
meter-suspect-warm_up = die Röhre kürzer als 20 bis 30 Minuten an
meter-suspect-measured_point = der Abstand nicht von der leuchtenden Röhre zum Sensor gemessen
meter-suspect-tube_length = die Röhre länger oder kürzer als genannt
meter-suspect-shaded = eine Hand, ein Draht oder ein Ast im Weg
meter-label-sure = Wie sicher
meter-sure = { $contradicts ->
    [yes] Kaum: Die Lampe kann { NUMBER($times) }-mal so stark oder so schwach sein.
   *[no] Deine Messwerte legen die Lampe auf etwa { SHARE($fixed) } genau fest.
  } Ein Handgerät selbst kann um etwa { SHARE($meter_doubt) } danebenliegen.
# Only with: $passes
meter-passes = Nach deinen Messwerten lässt dein Gitter etwa { SHARE($passes) } ({ SHARE($passes, form: "range") }) durch.
meter-label-class = Gegen ihre Klasse
# Only with: $against, $named
meter-class = { $keepers ->
    [none] Etwa { SHARE($against) } von dem, was ich für ihre Klasse annehme: { $named }.
   *[other] Etwa { SHARE($against) } von dem, was { $keepers } Halter deiner Gruppe an ihrer Klasse maßen: { $named }.
  }
meter-column-at = Von der Lampe
meter-column-read = Gemessen
meter-column-all = Die Lampe nach allen Werten
meter-column-used = Zählt
meter-at = { LENGTH($at) }
meter-read = { UVI($shows, form: "given") }
meter-by-all = { UVI($by_all) }
meter-used = { $used ->
    [yes] ja
   *[no] nein
  }

## Das Bild
# Only with: $begin
meter-point-start = Anfang: { LENGTH($begin) }
