### Facts: DangerFigures
### What cannot wait: what is done now, what follows, the calm rule where it is only asked about, and why.

## fire
danger-fire-title = Pull the plug first
danger-fire-do-now-1 = Pull the plug now, or switch off at the breaker.
danger-fire-do-now-2 = Touch nothing hot, use no water, and get a grown-up.
danger-fire-do-now-3 = If it goes on smoking, everybody goes out.
danger-fire-then-1 = That lamp, heater, holder or lead is out of use for good.
danger-fire-then-2 = Take the animal out if that is safe, and keep it in a warm room.
danger-fire-then-3 = An electrician looks at a socket that scorched or sparked before it is used again.
danger-fire-asked = A lamp or heater in order never smokes, sparks or melts anything. If yours ever does, the plug comes out first.
danger-fire-why = Heat that melts or smokes has already passed the point where things catch fire.

## shock
danger-shock-title = Hands off, power off
danger-shock-do-now-1 = Let go, and switch the power off at the breaker.
danger-shock-do-now-2 = Nobody touches the lamp, the box or the person before that.
danger-shock-do-now-3 = Anybody else shocked sees a doctor today, even when well.
danger-shock-then-1 = The lamp stays unplugged for good.
danger-shock-then-2 = An electrician looks at the socket and the safety switch.
danger-shock-then-3 = A safety switch that trips again and again is doing its work: do not keep pushing it in.
danger-shock-asked = Work only with the plug out and dry hands. Use a socket with a safety switch that cuts the power when current leaks.
danger-shock-why = A tingle is current through you; the next touch with wet hands can be the bad one.

## water_mains
danger-water_mains-title = Power off at the breaker first
danger-water_mains-do-now-1 = Switch the power off at the breaker before you touch anything.
danger-water_mains-do-now-2 = Do not reach into the water, and touch nothing wet.
danger-water_mains-do-now-3 = Then pull the plug with dry hands.
danger-water_mains-do-now-4 = Only then take out the lamp, and the animal.
danger-water_mains-then-1 = A lamp, heater, strip or plug that was under water is out of use.
danger-water_mains-then-2 = A hot lamp that was splashed and cracked stays untouched until it is off, unplugged and cold.
danger-water_mains-then-3 = Let every cord hang in a loop below its socket.
danger-water_mains-asked = No: water and mains never meet. Plug out, lamp cold, hands dry, then work.
danger-water_mains-why = Water takes the current to whoever reaches in, and cold water breaks hot glass.

## person_burn
danger-person_burn-title = Cool the burn under running water
danger-person_burn-do-now-1 = Hold the burn under cool running water for 20 minutes now.
danger-person_burn-do-now-2 = Use no ice and no cream.
danger-person_burn-do-now-3 = A cut that bleeds: press a clean cloth on it.
danger-person_burn-then-1 = The lamp stays off and unplugged until it is cold. Cut by a lamp with powder on it? See a doctor today.
danger-person_burn-asked = Lamps go off and cold before anybody touches them. A guard keeps children's hands away.
danger-person_burn-why = Cooling for 20 minutes helps for up to three hours after the burn.

