### Was das Infrarotthermometer zeigt

surface-title = Mit dem Infrarotthermometer auf { surface-name }
surface-name = { $surface ->
    [slate] Schiefer
    [tile] Fliesen
    [wood] Holz
    [brick] Ziegel oder Ton
    [concrete] Beton
    [granite] Granit oder Naturstein
    [sand] Sand
    [soil] Erde
    [painted] Farbe oder Lack
    [plastic] Kunststoff
    [glass] Glas
   *[metal] blankem Metall
  }

## Die Antwort in Kürze
surface-head-right = Ja, die Anzeige stimmt ungefähr.
surface-head-hotter = Heißer als angezeigt: { TEMP($really) }.
surface-head-cooler = Kühler als angezeigt: { TEMP($really) }.
surface-range = Angezeigt { TEMP($shown) }, auf { surface-name } in Wahrheit { TEMP($really, form: "range") }.
surface-assumed-air = Angenommen: Luft { TEMP($air) }.
surface-assumed-setting = Angenommen: Gerät auf { NUMBER($setting) }.
surface-do-read = Miss senkrecht, von der Lampe weg.

## Keine Antwort
surface-unread-title = Dieser Wert taugt nichts
surface-unread-bare_metal = Nein: Blankes Metall lässt sich so nicht messen.
surface-unread-through_glass = Nein: Durch Glas lässt sich so nicht messen.
surface-unread-why-bare_metal = Es spiegelt, was ringsum ist. Die Zahl sagt nichts.
surface-unread-why-through_glass = Das Gerät hat die Scheibe gemessen und nichts dahinter.
surface-do-bare_metal = Kleb mattes Band darauf und miss das.
surface-do-through_glass = Mach auf und miss die Fläche selbst.
surface-step-bare_metal = Kleb ein Stück mattes Kreppband auf das Metall oder streich eine matte Stelle, warte zehn Minuten und miss dort.
surface-step-through_glass = Öffne die Tür oder heb den Deckel ab, setz das Tier beiseite und miss die Fläche selbst.
surface-step-stone = Noch besser: Leg einen Stein oder eine Fliese hin. An Metall unter einer Lampe verbrennt sich das Tier.

## Warum
surface-why = Ein Gerät, das auf { NUMBER($setting) } steht, nimmt an, dass jede Fläche so viel ihrer Wärmestrahlung abgibt. Bei { surface-name } sind es { NUMBER($emissivity, form: "range") }. Der Rest spiegelt die Umgebung.

## Schritte
surface-step-read = Miss senkrecht von oben aus etwa { LENGTH($away) }, von der Seite, die von der Lampe abgewandt ist. Neben der Lampe siehst du nur ihr Spiegelbild.
surface-step-highest = Nimm den höchsten von drei Werten dort, wo das Tier liegt.
surface-step-tape = Zur Sicherheit: Kleb ein Stück mattes Kreppband auf die Stelle, warte zehn Minuten und miss das Band.

## Zahlen
surface-label-shown = Angezeigt
surface-shown = { TEMP($shown) }
surface-label-really = In Wahrheit
surface-really = { TEMP($really, form: "range") }. Das Gerät selbst kann noch ein oder zwei Grad danebenliegen.
surface-label-emissivity = Emissionsgrad
surface-emissivity = { surface-name } { NUMBER($emissivity, form: "range") }, das Gerät { $setting_told ->
    [yes] steht auf { NUMBER($setting) }
   *[no] steht auf { NUMBER($setting) } (angenommen)
  }
surface-label-mirrored = Gespiegelt
surface-mirrored = { $air_told ->
    [yes] Luft von { TEMP($air) }
   *[no] ein Raum von { TEMP($air) }, angenommen, weil du die Luft nicht genannt hast
  }

## Vorsicht
surface-care = Miss nie durch Glas oder auf blankem Metall, und halt den Laser von Augen fern.
surface-care-short = Laser nie auf Augen richten.

## Das Bild
surface-picture-read = angezeigt { TEMP($shown) }
surface-picture-really = wirklich { TEMP($really, form: "range") }
