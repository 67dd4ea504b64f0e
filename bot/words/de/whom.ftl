### Wen eine Gruppe ruft und wo ihre Helfer gefragt werden

whom-vets-title = Wen diese Gruppe ruft
whom-vets = { $line ->
    [none] Weg. Beim Anruf in der Tierarztpraxis steht keine Zeile mehr.
   *[some] Gemerkt. Das steht bei jedem Hinweis auf den Tierarzt: { $line }
  }
whom-vets-step-none = Wegnehmen mit none: server vets line:none
whom-helpers-title = Wo Helfer gefragt werden
whom-helpers = { $here ->
    [yes] Gemerkt. Helfer werden in diesem Kanal gefragt.
   *[no] Gemerkt. Es wird kein Helfer mehr gefragt.
  }
whom-helpers-how = Wer fragt, sieht vorher, was dort steht.
whom-helpers-step-none = Beenden: server helpers ask:nowhere
