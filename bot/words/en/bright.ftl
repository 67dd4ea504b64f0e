### Facts: Bright, BrightLamp, BrightLit, BrightLife, BrightPlants, BrightSky, LampTaken, WithoutLux
### How bright it is. The bands are our own: nobody knows how many lux an animal needs.

-bright-lamp-white-tube = white tube
    .a = a white tube
-bright-lamp-led-bar = LED bar
    .a = an LED bar
-bright-lamp-led-panel = LED panel
    .a = an LED panel
-bright-lamp-led-flood = LED flood
    .a = an LED flood
-bright-lamp-halogen-flood = halogen flood
    .a = a halogen flood
-bright-lamp-household-bulb = household bulb
    .a = a household bulb
-bright-lamp-metal-halide = metal halide lamp
    .a = a metal halide lamp
-bright-lamp-uv-tube = UV tube
    .a = a UV tube
-bright-lamp-coloured-lamp = coloured lamp
    .a = a coloured lamp

bright-title = How bright the basking place is

## The answer in brief
bright-head-dim = Dim: about { LUX($spot) } on its back.
bright-head-dim_or_fair = Dim to fair: about { LUX($spot) }.
bright-head-fair = Fair: about { LUX($spot) } on its back.
bright-head-fair_or_bright = Fair to bright: about { LUX($spot) }.
bright-head-bright = Bright: about { LUX($spot) } on its back.
bright-head-cannot_tell = About { LUX($spot) }, give or take a lot.
bright-head-no_band = About { LUX($spot) } on its back.
bright-range-lamp = It could be { LUX($spot, form: "range") }.
bright-range-meter = By your meter: { LUX($spot, form: "range") }.
bright-range-phone = A phone may be off by half or double.
bright-left-out = Not counted: { LIST($left_out) }.
bright-shade = Open shade outside: about { LUX($shade) }.
bright-shade-alone = Open shade outside: about { LUX($shade) }.
bright-levels = For it: fair { LUX($fair) }, bright { LUX($bright) }.
bright-plants-short = Plants, roughly: { $least ->
    [hardly_any] { $most ->
        [hardly_any] hardly any grows
       *[other] low light at best
      }
    [low] { $most ->
        [low] low light
       *[other] low to medium light
      }
    [medium] { $most ->
        [medium] medium light
       *[other] medium to high light
      }
   *[high] high light too
  }.
bright-nobody = My own words: no need is published.
bright-do-night = It wakes at night: no bright spot.
bright-do-first = First heat, UV, shade, dark night.
# Only with: $for_fair
bright-do-lumens = Then about { LUMENS($for_fair) } makes it fair.
bright-do-closer = Then a white LED bar can add light.
bright-do-shade = Keep it a shady retreat too.

## Why
bright-why-nobody = Nobody has published how many lux any of these animals needs, likes or cannot stand. So dim, fair and bright are words of ours, made after open shade and low sun. They are no need, and no verdict on you.
bright-why-lamp = { $by_watts ->
    [yes] I worked the lumens out of the watts, so take it as a rough guess. The label's lumens are better.
   *[no] I took the lumens of the label, and spread them the way such a lamp shines.
  } What may be off most: { LIST($doubts, join: "list-and") }. A lux meter beats all of it.
