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
guide-unread = Nicht im Leitfaden
# Only with: $parts
guide-no-part = Ich lese „{ $wish }“ als part; die Seite hat aber: { $parts }.
guide-instead = Öffne: { $example }
guide-no-page = { $near ->
    [none] Ich lese „{ $wish }“ als page; so heißt aber keine Seite des Leitfadens.
   *[some] Ich lese „{ $wish }“ als page; so heißt aber keine Seite, vielleicht { $near }.
  }
guide-words = { $words }
guide-length = { LENGTH($length) }
guide-filled = { LIST($pieces, join: "list-joined") }
