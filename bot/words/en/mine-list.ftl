### Facts: KeptOfMine, KeptBox
### All that is kept for a keeper.

mine-list-title = What I keep for you
mine-list-head = { $enclosures ->
    [0] No enclosures
    [one] { $enclosures } enclosure
   *[other] { $enclosures } enclosures
  } and { $reminders ->
    [0] no reminders
    [one] { $reminders } reminder
   *[other] { $reminders } reminders
  }.
mine-list-alone = Only you can see this.
mine-list-label-given = Given to groups
mine-list-given = { $given ->
    [one] one reading
   *[other] { $given } readings
  }, without your name

## The enclosures
mine-list-column-box = Enclosure
mine-list-column-animal = Animal
mine-list-column-readings = Readings
mine-list-column-last = Last read
mine-list-box = { $name }
mine-list-animal = { $animal ->
    [none] not told
   *[some] { NAME($animal) }
  }
mine-list-readings = { $readings }
mine-list-last = { $last ->
    [none] never
   *[some] { DAY($last) }
  }

## Steps
mine-list-step-look = Look at one: mine show
mine-list-step-keep = Keep one: mine save name:Pebble's box animal:bearded dragon
mine-list-step-export = Have all of it as a file: mine export
mine-list-step-forget = Delete all of it: mine forget
