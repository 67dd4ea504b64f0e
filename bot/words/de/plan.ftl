### Ein ganzes Terrarium einrichten

plan-title = Ein erster Aufbau für { NAME($animal, form: "acc") }
plan-place = { $stand ->
    [dock] Landteil
    [branch] Liegeplatz
   *[platform] Sonnenplatz
  }

## Die Antwort in Kürze
plan-yes = Ja: Röhre–Rücken { LENGTH($away) }.
plan-range = Gut: { LENGTH($away, form: "range") }.
# Only with: $floor_long, $floor_deep, $code
plan-small = Zu klein ({ $code }). Erwachsen: { LENGTH($floor_long, units: "first") } mal { LENGTH($floor_deep, units: "first") } ({ LENGTH($floor_long, units: "second") } mal { LENGTH($floor_deep, units: "second") }).
plan-for-now = Vorerst Röhre–Rücken { LENGTH($away) }.
# Only with: $room_taken, $mesh_blocks
plan-assumed-short = Annahme: Gitter { SHARE($mesh_blocks) }, { TEMP($room_taken) }.
# Only with: $mesh_blocks
plan-assumed-short-mesh = Angenommen: Gitter hält { SHARE($mesh_blocks) } ab.
# Only with: $room_taken
plan-assumed-short-room = Angenommen: Raum mit { TEMP($room_taken) }.
plan-do-tube = { $place ->
    [inside] Innen
   *[above_mesh] Aufs Gitter
  }{ $way ->
    [across] , quer
    [whole_length] , ganz durch
   *[other] {""}
  }: { $lamp_short }, { LENGTH($long) }.
# Only with: $sizes
plan-do-heat-one_size = Wärme daneben: { WATTS($sizes) }.
# Only with: $sizes
plan-do-heat-two_sizes = Wärme daneben: { WATTS($sizes, form: "low") } oder { WATTS($sizes, form: "high") }.
# Only with: $sizes
plan-do-heat-yours = Daneben: deine Lampe mit { WATTS($sizes) }.
plan-do-heat-gentle = { $open ->
    [yes] Zu kühl? Heiz den Raum.
   *[no] Zu kühl? Heizer mit Thermostat.
  }
plan-do-heat-room = Noch keine Wärmelampe: erst messen.
plan-do-night = { $open ->
    [yes] Nachts den Raum heizen, ohne Licht.
   *[no] Nachts dunkle Wärme am Thermostat.
  }
plan-do-empty = Erst leer laufen lassen und messen.

## Warum
plan-tried-platform_too_high = Nicht auf dem Gitter: Der { plan-place } müsste höher sein, als ich ihn bauen würde.
plan-tried-too_low = Nicht auf dem Gitter: Der Rücken käme jeder üblichen Röhre zu nah.
plan-tried-no_room_for_heat = Nicht auf dem Gitter: Für die Wärmelampe ist kein Platz.
plan-tried-too_close = Nicht auf dem Gitter: Jede übliche Röhre müsste zu nah hängen.
plan-tried-too_weak = Nicht auf dem Gitter: Jede übliche Röhre ist hindurch zu schwach.
plan-tried-too_strong = Nicht auf dem Gitter: Jede übliche Röhre ist dort zu stark.
plan-tried-length_untold = Nicht auf dem Gitter: Der Abstand hängt von der Länge der Röhre ab.
plan-tried-solid_lid = Nicht auf dem Deckel: Durch einen geschlossenen kommt kein UV.
plan-tried-tube_too_long = Nicht auf dem Gitter: Deine Röhre ist dafür zu lang.
plan-tried-no_tube_short_enough = Nicht auf dem Gitter: Keine übliche Röhre ist kurz genug.
plan-tried-too_short = Nicht auf dem Gitter: Das Terrarium ist zu kurz.
plan-tried-air_too_warm = Nicht auf dem Gitter: Es würde überall zu warm.
plan-tried-room_too_warm = Nicht auf dem Gitter: Der Raum ist zu warm.
plan-why-strength = Deine Röhre hat eine andere Stärke? Frag noch einmal mit ihr, etwa tube:10%. Eine schwächere ist bei diesem Abstand sicher, gibt aber vielleicht zu wenig; eine stärkere ist es nicht.
plan-why-ranges = Röhren einer Art unterscheiden sich um etwa ein Drittel. Ein UV-Messgerät klärt das.
# Only with: $heat_span
plan-why-lamps = Wärmelampen mit gleich viel Watt können doppelt so verschieden sein. Diese braucht vielleicht { WATTS($heat_span, form: "range") }{ $larger_too ->
    [yes] , also kauf zwei Größen
   *[no] {""}
  }.

