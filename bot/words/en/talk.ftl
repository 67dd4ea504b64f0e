### Facts: AnimalsMeant, KnownLine, KnownSoFar
### One thing asked for at a time, in a conversation: the next line tells it.

talk-title = One thing more
talk-which = Which one is it: { LIST($here, join: "list-or") }?
talk-animal = Which animal is it for?
talk-tube = How strong is the tube? One end says it: 12%, 5.0.
talk-reflector = What is behind the tube: a mirror, or plain white?
talk-screen = What is between tube and animal: nothing, or mesh?
talk-screen-tube = What is between tube and animal: nothing, or mesh? How much does it block? If you do not know, say 45%.
talk-distance = How far is it from the tube to your animal's back?
talk-distance-lamp = How far is it from the front of the lamp to the basking surface?
talk-enclosure = How big is the box inside: length, depth and height?
talk-material = What are the walls made of: glass, wood, PVC?
talk-lid = What is the lid: solid, part mesh or full mesh?
talk-room = How warm is the room?
talk-room-night = How cold does the room get at night?
talk-surface = How hot is the basking surface now, by infrared gun?
talk-air = How warm is the air beside the basking spot, out of the beam?
talk-reading = What does the infrared gun show?
talk-readings = What does the meter show, and how far from the tube?
talk-uvi = Which UV index is at the basking spot?
talk-value = Which length or temperature, with its unit?
talk-known = So far: { LIST($told, join: "list-semi") }.
# Only with: $asked
talk-known-asked = Last question: { $asked }
talk-known-line = { $text }
talk-known-none = I know nothing of your set-up yet. Tell me about it, or ask me something.
talk-known-new = To begin anew: new
