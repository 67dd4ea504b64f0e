### Facts: WrongsShown, WrongLine, WrongWeek
### What somebody called wrong in a group.

wrong-title = What people called wrong
wrong-head = { $count ->
    [0] Nobody called an answer wrong.
    [one] One answer was called wrong.
   *[other] { $count } answers were called wrong.
  }
wrong-gone = { $count ->
    [0] There was nothing to clear.
    [one] One is cleared.
   *[other] { $count } are cleared.
  }
wrong-no-text = I keep the figures, no words, no names.
wrong-step-ask = Ask one of these yourself and look at its sources. A target of your own replaces a figure: server target
wrong-step-file = Have all of them as a file: server wrong file:csv
wrong-step-clear = Clear them: server wrong clear:yes
wrong-week = Week of { DAY($monday) }
wrong-times = { $count }
wrong-column-day = Day
wrong-column-line = Question
wrong-day = { DAY($day) }
wrong-line = { $line }
