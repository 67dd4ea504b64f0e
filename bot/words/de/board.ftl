### Aushänge: angeheftete Übersichten, die sich selbst aktuell halten.

board-title = Aushang: { board-topic }
board-topic = { $topic ->
    [distances] Abstände
    [temperatures] Temperaturen
    [first_day] der erste Tag
    [welcome] Willkommen
   *[guide] der Leitfaden
  }

## In einem Kanal gewünscht
board-will-changed = Er ändert sich gleich an seinem Platz.
board-will-unpinned = Er kommt gleich hierher, aber anheften darf ich ihn nicht.
board-will-noted = Gemerkt, aber noch darf ich ihn hier nicht aufhängen.
board-will-posted = Er wird gleich hier aufgehängt und angeheftet.
board-kept-up = { $promise ->
    [changed] In einem Kanal gibt es zu jedem Thema einen.
   *[other] Ab dann halte ich ihn aktuell.
  }
board-lacking = In diesem Kanal fehlen mir Rechte: { LIST($lacking, join: "list-and") }.
board-step-rights = Lass mir hier geben, was mir fehlt, dann: board refresh
board-step-list = Sieh nach, ob er hängt: board list
board-step-remove = Nimm ihn ab: board remove topic:{ $typed }
board-step-pin = Hefte diesen Aushang hier im Kanal an: { $line }

## Die Liste
board-list-title = Die Aushänge deiner Gruppe
board-list = { $count ->
    [0] Deine Gruppe hat noch keine Aushänge.
    [one] 1 Aushang.
   *[other] { $count } Aushänge.
  }
board-column-topic = Thema
board-column-animal = Tiere
board-column-channel = Kanal
board-column-standing = Zustand
board-column-change = Zuletzt geändert, von wem (UTC)
board-animals = { $any_animal ->
    [no] keine
   *[yes] { LIST($animals) }
  }
board-channel = { $channel }
board-stands-leaving = wird abgenommen
board-stands-pinned = angeheftet
board-stands-waiting = wartet darauf, aufgehängt zu werden
board-stands-troubled = { $trouble ->
    [channel_gone] den Kanal gibt es nicht mehr
    [no_right] ich darf den Kanal nicht sehen oder nicht darin schreiben: Gib mir dort View Channel, Send Messages, Embed Links und Read Message History
    [no_pin_right] hängt, ist aber nicht angeheftet: Ich brauche dort das Recht Pin Messages
    [pins_full] hängt, ist aber nicht angeheftet: Im Kanal sind schon 250 Nachrichten angeheftet, nimm erst eine ab
    [no_file_right] hängt ohne sein Bild: Ich brauche dort das Recht Attach Files
   *[refused] Discord lehnt es ab (ein archivierter Thread muss wieder geöffnet werden); ich versuche es jede Stunde
  }
board-change = { DAY($day) }, { CLOCK($clock) }, von { $who }: erst { $before }, dann { $after }
board-unlogged = steht nicht mehr im Protokoll
board-step-preview = Sieh dir zuerst einen an: board preview topic:distances
board-step-log = Sieh dir ältere Änderungen an: server changes

## Neu angesehen, abgenommen
board-refresh-title = Die Aushänge werden neu angesehen
board-refresh = { $count ->
    [0] Deine Gruppe hat noch keine Aushänge.
    [one] Ich sehe mir 1 Aushang neu an.
   *[other] Ich sehe mir { $count } Aushänge neu an.
  }
board-refresh-how = Wo es nötig ist, hänge ich auf, hefte an oder ändere.
board-step-stand = Sieh nach, was damit ist: board list
board-removed = Er wird gleich abgenommen und gelöscht.
board-step-left = Sieh nach, was noch hängt: board list

## Darunter
board-button = Über diesen Aushang
board-about = Dieser Aushang hält sich selbst aktuell: Ändern sich die Zahlen der Gruppe oder des Bots, ändert er sich auch. Wer die Gruppe betreut, verwaltet ihn mit /board.

## Warum nicht
board-no-animal = Für welches Tier ist der Aushang? Nenn es, oder leg zuerst das Tier der Gruppe fest.
board-no-such = In diesem Kanal hängt nichts zu diesem Thema.

