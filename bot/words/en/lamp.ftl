### Facts: LampKind, LampKinds, LampUnknown
### Kinds of lamps and heaters. The name stands alone; .a with its article; .many for several.

-lamp-halogen-flood = halogen flood lamp
    .a = a halogen flood lamp
    .many = halogen flood lamps
-lamp-incandescent-flood = incandescent flood lamp
    .a = an incandescent flood lamp
    .many = incandescent flood lamps
-lamp-narrow-spot = narrow spot lamp
    .a = a narrow spot lamp
    .many = narrow spot lamps
-lamp-ceramic-emitter = ceramic heater
    .a = a ceramic heater
    .many = ceramic heaters
-lamp-radiant-panel = radiant panel
    .a = a radiant panel
    .many = radiant panels
-lamp-infrared-projector = infrared projector
    .a = an infrared projector
    .many = infrared projectors
-lamp-red-lamp = red lamp
    .a = a red lamp
    .many = red lamps
-lamp-night-lamp = night lamp
    .a = a night lamp
    .many = night lamps
-lamp-mercury-vapour = mercury vapour lamp
    .a = a mercury vapour lamp
    .many = mercury vapour lamps
-lamp-heat-mat = heat mat
    .a = a heat mat
    .many = heat mats
-lamp-heat-rock = heat rock
    .a = a heat rock
    .many = heat rocks
-lamp-led-lamp = LED lamp
    .a = an LED lamp
    .many = LED lamps
-lamp-compact-uv = compact UV lamp
    .a = a compact UV lamp
    .many = compact UV lamps
-lamp-metal-halide = metal halide lamp
    .a = a metal halide lamp
    .many = metal halide lamps
-lamp-t5-ho-tube = T5 HO tube
    .a = a T5 HO tube
    .many = T5 HO tubes
-lamp-t8-tube = T8 tube
    .a = a T8 tube
    .many = T8 tubes
-lamp-uv-led = UV LED
    .a = a UV LED
    .many = UV LEDs
-lamp-plant-light = plant light
    .a = a plant light
    .many = plant lights

## The question lamp: the answer in brief
lamp-title = { CAP($lamp) }
lamp-head-good = Yes. { CAP($lamp, form: "a") } is good for the basking spot.
lamp-head-not_for_basking = No. { CAP($lamp, form: "a") } is not for the basking spot.
lamp-head-by_meter = Maybe. { CAP($lamp, form: "a") } is only for who has a UV meter.
lamp-head-not_at_all = No. { CAP($lamp, form: "a") } is not for this set-up at all.
lamp-fit-good = good for the basking spot
lamp-fit-not_for_basking = not for the basking spot
lamp-fit-by_meter = only for who has a UV index meter
lamp-fit-not_at_all = not for this set-up at all
lamp-scope-short = This is for animals that bask.
lamp-do-distance = Ask distance where to hang it.
lamp-do-meter = If you have one, go by a UV meter alone.
lamp-do-size = Ask watts for a first size.
lamp-do-unplug = Unplug it, and take it out today.
lamp-do-leave_off = Leave it off tonight.
lamp-do-replace = Keep your animal warm, and plan the change.
lamp-do-flood = For the basking spot, take a white flood lamp.

## Steps
lamp-step-distance = Ask distance with its strength, fixture and screen. I tell you where to hang it.
# Only with: $uv_lamp
lamp-step-meter = If you have one, ask: distance lamp:{ $uv_lamp } animal:bearded dragon
lamp-step-size = Ask watts for a first size. Then ask basking to set its distance from your own reading.
lamp-step-unplug = If you have one, unplug it and take it out today. Look at your animal's belly: a burn needs a reptile vet. A flat stone under a white flood lamp does the job.
lamp-step-tonight = Leave it off tonight: the night should be dark. Ask night with your room's temperature, and I tell you whether any heat is needed.
lamp-step-leave_off = { lamp-step-replace }
lamp-step-replace = If you have one, do not panic. Keep your animal warm today. Plan the change to a white flood lamp for the basking spot and a T5 HO tube for the UV.
lamp-step-flood = For the basking spot, take a white flood lamp. Use this one only in its own place.

