### Facts: Unwritten
### Readings that were taken away.

mine-unread-title = Readings of “{ $name }” on { DAY($day) }
mine-unread-head = { $gone ->
    [0] There were none on that day.
    [one] { $gone } reading taken away.
   *[other] { $gone } readings taken away.
  }
mine-unread-step = See the history: mine show name:{ $name }
