### Facts: Whom, CheckPieces, CheckNearest, Marked, CheckRow, CheckAim, CheckLong, CheckWhy, NothingTold, StrongUv, Unwatched, Again, BeyondTemp, BeyondLength, BeyondTime, MoreRoom, MeterMove, TubeMove, UvWish, UvMeter, UvWorked, UvByCase, UvCase, UvUnjudged, UvBare, HeatApart, LightRead, LightOnly, NightRead, LampsTold, LampTold, CheckSun, SunTold, WhiteTold

check-title = { $named ->
    [one] Your set-up for { NAME($animal, form: "a") }, checked
    [first_of_several] Your set-up for { NAME($animal, form: "a") }, checked
    [no_figures] Your set-up, checked: { $words }
   *[other] Your set-up, checked
  }

## The answer in brief
check-head-fine = Yes, all of it is right.
check-head-so-far = Nothing to change so far.
check-no-spot = It needs no hot spot: the air counts.
check-head-unknown = I cannot tell yet.
check-head-uv = The UV is { $verdict ->
    [probably_low] probably too weak
    [probably_high] probably too strong
    [cannot_tell] perhaps too strong
   *[other] { $above ->
        [yes] too strong
       *[no] too weak
      }
  }: about { UVI($uvi) }.
# Only with: $at
check-head-too-near = The tube is too close: { LENGTH($at) }.
check-head-uv-depends = The UV depends on { $split ->
    [behind] what is behind the tube
    [between] the mesh
   *[both] mesh and reflector
  }.
check-head-pane = No useful UV comes through the pane.
check-head-no-tube = There is no UV tube.
check-head-lamp-off = It is dangerously hot.
check-head-alike = Both ends are too alike: { DIFF($apart) } apart.
check-head-far-apart = The ends differ too much: { DIFF($apart) }.
check-head-hours = { HOURS($lit) } of light is too { $long ->
    [yes] long
   *[no] short
  }.
check-head-night = { $decision ->
    [too_warm] { TEMP($coldest) } is too warm for a night.
    [keepers_differ] A night of { TEMP($coldest) } is borderline.
   *[other] { TEMP($coldest) } is too cold for a night.
  }
check-head-lamps = The wrong lamp: { LIST($lamps) }.
check-head-unwatched = No thermostat: { LIST($heaters) }.
check-head-sun-apart = UV and heat lie apart.
check-head-sun-row = In a row UV and heat do not meet.
# Only with: $beside
check-sun-met = UV, heat, light on { SHARE($beside) } of its place.
check-fine = Fine: { LIST($pieces) }.
check-open = { $more ->
    [0] Not known yet: { $first }.
   *[other] Not known yet: { $first } and { $more } more.
  }
check-whom = { $named ->
    [first_of_several] You named { LIST($among) }. I went by { NAME($animal, form: "a") }.
    [no_figures] I have no figures for { $words }, so I judged only what holds for any animal.
    [may_be_several] “{ $words }” may be several animals: { $some_known ->
        [yes] { LIST($among, join: "list-or") }{ $some_bare ->
            [yes] {" "}(or { LIST($bare, join: "list-or") }, of which I have no figures)
           *[no] {""}
          }
       *[no] { LIST($bare, join: "list-or") }
      }. I judged only what holds for any animal.
    [unknown] I do not know the animal “{ $words }”. I judged only what holds for any animal.
   *[nobody] You named no animal, so I judged only what holds for any animal. Name it with animal: for the rest.
  }
check-whom-short = { $named ->
    [first_of_several] I went by { NAME($animal, form: "a") }.
    [no_figures] No figures for it: judged as for any.
   *[other] Which animal? I judged as for any.
  }

## A part
check-piece-safety = Safety
check-piece-uv = UV
check-piece-lamp_time = Time the lamp was on
check-piece-basking = Basking spot
check-piece-cool = Cool end
check-piece-warm = Warm end
check-piece-apart = Warm to cool
check-piece-hours = Hours of light
check-piece-night = Night
check-piece-water = Water
check-piece-lamps = Lamps
check-piece-sun = Patch of sun
check-short-safety = safety
check-short-uv = UV
check-short-lamp_time = lamp time
check-short-basking = basking spot
check-short-cool = cool end
check-short-warm = warm end
check-short-apart = warm to cool
check-short-hours = hours of light
check-short-night = night
check-short-water = water
check-short-lamps = lamps
check-short-sun = patch of sun
check-word = { $verdict ->
    [far_too_low] { verdict-far_too_low }
    [low] { verdict-low }
    [probably_low] { verdict-probably_low }
    [fine] { verdict-fine }
    [probably_high] { verdict-probably_high }
    [high] { verdict-high }
    [dangerous] { verdict-dangerous }
   *[cannot_tell] { verdict-cannot_tell }
  }
