### Was von einer Röhre gilt, solange Leuchte oder Gitter nicht bekannt sind.

unsure-title = { $animal ->
    [none] Die Röhre, bis du mehr weißt
   *[some] Die Röhre für { NAME($animal, form: "acc") }, bis du mehr weißt
  }

## Die Antwort in Kürze
# Only with: $start
unsure-head-start = Vorerst { LENGTH($start) } bis zum Rücken.
unsure-mild = Dort ist es mild, was es auch ist.
# Only with: $least, $most
unsure-expect = UV-Index dort: { UVI($least) } bis { UVI($most) }.
unsure-head-nothing = Finde zuerst heraus, was du hast.
unsure-not-every-way = Es kann überall zu stark sein.
# Only with: $least, $most
unsure-head-there = UV-Index dort: { UVI($least) } bis { UVI($most) }.
# Only with: $standing
unsure-standing = { $standing ->
    [alike] { $verdict ->
        [none] Ziel { UVI($wanted, form: "range") }: sieh in die Tabelle.
        [far_too_low] Für { UVI($wanted, form: "range") } so oder so viel zu wenig.
        [low] Für { UVI($wanted, form: "range") } so oder so zu wenig.
        [probably_low] Für { UVI($wanted, form: "range") } wohl so oder so zu wenig.
        [fine] Für { UVI($wanted, form: "range") } so oder so gut.
        [cannot_tell] Ob es für { UVI($wanted, form: "range") } passt, ist unklar.
        [probably_high] Für { UVI($wanted, form: "range") } wohl so oder so zu viel.
        [high] Für { UVI($wanted, form: "range") } so oder so zu viel.
       *[dangerous] So oder so gefährlich: Ziel { UVI($wanted, form: "range") }.
      }
    [may_be_above] Vielleicht zu viel: Ziel { UVI($wanted, form: "range") }.
    [may_be_below] Vielleicht zu wenig: Ziel { UVI($wanted, form: "range") }.
   *[below_or_above] Vielleicht zu wenig, mit starker Lampe zu viel: Ziel { UVI($wanted, form: "range") }.
  }
unsure-too-near = Zu nah für jede Röhre: mach sie aus.
unsure-until-find_out = Lass dort noch nichts sonnen.
unsure-until-leave = Lass sie dort, bis du mehr weißt.
# Only with: $start
unsure-until-hang = Häng sie vorerst auf { LENGTH($start) }.
unsure-do-fixture = Lampe aus: Ist innen ein Spiegel?
unsure-do-screen = Prüf, wie viel das Gitter abhält.
unsure-do-again = Frag dann damit noch einmal.

## Warum
unsure-why-start = { $start ->
    [none] Nicht alles, was es sein kann, gibt UV-Index { UVI($wanted, form: "range") } aus sicherem Abstand.
   *[some] Bei { LENGTH($start) } gibt auch das Stärkste, was es sein kann, nicht mehr als UV-Index { UVI($wanted, form: "range") }, egal wie lang die Röhre ist. Alles andere gibt weniger. Lieber zu mild als zu stark: Finde es in den nächsten Tagen heraus.
  }
# Only with: $at
unsure-why-there = { LENGTH($at) }: In der Tabelle steht alles, was es sein kann.
unsure-why-wide = Leuchte und Gitter ändern das UV mehr als alles andere. Dazu kommt, dass Lampen derselben Klasse um etwa ein Drittel verschieden sind.
# Only with: $differ
unsure-why-group = Leuchte und Gitter ändern das UV mehr als alles andere. Dazu kommt, dass Lampen dieser Klasse bei den Haltern deiner Gruppe verschieden sind, um etwa { SHARE($differ) }.

## Schritte
unsure-step-until-find_out = Finde es heraus, bevor sich dort ein Tier sonnt.
unsure-step-until-leave = Lass sie dort, bis du mehr weißt.
# Only with: $start
unsure-step-until-hang = Häng sie, bis du mehr weißt, { LENGTH($start) } vom Rücken des Tieres.
unsure-step-fixture = Schalte die Röhre aus, lass sie abkühlen und schau von unten in die Leuchte. Du siehst dich wie im Spiegel? Dann ist sie poliert. Sie ist weiß oder aus Kunststoff? Dann ist sie einfach.
unsure-step-screen = Schau nach, ob etwas zwischen Röhre und Tier ist: ein Gitter, ein Deckel, Glas.
unsure-step-mesh = Finde heraus, wie viel UV das Gitter abhält. Mit einem UV-Messgerät: Miss unter der Röhre mit Gitter und ohne (die Frage meter rechnet es aus). Ohne Messgerät: Zähl die Drähte auf einem Zoll und miss einen: Die Seite screens zeigt, wie.
unsure-step-again = Frag dann noch einmal mit dem, was du gefunden hast, etwa: { $again }
unsure-step-change = Miss neu, sobald sich Röhre, Leuchte, Gitter oder Sonnenplatz ändern.

## Zahlen
unsure-label-unknown = Du weißt nicht
unsure-unknown = { $fixture_unknown ->
    [yes] { $screen_unknown ->
        [yes] { $some_mesh ->
            [yes] was hinter der Röhre ist, und wie viel das Gitter abhält
           *[no] was hinter der Röhre ist, und was zwischen Röhre und Tier ist
          }
       *[no] was hinter der Röhre ist
      }
   *[no] { $some_mesh ->
        [yes] wie viel das Gitter abhält
       *[no] was zwischen Röhre und Tier ist
      }
  }
unsure-column-way = Wenn es so ist
unsure-column-away = Röhre bis Rücken
unsure-column-there = UV-Index dort
unsure-way = { $fixture ->
    [none] { $screen }
    [polished] polierter Reflektor, { $screen }
   *[plain] einfache Leuchte, { $screen }
  }
# Only with: $span
unsure-away = { LENGTH($span, form: "range") }
# Only with: $there
unsure-there = { UVI($there, form: "doubt") }

## Bild
unsure-picture-aim = Ziel { UVI($wanted, form: "range") }
# Only with: $start
unsure-picture-start = vorerst { LENGTH($start) }
unsure-picture-note = Balken: vom nächsten bis zum weitesten Abstand, wenn es so ist. Punkt: dort anfangen.
unsure-picture-note-there = Balken: vom wenigsten bis zum meisten, wenn es so ist. Punkt: am wahrscheinlichsten.
unsure-picture-alt = Balken: { unsure-title }.
unsure-alt-each = Wenn es so ist: { LIST($each, join: "list-semi") }.
unsure-alt-way = { unsure-way }: { $there ->
    [none] { $span ->
        [none] { $judged }
       *[some] { LENGTH($span, form: "range") }
      }
   *[some] { UVI($there, form: "doubt") }, { $judged }
  }