## Schritte
plan-step-before = Bevor das Tier einzieht: Bau alles auf und lass Röhre und Lampe zwei bis drei Stunden an.
plan-step-hang = { $place ->
    [inside] Häng die Röhre innen auf, { plan-lies }, { LENGTH($under_lid) } unter dem Deckel: { $lamp }, { LENGTH($long) } lang.
   *[above_mesh] Leg die Röhre auf das Gitter, { plan-lies }: { $lamp }, { LENGTH($long) } lang.
  } Bau den { plan-place } so, dass seine Oberseite { LENGTH($top) } über dem Boden ist.
plan-lies = { $way ->
    [across] von hinten nach vorn
    [whole_length] über die ganze Länge
   *[other] der Länge nach
  }
plan-step-tape = Am ersten Tag: Miss von der Unterseite der Röhre bis { LENGTH($back) } über dem { plan-place }, wo der Rücken sein wird. Das sollen { LENGTH($away) } sein. Wenn nicht, bau die Stelle höher oder tiefer.
plan-step-meter = Am ersten Tag: Halt ein UV-Messgerät in Rückenhöhe zur Röhre hin. Es soll einen UV-Index von { UVI($wanted, form: "range") } zeigen. Kein Messgerät? { $new_tube ->
    [yes] Eine neue Röhre ist in den ersten 100 Stunden stärker, also geh
   *[no] Geh
  } etwas weiter weg, bis { LENGTH($away, form: "high") }.
# Only with: $surface
plan-step-surface = Am ersten Tag: Miss den { plan-place } mit dem Infrarotthermometer. Es soll { TEMP($surface, form: "range") } zeigen. { $lit_by_lamp ->
    [yes] Zu heiß: Dimm die Lampe oder häng sie höher. Zu kühl: Nimm { $larger_too ->
        [yes] die größere
       *[no] die nächste Größe
      }.
   *[no] Zu kühl: Nimm die kleinste Lampe, weit weg.
  }
plan-step-cool = Am ersten Tag: Halt einen Fühler auf Höhe des Tieres in den Schatten der kühlen Seite. { $in_shade ->
    [none] Frag jemanden mit Erfahrung, was er zeigen soll.
   *[some] Er soll { TEMP($in_shade, form: "range") } zeigen.
  }
plan-step-write = In der ersten Woche: Schreib jeden Tag auf, was Sonnenplatz und kühle Seite haben, wie kalt die Nacht wird und wo das Tier sitzt.
plan-step-again = In der ersten Woche: Ändere immer nur eines, miss zwei Stunden später wieder und frag dann temps.

## Zahlen
plan-label-floor = Boden für ein erwachsenes Tier
# Only with: $floor_long, $floor_deep
plan-floor = { LENGTH($floor_long) } mal { LENGTH($floor_deep) } oder mehr
plan-label-away = Röhre bis Rücken
plan-away = { LENGTH($away) }, gut von { LENGTH($away, form: "range") }; dazwischen: { $through }{ $held_by ->
    [by_floor] . Tiefer geht es nicht, darum ist das näher, als ich anfangen würde.
    [by_reach] . Höher würde ich nicht bauen, darum ist das eher schwach.
   *[nothing] .
  }
