### Facts: TimerPlan, TimerLine
### One timer plan for all enclosures.

timer-title = One timer plan for all
timer-same = { $count ->
    [one] One enclosure, one timer.
   *[other] One timer does for all { $count }.
  }
timer-differ = They need different hours: one timer each.
timer-times = { $same ->
    [yes] On at { CLOCK($on) }, off at { CLOCK($off) }: { HOURS($lit) }.
   *[no] The first goes on at { CLOCK($on) }, the last off at { CLOCK($off) }.
  }
timer-unknown = { $unknown ->
    [one] For { $unknown } of them I know no hours, so I took 12.
   *[other] For { $unknown } of them I know no hours, so I took 12.
  }
timer-do = UV, heat and light go on and off together.
timer-step-lamps = Put all lamps of an enclosure on its timer, and none of them on for the night. A thermostat for the night keeps its own socket.
timer-step-season = For seasons, ask for one animal: hours latitude:home
timer-column-box = Enclosure
timer-column-on = On
timer-column-off = Off
timer-column-lamps = On this timer
timer-box = { $name }{ $animal ->
    [none] {""}
   *[some] , { NAME($animal) }
  }
timer-on = { CLOCK($on) }
timer-off = { CLOCK($off) }
timer-lamps = { $uv ->
    [yes] UV lamp, { $warm ->
        [yes] basking lamp, light
       *[no] light
      }
   *[no] { $warm ->
        [yes] basking lamp, light
       *[no] light
      }
  }
timer-why = Where the hours of all animals meet, all get the same, as near to 12 hours as they allow. Otherwise each gets its own around the same noon. Check a timer after a power cut.
timer-night = Lamps that go on then would burn at night.