## broken_mercury
danger-broken_mercury-title = Leave the room and air it
danger-broken_mercury-do-now-1 = Lamp off, people and animals out now.
danger-broken_mercury-do-now-2 = Do not step in it, and open a window.
danger-broken_mercury-do-now-3 = Stay out for 15 minutes.
danger-broken_mercury-do-now-4 = Use no vacuum cleaner and no broom.
danger-broken_mercury-do-now-5 = Then pick it up with stiff card, tape and damp paper.
danger-broken_mercury-do-now-6 = Put it in a jar with a lid, outside the house.
danger-broken_mercury-then-1 = Is it a lamp with mercury? Fluorescent of any shape, mercury-vapour and metal-halide: yes. Halogen, incandescent, ceramic, LED: no; then it is broken glass and a live holder: plug out, cold, gloves.
danger-broken_mercury-then-2 = A mercury-vapour or metal-halide lamp whose outer glass is cracked and that still burns gives hard UV: power off first, and nobody looks at it.
danger-broken_mercury-then-3 = Keep airing for several hours, with heating or air conditioning off.
danger-broken_mercury-then-4 = Bedding, sand or soil with splinters or white powder goes out in the same sealed jar or bag; do not wash it.
danger-broken_mercury-then-5 = The animal moves to a clean box in another room.
danger-broken_mercury-then-6 = Take the jar where your council or local authority says; it does not go in the bin.
danger-broken_mercury-asked = Carry tubes with both hands; old ones go to a collection point. If one ever breaks: people and pets out, air the room, no vacuum cleaner.
danger-broken_mercury-why = UV tubes, compact UV lamps and mercury-vapour lamps hold a few thousandths of a gram of mercury; a vacuum cleaner blows it through the room.

## open_flame
danger-open_flame-title = Put the flame out, get fresh air
danger-open_flame-do-now-1 = Put out every flame, and stop any engine indoors.
danger-open_flame-do-now-2 = Get into fresh air.
danger-open_flame-do-now-3 = No candles, gas, charcoal or generator in house or garage.
danger-open_flame-then-1 = Keep the box warm with blankets round its sides and with wrapped bottles of warm water.
danger-open_flame-asked = No: never candles, stoves, charcoal, gas or a generator indoors. Carbon monoxide has no smell. Use blankets and wrapped bottles of warm water.
danger-open_flame-why = They start fires, and carbon monoxide has no smell and kills people and animals.

## uvc
danger-uvc-title = Switch that lamp off for good
danger-uvc-do-now-1 = Switch that lamp off now, and do not look at it.
danger-uvc-do-now-2 = Use it on no animal and no person.
danger-uvc-then-1 = A tube sold for reptiles takes its place; ask which one fits your box.
danger-uvc-asked = Never: germicidal (UVC), pond-filter and tanning lamps are no reptile lamps. They hurt eyes and skin within seconds to minutes.
danger-uvc-why = A germicidal (UVC) lamp hurts eyes and skin within seconds to minutes: 254 nm is almost at the peak of the eye-hazard curve.

## person_uv
danger-person_uv-title = Switch the UV off, rest your eyes
danger-person_uv-do-now-1 = Switch the UV lamp off and stay out of its light.
danger-person_uv-do-now-2 = Do not rub sore eyes, and take contact lenses out.
danger-person_uv-do-now-3 = It starts 6 to 12 hours after.
danger-person_uv-do-now-4 = It is usually over in one to three days.
danger-person_uv-asked = Switch the tube off to work, and never look into it. Hang it so that nobody sees the bare tube from a bed or a chair.
danger-person_uv-why = In the strictest case the daily work limit for eyes is reached in about 8 minutes at UVI 4; pain comes hours later.

## child
danger-child-title = Lamp off until it is guarded
danger-child-do-now-1 = Switch the lamp off until a guard or a lock is on.
danger-child-do-now-2 = Small hands, cats and dogs must not reach lamp or cord.
danger-child-do-now-3 = Then hang it by a chain with a second support.
danger-child-asked = Only with a guard, a locked door and cords out of reach. And with no bare tube in sight of the bed.
danger-child-why = Basking bulbs are far hotter than what burns a child's hand at a touch.

## touching
danger-touching-title = Switch the lamp off now
danger-touching-do-now-1 = Switch the lamp off now and let it cool.
danger-touching-do-now-2 = Nothing that burns or melts may touch it or lie near it.
danger-touching-do-now-3 = Keep the distance that is marked on the lamp.
danger-touching-do-now-4 = Read the nearest wood with an infrared gun.
danger-touching-do-now-5 = It must be under { TEMP($wood) }, better far below.
danger-touching-asked = No: leave the gap that is marked on the lamp. Bulb or hood never touch wood, plastic, cloth or a screen that is not metal.
danger-touching-later-title = Give the wood more room today
danger-touching-later-do-now-1 = Give the wood more room from the lamp today.
danger-touching-later-do-now-2 = It is close: { TEMP($wood) } is too much for wood.
danger-touching-later-do-now-3 = Read it again with an infrared gun.
danger-touching-why = Wood next to a surface of { TEMP($wood) } or more can catch fire after months; plastic softens long before.

