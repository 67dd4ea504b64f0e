### Facts: Tube, ByGroup
### A UV tube: what it is, how long, and how that is known.

tubes-label = Tube
tubes-label-lamp = Lamp
tubes-fixture = { $fixture ->
    [polished] polished reflector
   *[plain] plain fixture
  }
tubes-strength = { $to_buy ->
    [yes] { SHARE($strength, form: "given") } or weaker
   *[no] { SHARE($strength, form: "given") }
  }
tubes-name = { $whose ->
    [yours] your own lamp, by your readings
    [groups] the group's own lamp, by its readings
   *[class] { $count ->
        [one] T5 HO, { tubes-strength }, { tubes-fixture }
       *[other] { $count } × T5 HO, { tubes-strength } each, { tubes-fixture }
      }
  }
tubes-finish = { $fixture ->
    [polished] polished
   *[plain] plain
  }
tubes-short = { $whose ->
    [yours] your own lamp
    [groups] the group's own lamp
   *[class] { $count ->
        [one] T5 HO, { tubes-strength }, { tubes-finish }
       *[other] { $count } × T5 HO, { tubes-strength } each, { tubes-finish }
      }
  }
tubes-kind-label = Kind
tubes-kind = You did not tell me the kind, so I assumed a T5 HO tube.
tubes-held-label = Strength, fixture, age
tubes-held = { $whose ->
    [groups] They do not count: the group's readings hold them.
   *[yours] They do not count: your readings hold them.
  }
tubes-together-label = Side by side
tubes-together = { $gap ->
    [none] Their UV adds. I assumed that it all comes from one place, which is the careful side.
   *[some] { LENGTH($gap) } from middle to middle. Their UV adds, and I tell it for the strongest place under them.
  }
tubes-older-label = Label
# Only with: $older
tubes-older = I read “{ $older }” as the older scale: the { SHARE($strength) } class.
tubes-long-label = Length
tubes-long = { $long_known ->
    [told] { LENGTH($long) }, as you told me
    [from_watts] { LENGTH($long) }{ $watts ->
        [none] , from its watts
       *[some] , inferred from { WATTS($watts) }
      }
    [from_box] { LENGTH($long) }, inferred from the enclosure
    [as_read] lit part { LENGTH($lit) }, as it was read
    [shortest] You did not tell me, so I assumed { LENGTH($long) }, the shortest standard tube.
   *[unknown] You did not tell me. It can be anything from { LENGTH($long, form: "range") }.
  }
tubes-shorter-label = So short?
tubes-shorter = The shortest standard T5 HO tube is { LENGTH($shortest) }. Check that yours is one.
tubes-group-label = Your group
tubes-group = { $keepers } keepers of your group read tubes of this class, the last on { DAY($newest) }. What they read takes the place of my own figure here, never nearer than mine allows.
tubes-group-short = Goes by { $keepers } keepers of your group.
tubes-group-differ = Tubes of this kind differ among your group's { $keepers } keepers by about { SHARE($differ) }. A UV meter settles it.
tubes-age-label = Age
tubes-age = not told
tubes-ask-length = How long is the tube? Ask again with its length, such as length:{ LENGTH($example, units: "first") }, or with the watts printed on a T5 HO tube, such as length:{ WATTS($example_watts) }. That narrows it most.

## What was assumed, in brief
tubes-assumed-nothing = You told me all of the tube.
tubes-assumed-kind = I assumed a T5 HO tube.
tubes-assumed-length = I do not know how long the tube is.
tubes-assumed-both = I assumed a T5 HO tube of any length.
