### Facts: TubeChosen, TubePlaces, Place, Suit, OwnThere, ForBox, StandardLong, SuitShown

tube-title = { $animal ->
    [none] Which tube for this place
   *[some] Which tube for { NAME($animal, form: "a") }
  }

## The answer in brief
tube-named = T5 HO, { SHARE($strength, form: "given") } or weaker, { tubes-fixture }
tube-head-too_near = No tube: { LENGTH($at) } is too close.
tube-head-no_tube = No T5 HO tube fits into that box.
tube-head-keep_own = Keep your own lamp.
# Only with: $named
tube-head-take = { $many ->
    [one] Choose { $named }.
   *[other] Choose { $many } × { $named }.
  }
tube-head-all_weak = No usual tube is strong enough there.
tube-head-all_strong = Every usual tube is too strong there.
tube-head-none = No usual tube is right there.
tube-range-too_near = Make it at least { LENGTH($nearest) }.
tube-range-no_tube = The shortest is { LENGTH($shortest) } long.
# Only with: $own_there
tube-range-keep_own = UV index { UVI($own_there, form: "doubt") } at { LENGTH($at) }, aim for { UVI($wanted, form: "range") }.
# Only with: $best_there
tube-range-take = UV index { UVI($best_there, form: "doubt") } at { LENGTH($at) }, aim for { UVI($wanted, form: "range") }.
tube-range-all_weak = At { LENGTH($at) } all give less than { UVI($wanted, form: "range") }.
tube-range-all_strong = At { LENGTH($at) } all give more than { UVI($wanted, form: "range") }.
tube-range-none = At { LENGTH($at) } none surely gives { UVI($wanted, form: "range") }.
# Only with: $longest
tube-no-longer = No longer than { LENGTH($longest) }.
# Only with: $buy, $power
tube-length-within = Buy it { LENGTH($buy) } long, { WATTS($power) }.
# Only with: $buy, $power
tube-length-near = Buy it { LENGTH($buy) } long, { WATTS($power) }.
tube-length-no_length = No standard length suits this box.
tube-length-all_lit = The shortest lights nearly all of it.
tube-length-no_tube = { tube-range-no_tube }
tube-own-gives = Your own lamp: UV index { UVI($there) }, { $judged }.
tube-do-higher = Hang it higher, or lower the platform.
tube-do-longer-box = Best: a longer box.
tube-do-distance = Ask card where each must hang.
tube-do-measure = Lamp off, then measure to its back.
tube-do-meter = A UV meter should show { UVI($wanted, form: "range") }.
tube-do-box = Tell me how long the enclosure is.

## Why
tube-why-too_near = { LENGTH($at) } is too close for any tube. An animal that lifts itself gets far more UV there, and it can touch the fixture.
# Only with: $box_long
tube-why-no_tube = The enclosure is { LENGTH($box_long) } long. The shortest standard T5 HO tube is { LENGTH($shortest) }.
tube-why-keep_own = Your readings tell more of your own lamp than its class does.
tube-why-take = Two tubes of one strength differ, so the table gives a range for each. A weaker one than I choose is safe there, but may give too little; a stronger one is not. Strengths from 6 to 12 % come first, because their distances are best known.
tube-why-all_weak = Even the strongest class gives too little there. It could hang closer, but never closer than { LENGTH($nearest) }, or under a coarser screen.
tube-why-all_strong = Even the weakest class gives too much there. Any of them has to hang farther away.
tube-why-none = Some give too little there, some too much, and of the rest nobody can tell.
tube-without-readings = Without your readings I would choose T5 HO, { SHARE($strength, form: "given") }, { tubes-fixture }: UV index { UVI($there, form: "doubt") } there{ $longest ->
    [none] .
   *[some] , if it is no longer than { LENGTH($longest) }.
  }
tube-for-longer-box = For a longer box I would choose T5 HO, { SHARE($strength, form: "given") }, { tubes-fixture }: UV index { UVI($there, form: "doubt") } there{ $longest ->
    [none] .
   *[some] , if it is no longer than { LENGTH($longest) }.
  }

## Steps
tube-step-higher = Hang the tube higher or lower the platform, until it is at least { LENGTH($nearest) } from the animal's back. Then ask again.
tube-step-longer-box = Best: a longer box. From about { LENGTH($least) } the shortest tube leaves a shady end. Ask plan for the whole set-up.
tube-step-other-kinds = Other kinds, such as a compact lamp, are short enough, but I cannot work out their UV. Use one only where you can read it with a UV meter at the animal's back.
tube-step-box = How long is the enclosure? Ask again with it, such as enclosure:{ LENGTH($example_box, units: "first") }, and I choose the length too.
tube-step-distance = Ask card to see where a tube of each strength must hang.
tube-step-measure = Measure from the underside of the lit tube to the animal's back where it basks.
tube-step-meter = Check with a UV meter at back height: { UVI($wanted, form: "range") } is right. Measure again after every change.

