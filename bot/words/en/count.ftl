### Facts: Stats, NothingCounted, CountedWeek, CountText, CountAnimal, CountMost, CountTrend, PagePassed, CountHeading, CountShown, CountDay, CountCourse, CountMostOften
### What was asked in a group, week by week, for its moderators.

count-title = What was asked here in { $span ->
    [1] this week
   *[other] the last { $span } weeks
  }
count-nothing = { $span ->
    [1] Nothing was counted in this week.
   *[other] Nothing was counted in the last { $span } weeks.
  }

## The answer in brief
count-head = { count-questions-asked } in { $count ->
    [one] 1 week
   *[other] { $count } weeks
  }, since Monday { DAY($since) }.
count-others = { $animals ->
    [one] 1 animal
   *[other] { $animals } animals
  } named and { $pages ->
    [one] 1 guide page
   *[other] { $pages } guide pages
  } opened.
count-questions-asked = { $questions ->
    [one] 1 question asked
   *[other] { $questions } questions asked
  }
count-passed-first = Often pointed to, hardly opened: “{ $title }”.

## Numbers
count-label-question = Questions
count-label-animal = Animals named
count-label-page = Guide pages opened
count-most = { LIST($listed, join: "list-with") }{ $others ->
    [0] {""}
    [one] ; 1 other, { $other_times } times in all
   *[other] ; { $others } others, { $other_times } times in all
  }
count-text-times = { $text } { $times }
count-page-times = “{ $text }” { $times }
count-animal-times = { NAME($animal) } { $times }
count-text = { $text }
count-animal = { NAME($animal) }
count-label-trend = Trend
count-trend = { $last } in the last whole week; { $before } in the one before
count-no-trend = I can tell it once two weeks are over
count-three = { $questions ->
    [one] 1 question
   *[other] { $questions } questions
  }, { $animals ->
    [one] 1 animal
   *[other] { $animals } animals
  }, { $pages ->
    [one] 1 page
   *[other] { $pages } pages
  }
count-label-runs = A week
count-runs = from Monday to Sunday, by UTC
count-runs-on = { count-runs }; the newest is not over, so it shows what came so far
count-label-kept = What is counted
count-kept = what kind of question was answered, the animal it named and the guide page that was opened, in this server alone. No text and no person. Counts are deleted after two years
count-label-site = Pages on your site
count-site = Answers link to your own site. What is read there is not counted, so I cannot tell which page is hardly read
count-label-passed = Page hardly opened
count-passed = “{ $title }”: { $pointed ->
    [one] 1 answer
   *[other] { $pointed } answers
  } pointed to it ({ LIST($by, join: "list-with") }), and it was opened { count-opened }
count-opened = { $opened ->
    [one] 1 time
   *[other] { $opened } times
  }
count-label-how = How a page gets on this list
count-how = { $more_pages ->
    [one] At least
    [2] At least
    [3] At least
   *[other] It has { $more_pages } pages, 3 are shown. At least
  } { $least } answers pointed to it, and it was opened at most once for every { $once_in } of them. The counts cannot say why: the answer may have been enough, or nobody sees the button

## The table
count-column-week = Week from
count-course-question = Questions
count-course-animal = Animals
count-course-page = Pages
count-week = { DAY($monday) }{ $over ->
    [yes] {""}
   *[no] {" "}(so far)
  }
count-questions = { $questions }
count-animals = { $animals }
count-pages = { $pages }

## Steps
count-step-ask = Ask anything here, then look again: convert 14in
count-step-further = Look further back: server stats weeks:104
count-step-read = Read the page, and share it in the channel if it helps: guide { $slug }
count-step-pin = Pin links to all pages where newcomers read first: board post topic:guide
count-step-span = Look at another span: server stats weeks:{ $other_span }

## The picture
count-picture-title = What was asked here
count-picture-since = Week by week since Monday { DAY($since) }
count-picture-week = In the week from Monday { DAY($since) }{ $over ->
    [yes] {""}
   *[no] , so far
  }
count-note = A week: Monday to Sunday, UTC.
count-note-on = A week: Monday to Sunday, UTC. Hatched: not over yet.
count-heading = { count-of }: { $total }
count-of = { $kind ->
    [question] Questions asked
    [animal] Animals named
   *[page] Guide pages opened
  }
count-shown = { $most } of { $there } shown
count-overlooked = Often pointed to, hardly opened
count-explained = Filled: opened / outline: answers pointing to it
count-day = { $day } { $month }
count-month-1 = Jan
count-month-2 = Feb
count-month-3 = Mar
count-month-4 = Apr
count-month-5 = May
count-month-6 = Jun
count-month-7 = Jul
count-month-8 = Aug
count-month-9 = Sep
count-month-10 = Oct
count-month-11 = Nov
count-month-12 = Dec

## The picture in words
count-alt = Columns and bars.
count-alt-one = { count-of } in this week: { $last }{ $over ->
    [yes] .
   *[no] {" "}so far.
  }
count-alt-every = { count-of } by week, the oldest first: { $every }{ $over ->
    [yes] .
   *[no] {" "}so far.
  }
count-alt-long = { count-of } in { $count } weeks: { $first } in the first, at most { $top }, in the week from { DAY($top_from) }, and { $last } in the last{ $over ->
    [yes] .
   *[no] {" "}so far.
  }
count-alt-most = { count-of } most often: { LIST($listed, join: "list-with") }.
count-alt-passed = Hardly opened: “{ $title }”, { count-opened }, while { $pointed ->
    [one] 1 answer
   *[other] { $pointed } answers
  } pointed to it.
