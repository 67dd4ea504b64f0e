### Die Tabelle der Abstände

card-title = { $animal ->
    [none] Röhrenabstände für UV-Index { UVI($wanted, form: "range") }
   *[some] Röhrenabstände für { NAME($animal, form: "your-acc") }
  }

## Die Antwort in Kürze
card-head-all = Alle { $asked } Kombinationen schaffen UV-Index { UVI($wanted, form: "range") }.
card-head-some = { $fits } von { $asked } Kombinationen schaffen UV-Index { UVI($wanted, form: "range") }.
card-head-none = Nein: Keine dieser Röhren gibt sicher UV-Index { UVI($wanted, form: "range") }.
card-range = Die Tabelle nennt jeden Abstand.
card-assumed = Länge nicht genannt: gilt für jede.
card-by-group = Manche nach Messungen der Gruppe.
# Only with: $group, $newest
card-group = { card-short }: { $keepers } Halter deiner Gruppe haben Röhren dieser Klasse gemessen, zuletzt am { DAY($newest) }. Nie näher, als meine eigene Zahl es zulässt.
card-do-start = Fang in der Mitte an, eher weiter weg.
card-do-far = Fang am fernen Ende an.
card-do-ask = Frag distance nach einer Röhre, dann siehst du, warum.

## Schritte
card-step-measure = Miss von der Unterseite der leuchtenden Röhre gerade hinunter bis zum Rücken deines Tieres.
card-step-start = Fang in der Mitte des Bereichs an. Nicht sicher? Geh etwas weiter weg.
card-step-far = Fang am fernen Ende an: Das nahe gilt für eine kurze Röhre. Nenn mir die Länge, dann weiß ich mehr.
card-step-meter = Hast du ein UV-Messgerät? Dann richte dich nach { UVI($wanted, form: "range") } auf Rückenhöhe.
card-step-again = Miss neu, wenn sich Röhre, Leuchte, Gitter oder Sonnenplatz ändern.

## Zahlen
card-label-sure = Wie sicher
# Only with: $sure
card-sure = In der Mitte eines Bereichs kann der UV-Index { UVI($sure, form: "range") } sein, weil Lampen verschieden sind. Ein UV-Messgerät zeigt es.
card-label-own = Von der Gruppe
card-column = Röhre und Leuchte
card-row = { $tube_long ->
    [none] { card-short }
   *[some] { card-short }, { $any_length ->
        [yes] jede Länge
       *[no] { LENGTH($tube_long) }
      }
  }
card-short = { $own ->
    [none] { SHARE($strength, form: "given") }, { tubes-fixture }
   *[some] { $own }
  }
card-screen = { $open ->
    [none] { $net ->
        [none] kein Gitter
       *[flat] Gitter hält { SHARE($blocks) } ab
      }
   *[some] Gewebe, { SHARE($open) } offen
  }
# Only with: $away
card-cell-fits = { LENGTH($away, form: "range") }
card-cell-too_weak = { card-first-too_weak }: { card-second-too_weak }
card-cell-too_close = { card-first-too_close }: { card-second-too_close }
card-cell-out_of_range = { card-first-out_of_range }: { card-second-out_of_range }
card-cell-by_length = { card-first-by_length }: { card-second-by_length }
# Only with: $away
card-first-fits = { LENGTH($away, form: "range", units: "first") }
card-first-too_weak = zu schwach
card-first-too_close = zu nah
card-first-out_of_range = zu stark
card-first-by_length = je nach Länge
# Only with: $away
card-second-fits = { LENGTH($away, form: "range", units: "second") }
card-second-too_weak = nicht nehmen
card-second-too_close = nicht nehmen
card-second-out_of_range = nicht nehmen
card-second-by_length = nenn sie mir

## Das Bild
card-picture-subtitle = Für UV-Index { UVI($wanted, form: "range") }, von der leuchtenden Röhre bis zum Rücken
card-picture-corner = T5-HO-Röhre, { $any_length ->
    [yes] jede Länge
   *[no] { LENGTH($long) }
  }
card-picture-far = { card-step-far }
card-picture-never = Nie näher als { LENGTH($nearest) }. Miss nach jeder Änderung.
# Only with: $sure
card-picture-sure = Wie sicher: { card-sure }
card-picture-alt = Tabelle: { card-title }. { card-picture-subtitle }.
card-alt-row = { $lamp }: { LIST($cells, join: "list-semi") }.
card-alt-cell = { $screen }, { $cell }
