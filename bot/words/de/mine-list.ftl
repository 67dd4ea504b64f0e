### Alles, was für jemanden gespeichert ist.

mine-list-title = Was ich für dich aufhebe
mine-list-head = { $enclosures ->
    [0] Kein Terrarium
    [one] { $enclosures } Terrarium
   *[other] { $enclosures } Terrarien
  } und { $reminders ->
    [0] keine Erinnerung
    [one] { $reminders } Erinnerung
   *[other] { $reminders } Erinnerungen
  }.
mine-list-alone = Nur du kannst das sehen.
mine-list-label-given = An Gruppen gegeben
mine-list-given = { $given ->
    [one] ein Messwert
   *[other] { $given } Messwerte
  }, ohne deinen Namen

## Die Terrarien
mine-list-column-box = Terrarium
mine-list-column-animal = Tier
mine-list-column-readings = Messwerte
mine-list-column-last = Zuletzt
mine-list-box = { $name }
mine-list-animal = { $animal ->
    [none] nicht genannt
   *[some] { NAME($animal) }
  }
mine-list-readings = { $readings }
mine-list-last = { $last ->
    [none] noch nie
   *[some] { DAY($last) }
  }

## Schritte
mine-list-step-look = Sieh eins an: mine show
mine-list-step-keep = Speichere eins: mine save name:Pebble's box animal:bearded dragon
mine-list-step-export = Alles als Datei: mine export
mine-list-step-forget = Alles löschen: mine forget
