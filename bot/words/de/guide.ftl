guide-list = Der Leitfaden für den Anfang
guide-count = Er hat { $count } Seiten; fang mit „{ $first }“ an.
guide-open = Eine Seite öffnen: guide { $slug }
guide-column-page = Seite
guide-column-about = Was sie erklärt
guide-title = { $part ->
    [none] { $title }
   *[some] { $title }: { $part }
  }
guide-text = { $text }
guide-try = Probier es aus: { $example }
guide-heading = { $heading }
guide-part = { $text }