check-depends = depends
check-case = UVI { UVI($uvi) } { LIST($where) }: { check-uv-word }.
check-uv-word = { $verdict ->
    [far_too_low] far too weak
    [low] too weak
    [probably_low] probably too weak
    [fine] right
    [probably_high] probably too strong
    [high] too strong
    [dangerous] dangerous
   *[cannot_tell] borderline
  }
check-where-mirror = with a mirror
check-where-white = without a mirror
check-where-open = without mesh
check-where-mesh = through mesh
check-where-light_mesh = through mesh (30 %)
check-where-usual_mesh = through mesh (45 %)
check-where-dense_mesh = through mesh (60 %)
check-needless = not needed
check-sign = { $sign ->
    [fine] fine
    [change] change
   *[cannot_tell] cannot tell
  }

## Missing: found out in a few words, with how, and as a thing
check-find-short-tube = Look up the strength on the tube.
check-find-short-distance = Measure from the tube to its back.
check-find-short-reflector = Look: is the hood like a mirror?
check-find-short-screen = Look: is there mesh under the tube?
check-find-short-tube_length = Measure how long the tube is.
check-find-short-meter = Read the UV index at its back.
check-find-short-basking = Read the basking spot with a gun.
check-find-short-cool = Read the cool end with a probe.
check-find-short-hours = Say how long the lights are on.
check-find-short-night = Read the coldest it gets at night.
check-find-short-water = Measure the water.
check-find-short-lamps = Say what lamps and heaters you have.
check-find-short-beside = Tell me: side by side, or in a row?
check-find-tube = Find out { check-missing-tube }.
check-find-distance = Measure { check-missing-distance }.
check-find-reflector = Find out { check-missing-reflector }.
check-find-screen = Find out { check-missing-screen }.
check-find-tube_length = Find out { check-missing-tube_length }.
check-find-meter = Find out { check-missing-meter }.
check-find-basking = Measure { check-missing-basking }.
check-find-cool = Measure { check-missing-cool }.
check-find-hours = Find out { check-missing-hours }.
check-find-night = Measure { check-missing-night }.
check-find-water = Measure { check-missing-water }.
check-find-lamps = Find out { check-missing-lamps }.
check-find-beside = Find out { check-missing-beside }.
check-missing-tube = the strength printed on the tube
check-missing-distance = the distance from the underside of the tube to the animal's back, with a tape measure
check-missing-reflector = whether the fixture behind the tube is like a mirror when the tube is off and cold (polished), or white or plastic (plain)
check-missing-screen = what is between tube and animal: nothing, or a mesh and how much it blocks
check-missing-tube_length = how long the tube is, or the watts printed on it
check-missing-meter = the UV index at the animal's back, read with a meter
check-missing-basking = { heat-missing-basking_surface }
check-missing-cool = { heat-missing-cool_air }
check-missing-hours = how long the lights are on
check-missing-night = { heat-missing-night_air }
check-missing-water = { heat-missing-water }
check-missing-lamps = the kind of every lamp and heater
check-missing-beside = whether heat lamp and tube hang side by side, in a row or at opposite ends
check-label-missing = Missing

## Things to do
check-do-room = Give the animal more room. { LENGTH($at) } from the tube is too close to be safe. Keep at least { LENGTH($nearest) }.
check-do-room-short = Keep the tube { LENGTH($nearest) } away.
check-do-meter = Move the tube { $farther ->
    [yes] farther from
   *[no] nearer to
  } the animal's back, or the platform, until the meter shows { UVI($wanted, form: "range") }.
check-do-meter-short = Move it { $farther ->
    [yes] farther
   *[no] nearer
  } until UVI { UVI($wanted, form: "range") }.
check-do-move = { $to ->
    [none] Bring the tube { $farther ->
        [yes] farther from
       *[no] nearer to
      } the animal's back. Tell me the fixture and the screen, and I can say how far.
   *[some] Bring the tube { $farther ->
        [yes] farther from
       *[no] nearer to
      } the animal's back, to { LENGTH($to) }. Moving the platform does the same.
  }
