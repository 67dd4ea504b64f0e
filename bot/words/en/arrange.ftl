### Facts: Arrange, ArrangeSeen, ArrangedWay, WayMeets, WayApart, LampApart, Ways
### Which way the lamps should hang.

arrange-title = Which way the lamps should hang

## The answer in brief
arrange-head-side_by_side = Side by side, over the warm end.
arrange-head-in_a_row = In a row: the heat lamp, then the tube.
arrange-head-whole_length = A longer tube, over the whole box.
arrange-head-across = The tube across, over the warm end.
arrange-head-inside = Side by side, the tube inside.
arrange-head-above_mesh = Side by side, the tube on the mesh.
arrange-head-two_heat_lamps = Side by side, with two heat lamps.
# Only with: $heat
arrange-meets = { SHARE($heat) } of its warm spot gets its UV.
arrange-place = { SHARE($place) } of the platform gets its UV.
# Only with: $heat
arrange-row = In a row it would be { SHARE($heat) }.
arrange-assumed = { $whose ->
    [class] For { $count ->
        [one] T5 HO { SHARE($strength, form: "given") }, { $fixture }
       *[other] { $count } × T5 HO, { SHARE($strength, form: "given") }
      }.
   *[other] For your tube, by its readings.
  }
arrange-do-side_by_side = Heat lamp beside the tube's middle.
arrange-do-in_a_row = Platform under the end of both.
arrange-do-whole_length = Then shade needs plants and hides.
arrange-do-across = Hang it from back to front.
arrange-do-inside = Tube inside: guard on, out of reach.
arrange-do-above_mesh = Lay the tube on the mesh.
arrange-do-two_heat_lamps = Two weak floods beside the tube.
arrange-do-hide = Add a hide: the light leaves no shade.

## Steps
arrange-step-side_by_side = Hang the tube along the box, beginning at the warm end. Hang the heat lamp right beside its middle, over the platform, about { LENGTH($apart) } away from it: a hot tube gives less.
arrange-step-in_a_row = Hang the heat lamp at the warm end and the tube behind it. Put the platform where both reach.
arrange-step-whole_length = Hang a longer tube over the whole length. Then shade comes from hides, cork and plants alone, so give a lot of it.
arrange-step-across = Hang the tube from back to front over the platform, and the heat lamp right beside it, about { LENGTH($apart) } away, towards the cool end.
arrange-step-inside = Hang the tube inside, behind a guard and out of reach, with the heat lamp side by side with it over the platform. The distance is another than on the mesh: plan tells it.
arrange-step-above_mesh = Lay the tube on the mesh, with the heat lamp side by side with it over the platform. The distance is another than inside: plan tells it.
arrange-step-two_heat_lamps = Hang two floods of about half the watts beside the tube, over the platform, so that the warm patch is as long as the animal.
arrange-step-bar = A white LED bar, if you have one, hangs over the lit half on the tube's other side. It gives no UV.
arrange-step-measure = Then measure: the surface at five points, the cool end after two hours, and the UV index at the highest place if you can borrow a meter.

## Numbers
arrange-label-tube = Tube
arrange-tube = { $lamp }, { LENGTH($long) } long, over a platform { LENGTH($top) } high
arrange-label-assumed = I assumed
arrange-all-assumed = what plan assumes for this box; ask plan to see it
arrange-short-side_by_side = side by side
arrange-short-in_a_row = in a row
arrange-short-whole_length = tube over the whole box
arrange-short-across = tube across
arrange-short-inside = tube inside
arrange-short-above_mesh = tube on the mesh
arrange-short-two_heat_lamps = two heat lamps
arrange-compared = { $name }: { $safe ->
    [no] too strong
   *[yes] { $heat ->
        [none] { SHARE($place) } of the platform
       *[some] { SHARE($heat) } of the warm spot
      } in UV, { $shade ->
        [there] with shade
        [probably] probably with shade
        [cannot_tell] shade not sure
       *[other] hardly shade
      }
  }{ $best ->
    [yes] {" "}(my pick)
   *[no] {""}
  }
arrange-label-ways = Ways compared
arrange-column-way = Way
arrange-column-heat = Warm spot in UV
arrange-column-sun = All three meet
arrange-column-light = Bright to dim
arrange-column-cool = Warm spot to cool wall
arrange-column-shade = Shade
arrange-column-apart = What touches what
arrange-way-side_by_side = { $best ->
    [yes] Side by side (my pick)
   *[no] Side by side
  }