plan-label-uvi = UV-Index dort
plan-uvi = { UVI($uvi, form: "doubt") }
plan-stand-platform = Sonnenplatz
plan-stand-branch = Ast oder Brett
plan-stand-dock = Landteil
plan-top = Die Oberseite ist { LENGTH($top) } über dem Boden. Von { LENGTH($top, form: "range") } bleibt das UV richtig. Mach ihn etwa { LENGTH($stand_long) } lang und { LENGTH($stand_deep) } tief, nicht kürzer als das Tier.{ $in_water ->
    [yes] {" "}Halt das Wasser darunter. Wie warm es sein soll, weiß ich nicht.
   *[no] {""}
  }
plan-label-along = Der Länge nach
plan-along = { $way ->
    [across] Die Röhre liegt von hinten nach vorn, knapp auf der warmen Seite der Platzmitte. Der { plan-place } hat seine Mitte { LENGTH($along) } von der Wand der warmen Seite.
    [whole_length] Die Röhre liegt über die ganze Länge. Der { plan-place } hat seine Mitte { LENGTH($along) } von der Wand der warmen Seite.
   *[other] Die Röhre beginnt an der Wand der warmen Seite. Der { plan-place } kommt unter ihre Mitte, { LENGTH($along) } von dieser Wand.
  }{ $patch ->
    [none] {""}
   *[some] {" "}{ $way ->
        [across] Die Wärmelampe hängt neben der Röhre, zur kühlen Seite hin.
       *[other] Die Wärmelampe hängt auch dort, vor der Röhre.
      } Etwa { SHARE($patch) } vom warmen Fleck haben das UV.
  }
plan-label-heat = Wärmelampe
# Only with: $lamp_away, $span
plan-heat-one_size = { plan-heat-where } Es können { WATTS($span, form: "range") } nötig sein, so verschieden sind Lampen.
# Only with: $lamp_away, $span
plan-heat-two_sizes = { plan-heat-where } Es können { WATTS($span, form: "range") } nötig sein, so verschieden sind Lampen. Kauf also zwei Größen.
# Only with: $lamp_away, $sizes
plan-heat-yours = Deine, { WATTS($sizes) }. { plan-heat-where }
plan-heat-gentle = { $open ->
    [yes] Keine. Ist es zu kühl, heiz den Raum: Gitter hält keine Wärme.
   *[no] Keine. Wenn die warme Seite zu kühl ist: { $extra ->
        [none] ein sanfter Heizer
       *[some] ein Heizer mit { WATTS($extra) }
      } ohne Licht, am Thermostat.
  }
plan-heat-room = Zuerst keine: Der Raum ist fast warm genug. Miss erst.
# Only with: $lamp_away
plan-heat-where = { $place ->
    [above_mesh] Auf dem Gitter
   *[inside] Innen, mit Schutzkorb
  }, die Vorderseite { LENGTH($lamp_away) } über dem { plan-place }.
plan-aim-label-basking_surface = Fläche am Sonnenplatz
plan-aim-label-warm_air = Luft, warme Seite
plan-aim-label-cool_air = Luft, kühle Seite
plan-aim-label-uvi = UV-Index
plan-aim-label-zone = UV-Zone
plan-aim-label-night_floor = Nacht
plan-aim-label-night_heat_off = Wärme aus
plan-aim-label-light_hours = Stunden Licht
plan-aim-label-home_latitude = Herkunft
plan-aim = { $range ->
    [none] mir nicht bekannt
   *[some] { TEMP($range, form: "range") }{ $known ->
        [none] {""}
       *[some] {" "}({ $known })
      }
  }
plan-label-air = Luft am Tag
# Only with: $held
plan-air = Etwa { TEMP($held) } auf der kühlen Seite, wenn die Lampe an ist ({ TEMP($held, form: "range") }). { $air ->
    [fine] Das passt für die kühle Seite.
    [cool] { $open ->
        [yes] Das ist dort zu kühl, und Gitter hält keine Wärme: Heiz den Raum.
       *[no] Das ist dort zu kühl, also plan einen zweiten Heizer ein.
      }
    [maybe_cool] { $open ->
        [yes] Das kann zu kühl sein: Miss die kühle Seite, und heiz dann den Raum.
       *[no] Das kann zu kühl sein: Miss die kühle Seite, bevor du einen zweiten Heizer kaufst.
      }
    [maybe_warm] Das kann zu warm sein: Miss die kühle Seite, nimm die kleinere Lampe oder lass mehr Luft durch.
   *[unknown] Für die kühle Seite ist mir kein Bereich bekannt.
  }