check-do-move-short = { $to ->
    [none] Move the tube { $farther ->
        [yes] farther away
       *[no] nearer
      }.
   *[some] Hang the tube { LENGTH($to) } away.
  }
# Only with: $to
check-do-until = Measure how long the tube is, from end to end. Until then hang it { LENGTH($to) } from the animal's back, where even the longest gives no more than you aim for.
# Only with: $to
check-do-until-short = Measure the tube. Until then: { LENGTH($to) } away.
# Only with: $to
check-do-for-now = For now hang the tube { LENGTH($to) } from the animal's back. There it is not too strong, whichever way it is. Move it nearer when you know.
# Only with: $to
check-do-for-now-short = For now hang it { LENGTH($to) } away.
check-do-length = Measure how long the tube is, from end to end. No one distance is right for every length.
check-do-no-place = No sensible distance gives the UV you aim for with this tube, fixture and screen. The question distance, with the same words, says why and what to use instead.
check-do-no-place-short = Ask distance what to use instead.
check-do-to-back = Measure again from the underside of the tube to the animal's back, where it basks.
check-do-pane = Put the tube inside, or over open metal mesh. Then ask distance again, and start at the far end of the range.
check-do-pane-short = Put it inside, or over open mesh.
check-do-ask-meter = Ask meter with your readings, such as: meter readings:4.2 at 12 in, 2.9 at 15 in.
check-do-ask-meter-short = Ask meter with your readings.
check-do-read-uvi = Read the UV index at the animal's back with a meter. { UVI($wanted, form: "range") } is right. Never hang it nearer than { LENGTH($nearest) }. Without a meter plan a T5 HO tube.
check-do-plan-tube = Plan a T5 HO tube for the UV. The question plan, or tube, says which one and where.
check-do-plan-tube-short = Ask plan which tube, and where.
check-do-again = Check the figure { $piece ->
    [uv] for the tube
    [lamp_time] for the time the lamp was on
    [basking] for the basking spot
    [cool] for the cool end
    [warm] for the warm end
   *[night] for the night
  } and give it again, such as { $again }.
check-do-again-short = Give it again, such as { $again }.
check-do-beside = Hang tube and heat lamp side by side over the basking place, lamps off and cold. Then measure again. Ask arrange for your box.
check-do-beside-short = Hang lamp and tube side by side.
check-do-timer = Set the timer to { HOURS($day, form: "range") } of light a day.
check-do-timer-short = Set the timer to { HOURS($day, form: "range") }.
check-do-replace = Plan to replace the { NAME($lamp) }. Keep the animal warm until then. { $note }
check-do-replace-short = Plan another lamp for it.
check-do-keep-short = Leave everything as it is.
check-any-nearest = Never hang a UV tube nearer than { LENGTH($nearest) } above its back.
check-any-shade = Give it shade that no UV reaches and a cool place, both open to it at any time.
check-any-measure = Measure before it moves in: the UV index with a meter, surfaces with an infrared gun, the air and the night with a digital probe.
check-any-range = Once somebody told you the UV index it should have, I can work out a distance without its name. Ask distance, and give that range with uvi.

## Why
check-why = { $piece }: { $why }
check-why-untold = You did not say.
check-why-unclear = You did not say it clearly.
check-why-strong-uv = { $times ->
    [none] A UV index of about { UVI($uvi, form: "given") } hurts eyes and skin of nearly every animal.
   *[some] The UV is about { UVI($times, form: "given") } times the most that { NAME($animal, form: "a") } gets. It can hurt eyes and skin.
  }
