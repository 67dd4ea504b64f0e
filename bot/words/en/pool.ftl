### Facts: PoolShown, PoolLine, PoolKind, PoolFading, PoolLines, ReadingsShown, ListedReading, _OfClass, _OfLamp
### What the readings of a group show, and its readings for its moderators.

pool-title = What your group's readings show
pool-head = { $count ->
    [0] Your group has no readings yet.
    [one] One keeper's reading is there.
   *[other] { $count } readings of { $keepers ->
        [one] one keeper
       *[other] { $keepers } keepers
      }.
  }
pool-none = Every keeper here may give one, and take it back.
# Only with: $known
pool-first = { CAP($name) }: { SHARE($known) } of what I expect.
pool-counting = { $counting ->
    [0] My answers do not go by them yet: that takes { $enough } keepers of one kind of tube.
    [one] My answers go by them for one kind of tube.
   *[other] My answers go by them for { $counting } kinds of tube.
  }
pool-step-give = Give one: mine offer
pool-step-back = Take yours back: mine withdraw
pool-label-newest = The last one
# Only with: $newest
pool-newest = { DAY($newest) }
pool-too-few = { $keepers ->
    [one] one keeper
   *[other] { $keepers } keepers
  }: too few to show a figure
pool-class = { SHARE($strength, form: "given") }, { $fixture ->
    [polished] polished
   *[plain] plain
  }
pool-fixture-polished = all polished
pool-fixture-plain = all plain
pool-own = your lamp “{ $name }”
pool-age-unknown = age not told
pool-age-burning_in = first 100 hours
pool-age-settled = up to half a year
pool-age-ageing = half a year to a year
pool-age-old = over a year
# Only with: $there, $spread
pool-kind = UV index { UVI($there) } at { LENGTH($at) } with no screen, give or take { SHARE($spread) }, by { $keepers } keepers. I have no figures of my own for it.
pool-kind-too-few = { $keepers ->
    [one] one keeper
   *[other] { $keepers } keepers
  }: too few to show a figure
pool-label-fading = In 30 days
# Only with: $of
pool-label-fading-of = { CAP($of) }, in 30 days
# Only with: $loss
pool-fading = { SHARE($loss) } less, in the middle of { $tubes } tubes of { $keepers } keepers
pool-fading-too-few = { $keepers ->
    [one] one keeper
   *[other] { $keepers } keepers
  } read a tube again: too few to show a figure
pool-column-kind = Kind
pool-column-keepers = By
pool-column-middle = Read
pool-column-known = With mine
pool-cell-keepers = { $keepers }
pool-cell-keepers-long = { $keepers } keepers
# Only with: $middle, $spread
pool-cell-middle = { SHARE($middle) } ± { SHARE($spread) }
# Only with: $known
pool-cell-known = { SHARE($known, form: "range") }
pool-cell-none = –
pool-why-expected = 100 % is what I expect of such a tube at its age and distance. “Read” is the middle of the keepers, each counted once, and how far they lie apart. By age it is over a new tube.
pool-why-known = “With mine” weighs the readings against what I thought before. Few readings lean on all tubes of the group, and those on my own figures. Nine in ten lie between.
pool-why-person = Of fewer than { $least } keepers I show no figure: it would tell what one of them read.

## The picture
pool-picture-title = How strong your group's tubes are
pool-picture-below = Full bars count in answers here
pool-picture-axis = % of what I expect
pool-picture-expected = what I expect
pool-picture-note = In a bar lie nine in ten of such tubes; the dot is their middle.
pool-picture-alt = Bars: how strong the tubes of the group are by their readings, over what was expected.
pool-alt-each = { LIST($each) }.
# Only with: $known, $of_one
pool-alt-line = { $name }: { SHARE($known) }, one tube { SHARE($of_one, form: "range") }, by { $keepers } keepers{ $counts ->
    [yes] , counts in answers
   *[no] {""}
  }

## For moderators
pool-list-title = Readings of your group
pool-list = { $count ->
    [0] Nobody gave a reading yet.
    [one] One reading. Nobody sees whose it is.
   *[other] { $count } readings. Nobody sees whose they are.
  }
# Only with: $gone
pool-cleared = Reading { $gone } is deleted for good.
pool-far = { $odd ->
    [one] One looks wrong: it comes first.
   *[other] { $odd } look wrong: they come first.
  }
pool-number = { $number }{ $far ->
    [yes] {" "}(far off)
   *[no] {""}
  }
pool-label-more = And
pool-more = { $more } more, older or as expected. Clear what is wrong and the next ones move up.
pool-step-clear = Clear one: server readings clear:NUMBER, with its number
pool-step-all = See what they show together: mine group
pool-step-tell = Tell your keepers of it: mine offer
pool-why-far = Marked is what lies more than three deviations from its kind. A typing slip, a wrong label or a dirty meter does that, and now and then a lamp that is really so.
pool-no-such = No reading here has that number.
