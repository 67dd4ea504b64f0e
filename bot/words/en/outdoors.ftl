### Facts: Outdoors, BehindGlass, HourOfSun, Span
### What real sun gives: in an open pen, behind a window, in a greenhouse.

outdoors-title = { $animal ->
    [none] The open sun
   *[some] The open sun for { NAME($animal, form: "a") }
  }
outdoors-title-closed = { $window ->
    [yes] Sun through a window
   *[no] Sun in a greenhouse
  }

## The answer in brief
outdoors-head-anybody = UV index at noon: { UVI($noon, form: "doubt") }.
outdoors-head-none = I know no UV range for it: give shade.
# Only with: $wanted
outdoors-head-weak = Too weak all day: it needs UV index { UVI($wanted, form: "range") }.
outdoors-head-noon = Right around noon, with shade beside it.
outdoors-head-edges = Too strong at noon: morning or evening.
outdoors-head-strong = Too strong nearly all day: mostly shade.
outdoors-head-hot = Not now: even the shade is too warm.
# Only with: $shade, $shade_wanted
outdoors-shade-hot = { TEMP($shade) } in the shade, aim for { TEMP($shade_wanted, form: "range") }.
# Only with: $shade
outdoors-shade-cold = { TEMP($shade) } in the shade is cool: short stays.
# Only with: $shade
outdoors-shade-fine = { TEMP($shade) } in the shade is right.
outdoors-here = At { CLOCK($hour) }: UV index { UVI($there, form: "doubt") }{ $verdict ->
    [none] .
   *[some] , { $verdict }.
  }
outdoors-right = UV right: { LIST($parts, join: "list-with") }.
outdoors-part = { CLOCK($start) } to { CLOCK($end) }
outdoors-noon = Noon in { $month }: UV index { UVI($noon, form: "range") }.
outdoors-assumed = Clear sky, sun time (noon { CLOCK($highest) }).
outdoors-do-shade = Half in shade always, and stay with it.
outdoors-do-stay = Begin with ten minutes.
outdoors-do-inside = Leave it in its cool end today.
outdoors-head-closed = { $window ->
    [yes] No UV worth counting comes through.
   *[no] Count on no UV under glass or plastic.
  }
outdoors-range-closed = { $window ->
    [yes] Only the sun's warmth comes in.
   *[no] It heats up within minutes.
  }
outdoors-do-tube = It needs its UV lamp all the same.

## Why
outdoors-why-clear = Worked out for level ground at sea level under a clear sky. Cloud, trees and haze take much of it; height and bright ground add.
outdoors-why-shade = In the sun the animal itself decides how long it stays, and it can only decide where there is shade to go to.
outdoors-why-glass = Window glass takes nearly all UVB. Greenhouse glass and plastic differ: most pass hardly any, some plastic passes much. Only a UV meter behind it can tell.
outdoors-why-oven = Sun that comes in through glass or plastic stays in as warmth. A closed space in the sun gets far hotter than the air outside.

## Steps
outdoors-step-pen = Use a pen of mesh or wire with a lid and a lock, never glass or plastic.
outdoors-step-half = Keep half of it in shade all the time. The sun moves: look again every quarter of an hour. Put water and a hide in the shade.
outdoors-step-stay = Stay with it. Cats, crows and dogs are quick. It gapes in the shade, or runs along the wire? Bring it in now.
outdoors-step-begin = Begin with ten minutes, early or late in the day.
outdoors-step-meter = Have a UV meter? Hold it at its back, facing up, and trust it more than any table.
outdoors-step-inside = Leave it indoors today, at its cool end. Go out in a cooler hour, and measure the shade first.
outdoors-step-tube = Leave its UV lamp on at its usual hours: the sun behind glass does not replace it.
outdoors-step-blind = Keep the box out of that sun: a blind at the window, a thermometer that remembers the hottest reading, and vents that open by themselves in a greenhouse.

## Numbers
outdoors-label-sky = The sky
outdoors-sky = { ANGLE($latitude) } { $south ->
    [yes] south
   *[no] north
  }, { $month }, clear: UV index { UVI($noon, form: "doubt") } at noon
outdoors-label-shade = In the shade
outdoors-shade-told-untold = not told
# Only with: $shade
outdoors-shade-told-unknown = { TEMP($shade) }: I know no range to hold it against. It must be able to cool down there.
# Only with: $shade, $shade_wanted
outdoors-shade-told-hot = { TEMP($shade) } is warmer than its cool end may be: { TEMP($shade_wanted, form: "range") }.
# Only with: $shade, $shade_wanted
outdoors-shade-told-cold = { TEMP($shade) } is cooler than its cool end: { TEMP($shade_wanted, form: "range") }. Only in the sun, out of the wind, and not for long.
# Only with: $shade, $shade_wanted
outdoors-shade-told-fine = { TEMP($shade) } suits its cool end: { TEMP($shade_wanted, form: "range") }.
outdoors-column-hour = Sun time
outdoors-column-uvi = UV index
outdoors-column-verdict = That is
outdoors-cell-hour = { CLOCK($hour) } and { CLOCK($later) }
outdoors-cell-uvi = { UVI($there, form: "doubt") }
outdoors-no-verdict = –

## Care
outdoors-care-glass = No glass or plastic box in the sun, not for one minute, not with the lid off.
outdoors-care-glass-short = No glass or plastic box in the sun.

## The picture
outdoors-picture-axis = UV index (UVI)
outdoors-picture-hour = Sun time (hours)
# Only with: $wanted
outdoors-picture-band = aim for { UVI($wanted, form: "range") }
outdoors-picture-right = right
outdoors-picture-note = Line: best estimate for a clear sky. Pale band: where it can really lie.
outdoors-picture-alt = Chart: the UV index of a clear day by the hour. At noon { UVI($noon, form: "doubt") }.
