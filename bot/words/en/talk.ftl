### Facts: AnimalsMeant, KnownLine, KnownSoFar, Noted, NowAt, SpokenOf, TakenAs
### One thing asked for at a time, in a conversation: the next line tells it.

talk-title = One thing more
talk-hello = Hello! Which animal do you keep? Or ask me about light, UV, warmth or nights.
talk-which = Which one is it: { LIST($here, join: "list-or") }{ $more ->
    [yes] , or another by its own name
   *[no] {""}
  }?
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
talk-basking = How hot is the basking surface, by infrared gun?
talk-cool = How warm is the air at the cool end?
talk-warm = How warm is the air at the warm end, out of the beam?
talk-night = How cold does it get in the box at night?
talk-meter = What does a UV meter show at its back?
talk-latitude = How far north or south do you live: which latitude?
talk-month = Which month is it about?
talk-watts = How many watts has the heat lamp?
talk-lamp = Which kind of lamp is it?
talk-lumens = How many lumens stand on its label?
talk-length = How long is the lamp, or how many watts stand on it?
talk-age = How long has the tube been in use?
talk-hours = How many hours a day is the light on?
talk-there = What of a good set-up is there already?
talk-with_tube = How strong is the other tube?
talk-known = So far: { LIST($told, join: "list-semi") }.
# Only with: $asked
talk-known-asked = Last question: { $asked }
talk-known-line = { $text }
talk-known-none = I know nothing of your set-up yet. Tell me about it, or ask me something.
talk-known-new = To begin anew: new

## Beside an answer
talk-which-only = Is it { LIST($here, join: "list-or", form: "a") }? I have figures for no other.
talk-if-it-is = This holds for { LIST($here, join: "list-or", form: "a") }. I have figures for no other.
talk-simpler = The first line is what matters; then do step 1.
talk-units = If a figure was meant in the other unit, tell me it again with its unit: 54F, 12C.
talk-noted = Noted: { $text }. It changes nothing here.
talk-done = Good. Tell me when a figure changes.
talk-correct = Then tell me what is right, with its place: basking 95F, tube 12 in away.
talk-taken-as = Read as { TEMP($degrees) }, like before.
talk-taken-likely = Read as { TEMP($degrees) }. Wrong?
talk-mesh-least = I took a mesh of 30 %, the least.
talk-mesh-none = I took no mesh, as that is strongest.
talk-moved = I reckon with { LENGTH($distance) } after the move.
talk-measure-again = Wait 2 hours, then measure the hot spot again.
talk-open-tube = Still open: how strong the tube is.
talk-open-reflector = Still open: what is behind the tube.
talk-open-screen = Still open: what is between tube and animal.
talk-open-distance = Still open: how far away it is.
talk-open-enclosure = Still open: how big the box is.
talk-open-material = Still open: what the walls are made of.
talk-open-lid = Still open: what the lid is.
talk-open-room = Still open: how warm the room is.
talk-open-surface = Still open: how hot the basking surface is.
talk-open-air = Still open: how warm the air is.
talk-open-reading = Still open: what the infrared gun shows.
talk-open-readings = Still open: what the meter shows.
talk-open-uvi = Still open: which UV index is there.
talk-open-value = Still open: which figure.

## Where a line means nothing, or two things
talk-unclear = I did not follow that. Tell me the animal, or a figure with its unit: 12 in, 95F.
talk-unclear-animal = I did not follow that. We speak of { NAME($animal, form: "a") }. You can say:
talk-way-night = and at night?
talk-way-hours = how many hours of light?
talk-way-basking = what basking spot?
talk-either = Is that how far the tube is, or a temperature?
talk-either-distance = the distance
talk-either-heat = a temperature