bright-doubt-label = the label
bright-doubt-watts = lumens from watts
bright-doubt-age = age and dust
bright-doubt-walls = what walls send back
bright-doubt-tape = the distance
bright-doubt-beam = the shape of the beam
bright-doubt-beam_untold = the angle of the beam, which you did not tell
bright-doubt-reflector = the reflector
bright-doubt-dome = the dome or shade around the bulb
bright-taken-length = I assumed the lit part is { LENGTH($long) } long. Tell me length: if it is not.
bright-taken-beam = I assumed a beam of { ANGLE($beam) }. The box tells it: beam:36.
bright-taken-reflector = I assumed a reflector behind the tube. A bare tube gives two thirds of that: reflector:no.
bright-why-several = Light adds up. I hang the lamps side by side over the place, as close as fixtures go, a flood in the middle, each at its own height. Their doubts are each lamp's own.
bright-why-left-out = I left out what nobody told me the lumens or watts of, and what lux say nothing of: { LIST($left_out) }. A UV tube gives less light than a white one. So it is a little brighter than I say.
bright-why-meter = A hand meter is good to about a fifth. Hold it flat at the back's height, facing up.
bright-why-phone = A phone sees colours its own way and only looks one way. Use it to tell which of two places is brighter, not how bright.
bright-why-eye = Lux are weighed with our eyes. They suit white lamps, and say nothing of red, blue or UV lamps.
bright-why-plants = For plants I turned lux into the light they use. Without a meter for plants that is rough.

## Steps
bright-step-first = First make sure of heat, UV, shade and a dark night: check tells you. Light comes after them.
bright-step-night = By day an ordinary light is enough, with a dark hide. At night leave it dark.
# Only with: $for_fair
bright-step-lumens = About { LUMENS($for_fair, form: "range") } from such a lamp at this distance would make the place fair. Measure the cool end again after it: every watt ends as heat.
bright-step-closer = A white LED bar over the lit half adds light with little heat. Measure the cool end again after it.
bright-step-shade = Give it a retreat that stays under { LUX($retreat) }, at a warm and at a cool place.
bright-step-measure = Read a lux meter flat at the back's height: at the basking place, in the lit half, in the retreat.
bright-step-dark = All lamps go off at night, the bright ones too.

## Numbers
bright-label-spot = Basking place
bright-spot = about { LUX($spot) } ({ LUX($spot, form: "range") })
bright-label-lamp = Lamp
bright-lamp-told = { $count ->
    [one] { CAP($lamp, form: "a") }
   *[other] { $count } of these, side by side: { NAME($lamp) }
  }, { LUMENS($flux) }{ $by_watts ->
    [yes] {" "}worked out of its watts ({ LUMENS($flux, form: "range") })
   *[no] {""}
  }, { LENGTH($distance) } away
bright-label-gives = Of that
bright-gives = { NAME($lamp) }: { LUX($gives) }
bright-label-patch = Half as bright still
bright-patch = { LENGTH($along) } along and { LENGTH($across) } across
bright-label-cool = Cool end
# Only with: $cool
bright-cool = about { LUX($cool) } straight from the lamp ({ LUX($cool, form: "range") })
bright-label-retreat = Shade
bright-retreat-told = stays under { LUX($retreat) }: a lux meter in the hide tells
bright-label-bands = My own levels
bright-bands-sun = fair about { LUX($fair) }, bright about { LUX($bright) }; lit half { LUX($half) }, retreat under { LUX($retreat) }; for an animal of the open sun
bright-bands-part_sun = fair about { LUX($fair) }, bright about { LUX($bright) }; lit half { LUX($half) }, retreat under { LUX($retreat) }; for an animal of sun and shade
bright-bands-forest = fair about { LUX($fair) }, bright about { LUX($bright) } on a small patch; the rest { LUX($half) }, retreat under { LUX($retreat) }; for an animal of forest and shade
# Only with: $animal
bright-bands-night = no bright spot: { NAME($animal) } is awake at night or at dusk; ordinary light by day, and a retreat under { LUX($retreat) }
bright-label-plants = Plants
bright-plants-told = roughly { NUMBER($photons) } µmol/m²/s, { NUMBER($day) } mol/m² in { HOURS($hours) }{ $told ->
    [yes] {""}
   *[no] {" "}(my guess of the hours)
  }: { $least ->
    [hardly_any] { $most ->
        [hardly_any] hardly any plant grows, though some stay alive
       *[other] at best plants for low or medium light
      }
    [low] { $most ->
        [low] plants for low light
       *[other] plants for low to medium light
      }
    [medium] { $most ->
        [medium] plants for medium light
       *[other] plants for medium to high light
      }
   *[high] plants for high light too
  }

