### Eine UV-Röhre: was sie ist, wie lang, und woher das bekannt ist.

tubes-label = Röhre
tubes-label-lamp = Lampe
tubes-fixture = { $fixture ->
    [polished] polierter Reflektor
   *[plain] einfache Leuchte
  }
tubes-strength = { $to_buy ->
    [yes] { SHARE($strength, form: "given") } oder schwächer
   *[no] { SHARE($strength, form: "given") }
  }
tubes-name = { $whose ->
    [yours] deine eigene Lampe, nach deinen Messwerten
    [groups] die Lampe der Gruppe, nach ihren Messwerten
   *[class] { $count ->
        [one] T5 HO, { tubes-strength }, { tubes-fixture }
       *[other] { $count } × T5 HO, je { tubes-strength }, { tubes-fixture }
      }
  }
tubes-finish = { $fixture ->
    [polished] poliert
   *[plain] einfach
  }
tubes-short = { $whose ->
    [yours] deine eigene Lampe
    [groups] die Lampe der Gruppe
   *[class] { $count ->
        [one] T5 HO, { tubes-strength }, { tubes-finish }
       *[other] { $count } × T5 HO, je { tubes-strength }, { tubes-finish }
      }
  }
tubes-kind-label = Art
tubes-kind = Die Art hast du nicht genannt, also habe ich eine T5-HO-Röhre angenommen.
tubes-held-label = Stärke, Leuchte, Alter
tubes-held = { $whose ->
    [groups] Sie zählen nicht: In den Messwerten der Gruppe stecken sie schon.
   *[yours] Sie zählen nicht: In deinen Messwerten stecken sie schon.
  }
tubes-together-label = Nebeneinander
tubes-together = { $gap ->
    [none] Ihr UV addiert sich. Ich habe angenommen, dass alles von einer Stelle kommt: Das ist die vorsichtige Seite.
   *[some] { LENGTH($gap) } von Mitte zu Mitte. Ihr UV addiert sich, gerechnet für die stärkste Stelle darunter.
  }
tubes-older-label = Aufdruck
# Only with: $older
tubes-older = „{ $older }“ habe ich nach der älteren Zählung gelesen: die Klasse mit { SHARE($strength) }.
tubes-long-label = Länge
tubes-long = { $long_known ->
    [told] { LENGTH($long) }, wie du gesagt hast
    [from_watts] { LENGTH($long) }{ $watts ->
        [none] , aus den Watt geschlossen
       *[some] , aus { WATTS($watts) } geschlossen
      }
    [from_box] { LENGTH($long) }, aus dem Terrarium geschlossen
    [as_read] leuchtender Teil { LENGTH($lit) }, wie gemessen
    [shortest] Nicht genannt, also habe ich { LENGTH($long) } angenommen, die kürzeste übliche Röhre.
   *[unknown] Nicht genannt. Alles von { LENGTH($long, form: "range") } ist möglich.
  }
tubes-shorter-label = So kurz?
tubes-shorter = Die kürzeste übliche T5-HO-Röhre misst { LENGTH($shortest) }. Schau nach, ob deine eine ist.
tubes-group-label = Deine Gruppe
tubes-group = { $keepers } Halter deiner Gruppe haben Röhren dieser Klasse gemessen, zuletzt am { DAY($newest) }. Ihre Werte gelten hier statt meiner Zahl, aber nie näher, als meine es zulässt.
tubes-group-short = Nach { $keepers } Haltern deiner Gruppe.
tubes-group-differ = Röhren dieser Art unterscheiden sich bei { $keepers } Haltern deiner Gruppe um etwa { SHARE($differ) }. Ein UV-Messgerät zeigt es.
tubes-age-label = Alter
tubes-age = nicht genannt
tubes-ask-length = Wie lang ist die Röhre? Frag noch einmal mit ihrer Länge, etwa length:{ LENGTH($example, units: "first") }, oder mit den Watt, die auf einer T5-HO-Röhre stehen, etwa length:{ WATTS($example_watts) }. Das hilft am meisten.

## Was angenommen ist, in Kürze
tubes-assumed-nothing = Von der Röhre hast du alles gesagt.
tubes-assumed-kind = Angenommen: eine T5-HO-Röhre.
tubes-assumed-length = Die Länge der Röhre kenne ich nicht.
tubes-assumed-both = Angenommen: T5 HO, jede Länge möglich.