## hot_lead
danger-hot_lead-title = Unplug it now
danger-hot_lead-do-now-1 = Unplug it now.
danger-hot_lead-do-now-2 = A hot or buzzing lead, plug, timer or dimmer: out of use.
danger-hot_lead-do-now-3 = Heaters go straight into the wall, one to a socket.
danger-hot_lead-asked = No: add up the watts and stay under the lead's mark. Never one lead into another, and heaters straight into the wall.
danger-hot_lead-why = A hot lead is overloaded or has a bad contact; both end in fire.

## wrong_holder
danger-wrong_holder-title = Take that bulb out once it is cold
danger-wrong_holder-do-now-1 = Switch it off now, and take the bulb out when cold.
danger-wrong_holder-do-now-2 = The lamp's watts must be at or under the holder's mark.
danger-wrong_holder-do-now-3 = Heat lamps and ceramics need a ceramic (porcelain) holder.
danger-wrong_holder-do-now-4 = A brown, cracked, loose or brittle holder is out of use.
danger-wrong_holder-asked = No: never more watts than the mark on the holder. Heat lamps and ceramics go only in a ceramic (porcelain) holder.
danger-wrong_holder-why = Too many watts cook the holder and its wires, and the damage stays after the bulb is changed.

## falling_lamp
danger-falling_lamp-title = Pull the plug, let it cool
danger-falling_lamp-do-now-1 = Pull the plug now and let it cool.
danger-falling_lamp-do-now-2 = Look for scorched bedding or carpet.
danger-falling_lamp-do-now-3 = Keep watching that place for an hour.
danger-falling_lamp-do-now-4 = Hang it by a chain or hook, with a second support.
danger-falling_lamp-do-now-5 = Never by a clamp alone.
danger-falling_lamp-asked = No: a clamp alone is never enough. Hang it by a chain or hook, with a second support that would hold it alone.
danger-falling_lamp-why = A fallen lamp lies face down on things that burn.

## no_guard
danger-no_guard-title = Lamp off until it has a guard
danger-no_guard-do-now-1 = Switch the lamp off until a wire guard is on.
danger-no_guard-do-now-2 = Or hang it where the animal cannot reach it.
danger-no_guard-do-now-3 = Look at its skin: a burn may be small.
danger-no_guard-asked = No: inside the box every heat lamp needs a guard. No gap is wide enough for a foot or a head. Or the lamp stays outside.
danger-no_guard-why = Reptiles climb onto and coil round hot bulbs and do not let go when it burns.

## no_thermostat
danger-no_thermostat-title = Unplug the heater first
danger-no_thermostat-do-now-1 = Unplug the heater now, until its thermostat works.
danger-no_thermostat-do-now-2 = Fix the probe where the animal lies.
danger-no_thermostat-do-now-3 = A mat, rock, cable, ceramic or panel never runs without one.
danger-no_thermostat-do-now-4 = Do not feel it with your hand.
danger-no_thermostat-do-now-5 = Read the warm place with a thermometer before the animal goes back.
danger-no_thermostat-asked = No: each heater without light needs a thermostat of its own. Fix the probe in place and put a second thermometer beside it.
danger-no_thermostat-why = With no thermostat, or with its probe in cool air, a heater goes on heating without end.

## heat_rock
danger-heat_rock-title = Unplug it and take it out
danger-heat_rock-do-now-1 = Unplug it and take it out of the box now.
danger-heat_rock-do-now-2 = Then look at the animal's belly.
danger-heat_rock-do-now-3 = Keep the animal warm in a warm room, or under a lamp.
danger-heat_rock-asked = No: no heated rock, and no heat pad made for people. Warm it from above, or with a mat on a thermostat outside the box.
danger-heat_rock-why = A reptile lies on a hot rock or pad until it is burnt, and a burn can take days to show.

