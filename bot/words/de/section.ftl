### Die Karte vom UV in einem Terrarium.

section-title = { $animal ->
    [none] Wohin das UV fällt
   *[some] Wohin das UV fällt, für { NAME($animal, form: "acc") }
  }

## Die Antwort in Kürze
section-head-too_close = Nein: Die UV-Lampe ist zu nah.
section-head-too_strong = Nein: zu stark am Liegeplatz.
section-head-maybe_strong = Vielleicht zu stark am Liegeplatz.
section-head-too_weak = Nein: zu schwach am Liegeplatz.
section-head-maybe_weak = Vielleicht zu schwach am Liegeplatz.
section-head-hardly = Kaum etwas vom Liegeplatz passt.
section-head-uneven = Nur { SHARE($in_range) } vom Liegeplatz passen.
section-head-cannot_tell = Wohl gut. Ein UV-Messgerät zeigt es.
section-head-fine = Ja: Der Liegeplatz hat sein UV.
section-most = UV-Index bis { UVI($most, form: "doubt") }. Ziel: { UVI($wanted, form: "range") }.
section-shade-there = Es gibt Schatten.
section-shade-probably = Es gibt wohl Schatten.
section-shade-cannot_tell = Schatten? Unklar: ein Versteck dazu.
section-shade-probably_none = Wohl kein Schatten: ein Versteck dazu.
section-shade-none = Kein Schatten: ein Versteck dazu.
section-assumed-nothing = Von der Röhre hast du alles gesagt.
section-assumed-kind = Angenommen: eine T5-HO-Röhre.
section-assumed-length = Angenommen: { LENGTH($long) } lang.
section-assumed-both = Angenommen: T5 HO, { LENGTH($long) }.
section-do-platform_lower = Setz den Liegeplatz { LENGTH($by) } tiefer.
section-do-platform_higher = Setz den Liegeplatz { LENGTH($by) } höher.
section-do-platform_sideways = Setz den Liegeplatz unter die UV-Lampe.
section-do-fewer_tubes = { section-use-tubes }
section-do-more_tubes = { section-use-tubes }
section-do-other_tube = Nimm { $lamp }.
section-do-other_length = Nimm eine Röhre mit { LENGTH($long) }.
section-do-tube_to_warm_end = Schieb die UV-Lampe zur warmen Seite.
section-do-hide = Stell ein Versteck auf die kühle Seite.
section-do-heat_lamp = Häng die Wärmelampe über den Liegeplatz.
section-do-then = { $last } { $warmth ->
    [none] Dann UV-Index bis { UVI($uvi) }.
   *[some] Dann haben { SHARE($warmth) } vom warmen Fleck UV.
  }
section-do-plan = Hier hilft kein Umbau: frag plan.
section-do-meter = Prüf mit UV-Messgerät: { UVI($wanted, form: "range") }.
section-use-tubes = { $count ->
    [one] Nimm eine Röhre.
   *[other] Nimm { $count } Röhren.
  }

## Schritte
section-moves = { $then ->
    [none] { $move }
   *[some] { $move } { $then }
  }
section-move-platform_lower = Setz den Liegeplatz { LENGTH($by) } tiefer: Dann sind UV-Lampe und Rücken { LENGTH($away) } auseinander.
section-move-platform_higher = Setz den Liegeplatz { LENGTH($by) } höher: Dann sind UV-Lampe und Rücken { LENGTH($away) } auseinander.
section-move-platform_sideways = Setz den Liegeplatz unter die Mitte der UV-Lampe: { LENGTH($along) } von der warmen Seite, { LENGTH($across) } von der Rückwand. Eine Wärmelampe zieht mit um, neben sie.
section-move-fewer_tubes = { section-use-tubes }
section-move-more_tubes = { section-use-tubes }
section-move-other_tube = Nimm stattdessen diese Röhre: { $lamp }.
section-move-other_length = Nimm eine Röhre mit { LENGTH($long) }.
section-move-tube_to_warm_end = Lass die UV-Lampe an der Wand der warmen Seite beginnen.
section-move-hide = Stell ein Versteck auf die kühle Seite.
section-move-heat_lamp = Häng die Wärmelampe über die Mitte vom Liegeplatz.
section-step-mend = { $instead ->
    [yes] Oder: { $all_moves } { section-then }
   *[no] { $all_moves } { section-then }
  }
