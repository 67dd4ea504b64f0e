### Wie die Lampen hängen sollen.

arrange-title = Wie die Lampen hängen sollen

## Die Antwort in Kürze
arrange-head-side_by_side = Nebeneinander, über der warmen Seite.
arrange-head-in_a_row = In Reihe: erst Wärme, dann die Röhre.
arrange-head-whole_length = Eine längere Röhre über alles.
arrange-head-across = Die Röhre quer, über die warme Seite.
arrange-head-inside = Nebeneinander, die Röhre innen.
arrange-head-above_mesh = Nebeneinander, Röhre auf dem Gitter.
arrange-head-two_heat_lamps = Nebeneinander, mit zwei Wärmelampen.
# Only with: $heat
arrange-meets = { SHARE($heat) } des warmen Flecks haben UV.
arrange-place = { SHARE($place) } des Platzes haben UV.
# Only with: $heat
arrange-row = In Reihe wären es { SHARE($heat) }.
arrange-assumed = { $whose ->
    [class] Für { $count ->
        [one] T5 HO { SHARE($strength, form: "given") }, { $fixture }
       *[other] { $count } × T5 HO, { SHARE($strength, form: "given") }
      }.
   *[other] Für deine Röhre, nach ihren Messwerten.
  }
arrange-do-side_by_side = Wärmelampe neben die Röhrenmitte.
arrange-do-in_a_row = Platz dahin, wo beide hinreichen.
arrange-do-whole_length = Schatten dann durch Pflanzen, Höhlen.
arrange-do-across = Häng sie von hinten nach vorn.
arrange-do-inside = Röhre innen: Schutzkorb, unerreichbar.
arrange-do-above_mesh = Leg die Röhre aufs Gitter.
arrange-do-two_heat_lamps = Zwei schwache Strahler an die Röhre.
arrange-do-hide = Stell ein Versteck hinein: kein Schatten.

## Schritte
arrange-step-side_by_side = Häng die Röhre längs, von der warmen Wand an. Häng die Wärmelampe gleich neben ihre Mitte, über den Sonnenplatz, etwa { LENGTH($apart) } entfernt: Eine heiße Röhre gibt weniger.
arrange-step-in_a_row = Häng die Wärmelampe an die warme Wand und die Röhre dahinter. Stell den Sonnenplatz dahin, wo beide hinreichen.
arrange-step-whole_length = Häng eine längere Röhre über die ganze Länge. Schatten gibt es dann nur durch Verstecke, Kork und Pflanzen, also gib viel davon.
arrange-step-across = Häng die Röhre von hinten nach vorn über den Sonnenplatz und die Wärmelampe gleich daneben, etwa { LENGTH($apart) } entfernt, zur kühlen Seite hin.
arrange-step-inside = Häng die Röhre innen auf, hinter einem Schutzkorb und außer Reichweite, die Wärmelampe daneben über den Sonnenplatz. Der Abstand ist ein anderer als auf dem Gitter: plan sagt ihn.
arrange-step-above_mesh = Leg die Röhre auf das Gitter, die Wärmelampe daneben über den Sonnenplatz. Der Abstand ist ein anderer als innen: plan sagt ihn.
arrange-step-two_heat_lamps = Häng zwei Strahler mit etwa der halben Leistung neben die Röhre, über den Sonnenplatz, damit der warme Fleck so lang ist wie das Tier.
arrange-step-bar = Eine weiße LED-Leiste hängt über der hellen Hälfte auf der anderen Seite der Röhre. Sie gibt kein UV.
arrange-step-measure = Dann miss: die Fläche an fünf Stellen, die kühle Seite nach zwei Stunden und, wenn du ein Messgerät leihen kannst, den UV-Index am höchsten Platz.

## Zahlen
arrange-label-tube = Röhre
arrange-tube = { $lamp }, { LENGTH($long) } lang, über einem Platz in { LENGTH($top) } Höhe
arrange-label-assumed = Angenommen
arrange-all-assumed = was plan für dieses Terrarium annimmt; frag plan, dann siehst du es
arrange-short-side_by_side = nebeneinander
arrange-short-in_a_row = in Reihe
arrange-short-whole_length = Röhre über alles
arrange-short-across = Röhre quer
arrange-short-inside = Röhre innen
arrange-short-above_mesh = Röhre auf dem Gitter
arrange-short-two_heat_lamps = zwei Wärmelampen
arrange-compared = { $name }: { $safe ->
    [no] zu stark
   *[yes] { $heat ->
        [none] { SHARE($place) } des Platzes
       *[some] { SHARE($heat) } des warmen Flecks
      } im UV, { $shade ->
        [there] mit Schatten
        [probably] wohl mit Schatten
        [cannot_tell] Schatten unklar
       *[other] kaum Schatten
      }
  }{ $best ->
    [yes] {" "}(mein Rat)
   *[no] {""}
  }
arrange-label-ways = Verglichen
arrange-column-way = Anordnung
arrange-column-heat = Warmes im UV
arrange-column-sun = Alle drei
arrange-column-light = Hell bis dunkel
arrange-column-cool = Warmer Fleck bis kühle Wand
arrange-column-shade = Schatten
arrange-column-apart = Was sich nahe kommt
arrange-way-side_by_side = { $best ->
    [yes] Nebeneinander (mein Rat)
   *[no] Nebeneinander
  }
