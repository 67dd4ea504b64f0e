### Welche Röhre für einen festen Platz passt

tube-title = { $animal ->
    [none] Welche Röhre für diesen Platz
   *[some] Welche Röhre für { NAME($animal, form: "acc") }
  }

## Die Antwort in Kürze
tube-named = T5 HO, { SHARE($strength, form: "given") } oder schwächer, { tubes-fixture }
tube-head-too_near = Keine: { LENGTH($at) } ist zu nah.
tube-head-no_tube = Keine T5-HO-Röhre passt in die Box.
tube-head-keep_own = Behalte deine eigene Lampe.
# Only with: $named
tube-head-take = { $many ->
    [one] Nimm { $named }.
   *[other] Nimm { $many } × { $named }.
  }
tube-head-all_weak = Keine übliche Röhre ist dort stark genug.
tube-head-all_strong = Jede übliche Röhre ist dort zu stark.
tube-head-none = Keine übliche Röhre passt dort.
tube-range-too_near = Nimm mindestens { LENGTH($nearest) }.
tube-range-no_tube = Die kürzeste misst { LENGTH($shortest) }.
# Only with: $own_there
tube-range-keep_own = UV-Index { UVI($own_there, form: "doubt") } bei { LENGTH($at) }, Ziel { UVI($wanted, form: "range") }.
# Only with: $best_there
tube-range-take = UV-Index { UVI($best_there, form: "doubt") } bei { LENGTH($at) }, Ziel { UVI($wanted, form: "range") }.
tube-range-all_weak = Bei { LENGTH($at) } geben alle weniger als { UVI($wanted, form: "range") }.
tube-range-all_strong = Bei { LENGTH($at) } geben alle mehr als { UVI($wanted, form: "range") }.
tube-range-none = Bei { LENGTH($at) } gibt keine sicher { UVI($wanted, form: "range") }.
# Only with: $longest
tube-no-longer = Nicht länger als { LENGTH($longest) }.
# Only with: $buy, $power
tube-length-within = Länge: { LENGTH($buy) }, { WATTS($power) }.
# Only with: $buy, $power
tube-length-near = Länge: { LENGTH($buy) }, { WATTS($power) }.
tube-length-no_length = Keine übliche Länge passt zur Box.
tube-length-all_lit = Auch die kürzeste beleuchtet fast alles.
tube-length-no_tube = { tube-range-no_tube }
tube-own-gives = Deine Lampe: UV-Index { UVI($there) }, { $judged }.
tube-do-higher = Häng sie höher oder senk den Platz.
tube-do-longer-box = Am besten: eine längere Box.
tube-do-distance = Frag card, wo jede hängen muss.
tube-do-measure = Lampe aus, bis zum Rücken messen.
tube-do-meter = Ziel am UV-Messgerät: { UVI($wanted, form: "range") }.
tube-do-box = Nenn mir die Länge des Terrariums.

## Warum
tube-why-too_near = { LENGTH($at) } ist für jede Röhre zu nah. Ein Tier, das sich aufrichtet, bekommt dort viel mehr UV, und es kommt an die Leuchte.
# Only with: $box_long
tube-why-no_tube = Das Terrarium ist { LENGTH($box_long) } lang. Die kürzeste übliche T5-HO-Röhre misst { LENGTH($shortest) }.
tube-why-keep_own = Deine Messwerte sagen über deine eigene Lampe mehr als ihre Klasse.
tube-why-take = Zwei Röhren einer Stärke sind verschieden, darum nennt die Tabelle für jede einen Bereich. Eine schwächere als die gewählte ist dort sicher, gibt aber vielleicht zu wenig; eine stärkere ist es nicht. Stärken von 6 bis 12 % kommen zuerst: Ihre Abstände sind am besten bekannt.
tube-why-all_weak = Auch die stärkste Klasse gibt dort zu wenig. Sie könnte näher hängen, aber nie näher als { LENGTH($nearest) }, oder unter einem gröberen Gitter.
tube-why-all_strong = Auch die schwächste Klasse gibt dort zu viel. Jede muss weiter weg hängen.
tube-why-none = Manche geben dort zu wenig, manche zu viel, und beim Rest ist es nicht zu sagen.
tube-without-readings = Ohne deine Messwerte würde ich T5 HO nehmen, { SHARE($strength, form: "given") }, { tubes-fixture }: dort UV-Index { UVI($there, form: "doubt") }{ $longest ->
    [none] .
   *[some] , wenn sie nicht länger ist als { LENGTH($longest) }.
  }
tube-for-longer-box = Für eine längere Box würde ich T5 HO nehmen, { SHARE($strength, form: "given") }, { tubes-fixture }: dort UV-Index { UVI($there, form: "doubt") }{ $longest ->
    [none] .
   *[some] , wenn sie nicht länger ist als { LENGTH($longest) }.
  }

## Schritte
tube-step-higher = Häng die Röhre höher oder setz den Sonnenplatz tiefer, bis sie mindestens { LENGTH($nearest) } vom Rücken des Tieres entfernt ist. Frag dann noch einmal.
tube-step-longer-box = Am besten: eine längere Box. Ab etwa { LENGTH($least) } lässt die kürzeste Röhre ein schattiges Ende. Frag plan nach dem ganzen Aufbau.
tube-step-other-kinds = Andere Arten, etwa eine Kompaktlampe, sind kurz genug, aber ihr UV kann ich nicht ausrechnen. Nimm so eine nur, wenn du sie mit einem UV-Messgerät auf Rückenhöhe messen kannst.
tube-step-box = Wie lang ist das Terrarium? Frag noch einmal damit, etwa enclosure:{ LENGTH($example_box, units: "first") }, dann wähle ich auch die Länge.
tube-step-distance = Frag card, dann siehst du, wo eine Röhre jeder Stärke hängen muss.
tube-step-measure = Miss von der Unterseite der leuchtenden Röhre bis zum Rücken des Tieres am Sonnenplatz.
tube-step-meter = Prüf es mit einem UV-Messgerät auf Rückenhöhe: { UVI($wanted, form: "range") } ist richtig. Miss nach jeder Änderung neu.

