### Ein ganzes Terrarium, geprüft

check-title = { $named ->
    [one] Dein Terrarium für { NAME($animal, form: "acc") }, geprüft
    [first_of_several] Dein Terrarium für { NAME($animal, form: "acc") }, geprüft
    [no_figures] Dein Terrarium, geprüft: { $words }
   *[other] Dein Terrarium, geprüft
  }

## Die Antwort in Kürze
check-head-fine = Ja, alles stimmt.
check-head-so-far = Bis jetzt ist nichts zu ändern.
check-no-spot = Es braucht keinen heißen Platz.
check-head-unknown = Das kann ich noch nicht sagen.
check-head-uv = Das UV ist { $verdict ->
    [probably_low] wohl zu schwach
    [probably_high] wohl zu stark
    [cannot_tell] vielleicht zu stark
   *[other] { $above ->
        [yes] zu stark
       *[no] zu schwach
      }
  }: etwa { UVI($uvi) }.
# Only with: $at
check-head-too-near = Die Röhre ist zu nah: { LENGTH($at) }.
check-head-uv-depends = Das UV hängt { $split ->
    [behind] vom Reflektor
    [between] vom Gitter
   *[both] von Gitter und Reflektor
  } ab.
check-head-pane = Durch die Scheibe kommt kein nützliches UV.
check-head-no-tube = Es gibt keine UV-Röhre.
check-head-lamp-off = Es ist gefährlich heiß.
check-head-alike = Beide Seiten sind zu gleich: { DIFF($apart) }.
check-head-far-apart = Zu großer Unterschied: { DIFF($apart) }.
check-head-hours = { HOURS($lit) } Licht sind zu { $long ->
    [yes] viel
   *[no] wenig
  }.
check-head-night = { $decision ->
    [too_warm] { TEMP($coldest) } sind nachts zu warm.
    [keepers_differ] { TEMP($coldest) } in der Nacht: ein Grenzfall.
   *[other] { TEMP($coldest) } sind nachts zu kalt.
  }
check-head-lamps = Die falsche Lampe: { LIST($lamps) }.
check-head-unwatched = Ohne Thermostat: { LIST($heaters) }.
check-head-sun-apart = UV und Wärme liegen auseinander.
check-head-sun-row = In Reihe treffen sie sich nicht.
# Only with: $beside
check-sun-met = UV, Wärme, Licht: { SHARE($beside) } des Platzes.
check-fine = Gut: { LIST($pieces) }.
check-open = { $more ->
    [0] Noch unklar: { $first }.
   *[other] Noch unklar: { $first } und { $more } mehr.
  }
check-whom = { $named ->
    [first_of_several] Du hast mehrere genannt: { LIST($among) }. Ich habe { NAME($animal, form: "acc") } genommen.
    [no_figures] Für { $words } habe ich keine Zahlen. Darum habe ich nur beurteilt, was für jedes Tier gilt.
    [may_be_several] „{ $words }“ kann mehreres sein: { $some_known ->
        [yes] { LIST($among, join: "list-or") }{ $some_bare ->
            [yes] {" "}(oder { LIST($bare, join: "list-or") }, dafür habe ich keine Zahlen)
           *[no] {""}
          }
       *[no] { LIST($bare, join: "list-or") }
      }. Darum habe ich nur beurteilt, was für jedes Tier gilt.
    [unknown] Das Tier „{ $words }“ kenne ich nicht. Darum habe ich nur beurteilt, was für jedes Tier gilt.
   *[nobody] Du hast kein Tier genannt. Darum habe ich nur beurteilt, was für jedes Tier gilt. Nenn es mir mit animal:, dann geht der Rest auch.
  }
check-whom-short = { $named ->
    [first_of_several] Angenommen: { NAME($animal) }.
    [no_figures] Keine Zahlen dafür: wie jedes Tier.
   *[other] Welches Tier? Beurteilt wie jedes.
  }

