### Ein gespeicherter Aufbau und seine Messwerte.

## Der Aufbau
home-label-animal = Tier
# Only with: $animal
home-told-animal = { NAME($animal) }
home-label-lamp = UV-Lampe
# Only with: $lamp_known
home-told-lamp = { $lamp_known }{ $percent ->
    [none] {""}
   *[some] { $is_t5 ->
        [yes] , { SHARE($percent, form: "given") }
       *[no] , { SHARE($percent, form: "given") } auf dem Etikett
      }
  }
home-label-fixture = Leuchte
# Only with: $reflector
home-told-fixture = { $reflector ->
    [polished] polierter Reflektor
   *[plain] einfach, ohne Reflektor
  }
home-label-long = Länge der Röhre
# Only with: $tube_length
home-told-long = { LENGTH($tube_length) }
home-label-since = In Betrieb seit
# Only with: $since
home-told-since = { DAY($since) }
home-label-tubes = Nebeneinander
# Only with: $tubes
home-told-tubes = { $tubes } Stück{ $gap ->
    [none] {""}
   *[some] , { LENGTH($gap) } von Mitte zu Mitte
  }
home-label-screen = Gitter
# Only with: $screen
home-told-screen = { $screen }
home-screen-glass = Glas, durch das kein brauchbares UV kommt
home-screen-plastic = Kunststoff, durch den kein brauchbares UV kommt
home-label-lid = Deckel
# Only with: $lid
home-told-lid = { $lid ->
    [glass] Glas: Es lässt kein brauchbares UV durch
   *[plastic] Kunststoff: Er lässt kein brauchbares UV durch
  }
home-label-distance = Röhre bis Rücken
# Only with: $distance
home-told-distance = { LENGTH($distance) }
home-label-size = Terrarium
# Only with: $length
home-told-size = { $depth ->
    [none] { LENGTH($length) } lang
   *[some] { $height ->
        [none] { LENGTH($length) } mal { LENGTH($depth) }
       *[some] { LENGTH($length, units: "first") } × { LENGTH($depth, units: "first") } × { LENGTH($height, units: "first") } ({ LENGTH($length, units: "second") } × { LENGTH($depth, units: "second") } × { LENGTH($height, units: "second") })
      }
  }

## Die Messwerte
home-what-uvi = UV-Index
home-what-basking_surface = Sonnenplatz
home-what-warm_air = Warme Seite
home-what-cool_air = Kühle Seite
home-what-night_air = Tiefster Wert der Nacht
home-last-uvi = UV-Index zuletzt
home-last-basking_surface = Sonnenplatz zuletzt
home-last-warm_air = Warme Seite zuletzt
home-last-cool_air = Kühle Seite zuletzt
home-last-night_air = Nacht zuletzt
# Only with: $uvi
home-uvi = { UVI($uvi, form: "given") }{ $at ->
    [none] {""}
   *[some] {" "}bei { LENGTH($at) }
  }
# Only with: $temp
home-temp = { TEMP($temp) }
home-standing = { $told }: { $verdict }. Ziel: UV-Index { UVI($wanted, form: "range") }.
home-labelled = { $label }: { $told }