arrange-way-in_a_row = { $best ->
    [yes] In Reihe (mein Rat)
   *[no] In Reihe
  }
arrange-way-whole_length = { $best ->
    [yes] Röhre über alles (mein Rat)
   *[no] Röhre über alles
  }
arrange-way-across = { $best ->
    [yes] Röhre quer (mein Rat)
   *[no] Röhre quer
  }
arrange-way-inside = { $best ->
    [yes] Röhre innen (mein Rat)
   *[no] Röhre innen
  }
arrange-way-above_mesh = { $best ->
    [yes] Röhre auf dem Gitter (mein Rat)
   *[no] Röhre auf dem Gitter
  }
arrange-way-two_heat_lamps = { $best ->
    [yes] Zwei Wärmelampen (mein Rat)
   *[no] Zwei Wärmelampen
  }
arrange-cell-sun = { $sun ->
    [none] keine Wärmelampe
   *[some] { $safe ->
        [no] zu stark
       *[yes] { SHARE($sun) } des Platzes
      }
  }
arrange-cell-heat = { $heat ->
    [none] keine Wärmelampe
   *[some] { SHARE($heat) }
  }
arrange-cell-shade = { $shade ->
    [there] ja
    [probably] wahrscheinlich
    [cannot_tell] unklar
    [probably_none] kaum
   *[none] keiner
  }
arrange-cell-light = UV-Index { UVI($strongest, form: "doubt") } bis { UVI($weakest, form: "doubt") }
arrange-cell-cool = { $cool ->
    [none] keine Wärmelampe
   *[some] { LENGTH($cool) }
  }
arrange-cell-apart = { $kept ->
    [tube_to_back] Röhre zu nah am Rücken
    [lamp_to_platform] Wärmelampe zu nah am Platz
    [tube_to_lamp] Röhre und Wärmelampe zu nah beieinander
   *[all] Grenzen eingehalten
  }: Röhre zum Rücken { LENGTH($to_back) }, Röhre { $at ->
    [on] auf dem Deckel
    [over] { LENGTH($to_lid) } über dem Deckel
   *[under] { LENGTH($to_lid) } unter dem Deckel
  }{ $beside ->
    [none] {""}
   *[some] , { $beside }
  }
arrange-lamp-apart = Wärmelampe zur Röhre { LENGTH($to_tube) }, zum Rücken { LENGTH($to_back) }, Wärmelampe { $at ->
    [on] auf dem Deckel
    [over] { LENGTH($to_lid) } über dem Deckel
   *[under] { LENGTH($to_lid) } unter dem Deckel
  }

## Warum
arrange-why-side_by_side = So kommen UV und Wärme von einem Ort, wie von der Sonne, und die andere Seite bleibt dunkel.
arrange-why-in_a_row = In diesem Terrarium passt die Röhre nicht besser neben die Lampe.
arrange-why-whole_length = In diesem Terrarium beleuchtet eine kurze Röhre zu wenig vom Platz. Die lange lässt weniger Schatten.
arrange-why-across = Längs lässt die Röhre hier kaum Schatten oder beleuchtet weniger vom Platz. Von hinten nach vorn bekommt der Platz sein UV, und die kühle Seite bleibt dunkler.
arrange-why-inside = Innen nimmt kein Gitter UV weg, und der Platz bekommt es gleichmäßiger. Dafür braucht es einen Schutzkorb.
arrange-why-above_mesh = Auf dem Gitter kann niemand die Röhre berühren, und der Platz bekommt trotzdem sein UV.
arrange-why-two_heat_lamps = Der warme Fleck wird so breit wie das Tier und liegt noch im UV.
arrange-why-picked = Was wohl zu stark ist, lasse ich weg. Dann zählt Schatten, dann wie viel vom warmen Fleck und vom Platz UV bekommt. Ist etwas etwa gleich, nehme ich das Einfachste. Ist nur der Schatten unklar, macht ihn ein Versteck: Dafür wähle ich nichts, was weit weniger nützt, und drehe keine Röhre.
# Only with: $heat
arrange-why-one_lamp = Fang mit einer Wärmelampe an. Zwei schwächere wärmen einen breiteren Fleck, { SHARE($heat) } davon im UV: ein Schritt für später, wenn alles stimmt; next nennt ihn bei langen Tieren.
arrange-why-light = Das Licht eines weißen Strahlers geht dahin, wo seine Wärme hingeht. Wo Wärme und UV sich treffen, ist es also auch hell.
arrange-why-gradient = Von warm nach kühl sage ich den Weg, nicht die Grade: Miss an beiden Enden. Von der Wärmelampe zum Deckel kenne ich keinen sicheren Abstand: Halte dich an das, was auf Lampe und Fassung steht.

## Vorsicht
arrange-care-heat = Lass etwa { LENGTH($apart) } zwischen Wärmelampe und Röhre, und einen Schutzkorb zwischen jeder Lampe und dem Tier.
arrange-care-heat-short = Mit Schutzkorb, mit Abstand zur Röhre.

## Das Bild
arrange-long = { LENGTH($seen) }
arrange-picture-note = Verstecke sind nicht im Bild.
arrange-picture-shade = { $shade ->
    [there] mit Schatten
    [probably] wohl mit Schatten
    [cannot_tell] Schatten unklar: mit Versteck
   *[other] kaum Schatten: mit Versteck
  }