## Ein Teil
check-piece-safety = Sicherheit
check-piece-uv = UV
check-piece-lamp_time = Wie lange die Lampe an war
check-piece-basking = Sonnenplatz
check-piece-cool = Kühle Seite
check-piece-warm = Warme Seite
check-piece-apart = Von warm nach kühl
check-piece-hours = Stunden Licht
check-piece-night = Nacht
check-piece-water = Wasser
check-piece-lamps = Lampen
check-piece-sun = Fleck Sonne
check-short-safety = Sicherheit
check-short-uv = UV
check-short-lamp_time = Lampenzeit
check-short-basking = Sonnenplatz
check-short-cool = kühle Seite
check-short-warm = warme Seite
check-short-apart = warm nach kühl
check-short-hours = Stunden Licht
check-short-night = Nacht
check-short-water = Wasser
check-short-lamps = Lampen
check-short-sun = Fleck Sonne
check-word = { $verdict ->
    [far_too_low] { verdict-far_too_low }
    [low] { verdict-low }
    [probably_low] { verdict-probably_low }
    [fine] { verdict-fine }
    [probably_high] { verdict-probably_high }
    [high] { verdict-high }
    [dangerous] { verdict-dangerous }
   *[cannot_tell] { verdict-cannot_tell }
  }
check-depends = kommt darauf an
check-case = UVI { UVI($uvi) } { LIST($where) }: { check-uv-word }.
check-uv-word = { $verdict ->
    [far_too_low] viel zu schwach
    [low] zu schwach
    [probably_low] wohl zu schwach
    [fine] richtig
    [probably_high] wohl zu stark
    [high] zu stark
    [dangerous] gefährlich
   *[cannot_tell] grenzwertig
  }
check-where-mirror = mit Spiegel
check-where-white = ohne Spiegel
check-where-open = ohne Gitter
check-where-mesh = mit Gitter
check-where-light_mesh = mit Gitter (30 %)
check-where-usual_mesh = mit Gitter (45 %)
check-where-dense_mesh = mit Gitter (60 %)
check-needless = nicht nötig
check-sign = { $sign ->
    [fine] gut
    [change] ändern
   *[cannot_tell] unklar
  }

## Was fehlt: in wenigen Worten, mit dem Weg dahin, und als Sache
check-find-short-tube = Sieh nach, wie stark die Röhre ist.
check-find-short-distance = Miss von der Röhre bis zum Rücken.
check-find-short-reflector = Schau: Spiegelt die Leuchte?
check-find-short-screen = Schau: Ist Gitter unter der Röhre?
check-find-short-tube_length = Miss, wie lang die Röhre ist.
check-find-short-meter = Miss den UV-Index an seinem Rücken.
check-find-short-basking = Miss den Platz mit Infrarotpistole.
check-find-short-cool = Miss die kühle Seite mit Fühler.
check-find-short-hours = Sag mir, wie lange Licht an ist.
check-find-short-night = Miss, wie kalt es nachts wird.
check-find-short-water = Miss das Wasser.
check-find-short-lamps = Nenn mir alle Lampen und Heizer.
check-find-short-beside = Sag: nebeneinander oder in Reihe?
check-find-tube = Finde heraus: { check-missing-tube }.
check-find-distance = Miss: { check-missing-distance }.
check-find-reflector = Finde heraus: { check-missing-reflector }.
check-find-screen = Finde heraus: { check-missing-screen }.
check-find-tube_length = Finde heraus: { check-missing-tube_length }.
check-find-meter = Finde heraus: { check-missing-meter }.
check-find-basking = Miss: { check-missing-basking }.
check-find-cool = Miss: { check-missing-cool }.
check-find-hours = Finde heraus: { check-missing-hours }.
check-find-night = Miss: { check-missing-night }.
check-find-water = Miss: { check-missing-water }.
check-find-lamps = Finde heraus: { check-missing-lamps }.
check-find-beside = Finde heraus: { check-missing-beside }.
check-missing-tube = die Stärke, die auf der Röhre steht
check-missing-distance = der Abstand von der Unterseite der Röhre bis zum Rücken des Tieres, mit dem Maßband
check-missing-reflector = ob die Leuchte hinter der kalten, ausgeschalteten Röhre wie ein Spiegel ist (polished) oder weiß oder aus Kunststoff (plain)
check-missing-screen = was zwischen Röhre und Tier ist: nichts, oder ein Gitter und wie viel es abhält
check-missing-tube_length = wie lang die Röhre ist, oder die Watt, die darauf stehen
check-missing-meter = der UV-Index am Rücken des Tieres, mit dem Messgerät
check-missing-basking = { heat-missing-basking_surface }
check-missing-cool = { heat-missing-cool_air }
check-missing-hours = wie lange das Licht an ist
check-missing-night = { heat-missing-night_air }
check-missing-water = { heat-missing-water }
check-missing-lamps = die Art jeder Lampe und jedes Heizers
check-missing-beside = ob Wärmelampe und Röhre nebeneinander hängen, in einer Reihe oder an verschiedenen Enden
check-label-missing = Es fehlt

