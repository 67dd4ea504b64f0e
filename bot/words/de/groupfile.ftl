### Alles über eine Gruppe als Datei, zurückgenommen oder gelöscht.

groupfile-title = Alles, was diese Gruppe festgelegt hat
groupfile-head = Hier ist die Datei deiner Gruppe.
groupfile-alone = Heb sie da auf, wo nur ihr sie lesen könnt.
groupfile-step-back = So nehme ich sie zurück: server import file:server.json

groupfile-taken-title = Die Datei ist zurückgenommen
groupfile-taken = Gemerkt wie in der Datei: { $figures ->
    [one] 1 Zahl
   *[other] { $figures } Zahlen
  } und { $channels ->
    [one] 1 Kanal
   *[other] { $channels } Kanäle
  }.
groupfile-taken-rest = Was nicht darin steht, bleibt, wie es war.
groupfile-taken-boards = { $boards ->
    [one] 1 Aushang kommt gleich wieder
   *[other] { $boards } Aushänge kommen gleich wieder
  }, wenn der Kanal auf diesem Server ist.
groupfile-step-look = Sieh es dir an: server show

groupfile-sure-title = Alles über diese Gruppe löschen?
groupfile-sure = Noch ist nichts gelöscht.
groupfile-sure-what = Ein Ja löscht endgültig Einstellungen, eigene Zahlen, Messwerte der Halter, die Liste der Aushänge, Zählungen und das Protokoll.
groupfile-sure-reminders = Auch Erinnerungen in den Kanälen hier sind dann weg.
groupfile-step-copy = Heb zuerst eine Kopie auf: server export
groupfile-step-sure = Dann lösch alles: server forget sure:yes
groupfile-gone-title = Alles über diese Gruppe ist gelöscht
groupfile-gone = { $found ->
    [yes] Alles über diese Gruppe ist endgültig gelöscht.
   *[no] Es gab nichts zu löschen.
  }
groupfile-gone-boards = { $boards ->
    [one] 1 angehefteter Aushang bleibt als Nachricht in seinem Kanal.
   *[other] { $boards } angeheftete Aushänge bleiben als Nachrichten in ihren Kanälen.
  }
groupfile-taken-readings = In der Datei { $readings ->
    [one] steht ein Messwert
   *[other] stehen { $readings } Messwerte
  } eurer Halter. Damit kommen sie nicht zurück: Jeder Halter bringt die eigenen mit mine import.
