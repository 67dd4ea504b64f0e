### What a question still needs, each as a clause: stands behind "tell me".

## Light and heat
lack-animal = which animal it is
lack-tube = how strong the tube is (on one end: 12%, 5.0)
lack-reflector = what is behind it: polished (mirror), plain (white) or not sure
lack-screen = what is between: none, what your mesh blocks (45%), or not sure
lack-screen-known = what is between: none, or what your mesh blocks (45%)
lack-screen-mesh = how much UV your mesh blocks (if you do not know, try 45%)
lack-distance = how far it is from the tube to your animal's back
lack-distance-lamp = how far it is from the front of the lamp to the basking surface
lack-lamp = what kind of lamp gives the light, such as led bar
lack-enclosure = how big the box is inside: length, depth and height
lack-material = what the walls are made of: glass, wood, pvc, melamine or mesh
lack-material-surface = what you pointed the gun at: slate, tile, wood, brick, metal
lack-latitude = the latitude of your place, such as 40N
lack-month = the month, such as in June
lack-lid = whether the lid is solid, part mesh or full mesh
lack-room = how warm the room is
lack-room-night = how cold the room gets at night
lack-surface = how hot the basking surface is now, by infrared gun
lack-air = how warm the air beside the basking spot is, out of the beam
lack-reading = what the infrared gun shows
lack-readings = what the meter shows, and how far from the tube
lack-uvi = the UV index at the basking spot
lack-hours = how many hours a day the tube is on
lack-value = which length or temperature, with its unit
lack-question = your question in your own words

## What is kept
lack-about = what it is about: meter, tube, season or check
lack-until = when: in 2 days, tomorrow 8:00
lack-number = the number of the reminder or the case
lack-day = the day whose readings go
lack-file = the JSON file that an export made
lack-name = the name
lack-line = the channel, the number or the address, or none
lack-ask = the channel, or nowhere
lack-of = what the target is of
lack-range = from where to where
lack-show = who sees the answers: private, public or usual
lack-topic = what the board is about: distances, temperatures, first-day or guide
