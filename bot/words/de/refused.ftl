### Warum es keine Antwort gibt, und was geht.

refused-title = Das hat nicht geklappt
refused-step-all = Alle Fragen: help
refused-step-more = Mehr zu dieser Frage: help { $name }

## Was gelesen wurde
refused-nothing = nichts
refused-misread = { $option ->
    [none] Ich las { $what }, brauche aber { $accepted }. Zum Beispiel: { $example }
   *[some] Ich las { $what } bei { $option }, brauche aber { $accepted }. Zum Beispiel: { $example }
  }
refused-unread = { $option ->
    [none] Ich las { $what } und kann damit nichts anfangen. Das geht zum Beispiel: { $example }
   *[some] Ich las { $what } bei { $option } und kann damit nichts anfangen. Das geht zum Beispiel: { $example }
  }
refused-not-heard = Diese Frage habe ich nicht verstanden. Frag nach UV, Wärme, Nächten oder dem ganzen Terrarium, zum Beispiel: { $example }
refused-behind = { $before } { $refusal }

## Was fehlt
refused-told = { $text }
refused-lack = { $name }: { $what }
refused-missing = Es fehlt noch { LIST($wanted, join: "list-semi") }. Zum Beispiel: { $example }

## Eine Angabe, die es bei einer Frage nicht gibt
refused-option = { $what } gibt es bei { $name } nicht{ $near ->
    [none] .
   *[some] . Meintest du { $near }?
  } Es gibt: { LIST($known, join: "list-and") }.

## Eine Zahl, für die das Modell nicht reicht
# Only with: $low, $high
refused-outside = Das kann ich nicht beantworten: Ein Wert ist { $value }, und verlässlich bin ich nur { $ends ->
    [from] ab { $low }
    [above] über { $low }
    [up_to] bis { $high }
    [above_to] über { $low } und bis { $high }
   *[both] von { $low } bis { $high }
  }. Prüf die Zahl und frag noch einmal, zum Beispiel: { $example }
