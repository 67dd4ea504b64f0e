### Wann das Licht an- und ausgeht

hours-title = So lange braucht { NAME($animal, form: "your") } Licht
hours-title-year = Das Licht auf { hours-place }, Monat für Monat
# Only with: $home_of
hours-title-home = Das Licht auf { hours-place }, der Mitte der Heimat { NAME($home_of, form: "your-gen") }
hours-place = { ANGLE($latitude) } { $south ->
    [yes] Süd
   *[no] Nord
  }

## Die Antwort in Kürze: ein Tag, der das ganze Jahr gleich ist
hours-simple = Ganzjährig 12 Stunden an, 12 aus.
hours-times = An um { CLOCK($on) }, aus um { CLOCK($off) }: UV und Wärme zusammen.
hours-judged-far_too_low = Nein: { HOURS($lit) } Licht sind viel zu wenig.
hours-judged-low = Nein: { HOURS($lit) } Licht sind zu wenig.
hours-judged-probably_low = Vielleicht. { HOURS($lit) } Licht sind wohl etwas wenig.
hours-judged-fine = Ja: { HOURS($lit) } Licht passen.
hours-judged-cannot_tell = Ob { HOURS($lit) } Licht passen, weiß ich nicht.
hours-judged-probably_high = Vielleicht. { HOURS($lit) } Licht sind wohl etwas viel.
hours-judged-high = Nein: { HOURS($lit) } Licht sind zu viel.
hours-judged-dangerous = Nein: { HOURS($lit) } Licht schaden.
# Only with: $target
hours-aim = { CLOCK($on) } bis { CLOCK($off) }. Gut sind { HOURS($target, form: "range") }.
hours-unjudged = Das sind { HOURS($lit) } Licht.
hours-no-target = Für { NAME($animal, form: "acc") } kenne ich keinen Zielwert.
hours-night = Ist das so gewollt? Das Licht brennt von { CLOCK($on) } bis { CLOCK($off) }.
hours-awake = { CAP($animal, form: "your") } ist am Tag wach.
hours-asleep = Das passt nur, wenn der Raum am Tag dunkel bleibt.
# Only with: $target
hours-lit-at-night = Das sind { HOURS($lit) } Licht. Gut sind { HOURS($target, form: "range") }.
hours-do-set = Stell die Zeitschaltuhr einmal, auch fürs Wochenende.
hours-do-keep = Lass die Zeitschaltuhr, wie sie ist.
hours-do-twelve = Stell die Zeitschaltuhr auf 12 Stunden am Tag.
hours-do-morning = Sonst frag hours mit on:{ CLOCK($morning) }.

## Die Antwort in Kürze: das Licht eines Jahres
hours-steady = { HOURS($least) } in jedem Monat.
hours-seasons = { HOURS($least) } im { $least_month }, { HOURS($most) } im { $most_month }.
hours-just-as-good = Anfänger? Immer 12 Stunden reicht.
hours-turned-short = Sommer im Juni. Im Süden: months:own.
hours-south-short = Dort ist im Dezember Sommer. months:turned dreht das um.
hours-no-zone-short = Ohne zone: gilt Normalzeit.
hours-do-month = Stell die Uhr jeden Monat auf ihre Zeile.
hours-no-home-title = Die Heimat kenne ich nicht
hours-no-home = Ich weiß nicht, woher { NAME($animal, form: "your") } kommt.
hours-no-home-do = Nenn mir einen Breitengrad, etwa latitude:30S.

## Warum
hours-why-flat = 12 Stunden an und 12 Stunden aus, das ganze Jahr, sind gut für { NAME($animal, form: "acc") }. Die dunklen Stunden sind genauso wichtig wie die hellen.

## Schritte
hours-step-morning = Willst du 12 Stunden am Tag? Frag hours mit on:{ CLOCK($morning) }. Licht in der Nacht passt nur, wenn der Raum am Tag dunkel bleibt, damit dein Tier trotzdem 12 dunkle Stunden hat.
hours-step-set = Stell die Zeitschaltuhr einmal auf Zeiten, die zu deinem Tag passen, und lass sie auch am Wochenende so.
hours-step-one-timer = Häng UV-Röhre und Wärmelampe an eine Zeitschaltuhr, die beider Watt aushält.
hours-step-dark = Schalte nachts alles aus, was leuchtet. Eine dunkle Nacht gehört zum Tag.
hours-step-seasons = Willst du Jahreszeiten? Frag hours mit latitude:home und deiner Zeitzone, etwa zone:Europe/Berlin.
hours-step-month = Stell die Zeitschaltuhr einmal im Monat um, auf die Zeile des Monats.
hours-step-rest = Jahreszeiten können den Appetit ändern und Paarung oder Winterruhe auslösen. Bist du darauf nicht vorbereitet, bleib bei 12 Stunden.