plan-label-shade = Schatten
plan-shade = { $shading ->
    [there] Die schwächste Stelle hat einen UV-Index von { UVI($weakest) }, auf der kühlen Seite. Stell dort auch ein Versteck hin.
    [hardly] Die schwächste Stelle hat einen UV-Index von { UVI($weakest) }, kaum unter { UVI($shade_uvi) }. Stell ein Versteck auf die kühle Seite.
   *[covered] Die schwächste Stelle{ $upright ->
        [yes] , weit unten,
       *[no] {""}
      } hat einen UV-Index von { UVI($weakest) }. Die Röhre deckt fast alles ab, also müssen Blätter und Verstecke Schatten geben.
  }
plan-label-night = Nacht
plan-dark = Alle Lampen aus und dunkel.
# Only with: $floor, $floor_known
plan-night-untold = { plan-dark } Wärme ohne Licht nur, wenn der Raum unter { TEMP($floor, form: "range") } fällt ({ $floor_known }).
plan-night-untold_unknown = { plan-dark } Wie kühl es werden darf, ist mir nicht bekannt.
# Only with: $room_night
plan-night-nothing = { plan-dark } { TEMP($room_night) } brauchen keine Wärme.
# Only with: $room_night
plan-night-too_warm = { plan-dark } { TEMP($room_night) } sind warm für eine Nacht, lass es kühler werden.
plan-night-unknown = { plan-dark } Wie kühl es werden darf, ist mir nicht bekannt: Frag jemanden mit Erfahrung oder eine Tierarztpraxis.
# Only with: $room_night
plan-night-heat = { TEMP($room_night) } sind zu kalt. { $open ->
    [yes] Heiz den Raum, denn Gitter hält keine Wärme.
   *[no] Nimm { plan-night-use }.
  } { plan-dark }
# Only with: $room_night
plan-night-keepers_differ = Über { TEMP($room_night) } sind sich die Halter uneins. Wenn du heizt, { $open ->
    [yes] dann den Raum, denn Gitter hält keine Wärme
   *[no] nimm { plan-night-use }
  }. { plan-dark }
plan-night-use = { $one ->
    [none] { $need ->
        [none] einen Heizer ohne Licht
       *[some] Heizer ohne Licht, { WATTS($need, form: "range") } zusammen, mehr, als einer gibt
      }
   *[some] { $need ->
        [none] einen Heizer mit { WATTS($one) } ohne Licht
       *[some] einen Heizer mit { WATTS($one) } ohne Licht (nötig sind { WATTS($need, form: "range") })
      }
  }, am Thermostat{ $off ->
    [none] {""}
   *[some] , aus bei { TEMP($off) }
  }
plan-label-hours = Stunden
plan-hours = 12 h an und 12 h aus, Röhre und Lampe an einer Zeitschaltuhr{ $year ->
    [none] {" "}(übliche Praxis)
   *[some] . { HOURS($year, form: "range") } übers Jahr sind auch üblich.
  }
plan-label-assumed = Angenommen
plan-all-assumed = { LIST($all_assumed, join: "list-and") }
# Only with: $room_taken
plan-assumed-room = ein Raum mit { TEMP($room_taken) } am Tag
# Only with: $back_taken
plan-assumed-back = ein Rücken { LENGTH($back_taken) } über dem, worauf es liegt ({ LENGTH($back_taken, form: "range") } bei einem erwachsenen Tier, aus dem Gedächtnis)
# Only with: $mesh_blocks
plan-assumed-mesh = ein Gitter, das { SHARE($mesh_blocks) } vom UV abhält, wie ein übliches
plan-assumed-fits = eine Röhre in der Länge für dieses Terrarium. Ist deine anders? Dann sag length:

