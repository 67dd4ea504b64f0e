### Facts: HelpAll, HelpGroup, HelpOne, HelpQuestion, HelpNames, HelpOption, HelpExample, HelpUnread
### What can be asked.

help-free = ask what temperature does a bearded dragon need
help-title = What you can ask
help-head = Ask me in your own words.
help-units = In inches or cm, °F or °C: I show both.
help-do-free = Try: { help-free }
help-care = I cannot see your animal, I only know what you tell me. For a sick animal call a reptile vet.
help-care-short = A sick animal? Call a reptile vet.
help-step-free = Not sure which one? Say it in your own words: { help-free }
help-step-more = More about one question: help { $first }
help-name = { $name }
help-name-group = { $name } …
help-what = { $what }
help-names = { LIST($names, join: "list-with") } (more: help { $wish })
help-label-uv = UV
help-label-warmth = Warmth
help-label-all = All else
help-topic-uv = UV: tubes, screens, distances
help-topic-warmth = Warmth: lamps, heaters, nights, hours
help-topic-all = The whole set-up, and all else
help-group-mine = Your own enclosures and readings
help-group-remind = Reminders to read, replace or check
help-group-cases = For helpers: shared enclosures
help-group-server = For moderators: settings and own figures
help-group-board = For moderators: pinned boards

## One group
help-title-group = What you can ask here
help-about = { $about }.
help-do-example = Try: { $example }
help-do-first = More about one: help { $first }
help-column-question = Question
help-column-what = What it answers

## One question
help-title-one = How to ask: { $name }
help-is = { $what }.
help-example = Try: { $example }
help-typed = { $typed }
help-for = { $what }{ $choose ->
    [none] {""}
   *[some] {" "}({ LIST($choices, join: "list-or") })
  }{ $needed ->
    [yes] {" "}– needed
   *[no] {""}
  }

## No such question
help-unread = That is no question of mine
help-no-question = I know no question called “{ $wish }”.
# Only with: $near
help-near = Did you mean { $near }?
help-do-other = Try: help { $example }
help-do-all = All questions: help