## Zahlen
hours-label-simple = Ganz einfach
hours-simple-known = 12 Stunden an, 12 Stunden aus, das ganze Jahr (übliche Praxis, ohne Quelle)
hours-label-told = Dein Licht
hours-told = { CLOCK($on) } bis { CLOCK($off) }, { HOURS($lit) } Licht
hours-label-target = Üblich sind
# Only with: $target, $target_known
hours-target = { HOURS($target, form: "range") } im Lauf des Jahres für { NAME($animal, form: "acc") } ({ $target_known })
hours-label-unused = Nicht gebraucht
hours-unused-flat = { LIST($unused) }: zählt nur mit einem Breitengrad, etwa latitude:home
hours-unused-seasons = { LIST($unused) }: Licht nach Jahreszeit liegt wie die Sonne um den Mittag
hours-label-latitude = Breitengrad
hours-latitude = { hours-place }. Südlich des Äquators schreib ihn mit S, etwa 30S.
hours-label-bound = Grenze
hours-bound = Nie kürzer als { HOURS($bound, form: "low") } und nie länger als { HOURS($bound, form: "high") }, was auch immer der Himmel tut. Diese Grenze haben wir selbst gesetzt.
hours-label-day = Tag
hours-day-meant = Von Sonnenaufgang bis Sonnenuntergang, im Mittel des Monats. Die Dämmerung zählt nicht mit.
hours-label-clock = Uhrzeit
# Only with: $zone
hours-clock = { $changing ->
    [yes] { $zone }. Die Uhr wird am { LIST($changes) } umgestellt. Die Zeiten gelten für die Mitte des Monats.
   *[no] { $zone }. Dort wird die Uhr nicht umgestellt.
  }
hours-day = { DAY($day) }
hours-no-zone = Du hast keine Zeitzone genannt, darum gilt das ganze Jahr Normalzeit. Stell die Zeitschaltuhr bei der Zeitumstellung um eine Stunde weiter, oder nenn mir deine Zeitzone, etwa zone:Europe/Berlin.
hours-label-seasons = Jahreszeiten
hours-turned = Um ein halbes Jahr gedreht: Der Sommer fällt in die andere Hälfte des Kalenders.
hours-south = Die der Südhalbkugel: Sommer ist im Dezember. months:turned dreht sie um.
hours-label-polar = Polar
hours-polar = { $polar_all_year ->
    [yes] Das ganze Jahr geht die Sonne dort nie unter oder nie auf. Die Grenze gilt trotzdem.
   *[no] Im { LIST($polar) } geht die Sonne dort nie unter oder nie auf. Die Grenze gilt trotzdem.
  }
hours-column-month = Monat
hours-column-lit = Licht
hours-column-on = An
hours-column-off = Aus
hours-column-outside = Tag draußen
hours-cell-lit = { HOURS($lit) }
hours-cell-on = { CLOCK($on) }
hours-cell-off = { CLOCK($off) }
hours-cell-outside = { HOURS($outside) }

## Vorsicht
hours-care = Mehr Stunden machen eine schwache Röhre nicht wett, und Licht die ganze Nacht schadet.
hours-care-short = Licht die ganze Nacht schadet.

## Das Bild
hours-picture-alt-day = Ein Tag als Balken: wann das Licht an ist, und die dunkle Nacht.
hours-picture-on = an { CLOCK($on) }
hours-picture-off = aus { CLOCK($off) }
hours-picture-dark = dunkel
hours-picture-lights = Licht
hours-picture-title = Das Licht auf { hours-place }
hours-picture-subtitle = Stunden Licht am Tag, über das Jahr
hours-picture-axis = Stunden am Tag
hours-picture-timer = deine Zeitschaltuhr
hours-picture-outside = Sonnenaufgang bis Sonnenuntergang
hours-picture-note = Stufen: wie die Zeitschaltuhr steht, Monat für Monat. Gestrichelt: der Tag draußen. Blau hinterlegt: die Grenzen, { HOURS($bound, form: "range") }.
hours-picture-alt = Kurve: { hours-picture-title }, { hours-picture-subtitle }. Die Zeitschaltuhr folgt dem Tag draußen in monatlichen Stufen, von { HOURS($least) } im { $least_month } bis { HOURS($most) } im { $most_month }.
hours-picture-alt-outside = Draußen dauert der Tag von { HOURS($outside, form: "low") } bis { HOURS($outside, form: "high") }.
