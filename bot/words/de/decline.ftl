### Wie eine Röhre nachlässt

decline-title = { $animal ->
    [none] Wie die Röhre nachlässt, für UV-Index { UVI($wanted, form: "range") }
   *[some] Wie die Röhre nachlässt, für { NAME($animal, form: "your-acc") }
  }

## Die Antwort in Kürze, nach Messwerten
decline-head-unsound = Diese Werte können nicht alle stimmen.
decline-head-above = Zu stark: UV-Index { UVI($now, form: "doubt") }.
decline-head-below = Zu schwach: UV-Index { UVI($now, form: "doubt") }.
# Only with: $month
decline-head-fading = Sie verliert etwa { SHARE($month) } im Monat.
decline-head-steady = Noch sehe ich kein Nachlassen.
decline-head-few = Noch unklar: zu wenige Messwerte.
decline-aim = Ziel: { UVI($wanted, form: "range") }.
# Only with: $falls
decline-leaves-already = Unter { UVI($low, form: "given") } etwa seit { DAY($falls) }.
# Only with: $falls
decline-leaves-maybe = Vielleicht unter { UVI($low, form: "given") } seit { DAY($falls) }.
decline-leaves-unknown_today = Über heute sagen die Werte nichts.
# Only with: $falls
decline-leaves-on = Unter { UVI($low, form: "given") } etwa am { DAY($falls) }.
decline-leaves-stays = Über { UVI($low, form: "given") } mindestens bis { DAY($horizon) }.
# Only with: $earliest, $latest
decline-window-days = Vom { DAY($earliest) } bis { DAY($latest) } ist möglich.
# Only with: $latest
decline-window-now_to = Jetzt bis { DAY($latest) } ist möglich.
decline-window-now = Es kann jetzt so weit sein.
# Only with: $earliest
decline-window-earliest = Frühestens am { DAY($earliest) }.
# Only with: $old_days
decline-old = Der letzte Wert ist { $old_days } Tage alt.
decline-change-short-one_day = Nur an einem Tag gemessen.
decline-change-short-real = Zuletzt { SHARE($changed) } { decline-less }: das zählt.
decline-change-short-noise = Zuletzt { SHARE($changed) } { decline-less }: nur Streuung.
decline-less = { $less ->
    [yes] weniger
   *[no] mehr
  }
decline-do-wipe = Wisch den Sensor ab. Miss heute neu.
decline-do-farther = Häng sie zuerst weiter weg.
decline-do-sure = Miss zur Sicherheit noch einmal.
decline-do-below = Bleibt es so? Näher, wenn sicher, oder neu.
decline-do-again = { $again ->
    [none] Miss heute wieder.
   *[some] Miss wieder am { DAY($again) }.
  }

## Was keine Röhre tut
decline-odd-apart = UVI { UVI($one, form: "given") } und UVI { UVI($other, form: "given") } liegen um das Zehnfache auseinander. Fehlt da ein Komma?
decline-odd-ten_times = UVI { UVI($one, form: "given") } am { DAY($day) } ist zehnmal so viel wie sonst. Waren es { UVI($meant, form: "given") }?{ $left_out ->
    [yes] {" "}Der zählt nicht mit.
   *[no] {""}
  }
decline-odd-a_tenth = UVI { UVI($one, form: "given") } am { DAY($day) } ist ein Zehntel von sonst. Waren es { UVI($meant, form: "given") }?{ $left_out ->
    [yes] {" "}Der zählt nicht mit.
   *[no] {""}
  }
decline-odd-same_day = Am { DAY($day) } hast du UVI { UVI($one, form: "given") } und UVI { UVI($other, form: "given") } gemessen. Einer der Werte stimmt nicht.
decline-odd-stray = UVI { UVI($one, form: "given") } am { DAY($day) } passt nicht zu den anderen.{ $left_out ->
    [yes] {" "}Der zählt nicht mit.
   *[no] {""}
  }
