### Erinnerungen.

## Woran eine erinnert
remind-what = { $about ->
    [advised] ansehen, was Helfer raten
    [case] { remind-case } noch mal ansehen
    [ended] Helfer haben deinen Fall beendet
    [retarget] Zielwerte haben sich geändert
   *[other] { remind-asked }
  }{ $enclosure ->
    [none] {""}
   *[some] {" "}({ $enclosure })
  }
remind-asked = { $about ->
    [meter] UV messen
    [tube] UV-Röhre tauschen
    [season] Zeitschaltuhr auf die Jahreszeit stellen
   *[check] Temperaturen und Abstand prüfen
  }
remind-label = Erinnerung { $number }
remind-row = { CAP($what) }: { MOMENT($due) }
# Only with: $every
remind-each = { $every ->
    [one] jeden Tag
   *[other] alle { $every } Tage
  }
# Only with: $every
remind-every = Sie kommt { remind-each } wieder.

## Angelegt
remind-will = Ich erinnere dich am { MOMENT($due) }.
remind-for = Woran: { $what }.
remind-where = { $here ->
    [yes] Sie kommt in diesem Kanal
   *[no] Sie kommt als Direktnachricht
  }{ $every ->
    [none] .
   *[other] , danach { remind-each }.
  }
remind-care-zone = Ich habe UTC als deine Zeitzone genommen. Nenn mir deine: mine prefer zone:Europe/Berlin
remind-step-snooze = Verschieb sie: remind snooze number:{ $number } until:in 2 days
remind-step-off = Lösch sie: remind off number:{ $number }

## Aufgelistet
remind-list-title = Deine Erinnerungen
remind-count = { $count ->
    [0] Du hast keine Erinnerungen.
    [one] Du hast { $count } Erinnerung.
   *[other] Du hast { $count } Erinnerungen.
  }
remind-column-number = Nummer
remind-column-what = Woran
remind-column-when = Wann
remind-column-where = Wo
remind-number = { $number }
remind-repeated = { $what }{ $every ->
    [none] {""}
   *[other] , { remind-each }
  }
remind-when = { MOMENT($due) }
remind-trouble = { $trouble ->
    [dm_closed] angehalten: Du nimmst keine Direktnachrichten an
    [channel_gone] den Kanal gibt es nicht mehr, darum als Direktnachricht
    [no_right] angehalten: Dort darf ich nicht schreiben
    [refused] angehalten: Discord hat sie immer wieder abgelehnt
   *[other] { $stopped ->
        [yes] angehalten
       *[no] { $here ->
            [yes] ein Kanal
           *[no] Direktnachricht
          }
      }
  }
remind-step-make = Leg eine an: remind me about:meter when:in 3 months

## Verschoben, gelöscht
remind-snoozed = Erinnerung { $number } ist verschoben
remind-comes = Sie kommt am { MOMENT($due) }.
remind-step-all = Alle: remind list
remind-off = Erinnerung { $number } ist gelöscht
remind-gone = Sie kommt nicht mehr.
remind-step-left = Was noch da ist: remind list

## Wenn sie fällig ist
remind-due = { $here ->
    [yes] eine Erinnerung:
   *[no] Eine Erinnerung:
  } { $what }. { $about ->
    [meter] Schreib den Wert auf mit /mine reading.
    [tube] Merk dir den Tag: /mine save mit age:new.
    [season] Frag /hours nach den Zeiten.
   *[check] Frag /temps mit deinen Messwerten.
  }
remind-came = { $about ->
    [advised] Helfer raten dir etwas{ $enclosure ->
        [none] {""}
       *[some] {" "}(zu { $enclosure })
      }, und noch ist nicht alles getan. Sieh nach mit /mine case und schreib auf, was du misst.
    [case] Sieh dir { remind-case } noch mal an: Es hat sich etwas bewegt, oder eine Woche lang nichts. Frag /cases show im Kanal für Helfer.
    [ended] Helfer haben deinen Fall beendet{ $enclosure ->
        [none] {""}
       *[some] {" "}(zu { $enclosure })
      }. Ihr Rat ist gelöscht; dein Terrarium und seine Messwerte bleiben.
   *[other] Ein Zielwert, den ich dir genannt habe, hat sich geändert{ $enclosure ->
        [none] {""}
       *[some] {" "}(zu { $enclosure })
      }: { LIST($moved, join: "list-semi") }. Sieh es dir an mit /mine show.
  }
remind-case = { $case ->
    [none] den Fall
   *[other] Fall { $case }
  }
# Only with: $case
remind-shared = Jemand zeigt den Helfern dieser Gruppe { $enclosure ->
    [none] ein Terrarium
   *[some] „{ $enclosure }“
  }: Fall { $case }.
remind-late = Sie kommt zu spät: Fällig war sie am { MOMENT($due) }.
remind-moved = In deinem Kanal darf ich nicht mehr schreiben, darum kommt sie hier.

## Ihre Knöpfe
remind-button-day = Morgen
remind-button-week = In einer Woche
remind-button-month = In einem Monat
remind-button-off = Nicht mehr erinnern
remind-put-off = Verschoben auf { MOMENT($until) }.
remind-not-yours = Das ist keine Erinnerung von dir, oder es gibt sie nicht mehr: siehe /remind list.
