### Das Bild der Messwerte: ein Thermometer für jeden Ort.

gauge-title = Temperaturen für { NAME($animal, form: "acc") }
gauge-box = Ein Beispiel-Terrarium: Es zählen nur die Orte.
gauge-own = Das Terrarium hat deine Maße; was du nicht gesagt hast, ist an üblicher Stelle gezeichnet.
gauge-length = { LENGTH($seen) }
gauge-note = Balken: was richtig ist. Raute: was du gemessen hast, mit seiner Unsicherheit.
gauge-label = { $place ->
    [basking_surface] Fläche am Sonnenplatz
    [cool_air] Kühle Seite
    [warm_air] Warme Seite
    [water] Wasser
   *[night_air] Nacht
  }
gauge-tool = { $place ->
    [basking_surface] mit dem Infrarot-Thermometer
    [cool_air] digitaler Fühler auf seiner Höhe
    [warm_air] digitaler Fühler neben dem Strahl
    [water] Wasserthermometer
   *[night_air] Thermometer, das sich das Kälteste merkt
  }
# Only with: $wanted
gauge-wanted = { $place ->
    [night_air] geheizt wird unter { gauge-span }
   *[other] richtig sind { gauge-span }
  }
# Only with: $wanted
gauge-span = { TEMP($wanted, form: "range") }
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
    [none] { $wanted ->
        [none] { gauge-verdict }
       *[some] { gauge-wanted }
      }.
   *[some] { gauge-read }, { gauge-verdict }.
  }

## Ein Platz für sich
gauge-place-basking_surface = Fläche am Sonnenplatz
gauge-place-warm_air = Warme Seite
gauge-place-cool_air = Kühle Seite
gauge-place-night_air = Nacht
