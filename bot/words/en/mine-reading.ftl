### Facts: Written
### Readings that were written down.

mine-reading-title = Readings of “{ $name }” on { DAY($day) }
mine-reading-head = { $count ->
    [one] { $count } reading written down.
   *[other] { $count } readings written down.
  }
mine-reading-replaced = Replaced
mine-reading-step-show = See the history: mine show name:{ $name }
mine-reading-step-unread = Take them away again: mine unread name:{ $name } day:{ $typed_day }
mine-reading-step-offer = May your group have the UV index too, without your name? Look first at what it would get: mine offer name:{ $name }