decline-odd-rise = In { $days } Tagen von UVI { UVI($one, form: "given") } auf UVI { UVI($other, form: "given") } gestiegen. Das tut keine Röhre.
decline-odd-fade = UVI { UVI($one, form: "given") } auf { UVI($other, form: "given") } in { $days } Tagen ist für Nachlassen zu schnell.
decline-odd-why-apart = Ein fehlendes Komma macht einen Wert zehnmal zu hoch oder zu niedrig. Miss an derselben Stelle noch einmal, bevor du etwas änderst.
decline-odd-why-ten_times = Ein fehlendes Komma macht einen Wert zehnmal zu hoch. Miss an derselben Stelle noch einmal, bevor du etwas änderst.
decline-odd-why-a_tenth = Ein verrutschtes Komma macht einen Wert zehnmal zu niedrig. Miss an derselben Stelle noch einmal, bevor du etwas änderst.
decline-odd-why-same_day = Zwei Werte von einem Tag und einer Stelle müssten übereinstimmen. Miss an derselben Stelle noch einmal, bevor du etwas änderst.
decline-odd-why-stray = Ein Wert liegt weit weg von allen anderen. Miss an derselben Stelle noch einmal, bevor du etwas änderst.
decline-odd-why-rise = Nach ihren ersten 100 Stunden wird eine Röhre nicht mehr stärker. Stelle, Messgerät oder Röhre waren nicht jedes Mal dieselben. Miss an derselben Stelle noch einmal, bevor du etwas änderst.
decline-odd-why-fade = Ist der Sensor oder die Röhre schmutzig, oder war es eine andere Stelle oder ein anderes Gerät? Misst du noch einmal dasselbe, gibt die Röhre auf. Miss an derselben Stelle noch einmal, bevor du etwas änderst.

## Warum
decline-why-few = Drei oder mehr Messwerte an verschiedenen Tagen ergeben einen Verlauf.
decline-why-steady = Der Unterschied ist nicht größer, als Messwerte von selbst schwanken.

## Schritte
decline-step-wipe = Wisch den Sensor ab, und die Röhre, wenn sie kalt und der Stecker gezogen ist. Miss dann noch heute an derselben Stelle.
decline-step-below = Miss zur Sicherheit noch einmal. Frag dann distance mit readings:, ob näher noch sicher ist, oder setz eine neue Röhre ein.
decline-step-farther = Frag distance mit readings:, wie weit weg sie hängen soll.
decline-step-place = Miss die Stelle noch einmal aus und notiere sie, damit jeder Wert von dort kommt.
decline-step-mark = Miss immer an einer markierten Stelle: unter der Mitte der Röhre, den Sensor zu ihr hin, 30 Minuten nach dem Einschalten, andere Lampen aus.
decline-step-new = Eine neue Röhre: Warte ihre ersten 100 Stunden ab, miss dann und fang eine neue Liste an. { UVI($wanted, form: "range") } ist richtig.

## Zahlen
decline-label-odd = Auffällig
decline-label-now = Jetzt
decline-label-last = Zuletzt
decline-read = UV-Index { UVI($now, form: "doubt") } am { DAY($last_day) }{ $read_today ->
    [yes] , das ist heute
   *[no] {""}
  }: { $judged }
decline-read-unsound = UV-Index { UVI($now) }, gemessen am { DAY($last_day) }{ $read_today ->
    [yes] , das ist heute
   *[no] {""}
  }
decline-label-today = Heute
# Only with: $today
decline-today = etwa UV-Index { UVI($today, form: "doubt") } nach dem Verlauf
decline-label-change = Änderung
decline-change-one_day = Nur an einem Tag gemessen, also lässt sich über eine Änderung nichts sagen.
decline-change-real = Der letzte Wert ist { SHARE($changed) } { decline-less } als der erste, { $days } Tage davor. Das ist mehr, als Messwerte schwanken.
decline-change-noise = Der letzte Wert ist { SHARE($changed) } { decline-less } als der erste, { $days } Tage davor. So viel schwanken Messwerte von selbst.
decline-label-month = In einem Monat
# Only with: $month_factor
decline-month = UV-Index mal { NUMBER($month_factor, form: "doubt") }
decline-label-below = Unter UV-Index { UVI($low, form: "given") }
# Only with: $falls
decline-falls = etwa am { DAY($falls) }
decline-label-window = Zwischen wann
decline-label-again = Wieder messen
decline-again = { $again ->
    [none] heute
   *[some] am { DAY($again) }
  }, an derselben Stelle, nach 30 Minuten Brennzeit
decline-column-day = Tag
decline-column-read = UV-Index gemessen
decline-day = { DAY($day) }
decline-uvi = { UVI($read, form: "given") }

