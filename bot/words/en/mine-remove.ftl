### Facts: EnclosureGone
### An enclosure that was taken away.

mine-remove-title = “{ $name }” is gone
mine-remove-head = I deleted “{ $name }”.
mine-remove-with = { $readings ->
    [0] It had no readings. Its reminders are gone too.
    [one] Its reading and its reminders are gone too.
   *[other] Its { $readings } readings and its reminders are gone too.
  }
mine-remove-step = What is left: mine list
