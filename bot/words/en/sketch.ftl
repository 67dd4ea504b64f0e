### Facts: SketchAway, SketchWanted, SketchPlace, SketchNumbered, SketchAnimal
### The sketches of the guide: how to lay out, where to measure.

sketch-tube = UV tube
sketch-lamp = basking lamp
sketch-stone = stone
sketch-hide = hide
sketch-warm = warm end
sketch-cool = cool end

## UV and heat over the same end
sketch-layout = UV and heat over the same end
sketch-layout-below = an enclosure seen from the front
sketch-layout-share = half to two thirds
sketch-layout-warm = hot and bright
sketch-layout-cool = cool and dim
sketch-layout-alt = Sketch of an enclosure from the front. The basking lamp hangs over a stone at the warm end. The UV tube starts at the same end and reaches over half to two thirds of the length. The cool end has no tube, and a hide.

## From the tube to the back
sketch-distance = From the tube to the back
sketch-distance-below = not to the floor, and not to the stone
sketch-distance-right = { LENGTH($right) }: yes
sketch-distance-wrong = { LENGTH($wrong) }: no
sketch-distance-alt = Sketch: a tube over a stone with an animal on it. From the tube to the animal's back it is { sketch-distance-right }, this is the distance. From the tube to the floor it is { sketch-distance-wrong }, this is not.

## Numbered places
sketch-numbered-alt = Sketch of an enclosure from the front, the basking lamp over a stone at the warm end, a hide at the cool end. { $title }, { $below }: { LIST($places, join: "list-semi") }.
sketch-place = { $number }, { $text }
sketch-places = Three places, three numbers
sketch-places-below = for { NAME($animal, form: "a") }; common practice
sketch-places-surface = basking surface: { TEMP($warmth, form: "range") }
sketch-places-warm = warm-end air: { TEMP($warmth, form: "range") }
sketch-places-cool = cool-end air: { TEMP($warmth, form: "range") }
sketch-thermometers = Where each thermometer goes
sketch-thermometers-below = after two to three hours of light
sketch-thermometers-surface = infrared gun: where the animal lies, from about { LENGTH($gun) } away
sketch-thermometers-cool = digital probe: the far end, in the shade, at the animal's height
sketch-thermometers-warm = digital probe: the air near the basking spot, out of the beam
