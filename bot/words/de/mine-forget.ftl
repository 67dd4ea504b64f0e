### Alles über jemanden gelöscht, wenn er sicher ist.

mine-forget-ask-title = Alles löschen, was ich für dich aufhebe?
mine-forget-ask = Noch ist nichts gelöscht.
mine-forget-would = Ein Ja löscht endgültig { $enclosures ->
    [0] kein Terrarium
    [one] { $enclosures } Terrarium mit allen Messwerten
   *[other] { $enclosures } Terrarien mit allen Messwerten
  }, { $reminders ->
    [0] keine Erinnerung
    [one] { $reminders } Erinnerung
   *[other] { $reminders } Erinnerungen
  }{ $spares ->
    [0] {""}
    [one] , { $spares } Ersatzlampe
   *[other] , { $spares } Ersatzlampen
  }{ $cases ->
    [0] {""}
    [one] , { $cases } mit Helfern geteilten Fall
   *[other] , { $cases } mit Helfern geteilte Fälle
  } und deine Einstellungen.
mine-forget-would-given = Auch { $given ->
    [one] der Messwert, den du einer Gruppe gegeben hast, ist
   *[other] die { $given } Messwerte, die du Gruppen gegeben hast, sind
  } dann weg.
mine-forget-step-export = Heb zuerst eine Kopie auf: mine export
mine-forget-step-sure = Dann lösch alles: mine forget sure:yes
mine-forget-title = Alles von dir ist gelöscht
mine-forget-head = Endgültig gelöscht am { DAY($day) }.
mine-forget-backups = In Sicherungen, die vorher gemacht wurden, steht es noch, bis sie weggeworfen werden. Sie liegen bei denen, die diesen Bot betreiben.
mine-forget-label-enclosures = Terrarien
mine-forget-enclosures = { $enclosures }
mine-forget-label-readings = Messwerte
mine-forget-readings = { $readings }
mine-forget-label-reminders = Erinnerungen
mine-forget-reminders = { $reminders }
mine-forget-label-spares = Ersatzlampen
mine-forget-spares = { $spares }
mine-forget-label-cases = Fälle bei Helfern
mine-forget-cases = { $cases }
mine-forget-label-settings = Einstellungen
mine-forget-settings = { $settings ->
    [yes] gelöscht
   *[no] es gab keine
  }
mine-forget-label-given = Messwerte für Gruppen
mine-forget-given = { $given }
mine-forget-label-logs = Protokolle der Server
mine-forget-logs = { $log_lines ->
    [one] deine Nummer ist aus { $log_lines } Zeile entfernt
   *[other] deine Nummer ist aus { $log_lines } Zeilen entfernt
  }; was geändert wurde, bleibt stehen
mine-forget-label-posts = Öffentliches
mine-forget-posts = { $posts ->
    [one] deine Nummer ist aus { $posts } Zeile entfernt
   *[other] deine Nummer ist aus { $posts } Zeilen entfernt
  }; die Nachrichten bleiben in ihren Kanälen
mine-forget-label-advice = Rat für andere
mine-forget-advice = { $advice ->
    [one] deine Nummer ist aus { $advice } Rat entfernt
   *[other] deine Nummer ist aus { $advice } Ratschlägen entfernt
  }; der Rat bleibt
