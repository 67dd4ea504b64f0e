### Ein Terrarium mit seinem Verlauf.

mine-show-title = „{ $name }“
mine-show-head = { $readings ->
    [0] Noch keine Messwerte.
    [one] { $readings } Messwert bisher.
   *[other] { $readings } Messwerte { mine-show-days }.
  }
mine-show-days = { $on_days ->
    [one] an einem Tag
   *[other] an { $on_days } Tagen
  }
mine-show-no-trend = Wie sich das UV ändert, weiß ich noch nicht.
mine-show-retargeted = { $changed ->
    [one] Seither hat eure Gruppe einen Zielwert geändert.
   *[other] Seither hat eure Gruppe { $changed } Zielwerte geändert.
  }
mine-show-label-retargeted = Neuer Zielwert
mine-show-label-reckoned = Umgerechnet auf
# Only with: $at
mine-show-reckoned = { LENGTH($at) }, wo du zuletzt gemessen hast; { $elsewhere } woanders gemessen

## Schritte
# Only with: $question
mine-show-step-ask = Frag danach: { $question }
# Only with: $read_again
mine-show-step-remind = Lass dich ans nächste Messen erinnern: { $read_again }
mine-show-step-read = Schreib einen Messwert auf: mine reading name:{ $name } uvi:4.2 basking:39C

## Der Verlauf
mine-show-day = Tag
mine-show-on = { DAY($day) }
mine-show-none = –