check-why-unwatched = Without a thermostat this can overheat and burn: { LIST($heaters) } (common practice, no source).
check-why-burns = A surface this hot burns.
check-why-no-cool-place = With a cool end this hot the animal has no cool place to go to.
check-beyond-temp = You gave { TEMP($temp) }. I can only be trusted from { TEMP($temps, form: "low") } up to { TEMP($temps, form: "high") }. Give it again, such as { $again }.
check-beyond-length = You gave { LENGTH($length) }. I can only be trusted from { LENGTH($lengths, form: "low") } up to { LENGTH($lengths, form: "high") }. Give it again, such as { $again }.
check-beyond-time = You gave { HOURS($time) }. I can only be trusted up to { HOURS($most) }. Give it again, such as { $again }.
check-beyond-other = One of the figures of your tube is beyond what I can work out. Give it again, such as { $again }.
check-aim = Aim for UVI { UVI($wanted, form: "range") } ({ $known }).
check-why-uv-untold = I know too little of the tube. { check-aim }
check-why-uv-pane = No useful UV comes through a pane of glass or plastic. { check-aim }
check-why-uv-several = You gave several readings of a meter. The question meter fits them together. { check-aim }
check-why-uv-none = There is no UV tube. { check-aim }
check-why-uv-no-figures = I have no figures for { check-kind }. Only a UV index meter can tell where it may hang. { check-aim }
check-kind = { $kind ->
    [other_tube] a T8 or other tube
    [compact] a compact lamp
    [metal_halide] a metal halide lamp
    [mercury] a mercury vapour lamp
    [led] an LED bar
    [t5_ho] a T5 HO tube
   *[unknown] a UV lamp that nobody can name
  }
check-why-uv-meter = Your meter shows { UVI($uvi) }: { check-word }. { check-aim }
check-at = { LENGTH($at) } { $told_from ->
    [back] from the back
    [perch] from the perch, so a little more at the back
   *[unsaid] away, which I assumed is to the back
  }{ $tubes ->
    [one] {""}
   *[other] , under { $tubes } tubes, whose UV adds
  }{ $across ->
    [yes] , and only straight under it, as it lies across
   *[no] {""}
  }
check-why-uv-open = UVI { UVI($uvi, form: "range") } at { check-at }. It depends on what you did not say. { check-aim }
check-why-uv-worked = About UVI { $one ->
    [yes] { UVI($uvi, form: "doubt") }
   *[no] { UVI($uvi, form: "range") }
  } at { check-at }: { check-word }. { check-aim }{ $longer ->
    [yes] {" "}A longer tube would be too strong there.
   *[no] {""}
  }{ $aged ->
    [yes] {" "}The tube is older than a year, so only a meter can tell.
   *[no] {""}
  }
check-why-uv-unjudged = I do not know the UV index that { NAME($animal, form: "your") } should have.
# Only with: $uvi
check-why-uv-unjudged-read = Your meter shows { UVI($uvi) }. { check-why-uv-unjudged }
# Only with: $uvi, $at
check-why-uv-unjudged-worked = About UVI { UVI($uvi, form: "range") } at { LENGTH($at) }. { check-why-uv-unjudged }
check-why-swapped = You say the cool end is hotter than the basking spot. Find out which is which.
check-why-apart = Basking spot and cool end are { DIFF($apart) } apart, so the animal can choose.
check-why-alike = Basking spot and cool end are { DIFF($apart) } apart, too alike for the animal to choose. Aim for at least { DIFF($least) }.
check-why-far-apart = Basking spot and cool end are { DIFF($apart) } apart, more than the { DIFF($most) } between the targets.
check-why-hours-untold = You did not say. 12 hours on and 12 off all year is a fine start (common practice, no source).
check-why-hours-only = { HOURS($lit) }. I know no target. 12 hours are a fine start.
check-why-hours = { HOURS($lit) } of light. Aim for { HOURS($day, form: "range") } ({ $known }).
# Only with: $floor, $known
check-why-night = { $decision ->
    [nothing] { TEMP($coldest) } needs no heat.
    [keepers_differ] { TEMP($coldest) } is where keepers differ.
    [too_warm] { TEMP($coldest) } is too warm.
   *[other] { TEMP($coldest) } is too cold.
  } It needs heat below { TEMP($floor, form: "range") }{ $has_aim ->
    [yes] , best { TEMP($floor) }
   *[no] {""}
  } ({ $known }).
check-why-night-unknown = { $cold ->
    [yes] { TEMP($coldest) } is too cold.
   *[no] { TEMP($coldest) }. I do not know how cool its night may get.
  }
