### Facts: Unsurely, UnsureWay, WaysShown
### What holds of a tube while its fixture or its screen is not known.

unsure-title = { $animal ->
    [none] The tube, until you know more
   *[some] The tube for { NAME($animal, form: "a") }, until you know more
  }

## The answer in brief
# Only with: $start
unsure-head-start = For now: { LENGTH($start) } to its back.
unsure-mild = There it is mild whatever you have.
# Only with: $least, $most
unsure-expect = UV index { UVI($least) } to { UVI($most) } there.
unsure-head-nothing = Find out first what you have.
unsure-not-every-way = It may be too strong at any distance.
# Only with: $least, $most
unsure-head-there = UV index { UVI($least) } to { UVI($most) } there.
# Only with: $standing
unsure-standing = { $standing ->
    [alike] { $verdict ->
        [none] To aim for { UVI($wanted, form: "range") }: see the table.
        [far_too_low] Far too low for { UVI($wanted, form: "range") } either way.
        [low] Too low for { UVI($wanted, form: "range") } either way.
        [probably_low] Probably low for { UVI($wanted, form: "range") } either way.
        [fine] Fine for { UVI($wanted, form: "range") } either way.
        [cannot_tell] Nobody can tell about { UVI($wanted, form: "range") }.
        [probably_high] Probably high for { UVI($wanted, form: "range") } either way.
        [high] Too high for { UVI($wanted, form: "range") } either way.
       *[dangerous] Dangerous either way: aim for { UVI($wanted, form: "range") }.
      }
    [may_be_above] Maybe too much: aim for { UVI($wanted, form: "range") }.
    [may_be_below] Maybe too little: aim for { UVI($wanted, form: "range") }.
   *[below_or_above] Maybe too little, or too much with a strong lamp: aim for { UVI($wanted, form: "range") }.
  }
unsure-too-near = Too close for any tube: switch it off.
unsure-until-find_out = Find out before anything basks there.
unsure-until-leave = Leave it there until you know more.
# Only with: $start
unsure-until-hang = For now hang it at { LENGTH($start) }.
unsure-do-fixture = Lamp off: is there a mirror inside?
unsure-do-screen = Find out what the screen blocks.
unsure-do-again = Then ask again with what you found.

## Why
unsure-why-start = { $start ->
    [none] Not every way this may be gives UV index { UVI($wanted, form: "range") } from a safe distance.
   *[some] At { LENGTH($start) } the strongest way this may be gives no more than UV index { UVI($wanted, form: "range") }, however long the tube is. Every other way gives less. Rather too mild than too strong: find out in the next days.
  }
# Only with: $at
unsure-why-there = { LENGTH($at) }: every way this may be is in the table.
unsure-why-wide = Fixture and screen change the UV more than anything else. On top of that, lamps of one class differ by about a third.
# Only with: $differ
unsure-why-group = Fixture and screen change the UV more than anything else. On top of that, lamps of this class differ among the keepers of your group, by about { SHARE($differ) }.

## Steps
unsure-step-until-find_out = Find out before anything basks there.
unsure-step-until-leave = Leave it there until you know more.
# Only with: $start
unsure-step-until-hang = Until you know more, hang it { LENGTH($start) } from the animal's back.
unsure-step-fixture = Switch the tube off, let it cool and look up into the fixture. You see yourself as in a mirror? It is polished. It is white or plastic? It is plain.
unsure-step-screen = Look whether anything is between the tube and the animal: a mesh, a lid, glass.
unsure-step-mesh = Find out how much UV the mesh blocks. With a UV meter, read below the tube with the mesh and without it (the question meter works it out). Without a meter, count its wires to the inch and measure one: the guide page screens shows how.
unsure-step-again = Then ask again with what you found, such as: { $again }
unsure-step-change = Measure again whenever tube, fixture, screen or platform change.

## Numbers
unsure-label-unknown = You do not know
unsure-unknown = { $fixture_unknown ->
    [yes] { $screen_unknown ->
        [yes] { $some_mesh ->
            [yes] what is behind the tube, and how much the mesh blocks
           *[no] what is behind the tube, and what is between tube and animal
          }
       *[no] what is behind the tube
      }
   *[no] { $some_mesh ->
        [yes] how much the mesh blocks
       *[no] what is between tube and animal
      }
  }
unsure-column-way = If it is
unsure-column-away = Tube to back
unsure-column-there = UV index there
unsure-way = { $fixture ->
    [none] { $screen }
    [polished] polished reflector, { $screen }
   *[plain] plain fixture, { $screen }
  }
# Only with: $span
unsure-away = { LENGTH($span, form: "range") }
# Only with: $there
unsure-there = { UVI($there, form: "doubt") }

## Picture
unsure-picture-aim = aim for { UVI($wanted, form: "range") }
# Only with: $start
unsure-picture-start = for now { LENGTH($start) }
unsure-picture-note = Bars: from the nearest to the farthest if it is so. Dot: where to start then.
unsure-picture-note-there = Bars: from the least to the most if it is so. Dot: the likeliest.
unsure-picture-alt = Bars: { unsure-title }.
unsure-alt-each = If it is: { LIST($each, join: "list-semi") }.
unsure-alt-way = { unsure-way }: { $there ->
    [none] { $span ->
        [none] { $judged }
       *[some] { LENGTH($span, form: "range") }
      }
   *[some] { UVI($there, form: "doubt") }, { $judged }
  }
