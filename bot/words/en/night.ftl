### Facts: Night, NightHeater

night-title = The night of { NAME($animal, form: "a") }

## The answer in brief
night-head-nothing = No heat: { TEMP($room) } is fine.
night-head-heat = Yes, heat: { TEMP($room) } is too cold.
night-head-keepers_differ = Maybe. { TEMP($room) } is borderline.
night-head-too_warm = No heat: { TEMP($room) } is too warm.
night-head-floor_unknown = I do not know how cool its night may get.
# Only with: $floor
night-range = { $floor_is_range ->
    [yes] Below { TEMP($floor, form: "low") }: heat. Above { TEMP($floor, form: "high") }: none.
   *[no] Below { TEMP($floor) } it needs heat.
  }
night-do-one = { $one ->
    [none] Use a heater that gives no light.
   *[some] Use a { WATTS($one) } heater without light.
  }
night-do-two = Share the heat between two heaters.
night-do-open = Warm the room: mesh holds no warm air.
night-do-cover = Cover its back and two sides at night.
night-do-too_many = Warm the room. No heater can do this.
# Only with: $off
night-do-thermostat = Thermostat: off at { TEMP($off) }.
night-do-nothing = Switch everything off at night.
night-do-cool = Cool the room: shade it, let night air in.
night-do-ask = Ask a reptile vet how cool it may get.

## Why
night-why-nothing = { CAP($animal, form: "a") } is fine in a room that falls to { TEMP($room) }. { night-good-drop }
night-why-heat = { TEMP($room) } is colder than { NAME($animal, form: "a") } should have.
night-why-keepers_differ = Keepers differ about { TEMP($room) }. A healthy adult is usually fine. A young or ill animal needs it warmer.
night-why-too_warm = { TEMP($room) } at night is warmer than the cool end should be by day. Let the night get cooler. { night-good-drop }
night-why-floor_unknown = Nobody has told me how cool a night { NAME($animal, form: "a") } can cope with, so I cannot judge { TEMP($room) }. A reptile vet or an experienced keeper may know. A dark night that is cooler than the day is good. Any heat must come without light and from a thermostat.
night-good-drop = A cooler, dark night is good: it gives rest.

## Steps
night-step-cool = Cool the room today: shade the window, let night air in, or move the enclosure to a cooler room.
night-step-heater = Use a ceramic heater or a radiant panel. Both give heat without light. Put a guard around it, out of the animal's reach.
night-step-cover = Cover the back and two sides of the cage at night with something that cannot burn, and leave the front open for air. A heater beside the mesh warms only what is close to it.
night-step-ask-watts = Ask again with enclosure, material and lid, and I tell you the watts.
night-step-thermostat = Plug it into an on/off thermostat{ $off ->
    [none] .
   *[some] , set to turn off at about { TEMP($off) }.
  } Put the probe in the air at the animal's height, not right under the heater.
night-step-morning = Read the coldest temperature the next morning, and again after any change.
night-step-measure = Leave a thermometer that remembers the coldest reading beside the enclosure for a night. The coldest hour is just before sunrise, and most people guess it wrong.

## Numbers
night-label-floor = Heat is needed below
# Only with: $floor, $floor_known
night-floor = { TEMP($floor, form: "range") } ({ $floor_known })
night-label-off = Thermostat off at
# Only with: $off
night-off = { TEMP($off) } ({ $off_is_practice ->
    [yes] common practice, no source
   *[no] our own rule: a little warmer than where heat is needed
  })
night-label-heater = Heater
night-heater = { $place ->
    [above_mesh] Above the mesh, where a third or more of its heat is lost, it takes
   *[inside] Inside, it takes
  } about { WATTS($need) } ({ WATTS($need, form: "range") }) in the coldest hour. { $one ->
    [none] { $fit ->
        [too_many] That is more than one heater gives, and many heaters on one enclosure are a fire risk. Warm the room first, or close more of the lid with something that cannot burn.
       *[two] That is more than one heater gives. Share it between two, or close more of the lid.
      }
   *[some] Buy one of { WATTS($one) }. The thermostat takes off what is too much.
  }
night-heater-open = Mesh on all sides lets the air through, so the cage has the room's air. It would take { WATTS($need, form: "range") } to hold it: warm the room.

## Care
night-care-colours = No red, blue or purple night lamps: animals see their light. The night should be dark.
night-care-colours-short = No red or blue lamps at night.
night-care-too-warm = If your animal gapes or lies limp, it is too hot. Call a reptile vet at once.
night-care-too-warm-short = If it gapes or lies limp, call a vet now.

## What swims
night-head-water = Its water counts, not the air.
# Only with: $cold_water
night-head-water_too_cold = { TEMP($room) } is too cold for its water.
# Only with: $water
night-water = Water: { TEMP($water, form: "range") }, day and night.
night-do-read-water = Read the water before the lights go on.
night-do-warm-water = Heat the water, on a thermostat.
night-why-water = Unheated, the water of { NAME($animal, form: "a") } falls to { TEMP($room) } by morning, as the room does. I know no figure for the air at night.
# Only with: $cold_water
night-why-water_too_cold = Unheated water falls to the room by morning. Below { TEMP($cold_water) } it is too cold for { NAME($animal, form: "a") } that is awake.
night-step-water = Leave a probe in the water for a night, and read the coldest. A water heater needs a guard, a thermostat of its own, and a drip loop in its cable.
night-care-water = Water and mains power can kill you: pull every plug before you put a hand in. Have a safety switch for leaks fitted, give every cable a drip loop, and follow your local electrical codes.
night-care-water-short = Pull every plug before you reach in.

## The picture
night-picture-read = { TEMP($room) } in the room
night-picture-unknown = how cool it may get is not known