## Was zu tun ist
check-do-room = Gib dem Tier mehr Platz. { LENGTH($at) } bis zur Röhre sind zu nah. Halte mindestens { LENGTH($nearest) } Abstand.
check-do-room-short = Halte { LENGTH($nearest) } Abstand.
check-do-meter = Häng die Röhre { $farther ->
    [yes] weiter weg vom
   *[no] näher an den
  } Rücken des Tieres, oder verschieb die Plattform, bis das Messgerät { UVI($wanted, form: "range") } zeigt.
check-do-meter-short = { $farther ->
    [yes] Weiter weg
   *[no] Näher
  }, bis UVI { UVI($wanted, form: "range") }.
check-do-move = { $to ->
    [none] Häng die Röhre { $farther ->
        [yes] weiter weg vom
       *[no] näher an den
      } Rücken des Tieres. Nenn mir Leuchte und Gitter, dann sage ich dir, wie weit.
   *[some] Häng die Röhre { $farther ->
        [yes] weiter weg vom
       *[no] näher an den
      } Rücken des Tieres, auf { LENGTH($to) }. Du kannst auch die Plattform verschieben.
  }
check-do-move-short = { $to ->
    [none] Häng die Röhre { $farther ->
        [yes] weiter weg
       *[no] näher
      }.
   *[some] Röhre auf { LENGTH($to) } Abstand.
  }
# Only with: $to
check-do-until = Miss, wie lang die Röhre ist, von einem Ende zum anderen. Häng sie bis dahin { LENGTH($to) } vom Rücken des Tieres weg. Dort gibt auch die längste nicht zu viel.
# Only with: $to
check-do-until-short = Miss die Röhre. Bis dahin { LENGTH($to) } weit.
# Only with: $to
check-do-for-now = Häng die Röhre erst einmal { LENGTH($to) } vom Rücken des Tieres weg. Dort ist sie auf keinen Fall zu stark. Häng sie näher, wenn du es weißt.
# Only with: $to
check-do-for-now-short = Häng sie erst einmal { LENGTH($to) } weit weg.
check-do-length = Miss, wie lang die Röhre ist, von einem Ende zum anderen. Kein Abstand passt für jede Länge.
check-do-no-place = Mit dieser Röhre, dieser Leuchte und diesem Gitter passt kein vernünftiger Abstand. Frag distance mit denselben Worten, dann sage ich dir, warum und was du stattdessen nimmst.
check-do-no-place-short = Frag distance, was besser passt.
check-do-to-back = Miss noch einmal von der Unterseite der Röhre bis zum Rücken des Tieres, da, wo es sich sonnt.
check-do-pane = Häng die Röhre nach innen oder über offenes Metallgitter. Frag dann noch einmal distance, und beginn am fernen Ende des Bereichs.
check-do-pane-short = Häng sie innen oder über Gitter auf.
check-do-ask-meter = Frag meter mit deinen Werten, etwa: meter readings:4.2 at 12 in, 2.9 at 15 in.
check-do-ask-meter-short = Frag meter mit deinen Werten.
check-do-read-uvi = Miss den UV-Index am Rücken des Tieres mit einem Messgerät. { UVI($wanted, form: "range") } passt. Häng die Lampe nie näher als { LENGTH($nearest) }. Ohne Messgerät plan eine T5-HO-Röhre ein.
check-do-plan-tube = Plan für das UV eine T5-HO-Röhre ein. Welche und wohin, sagt die Frage plan oder tube.
check-do-plan-tube-short = Frag plan, welche Röhre und wohin.
check-do-again = Prüf den Wert { $piece ->
    [uv] für die Röhre
    [lamp_time] dafür, wie lange die Lampe an war,
    [basking] für den Sonnenplatz
    [cool] für die kühle Seite
    [warm] für die warme Seite
   *[night] für die Nacht
  } und nenn ihn mir noch einmal, etwa { $again }.