## Mehrere Tiere
board-distances-title = Röhrenabstände
board-distances-head = Von der leuchtenden Röhre bis zum Rücken, in einer Leuchte mit poliertem Reflektor.
board-label-distances = { $animal ->
    [none] UV-Index { UVI($wanted, form: "range") }
   *[some] { CAP($animal) }, UV-Index { UVI($wanted, form: "range") }
  }
board-lamp = { $own ->
    [none] { SHARE($strength, form: "given") }: { LIST($cells, join: "list-semi") }
   *[some] { $own }: { LIST($cells, join: "list-semi") }
  }
board-step-distance = Andere Röhre oder Leuchte? Frag: distance
board-needs-title = Zielwerte
board-needs-head = Jedes Tier hat seine eigenen Werte.
board-needs-star = * aus dem Gedächtnis, ungeprüft
# Only with: $animal
board-label-needs = { CAP($animal) }
board-need = { $aim ->
    [none] { $label }: hier nicht bekannt
   *[some] { $is_unchecked ->
        [yes] { $label }: { $aim } *
       *[no] { $label }: { $aim }
      }
  }
board-step-needs = Wer jeden Wert nennt, und was ein Tier noch braucht? Frag: needs

## Was ein Tier braucht
board-needs = Das sind die Zielwerte, und woher ich sie habe.
board-column-what = Was
board-column-aim = Zielwert
board-column-known = Woher bekannt
board-step-order = Miss zuerst die Fläche am Sonnenplatz, dann die kühle Seite, dann die warme.
board-care-start = Das sind Werte für den Anfang: Deine eigenen Messwerte zählen mehr, und eine reptilienkundige Tierarztpraxis mehr als beides.

## Der erste Tag
board-day-title = Der erste Tag: was du misst, der Reihe nach
board-day-head = Neun Dinge. Nimm ein Maßband, ein Infrarot-Thermometer und einen digitalen Fühler.
board-day-before = Lass Lampen und Wärme einen Tag laufen und miss, bevor das Tier einzieht. Jetzt ist es viel leichter.
board-day-tube = Miss mit dem Maßband von der Röhre bis zum Rücken: von der Unterseite der leuchtenden Röhre gerade hinunter.
board-day-basking = Miss nach zwei bis drei Stunden mit Licht die Fläche am Sonnenplatz mit dem Infrarot-Thermometer.
board-day-cool = Miss die Luft auf der kühlen Seite mit einem digitalen Fühler, auf Höhe des Tieres am fernen Ende.
board-day-warm = Miss erst dann die Luft auf der warmen Seite, mit dem Fühler außerhalb des Lichtkegels.
board-day-night = Notier, wie kalt es nachts wird. Dass es nachts kühler wird, ist gut.
board-day-lights = Licht 12 Stunden an, 12 Stunden aus, mit einer Zeitschaltuhr.
board-day-shade = Prüf, ob es Schatten ohne UV gibt und auf jeder Seite ein Versteck.
board-day-again = Miss alles nach einer Woche noch einmal, und nach jeder Änderung.

## Willkommen
board-welcome-title = Neu hier? Frag mich nach Licht und Wärme
board-welcome-head = Ich sage dir, wie weit weg eine UV-Lampe hängt, wie warm jede Stelle sein darf und was du zuerst misst.
board-welcome-alone = Drück einen Knopf. Meine Antwort siehst nur du.
board-welcome-animal = „Ich habe ein neues Tier“: Sag mir, wie groß das Terrarium ist, und du bekommst einen Plan für den Anfang.
board-welcome-check = „Prüf meinen Aufbau“: Sag, was wo hängt, und ich sage, was du zuerst änderst.
board-welcome-reading = „Stimmt dieser Messwert?“: Sag, was dein UV-Messgerät zeigt und aus welchem Abstand.
board-welcome-wrong = „Etwas stimmt nicht“: Erzähl es mit deinen Worten.
board-welcome-urgent = Rauch oder Funken: Sicherung raus, Hände weg. Ein Tier ist schlaff, verbrannt oder ringt nach Luft: sofort in eine reptilienkundige Tierarztpraxis, vor jeder Frage hier.
