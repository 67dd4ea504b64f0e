### Facts: BoxesSeen, BoxSeen, BoxOff, BoxDue
### All enclosures of a keeper at one look.

boxes-title = All your enclosures
boxes-head = { $wrong ->
    [0] No last reading is off in { $count ->
        [one] your enclosure.
       *[other] your { $count } enclosures.
      }
    [one] Something is off in { $wrong } of { $count }.
   *[other] Something is off in { $wrong } of { $count }.
  }
boxes-worst = { $name }: { LIST($off, join: "list-with") }.
boxes-off = { $what } { $judged }
boxes-due = { $waiting ->
    [one] Something is due for { $waiting } of them.
   *[other] Something is due for { $waiting } of them.
  }
boxes-column-box = Enclosure
boxes-column-off = Off
boxes-column-due = Due
boxes-box = { $name }{ $animal ->
    [none] {""}
   *[some] , { NAME($animal) }
  }
boxes-cell-off = { $off_count ->
    [0] nothing
   *[other] { LIST($off, join: "list-with") }
  }
boxes-cell-due = { $due_count ->
    [0] nothing
   *[other] { LIST($due_said, join: "list-with") }
  }
# Only with: $tube
boxes-due-tube = a new UV lamp (in use since { DAY($tube) })
boxes-due-reading = read the UV
boxes-due-reminder = { $reminders ->
    [one] { $reminders } reminder
   *[other] { $reminders } reminders
  }
boxes-step-one = Look at one: mine show
boxes-step-lamps = Your lamps and their age: mine lamps
boxes-step-timer = One timer plan for all: mine timer
