### Facts: Remembered, Reminders, NoReminder, PutOff
### Reminders.

## What one is about
remind-what = { $about ->
    [advised] look at what helpers advise{ $enclosure ->
        [none] {""}
       *[some] {" "}for { $enclosure }
      }
    [case] look at { remind-case } again{ $enclosure ->
        [none] {""}
       *[some] {" "}({ $enclosure })
      }
    [ended] helpers ended your case{ $enclosure ->
        [none] {""}
       *[some] {" "}({ $enclosure })
      }
    [retarget] targets changed{ $enclosure ->
        [none] {""}
       *[some] {" "}({ $enclosure })
      }
   *[other] { remind-asked }{ $enclosure ->
        [none] {""}
       *[some] {" "}of { $enclosure }
      }
  }
remind-asked = { $about ->
    [meter] read the UV meter
    [tube] replace the UV tube
    [season] set the timer for the season
   *[check] check the temperatures and the distance
  }
remind-label = Reminder { $number }
remind-row = { CAP($what) }: { MOMENT($due) }
# Only with: $every
remind-each = { $every ->
    [one] every day
   *[other] every { $every } days
  }
# Only with: $every
remind-every = It comes again { remind-each }.

## Made
remind-will = I will remind you on { MOMENT($due) }.
remind-for = What for: { $what }.
remind-where = { $here ->
    [yes] It comes in this channel
   *[no] It comes by direct message
  }{ $every ->
    [none] .
   *[other] , and { remind-each } from then on.
  }
remind-care-zone = I took UTC as your time zone. Tell me yours: mine prefer zone:Europe/Berlin
remind-step-snooze = Put it off: remind snooze number:{ $number } until:in 2 days
remind-step-off = Take it away: remind off number:{ $number }

## Listed
remind-list-title = Your reminders
remind-count = { $count ->
    [0] You have no reminders.
    [one] You have { $count } reminder.
   *[other] You have { $count } reminders.
  }
remind-column-number = Number
remind-column-what = What
remind-column-when = When
remind-column-where = Where
remind-number = { $number }
remind-repeated = { $what }{ $every ->
    [none] {""}
   *[other] , { remind-each }
  }
remind-when = { MOMENT($due) }
remind-trouble = { $trouble ->
    [dm_closed] stopped: your direct messages are closed
    [channel_gone] the channel is gone, so it comes by direct message
    [no_right] stopped: I may not write there
    [refused] stopped: Discord refused it again and again
   *[other] { $stopped ->
        [yes] stopped
       *[no] { $here ->
            [yes] a channel
           *[no] direct message
          }
      }
  }
remind-step-make = Make one: remind me about:meter when:in 3 months

## Put off, taken away
remind-snoozed = Reminder { $number } is put off
remind-comes = It comes on { MOMENT($due) }.
remind-step-all = All of them: remind list
remind-off = Reminder { $number } is off
remind-gone = It will not come any more.
remind-step-left = What is left: remind list

## When it is due
remind-due = { $here ->
    [yes] a reminder to
   *[no] A reminder to
  } { $what }. { $about ->
    [meter] Write it down with /mine reading.
    [tube] Note the day: /mine save with age:new.
    [season] Ask /hours for the times.
   *[check] Ask /temps with what you read.
  }
remind-came = { $about ->
    [advised] Helpers advise something{ $enclosure ->
        [none] {""}
       *[some] {" "}for { $enclosure }
      }, and not all of it is done. See /mine case, and write down what you read.
    [case] Look at { remind-case } again: something moved in it, or nothing did for a week. Ask /cases show in the channel for helpers.
    [ended] Helpers ended your case{ $enclosure ->
        [none] {""}
       *[some] {" "}for { $enclosure }
      }. Their advice is deleted; your enclosure and its readings stay.
   *[other] What I told you to aim for has changed{ $enclosure ->
        [none] {""}
       *[some] {" "}for { $enclosure }
      }: { LIST($moved, join: "list-semi") }. Look at it with /mine show.
  }
remind-case = { $case ->
    [none] a case
   *[other] case { $case }
  }
# Only with: $case
remind-shared = A keeper shares { $enclosure ->
    [none] an enclosure
   *[some] “{ $enclosure }”
  } with the helpers of this group: case { $case }.
remind-late = It is late: it was due on { MOMENT($due) }.
remind-moved = I may no longer write in the channel that you chose, so it comes here.

## Its buttons
remind-button-day = Tomorrow
remind-button-week = In a week
remind-button-month = In a month
remind-button-off = Remind me no more
remind-put-off = Put off until { MOMENT($until) }.
remind-not-yours = This is not a reminder of yours, or it is gone already: see /remind list.
