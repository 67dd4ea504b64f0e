### Wie hell es ist. Die Stufen sind unsere eigenen: Niemand weiß, wie viel Lux ein Tier braucht.

-bright-lamp-white-tube = weiße Röhre
    .a = eine weiße Röhre
-bright-lamp-led-bar = LED-Leiste
    .a = eine LED-Leiste
-bright-lamp-led-panel = LED-Panel
    .a = ein LED-Panel
-bright-lamp-led-flood = LED-Strahler
    .a = ein LED-Strahler
-bright-lamp-halogen-flood = Halogenstrahler
    .a = ein Halogenstrahler
-bright-lamp-household-bulb = Glühbirne
    .a = eine Glühbirne
-bright-lamp-metal-halide = Metalldampflampe
    .a = eine Metalldampflampe
-bright-lamp-uv-tube = UV-Röhre
    .a = eine UV-Röhre
-bright-lamp-coloured-lamp = farbige Lampe
    .a = eine farbige Lampe

bright-title = Wie hell der Sonnenplatz ist

## Die Antwort in Kürze
bright-head-dim = Eher dunkel: etwa { LUX($spot) } am Rücken.
bright-head-dim_or_fair = Dunkel bis mittel: etwa { LUX($spot) }.
bright-head-fair = Mittel: etwa { LUX($spot) } am Rücken.
bright-head-fair_or_bright = Mittel bis hell: etwa { LUX($spot) }.
bright-head-bright = Hell: etwa { LUX($spot) } am Rücken.
bright-head-cannot_tell = Grob geschätzt { LUX($spot) }.
bright-head-no_band = Etwa { LUX($spot) } am Rücken.
bright-range-lamp = Es können { LUX($spot, form: "range") } sein.
bright-range-meter = Laut Messgerät { LUX($spot, form: "range") }.
bright-range-phone = Ein Handy liegt leicht um das Doppelte daneben.
bright-left-out = Nicht gezählt: { LIST($left_out) }.
bright-shade = Offener Schatten: etwa { LUX($shade) }.
bright-shade-alone = Offener Schatten: etwa { LUX($shade) }.
bright-levels = Dafür: mittel { LUX($fair) }, hell { LUX($bright) }.
bright-plants-short = Pflanzen grob: { $least ->
    [hardly_any] { $most ->
        [hardly_any] kaum eine wächst
       *[other] höchstens wenig Licht
      }
    [low] { $most ->
        [low] wenig Licht
       *[other] wenig bis mittel Licht
      }
    [medium] { $most ->
        [medium] mittel Licht
       *[other] mittel bis viel Licht
      }
   *[high] auch viel Licht
  }.
bright-nobody = Unsere Worte: Ein Bedarf ist unbekannt.
bright-do-night = Nachts wach: kein heller Platz nötig.
bright-do-first = Erst Wärme, UV, Schatten, Nachtruhe.
# Only with: $for_fair
bright-do-lumens = Dann machen { LUMENS($for_fair) } es mittelhell.
bright-do-closer = Dann bringt eine LED-Leiste mehr Licht.
bright-do-shade = Lass auch einen schattigen Rückzugsort.

## Warum
bright-why-nobody = Niemand hat veröffentlicht, wie viel Lux eines dieser Tiere braucht, mag oder nicht verträgt. Dunkel, mittel und hell sind darum unsere Worte, nach offenem Schatten und tiefer Sonne. Sie sind kein Bedarf und kein Urteil über dich.
bright-why-lamp = { $by_watts ->
    [yes] Die Lumen habe ich aus den Watt geschätzt, das ist grob. Besser sind die Lumen vom Etikett.
   *[no] Ich habe die Lumen vom Etikett genommen und so verteilt, wie solche Lampen strahlen.
  } Am unsichersten: { LIST($doubts, join: "list-and") }. Ein Luxmeter ist besser als alles Rechnen.
bright-doubt-label = das Etikett
bright-doubt-watts = Lumen aus Watt
bright-doubt-age = Alter und Staub
bright-doubt-walls = was die Wände zurückwerfen
bright-doubt-tape = der Abstand
bright-doubt-beam = die Form des Lichtkegels
bright-doubt-beam_untold = der Winkel des Lichtkegels, den du nicht genannt hast
bright-doubt-reflector = der Reflektor
bright-doubt-dome = der Schirm um die Lampe
bright-taken-length = Ich habe { LENGTH($long) } leuchtende Länge angenommen. Sonst sag mir length:.
bright-taken-beam = Ich habe einen Lichtkegel von { ANGLE($beam) } angenommen. Er steht auf der Packung: beam:36.
bright-taken-reflector = Ich habe einen Reflektor hinter der Röhre angenommen. Ohne ihn sind es zwei Drittel davon: reflector:no.
bright-why-several = Licht zählt zusammen. Ich hänge die Lampen nebeneinander über den Platz, so dicht wie es geht, einen Strahler in die Mitte, jede in ihrer Höhe. Jede kann für sich daneben liegen.
bright-why-left-out = Ausgelassen habe ich, wovon niemand Lumen oder Watt genannt hat, und wovon Lux nichts sagen: { LIST($left_out) }. Eine UV-Röhre gibt weniger Licht als eine weiße. Es ist also etwas heller, als ich sage.
bright-why-meter = Ein Handgerät ist auf etwa ein Fünftel genau. Halt es flach auf Höhe des Rückens, nach oben.
bright-why-phone = Ein Handy sieht Farben auf seine Art und nur in eine Richtung. Es zeigt, welcher von zwei Plätzen heller ist, aber nicht, wie hell.
bright-why-eye = Lux sind nach unseren Augen gewichtet. Sie passen zu weißen Lampen und sagen nichts über rote, blaue oder UV-Lampen.
bright-why-plants = Für Pflanzen habe ich Lux in das Licht umgerechnet, das sie nutzen. Ohne Messgerät dafür ist das grob.