## covered
danger-covered-title = Take it off the lid, or lamp off
danger-covered-do-now-1 = Switch the lamp off now, and take the cover away.
danger-covered-do-now-2 = Nothing that can burn lies on a lid with a lamp.
danger-covered-do-now-3 = Close part of the mesh only with what cannot burn.
danger-covered-asked = No: nothing that can burn lies on a lid with a lamp. Not a towel, cardboard or plastic. Close part of it with what cannot burn.
danger-covered-why = Cloth keeps the heat in the lamp and then catches fire.

## dimmer_mismatch
danger-dimmer_mismatch-title = Take that lamp off the dimmer
danger-dimmer_mismatch-do-now-1 = Switch it off, and take that lamp off the dimmer today.
danger-dimmer_mismatch-do-now-2 = UV tubes, compact UV and mercury-vapour lamps are never dimmed.
danger-dimmer_mismatch-do-now-3 = They run on a plain switch or timer.
danger-dimmer_mismatch-do-now-4 = A dimmer that hums, flickers or gets hot is out of use.
danger-dimmer_mismatch-asked = No: only heat lamps that glow and ceramics can be dimmed. Use a dimmer marked for their kind and watts; UV goes on a plain timer.
danger-dimmer_mismatch-why = A dimmed discharge lamp flickers, overheats its gear or goes out; its UV can no longer be known.

## sun_on_glass
danger-sun_on_glass-title = Move the box out of the sun
danger-sun_on_glass-do-now-1 = Move the box out of the sun now and open it.
danger-sun_on_glass-do-now-2 = Switch the lamps off.
danger-sun_on_glass-do-now-3 = Cool an animal that gapes or is limp slowly.
danger-sun_on_glass-asked = Never: no glass or plastic box in the sun. Not even for a short while, nor behind a window, which lets no UVB through.
danger-sun_on_glass-why = A closed glass space gains about { DIFF($sun_gain) } in half an hour; lizards lose control of their body at { TEMP($too_hot, form: "range") }.

## locked_in_heat
danger-locked_in_heat-title = Heat off at the plug, open the box
danger-locked_in_heat-do-now-1 = Switch all heat off at the plug now.
danger-locked_in_heat-do-now-2 = Open the box, or break the lock.
danger-locked_in_heat-do-now-3 = If it does not open, carry it to a cool room.
danger-locked_in_heat-asked = Only with a thermostat and an alarm thermometer. And with a key that everybody at home can find.
danger-locked_in_heat-why = Minutes count: with a lamp on and no way out the box climbs past { TEMP($deadly) }.

## box_too_hot
danger-box_too_hot-title = All heat off, open the box
danger-box_too_hot-do-now-1 = Switch all heat off now and open the box.
danger-box_too_hot-do-now-2 = Move the animal to a cooler room, or give it shade.
danger-box_too_hot-do-now-3 = Do not wait for the lamp to be adjusted.
danger-box_too_hot-asked = Leave a place at cool-end warmth at all times. Put a thermostat or alarm on whatever can overheat the box.
danger-box_too_hot-later-title = Make it cooler today
danger-box_too_hot-later-do-now-1 = Make it cooler today: raise the lamp, or fit a smaller one.
danger-box_too_hot-later-do-now-2 = Leave the animal a cool, shaded place all the time.
danger-box_too_hot-why = With no cool place an animal cannot save itself; lizards lose control of their body at { TEMP($too_hot, form: "range") }.