## Was du kaufst
plan-buy = Zu kaufen
plan-which = Welches
plan-buy-tube = UV-Röhre
plan-tube = { $whose ->
    [class] { $has_tube ->
        [yes] hast du: { plan-tube-kind }
       *[no] { plan-tube-kind }
      }
   *[other] hast du: nach ihren Messwerten
  }
plan-tube-kind = T5 HO, { SHARE($strength, form: "given") }{ $new_tube ->
    [yes] {" "}oder schwächer
   *[no] {""}
  }, { LENGTH($long) }{ $power ->
    [none] {""}
   *[some] , { WATTS($power) }
  }
plan-buy-fixture = UV-Leuchte
plan-fixture = { $has_fixture ->
    [yes] hast du: { $fixture }
   *[no] { $fixture }
  } für diese Länge
plan-buy-day = Heizer am Tag
plan-day-heater = nur wenn die warme Seite zu kühl ist: { plan-heater }
plan-heater = { $extra ->
    [none] { $most ->
        [none] einer ohne Licht
       *[some] bis { WATTS($most) } ohne Licht zusammen. Weniger Gitter braucht weniger.
      }
   *[some] { WATTS($extra) } ohne Licht, mit Thermostat
  }
plan-buy-lamp = Wärmelampe
# Only with: $sizes
plan-lamp = { $day ->
    [yours] hast du: { plan-shape }, { WATTS($sizes) }
    [two_sizes] { plan-shape }, { WATTS($sizes, form: "low") } und { WATTS($sizes, form: "high") }
   *[other] { plan-shape }, { WATTS($sizes) }
  }
plan-shape = { $shape ->
    [wide_dome] Birne für einen weiten Schirm
    [narrow] Punktstrahler
   *[flood] Flutlampe
  }
plan-buy-holder = Lampenfassung
# Only with: $sizes
plan-holder = Keramik, für { WATTS($sizes, form: "high") } oder mehr, zwei Halterungen{ $place ->
    [inside] , Schutzkorb, hinter den das Tier nicht kommt
   *[above_mesh] {""}
  }
plan-buy-dimmer = Dimmer
plan-dimmer = für diese Lampenart und ihre Watt
plan-buy-second = Zweiter Heizer
plan-second-heater = { $extra_surely ->
    [yes] { plan-heater }
   *[no] nur wenn die kühle Seite zu kühl ist: { plan-heater }
  }
plan-buy-timer = Zeitschaltuhr
plan-timer = eine, für Röhre und Lampe zusammen
plan-platform = { $stand ->
    [platform] Stein oder Holz
   *[other] fest genug zum Liegen
  }, { LENGTH($stand_long) } mal { LENGTH($stand_deep) }
plan-buy-thermometers = Thermometer
plan-thermometers = Infrarotthermometer und zwei digitale Fühler, einer mit Speicher für den kältesten Wert
plan-buy-meter = UV-Messgerät
plan-meter = geliehen, für einen Tag
plan-buy-hides = Verstecke
plan-hides = eines auf jeder Seite
plan-buy-night = Heizer für die Nacht
plan-night-heater = { $night ->
    [keepers_differ] wenn du heizt: { plan-night-size }
   *[other] { plan-night-size }
  }, ohne Licht, mit Ein/Aus-Thermostat
plan-night-size = { $one ->
    [none] mehrere, die sich die Watt teilen
   *[some] { WATTS($one) }
  }

## Vorsicht
plan-care-water = Wasser neben Strom: Führ jedes Kabel in einer Tropfschlaufe, halt Steckdosen über dem Wasser und halt dich an die Elektrovorschriften bei dir.
plan-care-water-short = Jedes Kabel mit Tropfschlaufe.
plan-care-size = Das plant Licht und Wärme. Ob es für ein erwachsenes Tier groß genug ist und was es frisst und trinkt, frag jemanden, dem du vertraust.

