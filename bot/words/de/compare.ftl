### Zwei Aufbauten unter einer UV-Röhre nebeneinander

compare-title = Zwei Aufbauten nebeneinander

## Die Antwort in Kürze
compare-head-near_first = Der erste ist für jede Röhre zu nah.
compare-head-near_second = Der zweite ist für jede Röhre zu nah.
compare-head-near_both = Beide sind für jede Röhre zu nah.
compare-head-first = Nur der erste passt dort.
compare-head-second = Nur der zweite passt dort.
compare-head-both = Beide passen dort.
compare-head-neither = Keiner passt dort sicher.
compare-first = Erster: UV-Index { UVI($there, form: "doubt") }, { $judged }.
compare-second = Zweiter: UV-Index { UVI($there, form: "doubt") }, { $judged }.
compare-times-first = Der erste gibt { DIGITS($times) }-mal so viel UV.
compare-times-second = Der zweite gibt { DIGITS($times) }-mal so viel UV.
compare-times-alike = Beide geben fast gleich viel UV.
compare-unsure = Echte Lampen: auch umgekehrt möglich.
compare-do-away = Jede Röhre: { LENGTH($nearest) } oder mehr.
compare-do-meter = Ziel am UV-Messgerät: { UVI($wanted, form: "range") }.

## Schritte
compare-step-measure = Miss von der Unterseite der leuchtenden Röhre bis zum Rücken des Tieres am Sonnenplatz.
compare-step-meter = Prüf den Aufbau, den du nimmst, mit einem UV-Messgerät auf Rückenhöhe: { UVI($wanted, form: "range") } ist richtig.
compare-step-ask = Frag distance nach einem der beiden, dann siehst du, wo du anfängst und wie du weiterrückst.

## Warum
compare-why = Jeder Bereich sagt, was eine solche Lampe geben kann. Der Unterschied ist sicherer als jede der beiden Zahlen: Es ist dieselbe Lampe, oder sie liegen weit genug auseinander.
compare-why-unsure = Die Bereiche überlappen: Zwei Lampen einer Klasse sind so verschieden, dass eine starke der schwächeren Sorte mehr geben kann als eine schwache der stärkeren.

## Nebeneinander
compare-column = Was
compare-column-first = Erster
compare-column-second = Zweiter
compare-row-there = UV-Index dort
compare-row-verdict = Urteil
compare-row-hangs = Richtiger Platz
compare-row-lamp = Röhre
compare-row-between = Gitter
compare-row-at = Abstand
compare-row-age = Alter
compare-cell-there = { UVI($there, form: "doubt") }
compare-cell-verdict = { $judged }
compare-cell-hangs = { $hangs ->
    [none] keiner, oder es hängt von der Länge ab
   *[some] { LENGTH($hangs, form: "range") }
  }
compare-cell-lamp = { $lamp }, { $long_known ->
    [unknown] Länge nicht genannt
   *[other] { LENGTH($long) }
  }
compare-cell-between = { $between }
compare-cell-at = { LENGTH($at) }
compare-cell-age = { $months ->
    [none] nicht genannt
   *[some] { NUMBER($months) } Monate
  }

## Bild
compare-picture-below = Durchgezogen: der erste. Gestrichelt: der zweite.
compare-picture-aim = Ziel { UVI($wanted, form: "range") }
compare-picture-note = Blass: was eine solche Lampe geben kann.
compare-picture-alt = Diagramm: Der UV-Index zweier Aufbauten fällt mit dem Abstand. Ziel ist { UVI($wanted, form: "range") }.
# Only with: $group
compare-by-one = Einer nach { $keepers } Haltern der Gruppe.
# Only with: $group, $newest
compare-group = { $lamp }: { $keepers } Halter deiner Gruppe haben Röhren dieser Klasse gemessen, zuletzt am { DAY($newest) }. Ihre Werte gelten hier statt meiner Zahl.