section-then = { $warmth ->
    [none] Dann hat die stärkste Stelle UV-Index { UVI($uvi, form: "doubt") }, und { SHARE($in_range) } vom Liegeplatz liegen in { UVI($wanted, form: "range") }.{ $shade ->
        [none] {""}
       *[some] {" "}{ SHARE($shade) } vom Boden liegen im Schatten.
      }
   *[some] Dann haben { SHARE($warmth) } vom warmen Fleck das UV.
  }
# Only with: $hide
section-step-hide = Stell ein Versteck oder dichte Blätter auf die kühle Seite, { LENGTH($hide) } von der Wand der warmen Seite. Darunter ist kein UV.
section-life-water = Sein Liegeplatz ist der trockene Platz im Wasser: Setz dessen Oberseite auf diese Höhe, und miss dort. Lampen, Kabel und Stecker bleiben vom Wasser fern. Über das UV im Wasser weiß ich nichts.
section-life-climbs = Es klettert, also ist sein Liegeplatz der Ast oder das Brett unter der Lampe{ $branch ->
    [none] . Miss an der höchsten Stelle, die es erreicht, nicht nur an dieser.
   *[some] . Kein Ast darf dort höher sein als { LENGTH($branch) } über dem Boden: Darüber liegt der UV-Index wohl über { UVI($most) }. Miss an der höchsten Stelle, die es erreicht.
  }
section-life-digs = Es gräbt und geht aus dem Licht, wenn es will.
section-life-night = Es ist nachts wach und ruht am Tag. Lass den größten Teil im Schatten liegen, mit einem dunklen Versteck, damit es dieses Licht nur trifft, wenn es will.
section-life-giant = Es wird riesig. Miss neu, wenn es gewachsen ist.
section-step-warmth = Miss zwei Stunden später den Liegeplatz neu: Die Wärmelampe ist nicht mehr so weit weg wie vorher.
section-step-plan = Nichts, was ich in diesem Terrarium probiert habe, gibt dem Liegeplatz sein UV. Frag plan, mit Terrarium und Tier, nach einem Aufbau, der es kann.
section-step-meter = Geh die Stellen der Tabelle mit einem UV-Messgerät ab, in Rückenhöhe und nach oben gerichtet, und glaub dem Messgerät: { UVI($wanted, form: "range") } am Liegeplatz, unter { UVI($shade_uvi) } im Schatten.

## Zahlen
section-label-placed = Wo sie hängt
section-placed = { $count ->
    [one] { $point ->
        [yes] Die UV-Lampe hängt auf Höhe vom Deckel, { LENGTH($tube_across) } von der Rückwand, und scheint gerade nach unten.
       *[no] Die UV-Lampe hängt auf Höhe vom Deckel, längs, { LENGTH($tube_across) } von der Rückwand. Gezeichnet ist sie { LENGTH($long) } lang.
      }
   *[other] Die UV-Lampen hängen auf Höhe vom Deckel, längs, { LENGTH($tube_across) } von der Rückwand. Gezeichnet sind sie { LENGTH($long) } lang.
  } Liegt der Platz { LENGTH($top) } über dem Boden, ist der Rücken in deinem Abstand.
section-label-platform = Am Liegeplatz
section-in-range = Etwa { SHARE($in_range) } haben UV-Index { UVI($wanted, form: "range") }. Mit der Unsicherheit der Lampe: { SHARE($in_range, form: "range") }.
section-label-strongest = Stärkste Stelle
section-label-weakest = Schwächste Stelle
section-place = UV-Index { UVI($uvi, form: "doubt") }, { LENGTH($along) } von der warmen Seite, { LENGTH($across) } von der Rückwand, der Rücken { LENGTH($high) } über dem Boden
section-label-shade = Schatten
section-shaded = { SHARE($shade_share) } von Boden und Liegeplatz haben unter UV-Index { UVI($shade_uvi) }. Mit der Unsicherheit: { SHARE($shade_share, form: "range") }.
section-label-heat = Wärme und UV
section-no-lamp = Keine Wärmelampe: Es braucht keinen Sonnenplatz. Wärm höchstens die Luft.
# Only with: $overlap, $heat_in_range
section-heat = { $overlap ->
    [together] Sie liegen zusammen
    [partly] Sie liegen nur zum Teil zusammen
   *[apart] Sie liegen auseinander
  }: { SHARE($heat_in_range) } vom warmen Fleck haben UV-Index { UVI($wanted, form: "range") }. Mit der Unsicherheit: { SHARE($heat_in_range, form: "range") }.
