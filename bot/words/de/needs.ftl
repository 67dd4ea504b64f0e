### Was ein Tier braucht

needs-title = Was { NAME($animal, form: "a") } braucht

## Die Antwort in Kürze
needs-head = { $uvi ->
    [none] { CAP($animal, form: "a") } braucht:
   *[some] { CAP($animal, form: "a") } braucht UV-Index { UVI($uvi, form: "range") }.
  }
needs-nothing = Ich weiß zu wenig darüber, was { NAME($animal, form: "a") } braucht.
# Only with: $warmth
needs-line-warmth = { $need ->
    [basking_surface] { needs-spot }: { needs-span }.
    [cool_air] Kühl: { needs-span }.
    [water] Wasser: { needs-span }.
    [night_floor] Nachts ungeheizt ab { needs-floor }.
   *[other] { needs-span }.
  }
# Only with: $warmth
needs-span = { TEMP($warmth, form: "range") }
# Only with: $warmth
needs-floor = { TEMP($warmth, form: "high") }
# Only with: $light
needs-line-light = Licht: { HOURS($light, form: "range") } am Tag.
needs-spot = { $basks ->
    [yes] Sonne
   *[no] Warm
  }
needs-do = Miss, was deins jetzt hat.
needs-do-ask = Frag in der Tierarztpraxis nach.

needs-no-spot = Einen Sonnenplatz braucht es nicht.

needs-no-heat = Keine Wärmelampe: Es braucht keinen Sonnenplatz.
needs-do-climbs = Miss an seinem höchsten Ast.
needs-step-life-water = { $has_air ->
    [yes] { $water_deep ->
        [none] Gib ihm Wasser zum Schwimmen, einen trockenen Platz, auf den es klettern kann, und jedem Kabel eine Tropfschlaufe. Wie tief das Wasser sein soll, weiß ich nicht.
       *[some] Gib ihm mindestens so tiefes Wasser wie hier gesagt, einen trockenen Platz, auf den es klettern kann, und jedem Kabel eine Tropfschlaufe.
      }
   *[no] Es lebt nur im Wasser: Halte es kühl und schattig, und gib jedem Kabel eine Tropfschlaufe.
  }
needs-step-life-climbs = Es klettert: Der höchste Ast unter der Lampe ist sein heißester und hellster Platz. Miss Wärme und UV dort, an seinem Rücken. Keine Lampe darf in seiner Reichweite sein.
needs-step-life-digs = Es gräbt: Gib ihm einen tiefen Boden, der einen Gang hält, und keine Heizung darunter. Im Gang kühlt es sich ab.
needs-step-life-night = Es ruht am Tag. UV und Licht erreichen es nur, wo es offen ruht. Gib ihm auch vollen Schatten und ein dunkles Versteck.
needs-step-life-giant = Es wird riesig. Plane den Raum für ein erwachsenes Tier, bevor du Lampen kaufst.
# Only with: $water_deep
needs-deep = Tiefe: { LENGTH($water_deep) } oder mehr.
# Only with: $water_deep
needs-deep-own = Tiefe: { LENGTH($water_deep, form: "range") }.
needs-deep-unknown = Tiefe: Dafür habe ich keine Zahl.
needs-label-water-deep = Wassertiefe
# Only with: $water_deep, $floor_citation
needs-water-deep = { LENGTH($water_deep) } oder mehr: { $floor_citation }
# Only with: $water_deep, $deep_known
needs-water-deep-own = { LENGTH($water_deep, form: "range") } ({ $deep_known })

## Schritte
needs-step-measure = Miss die Fläche, auf der es liegt, mit einem Infrarot-Thermometer, und die kühle Seite mit einem digitalen Fühler. Frag dann mit deinen eigenen Werten: temps { needs-readings }
needs-readings = { $basking ->
    [none] { needs-cool }
   *[some] basking:{ TEMP($basking, units: "first") } { needs-cool }
  }
needs-cool = { $cool ->
    [none] animal:{ $called }
   *[some] cool:{ TEMP($cool, units: "first") } animal:{ $called }
  }
needs-step-tube = Frag zum UV mit deinem eigenen Abstand und Gitter: tube distance:{ LENGTH($shelf, units: "first") } screen:none animal:{ $called }
needs-step-plan = Noch nichts gekauft? Frag mit deinem Terrarium und deinem Raum: plan animal:{ $called } enclosure:{ LENGTH($length, units: "first") } x { LENGTH($depth, units: "first") } x { LENGTH($height, units: "first") } lid:full mesh room:{ TEMP($room, units: "first") } night:{ TEMP($night, units: "first") }
needs-step-again = Miss nach jeder Änderung neu. Das sind Bereiche: Deine Messgeräte und dein Tier entscheiden.

## Zahlen
needs-label-uvi = { $basks ->
    [yes] UV-Index, wo es sich sonnt
   *[no] UV-Index am hellsten Platz
  }
needs-label-basking_surface = { $basks ->
    [yes] Fläche am Sonnenplatz
   *[no] Wärmste Fläche
  }
needs-label-warm_air = Luft, warme Seite
needs-label-cool_air = Luft, kühle Seite
needs-label-night_floor = Nachts heizen nur unter
needs-label-night_heat_off = Nachtwärme aus bei
needs-label-light_hours = Stunden mit Licht
needs-unknown = hier nicht bekannt: Frag jemanden mit Erfahrung oder eine reptilienkundige Tierarztpraxis
# Only with: $uvi
needs-aim-uvi = { $has_best ->
    [yes] { UVI($uvi, form: "range") }, am besten etwa { UVI($uvi, form: "given") }
   *[no] { UVI($uvi, form: "range") }
  }
