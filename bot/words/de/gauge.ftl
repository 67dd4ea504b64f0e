### Das Bild der Messwerte: ein Thermometer für jeden Ort.

gauge-title = Temperaturen für { NAME($animal, form: "acc") }
gauge-subtitle = wo jedes Thermometer hinkommt, was es zeigt, was richtig ist
gauge-axis = Temperatur
gauge-note = Balken: was richtig ist. Raute: was du gemessen hast, mit seiner Unsicherheit.
gauge-alt = Thermometer: Temperaturen für { NAME($animal, form: "acc") }.
gauge-label = { $place ->
    [basking_surface] Fläche am Sonnenplatz
    [cool_air] Kühle Seite
    [warm_air] Warme Seite
    [water] Wasser
   *[night_air] Nacht
  }
gauge-where = { $place ->
    [basking_surface] Miss die Fläche am Sonnenplatz, mit dem Infrarot-Thermometer
    [cool_air] Miss die Luft auf der kühlen Seite, mit digitalem Fühler auf Höhe des Tieres
    [warm_air] Miss die Luft auf der warmen Seite, mit digitalem Fühler neben dem Strahl
    [water] Miss das Wasser, mit einem Wasserthermometer
   *[night_air] Miss das Kälteste der Nacht, mit einem Thermometer, das es sich merkt
  }
# Only with: $wanted
gauge-wanted = { $place ->
    [night_air] geheizt wird unter { gauge-span }
   *[other] richtig sind { gauge-span }
  }
# Only with: $wanted
gauge-span = { $has_best ->
    [yes] { TEMP($wanted, form: "range") }, am besten { TEMP($wanted) }
   *[no] { TEMP($wanted, form: "range") }
  }
# Only with: $read
gauge-read = zeigt { TEMP($read) }
gauge-verdict = { $read ->
    [none] noch nicht gemessen
   *[some] { $differ ->
        [yes] Halter uneins
       *[no] { gauge-judged }
      }
  }
gauge-judged = { $verdict ->
    [none] kein Ziel bekannt
    [far_too_low] { verdict-far_too_low }
    [low] { verdict-low }
    [probably_low] { verdict-probably_low }
    [fine] { verdict-fine }
    [cannot_tell] { verdict-cannot_tell }
    [probably_high] { verdict-probably_high }
    [high] { verdict-high }
   *[dangerous] { verdict-dangerous }
  }
gauge-told = { gauge-label }: { $read ->
    [none] { gauge-verdict }.
   *[some] { gauge-read }, { gauge-verdict }.
  }