## Numbers
lamp-label-place = Its place
lamp-label-uv = UV
lamp-label-heat = Heat
lamp-label-light = Light
lamp-light = { $light ->
    [yes] yes
   *[no] none
  }
lamp-label-scope = Said of
lamp-scope = an animal that basks under a lamp, with its UV from a separate tube

## All of them, and one that is not known
lamp-every-title = Heat sources, one by one
lamp-every = Take a white flood lamp for the basking spot.
lamp-every-others = Incandescent or halogen, both are good. The others belong elsewhere, or nowhere here.
lamp-every-do = Name one to learn why: lamp radiant panel
lamp-column-kind = Kind
lamp-column-fit = Basking spot
lamp-column-light = Light
lamp-cell = { CAP($lamp) }
lamp-unknown-title = I do not know that lamp
lamp-unknown = I do not know “{ $typed }” as a lamp or heater.
# Only with: $near
lamp-unknown-near = Did you mean { $near }?
lamp-unknown-do = For example: lamp kind:{ $example }
lamp-unknown-all = See every kind I know: lamp
lamp-label-known = What I know
lamp-known = { LIST($lamps, join: "list-and") }

## Why, in short and in full
lamp-short-halogen-flood = It gives bright light and heat in one wide patch.
lamp-why-halogen-flood = { lamp-short-halogen-flood } Its short-wave heat is the nearest thing to the sun for a basking spot.
lamp-short-incandescent-flood = It gives white light and heat together.
lamp-why-incandescent-flood = { lamp-short-incandescent-flood } A reflector flood warms a patch as wide as the animal.
lamp-short-narrow-spot = Its patch is smaller than your animal, and can burn it.
lamp-why-narrow-spot = { lamp-short-narrow-spot } One part of the back can burn while the rest stays cool.
lamp-short-ceramic-emitter = It gives no light, so no animal basks under it.
lamp-why-ceramic-emitter = { lamp-short-ceramic-emitter } Its heat does not reach as deep as that of a flood lamp.
lamp-short-radiant-panel = It warms a wide area gently, but makes no basking spot.
lamp-why-radiant-panel = { lamp-short-radiant-panel } It gives no light, and lifts the air.
lamp-short-infrared-projector = It gives heat but no light, so it marks no basking spot.
lamp-why-infrared-projector = { lamp-short-infrared-projector } A bright spot tells the animal where to bask. This one gives short-wave heat only.
lamp-short-red-lamp = It is no daylight, and too bright for the night.
lamp-why-red-lamp = { lamp-short-red-lamp } It gives no daylight for a basking spot and is not dark enough for the night.
lamp-short-night-lamp = Animals see its light, so the night is not dark.
lamp-why-night-lamp = { lamp-short-night-lamp } Most nights need no heat at all.
lamp-short-mercury-vapour = Heat, light and UV come from one bulb.
lamp-why-mercury-vapour = { lamp-short-mercury-vapour } You cannot set one without changing the others, and it cannot be dimmed.
lamp-short-heat-mat = It warms from below and hardly warms the air.
lamp-why-heat-mat = { lamp-short-heat-mat } A basking animal looks for warmth from above.
lamp-short-heat-rock = It gets hot in spots, and can burn your animal badly.
lamp-why-heat-rock = { lamp-short-heat-rock } The animal lies on a hot spot without noticing.
lamp-short-led-lamp = It gives light, but no UV and far too little heat.
lamp-why-led-lamp = { lamp-short-led-lamp } That is too little for a basking spot.
lamp-short-compact-uv = Hardly any heat, and UV only in a small patch.
lamp-why-compact-uv = { lamp-short-compact-uv } Its UV reaches only a small patch close to it.
lamp-short-metal-halide = Light, heat and strong UV come from one small place.
lamp-why-metal-halide = { lamp-short-metal-halide } All three change with its distance.
lamp-short-t5-ho-tube = It is the lamp for the UV, not for warmth.
lamp-why-t5-ho-tube = { lamp-short-t5-ho-tube } It gives no warmth to bask in.
lamp-short-t8-tube = It is an older kind of tube, weaker than a T5 HO.
lamp-why-t8-tube = { lamp-short-t8-tube } The distances for a T5 HO do not hold for it.
lamp-short-uv-led = It is new: I do not know how much UV it gives.
lamp-why-uv-led = { lamp-short-uv-led } How it fades is not known here either.
lamp-short-plant-light = It is light for plants: no UV, no heat to bask in.
lamp-why-plant-light = { lamp-short-plant-light } It gives no UV that the animal can use.