check-do-again-short = Nenn ihn mir neu, etwa { $again }.
check-do-beside = Häng Röhre und Wärmelampe nebeneinander über den Sonnenplatz, beide aus und kalt. Dann miss neu. Frag arrange für dein Terrarium.
check-do-beside-short = Häng Lampe und Röhre nebeneinander.
check-do-timer = Stell die Zeitschaltuhr auf { HOURS($day, form: "range") } Licht am Tag.
check-do-timer-short = Stell { HOURS($day, form: "range") } Licht am Tag ein.
check-do-replace = Plan einen Ersatz für { NAME($lamp, form: "acc") }. Halt das Tier bis dahin warm. { $note }
check-do-replace-short = Plan einen Ersatz für die Lampe.
check-do-keep-short = Lass alles, wie es ist.
check-any-nearest = Häng nie eine UV-Röhre näher als { LENGTH($nearest) } über seinen Rücken.
check-any-shade = Gib ihm Schatten ohne UV und einen kühlen Platz. Beides muss es immer erreichen können.
check-any-measure = Miss, bevor es einzieht: den UV-Index mit einem Messgerät, Flächen mit einer Infrarotpistole, die Luft und die Nacht mit einem Digitalfühler.
check-any-range = Hat dir jemand den UV-Index für dein Tier genannt, kann ich auch ohne seinen Namen einen Abstand ausrechnen. Frag distance und gib den Bereich mit uvi an.

## Warum
check-why = { $piece }: { $why }
check-why-untold = Das hast du nicht gesagt.
check-why-unclear = Das war mir nicht klar.
check-why-strong-uv = { $times ->
    [none] Ein UV-Index von etwa { UVI($uvi, form: "given") } verletzt bei fast jedem Tier Augen und Haut.
   *[some] Das UV ist etwa { UVI($times, form: "given") }-mal so stark, wie es für { NAME($animal, form: "acc") } höchstens sein soll. Es kann Augen und Haut verletzen.
  }
check-why-unwatched = Ohne Thermostat kann das überhitzen und verbrennen: { LIST($heaters) } (übliche Praxis, ohne Quelle).
check-why-burns = An einer so heißen Fläche verbrennt sich ein Tier.
check-why-no-cool-place = Ist die kühle Seite so heiß, hat das Tier keinen kühlen Platz.
check-beyond-temp = Du sagst { TEMP($temp) }. Trauen kannst du mir nur von { TEMP($temps, form: "low") } bis { TEMP($temps, form: "high") }. Nenn mir den Wert noch einmal, etwa { $again }.
check-beyond-length = Du sagst { LENGTH($length) }. Trauen kannst du mir nur von { LENGTH($lengths, form: "low") } bis { LENGTH($lengths, form: "high") }. Nenn mir den Wert noch einmal, etwa { $again }.
check-beyond-time = Du sagst { HOURS($time) }. Trauen kannst du mir nur bis { HOURS($most) }. Nenn mir den Wert noch einmal, etwa { $again }.
check-beyond-other = Mit einer der Zahlen zu deiner Röhre kann ich nicht rechnen. Nenn sie mir noch einmal, etwa { $again }.
check-aim = Das Ziel ist UVI { UVI($wanted, form: "range") } ({ $known }).
check-why-uv-untold = Ich weiß zu wenig über die Röhre. { check-aim }
check-why-uv-pane = Durch eine Scheibe aus Glas oder Kunststoff kommt kein nützliches UV. { check-aim }
check-why-uv-several = Du hast mehrere Werte gemessen. Die Frage meter rechnet mit allen. { check-aim }
check-why-uv-none = Es gibt keine UV-Röhre. { check-aim }
check-why-uv-no-figures = Für { check-kind } habe ich keine Zahlen. Nur ein UV-Messgerät zeigt, wo sie hängen darf. { check-aim }
check-kind = { $kind ->
    [other_tube] eine T8- oder andere Röhre
    [compact] eine Kompaktlampe
    [metal_halide] eine Metalldampflampe
    [mercury] eine Quecksilberdampflampe
    [led] eine LED-Leiste
    [t5_ho] eine T5-HO-Röhre
   *[unknown] eine UV-Lampe, die niemand kennt,
  }
check-why-uv-meter = Dein Messgerät zeigt { UVI($uvi) }: { check-word }. { check-aim }
check-at = { LENGTH($at) } { $told_from ->
    [back] Abstand zum Rücken
    [perch] Abstand zum Ast, am Rücken also etwas mehr
   *[unsaid] Abstand, wie ich annehme bis zum Rücken
  }{ $tubes ->
    [one] {""}
   *[other] , unter { $tubes } Röhren, deren UV sich addiert
  }{ $across ->
    [yes] , und nur genau darunter, weil sie quer liegt
   *[no] {""}
  }
