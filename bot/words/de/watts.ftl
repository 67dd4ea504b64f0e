### Die erste Lampe: wie viel Watt

watts-title = Erste Watt für { TEMP($aimed) } auf der Fläche
watts-size = { WATTS($size) }

## Die Antwort in Kürze
watts-expect = { $several ->
    [yes] Etwa { WATTS($span, form: "range") } aus { LENGTH($distance) }.
   *[no] Etwa { WATTS($span) } aus { LENGTH($distance) }.
  }
watts-narrow = Ein Punktstrahler taugt nicht dafür.
watts-if-narrow = Sonst etwa { WATTS($span, form: "range") } aus { LENGTH($distance) }.
# Only with: $holder
watts-holder-short = Die Fassung mit { WATTS($holder) } ist zu schwach.
watts-assumed-shape = Angenommen: eine Flutlampe.
watts-do-buy = { $smaller ->
    [none] Kauf { WATTS($larger) } und einen Dimmer.
   *[some] Kauf { WATTS($smaller) } und { WATTS($larger) }.
  }
watts-do-start = { $smaller ->
    [none] Häng sie erst weit weg, dann entscheidet das Thermometer.
   *[some] Erst weit weg mit der kleineren, dann entscheidet das Thermometer.
  }
watts-do-flood = Flutlicht: frag mit lamp:flood.
watts-do-holder = Nimm eine Fassung ab { WATTS($larger) }.

## Keine Lampe dafür
watts-far-title = Zu weit weg für { TEMP($aimed) } auf der Fläche
watts-far = Keine Lampe bringt sicher { TEMP($aimed) } aus { LENGTH($distance) }.
watts-far-range = Es bräuchte { WATTS($found, form: "range") }. Mehr als { WATTS($strongest) } gibt es nicht.
watts-do-near = Bring Lampe und Fläche auf { LENGTH($near) }.
watts-step-near = Bau den Sonnenplatz höher, oder häng die Lampe tiefer, aber nie näher, als die Angabe auf ihr erlaubt, und nie in Reichweite des Tieres.
watts-step-ask-near = Frag watts noch einmal mit diesem Abstand, etwa { LENGTH($near) }.
watts-box-title = Zu heiß für so eine Lampe
watts-box-hot = Nein: { WATTS($larger) } heizen hier zu sehr.
watts-box-why = Die kühle Seite hätte etwa { TEMP($cool) }. Nichts darin bleibt kühl genug.
watts-do-box = Nimm ein längeres Terrarium oder mehr Gitter.
watts-step-box = Nimm ein längeres Terrarium, mehr Gitter oder einen kühleren Raum, oder eine schwächere Lampe näher an der Fläche. Dann frag noch einmal.
watts-room-title = Der Raum ist zu warm für eine Lampe
watts-room-warm = Nein: Eine Lampe kann nur wärmen, und der Raum ist warm.
watts-room-why = Für { TEMP($aimed) } muss der Raum { DIFF($least) } kühler sein. Deiner hat { $room }.
watts-do-room = Frag mit { $example }.
watts-step-room = Kühl zuerst den Raum, oder lass die Lampe weg.

## Warum
watts-why-wide = Lampen mit gleich viel Watt sind nicht gleich. Zwei Wärmelampen mit 175 W wärmten aus demselben Abstand Flächen, von denen eine doppelt so groß war. Lichtkegel, Reflektor, Stein und die Luft daneben können die Fläche um zig Grad verändern. Darum ist das ein Bereich zum Kaufen und keine Vorhersage.

## Schritte
watts-step-flood = Nimm besser eine Flutlampe und frag noch einmal mit lamp:flood. Wenn es ein Punktstrahler sein muss, geh so weiter.
# Only with: $holder
watts-step-holder = Auf deiner Fassung stehen { WATTS($holder) }, und mehr darf sie nicht tragen. Nimm zuerst eine, auf der { WATTS($larger) } oder mehr stehen, oder bring Lampe und Fläche näher zusammen und frag noch einmal.
watts-step-buy = { $smaller ->
    [none] Kauf eine mit { WATTS($larger) } und einen Dimmer dazu. Eine kleinere gibt es nicht, also fang mit ihr weit weg an.
   *[some] { $dims ->
        [larger] Kauf eine mit { WATTS($larger) } und eine mit { WATTS($smaller) }, oder die größere mit einem Dimmer, der zu ihr passt.
       *[none] Kauf eine mit { WATTS($larger) } und eine mit { WATTS($smaller) }.
      }
  }
watts-step-hang = Häng sie, oder die kleinere von beiden, weiter weg, als du denkst, und nie näher, als die Angabe auf ihr erlaubt. Lass sie zwei bis drei Stunden brennen.
watts-step-read = Miss die Fläche mit dem Infrarotthermometer und die Luft daneben mit einem Fühler. Dann frag basking mit beiden Werten: Diese Antwort ist viel besser als die hier.

## Zahlen
watts-label-sizes = Größen, die es dafür gibt
watts-sizes-told = { LIST($sizes) }
watts-label-shape = Lampe
watts-shape-told = Flutlampe. Du hast lamp: nicht genannt, also habe ich es angenommen. Sag lamp:flood, lamp:wide dome oder lamp:narrow.
watts-label-held = Kühle Seite dann
# Only with: $held
watts-held-told = etwa { TEMP($held) } mit { WATTS($larger) }, von { TEMP($held, form: "range") }
watts-label-found = Ausgerechnet
watts-found-told = { WATTS($found, form: "range") } in neun von zehn Fällen

## Vorsicht
watts-care-narrow = Ein Punktstrahler ist nichts für den Sonnenplatz: Sein heißer Fleck ist kleiner als das Tier. Nimm eine Flutlampe.
watts-care-narrow-short = Sein kleiner heißer Fleck verbrennt.
watts-care-label = Häng sie nie näher, als die Angabe auf ihr erlaubt, und nie in Reichweite des Tieres.
watts-care-label-short = Nie näher, als die Lampe erlaubt.

## Das Bild
watts-picture-aim = richtig sind { TEMP($aimed, form: "range") }
