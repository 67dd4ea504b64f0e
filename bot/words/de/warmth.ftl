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
warmth-step-help = Mehr zu dieser Frage: frag help { $command }.
warmth-label-own = Gut für das Tier
# Only with: $own, $own_known
warmth-own-known = { TEMP($own, form: "range") } ({ $own_known })