check-why-uv-open = UVI { UVI($uvi, form: "range") } bei { check-at }. Das hängt davon ab, was du nicht gesagt hast. { check-aim }
check-why-uv-worked = Etwa UVI { $one ->
    [yes] { UVI($uvi, form: "doubt") }
   *[no] { UVI($uvi, form: "range") }
  } bei { check-at }: { check-word }. { check-aim }{ $longer ->
    [yes] {" "}Eine längere Röhre wäre dort zu stark.
   *[no] {""}
  }{ $aged ->
    [yes] {" "}Die Röhre ist über ein Jahr alt, darum zeigt es nur ein Messgerät.
   *[no] {""}
  }
check-why-uv-unjudged = Welchen UV-Index { NAME($animal, form: "your") } braucht, weiß ich nicht.
# Only with: $uvi
check-why-uv-unjudged-read = Dein Messgerät zeigt { UVI($uvi) }. { check-why-uv-unjudged }
# Only with: $uvi, $at
check-why-uv-unjudged-worked = Etwa UVI { UVI($uvi, form: "range") } bei { LENGTH($at) } Abstand. { check-why-uv-unjudged }
check-why-swapped = Du sagst, die kühle Seite ist heißer als der Sonnenplatz. Finde heraus, welcher Wert welcher ist.
check-why-apart = Sonnenplatz und kühle Seite liegen { DIFF($apart) } auseinander. Das Tier kann also wählen.
check-why-alike = Sonnenplatz und kühle Seite liegen { DIFF($apart) } auseinander. Das ist zu wenig zum Wählen. Gut sind mindestens { DIFF($least) }.
check-why-far-apart = Sonnenplatz und kühle Seite liegen { DIFF($apart) } auseinander, mehr als die { DIFF($most) } zwischen den Zielwerten.
check-why-hours-untold = Das hast du nicht gesagt. 12 Stunden an und 12 aus, das ganze Jahr, sind ein guter Anfang (übliche Praxis, ohne Quelle).
check-why-hours-only = { HOURS($lit) }. Dafür kenne ich keinen Zielwert. 12 Stunden sind ein guter Anfang.
check-why-hours = { HOURS($lit) } Licht. Gut sind { HOURS($day, form: "range") } ({ $known }).
# Only with: $floor, $known
check-why-night = { $decision ->
    [nothing] { TEMP($coldest) } brauchen keine Wärme.
    [keepers_differ] Über { TEMP($coldest) } sind sich die Halter nicht einig.
    [too_warm] { TEMP($coldest) } sind zu warm.
   *[other] { TEMP($coldest) } sind zu kalt.
  } Wärme braucht es unter { TEMP($floor, form: "range") }{ $has_aim ->
    [yes] , am besten { TEMP($floor) }
   *[no] {""}
  } ({ $known }).
check-why-night-unknown = { $cold ->
    [yes] { TEMP($coldest) } sind zu kalt.
   *[no] { TEMP($coldest) }. Wie kühl die Nacht werden darf, weiß ich nicht.
  }
check-why-no-lamp = Du hast keine Wärmelampe genannt.
check-why-lamps-wrong = Dafür nicht geeignet: { LIST($lamps) }.
check-why-lamps-read = Was dein Messgerät und der Sonnenplatz zeigen, entscheidet: { LIST($lamps) }.
check-why-lamps-meter = UV und Wärme kommen hier zusammen, darum miss beides: { LIST($lamps) }.
check-why-lamps-elsewhere = Nicht für den Sonnenplatz: { LIST($lamps) }.
check-why-lamps-good = Gut für den Sonnenplatz: { LIST($lamps) }.
check-why-sun-shade = Schatten von allen dreien: { sun-shade }.
check-why-sun-white = Helligkeit: { sun-light }.
check-why-sun-apart = Die Wärme ist an einem Ende und das UV am anderen, also ist kein Platz wie die Sonne. Soweit man weiß, geht ein Tier nach der Wärme, und so entgeht ihm das UV (übliche Praxis, ohne Quelle).
check-why-sun-which-untold = Du hast nicht gesagt, ob die Wärmelampe neben der Röhre hängt. Nebeneinander treffen sich UV, Wärme und Licht wie in der Sonne (übliche Praxis, ohne Quelle).
# Only with: $beside
check-why-sun-which-worked = Du hast nicht gesagt, ob die Wärmelampe neben der Röhre hängt. Nebeneinander träfen sich UV, Wärme und Licht auf { SHARE($beside) } ({ SHARE($beside, form: "range") }) des Platzes{ $row ->
    [none] {""}
   *[some] , in Reihe auf { SHARE($row) }
  }, an den üblichen Stellen eines solchen Terrariums.
