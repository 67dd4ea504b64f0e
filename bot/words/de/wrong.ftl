### Was jemand in einer Gruppe falsch nannte

wrong-title = Was andere falsch fanden
wrong-head = { $count ->
    [0] Niemand nannte eine Antwort falsch.
    [one] Eine Antwort wurde falsch genannt.
   *[other] { $count } Antworten wurden falsch genannt.
  }
wrong-gone = { $count ->
    [0] Es war nichts da.
    [one] Eine ist weg.
   *[other] { $count } sind weg.
  }
wrong-no-text = Ich merke mir Zahlen, nie Text oder Namen.
wrong-step-ask = Stell eine dieser Fragen selbst und sieh dir die Quellen an. Ein eigener Zielwert ersetzt eine Zahl: server target
wrong-step-file = Alle als Datei: server wrong file:csv
wrong-step-clear = Alle wegnehmen: server wrong clear:yes
wrong-week = Woche ab { DAY($monday) }
wrong-times = { $count }
wrong-column-day = Tag
wrong-column-line = Frage
wrong-day = { DAY($day) }
wrong-line = { $line }
