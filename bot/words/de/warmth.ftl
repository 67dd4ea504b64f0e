### Wünsche über einer Grenze, und Tiere, von denen ich keinen Zielwert kenne.

warmth-past-title = Zu heiß, dabei helfe ich nicht
warmth-unknown-title = Für dieses Tier kenne ich keinen Wert
warmth-air-past = Nein: { $wish } ist zu heiß für die kühle Seite.
warmth-air-most = { $animal ->
    [none] Bei { TEMP($most) } kann sich kaum ein Tier noch abkühlen.
   *[some] Bei { TEMP($most) } kann sich { NAME($animal, form: "your") } nicht mehr abkühlen.
  }
# Only with: $animal
warmth-air-unknown = Ich kenne keinen Zielwert der Luft für { NAME($animal, form: "acc") }.
# Only with: $own, $animal
warmth-own = Gut für { NAME($animal, form: "your-acc") }: { TEMP($own, form: "range") }.
warmth-do = Frag mit { $example }.
warmth-step-help = Mehr zu dieser Frage: help { $command }
warmth-label-own = Gut für das Tier
# Only with: $own, $own_known
warmth-own-known = { TEMP($own, form: "range") } ({ $own_known })

## Die Fläche unter der Lampe
warmth-surface-past = { $animal ->
    [none] Nein: { $wish } ist zu heiß und verbrennt.
   *[some] Nein: Bei { $wish } verbrennt sich { NAME($animal, form: "your") }.
  }
warmth-surface-most = { $animal ->
    [none] Über { TEMP($most) } ist es fast jedem Tier zu heiß, das ich kenne.
   *[some] Nichts über { TEMP($most) } darf in Reichweite { NAME($animal, form: "your-gen") } sein.
  }
warmth-do-name = Ein anderes Tier? Nenn es mit animal:.
# Only with: $animal
warmth-surface-unknown = Wie warm der Sonnenplatz für { NAME($animal, form: "acc") } sein soll, weiß ich nicht.
# Only with: $animal
warmth-surface-needless = Keine Wärmelampe: { NAME($animal, form: "a") } braucht keinen heißen Platz.
warmth-needless-why = Es zählt nur die Luft oder das Wasser.
warmth-do-needs = Frag needs nach den Werten, die zählen.
warmth-ask-whom = Nimm, was dir Halter oder Tierärzte sagen, denen du vertraust.
warmth-label-aim = Fläche, die es sein soll
warmth-asked = { $animal ->
    [none] { TEMP($aim) }, wie von dir genannt. Für kein Tier geprüft: Nenn deines, etwa animal:corn snake, dann prüfe ich es.
   *[some] { TEMP($aim) }, wie von dir genannt
  }
# Only with: $animal, $known
warmth-target = { TEMP($aim, form: "range") }{ $has_best ->
    [yes] , am besten { TEMP($aim) },
   *[no] {""}
  } für { NAME($animal, form: "acc") } ({ $known })
warmth-label-usual = Sieh noch mal nach
# Only with: $animal, $usual, $usual_known
warmth-usual = Das ist nicht üblich für { NAME($animal, form: "acc") }: { TEMP($usual, form: "range") }{ $usual_has_best ->
    [yes] , am besten { TEMP($usual) }
   *[no] {""}
  } ({ $usual_known })
# Only with: $animal
warmth-unusual = Nicht üblich für { NAME($animal, form: "your-acc") }.
warmth-unchecked = Für dein Tier nicht geprüft.