check-why-sun-beside-untold = Nebeneinander treffen sich UV, Wärme und Licht wie in der Sonne (übliche Praxis, ohne Quelle). Nenn Terrarium, Länge der Röhre, Reflektor, Gitter und Abstand, dann rechne ich aus, wie viel.
# Only with: $beside
check-why-sun-beside-worked = Nebeneinander treffen sich UV, Wärme und Licht auf { SHARE($beside) } ({ SHARE($beside, form: "range") }) des Platzes, an den üblichen Stellen eines solchen Terrariums.
check-why-sun-row-untold = In Reihe liegt die Wärme neben dem UV, nicht darin. Nenn Terrarium, Länge der Röhre, Reflektor, Gitter und Abstand, dann rechne ich aus, was sich trifft.
# Only with: $row, $beside
check-why-sun-row-worked = In Reihe treffen sich UV, Wärme und Licht auf { SHARE($row) } ({ SHARE($row, form: "range") }) des Platzes, nebeneinander auf { SHARE($beside) }, an den üblichen Stellen eines solchen Terrariums.
check-lamp = { CAP($lamp) }: { $note }

## Zahlen
check-label-whom = Tier
check-label-correct = Berichtige mich
check-correct = Habe ich etwas falsch gelesen? Frag noch einmal und häng es an, etwa distance:16in oder cool:78F.
check-column-part = Teil
check-column-verdict = Urteil
check-column-read = Wert
check-column-aim = Gut ist
check-cell-nothing = -
# Only with: $uvi
check-read-uvi = UVI { UVI($uvi) }
# Only with: $uvi
check-read-uvi-range = UVI { UVI($uvi, form: "range") }
check-read-uvi-worked = UVI { $one ->
    [yes] { UVI($uvi, form: "doubt") }
   *[no] { UVI($uvi, form: "range") }
  }
check-read-hours = { HOURS($lit) }
# Only with: $beside
check-read-sun-beside = { SHARE($beside) } ({ SHARE($beside, form: "range") }) des Platzes
# Only with: $row
check-read-sun-row = { SHARE($row) } ({ SHARE($row, form: "range") }) des Platzes
check-read-lamps = { LIST($lamps) }
check-aim-uvi = UVI { UVI($wanted, form: "range") }

## Es wurde nichts erzählt
check-nothing-title = Erzähl mir von deinem Terrarium
check-nothing = In deinen Worten finde ich kein Terrarium.
check-nothing-needs = Ich brauche Tier, Röhre, Abstand oder Temperaturen.
check-nothing-do = Etwa: check beardie, 12%, 16in to his back, basking 98F.

## Was keine Lampe braucht
check-head-needs-no-lamp = Es braucht keine UV-Lampe.
check-do-no-lamp = Lass die UV-Lampe aus. Es lebt im Wasser und braucht keine.
check-do-no-lamp-short = Lass die UV-Lampe aus.
check-why-uv-unneeded = Es lebt nur im Wasser und braucht kein UV.
check-why-uv-spare = Es kommt ohne UV aus. Eine Lampe, die du später anbringst, muss ihm vollen Schatten lassen.
check-care-water = Wasser bei Netzstrom: Gib jedem Kabel eine Tropfschlaufe, und halte Steckdosen über dem Wasser.
check-care-water-short = Gib jedem Kabel eine Tropfschlaufe.

## Das Bild
check-picture-length = { LENGTH($seen) }
check-picture-row = { $read ->
    [none] { $piece }: { $mark }
   *[some] { $piece }: { $mark }, { $read }
  }
check-picture-aim = richtig: { $aim }
check-picture-alt = Seitenansicht im Maßstab: { check-title }.
check-picture-danger = Zuerst die Gefahr: Tu, was in der Antwort ganz oben steht.
check-picture-own = Terrarium: deine Maße. Was du nicht gesagt hast, ist an üblicher Stelle gezeichnet.
check-picture-usual = Terrarium: ein Beispiel, da keine Maße genannt sind. Was du nicht gesagt hast, ist an üblicher Stelle gezeichnet.
check-picture-light = Licht
check-picture-lux = etwa { LUX($spot) }
check-picture-no-need = Ein Bedarf ist unbekannt.
check-picture-behind = Das weiße Licht ist über der Röhre gezeichnet, die es verdecken kann.
check-picture-light-open = Licht: eine weiße Lampe. Wie hell sie den Platz macht, ist nicht berechnet.
check-picture-too-long = Deine Röhre ist länger als das Terrarium, also ist sie nicht gezeichnet.
check-picture-too-high = Was für dieses Terrarium zu hoch hängt, ist nicht gezeichnet.