check-why-no-lamp = You named no kind of heat lamp.
check-why-lamps-wrong = Not for this: { LIST($lamps) }.
check-why-lamps-read = What your meter and the basking spot show decides about the { LIST($lamps) }.
check-why-lamps-meter = UV and heat come together from the { LIST($lamps) }, so read both.
check-why-lamps-elsewhere = Not for the basking spot: { LIST($lamps) }.
check-why-lamps-good = Good for the basking spot: { LIST($lamps) }.
check-why-sun-shade = Shade from all three: { sun-shade }.
check-why-sun-white = Brightness: { sun-light }.
check-why-sun-apart = The heat is at one end and the UV at the other, so no place is like the sun. As far as we know an animal goes by warmth, and so it misses the UV (common practice, no source).
check-why-sun-which-untold = You did not say whether the heat lamp hangs beside the tube. Side by side UV, heat and light meet as in the sun (common practice, no source).
# Only with: $beside
check-why-sun-which-worked = You did not say whether the heat lamp hangs beside the tube. Side by side UV, heat and light would meet on { SHARE($beside) } ({ SHARE($beside, form: "range") }) of the platform{ $row ->
    [none] {""}
   *[some] , in a row on { SHARE($row) }
  }, in the usual places of such a box.
check-why-sun-beside-untold = Side by side UV, heat and light meet as in the sun (common practice, no source). Tell the box, the tube's length, fixture, mesh and distance for how much.
# Only with: $beside
check-why-sun-beside-worked = Side by side UV, heat and light meet on { SHARE($beside) } ({ SHARE($beside, form: "range") }) of the platform, in the usual places of such a box.
check-why-sun-row-untold = In a row the heat lies beside the UV, not in it. Tell the box, the tube's length, fixture, mesh and distance, and I work out what meets.
# Only with: $row, $beside
check-why-sun-row-worked = In a row UV, heat and light meet on { SHARE($row) } ({ SHARE($row, form: "range") }) of the platform, side by side on { SHARE($beside) }, in the usual places of such a box.
check-lamp = { CAP($lamp) }: { $note }

## Numbers
check-label-whom = Animal
check-label-correct = Correct me
check-correct = Did I read something wrongly? Ask again and add it, such as distance:16in or cool:78F.
check-column-part = Part
check-column-verdict = Verdict
check-column-read = Reading
check-column-aim = Aim for
check-cell-nothing = -
# Only with: $uvi
check-read-uvi = UVI { UVI($uvi) }
# Only with: $uvi
check-read-uvi-range = UVI { UVI($uvi, form: "range") }
check-read-uvi-worked = UVI { $one ->
    [yes] { UVI($uvi, form: "doubt") }
   *[no] { UVI($uvi, form: "range") }
  }
check-read-hours = { HOURS($lit) }
# Only with: $beside
check-read-sun-beside = { SHARE($beside) } ({ SHARE($beside, form: "range") }) of the platform
# Only with: $row
check-read-sun-row = { SHARE($row) } ({ SHARE($row, form: "range") }) of the platform
check-read-lamps = { LIST($lamps) }
check-aim-uvi = UVI { UVI($wanted, form: "range") }

## Nothing was told
check-nothing-title = Tell me about your set-up
check-nothing = I found nothing about a set-up in your words.
check-nothing-needs = I need the animal, the tube, its distance or temperatures.
check-nothing-do = Try: check beardie, 12%, 16in to his back, basking 98F.

## What needs no lamp
check-head-needs-no-lamp = It needs no UV lamp.
check-do-no-lamp = Leave the UV lamp off. It lives in water and needs none.
check-do-no-lamp-short = Leave the UV lamp off.
check-why-uv-unneeded = It lives in water alone and needs no UV.
check-why-uv-spare = It may do without UV. A lamp that you add later must leave it full shade.
check-care-water = Water near mains power: give every cable a drip loop, and keep sockets above the water.
check-care-water-short = Give every cable a drip loop.

## The picture
check-picture-length = { LENGTH($seen) }
check-picture-row = { $read ->
    [none] { $piece }: { $mark }
   *[some] { $piece }: { $mark }, { $read }
  }
check-picture-aim = aim for { $aim }
check-picture-alt = Side view to scale: { check-title }.
check-picture-danger = Danger first: do what the answer says at its top.
check-picture-own = Box: your size. What you did not tell me is drawn in a usual place.
check-picture-usual = Box: an example, as you told no size. What you did not tell me is drawn in a usual place.
check-picture-light = Light
check-picture-lux = about { LUX($spot) }
check-picture-no-need = No need is published.
check-picture-behind = The white light is drawn over the tube that may hide it.
check-picture-light-open = Light: a white lamp. How bright it makes the spot is not worked out.
check-picture-too-long = Your tube is longer than the box, so it is not drawn.
check-picture-too-high = What hangs too high for this box is not drawn.