## Its place
lamp-place-halogen-flood = Over the warm end, outside your animal's reach, on a timer with the UV tube.
lamp-place-incandescent-flood = Over the warm end, outside your animal's reach, on a timer with the UV tube.
lamp-place-narrow-spot = Only high up, where the patch has grown wider than the animal. A flood is simpler.
lamp-place-ceramic-emitter = At night, where the room gets colder than the animal can cope with, on a thermostat.
lamp-place-radiant-panel = Under the lid for gentle warmth, for large snakes or cold nights, on a thermostat.
lamp-place-infrared-projector = As a second heater for a cold enclosure or a cold night, on a thermostat that dims.
lamp-place-red-lamp = Not here. Take a white flood by day, and a heater without light by night if one is needed.
lamp-place-night-lamp = Not here. If the night needs heat, use a heater that gives no light.
lamp-place-mercury-vapour = Only where a UV index meter and an infrared gun have both been read. A flood for heat and a separate tube for UV are easier to set.
lamp-place-heat-mat = Under part of the floor for some snakes and geckos, always on a thermostat.
lamp-place-heat-rock = Nowhere here. A plain flat stone under a flood lamp does the job.
lamp-place-led-lamp = As extra daylight beside the basking lamp and the UV tube.
lamp-place-compact-uv = Only where a UV index meter was read at the animal's back. For UV a T5 HO tube is easier, for heat a flood.
lamp-place-metal-halide = Over the basking spot, only where a UV index meter and an infrared gun have both been read.
lamp-place-t5-ho-tube = Beside the basking lamp, at the distance that the question distance tells.
lamp-place-t8-tube = Near the animal, by a UV index meter alone. Without a meter take a T5 HO tube.
lamp-place-uv-led = Only where a UV index meter was read at the animal's back.
lamp-place-plant-light = As extra daylight for plants, off at night with the other lights.

