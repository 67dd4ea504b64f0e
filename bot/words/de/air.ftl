### Wie viel Watt die Luft braucht

air-title = Watt für { TEMP($aim) } in der Luft

## Die Antwort in Kürze
air-need = Etwa { WATTS($need) } für { TEMP($aim) }.
air-range = Es können { WATTS($need, form: "range") } sein, alle Lampen zusammen.
air-none = Keine Wärme: Der Raum hat { TEMP($room) }.
air-none-why = Ohne kühleren Raum kommt die Luft nicht auf { TEMP($aim) }.
air-lamp-fine = Ja: Deine Lampe mit { WATTS($power) } reicht.
air-lamp-short = Nein: { WATTS($power) } reichen nicht.
air-lamp-just = Vielleicht: { WATTS($power) } reichen knapp.
air-lamp-maybe_more = { WATTS($power) } können zu viel sein.
air-lamp-more = Nein: { WATTS($power) } sind zu viel.
air-lamp-harms = Nein: Nimm hier keine { WATTS($power) }.
air-harms-why = Die Luft hätte dann { TEMP($held) }. Nichts darin bleibt kühl genug.
air-takes = Für { TEMP($aim) } braucht es { WATTS($need, form: "range") }, wohl { WATTS($need) }.
air-assumed = Angenommen: { $place ->
    [above_mesh] Lampe über dem Gitter.
   *[inside] Lampe innen.
  }
air-do-spot = Stell zuerst den Sonnenplatz ein.
air-do-measure = Miss 2 Stunden später die kühle Seite.
air-do-room = Heiz den Raum, sonst Brandgefahr.
air-do-cool = Kühl den Raum. Keine Lampe hilft hier.
air-do-off = Lass die Lampe aus. Nimm eine schwächere.

## Warum
air-why-range = Boden, Gitter, Lüftung und Zugluft musste ich annehmen. Es kann ein Drittel mehr oder weniger sein.
air-why-open = Gitter an allen Seiten lässt die Luft durch, darum hat es die Luft des Raums, kaum wärmer. Eine Lampe wärmt, was sie bescheint.
air-why-ends = Die Watt gelten für die kühle Seite, wenn die Wärme auf der warmen Seite ist.

## Schritte
air-step-off = Lass die Lampe aus. Nimm eine schwächere und häng sie näher an den Sonnenplatz, oder lass mehr Luft durch den Deckel. Dann frag mit ihren Watt noch einmal.
air-step-cool = Kühl den Raum, oder lass mehr von seiner Luft durch. Keine Lampe hilft hier.
air-step-read-again = Miss die kühle Seite dann noch einmal in der heißesten Stunde des Tages.
air-step-spot = Stell zuerst den Sonnenplatz ein, mit einer Lampe. Ihre Wärme zählt zu diesen Watt.
air-step-measure = Miss dann nach zwei bis drei Stunden die kühle Seite.
air-step-second = Noch zu kühl? Häng eine zweite, schwächere Wärmelampe zur Mitte hin auf, oder ein Wärmepaneel mit Thermostat. Nimm nicht einfach eine viel stärkere Lampe für den Sonnenplatz.
air-step-cover = Deck die Rückseite und ein oder zwei Seiten mit etwas ab, das nicht brennt, weg von den Lampen, und lass Front und Deckel offen. Zugluft kühlt dann weniger.
air-step-leaks = Viel entweicht durch das Gitter. Deck einen Teil davon ab, weg von den Lampen, mit etwas, das nicht brennt.

## Zahlen
air-label-aim = Luft, die es sein soll
air-asked = { TEMP($aim) }, wie von dir genannt
# Only with: $animal, $known
air-target = { TEMP($target, form: "range") }{ $has_best ->
    [yes] , am besten { TEMP($target) },
   *[no] {""}
  } auf der kühlen Seite für { NAME($animal, form: "acc") } ({ $known })
air-label-need = Watt
air-need-told = etwa { WATTS($need) }, von { WATTS($need, form: "range") }, alle Lampen zusammen
air-label-lost = Wohin sie geht
air-lost = etwa { WATTS($walls) } ({ SHARE($walls_share) }) durch Wände, Boden und Deckel, { WATTS($leaving) } ({ SHARE($leaving_share) }) mit der Luft, die entweicht
air-label-warm = Warme Seite dann
air-warm-told = etwa { TEMP($warm) }
air-label-lamp = Lampe
air-lamp-told = { $all_inside ->
    [yes] { WATTS($power) }, { air-where }. Alles davon wärmt innen.
   *[no] { WATTS($power) }, { air-where }. Etwa { WATTS($inside) } davon wärmen innen.
  } Sie allein hält etwa { TEMP($held) } auf der kühlen Seite, von { TEMP($held, form: "range") }, und { TEMP($warm_held) } auf der warmen.
air-where = { $place ->
    [above_mesh] über dem Gitter
   *[inside] innen
  }{ $place_told ->
    [no] {" "}(du hast place: nicht genannt, also angenommen; place:above ist über dem Gitter)
   *[yes] {""}
  }

## Das Bild
air-picture-warm = dann etwa { TEMP($warm) }
air-picture-cool = { TEMP($aim) } sollen es bleiben
air-picture-walls = { SHARE($walls_share) } durch Wände, Boden und Deckel
air-picture-leaving = { SHARE($leaving_share) } mit der Luft
