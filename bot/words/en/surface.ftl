### Facts: SurfaceRead, SurfaceUnread

surface-title = An infrared gun on { surface-name }
surface-name = { $surface ->
    [slate] slate
    [tile] ceramic tile
    [wood] wood
    [brick] brick or fired clay
    [concrete] concrete
    [granite] granite or rough stone
    [sand] sand
    [soil] soil
    [painted] a painted surface
    [plastic] plastic
    [glass] glass
   *[metal] bare metal
  }

## The answer in brief
surface-head-right = Yes: the gun is about right.
surface-head-hotter = Hotter than shown: { TEMP($really) }.
surface-head-cooler = Cooler than shown: { TEMP($really) }.
surface-range = { TEMP($shown) } on { surface-name } is really { TEMP($really, form: "range") }.
surface-assumed-air = I assumed air at { TEMP($air) }.
surface-assumed-setting = I assumed a gun set to { NUMBER($setting) }.
surface-do-read = Read from above, clear of the lamp.

## No answer
surface-unread-title = This reading cannot be trusted
surface-unread-bare_metal = No: a gun cannot read bare metal.
surface-unread-through_glass = No: a gun cannot see through glass.
surface-unread-why-bare_metal = It mirrors what is around it, so the number means nothing.
surface-unread-why-through_glass = It read the pane, and nothing behind it.
surface-do-bare_metal = Stick dull tape on it and read that.
surface-do-through_glass = Open up and read the surface itself.
surface-step-bare_metal = Stick a piece of dull masking tape or paint a matt patch on the metal, wait ten minutes, and read that.
surface-step-through_glass = Open the door or lift the lid, move the animal aside, and read the surface itself.
surface-step-stone = Better still, put a stone or tile there. Metal under a lamp burns.

## Why
surface-why = A gun set to { NUMBER($setting) } takes every surface for one that gives off that much of its heat rays. For { surface-name } it is { NUMBER($emissivity, form: "range") }, and the rest is mirrored from around it.

## Steps
surface-step-read = Read straight down from about { LENGTH($away) }, from the side away from the lamp. Beside the lamp the gun sees the lamp's mirror image.
surface-step-highest = Take the highest of three readings where the animal lies.
surface-step-tape = To be sure, put a piece of dull masking tape on the spot, wait ten minutes, and read the tape.

## Numbers
surface-label-shown = Shown
surface-shown = { TEMP($shown) }
surface-label-really = Really
surface-really = { TEMP($really, form: "range") }. The gun itself can be off by a degree or two more.
surface-label-emissivity = Emissivity
surface-emissivity = { surface-name } { NUMBER($emissivity, form: "range") }, the gun { $setting_told ->
    [yes] is set to { NUMBER($setting) }
   *[no] I assumed to be set to { NUMBER($setting) }
  }
surface-label-mirrored = Mirrored
surface-mirrored = { $air_told ->
    [yes] air at { TEMP($air) }
   *[no] a room at { TEMP($air) }, which I assumed because you told no air
  }

## Care
surface-care = Never read through glass or on bare metal, and keep the laser out of eyes.
surface-care-short = Keep the laser out of eyes.

## The picture
surface-picture-read = shown { TEMP($shown) }
surface-picture-really = really { TEMP($really, form: "range") }
