### Die Nacht

night-title = Die Nacht { NAME($animal, form: "your-gen") }

## Die Antwort in Kürze
night-head-nothing = Nein: { TEMP($room) } sind gut.
night-head-heat = Ja: { TEMP($room) } sind zu kalt.
night-head-keepers_differ = Grenzfall: { TEMP($room) }.
night-head-too_warm = Nein: { TEMP($room) } sind zu warm.
night-head-floor_unknown = Ich weiß nicht, wie kühl die Nacht werden darf.
# Only with: $floor
night-range = { $floor_is_range ->
    [yes] Unter { TEMP($floor, form: "low") }: heizen. Über { TEMP($floor, form: "high") }: nicht.
   *[no] Heizen unter { TEMP($floor) }.
  }
night-do-one = { $one ->
    [none] Nimm einen Strahler ohne Licht.
   *[some] Nimm { WATTS($one) } Wärme ohne Licht.
  }
night-do-two = Verteil die Wärme auf zwei Strahler.
night-do-open = Heiz den Raum: Gitter hält keine Wärme.
night-do-cover = Nachts Rückwand und zwei Seiten zudecken.
night-do-too_many = Heiz den Raum. Ein Strahler reicht nicht.
# Only with: $off
night-do-thermostat = Thermostat: aus bei { TEMP($off) }.
night-do-nothing = Schalte nachts alles aus.
night-do-cool = Kühl den Raum: Schatten, nachts lüften.
night-do-ask = Frag in der Tierarztpraxis nach.

## Warum
night-why-nothing = { CAP($animal, form: "your") } verträgt einen Raum, der auf { TEMP($room) } abkühlt. { night-good-drop }
night-why-heat = { TEMP($room) } sind kälter, als es { NAME($animal, form: "your-dat") } guttut.
night-why-keepers_differ = Über { TEMP($room) } sind sich die Halter nicht einig. Ein gesundes erwachsenes Tier verträgt das meist. Ein junges oder krankes braucht es wärmer.
night-why-too_warm = { TEMP($room) } in der Nacht sind wärmer, als die kühle Seite am Tag sein soll. Lass die Nacht kühler werden. { night-good-drop }
night-why-floor_unknown = Wie kühl die Nacht { NAME($animal, form: "your-gen") } werden darf, ist mir nicht bekannt. Über { TEMP($room) } kann ich darum nichts sagen. Eine reptilienkundige Tierarztpraxis oder jemand mit viel Erfahrung kann es wissen. Gut ist eine dunkle Nacht, die kühler ist als der Tag. Wärme muss ohne Licht kommen und über ein Thermostat laufen.
night-good-drop = Eine kühlere, dunkle Nacht tut gut: Sie bringt Ruhe.

## Schritte
night-step-cool = Kühl den Raum noch heute: Beschatte das Fenster, lüfte in der Nacht oder stell das Terrarium in einen kühleren Raum.
night-step-heater = Nimm einen Keramikstrahler oder ein Wärmepaneel. Beide wärmen ohne Licht. Setz einen Schutzkorb davor, außer Reichweite des Tieres.
night-step-cover = Deck nachts die Rückwand und zwei Seiten mit etwas ab, das nicht brennt, und lass die Front für die Luft offen. Ein Heizer am Gitter wärmt nur, was nah bei ihm ist.
night-step-ask-watts = Frag noch einmal und nenn mir enclosure:, material: und lid:, dann sage ich dir die Watt.
night-step-thermostat = Schließ den Strahler an ein Ein/Aus-Thermostat an{ $off ->
    [none] .
   *[some] , das bei etwa { TEMP($off) } abschaltet.
  } Häng den Fühler auf Höhe des Tieres in die Luft, nicht direkt unter den Strahler.
night-step-morning = Lies am nächsten Morgen den kältesten Wert ab, und nach jeder Änderung wieder.
night-step-measure = Leg für eine Nacht ein Thermometer neben das Terrarium, das sich den kältesten Wert merkt. Am kältesten ist es kurz vor Sonnenaufgang, und die meisten schätzen das falsch.

## Zahlen
night-label-floor = Wärme nötig unter
# Only with: $floor, $floor_known
night-floor = { TEMP($floor, form: "range") } ({ $floor_known })
night-label-off = Thermostat aus bei
# Only with: $off
night-off = { TEMP($off) } ({ $off_is_practice ->
    [yes] übliche Praxis, ohne Quelle
   *[no] eigene Regel: etwas wärmer als die Grenze
  })
night-label-heater = Strahler
night-heater = { $place ->
    [above_mesh] Über dem Gitter, wo ein Drittel der Wärme oder mehr verloren geht, braucht er
   *[inside] Innen braucht er
  } etwa { WATTS($need) } ({ WATTS($need, form: "range") }) in der kältesten Stunde. { $one ->
    [none] { $fit ->
        [too_many] Das ist mehr, als ein Strahler gibt, und viele Strahler an einem Terrarium sind eine Brandgefahr. Heiz zuerst den Raum, oder schließ mehr vom Deckel mit etwas, das nicht brennt.
       *[two] Das ist mehr, als ein Strahler gibt. Verteil es auf zwei, oder schließ mehr vom Deckel.
      }
   *[some] Kauf einen mit { WATTS($one) }. Was zu viel ist, nimmt das Thermostat weg.
  }
night-heater-open = Gitter an allen Seiten lässt die Luft durch, darum hat der Käfig die Luft des Raums. Sie zu halten bräuchte { WATTS($need, form: "range") }: Heiz den Raum.

## Vorsicht
night-care-colours = Keine roten, blauen oder violetten Lampen in der Nacht: Tiere sehen ihr Licht. Die Nacht soll dunkel sein.
night-care-colours-short = Nachts kein rotes oder blaues Licht.
night-care-too-warm = Wenn dein Tier das Maul aufsperrt oder schlaff daliegt, ist ihm zu heiß. Ruf sofort eine reptilienkundige Tierarztpraxis an.
night-care-too-warm-short = Maul offen oder schlaff? Tierarzt rufen!

## Was schwimmt
night-head-water = Es zählt sein Wasser, nicht die Luft.
# Only with: $cold_water
night-head-water_too_cold = { TEMP($room) } ist zu kalt für sein Wasser.
# Only with: $water
night-water = Wasser: { TEMP($water, form: "range") }, Tag und Nacht.
night-do-read-water = Miss das Wasser, bevor das Licht angeht.
night-do-warm-water = Heize das Wasser, mit Thermostat.
night-why-water = Ungeheizt fällt das Wasser bis zum Morgen auf { TEMP($room) }, wie das Zimmer. Für die Luft in der Nacht kenne ich keine Zahl.
# Only with: $cold_water
night-why-water_too_cold = Ungeheiztes Wasser wird bis zum Morgen so kalt wie das Zimmer. Unter { TEMP($cold_water) } ist es zu kalt für ein Tier, das wach ist.
night-step-water = Lass eine Nacht lang einen Fühler im Wasser, und lies den kältesten Wert ab. Ein Wasserheizer braucht einen Schutz, ein eigenes Thermostat und eine Tropfschlaufe im Kabel.
night-care-water = Wasser und Strom können dich töten: Zieh jeden Stecker, bevor du hineingreifst. Lass einen FI-Schutzschalter einbauen, führ jedes Kabel in einer Tropfschlaufe, und halt dich an die Elektrovorschriften bei dir.
night-care-water-short = Vor dem Hineingreifen: Stecker ziehen.

## Das Bild
night-picture-read = { TEMP($room) } im Raum
night-picture-unknown = wie kühl es werden darf, ist nicht bekannt