## water_too_hot
danger-water_too_hot-title = Water heat off, and cool it slowly
danger-water_too_hot-do-now-1 = Switch the water heater and the lamps off now.
danger-water_too_hot-do-now-2 = Give it shade, and blow a fan across the water.
danger-water_too_hot-do-now-3 = Cool it slowly, over hours. No ice.
danger-water_too_hot-asked = Keep a thermometer in the water. Its heater has a thermostat of its own. Have a fan or a cool room ready for hot days.
danger-water_too_hot-later-title = Cool the water today
danger-water_too_hot-later-do-now-1 = Cool the water today: water heater off, shade, a fan across it.
danger-water_too_hot-later-do-now-2 = Cool it slowly, over hours. No ice.
danger-water_too_hot-why = What lives in water cannot leave it, and warm water holds less oxygen.

## uv_too_strong
danger-uv_too_strong-title = Switch the UV tube off now
danger-uv_too_strong-do-now-1 = Switch the UV tube off now, until it hangs right.
danger-uv_too_strong-do-now-2 = Leave the warmth on.
danger-uv_too_strong-asked = Keep any tube at least { LENGTH($nearest) } from the back.
danger-uv_too_strong-later-title = Give the UV more distance today
danger-uv_too_strong-later-do-now-1 = Give the UV tube more distance today, or a weaker one.
danger-uv_too_strong-later-do-now-2 = Leave the warmth on.
danger-uv_too_strong-one-lamp-title = Switch that lamp off now
danger-uv_too_strong-one-lamp-do-now-1 = Switch that lamp off now, until it hangs right.
danger-uv_too_strong-one-lamp-do-now-2 = Keep the animal warm without it.
danger-uv_too_strong-one-lamp-do-now-3 = Use heat without light on a thermostat, or a warm room.
danger-uv_too_strong-one-lamp-do-now-4 = Its UV and its warmth come out of one lamp.
danger-uv_too_strong-one-lamp-later-title = Give that lamp more distance today
danger-uv_too_strong-one-lamp-later-do-now-1 = Give that lamp more distance today.
danger-uv_too_strong-one-lamp-later-do-now-2 = That takes warmth away too: measure the basking surface again.
danger-uv_too_strong-why = Too near or too strong, and with too short a wavelength, UV burns the eyes and skin of reptiles within days.

## uv_wrong_animal
danger-uv_wrong_animal-title = Switch the strong tube off today
danger-uv_wrong_animal-do-now-1 = Switch the strong tube off today.
danger-uv_wrong_animal-do-now-2 = Hang a weaker one, or this one much farther away.
danger-uv_wrong_animal-do-now-3 = Give it deep shade to choose.
danger-uv_wrong_animal-do-now-4 = Nocturnal, albino, very young and newly shed animals get the least UV.
danger-uv_wrong_animal-asked = Only a weak one, far away, over part of the box. Deep shade is in reach. Start low and read it with a meter.
danger-uv_wrong_animal-why = Skin and eyes without pigment let far more UV in.

## overheated
danger-overheated-title = All heat off, cool it slowly
danger-overheated-do-now-1 = Switch all heat off now and cool it slowly.
danger-overheated-do-now-2 = Take it into a cooler room.
danger-overheated-do-now-3 = Lay wet, lukewarm (not cold) cloths loosely round it.
danger-overheated-do-now-4 = Use no ice and no cold water.
danger-overheated-asked = An open mouth under the lamp is cooling. An open mouth in the coolest place is an emergency.
danger-overheated-why = Gaping in the coolest place means that it cannot get rid of the heat. Harm to organs shows later.

## too_cold
danger-too_cold-title = Warm it slowly
danger-too_cold-do-now-1 = Warm it slowly now, over some hours.
danger-too_cold-do-now-2 = First into a warm room, then to its cool-end warmth.
danger-too_cold-do-now-3 = Never straight under a lamp, on a mat or in hot water.
danger-too_cold-asked = Give heat without light for nights under its limit. Keep a thermometer that remembers the lowest.
danger-too_cold-later-title = Move it to a warmer room today
danger-too_cold-later-do-now-1 = Move it to a warmer room today, before the night.
danger-too_cold-later-do-now-2 = If it is limp or stiff, warm it slowly.
danger-too_cold-why = At { TEMP($stiff, form: "range") } lizards can no longer turn over; quick heat on cold skin burns it.