## Nicht in diesem Terrarium
plan-not-title = Nicht in diesem Terrarium für { NAME($animal, form: "acc") }
plan-not-too_low = Nein: { LENGTH($high) } sind zu niedrig für { plan-any-tube }.
plan-not-no_room_for_heat = Nein: { LENGTH($high) } sind für eine Wärmelampe innen zu niedrig.
plan-not-platform_too_high = Nein: { LENGTH($high) } sind zu hoch für { plan-any-tube } auf dem Deckel.
plan-not-too_close = Nein: { $owns ->
    [yes] Deine Röhre müsste zu nah hängen.
   *[no] Jede übliche Röhre müsste zu nah hängen.
  }
plan-not-too_weak = Nein: { $owns ->
    [yes] Deine Röhre ist dort zu schwach.
   *[no] Jede übliche Röhre ist dort zu schwach.
  }
plan-not-too_strong = Nein: { $owns ->
    [yes] Deine Röhre ist dort zu stark.
   *[no] Jede übliche Röhre ist dort zu stark.
  }
plan-not-length_untold = Noch nicht: Wie lang ist die Röhre?
plan-not-solid_lid = Nein: Durch einen geschlossenen Deckel kommt kein UV.
# Only with: $owned
plan-not-tube_too_long = Nein: Deine Röhre mit { LENGTH($owned) } passt nicht hinein.
plan-not-no_tube_short_enough = Nein: Jede übliche T5-HO-Röhre ist zu lang.
plan-not-too_short = Nein: { LENGTH($long) } lassen keine kühle Seite.
plan-not-air_too_warm = Nein: Mit der Lampe würde es überall zu warm.
plan-not-room_too_warm = Nein: Ein Raum mit { TEMP($room) } ist zu warm.
plan-any-tube = { $owns ->
    [yes] deine Röhre
   *[no] jede übliche Röhre
  }
plan-why-too_low = Auch auf einem flachen Stein käme der Rücken { NAME($animal, form: "your-gen") } der Röhre näher, als ein UV-Index von { UVI($wanted, form: "range") } erlaubt. Dazwischen: { $through }.
plan-why-no_room_for_heat = Unter einem geschlossenen Deckel in { LENGTH($high) } Höhe hinge eine Wärmelampe zu nah am Tier.
plan-why-platform_too_high = Der Liegeplatz { NAME($animal, form: "your-gen") } wäre höher, als ich ihn bauen würde.
plan-why-too_close = Für einen UV-Index von { UVI($wanted, form: "range") } hinge sie näher als { LENGTH($nearest) } am Rücken. Näher soll keine Röhre hängen. Dazwischen: { $through }.
plan-why-too_weak = Sie bringt keinen UV-Index von { UVI($wanted, form: "range") }. Dazwischen: { $through }.
plan-why-too_strong = Sie bringt mehr als einen UV-Index von { UVI($wanted, form: "range") }. Dazwischen: { $through }.
plan-why-length_untold = Wie weit weg { plan-any-tube } hängt, hängt davon ab, wie lang sie ist.
plan-why-solid_lid = Durch einen geschlossenen Deckel kommt kein UV, also kann die Röhre nicht darauf liegen.
# Only with: $owned
plan-why-tube_too_long = Deine Röhre mit { LENGTH($owned) } ist länger als das Terrarium mit { LENGTH($long) }.
plan-why-no_tube_short_enough = Die kürzeste übliche T5-HO-Röhre ist { LENGTH($shortest) } lang, das Terrarium { LENGTH($long) }. Kürzere Arten kann ich nicht berechnen.
plan-why-too_short = { LENGTH($long) } sind zu kurz für eine warme und eine kühle Seite. Schon die kürzeste Röhre würde fast alles beleuchten, und { NAME($animal, form: "your") } muss Licht und Wärme verlassen können.
plan-why-air_too_warm = Eine Lampe, die den Sonnenplatz wärmt, würde alles mehr wärmen, als die kühle Seite { NAME($animal, form: "your-gen") } haben darf.
plan-why-room_too_warm = { $cool ->
    [none] Ein Raum mit { TEMP($room) } ist zu warm für { NAME($animal, form: "your-acc") }.
   *[some] Der Raum hat { TEMP($room) }, und die kühle Seite { NAME($animal, form: "your-gen") } darf höchstens { TEMP($cool, form: "high") } haben.
  }