# Only with: $warmth
needs-aim-warmth = { $has_best ->
    [yes] { TEMP($warmth, form: "range") }, am besten etwa { TEMP($warmth) }
   *[no] { TEMP($warmth, form: "range") }
  }
# Only with: $light
needs-aim-light = { HOURS($light, form: "range") } am Tag
# Only with: $uvi, $known
needs-known-uvi = { needs-aim-uvi } ({ $known })
# Only with: $warmth, $known
needs-known-warmth = { needs-aim-warmth } ({ $known })
# Only with: $light, $known
needs-known-light = { needs-aim-light } ({ $known })
needs-label-zone = UV-Zone
# Only with: $zone_is
needs-zone = { $zone_is }
needs-zone-1 = 1 von 4: bleibt in Deckung, im Schatten oder im Zwielicht, und wärmt sich an seiner Umgebung
needs-zone-2 = 2 von 4: kommt für kurze Zeit in die Sonne heraus
needs-zone-3 = 3 von 4: verbringt viel vom Tag in Sonne und Halbschatten
needs-zone-4 = 4 von 4: sucht die stärkste Sonne des Tages
needs-step-water = Miss das Wasser mit einem digitalen Fühler, nicht direkt an Heizer oder Pumpe.
needs-label-water = Wasser
needs-label-awake = Wach
needs-awake-diurnal = am Tag
needs-awake-nocturnal = in der Nacht
needs-awake-crepuscular = in der Dämmerung
needs-awake-cathemeral = am Tag und in der Nacht
needs-label-adult = Ausgewachsen
# Only with: $adult, $group
needs-adult = { $group ->
    [tortoise] Panzer { needs-length }
    [turtle] Panzer { needs-length }
   *[other] { needs-length } lang
  } (aus dem Gedächtnis, ungeprüft)
# Only with: $adult
needs-length = { LENGTH($adult, form: "range") }
needs-label-floor = Kleinste Bodenfläche
# Only with: $floor_long, $floor_deep, $floor_citation
needs-floor-told = { LENGTH($floor_long) } mal { LENGTH($floor_deep) } oder ebenso viel: { $floor_citation }
needs-no-lamp = { CAP($animal, form: "a") } braucht keine Lampe, keinen Heizer und kein UV.
needs-unchecked = Aus dem Gedächtnis, ungeprüft.
# Only with: $too_hot
needs-too-hot = { $has_air ->
    [yes] Hat selbst sein kühlster Platz { TEMP($too_hot) }, kann es sich nicht abkühlen: Schalte sofort alle Wärme aus.
   *[no] Wasser von { TEMP($too_hot) } tötet es.
  }

## Nach einem wurde gefragt
# Only with: $uvi
needs-uv-yes = Ja. { needs-head }
# Only with: $uvi
needs-uv-maybe = Vielleicht ein wenig: bis UV-Index { UVI($uvi, form: "high") }. Ganz ohne kann auch gehen.
needs-uv-no = Nein. { CAP($animal, form: "a") } braucht kein UV.
needs-uv-unknown = Ich weiß nicht, wie viel UV { NAME($animal, form: "a") } braucht.
needs-about-unknown = Das weiß ich von { NAME($animal, form: "dat") } nicht.
needs-about-uvi = { needs-head }
# Only with: $warmth
needs-about-basking = { $may_bask ->
    [yes] Sonnenplatz bei { NAME($animal, form: "dat") }: { TEMP($warmth, form: "range") }.
   *[no] Wärmste Stelle bei { NAME($animal, form: "dat") }: { TEMP($warmth, form: "range") }.
  }
# Only with: $warmth
needs-about-cool = Kühle Seite bei { NAME($animal, form: "dat") }: { TEMP($warmth, form: "range") }.
# Only with: $warmth
needs-about-night = { $warmth_is_range ->
    [yes] Nachts braucht es über { TEMP($warmth, form: "high") } keine Wärme. Unter { TEMP($warmth, form: "low") } schon.
   *[no] Nachts braucht es bis { TEMP($warmth, form: "high") } keine Wärme. Darunter schon.
  }
# Only with: $warmth
needs-about-water = { CAP($animal, form: "a") } braucht Wasser mit { TEMP($warmth, form: "range") }.
# Only with: $light
needs-about-hours = { CAP($animal, form: "a") } braucht { HOURS($light, form: "range") } Licht am Tag.
# Only with: $heard
needs-heard-right = Gut: { TEMP($heard) } ist richtig { needs-where }.
# Only with: $heard
needs-heard-borderline = Vielleicht: { TEMP($heard) } ist grenzwertig { needs-where }.
# Only with: $heard
needs-heard-between = Für keine der beiden Seiten. { TEMP($heard) } passt nur dazwischen.
# Only with: $heard
needs-heard-too_hot = Zu heiß: { TEMP($heard) } { needs-where }.
# Only with: $heard
needs-heard-too_cool = Zu kühl: { TEMP($heard) } { needs-where }.
needs-where = { $about ->
    [cool] an der kühlen Seite
    [night] in der Nacht
    [water] für das Wasser
   *[other] { $may_bask ->
        [yes] am Sonnenplatz
       *[no] an der wärmsten Stelle
      }
  }
