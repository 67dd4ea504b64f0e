### Facts: BoxShown, _Day
### An enclosure with its history.

mine-show-title = “{ $name }”
mine-show-head = { $readings ->
    [0] No readings yet.
    [one] { $readings } reading so far.
   *[other] { $readings } readings { mine-show-days }.
  }
mine-show-days = { $on_days ->
    [one] on one day
   *[other] on { $on_days } days
  }
mine-show-no-trend = I cannot tell yet how its UV changes.
mine-show-retargeted = { $changed ->
    [one] Your group changed a target since then.
   *[other] Your group changed { $changed } targets since then.
  }
mine-show-label-retargeted = New target
mine-show-label-reckoned = Worked out for
# Only with: $at
mine-show-reckoned = { LENGTH($at) }, where you read last; { $elsewhere } read elsewhere

## Steps
# Only with: $question
mine-show-step-ask = Ask about it: { $question }
# Only with: $read_again
mine-show-step-remind = Be reminded of the next reading: { $read_again }
mine-show-step-read = Write a reading down: mine reading name:{ $name } uvi:4.2 basking:103F

## The history
mine-show-day = Day
mine-show-on = { DAY($day) }
mine-show-none = –