## Schritte
bright-step-first = Sorg zuerst für Wärme, UV, Schatten und eine dunkle Nacht: check sagt dir, was fehlt. Helligkeit kommt danach.
bright-step-night = Am Tag reicht gewöhnliches Licht, mit einem dunklen Versteck. Nachts bleibt es dunkel.
# Only with: $for_fair
bright-step-lumens = Etwa { LUMENS($for_fair, form: "range") } aus solchen Lampen in diesem Abstand machen den Platz mittelhell. Miss danach die kühle Seite neu: Jedes Watt wird zu Wärme.
bright-step-closer = Eine weiße LED-Leiste über der hellen Hälfte bringt Licht und wenig Wärme. Miss danach die kühle Seite neu.
bright-step-shade = Gib dem Tier einen Rückzugsort unter { LUX($retreat) }, einen warmen und einen kühlen.
bright-step-measure = Lies ein Luxmeter flach auf Höhe des Rückens ab: am Sonnenplatz, in der hellen Hälfte, im Versteck.
bright-step-dark = Nachts gehen alle Lampen aus, auch die hellen.

## Zahlen
bright-label-spot = Sonnenplatz
bright-spot = etwa { LUX($spot) } ({ LUX($spot, form: "range") })
bright-label-lamp = Lampe
bright-lamp-told = { $count ->
    [one] { CAP($lamp, form: "a") }
   *[other] { $count } davon nebeneinander: { NAME($lamp) }
  }, { LUMENS($flux) }{ $by_watts ->
    [yes] {" "}aus den Watt geschätzt ({ LUMENS($flux, form: "range") })
   *[no] {""}
  }, { LENGTH($distance) } Abstand
bright-label-gives = Davon
bright-gives = { NAME($lamp) }: { LUX($gives) }
bright-label-patch = Noch halb so hell
bright-patch = { LENGTH($along) } längs und { LENGTH($across) } quer
bright-label-cool = Kühle Seite
# Only with: $cool
bright-cool = etwa { LUX($cool) } direkt von der Lampe ({ LUX($cool, form: "range") })
bright-label-retreat = Schatten
bright-retreat-told = bleibt unter { LUX($retreat) }: ein Luxmeter im Versteck zeigt es
bright-label-bands = Unsere Stufen
bright-bands-sun = mittel etwa { LUX($fair) }, hell etwa { LUX($bright) }; helle Hälfte { LUX($half) }, Versteck unter { LUX($retreat) }; für Tiere der offenen Sonne
bright-bands-part_sun = mittel etwa { LUX($fair) }, hell etwa { LUX($bright) }; helle Hälfte { LUX($half) }, Versteck unter { LUX($retreat) }; für Tiere aus Sonne und Schatten
bright-bands-forest = mittel etwa { LUX($fair) }, hell etwa { LUX($bright) } auf einem kleinen Fleck; sonst { LUX($half) }, Versteck unter { LUX($retreat) }; für Tiere aus Wald und Schatten
# Only with: $animal
bright-bands-night = kein heller Platz: { NAME($animal) } ist nachts oder in der Dämmerung wach; am Tag gewöhnliches Licht, Versteck unter { LUX($retreat) }
bright-label-plants = Pflanzen
bright-plants-told = grob { NUMBER($photons) } µmol/m²/s, { NUMBER($day) } mol/m² in { HOURS($hours) }{ $told ->
    [yes] {""}
   *[no] {" "}(die Stunden sind geschätzt)
  }: { $least ->
    [hardly_any] { $most ->
        [hardly_any] kaum eine Pflanze wächst, manche bleiben am Leben
       *[other] bestenfalls Pflanzen für wenig oder mittleres Licht
      }
    [low] { $most ->
        [low] Pflanzen für wenig Licht
       *[other] Pflanzen für wenig bis mittleres Licht
      }
    [medium] { $most ->
        [medium] Pflanzen für mittleres Licht
       *[other] Pflanzen für mittleres bis viel Licht
      }
   *[high] auch Pflanzen für viel Licht
  }