## Wo kein Abstand genannt ist
tube-places-head = { $many ->
    [0] Keine übliche Röhre hat dort Platz.
   *[other] Nimm T5 HO, { SHARE($strength, form: "given") } oder schwächer.
  }
tube-places-each = { $fixture ->
    [polished] { $net ->
        [none] Spiegel, kein Gitter: { LENGTH($away, form: "range") }.
       *[other] Spiegel, über Gitter: { LENGTH($away, form: "range") }.
      }
   *[plain] { $net ->
        [none] Weder Spiegel noch Gitter: { LENGTH($away, form: "range") }.
       *[other] Kein Spiegel, Gitter: { LENGTH($away, form: "range") }.
      }
  }
tube-places-name = { $fixture ->
    [polished] { $net ->
        [none] Spiegel, kein Gitter
       *[other] Spiegel, über Gitter
      }
   *[plain] { $net ->
        [none] Kein Spiegel, kein Gitter
       *[other] Kein Spiegel, über Gitter
      }
  }
tube-places-away = { LENGTH($away, form: "range") }
tube-places-note = Balken: vom nächsten bis zum weitesten Abstand.
tube-places-do = Frag neu mit deinem Abstand.
tube-places-step-again = Frag noch einmal mit diesem Abstand, damit, was zwischen Röhre und Tier ist, und ob hinter der Röhre ein Spiegel ist.
tube-places-why = Eine starke Röhre weit weg und eine schwache nah geben gleich viel UV. Es kommt darauf an, wo sie hängen kann. Mit Spiegel und ohne etwas dazwischen ist sie am stärksten, ohne Spiegel über einem Gitter, das 45 % abhält, am schwächsten. Deine liegt dazwischen.

## Zahlen
tube-label-place = Platz
tube-place = { LENGTH($at) } von Röhre bis Rücken, { $through }
tube-several = Von jeder { $many } nebeneinander. Ihr UV addiert sich.
tube-label-box = Terrarium
tube-box = { LENGTH($length) } lang{ $depth ->
    [none] .
   *[some] { $height ->
        [none] , { LENGTH($depth) } tief.
       *[some] , { LENGTH($depth) } tief, { LENGTH($height) } hoch. So habe ich es gelesen: Die Röhre liegt entlang der Länge.
      }
  }{ $above ->
    [yes] {" "}Bei deinem Abstand hängt die Röhre über der Box.
   *[no] {""}
  }
tube-label-wanted = Passende Länge
# Only with: $ideal
tube-wanted-long = { LENGTH($ideal, form: "range") }: die Hälfte bis zwei Drittel des Terrariums
tube-label-middle = Wohin
# Only with: $buy, $power, $middle, $lit
tube-middle = Die Röhre mit { WATTS($power) } ist { LENGTH($buy) } lang. Fang mit ihr am warmen Ende an, ihre Mitte etwa { LENGTH($middle) } von dieser Wand, damit UV und Wärme zusammenliegen. Sie deckt { SHARE($lit) } der Länge ab{ $fit ->
    [near] , etwas daneben, aber am nächsten dran.
   *[other] .
  }
tube-label-nearest = Nächste Längen
tube-nearest = { LIST($others, join: "list-or") }
tube-standard = { LENGTH($long) } ({ WATTS($power) })
tube-column-tube = Röhre
tube-column-fixture = Leuchte
tube-column-there = UV-Index dort
tube-column-verdict = Urteil
tube-cell = { SHARE($strength, form: "given") }
tube-there = { UVI($there, form: "doubt") }
tube-verdict = { $judged }{ $limit ->
    [none] {""}
   *[some] {" "}bis { LENGTH($limit) } Länge
  }
tube-own = deine eigene Lampe
tube-as-read = wie gemessen
tube-own-there = { UVI($there, form: "doubt") }
tube-own-verdict = { $judged }
tube-too-near = zu nah
tube-read-again = neu messen

## Bild
tube-picture-line = { SHARE($strength, form: "given") } { $fixture ->
    [polished] poliert
   *[plain] einfach
  }
tube-picture-aim = Ziel { UVI($wanted, form: "range") }
tube-picture-note = Balken: vom Wenigsten bis zum Meisten, was eine Röhre dort geben kann; Punkt: am wahrscheinlichsten. Voll: die zu nehmen ist.
tube-picture-note-none = Balken: vom Wenigsten bis zum Meisten, was eine Röhre dort geben kann; Punkt: am wahrscheinlichsten. Hier passt keine.
tube-picture-alt = Balken: { tube-title }, { tube-place }.
tube-picture-alt-aim = Ziel ist { UVI($wanted, form: "range") }.
tube-alt-each = An diesem Platz: { LIST($each, join: "list-semi") }.
tube-alt-suit = { SHARE($strength, form: "given") }, { tubes-fixture } { UVI($there, form: "doubt") }, { $judged }