## Where no distance was told
tube-places-head = { $many ->
    [0] No usual tube has a place there.
   *[other] Choose T5 HO, { SHARE($strength, form: "given") } or weaker.
  }
tube-places-each = { $fixture ->
    [polished] { $net ->
        [none] Mirror, no mesh: { LENGTH($away, form: "range") }.
       *[other] Mirror, over mesh: { LENGTH($away, form: "range") }.
      }
   *[plain] { $net ->
        [none] No mirror, no mesh: { LENGTH($away, form: "range") }.
       *[other] No mirror, mesh: { LENGTH($away, form: "range") }.
      }
  }
tube-places-name = { $fixture ->
    [polished] { $net ->
        [none] Mirror, no mesh
       *[other] Mirror, over mesh
      }
   *[plain] { $net ->
        [none] No mirror, no mesh
       *[other] No mirror, over mesh
      }
  }
tube-places-away = { LENGTH($away, form: "range") }
tube-places-note = Bars: from the nearest to the farthest distance.
tube-places-do = Ask again with your own distance.
tube-places-step-again = Ask again with that distance, with what is between tube and animal, and whether there is a mirror behind the tube.
tube-places-why = A strong tube far away and a weak one close by give the same UV. What decides is where it can hang. A mirror and no mesh is the strongest there is; no mirror over a mesh that blocks 45 % is the weakest usual one. Yours lies between.

## Numbers
tube-label-place = Place
tube-place = { LENGTH($at) } from tube to back, { $through }
tube-several = { $many } of each side by side. Their UV adds.
tube-label-box = Enclosure
tube-box = { LENGTH($length) } long{ $depth ->
    [none] .
   *[some] { $height ->
        [none] , { LENGTH($depth) } deep.
       *[some] , { LENGTH($depth) } deep, { LENGTH($height) } high. I read it in this order: the tube goes along the length.
      }
  }{ $above ->
    [yes] {" "}At your distance the tube hangs above the box.
   *[no] {""}
  }
tube-label-wanted = Length to aim for
# Only with: $ideal
tube-wanted-long = { LENGTH($ideal, form: "range") }: half to two thirds of the enclosure
tube-label-middle = Where it goes
# Only with: $buy, $power, $middle, $lit
tube-middle = The { WATTS($power) } tube is { LENGTH($buy) } long. Start it at the warm end, its middle about { LENGTH($middle) } from that wall, so that UV and heat lie together. It covers { SHARE($lit) } of the length{ $fit ->
    [near] , a little off but the nearest.
   *[other] .
  }
tube-label-nearest = Nearest lengths
tube-nearest = { LIST($others, join: "list-or") }
tube-standard = { LENGTH($long) } ({ WATTS($power) })
tube-column-tube = Tube
tube-column-fixture = Fixture
tube-column-there = UV index there
tube-column-verdict = Verdict
tube-cell = { SHARE($strength, form: "given") }
tube-there = { UVI($there, form: "doubt") }
tube-verdict = { $judged }{ $limit ->
    [none] {""}
   *[some] {" "}up to { LENGTH($limit) } long
  }
tube-own = your own lamp
tube-as-read = as you read it
tube-own-there = { UVI($there, form: "doubt") }
tube-own-verdict = { $judged }
tube-too-near = too close
tube-read-again = read again

## Picture
tube-picture-line = { SHARE($strength, form: "given") } { $fixture ->
    [polished] polished
   *[plain] plain
  }
tube-picture-aim = aim for { UVI($wanted, form: "range") }
tube-picture-note = Bars: from the least to the most that a tube may give there; dot: the likeliest. Full: the one to choose.
tube-picture-note-none = Bars: from the least to the most that a tube may give there; dot: the likeliest. Nothing here suits the place.
tube-picture-alt = Bars: { tube-title }, { tube-place }.
tube-picture-alt-aim = Aim for { UVI($wanted, form: "range") }.
tube-alt-each = At that place: { LIST($each, join: "list-semi") }.
tube-alt-suit = { SHARE($strength, form: "given") }, { tubes-fixture } { UVI($there, form: "doubt") }, { $judged }
