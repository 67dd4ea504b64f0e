### Facts: CaseSeen, AdviceTold, CaseOffered, CaseShared, CaseLine, CasesListed, CaseAdvised, CaseEnded
### Enclosures that keepers share with the helpers of a group.

## Shared
cases-share-title = Share “{ $name }” with helpers?
cases-share-not-yet = Nothing is shared yet.
cases-share-see = They would see its set-up and readings.
cases-share-nameless = Your name is not shown to them.
cases-share-do = If you agree: mine share with sure:yes
cases-share-step-sure = Share it: mine share name:{ $name } sure:yes
cases-share-step-end = End it whenever you like: mine unshare name:{ $name }
cases-share-who = Helpers are the moderators here, and whoever asks in the channel that they chose for helpers. They see the name of the enclosure, its set-up, every reading, its picture and what was advised. They can only pick figures and choices; nobody's words are kept.
cases-share-rest = It is forgotten after 30 days of rest.
cases-shared-title = “{ $name }” is shared
cases-shared = Helpers see it as case { $number }.
cases-shared-do = I remind you when they advise something.
cases-shared-step-look = See what they advise: mine case name:{ $name }
cases-not-shared = “{ $name }” is not shared.
cases-unshared-title = “{ $name }” is yours alone
cases-unshared = Case { $number } is gone.
cases-unshared-advice = { $advised ->
    [0] Nothing was advised in it.
    [one] { $advised } piece of advice went with it.
   *[other] { $advised } pieces of advice went with it.
  }
cases-unshared-step = Your enclosure and its readings stay: mine show name:{ $name }

## One case
cases-title = Case { $number }: “{ $name }”
cases-over = { cases-title }
cases-undone = { $count ->
    [0] Nothing was advised yet.
   *[other] { $undone ->
        [0] All that was advised is done.
        [one] { $undone } thing is still to do.
       *[other] { $undone } things are still to do.
      }
  }
cases-asleep = No helper sees it: they moved elsewhere.
# Only with: $next
cases-next = Next: { $next }
cases-until = Forgotten on { DAY($until) } if nothing moves.
cases-do-keeper = Then write down what you read.
cases-do-helper = Advise figures or a reading.
cases-step-read = Write down what you read, and they are told: mine reading name:{ $name } cool:79F
cases-step-end-own = End it: mine unshare name:{ $name }
cases-step-advise = Advise something: cases advise number:{ $number } measure:cool
cases-step-end = End it: cases end number:{ $number }
cases-whose = Advice here comes from people of this group, not from me. I hold each figure against the limits of the animal as far as the set-up is known. What counts as done follows from the set-up and the readings that the keeper saved.
cases-label-advice = { $to_do ->
    [yes] To do
   *[no] Done
  }
cases-advised = { $said } ({ DAY($day) })
cases-column-what = What
cases-column-before = When shared
cases-column-since = Since then
cases-unread = not read

## What can be advised
# Only with: $at
cases-advice-hang = Hang the tube { LENGTH($at) } above the back.
cases-advice-tube = { $percent ->
    [none] Change the tube for a new one.
   *[some] Change the tube for a new { SHARE($percent, form: "given") } one.
  }
cases-advice-unscreen = Hang the tube below the screen.
# Only with: $temp $where
cases-advice-bring = { $where }: bring it to { TEMP($temp) }.
# Only with: $where
cases-advice-read = { $where }: measure it again.
cases-advice-vet = Take the animal to a reptile vet.

## For helpers
cases-list-title = Cases of this group
cases-list-head = { $count ->
    [0] Nobody shares an enclosure just now.
    [one] { $count } case{ $unanswered ->
        [0] {""}
       *[other] , not answered yet
      }.
   *[other] { $count } cases{ $unanswered ->
        [0] {""}
       *[other] , { $unanswered } not answered yet
      }.
  }
cases-list-private = Keep what you see here to yourself.
cases-list-step = Look at one: cases show number:{ $number }
cases-column-number = Case
cases-column-box = Enclosure
cases-column-undone = To do
cases-column-moved = Last move
cases-line-number = { $number }
cases-line-box = { $name }{ $animal ->
    [none] {""}
   *[some] , { NAME($animal) }
  }
cases-line-undone = { $count ->
    [0] no advice yet
   *[other] { $undone } of { $count }
  }
cases-line-moved = { DAY($moved) }
cases-advised-title = Advice for case { $number }
cases-advised-head = Kept: { $count ->
    [one] its keeper is told of it.
   *[other] its keeper is told of all { $count }.
  }
cases-advised-step = Look at the case: cases show number:{ $number }
cases-advised-why = Once something is read or changed, you are reminded to look; else in 7 days. It counts as done once the saved set-up or readings show it.
cases-ended-title = Case { $number } is ended
cases-ended = All advice of “{ $name }” is gone.
cases-ended-told = Its keeper is told.
cases-ended-step = What is left: cases list

## Not possible
cases-no-right = Only helpers see cases, in their channel.
cases-no-such = There is no case { $number } here.
cases-nothing = There is no advice in your question.
cases-cannot-be = That figure cannot be right.
cases-past-limit = That would lead past a limit. I do not pass it on.
