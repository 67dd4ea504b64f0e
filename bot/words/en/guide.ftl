### Facts: GuideFilled, GuideLength, GuidePage, GuidePages, GuidePart, GuideUnread, GuideWords

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
guide-unread = Not in the guide
# Only with: $parts
guide-no-part = I read “{ $wish }” for part. That page has: { $parts }.
guide-instead = Open this: { $example }
guide-no-page = { $near ->
    [none] I read “{ $wish }” for page. I need the name of a guide page.
   *[some] I read “{ $wish }” for page. I need the name of a guide page, perhaps { $near }.
  }
guide-words = { $words }
guide-length = { LENGTH($length) }
guide-filled = { LIST($pieces, join: "list-joined") }
