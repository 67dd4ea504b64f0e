### Was über Körper veröffentlicht ist.

body-label = Körper, nicht Fläche
body-told = { $taxon }{ $is_relative ->
    [yes] , verwandt
   *[no] {""}
  }, { $what ->
    [field] aktiv im Freien: { body-span } (veröffentlicht).
    [chosen] bei freier Wahl: { body-span } (veröffentlicht).
    [brooding] beim Brüten: etwa { body-span } (veröffentlicht).
    [daily_high] höchste am Tag: etwa { body-span } (veröffentlicht).
    [critical_high] zu heiß, um sich aufzurichten: { body-span } (veröffentlicht). Eine Grenze des Lebens, nie ein Ziel.
   *[critical_low] zu kalt, um sich aufzurichten: { body-span } (veröffentlicht). Eine Grenze des Lebens, nie ein Ziel.
  }
body-span = { TEMP($range, form: "range") }
