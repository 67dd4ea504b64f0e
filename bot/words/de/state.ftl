### Facts: StateTold
### Was der Zustand eines Tieres ändert, und dass davon nichts bekannt ist.

## Kurz
state-short-young = { $less_uv ->
    [yes] Sehr jung: halbes UV.
   *[no] { $water ->
        [none] Sehr jung: dieselben Werte.
       *[some] Sehr jung: Wasser ab { TEMP($water, form: "low") }.
      }
  }
state-short-pale = { $less_uv ->
    [yes] Wenig Pigment: halbes UV.
   *[no] Wenig Pigment: dieselben Werte.
  }
state-short-gravid = { $surface ->
    [none] { $brood ->
        [yes] Trächtig: dieselben Werte.
       *[no] Trächtig: Dafür kenne ich keine Zahlen. Dieselben Werte.
      }
   *[some] Trächtig: am Sonnenplatz höchstens { TEMP($surface, form: "high") }.
  }
# Only with: $surface
state-short-female = Weibchen: am Sonnenplatz höchstens { TEMP($surface, form: "high") }.
state-short-ill = { $night ->
    [none] Krank: dieselben Werte.
   *[some] Krank: nachts heizen unter { TEMP($night, form: "high") }.
  }
state-short-quarantine = Quarantäne: dieselben Werte.

## Warum
state-why-young = { $less_uv ->
    [yes] Sehr junge Tiere bekommen hier halb so viel UV wie ihre Art: unser Urteil.
   *[no] Für sehr junge Tiere kenne ich keine eigenen Zahlen. Die Werte sind die der erwachsenen.
  }
state-why-pale = { $less_uv ->
    [yes] Haut und Augen mit wenig Pigment vertragen weniger Licht. Halb so viel UV wie sonst ist unser Urteil. Gemessen hat das niemand, von dem ich weiß.
   *[no] Haut und Augen mit wenig Pigment vertragen weniger Licht: Gib mehr dunkle Verstecke. Sonst ändert sich keine Zahl.
  }
state-why-gravid = { $surface ->
    [none] { $brood ->
        [yes] Ein trächtiges Weibchen behält die Werte seiner Art. Lass es zwischen warm und kühl wählen.
       *[no] Für trächtige Tiere dieser Art kenne ich keine Zahlen. Es bleibt bei den Werten der Art: nicht mehr Wärme, nicht mehr UV, und ein freier Weg zur kühlen Seite.
      }
   *[some] Bei Weibchen halten viele den Sonnenplatz kühler, damit sie weniger Eier bilden. Aus dem Gedächtnis, ungeprüft.
  } Presst es, ist es schwach oder bewegt es sich nicht mehr: Ruf heute eine reptilienkundige Tierarztpraxis an.
state-why-female = Bei Weibchen halten viele den Sonnenplatz kühler, damit sie weniger Eier bilden. Aus dem Gedächtnis, ungeprüft.
state-why-ill = { $night ->
    [none] Für kranke Tiere dieser Art kenne ich keine Zahlen. Es bleibt bei den Werten der Art: Mehr Wärme oder UV heilt nichts.
   *[some] Ohne kühle Nächte bleibt ein krankes Reptil in seinem Bereich: unser Urteil. Tagsüber nie wärmer als bei seiner Art üblich.
  }
state-why-quarantine = In Quarantäne behält es die Werte seiner Art, in einem kahlen Becken, das leicht zu reinigen ist, mit einem Versteck an jedem Ende.
state-care-ill = Es ist krank: Frag eine reptilienkundige Tierarztpraxis, bevor du Wärme oder UV änderst.

## Neben einem Wert
state-note-uvi = halb so viel wie für andere seiner Art: unser Urteil
state-note-night_floor = keine kühlen Nächte, solange es krank ist
state-note-water = wärmer als für erwachsene
state-note-basking_surface = kühler als für Männchen
