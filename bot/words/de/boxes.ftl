### Alle Terrarien auf einen Blick.

boxes-title = Alle deine Terrarien
boxes-head = { $wrong ->
    [0] Kein letzter Messwert ist daneben{ $count ->
        [one] .
       *[other] , in { $count } Terrarien.
      }
    [one] In { $wrong } von { $count } stimmt etwas nicht.
   *[other] In { $wrong } von { $count } stimmt etwas nicht.
  }
boxes-worst = { $name }: { LIST($off, join: "list-with") }.
boxes-off = { $what } { $judged }
boxes-due = { $waiting ->
    [one] Bei { $waiting } davon ist etwas fällig.
   *[other] Bei { $waiting } davon ist etwas fällig.
  }
boxes-column-box = Terrarium
boxes-column-off = Daneben
boxes-column-due = Fällig
boxes-box = { $name }{ $animal ->
    [none] {""}
   *[some] , { NAME($animal) }
  }
boxes-cell-off = { $off_count ->
    [0] nichts
   *[other] { LIST($off, join: "list-with") }
  }
boxes-cell-due = { $due_count ->
    [0] nichts
   *[other] { LIST($due_said, join: "list-with") }
  }
# Only with: $tube
boxes-due-tube = neue UV-Lampe (in Betrieb seit { DAY($tube) })
boxes-due-reading = UV messen
boxes-due-reminder = { $reminders ->
    [one] { $reminders } Erinnerung
   *[other] { $reminders } Erinnerungen
  }
boxes-step-one = Sieh eins an: mine show
boxes-step-lamps = Deine Lampen und ihr Alter: mine lamps
boxes-step-timer = Ein Zeitplan für alle: mine timer
