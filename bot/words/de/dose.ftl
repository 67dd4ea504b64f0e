### Das UV eines Tages

dose-title = Das UV eines Tages, und deine eigene Zeit darin

## Die Antwort in Kürze
dose-head-minutes = Ein ganzer Tag: wie { NUMBER($noon_time, form: "range") } min { dose-which-sun }.
dose-head-hours = Ein ganzer Tag: wie { NUMBER($noon_time, form: "range") } Stunden { dose-which-sun }.
dose-head-half_a_day = Ein ganzer Tag: mehr als 12 Stunden { dose-which-sun }.
# Only with: $month
dose-head-none = Die Sonne gibt dort im { $month } fast nichts.
dose-which-sun = { $month ->
    [none] Mittagssonne im Sommer
   *[some] Mittagssonne dort
  }
dose-people-minutes = Gesunde Erwachsene: bis { $minutes } min am Tag.
dose-people-hours = Gesunde Erwachsene: höchstens { HOURS($time) } am Tag.
dose-people-whole_day = Gesunde Erwachsene: { HOURS($time) } Arbeitstag.
dose-people-unknown = Wie lange du bleiben darfst, ist unklar.
dose-assumed-tube = Angenommen: kein UV unter 290 nm.
dose-assumed-other = Ihr kürzestes UV kennt niemand: bleib weg.
dose-do-shade = Gib Schatten, in den es gehen kann.
dose-do-off = Lampe aus, bevor du hineingreifst.

## Warum
dose-why-most = Das ist das Höchste: Ein Tier, das kommt und geht, bekommt weniger. Wie viel ein Reptil braucht, weiß niemand.
dose-why-length = Du hast keine Länge genannt. Darum zählt auf Armlänge die übliche Röhre, die dort am meisten gibt.
dose-why-kept = Angenommen: kein Gitter unter der eigenen Lampe der Gruppe. Ein Gitter nimmt etwas vom UV weg.

## Schritte
dose-step-shade = Lass das Tier wählen: Es muss dem UV ausweichen können. Schatten, in den es gehen kann, ist wichtiger als jede Dosis.
dose-step-off = Schalte die Lampe aus, solange du darin arbeitest. Geht das nicht, trag lange Ärmel und eine Brille, die kein UV durchlässt.

## Zahlen
dose-label-tube = Unter der Lampe
dose-tube = UVI { UVI($at, form: "range") } über { HOURS($lit) } ergibt bis zu { NUMBER($dose, form: "range") } SED. 1 SED sind 100 J/m², so wie menschliche Haut davon rot wird.
dose-label-beside = So viel wie
dose-beside-minutes = { NUMBER($noon_time, form: "doubt") } min Mittagssonne { dose-which-noon }.
dose-beside-hours = { NUMBER($noon_time, form: "doubt") } Stunden Mittagssonne { dose-which-noon }.
dose-beside-half_a_day = Mehr als 12 Stunden Mittagssonne { dose-which-noon }.
# Only with: $month
dose-beside-none = Die Mittagssonne dort ist im { $month } zu schwach für einen Vergleich.
dose-which-noon = { $month ->
    [none] bei UVI 10
   *[some] dort im { $month }
  }
dose-label-clear-day = Ein klarer Tag dort
# Only with: $share
dose-share = Das sind etwa { SHARE($share) } ({ SHARE($share, form: "range") }) der Sonne von früh bis spät.
# Only with: $times
dose-times = Das ist etwa { NUMBER($times, form: "doubt") } mal die Sonne von früh bis spät.
dose-label-sun = Die Sonne dort
dose-sun = { ANGLE($latitude) } { $south ->
    [yes] Süd
   *[no] Nord
  }, { $month }, klarer Himmel auf Meereshöhe: mittags UVI { UVI($noon_uvi, form: "doubt") }, von früh bis spät { NUMBER($dose, form: "range") } SED, { HOURS($strong) } über UVI 3. Wolken nehmen viel davon weg.
dose-label-people = Du an dieser Stelle
dose-label-arm = Auf Armlänge
dose-arm = { LENGTH($arm) } von der Lampe sind es etwa UVI { UVI($at, form: "given") }.
dose-label-at-arm = Du auf Armlänge
dose-limit-minutes = Bei UVI { UVI($at, form: "given") } erreichen Haut und Augen die Grenze für einen Arbeitstag (30 J/m²) nach etwa { $minutes } min.
dose-limit-hours = Bei UVI { UVI($at, form: "given") } erreichen Haut und Augen die Grenze für einen Arbeitstag (30 J/m²) nach etwa { HOURS($time) }.
dose-limit-whole_day = Bei UVI { UVI($at, form: "given") } bleiben Haut und Augen ganze { HOURS($time) } unter der Grenze für einen Arbeitstag (30 J/m²).

## Vorsicht
dose-care-look = Schau nie in die leuchtende Lampe: Dafür gilt deine Zeit nicht.
dose-care-whom = Die Grenze gilt für gesunde Erwachsene bei der Arbeit. Sie gilt nicht für Kinder und nicht für Haut oder Augen, die auf Licht empfindlich sind.
dose-care-waves-other = Diese Zeiten gelten nur für eine Lampe, die unter 290 nm nichts abgibt. Von dieser Art kann das niemand versprechen. Bleib darum aus ihrem Licht, und nimm nie eine mit gesprungenem Außenglas.
dose-care-waves-tube = Ich nehme an, dass die Röhre unter 290 nm nichts abgibt. Mit ihrem wahren Licht kannst du vielleicht mehrmals so lange bleiben. Eine Lampe mit kürzeren Wellen erlaubt weniger.

## Bild
dose-picture-axis = UV-Dosis (SED)
dose-picture-lamp = bis zu { NUMBER($dose, form: "range") } in { HOURS($lit) }
dose-picture-hour = Eine Stunde Mittagssonne im Sommer
dose-sun-gives = { NUMBER($dose, form: "range") }
dose-picture-minutes = höchstens { $minutes } min
dose-picture-hours = höchstens { HOURS($time) }
dose-picture-whole_day = { HOURS($time) }, noch unter der Grenze
dose-picture-note-tube = SED: wie viel UV menschliche Haut rötet. Dein Balken endet an der Grenze eines Arbeitstags, für gesunde Erwachsene.
dose-picture-note-other = SED: wie viel UV menschliche Haut rötet.
dose-picture-alt = Balken: { dose-title }.