section-label-end = Quer über den Platz
section-end = Von der Rückwand an, in Rückenhöhe: { section-across }.
section-across = UV-Index { LIST($end_view, join: "list-with") }
section-end-at = { UVI($uvi) } bei { LENGTH($at) }
section-label-taken = Angenommen
section-taken = { LIST($all_taken, join: "list-with") }
section-taken-back = ein Rücken { LENGTH($long) } über dem, worauf es liegt
section-taken-over = die UV-Lampe über der Mitte vom Liegeplatz
section-taken-start = eine UV-Lampe, die { LENGTH($long) } von der Wand der warmen Seite beginnt
section-taken-length = eine Röhre mit { LENGTH($long) }, wie es zum Terrarium passt
section-taken-platform = ein Liegeplatz von { LENGTH($long) } Länge auf der warmen Seite, über die halbe Tiefe
section-taken-heat = die Mitte der Wärmelampe { LENGTH($long) } von der Wand der warmen Seite
section-taken-patch = ein warmer Fleck von { LENGTH($long) } Breite
section-taken-across = die Mitte der UV-Lampe { LENGTH($long) } von der Rückwand
section-column-height = Über dem Boden
section-height = { LENGTH($at) }
section-long = { LENGTH($long) }
section-cell = { UVI($uvi) }

## Vorsicht
section-care-walls = Wände, Äste und Verstecke sind nicht in dieser Karte: Hinter ihnen ist es dunkler.

## Das Bild
section-picture-below = { $lamp }, { $through }
section-picture-tube = { section-picture-tubes }, { $lamp }
section-picture-tubes = { $count ->
    [one] UV-Lampe
   *[other] { $count } UV-Lampen
  }
section-picture-stand = { $stand ->
    [dock] trockener Platz
    [branch] Ast oder Brett
   *[platform] Liegeplatz
  }
section-picture-across = Von der warmen Seite, Schnitt in { LENGTH($middle) } Abstand
section-picture-note = Die Karten gelten für einen waagerechten Rücken; oben: unter der Mitte der Tiefe. Verstecke sind nicht darin.
section-picture-warm-is = UV-Index { UVI($wanted, form: "range") } zum Sonnen
section-picture-strongest = stärkste Stelle: UV-Index { UVI($uvi, form: "doubt") }
section-picture-weakest = schwächste Stelle: UV-Index { UVI($uvi, form: "doubt") }
section-shade-here-there = Schatten, unter UV-Index { UVI($shade_uvi) }
section-shade-here-probably = wohl Schatten, unter UV-Index { UVI($shade_uvi) }
section-shade-here-cannot_tell = vielleicht Schatten: ein Versteck dazu
section-shade-here-probably_none = wohl kein Schatten: ein Versteck dazu
section-shade-here-none = kein Schatten: ein Versteck dazu
section-alt = Karte vom UV-Index, von der Seite gesehen.
section-alt-end = Darunter der Blick vom Ende her. Von der Rückwand an, quer über den Liegeplatz: { section-across }.
section-alt-height = { LENGTH($at) } über dem Boden, von der warmen Seite an:
section-alt-uvi = { UVI($uvi) }

## Was nicht hineinpasst
section-no-title = Das passt nicht hinein
section-no-head = Das passt nicht in dieses Terrarium.
section-no-back = „{ $read }“ für back: Nur bis { LENGTH($most) } bleibt es darin.
section-no-platform = „{ $read }“ für platform: Möglich sind { LENGTH($least) } bis { LENGTH($most) } Länge.
section-no-heat = „{ $read }“ für heat: Nur bis { LENGTH($most) } bleibt es darin.
section-no-patch = „{ $read }“ für patch: Möglich sind { LENGTH($least) } bis { LENGTH($most) } Breite.
section-no-distance = „{ $read }“ für distance: Unter dem Deckel ist Platz für höchstens { LENGTH($most) }.
# Only with: $tube_long
section-no-start = „{ $read }“ für start: Eine UV-Lampe mit { LENGTH($tube_long) } lässt höchstens { LENGTH($most) }.
# Only with: $tube_long
section-no-length = Mit ihrem Anfang passt eine Röhre von { LENGTH($tube_long) } nicht in { LENGTH($most) }.
# Only with: $tube_long
section-no-box = „{ $read }“ für enclosure: Die kürzeste übliche T5-HO-Röhre ist { LENGTH($tube_long) } lang. Ist deine kürzer? Nenn mir ihre Länge.
section-no-across = „{ $read }“ für across: Die UV-Lampen müssen in der Tiefe von { LENGTH($most) } hängen.
section-do-again = Frag mit { $example }.