plan-do-way = Das ginge: { LIST($changes, join: "list-and") }.
plan-do-measure = Miss sie und ergänze length:34in.
plan-do-floor = Nimm ein Terrarium mit diesem Boden.
plan-do-none = Nimm ein längeres und höheres Terrarium.
plan-way = { $small ->
    [yes] Vorerst
   *[no] Das ginge
  }: { LIST($changes, join: "list-and") }. Dann { $lamp }, { $place ->
    [inside] innen
   *[above_mesh] auf dem Gitter
  }, { LENGTH($away) } vom Rücken, und der { plan-place } { LENGTH($top) } hoch.
plan-change-hang_inside = die Röhre innen, ohne Gitter dazwischen
plan-change-other_tube = eine andere Röhre
# Only with: $passes
plan-change-opener_screen = ein weiteres Gitter über die Länge der Röhre, das { SHARE($passes) } durchlässt
plan-change-mesh_lid = ein Deckel, der { $fully ->
    [yes] ganz
   *[no] zum Teil
  } aus Gitter ist, mit Röhre und Lampe darauf
plan-change-smaller_lamp = eine kleinere Wärmelampe oder ein Dimmer an deiner
# Only with: $cooler
plan-change-cooler_room = ein Raum mit { TEMP($cooler) } oder kühler
# Only with: $least
plan-change-taller_box = ein Terrarium, mindestens { LENGTH($least) } hoch
# Only with: $least
plan-change-longer_box = ein Terrarium, mindestens { LENGTH($least) } lang
plan-step-measure = Miss die Röhre und frag noch einmal mit ihrer Länge, etwa length:34in.
plan-step-none = Keine einzelne Änderung, die ich kenne, reicht: Nimm ein längeres und höheres Terrarium.
# Only with: $floor_long, $floor_deep
plan-step-floor = Am besten: Nimm ein Terrarium mit { LENGTH($floor_long) } mal { LENGTH($floor_deep) } Boden oder mehr. Das braucht ein erwachsenes Tier.
plan-step-other-kinds = Andere Arten, etwa eine Kompaktlampe, sind kurz genug, aber ihr UV kann ich nicht berechnen. Nimm eine nur, wenn du sie am Rücken des Tieres mit einem UV-Messgerät prüfen kannst.
plan-step-gentle = Oder gar keine Lampe: ein Paneel oder eine Matte ohne Licht, am Thermostat. Frag lamp radiant panel oder lamp heat mat.
plan-step-ask-again = Dann frag plan noch einmal, und miss, bevor das Tier einzieht.
plan-box = innen { LENGTH($long) } lang, { LENGTH($deep) } tief, { LENGTH($high) } hoch, { $lid ->
    [solid] geschlossener Deckel
    [part_mesh] Deckel mit etwas Gitter
   *[full_mesh] Gitterdeckel
  }
plan-back-title = Wie hoch ist der Rücken?
plan-back-unknown = Ich brauche noch die Höhe vom Rücken { NAME($animal, form: "your-gen") }.
plan-do-back = Miss ab dem, worauf es liegt, und ergänze { $example }.

## Das Bild
plan-picture-length = { LENGTH($seen) }
plan-picture-title = Der Aufbau für { NAME($animal, form: "acc") }
plan-picture-subtitle = { $lamp }; dazwischen: { $through }
plan-picture-tube = { $whose ->
    [class] UV-Röhre, { SHARE($strength, form: "given") }
   *[other] UV-Röhre
  }
plan-picture-tubes = { $count ->
    [one] UV-Röhre
   *[other] { $count } UV-Röhren
  }
# Only with: $sizes
plan-picture-lamp = Wärmelampe, { $day ->
    [two_sizes] { WATTS($sizes, form: "low") } oder { WATTS($sizes, form: "high") }
   *[other] { WATTS($sizes) }
  }
