### Was man fragen kann.

help-free = ask wie warm braucht es eine Bartagame
help-title = Was du fragen kannst
help-head = Frag mich in deinen eigenen Worten.
help-units = In cm oder Zoll, °C oder °F: Ich zeige beides.
help-do-free = Zum Beispiel: { help-free }
help-care = Ich sehe dein Tier nicht und weiß nur, was du mir sagst. Mit einem kranken Tier ruf eine reptilienkundige Tierarztpraxis an.
help-care-short = Tier krank? Ruf eine Tierarztpraxis an.
help-step-free = Nicht sicher, welche? Sag es mit deinen Worten: { help-free }
help-step-more = Mehr zu einer Frage: help { $first }
help-name = { $name }
help-name-group = { $name } …
help-what = { $what }
help-names = { LIST($names, join: "list-with") } (mehr: help { $wish })
help-label-uv = UV
help-label-warmth = Wärme
help-label-all = Alles andere
help-topic-uv = UV: Röhren, Gitter, Abstände
help-topic-warmth = Wärme: Lampen, Heizer, Nächte, Stunden
help-topic-all = Der ganze Aufbau und alles andere
help-group-mine = Deine eigenen Terrarien und Messwerte
help-group-remind = Erinnerungen: messen, tauschen, nachsehen
help-group-cases = Für Helfer: geteilte Terrarien
help-group-server = Für die Moderation: Einstellungen und eigene Zahlen
help-group-board = Für die Moderation: angeheftete Tafeln

## Eine Gruppe
help-title-group = Was du hier fragen kannst
help-about = { $about }.
help-do-example = Zum Beispiel: { $example }
help-do-first = Mehr zu einer: help { $first }
help-column-question = Frage
help-column-what = Was sie beantwortet

## Eine Frage
help-title-one = So fragst du: { $name }
help-is = { $what }.
help-example = Zum Beispiel: { $example }
help-typed = { $typed }
help-for = { $what }{ $choose ->
    [none] {""}
   *[some] {" "}({ LIST($choices, join: "list-or") })
  }{ $needed ->
    [yes] {" "}– nötig
   *[no] {""}
  }

## Keine solche Frage
help-unread = Das ist keine von meinen Fragen
help-no-question = Eine Frage „{ $wish }“ kenne ich nicht.
# Only with: $near
help-near = Meinst du { $near }?
help-do-other = Versuch: help { $example }
help-do-all = Alle Fragen: help
