### Terrarien, die jemand den Helfern einer Gruppe zeigt.

## Geteilt
cases-share-title = „{ $name }“ den Helfern zeigen?
cases-share-not-yet = Noch sieht es niemand.
cases-share-see = Sie sähen Aufbau und Messwerte.
cases-share-nameless = Dein Name steht nicht dabei.
cases-share-do = Einverstanden? mine share mit sure:yes
cases-share-step-sure = Zeig es ihnen: mine share name:{ $name } sure:yes
cases-share-step-end = Beende es, wann du willst: mine unshare name:{ $name }
cases-share-who = Helfer sind die Moderatoren hier und alle, die in dem Kanal fragen, den sie für Helfer gewählt haben. Sie sehen den Namen des Terrariums, den Aufbau, jeden Messwert, das Bild und was geraten wurde. Sie wählen nur Zahlen und feste Möglichkeiten; gespeichert wird kein Text.
cases-share-rest = Nach 30 Tagen Ruhe wird es vergessen.
cases-shared-title = „{ $name }“ ist geteilt
cases-shared = Helfer sehen es als Fall { $number }.
cases-shared-do = Raten sie etwas, sage ich dir Bescheid.
cases-shared-step-look = Sieh nach, was sie raten: mine case name:{ $name }
cases-not-shared = „{ $name }“ ist nicht geteilt.
cases-unshared-title = „{ $name }“ siehst nur du
cases-unshared = Fall { $number } ist weg.
cases-unshared-advice = { $advised ->
    [0] Geraten hatte noch niemand etwas.
    [one] { $advised } Rat ist mit ihm verschwunden.
   *[other] { $advised } Ratschläge sind mit ihm verschwunden.
  }
cases-unshared-step = Dein Terrarium und seine Messwerte bleiben: mine show name:{ $name }

## Ein Fall
cases-title = Fall { $number }: „{ $name }“
cases-over = { cases-title }
cases-undone = { $count ->
    [0] Noch hat niemand etwas geraten.
   *[other] { $undone ->
        [0] Alles, was geraten wurde, ist getan.
        [one] { $undone } Rat ist noch offen.
       *[other] { $undone } Ratschläge sind noch offen.
      }
  }
cases-asleep = Kein Helfer sieht es: Sie sind umgezogen.
# Only with: $next
cases-next = Als Nächstes: { $next }
cases-until = Ohne Bewegung vergessen am { DAY($until) }.
cases-do-keeper = Schreib danach auf, was du misst.
cases-do-helper = Rate Zahlen oder einen Messwert.
cases-step-read = Schreib auf, was du misst, dann erfahren sie es: mine reading name:{ $name } cool:26C
cases-step-end-own = Beenden: mine unshare name:{ $name }
cases-step-advise = Rate etwas: cases advise number:{ $number } measure:cool
cases-step-end = Beenden: cases end number:{ $number }
cases-whose = Was hier als Rat steht, kommt von Leuten dieser Gruppe und nicht von mir. Jede Zahl halte ich gegen die Grenzen des Tiers, soweit der Aufbau bekannt ist. Ob etwas getan ist, folgt aus dem gespeicherten Aufbau und den gespeicherten Messwerten.
cases-label-advice = { $to_do ->
    [yes] Offen
   *[no] Getan
  }
cases-advised = { $said } ({ DAY($day) })
cases-column-what = Was
cases-column-before = Beim Teilen
cases-column-since = Seitdem
cases-unread = nicht gemessen

## Was geraten werden kann
# Only with: $at
cases-advice-hang = Häng die Röhre { LENGTH($at) } über den Rücken.
cases-advice-tube = { $percent ->
    [none] Tausch die Röhre gegen eine neue.
   *[some] Tausch die Röhre gegen eine neue mit { SHARE($percent, form: "given") }.
  }
cases-advice-unscreen = Häng die Röhre unter das Gitter.
# Only with: $temp $where
cases-advice-bring = { $where }: auf { TEMP($temp) } bringen.
# Only with: $where
cases-advice-read = { $where }: noch mal messen.
cases-advice-vet = Geh mit dem Tier in eine reptilienkundige Tierarztpraxis.

## Für Helfer
cases-list-title = Fälle dieser Gruppe
cases-list-head = { $count ->
    [0] Gerade zeigt niemand ein Terrarium.
    [one] { $count } Fall{ $unanswered ->
        [0] {""}
       *[other] , noch ohne Antwort
      }.
   *[other] { $count } Fälle{ $unanswered ->
        [0] {""}
       *[other] , { $unanswered } noch ohne Antwort
      }.
  }
cases-list-private = Behalt für dich, was du hier siehst.
cases-list-step = Sieh einen an: cases show number:{ $number }
cases-column-number = Fall
cases-column-box = Terrarium
cases-column-undone = Offen
cases-column-moved = Zuletzt bewegt
cases-line-number = { $number }
cases-line-box = { $name }{ $animal ->
    [none] {""}
   *[some] , { NAME($animal) }
  }
cases-line-undone = { $count ->
    [0] noch kein Rat
   *[other] { $undone } von { $count }
  }
cases-line-moved = { DAY($moved) }
cases-advised-title = Rat für Fall { $number }
cases-advised-head = Gemerkt: { $count ->
    [one] Wer es hält, erfährt davon.
   *[other] Wer es hält, erfährt von allen { $count }.
  }
cases-advised-step = Sieh den Fall an: cases show number:{ $number }
cases-advised-why = Sobald etwas gemessen oder geändert wird, sage ich dir Bescheid, sonst in 7 Tagen. Als getan gilt es, sobald der gespeicherte Aufbau oder ein Messwert es zeigt.
cases-ended-title = Fall { $number } ist beendet
cases-ended = Aller Rat zu „{ $name }“ ist weg.
cases-ended-told = Wer es hält, erfährt davon.
cases-ended-step = Was noch da ist: cases list

## Nicht möglich
cases-no-right = Fälle sehen nur Helfer, in ihrem Kanal.
cases-no-such = Einen Fall { $number } gibt es hier nicht.
cases-nothing = In deiner Frage steht kein Rat.
cases-cannot-be = Diese Zahl kann nicht stimmen.
cases-past-limit = Das führte über eine Grenze hinaus. Ich gebe es nicht weiter.
