### Eine Datei, die zurückgenommen ist.

mine-import-title = Die Datei ist zurückgenommen
mine-import-head = { $enclosures ->
    [one] { $enclosures } Terrarium
   *[other] { $enclosures } Terrarien
  } mit { $readings ->
    [one] { $readings } Messwert
   *[other] { $readings } Messwerten
  } gespeichert, wie in der Datei.
mine-import-rest = Was nicht in der Datei steht, bleibt, wie es war.
mine-import-reminders = Erinnerungen kommen als Direktnachricht. Vergangene fallen weg.
mine-import-cases = Fälle werden nicht wieder geteilt: Dazu braucht es jedes Mal dein Ja.
mine-import-step = Sieh es dir an: mine list
mine-import-elsewhere = { $elsewhere ->
    [one] Ein Messwert, den du einer anderen Gruppe gegeben hast, bleibt
   *[other] { $elsewhere } Messwerte, die du anderen Gruppen gegeben hast, bleiben
  } weg: Nimm die Datei auch dort zurück.
