### Was echte Sonne gibt: im offenen Gehege, hinter einem Fenster, im Gewächshaus.

outdoors-title = { $animal ->
    [none] Die freie Sonne
   *[some] Die freie Sonne für { NAME($animal, form: "acc") }
  }
outdoors-title-closed = { $window ->
    [yes] Sonne durch ein Fenster
   *[no] Sonne im Gewächshaus
  }

## Die Antwort in Kürze
outdoors-head-anybody = UV-Index am Mittag: { UVI($noon, form: "doubt") }.
outdoors-head-none = Ich kenne keinen UV-Bereich: gib Schatten.
# Only with: $wanted
outdoors-head-weak = Den ganzen Tag zu schwach: Ziel { UVI($wanted, form: "range") }.
outdoors-head-noon = Um den Mittag passend, Schatten daneben.
outdoors-head-edges = Mittags zu stark: nur früh oder spät.
outdoors-head-strong = Fast immer zu stark: meist Schatten.
outdoors-head-hot = Jetzt nicht: Selbst der Schatten ist zu warm.
# Only with: $shade, $shade_wanted
outdoors-shade-hot = { TEMP($shade) } im Schatten, Ziel { TEMP($shade_wanted, form: "range") }.
# Only with: $shade
outdoors-shade-cold = { TEMP($shade) } im Schatten: nur kurz hinaus.
# Only with: $shade
outdoors-shade-fine = { TEMP($shade) } im Schatten sind richtig.
outdoors-here = Um { CLOCK($hour) }: UV-Index { UVI($there, form: "doubt") }{ $verdict ->
    [none] .
   *[some] , { $verdict }.
  }
outdoors-right = UV passt: { LIST($parts, join: "list-with") }.
outdoors-part = { CLOCK($start) } bis { CLOCK($end) }
outdoors-noon = Mittags im { $month }: UV-Index { UVI($noon, form: "range") }.
outdoors-assumed = Klar, Sonnenzeit (Mittag { CLOCK($highest) }).
outdoors-do-shade = Immer halb Schatten, und bleib dabei.
outdoors-do-stay = Fang mit zehn Minuten an.
outdoors-do-inside = Lass es heute auf der kühlen Seite.
outdoors-head-closed = { $window ->
    [yes] Kein nennenswertes UV kommt hindurch.
   *[no] Unter Glas oder Folie: kein UV rechnen.
  }
outdoors-range-closed = { $window ->
    [yes] Nur die Wärme der Sonne kommt herein.
   *[no] Es heizt sich in Minuten auf.
  }
outdoors-do-tube = Seine UV-Lampe braucht es trotzdem.

## Warum
outdoors-why-clear = Gerechnet für ebenen Boden auf Meereshöhe und klaren Himmel. Wolken, Bäume und Dunst nehmen viel davon weg; Höhe und heller Boden geben dazu.
outdoors-why-shade = In der Sonne entscheidet das Tier selbst, wie lange es bleibt, und das kann es nur, wo es in den Schatten gehen kann.
outdoors-why-glass = Fensterglas nimmt fast alles UVB. Gewächshausglas und Folien sind verschieden: Die meisten lassen kaum etwas durch, manche Folie viel. Das zeigt nur ein UV-Messgerät dahinter.
outdoors-why-oven = Sonne, die durch Glas oder Folie fällt, bleibt als Wärme darin. Ein geschlossener Raum in der Sonne wird viel heißer als die Luft draußen.

## Schritte
outdoors-step-pen = Nimm ein Gehege aus Gitter oder Draht mit Dach und Schloss, nie aus Glas oder Plastik.
outdoors-step-half = Lass immer die Hälfte im Schatten. Die Sonne wandert: Schau jede Viertelstunde nach. Stell Wasser und ein Versteck in den Schatten.
outdoors-step-stay = Bleib dabei. Katzen, Krähen und Hunde sind schnell. Es sperrt im Schatten das Maul auf oder rennt am Gitter entlang? Hol es sofort herein.
outdoors-step-begin = Fang mit zehn Minuten an, früh oder spät am Tag.
outdoors-step-meter = Hast du ein UV-Messgerät? Halt es an seinen Rücken, nach oben, und trau ihm mehr als jeder Tabelle.
outdoors-step-inside = Lass es heute drinnen, auf seiner kühlen Seite. Geh in einer kühleren Stunde hinaus, und miss zuerst den Schatten.
outdoors-step-tube = Lass seine UV-Lampe zu den üblichen Stunden an: Die Sonne hinter Glas ersetzt sie nicht.
outdoors-step-blind = Halt das Terrarium aus dieser Sonne: ein Rollo am Fenster, ein Thermometer, das den heißesten Wert behält, und im Gewächshaus Lüftungen, die sich selbst öffnen.

## Zahlen
outdoors-label-sky = Der Himmel
outdoors-sky = { ANGLE($latitude) } { $south ->
    [yes] Süd
   *[no] Nord
  }, { $month }, klar: UV-Index { UVI($noon, form: "doubt") } am Mittag
outdoors-label-shade = Im Schatten
outdoors-shade-told-untold = nicht gesagt
# Only with: $shade
outdoors-shade-told-unknown = { TEMP($shade) }: Ich kenne keinen Bereich dafür. Dort muss es sich abkühlen können.
# Only with: $shade, $shade_wanted
outdoors-shade-told-hot = { TEMP($shade) } sind wärmer, als seine kühle Seite sein darf: { TEMP($shade_wanted, form: "range") }.
# Only with: $shade, $shade_wanted
outdoors-shade-told-cold = { TEMP($shade) } sind kühler als seine kühle Seite: { TEMP($shade_wanted, form: "range") }. Nur in der Sonne, ohne Wind und nicht lange.
# Only with: $shade, $shade_wanted
outdoors-shade-told-fine = { TEMP($shade) } passen zu seiner kühlen Seite: { TEMP($shade_wanted, form: "range") }.
outdoors-column-hour = Sonnenzeit
outdoors-column-uvi = UV-Index
outdoors-column-verdict = Das ist
outdoors-cell-hour = { CLOCK($hour) } und { CLOCK($later) }
outdoors-cell-uvi = { UVI($there, form: "doubt") }
outdoors-no-verdict = –

## Vorsicht
outdoors-care-glass = Nie ein Glas- oder Plastikbecken in die Sonne, keine Minute, auch nicht ohne Deckel.
outdoors-care-glass-short = Nie Glas oder Plastik in die Sonne.

## Das Bild
outdoors-picture-axis = UV-Index (UVI)
outdoors-picture-hour = Sonnenzeit (Stunden)
# Only with: $wanted
outdoors-picture-band = richtig: { UVI($wanted, form: "range") }
outdoors-picture-right = passt
outdoors-picture-note = Linie: beste Schätzung bei klarem Himmel. Blasses Band: wo es wirklich liegen kann.
outdoors-picture-alt = Diagramm: der UV-Index eines klaren Tages nach Stunden. Mittags { UVI($noon, form: "doubt") }.
