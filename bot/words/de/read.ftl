### Was ich aus deinen Worten gelesen habe.

read-label-animal = Gelesen: Tier
read-label-uv = Gelesen: UV
read-label-heat = Gelesen: Wärme
read-label-lamps = Gelesen: Lampen
read-label-enclosure = Gelesen: Terrarium
read-joined = { $item }{ $rest ->
    [none] {""}
   *[some] ; { $rest }
  }
read-item = { read-what }{ $value ->
    [none] {""}
   *[some] {" "}{ $value }
  } ({ $option ->
    [yes] so hast du es berichtigt
   *[no] aus „{ $words }“
  }{ $hedged ->
    [yes] , du warst nicht sicher
   *[no] {""}
  }{ $taken ->
    [unit] , die Einheit habe ich angenommen
    [blocks] , angenommen: So viel hält es ab
   *[nothing] {""}
  })
read-what = { $what ->
    [animal] Tier
    [animal_age] Alter
    [tube] Röhre
    [tubes] Röhren zusammen
    [gap] Röhren auseinander
    [across] Röhre liegt quer
    [tube_length] Länge der Röhre
    [age] Alter der Röhre
    [lamp] Lampe
    [uv_lamp] UV-Lampe
    [without] ohne
    [reflector] Reflektor
    [screen] Gitter
    [placement] Röhre liegt
    [lid] Deckel
    [distance] Röhre bei
    [distance_back] Röhre bis Rücken
    [distance_perch] Röhre bis Ast
    [distance_floor] Röhre bis Boden
    [lamp_distance] Wärmelampe bei
    [enclosure] Maße
    [enclosure_length] Länge
    [volume] Inhalt
    [material] Wände
    [basking] Sonnenplatz
    [warm] warme Seite
    [cool] kühle Seite
    [night] Nacht
    [room] Raum
    [room_night] Raum in der Nacht
    [temperature] Temperatur
    [thermometer] gemessen mit
    [watts] Watt
    [other_watts] Watt eines Heizers
    [dimmer] Dimmer
    [thermostat] Thermostat
    [hours] Stunden Licht
    [on_for] Lampe an seit
    [uvi] Messgerät zeigt UVI
    [uvi_at] Messgerät zeigt UVI
   *[text] Text
  }
read-unclear-label = Unklar
read-unclear = „{ $words }“: { $question }
read-which = Welches ist es: { LIST($names, join: "list-or") }?

## Werte
read-length = { LENGTH($length) }
read-length-range = { LENGTH($length, form: "range") }
read-temp = { TEMP($temp) }
read-temp-range = { TEMP($temp, form: "range") }
read-share = { SHARE($share) }
read-blocks = hält { SHARE($share) } ab
read-passes = lässt { SHARE($share) } durch
read-uvi = { UVI($uvi, form: "range") }
read-strength = { $percent } %{ $older ->
    [yes] {" "}(alte Angabe)
   *[no] {""}
  }
read-name = { NAME($name) }
read-text = { $text }
read-none = nein
read-uvb = UVB
read-night-heat = Wärme in der Nacht
read-fixture-polished = blank
read-fixture-plain = matt
read-placement-over = über dem Gitter
read-placement-inside = innen
read-lid-mesh = Gitter
read-lid-solid = geschlossen
read-lid-glass = Glas
read-lid-plastic = Kunststoff
read-material-glass = Glas
read-material-mesh = Gitter
read-material-wood = Holz
read-material-pvc = PVC
read-material-melamine = Melamin
read-thermometer-infrared_gun = Infrarotpistole
read-thermometer-digital_probe = Digitalfühler
read-thermometer-dial = Zeiger
read-uv-t5_ho = T5-HO-Röhre
read-uv-other_tube = T8- oder andere Röhre
read-uv-compact = Kompaktlampe
read-uv-metal_halide = Metalldampflampe
read-uv-mercury = Quecksilberdampflampe
read-uv-led = LED-Leiste
read-uv-unknown = unbekannt
