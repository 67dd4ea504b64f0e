### Facts: CareSheet
### A care sheet of a kept enclosure, to hand over.

mine-sheet-title = Care sheet: “{ $name }”
mine-sheet-over = { mine-sheet-title }
mine-sheet-no-animal = I do not know who lives in it.
mine-sheet-do-animal = Save its animal, then ask again.
mine-sheet-step-animal = Save who lives there: mine save name:{ $name } animal:bearded dragon
# Only with: $since
mine-sheet-since = UV lamp in use since { DAY($since) }.
# Only with: $read_on
mine-sheet-read-on = Last readings: { DAY($read_on) }.
mine-sheet-unread = Nothing was read yet.
mine-sheet-do = Hand over the picture.
mine-sheet-step-hand = Show it to whoever looks after the animal, beside the enclosure: place by place, with the thermometer in hand.
mine-sheet-step-measure = Write every reading down, so that the next sheet has it: mine reading name:{ $name } cool:79F
