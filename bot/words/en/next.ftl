### Facts: NextStep, WayUp, NextRise, NextTwo, NextPatch, NothingTold
### The one next step of a set-up: danger first, then what is wrong or open, then the way up.

next-title = Your next step

## The answer in brief
next-head-hides = Next: a warm hide and a cool hide.
next-head-together = Next: lamp and tube side by side.
next-head-meter = Next: read the UV index once.
next-head-white_light = Next: a white LED bar.
next-head-wide_uv = Next: a second tube, for a wider patch.
next-head-two_heat_lamps = Next: two weaker heat lamps.
next-head-seasons = Next: hours that follow the seasons.
next-head-plants = Next: live plants, if you like.
next-head-nothing = Nothing. I know of no step that is left.
next-adds-hides = It can rest in the dark at any warmth.
next-adds-together = Warm then means UV and light too.
next-adds-meter = It shows what your own lamp gives.
next-adds-white_light = Brighter days and true colours.
next-adds-wide_uv = Its whole body meets UV as it basks.
next-adds-two_heat_lamps = A wide warm patch, no hot point.
next-adds-seasons = A year like in its home.
next-adds-plants = Cover, shade and moister air.
next-adds-nothing = Read again now and then, and enjoy it.
next-rise = { WATTS($power) } warms the cool end by { DIFF($rise) }.
next-two = Two would give { UVI($two, form: "range") } right below.
next-patch = UV, heat, light: now { SHARE($now) }, then { SHARE($then) }.
next-do-hides = Put one at each end, big enough.
next-do-together = Heat lamp beside the tube's middle.
next-do-meter = Borrow a UVI meter: 3 places.
next-do-white_light = Over the lit half, on the same timer.
next-do-wide_uv = Beside the first. Then read the UVI.
next-do-two_heat_lamps = Side by side, at half the watts each.
next-do-seasons = Ask hours with latitude:home.
next-do-plants = Only plants that are safe for it.
next-do-nothing = Write down your readings.

## What comes before it
next-wait-danger = This comes before any step up.
next-wait-wrong = First this. Then ask me again.
next-wait-open = First find out what is open.
next-wait-up = Nothing comes before it.

## Steps
next-step-hides = Put one hide at the warm end and one at the cool end, each just big enough to turn round in. A cork tube or a half flowerpot will do.
next-step-together = Hang the heat lamp right beside the middle of the tube, over the basking place, both off and cold. Ask arrange what meets in your box.
next-step-meter = Borrow a UV index meter, or ask in your group. Read at the back's height: at the basking place, in the middle, in the shade. Then ask meter with what it shows.
next-step-white_light = Hang a white LED bar over the lit half, beside the UV tube. Start with 2000 to 4000 lumens. Leave the hides dark, and let it go off with the other lamps.
next-step-wide_uv = Hang a second tube of the same kind beside the first, a hand's width away, so that the patch gets wider. Or take one longer tube. It is for a wider patch, never for a stronger dose.
next-step-two_heat_lamps = In place of one heat lamp take two floods of about half its watts, side by side, so that the patch is as long as the animal. Both on one thermostat or dimmer for lamps.
next-step-seasons = Ask hours latitude:home, with your time zone. Change the timer once a month. If you are not sure about breeding or winter rest, stay with 12 hours.
next-step-plants = Take plants that are not poisonous for your animal, and ask bright what light they get. Never move a lamp closer for a plant.
next-step-nothing = Keep what is there. Read UV, basking place and cool end again after each change of a lamp, and every half year.

## What to measure after it
next-measure-hides = After it: the warmth inside both hides. The cool one has to stay as cool as the cool end.
next-measure-together = After it: the basking surface at five points, and the UV index there.
next-measure-meter = After it: nothing else. Keep the figures: mine reading does that.
next-measure-white_light = After it: the cool end again after two hours, and lux at the basking place, in the lit half and in the hide.
next-measure-wide_uv = After it: the UV index at the highest place it can climb to, at the basking place and in the shade.
next-measure-two_heat_lamps = After it: the basking surface at five points, and the cool end after two hours.
next-measure-seasons = After it: the night's coldest hour in the shortest month.
next-measure-plants = After it: the air at the cool end, and whether there is still an open place to bask.
next-measure-nothing = After a change: what the change can move.

## Numbers
next-label-fine = What holds already
next-fine = nothing that you told me is wrong or open
next-label-harm = What must not be harmed
next-harm-hides = the cool end stays cool and the basking place stays free
next-harm-together = the basking surface and the UV index there stay in their ranges
next-harm-meter = nothing: it changes nothing
next-harm-white_light = the cool end warms by { $is_worked_out ->
   *[no] no more than about 2 °F (1 °C)
    [yes] what is said above
  }, the hides and the night stay dark
next-harm-wide_uv = the UV index stays in its range at the nearest place, and there is shade
next-harm-two_heat_lamps = the hottest point stays below its limit, the cool end stays cool, and no holder gets more watts than it is marked for
next-harm-seasons = no fewer than 10 and no more than 14 hours of light
next-harm-plants = shade and basking place stay as they are
next-harm-nothing = nothing
next-label-there = Have it already?
next-there = say so: there:hides, uv meter

## Why
next-why-hides = A set-up is only as good as its way out. Shade at both ends lets it choose warmth and light apart.
next-why-together = UV, heat and light are the three parts of the sun, and they count where they meet.
next-why-meter = All my UV figures come from lamps of a class. Yours may give a third more or less. One reading tells.
next-why-white_light = UV, heat and light are the three parts of the sun. A tube and a flood leave the lit half as dim as a room. Nobody knows how many lux your animal needs: this is no must.
next-why-wide_uv = Under one tube the UV falls off to the sides. Two beside each other light a patch as wide as the animal.
next-why-two_heat_lamps = One strong lamp makes a hot point, and a long body warms in one place alone. Two weaker ones share it.
next-why-seasons = Where it comes from the days grow and shrink. Some keepers follow that, and a steady day is fine too.
next-why-plants = Plants give cover and break up the light. They do not replace a hide.
next-why-nothing = From here on it is about watching your animal, and that I cannot do.
next-bar-out = I left out a bright bar: { WATTS($power) } would warm the cool end by { DIFF($rise) }, past its range. A cooler room comes first.
next-uv-out = I left out a second tube: right below, two would give a UV index of { UVI($two, form: "range") }, past the range.
next-why-one = One change at a time: then you know what it did.
next-why-order = Danger comes first, then warmth, UV, shade and the dark night. Brightness and all else wait until they are right.

## Care
next-care-led = A white LED gives no UV, also one called full spectrum. It never takes the place of the UV tube.
next-care-led-short = A white LED never replaces the UV tube.

## Nothing was told
next-nothing = Tell me your set-up first.
next-nothing-needs = Animal, tube, distance, temperatures.
next-nothing-do = For example: next beardie, 12% tube, no mesh, 16in to its back, basking 103F, cool 79F, night 68F, 12 hours.