## Draußen
bright-column-place = Wo
bright-column-lux = Wie hell
# Only with: $month
bright-row-sun = { $noon ->
    [none] Volle, hohe Sonne
   *[some] Mittagssonne bei { ANGLE($noon) }, { $month }
  }
bright-row-shaded = Offener Schatten
bright-row-overcast = Trüber Tag
bright-row-room = Beleuchtetes Zimmer
bright-cell-sun = { LUX($sun, form: "range") }
bright-cell-shaded = { LUX($shade, form: "range") }
bright-cell-overcast = { LUX($overcast, form: "range") }
bright-cell-room = { LUX($room, form: "range") }

## Ohne Zahl
bright-without-title = Wie hell es sein soll
bright-without-nothing_told = Dazu muss ich deine Lampe kennen.
# Only with: $distance
bright-without-too_near = So nah verbrennt es: { LENGTH($distance) }.
bright-without-coloured = Bei farbigen Lampen sagen Lux nichts.
bright-without-no_lumens = Für diese Röhre habe ich keine Lumen.
# Only with: $fair_flux
bright-without-how_many = Etwa { LUMENS($fair_flux) } für mittlere Helle.
bright-without-how_many_night = Keine: Es braucht keinen hellen Platz.
# Only with: $bright_flux
bright-many-bright = Etwa { LUMENS($bright_flux) } für einen hellen.
bright-without-do-nothing_told = Nenn mir Art, Lumen und Abstand.
# Only with: $nearest
bright-without-do-too_near = Halte { LENGTH($nearest) }. Frag basking.
bright-without-do-coloured = Nachts aus, und nicht für Helligkeit.
bright-without-do-no_lumens = Steht auf der Packung: lumens: dazu.
bright-without-do-how_many = Erst Wärme, UV, Schatten, Nachtruhe.
bright-without-do-how_many_night = Tags gewöhnliches Licht, nachts dunkel.
bright-without-step-nothing_told = Nenn mir die Lampe, ihre Lumen und den Abstand: bright lamp:led bar lumens:4000 distance:40cm. Oder lies ein Luxmeter flach auf Höhe des Rückens ab: bright reading:6000.
# Only with: $lamp, $nearest
bright-without-step-too_near = Häng diese Lampe ({ NAME($lamp) }) mindestens { LENGTH($nearest) } vom Tier weg, hinter einen Schutzkorb, und richte dich nach dem Thermometer: Frag basking. Wie hell sie ist, kommt danach.
bright-without-step-coloured = Rote, blaue und violette Lampen sind für ein Luxmeter dunkel und für ein Tier hell. Nimm am Tag weißes Licht und nachts keines.
bright-without-step-no_lumens = Niemand hat das sichtbare Licht von UV-Röhren für Reptilien veröffentlicht. Es ist weniger als das einer weißen Röhre. Mit den Lumen von der Packung kann ich rechnen.
# Only with: $fair_flux, $bright_flux, $lamp, $distance
bright-without-step-how_many = Mit dieser Lampe: { NAME($lamp) }, { LENGTH($distance) } Abstand. Dann { LUMENS($fair_flux, form: "range") } für mittel und { LUMENS($bright_flux, form: "range") } für hell, in unseren Worten. Mehrere Lampen zählen zusammen. Fang klein an.
bright-without-step-how_many_night = Ein gewöhnliches weißes Licht am Tag reicht, mit einem dunklen Versteck darunter.

## Vorsicht
bright-care-led = Eine weiße LED gibt gar kein UV, auch keine mit Vollspektrum: Das gilt unseren Augen. Sie ersetzt nie die UV-Röhre.
bright-care-led-short = Weiße LED ersetzt nie die UV-Röhre.
bright-care-uv = Zähl das Licht dieser Lampe nicht als UV. Das sagt nur ein UV-Messgerät, oder eine UV-Röhre im richtigen Abstand.
bright-care-uv-short = Licht ist kein UV: frag das extra.
bright-care-lux = Ein Luxmeter misst kein UV: Ein Platz kann hell sein und kein UV haben.
bright-care-lux-short = Lux sagen nichts über UV.
bright-care-glass = Glas und Kunststoff lassen das Licht durch und halten UVB zurück. Hell hinter der Scheibe ist kein UV.
bright-care-glass-short = Durch Glas: Licht ja, UVB nein.
bright-care-pale = Ein helles oder sehr junges Tier verträgt vielleicht weniger Licht. Es muss jeden hellen Platz verlassen können. Frag in der Tierarztpraxis nach, wenn es blinzelt.
bright-care-pale-short = Hell gefärbt oder jung? Mehr Schatten.
bright-care-heat = Jedes Watt wird zu Wärme. Miss nach jeder neuen Lampe die kühle Seite neu.
bright-care-eyes = Nackte LED-Chips und Entladungslampen blenden: nach unten richten, Streuscheibe davor, nicht hineinsehen.

## Das Bild
bright-picture-note = Jeder Schritt der Skala ist zehnmal so hell. Wie viel dein Tier braucht, hat niemand veröffentlicht.
