### Wie weit die Röhre hängt

distance-title = { $animal ->
    [none] Abstand von der Röhre zum Rücken
   *[some] Abstand von der Röhre zum Rücken für { NAME($animal, form: "acc") }
  }
distance-title-by-length = { $animal ->
    [none] Es kommt auf die Länge der Röhre an
   *[some] Bei { NAME($animal, form: "dat") } kommt es auf die Länge der Röhre an
  }
distance-title-no = { $animal ->
    [none] Diese Röhre taugt nicht
   *[some] Diese Röhre taugt nicht für { NAME($animal, form: "acc") }
  }

## Die Antwort in Kürze
distance-head = { LENGTH($start) } von Röhre bis Rücken.
distance-range = { $short_only ->
    [yes] Kurze: { LENGTH($span, form: "range") }.
   *[no] Gut: { LENGTH($span, form: "range") }.
  }
distance-only-meter = Ob es stimmt, zeigt nur ein Messgerät.
distance-held-nothing = Eine lange Röhre gibt mehr, also fange ich weiter weg an.
distance-held-kind = Eine lange Röhre gibt mehr, also fange ich weiter weg an.
distance-held-length = Länge unbekannt: Eine lange gibt mehr, also fange ich weiter weg an.
distance-held-both = Angenommen: T5 HO. Eine lange gibt mehr, also fange ich weiter weg an.
distance-do-measure = Lampe aus, bis zum Rücken messen.
distance-do-length = Miss die Röhre, frag noch einmal.
distance-do-meter = Ziel am UV-Messgerät: { UVI($wanted, form: "range") }.
distance-head-weaker = Nimm eine schwächere Röhre.
distance-this-one = Diese gehört { LENGTH($start) } weit weg.
distance-any-length-too-far = Egal wie lang: Diese hängt zu weit weg.
distance-do-weaker = Nimm eine schwächere Röhre.
distance-head-by-length = Es kommt auf die Länge der Röhre an.
# Only with: $away
distance-if-long = Bei { LENGTH($long) } Länge: { LENGTH($away, form: "range") }.
distance-do-measure-tube = Miss die Röhre, frag noch einmal.
distance-no-fits = Sie passt.
distance-no-too_weak = Nein: Diese Röhre ist hier zu schwach.
distance-no-too_close = Nein: Sie würde zu nah hängen.
distance-no-out_of_range = Nein: Diese Röhre ist hier zu stark.
distance-no-by_length = Es kommt auf die Länge der Röhre an.
distance-no-range-fits = Sie passt.
distance-no-range-too_weak = UV-Index { UVI($safe_uvi) } bei { LENGTH($safe) }, näher ist nicht sicher.
distance-no-range-too_close = Sie müsste bei { LENGTH($would) } hängen.
distance-no-range-out_of_range = Zu stark, selbst bei { LENGTH($farthest) }.
distance-no-range-by_length = Es kommt auf die Länge der Röhre an.

## Warum
distance-why-held = Eine lange Röhre gibt mehr UV als eine kurze. Die Länge hast du nicht genannt, also fange ich dort an, wo auch die längste nicht zu stark ist.
distance-why-measure = Das ist ein Anfang: Ob es stimmt, zeigt nur ein UV-Messgerät.
distance-why-weaker = Diese Röhre ist so stark, dass sie weiter weg hängen muss, als in den meisten Terrarien Platz ist.
distance-why-by-length = Kein einzelner Abstand passt für jede mögliche Länge. In der Tabelle stehen alle.
distance-why-too-far = Egal wie lang sie ist: Diese Röhre muss zu weit weg hängen.
distance-why-fits = Sie passt.
distance-why-too_weak = Selbst bei { LENGTH($safe) }, und näher ist nicht sicher, gibt sie UV-Index { UVI($safe_uvi, form: "doubt") } und nicht { UVI($wanted, form: "range") }.
distance-why-too_close = Für UV-Index { UVI($wanted, form: "range") } müsste sie { LENGTH($would) } vom Rücken hängen. Das ist zu nah. Ein Tier, das sich um { LENGTH($inch) } aufrichtet, bekommt etwa { SHARE($more) } mehr UV (Index { UVI($more_uvi) }, auf ein Drittel genau). Außerdem kommt es an die Leuchte.
distance-why-out_of_range = Sie gibt mehr als UV-Index { UVI($wanted, form: "range") }, selbst bei { LENGTH($farthest) }.
distance-why-by_length = Es kommt auf die Länge der Röhre an.

## Schritte
distance-step-measure = Miss von der Unterseite der Röhre, wo sie leuchtet, gerade hinunter bis zum Rücken des Tieres am Sonnenplatz. Nicht bis zum Stein oder Boden.
distance-step-hang = Häng die Röhre auf { LENGTH($start) }. Unsicher? Geh etwas weiter weg.
distance-step-meter = Wenn du ein UV-Messgerät leihen kannst, halt es auf Rückenhöhe zur Röhre hin. Verschieb die Röhre, bis es { UVI($wanted, form: "range") } zeigt.
distance-step-own-meter = Halt dein UV-Messgerät auf Rückenhöhe zur Röhre hin. Verschieb die Röhre, bis es { UVI($wanted, form: "range") } zeigt.
distance-step-again = Miss neu, sobald sich Röhre, Leuchte, Gitter oder Sonnenplatz ändern.
distance-step-then-hang = Häng sie dann auf, und miss mit einem UV-Messgerät, wenn du kannst.
distance-step-then-measure = Miss dann noch einmal, mit einem UV-Messgerät, wenn du kannst.

## Zahlen
distance-label-range = Röhre bis Rücken
distance-whole-range = { LENGTH($span, form: "range") }; fang bei { LENGTH($start) } an
distance-label-uvi = UV-Index
distance-at = { UVI($uvi, form: "doubt") } bei { LENGTH($at) }
distance-label-held = Grenze
distance-held-near = Bei { LENGTH($nearest) } höre ich auf: Näher soll keine Röhre hängen.
distance-held-far = Bei { LENGTH($farthest) } höre ich auf, weiter weg sage ich nichts.
distance-column-long = Röhre, Ende zu Ende
distance-column-away = Röhre bis Rücken
distance-column-start = Anfang
distance-cell-long = { LENGTH($long) }
# Only with: $away
distance-cell-away = { LENGTH($away, form: "range") }
# Only with: $begin
distance-cell-start = { LENGTH($begin) }
distance-cell-none = –

## Bild
# Only with: $start
distance-point-start = Anfang bei { LENGTH($start) }
distance-point-would = müsste bei { LENGTH($at) } hängen
distance-point-mild = mild bei jeder Länge: { LENGTH($at) }
distance-point-here = UV-Index { UVI($uvi, form: "doubt") } bei { LENGTH($at) }