plan-picture-across = Von der warmen Seite, Schnitt in { LENGTH($along) } Abstand
plan-picture-note = Die Mitte vom { plan-place } ist { LENGTH($along) } von der Wand der warmen Seite. Verstecke sind nicht im Bild.
plan-picture-warm-is = UV-Index { UVI($wanted, form: "range") }{ $lit_by_lamp ->
    [yes] {" "}und Wärme
   *[no] {""}
  }
plan-picture-cool-is = bis hinab zu UV-Index { UVI($weakest) }, und ein Versteck
# Only with: $read_uvi
plan-picture-meter = UV-Messgerät in Rückenhöhe: { UVI($read_uvi, form: "range") }
# Only with: $read_temp
plan-picture-gun = Infrarotthermometer am Liegeplatz: { TEMP($read_temp, form: "range") }
# Only with: $read_temp
plan-picture-probe = Fühler im Schatten: { TEMP($read_temp, form: "range") }
plan-picture-alt = Maßstäbliche Seitenansicht: { plan-picture-title }, { plan-picture-subtitle }.
plan-picture-alt-reach = Von der warmen Seite links reicht die Röhre { LENGTH($seen) } weit.
plan-picture-alt-across = Die Röhre liegt von hinten nach vorn, { LENGTH($seen) } von der warmen Seite links.
plan-picture-alt-stand = { plan-place }: Die Oberseite ist { LENGTH($top) } über dem Boden, die Mitte { LENGTH($along) } von der warmen Seite.
plan-picture-alt-away = Von der Röhre zum Rücken { LENGTH($away) }: UV-Index { UVI($uvi, form: "doubt") }.
plan-picture-alt-lamp = Die Wärmelampe hängt neben der Röhre.
plan-picture-alt-warm = Warme Seite: { plan-picture-warm-is }.
plan-picture-alt-cool = Kühle Seite: { plan-picture-cool-is }.

## Vorerst, und nach welchem Kodex
plan-code-austria2004 = österreichisches Recht
plan-code-austria_snakes2004 = österreichisches Recht
plan-code-eu2010_63 = EU-Laborregeln
plan-code-leopard_gecko_leaflet = Merkblatt zum Tierschutz
plan-code-nsw2013 = Kodex von New South Wales
plan-code-swiss_2001 = Schweizer Recht
plan-code-swiss_tschv = Schweizer Recht
plan-code-tvt_tortoise = Merkblatt deutscher Tierärzte
plan-code-enclosure_judgement = unsere eigene Regel
plan-code-tortoise_judgement = unsere eigene Regel
plan-code-giant_snake_judgement = unsere eigene Regel
# Only with: $sizes
plan-now-one_size = Vorerst: keine Röhre, { WATTS($sizes) } an einem Ende.
# Only with: $sizes
plan-now-two_sizes = Vorerst: keine Röhre, { WATTS($sizes, form: "low") } oder { WATTS($sizes, form: "high") } an einem Ende.
# Only with: $sizes
plan-now-yours = Vorerst: keine Röhre, deine { WATTS($sizes) } an einem Ende.
plan-now-gentle = Vorerst: keine Röhre. Sanft heizen, wenn es zu kühl ist.
plan-now-room = Vorerst: keine Röhre, keine Wärmelampe.
plan-step-now = Es lebt schon dort? Dann lass die Röhre weg, wärme nur ein Ende, und miss die kühle Seite mit einem Fühler{ $cool ->
    [none] .
   *[some] : höchstens { TEMP($cool, form: "high") }.
  } Ohne UV muss sein Vitamin D aus dem Futter kommen: Frag eine reptilienkundige Tierarztpraxis, wie.
plan-label-water = Wassertiefe
# Only with: $water_deep
plan-water-deep = { $deep_is_own ->
    [yes] { LENGTH($water_deep, form: "range") } (die eigene Zahl der Gruppe)
   *[no] { LENGTH($water_deep) } oder mehr (EU-Regeln für Labore)
  }
plan-night-water = { plan-dark } Nachts zählt sein Wasser. Heize es mit eigenem Thermostat, wenn es im Zimmer zu kalt wird.
plan-aim-label-water = Wasser
plan-aim-label-gradient = Ganzes Terrarium
