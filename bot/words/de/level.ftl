### Was ein Plan über das Mindeste hinaus bekommt.

level-label-later = Kann warten
level-later = weißes Licht, zweite Wärmelampe, Pflanzen, Jahreszeiten: Das Mindeste hält es gesund, der Weg nach oben kommt danach. Frag next
level-label-bar = Weiße LED-Leiste
# Only with: $bar
level-bar = { LUMENS($bar, form: "range") }, über der hellen Hälfte, nachts aus{ $held ->
    [yes] ; mehr würde die kühle Seite über ihren Bereich wärmen
   *[no] {""}
  }. Wie hell das wird, steht unter Helligkeit; ein Bedarf ist unbekannt. Sie gibt kein UV und ersetzt nie die Röhre; miss danach die kühle Seite neu
level-no-bar = vorerst keine: Sie wärmt die kühle Seite vielleicht über ihren Bereich. Erst ein kühlerer Raum
level-label-better = Darüber hinaus
level-better = eines nach dem anderen, wenn alles stimmt: zwei schwächere Strahler für einen breiteren warmen Fleck, echte Pflanzen, Stunden nach Jahreszeit. Nicht von selbst mehr UV. Frag next
# Only with: $bar
level-do = Leiste: { LUMENS($bar) }. Erst leer, messen.