## not_moving
danger-not_moving-title = Call a reptile vet now
danger-not_moving-do-now-1 = Call a reptile vet now.
danger-not_moving-do-now-2 = Read the box on the way.
danger-not_moving-do-now-3 = Too hot? Cool it. Cold? Warm it slowly.
danger-not_moving-do-now-4 = Touch the animal as little as you can.
danger-not_moving-asked = Limp or not reacting is always a vet's case, the same hour.
danger-not_moving-why = Heat, cold, low calcium and illness look alike from outside.

## breathing
danger-breathing-title = Call a reptile vet today
danger-breathing-do-now-1 = Call a reptile vet today.
danger-breathing-do-now-2 = Keep it quiet and at its normal warmth.
danger-breathing-do-now-3 = Do not bath it.
danger-breathing-asked = Wheezing, bubbles, or an open mouth where it is cool: vet. Go the same day.
danger-breathing-why = Open-mouth breathing is a late sign in reptiles; the outlook is poor if one waits.

## prolapse
danger-prolapse-title = Call a vet now and keep it wet
danger-prolapse-do-now-1 = Call a reptile vet now and keep what hangs out wet.
danger-prolapse-do-now-2 = Use clean lukewarm water or a damp clean cloth.
danger-prolapse-do-now-3 = Do not push it back, pull it or cut it.
danger-prolapse-do-now-4 = Put the animal on wet kitchen paper.
danger-prolapse-asked = Something that stays outside the vent is an emergency, the same hour.
danger-prolapse-why = Tissue outside dries and dies within hours.

## tremor
danger-tremor-title = Call a reptile vet now
danger-tremor-do-now-1 = Call a reptile vet now.
danger-tremor-do-now-2 = Keep it warm, low and quiet, and let it not climb.
danger-tremor-do-now-3 = Give it nothing without the vet.
danger-tremor-asked = Twitching toes or legs are a vet's case, the same day.
danger-tremor-why = Shaking, twitching or dragging legs can mean that it has far too little calcium in its blood.

## animal_burn
danger-animal_burn-title = Take it off the heat, call a vet
danger-animal_burn-do-now-1 = Take it off the heat now, and switch that off.
danger-animal_burn-do-now-2 = Cool a fresh burn with cool (not cold) clean water.
danger-animal_burn-do-now-3 = Then clean kitchen paper as bedding; no cream, no ice.
danger-animal_burn-asked = Every burn goes to a vet. It can take days until one sees how deep it is.
danger-animal_burn-why = Burns in reptiles may show only after several days, and infect easily.

## trauma
danger-trauma-title = Call a reptile vet today
danger-trauma-do-now-1 = Call a reptile vet today.
danger-trauma-do-now-2 = It bleeds? Press a clean cloth on it.
danger-trauma-do-now-3 = Put the animal in a small dark box and keep it still.
danger-trauma-do-now-4 = Lamp off, if a lamp or glass did it.
danger-trauma-asked = Wounds, bites and broken limbs go to a vet the same day.
danger-trauma-why = Soft bones break easily where light or calcium is missing; wounds infect.

## egg_bound
danger-egg_bound-title = Call a reptile vet today
danger-egg_bound-do-now-1 = Call a reptile vet today.
danger-egg_bound-do-now-2 = Leave her in peace with a warm, damp place to dig.
danger-egg_bound-do-now-3 = Do not press on her belly.
danger-egg_bound-asked = Give her a place to dig before she needs it. Straining or weakness is the vet's.
danger-egg_bound-why = Eggs can stay in for weeks without signs, but straining, weakness or a stop after some eggs needs a vet.

