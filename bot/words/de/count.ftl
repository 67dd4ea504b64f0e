### Was in einer Gruppe gefragt wurde, Woche für Woche, für alle, die sie betreuen.

count-title = Was hier gefragt wurde: { $span ->
    [1] diese Woche
   *[other] die letzten { $span } Wochen
  }
count-nothing = { $span ->
    [1] In dieser Woche wurde nichts gezählt.
   *[other] In den letzten { $span } Wochen wurde nichts gezählt.
  }

## Die Antwort in Kürze
count-head = { count-questions-asked } in { $count ->
    [one] 1 Woche
   *[other] { $count } Wochen
  }, seit Montag, { DAY($since) }.
count-others = { $animals ->
    [one] 1 Tier
   *[other] { $animals } Tiere
  } genannt und { $pages ->
    [one] 1 Seite
   *[other] { $pages } Seiten
  } im Leitfaden geöffnet.
count-questions-asked = { $questions ->
    [one] 1 Frage
   *[other] { $questions } Fragen
  }
count-passed-first = Oft genannt, kaum geöffnet: „{ $title }“.

## Zahlen
count-label-question = Fragen
count-label-animal = Genannte Tiere
count-label-page = Geöffnete Seiten
count-most = { LIST($listed, join: "list-with") }{ $others ->
    [0] {""}
    [one] ; 1 weiteres, zusammen { $other_times }-mal
   *[other] ; { $others } weitere, zusammen { $other_times }-mal
  }
count-text-times = { $text } { $times }
count-page-times = „{ $text }“ { $times }
count-animal-times = { NAME($animal) } { $times }
count-text = { $text }
count-animal = { NAME($animal) }
count-label-trend = Verlauf
count-trend = { $last } in der letzten ganzen Woche; { $before } in der davor
count-no-trend = kann ich sagen, wenn zwei Wochen vorbei sind
count-three = { $questions ->
    [one] 1 Frage
   *[other] { $questions } Fragen
  }, { $animals ->
    [one] 1 Tier
   *[other] { $animals } Tiere
  }, { $pages ->
    [one] 1 Seite
   *[other] { $pages } Seiten
  }
count-label-runs = Eine Woche
count-runs = von Montag bis Sonntag, nach UTC
count-runs-on = { count-runs }; die neueste ist noch nicht vorbei und zeigt, was bisher kam
count-label-kept = Was gezählt wird
count-kept = welche Art von Frage beantwortet wurde, das genannte Tier und die geöffnete Seite im Leitfaden, nur auf diesem Server. Kein Text und keine Person. Nach zwei Jahren wird es gelöscht
count-label-site = Seiten auf eurer Website
count-site = Die Antworten verlinken auf eure eigene Website. Was dort gelesen wird, zähle ich nicht. Darum kann ich nicht sagen, welche Seite kaum gelesen wird
count-label-passed = Kaum geöffnet
count-passed = „{ $title }“: { $pointed ->
    [one] 1 Antwort hat
   *[other] { $pointed } Antworten haben
  } darauf verwiesen ({ LIST($by, join: "list-with") }), geöffnet wurde sie { count-opened }
count-opened = { $opened ->
    [one] 1-mal
   *[other] { $opened }-mal
  }
count-label-how = Wie eine Seite auf diese Liste kommt
count-how = { $more_pages ->
    [one] Mindestens
    [2] Mindestens
    [3] Mindestens
   *[other] Es sind { $more_pages } Seiten, 3 stehen hier. Mindestens
  } { $least } Antworten haben darauf verwiesen, und auf je { $once_in } davon wurde sie höchstens einmal geöffnet. Warum, kann keine Zählung sagen: Vielleicht genügte die Antwort, oder niemand sieht den Knopf

## Die Tabelle
count-column-week = Woche ab
count-course-question = Fragen
count-course-animal = Tiere
count-course-page = Seiten
count-week = { DAY($monday) }{ $over ->
    [yes] {""}
   *[no] {" "}(bisher)
  }
count-questions = { $questions }
count-animals = { $animals }
count-pages = { $pages }

## Schritte
count-step-ask = Frag hier etwas, dann sieh noch einmal nach: convert 14in
count-step-further = Sieh weiter zurück: server stats weeks:104
count-step-read = Lies die Seite, und teil sie im Kanal, wenn sie hilft: guide { $slug }
count-step-pin = Hefte Links zu allen Seiten an, wo Neue zuerst lesen: board post topic:guide
count-step-span = Sieh dir eine andere Spanne an: server stats weeks:{ $other_span }

## Das Bild
count-picture-title = Was hier gefragt wurde
count-picture-since = Woche für Woche seit Montag, { DAY($since) }
count-picture-week = In der Woche ab Montag, { DAY($since) }{ $over ->
    [yes] {""}
   *[no] , bisher
  }
count-note = Eine Woche: Montag bis Sonntag, UTC.
count-note-on = Eine Woche: Montag bis Sonntag, UTC. Schraffiert: noch nicht vorbei.
count-heading = { count-of }: { $total }
count-of = { $kind ->
    [question] Fragen
    [animal] Genannte Tiere
   *[page] Geöffnete Seiten
  }
count-shown = { $most } von { $there } gezeigt
count-overlooked = Oft genannt, kaum geöffnet
count-explained = Gefüllt: geöffnet / Umriss: Antworten, die darauf verweisen
count-day = { $day }. { $month }
count-month-1 = Jan
count-month-2 = Feb
count-month-3 = März
count-month-4 = Apr
count-month-5 = Mai
count-month-6 = Juni
count-month-7 = Juli
count-month-8 = Aug
count-month-9 = Sept
count-month-10 = Okt
count-month-11 = Nov
count-month-12 = Dez

## Das Bild in Worten
count-alt = Säulen und Balken.
count-alt-one = { count-of } in dieser Woche: { $last }{ $over ->
    [yes] .
   *[no] {" "}bisher.
  }
count-alt-every = { count-of } nach Wochen, die älteste zuerst: { $every }{ $over ->
    [yes] .
   *[no] {" "}bisher.
  }
count-alt-long = { count-of } in { $count } Wochen: { $first } in der ersten, höchstens { $top }, in der Woche ab dem { DAY($top_from) }, und { $last } in der letzten{ $over ->
    [yes] .
   *[no] {" "}bisher.
  }
count-alt-most = { count-of }, am häufigsten: { LIST($listed, join: "list-with") }.
count-alt-passed = Kaum geöffnet: „{ $title }“, { count-opened }, während { $pointed ->
    [one] 1 Antwort
   *[other] { $pointed } Antworten
  } darauf verwiesen.
