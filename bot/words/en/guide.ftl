### Facts: GuidePage, GuidePages, GuidePart

guide-list = The beginner guide
guide-count = There are { $count } pages; start with “{ $first }”.
guide-open = Open one: guide { $slug }
guide-column-page = Page
guide-column-about = What it explains
guide-title = { $part ->
    [none] { $title }
   *[some] { $title }: { $part }
  }
guide-text = { $text }
guide-try = Try it: { $example }
guide-heading = { $heading }
guide-part = { $text }
