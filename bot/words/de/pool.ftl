### Was die Messwerte einer Gruppe zeigen, und ihre Messwerte für die Moderatoren

pool-title = Was die Messwerte deiner Gruppe zeigen
pool-head = { $count ->
    [0] Deine Gruppe hat noch keine Messwerte.
    [one] Ein Messwert ist da.
   *[other] { $count } Messwerte von { $keepers ->
        [one] einem Halter
       *[other] { $keepers } Haltern
      }.
  }
pool-none = Alle hier können welche geben und zurücknehmen.
# Only with: $known
pool-first = { CAP($name) }: { SHARE($known) } dessen, was ich erwarte.
pool-counting = { $counting ->
    [0] Meine Antworten gehen noch nicht danach. Dafür braucht es { $enough } Halter mit einer Art Röhre.
    [one] Bei einer Art Röhre gehen meine Antworten danach.
   *[other] Bei { $counting } Arten Röhre gehen meine Antworten danach.
  }
pool-step-give = Gib einen: mine offer
pool-step-back = Nimm deine zurück: mine withdraw
pool-label-newest = Der letzte
# Only with: $newest
pool-newest = { DAY($newest) }
pool-too-few = { $keepers ->
    [one] ein Halter
   *[other] { $keepers } Halter
  }: zu wenige für eine Zahl
pool-class = { SHARE($strength, form: "given") }, { $fixture ->
    [polished] poliert
   *[plain] einfach
  }
pool-fixture-polished = alle polierten
pool-fixture-plain = alle einfachen
pool-own = eure Lampe „{ $name }“
pool-age-unknown = Alter nicht gesagt
pool-age-burning_in = erste 100 Stunden
pool-age-settled = bis ein halbes Jahr
pool-age-ageing = halbes bis ein Jahr
pool-age-old = über ein Jahr
# Only with: $there, $spread
pool-kind = UV-Index { UVI($there) } bei { LENGTH($at) } ohne etwas dazwischen, auf { SHARE($spread) } genau, von { $keepers } Haltern. Eigene Zahlen habe ich dafür nicht.
pool-kind-too-few = { $keepers ->
    [one] ein Halter
   *[other] { $keepers } Halter
  }: zu wenige für eine Zahl
pool-label-fading = In 30 Tagen
# Only with: $of
pool-label-fading-of = { CAP($of) }, in 30 Tagen
# Only with: $loss
pool-fading = { SHARE($loss) } weniger, in der Mitte von { $tubes } Röhren von { $keepers } Haltern
pool-fading-too-few = { $keepers ->
    [one] ein Halter hat
   *[other] { $keepers } Halter haben
  } eine Röhre wieder gemessen: zu wenige für eine Zahl
pool-column-kind = Art
pool-column-keepers = Von
pool-column-middle = Gemessen
pool-column-known = Mit mir
pool-cell-keepers = { $keepers }
pool-cell-keepers-long = { $keepers } Halter
# Only with: $middle, $spread
pool-cell-middle = { SHARE($middle) } ± { SHARE($spread) }
# Only with: $known
pool-cell-known = { SHARE($known, form: "range") }
pool-cell-none = –
pool-why-expected = 100 % ist, was ich von so einer Röhre in ihrem Alter und Abstand erwarte. „Gemessen“ ist die Mitte der Halter, jeder einmal gezählt, und wie weit sie auseinanderliegen. Beim Alter gilt es gegen eine neue Röhre.
pool-why-known = „Mit mir“ wägt die Messwerte gegen das, was ich vorher dachte. Wenige Messwerte stützen sich auf alle Röhren der Gruppe und diese auf meine eigenen Zahlen. Neun von zehn liegen dazwischen.
pool-why-person = Von weniger als { $least } Haltern zeige ich keine Zahl: Sie würde verraten, was einer davon gemessen hat.

## Das Bild
pool-picture-title = Wie stark die Röhren deiner Gruppe sind
pool-picture-below = Volle Balken gelten in den Antworten hier
pool-picture-axis = % dessen, was ich erwarte
pool-picture-expected = was ich erwarte
pool-picture-note = Im Balken liegen neun von zehn solcher Röhren, der Punkt ist ihre Mitte.
pool-picture-alt = Balken: wie stark die Röhren der Gruppe nach ihren Messwerten sind, gegen das, was erwartet war.
pool-alt-each = { LIST($each) }.
# Only with: $known, $of_one
pool-alt-line = { $name }: { SHARE($known) }, eine einzelne { SHARE($of_one, form: "range") }, von { $keepers } Haltern{ $counts ->
    [yes] , gilt in Antworten
   *[no] {""}
  }

## Für Moderatoren
pool-list-title = Messwerte deiner Gruppe
pool-list = { $count ->
    [0] Noch hat niemand einen Messwert gegeben.
    [one] Ein Messwert. Niemand sieht, wessen er ist.
   *[other] { $count } Messwerte. Niemand sieht, wessen sie sind.
  }
# Only with: $gone
pool-cleared = Messwert { $gone } ist endgültig gelöscht.
pool-far = { $odd ->
    [one] Einer sieht falsch aus: Er steht zuerst.
   *[other] { $odd } sehen falsch aus: Sie stehen zuerst.
  }
pool-number = { $number }{ $far ->
    [yes] {" "}(weit weg)
   *[no] {""}
  }
pool-label-more = Dazu
pool-more = { $more } weitere, ältere oder wie erwartet. Nimm weg, was falsch ist, dann rücken die nächsten nach.
pool-step-clear = Einen wegnehmen: server readings clear:NUMMER, mit seiner Nummer
pool-step-all = Sieh, was sie zusammen zeigen: mine group
pool-step-tell = Sag deinen Haltern davon: mine offer
pool-why-far = Markiert ist, was mehr als drei Streuungen von seiner Art entfernt liegt. Das macht ein Tippfehler, ein falscher Aufdruck oder ein schmutziges Messgerät, und ab und zu eine Lampe, die wirklich so ist.
pool-no-such = Kein Messwert hier hat diese Nummer.
