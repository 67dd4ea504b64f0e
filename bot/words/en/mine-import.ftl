### Facts: MineTaken
### A file that was taken back.

mine-import-title = The file is taken back
mine-import-head = { $enclosures ->
    [one] { $enclosures } enclosure
   *[other] { $enclosures } enclosures
  } with { $readings ->
    [one] { $readings } reading
   *[other] { $readings } readings
  }: kept as in the file.
mine-import-rest = What the file does not name stays as it was.
mine-import-reminders = Reminders come by direct message. Past ones are left out.
mine-import-cases = Cases are not shared again: each needs your yes anew.
mine-import-step = Look at it: mine list
mine-import-elsewhere = { $elsewhere ->
    [one] One reading that you gave to another group is
   *[other] { $elsewhere } readings that you gave to other groups are
  } left out: take the file back there too.