## eyes_after_uv
danger-eyes_after_uv-title = UV off now, vet today
danger-eyes_after_uv-do-now-1 = Switch the UV lamp off now, and leave the warmth on.
danger-eyes_after_uv-do-now-2 = Put no drops in the eyes.
danger-eyes_after_uv-do-now-3 = Write down the lamp, its distance and the day you changed it.
danger-eyes_after_uv-asked = Eyes that close after a new lamp: lamp off first. Then the vet.
danger-eyes_after_uv-one-lamp-title = Lamp off now, vet today
danger-eyes_after_uv-one-lamp-do-now-1 = Switch that lamp off now.
danger-eyes_after_uv-one-lamp-do-now-2 = Keep the animal warm without it.
danger-eyes_after_uv-one-lamp-do-now-3 = Use heat without light on a thermostat, or a warm room.
danger-eyes_after_uv-one-lamp-do-now-4 = Put no drops in the eyes.
danger-eyes_after_uv-one-lamp-do-now-5 = Write down the lamp, its distance and the day you changed it.
danger-eyes_after_uv-one-lamp-do-now-6 = Its UV and its warmth come out of one lamp.
danger-eyes_after_uv-why = Too much or too short UV inflames eyes and skin; in a published outbreak the signs went when the newly fitted lamps were taken away.

## eyes
danger-eyes-title = Call a reptile vet this week
danger-eyes-do-now-1 = Call a reptile vet this week.
danger-eyes-do-now-2 = Is the UV lamp new, nearer or stronger than before?
danger-eyes-do-now-3 = Then switch it off until the vet has looked.
danger-eyes-then-1 = Until then: keep it at its usual warmth, and force no food or water.
danger-eyes-asked = Closed or swollen eyes in daytime belong to a vet within days.
danger-eyes-why = UV is one cause among many: shed, infection, vitamin A, dry air.

## soft_bones
danger-soft_bones-title = Call a reptile vet this week
danger-soft_bones-do-now-1 = Call a reptile vet this week.
danger-soft_bones-do-now-2 = Handle it gently and low down.
danger-soft_bones-do-now-3 = Right UV helps from now on, but mends nothing that is soft.
danger-soft_bones-asked = Right UV at the right distance, warmth and calcium prevent it. A soft jaw or bent legs is a vet's case.
danger-soft_bones-why = Soft jaw, bent or swollen legs and weakness are the plain signs of metabolic bone disease.

## ill
danger-ill-title = Call a reptile vet this week
danger-ill-do-now-1 = Call a reptile vet this week.
danger-ill-do-now-2 = Measure basking spot and cool end meanwhile.
danger-ill-then-1 = Until then: keep it at its usual warmth, and force no food or water.
danger-ill-asked = Not eating, losing weight, lying about for days: that is a vet's.
danger-ill-why = Reptiles hide illness, and wrong warmth is often part of it.

## power_cut_cold
danger-power_cut_cold-title = Unplug it all, wrap the box
danger-power_cut_cold-do-now-1 = Unplug every lamp and heater now.
danger-power_cut_cold-do-now-2 = Close the vents and lay blankets round the sides.
danger-power_cut_cold-do-now-3 = Use no candles and no stove.
danger-power_cut_cold-do-now-4 = Small, young and tropical animals come into the warmest room.
danger-power_cut_cold-do-now-5 = Or carry them in a cloth bag near your body.
danger-power_cut_cold-then-1 = A healthy adult gets through a cool night.
danger-power_cut_cold-then-2 = Bottles of warm (not hot) water, wrapped in a towel, go beside the animal and never under it.
danger-power_cut_cold-then-3 = When the power is back: switch lamps on one by one, and look at each one for an hour.
danger-power_cut_cold-asked = Keep blankets, bottles for warm water and a small lidded box ready. Ask which night is too cold for your animal.
danger-power_cut_cold-why = Boxes lose their warmth in one to a few hours; lamps that come back on under a blanket start fires.