## Care, in full and in short
lamp-care-halogen-flood = Use a ceramic holder, and never more watts than the holder is marked for.
lamp-mind-halogen-flood = Ceramic holder, guard, marked watts.
lamp-care-incandescent-flood = Use a ceramic holder, and never more watts than the holder is marked for.
lamp-mind-incandescent-flood = Ceramic holder, guard, marked watts.
lamp-care-narrow-spot = Measure the hottest point of the patch, not its edge.
lamp-mind-narrow-spot = Measure its hottest point, not the edge.
lamp-care-ceramic-emitter = Its face gets hot enough to burn. Use a ceramic holder and a guard, out of reach.
lamp-mind-ceramic-emitter = Only with a guard and a thermostat.
lamp-care-radiant-panel = Screw it to a lid that carries it, and keep your animal from squeezing behind it.
lamp-mind-radiant-panel = Only on a thermostat.
lamp-care-infrared-projector = Measure the surface under it. It is stronger than it looks, because nothing shines.
lamp-mind-infrared-projector = Only on a thermostat that dims.
lamp-care-red-lamp = In a trial with piglets, red and clear heat lamps made no difference. So the colour buys nothing.
lamp-mind-red-lamp = The night should be dark.
lamp-care-night-lamp = A dark night is part of the day's rhythm.
lamp-mind-night-lamp = The night should be dark.
lamp-care-mercury-vapour = Its UV is strong, so never look into it. If one breaks: people and pets out, air the room, no vacuum cleaner, and take the debris to a disposal point.
lamp-mind-mercury-vapour = Never look into it.
lamp-care-heat-mat = Without a thermostat it can burn the belly, and under a thick floor it can overheat.
lamp-mind-heat-mat = Never without a thermostat: it burns.
lamp-care-heat-rock = An animal that has lain on one and has a wound should see a vet.
lamp-mind-heat-rock = A wound? See a vet.
lamp-care-led-lamp = Do not count its marked wattage equivalent as heat.
lamp-mind-led-lamp = Its “equal to” watts are no heat.
lamp-care-compact-uv = Never look into it. Do not mistake it for a heat lamp because it fits the same holder.
lamp-mind-compact-uv = Never look into it.
lamp-care-metal-halide = It needs its own gear and is never dimmed. A cracked outer glass lets hard UV out: power off at once.
lamp-mind-metal-halide = Glass cracked? Power off at once.
lamp-care-t5-ho-tube = Never dim it, and never hang it above glass or plastic: no useful UV comes through.
lamp-mind-t5-ho-tube = Never dim it, never above glass.
lamp-care-t8-tube = A number such as 5.0 or 10.0 on it means less UV than on a T5 HO tube.
lamp-mind-t8-tube = Do not use distances of a T5 HO.
lamp-care-uv-led = Never use a UVC or disinfecting LED: it hurts eyes and skin within seconds.
lamp-mind-uv-led = Never a UVC or disinfecting LED.
lamp-care-plant-light = It never takes the place of the UV tube. Leave shade, because it can be very bright.
lamp-mind-plant-light = It never replaces the UV tube.

## What it gives
lamp-uv-halogen-flood = none
lamp-heat-halogen-flood = much, in one wide patch
lamp-uv-incandescent-flood = none
lamp-heat-incandescent-flood = much, in a wide patch
lamp-uv-narrow-spot = none
lamp-heat-narrow-spot = much, in a small patch
lamp-uv-ceramic-emitter = none
lamp-heat-ceramic-emitter = much, without light
lamp-uv-radiant-panel = none
lamp-heat-radiant-panel = gentle, over a wide area
lamp-uv-infrared-projector = none
lamp-heat-infrared-projector = much, without light
lamp-uv-red-lamp = none
lamp-heat-red-lamp = much
lamp-uv-night-lamp = none
lamp-heat-night-lamp = a little
lamp-uv-mercury-vapour = strong, only a meter tells how strong
lamp-heat-mercury-vapour = much
lamp-uv-heat-mat = none
lamp-heat-heat-mat = from below
lamp-uv-heat-rock = none
lamp-heat-heat-rock = from below, in hot spots
lamp-uv-led-lamp = none
lamp-heat-led-lamp = hardly any
lamp-uv-compact-uv = only a meter tells how strong
lamp-heat-compact-uv = hardly any
lamp-uv-metal-halide = strong if made for reptiles, only a meter tells how strong
lamp-heat-metal-halide = much, in one place
lamp-uv-t5-ho-tube = yes, by the strength on its label and its distance
lamp-heat-t5-ho-tube = hardly any
lamp-uv-t8-tube = less than a T5 HO tube of the same label, only a meter tells
lamp-heat-t8-tube = hardly any
lamp-uv-uv-led = differs from one to the next, only a meter tells
lamp-heat-uv-led = hardly any
lamp-uv-plant-light = none that an animal can use
lamp-heat-plant-light = hardly any

## What was asked of it
lamp-gives-no_uv = No. { CAP($lamp, form: "a") } gives no UV.
lamp-gives-heat_alone = No. { CAP($lamp, form: "a") } gives heat alone: no UV and no light.
lamp-gives-uv = Yes. { CAP($lamp, form: "a") } gives UV.
lamp-gives-uv_by_meter = Yes, but only a UV meter tells how strong.
lamp-gives-light = Yes. { CAP($lamp, form: "a") } gives light.
lamp-gives-night = Yes, on a thermostat. { CAP($lamp, form: "a") } gives no light.