## Outside
bright-column-place = Where
bright-column-lux = How bright
# Only with: $month
bright-row-sun = { $noon ->
    [none] Full sun, high
   *[some] Noon sun at { ANGLE($noon) }, { $month }
  }
bright-row-shaded = Open shade
bright-row-overcast = Overcast day
bright-row-room = Lit room
bright-cell-sun = { LUX($sun, form: "range") }
bright-cell-shaded = { LUX($shade, form: "range") }
bright-cell-overcast = { LUX($overcast, form: "range") }
bright-cell-room = { LUX($room, form: "range") }

## Without a figure
bright-without-title = How bright it should be
bright-without-nothing_told = I cannot see it: tell me your lamp.
# Only with: $distance
bright-without-too_near = So near that lamp burns: { LENGTH($distance) }.
bright-without-coloured = Lux say nothing of a coloured lamp.
bright-without-no_lumens = I have no lumens for that tube.
# Only with: $fair_flux
bright-without-how_many = About { LUMENS($fair_flux) } for a fair place.
bright-without-how_many_night = No number: it asks for no bright spot.
# Only with: $bright_flux
bright-many-bright = About { LUMENS($bright_flux) } for a bright one.
bright-without-do-nothing_told = Send me kind, lumens and distance.
# Only with: $nearest
bright-without-do-too_near = Keep { LENGTH($nearest) }. Ask basking.
bright-without-do-coloured = Off at night, and not for brightness.
bright-without-do-no_lumens = Its box may say: add lumens:.
bright-without-do-how_many = First heat, UV, shade, dark night.
bright-without-do-how_many_night = Ordinary light by day, dark at night.
bright-without-step-nothing_told = Tell me the lamp, its lumens and how far it hangs: bright lamp:led bar lumens:4000 distance:16in. Or read a lux meter flat at the back's height: bright reading:6000.
# Only with: $lamp, $nearest
bright-without-step-too_near = Hang { NAME($lamp, form: "a") } at least { LENGTH($nearest) } from the animal, behind a guard, and go by the thermometer: ask basking. How bright it is comes after it.
bright-without-step-coloured = Red, blue and purple lamps look dim to a meter of lux and bright to an animal. Use white light by day and none at night.
bright-without-step-no_lumens = Nobody has published the visible light of reptile UV tubes. It is less than that of a white tube. With the lumens on the box I can work it out.
# Only with: $fair_flux, $bright_flux, $lamp, $distance
bright-without-step-how_many = With { NAME($lamp, form: "a") } { LENGTH($distance) } away: { LUMENS($fair_flux, form: "range") } for fair and { LUMENS($bright_flux, form: "range") } for bright, in words of ours. Several lamps add up. Start low.
bright-without-step-how_many_night = An ordinary white light for the day is enough, with a dark hide under it.

## Care
bright-care-led = A white LED gives no UV at all, also one called full spectrum: that is about our eyes. It never takes the place of the UV tube.
bright-care-led-short = A white LED never replaces the UV tube.
bright-care-uv = Do not count this lamp's light for UV. Only a UV index meter, or a UV tube at its right distance, tells that.
bright-care-uv-short = Light is not UV: ask that apart.
bright-care-lux = A meter of lux is no UV meter: a place can be bright and have no UV.
bright-care-lux-short = Lux say nothing about UV.
bright-care-glass = Glass and plastic let the light through and keep the UVB back. Bright through a pane is not UV.
bright-care-glass-short = Through glass: light yes, UVB no.
bright-care-pale = A pale or very young animal may bear less light. Leave every bright place free to leave, and ask a vet if it squints.
bright-care-pale-short = Pale or young? Less light, more shade.
bright-care-heat = Every watt ends as heat. Measure the cool end again after each new lamp.
bright-care-eyes = Bare LED chips and discharge lamps dazzle: aim them down, put a diffuser over them, do not stare in.

## The picture
bright-picture-note = Each step of the scale is ten times as bright. How much your animal needs nobody has published.