arrange-way-in_a_row = { $best ->
    [yes] In a row (my pick)
   *[no] In a row
  }
arrange-way-whole_length = { $best ->
    [yes] Tube over the whole box (my pick)
   *[no] Tube over the whole box
  }
arrange-way-across = { $best ->
    [yes] Tube across (my pick)
   *[no] Tube across
  }
arrange-way-inside = { $best ->
    [yes] Tube inside (my pick)
   *[no] Tube inside
  }
arrange-way-above_mesh = { $best ->
    [yes] Tube on the mesh (my pick)
   *[no] Tube on the mesh
  }
arrange-way-two_heat_lamps = { $best ->
    [yes] Two heat lamps (my pick)
   *[no] Two heat lamps
  }
arrange-cell-sun = { $sun ->
    [none] no heat lamp
   *[some] { $safe ->
        [no] too strong
       *[yes] { SHARE($sun) } of the platform
      }
  }
arrange-cell-heat = { $heat ->
    [none] no heat lamp
   *[some] { SHARE($heat) }
  }
arrange-cell-shade = { $shade ->
    [there] yes
    [probably] probably
    [cannot_tell] cannot tell
    [probably_none] hardly
   *[none] none
  }
arrange-cell-light = UV index { UVI($strongest, form: "doubt") } to { UVI($weakest, form: "doubt") }
arrange-cell-cool = { $cool ->
    [none] no heat lamp
   *[some] { LENGTH($cool) }
  }
arrange-cell-apart = { $kept ->
    [tube_to_back] tube too near the back
    [lamp_to_platform] heat lamp too near the platform
    [tube_to_lamp] tube and heat lamp too near each other
   *[all] limits kept
  }: tube to back { LENGTH($to_back) }, tube { $at ->
    [on] on the lid
    [over] { LENGTH($to_lid) } over the lid
   *[under] { LENGTH($to_lid) } under the lid
  }{ $beside ->
    [none] {""}
   *[some] , { $beside }
  }
arrange-lamp-apart = heat lamp to tube { LENGTH($to_tube) }, to back { LENGTH($to_back) }, heat lamp { $at ->
    [on] on the lid
    [over] { LENGTH($to_lid) } over the lid
   *[under] { LENGTH($to_lid) } under the lid
  }

## Why
arrange-why-side_by_side = Like this UV and heat come from one place, as from the sun, and the other end stays dark.
arrange-why-in_a_row = In this box the tube does not fit beside the lamp in any better way.
arrange-why-whole_length = In this box a short tube lights too little of the platform. The long one leaves less shade.
arrange-why-across = In this box a tube along leaves hardly any shade, or lights the platform less. From back to front it lights the platform and leaves the cool end darker.
arrange-why-inside = Inside, no mesh takes UV away, so the platform gets it more evenly. It takes a guard.
arrange-why-above_mesh = On the mesh nobody can touch the tube, and the platform still gets its UV.
arrange-why-two_heat_lamps = The warm spot gets as wide as the animal, and still lies in the UV.
arrange-why-picked = I leave out what is likely too strong. Then shade counts, then how much of the warm spot and of the platform gets the UV. Of ways that are alike I take the simplest. Where only the shade is not sure, a hide makes it: for that I take no way that serves far less, and turn no tube.
# Only with: $heat
arrange-why-one_lamp = One heat lamp to begin with. Two weaker ones warm a wider spot, { SHARE($heat) } of it in UV: a step up for when all reads fine, and next names it for long animals.
arrange-why-light = The light of a white flood goes where its heat goes. So where heat and UV meet it is bright too.
arrange-why-gradient = From warm to cool I tell the way, not the degrees: read both ends. Of heat lamp to lid I know no safe distance: keep to what is printed on the lamp and its holder.

## Care
arrange-care-heat = Keep some { LENGTH($apart) } between heat lamp and tube, and a guard between each lamp and the animal.
arrange-care-heat-short = Guard on, lamp and tube apart.

## The picture
arrange-long = { LENGTH($seen) }
arrange-picture-note = Hides are not in the picture.
arrange-picture-shade = { $shade ->
    [there] with shade
    [probably] probably with shade
    [cannot_tell] shade not sure: add a hide
   *[other] hardly shade: add a hide
  }