## power_cut_hot
danger-power_cut_hot-title = Move the box to the coolest room
danger-power_cut_hot-do-now-1 = Move the box to the coolest room now, and open it.
danger-power_cut_hot-do-now-2 = Keep it out of the sun, with every lamp unplugged.
danger-power_cut_hot-do-now-3 = Lay a damp cloth over part of the mesh.
danger-power_cut_hot-do-now-4 = Let moving air in.
danger-power_cut_hot-asked = Know the coolest room of the house. Keep lamps unplugged until the room is cool again.
danger-power_cut_hot-later-title = Cool the room today
danger-power_cut_hot-later-do-now-1 = Cool the room today, or move the box to a cooler one.
danger-power_cut_hot-later-do-now-2 = Keep it out of the sun, and let moving air in.
danger-power_cut_hot-why = The box cannot be cooler than the room; only another room, shade and damp cloths help.

## night_too_cold
danger-night_too_cold-title = Move it to a warmer room tonight
danger-night_too_cold-do-now-1 = Move the animal to a warmer room tonight.
danger-night_too_cold-do-now-2 = A night this cold can kill it.
danger-night_too_cold-do-now-3 = A heater in the box may not be enough.
danger-night_too_cold-asked = Heat without light, on a thermostat, keeps the night above its limit. Below about { TEMP($cold_room) } in the room a warmer room is the answer.
danger-night_too_cold-why = Reptiles of warm countries lose control of their body at { TEMP($stiff, form: "range") }.

## no_shade
danger-no_shade-title = Give it shade today
danger-no_shade-do-now-1 = Give it shade today: a hide at the cool end.
danger-no_shade-do-now-2 = And thick cover under half of the tube.
danger-no_shade-do-now-3 = Until then shorten lamp hours, or dim the heat, not the UV.
danger-no_shade-asked = No: every box has a place out of light and heat.
danger-no_shade-why = An animal sets its own dose by going in and out; without shade it cannot.

## light_all_day
danger-light_all_day-title = Lights off tonight
danger-light_all_day-do-now-1 = Switch every light off tonight.
danger-light_all_day-do-now-2 = A timer does it: about 12 hours on, 12 hours dark.
danger-light_all_day-do-now-3 = If the room is too cold, add heat that gives no light.
danger-light_all_day-asked = No: no animal gets light round the clock. Heat without light is the answer for cold nights.
danger-light_all_day-why = In constant light the nightly melatonin of a lizard was nearly gone; it cannot sleep.

## colour_at_night
danger-colour_at_night-title = Leave that lamp off tonight
danger-colour_at_night-do-now-1 = Leave that lamp off tonight.
danger-colour_at_night-do-now-2 = Red, blue, purple and moon lamps are light.
danger-colour_at_night-do-now-3 = If the room gets too cold: heat without light, on a thermostat.
danger-colour_at_night-asked = No: it sees that light. Use heat without light on a thermostat if the room is too cold.
danger-colour_at_night-why = Reptiles see red and blue light; light at night disturbs sleep.

## no_uv_through_glass
danger-no_uv_through_glass-title = Take the glass out of the way
danger-no_uv_through_glass-do-now-1 = Take glass and clear plastic from under the UV tube.
danger-no_uv_through_glass-do-now-2 = They stop UVB: nothing useful reaches the animal.
danger-no_uv_through_glass-do-now-3 = Put the tube inside or over open metal mesh.
danger-no_uv_through_glass-do-now-4 = Work the distance out anew, and start at its far end.
danger-no_uv_through_glass-asked = No: glass or plastic under the tube takes all the UVB. Hang it over open mesh, or inside.
danger-no_uv_through_glass-why = In measurements every pane blocked all UVB.

## too_hot_wish
danger-too_hot_wish-title = Set the spot to its own range
danger-too_hot_wish-do-now-1 = No: that is too hot for this animal and would burn it.
danger-too_hot_wish-do-now-2 = Set the spot to its own range.
danger-too_hot_wish-do-now-3 = Measure again after two hours.
danger-too_hot_wish-asked = No: that is too hot for this animal and would burn it. Set the spot to its own range and measure again after two hours.
danger-too_hot_wish-why = I do not work out how to make a place that I would tell you to switch off.
