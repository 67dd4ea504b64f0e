### Wer für eine Gruppe was geändert hat.

log-title = Wer was geändert hat
log-head = { $count ->
    [0] Es wurde noch nichts geändert.
    [one] Bisher eine Änderung.
   *[other] Die neuesten { $count } Änderungen.
  }
log-column-when = Wann (UTC)
log-column-what = Was
log-column-before = Vorher
log-column-after = Nachher
log-column-who = Von
log-when = { DAY($day) }, { CLOCK($clock) }

## Was
log-named = { $kind ->
    [channel] Kanal
    [screen] Gitter
    [animal] Tier
   *[lamp] Lampe
  } { $name }
log-setting = { $setting ->
    [units] steht zuerst
    [animal] übliches Tier
    [site] Adresse des Leitfadens
    [zone] Zeitzone
    [language] Sprache
    [vets] Wen ihr ruft
   [helper_role] Rolle der Helfer
   *[helpers] Kanal der Helfer
  }
log-target = Zielwert { NAME($animal) }
log-posts = Öffentliches, { $channel ->
    [none] überall
   *[some] Kanal { $channel }
  }
log-board = Aushang { $topic ->
    [distances] Abstände
    [temperatures] Temperaturen
    [first_day] erster Tag
    [welcome] Willkommen
   *[guide] Leitfaden
  }, Kanal { $channel }

## Werte
log-nothing = nichts
log-animal = { NAME($animal) }
log-animals = { LIST($animals) }
log-text = { $text }
log-public = für alle
log-private = nur wer fragt
log-shown = aufgehängt
log-rule = { $poster ->
    [everybody] alle
    [helpers] Helfer
    [moderators] Moderation
   *[none] wie üblich
  }{ $most ->
    [none] {""}
   *[other] , { $most } in der Stunde
  }

## Wer
log-person = { $person }
log-forgotten = vergessen
log-local = dieser Computer