## Das Bild
decline-picture-axis = UV-Index
decline-picture-line = Ringe: deine Messwerte. Linie: gerade durch sie auf einer logarithmischen Skala. Gestrichelt: noch nicht gemessen. Blass: so kann es wirklich sein.
decline-picture-no-line = Keine Linie: Diese Werte zeigen noch keinen Verlauf.
decline-picture-alt = Diagramm: UV-Index über die Tage.
decline-picture-day = { UVI($read, form: "given") } am { DAY($day) }.
decline-picture-read = UV-Index { UVI($now) } zuletzt: { $judged }.
decline-picture-today = heute
decline-picture-months = Alter in Monaten
decline-picture-alt-age = Balken: in welchem Alter solche Lampen getauscht werden. Sein Ende ist offen.
# Only with: $months
decline-picture-age = Alter heute in Monaten: etwa { NUMBER($months) }.

## Allein nach dem Alter
decline-age-title = { $kind ->
    [t5_ho] Wann die Röhre zu tauschen ist, nach ihrem Alter
   *[other] Wann die Lampe zu tauschen ist, nach ihrem Alter
  }
decline-aged-untold = Nenn mir ihr Alter, dann weiß ich mehr.
decline-aged-new = Nein: Sie ist neu. In den ersten 100 Stunden kann sie stärker sein.
decline-aged-settled = Nein: Noch muss sie nicht getauscht werden.
decline-aged-ageing = Vielleicht: In dem Alter tauschen viele sie.
decline-aged-old = Ja: Sie ist darüber hinaus. Tausch sie, oder miss.
decline-aged-unknown = Bei { decline-kind-dat } sagt das Alter nichts. Nur ein UV-Messgerät zeigt es.
decline-usual = Halter tauschen { decline-kind } nach { decline-months }.
decline-kind = { $kind ->
    [t5_ho] eine T5-HO-Röhre
    [other_tube] eine T8- oder andere Röhre
    [compact] eine Kompaktlampe
    [metal_halide] eine Metalldampflampe
    [mercury] eine Quecksilberdampflampe
    [led] eine LED-Leiste
   *[unknown] eine unbekannte Lampe
  }
decline-kind-dat = { $kind ->
    [led] einer LED-Leiste
   *[unknown] einer unbekannten Lampe
  }
decline-months = { $one ->
    [yes] etwa { $late } Monaten
   *[no] { $soon } bis { $late } Monaten
  }
decline-do-meter = Leih dir ein UV-Messgerät: Nur das zeigt es.
decline-do-other = Ohne UV-Messgerät: Nimm eine T5-HO-Röhre.
decline-do-note = Notiere am Sockel, seit wann sie brennt.
decline-step-note = Schreib den Tag, an dem sie eingesetzt wurde, auf die Endkappe oder den Sockel.
decline-step-borrow = Leih dir ein UV-Messgerät. Miss jetzt, und in { $again_months } Monaten an derselben Stelle noch einmal. Frag dann decline mit beiden Werten.
decline-why-meter = Das Alter ist übliche Praxis. Nur ein UV-Messgerät zeigt, wie es um deine steht.
decline-why-ages = Wie diese Lampen nachlassen, hat niemand veröffentlicht. Andere UV-Lampen hielten in einer Studie Hunderte von Stunden, und in einer anderen unterschieden sie sich je nach Alter um das Zwei- bis Dreifache.
decline-label-age = Alter
decline-age = { $months ->
    [none] Nicht genannt. Damit (age:8 months) oder mit datierten Messwerten gilt die Antwort für deine.
   *[some] etwa { NUMBER($months) } Monate, wie du gesagt hast
  }
decline-label-others = Andere Lampen
decline-others = { LIST($others, join: "list-and") }: alles aus dem Gedächtnis, ohne Quelle. Über LED-Leisten ist nichts bekannt. Frag mit lamp: und der Art.
decline-other-age = { decline-kind } nach { decline-months }

## Nach der Gruppe
decline-label-group = In deiner Gruppe
decline-group = Röhren verlieren etwa { SHARE($loss) } in 30 Tagen (eine einzelne { SHARE($loss, form: "range") }), nach { $tubes } Röhren von { $keepers } Haltern, zuletzt am { DAY($newest) }.
decline-label-group-below = Bei diesem Tempo
# Only with: $below
decline-group-below = Um den { DAY($below) } wäre sie zu schwach. Nur deine eigenen Messwerte zeigen es.
