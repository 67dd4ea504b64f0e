### What each option of a question is for.

## distance
option-distance-tube = tube strength on the label: 12%, 6%; not needed with readings
option-distance-reflector = behind the tube: polished, plain or not sure; not needed with readings
option-distance-screen = what is between: none, 45% (blocked), passes 55%, or 18x16 0.011in; mesh or not sure will do
option-distance-animal = the animal, such as bearded dragon
option-distance-uvi = the UV index you want instead of the animal's own range, such as 3-5
option-distance-length = length of the tube or the watts on it: 22in, 85cm, 39W
option-distance-age = how long the tube has been in use, such as 6 months
option-distance-readings = your own meter readings of this tube, through this screen: 4.2 at 12 in
option-distance-enclosure = the enclosure's length, where the tube's is not known: 4ft, 120cm
option-distance-lamp = the kind of UV lamp, such as T5 HO tube, T8 or compact; of most I know no figures
option-distance-tubes = how many such tubes hang side by side, 1 to 4
option-distance-gap = from the middle of one tube to the middle of the next; else I assume one place
option-distance-state = what it is just now: young, pale (albino), gravid, female, ill or in quarantine

## uvi
option-uvi-tube = { option-distance-tube }
option-uvi-reflector = { option-distance-reflector }
option-uvi-screen = { option-distance-screen }
option-uvi-animal = { option-distance-animal }
option-uvi-uvi = { option-distance-uvi }
option-uvi-length = { option-distance-length }
option-uvi-age = { option-distance-age }
option-uvi-readings = { option-distance-readings }
option-uvi-enclosure = { option-distance-enclosure }
option-uvi-lamp = { option-distance-lamp }
option-uvi-tubes = { option-distance-tubes }
option-uvi-gap = { option-distance-gap }
option-uvi-state = { option-distance-state }
option-uvi-distance = from the tube to the animal's back, such as 14in or 35cm

## tube
option-tube-distance = { option-uvi-distance }
option-tube-screen = what is between: none, 45% (blocked), passes 55%, or 18x16 0.011in
option-tube-animal = { option-distance-animal }
option-tube-uvi = { option-distance-uvi }
option-tube-enclosure = the enclosure's length, or its whole size: 4ft, 120cm, 48x24x24in
option-tube-length = length of the tube, if that is fixed too
option-tube-readings = { option-distance-readings }
option-tube-lamp = { option-distance-lamp }
option-tube-tubes = { option-distance-tubes }
option-tube-gap = { option-distance-gap }
option-tube-state = { option-distance-state }

option-compare-distance = { option-uvi-distance }
option-compare-tube = { option-uvi-tube }
option-compare-reflector = { option-uvi-reflector }
option-compare-screen = { option-uvi-screen }
option-compare-with_tube = of the other: its strength, such as 6%
option-compare-with_reflector = of the other: polished or plain
option-compare-with_screen = of the other: what is between, such as none or 45%
option-compare-with_distance = of the other: its distance, such as 10in
option-compare-with_length = of the other: its length
option-compare-with_age = of the other: its age, such as 12 months
option-compare-animal = { option-uvi-animal }
option-compare-uvi = { option-uvi-uvi }
option-compare-length = { option-uvi-length }
option-compare-age = { option-uvi-age }
option-compare-state = { option-uvi-state }

## meter
option-meter-readings = UV index read, and how far from the tube: 4.2 at 12 in, 2.9 at 15 in
option-meter-animal = { option-distance-animal }
option-meter-uvi = { option-distance-uvi }
option-meter-screen = what was between lamp and meter, if anything: 45%, 18x16 0.011in
option-meter-without = the same read with the screen taken away, to learn what it passes
option-meter-distance = from the tube to the animal's back where it basks
option-meter-length = { option-distance-length }
option-meter-tube = strength on the label, to set the lamp against it
option-meter-reflector = the fixture behind the tube: polished or plain
option-meter-lamp = { option-distance-lamp }
option-meter-tubes = { option-distance-tubes }
option-meter-gap = { option-distance-gap }

## decline
option-decline-readings = UV index read at one place, with dates: 2026-01-03 4.2, 2026-03-01 3.9
option-decline-animal = { option-distance-animal }
option-decline-uvi = { option-distance-uvi }
option-decline-age = how long the tube has been in use, without a meter
option-decline-lamp = which kind of UV lamp it is

## section
option-section-tube = tube strength on the label: 12%, 6%
option-section-reflector = the fixture behind the tube: polished, plain or not sure
option-section-screen = { option-distance-screen }
option-section-distance = from the tube to the animal's back on its platform
option-section-enclosure = length, depth and height: 48x24x24in or 120x60x60 cm
option-section-animal = { option-distance-animal }
option-section-uvi = { option-distance-uvi }
option-section-length = length of the tube; else about half the enclosure
option-section-tubes = { option-distance-tubes }
option-section-gap = { option-distance-gap }
option-section-start = from the warm end wall to the tube's near end
option-section-across = from the back wall to the middle of the tubes
option-section-platform = length of the basking platform, from the warm end
option-section-back = height of the animal's back over what it lies on
option-section-heat = from the warm end wall to the middle of the heat lamp
option-section-patch = width of the patch that the heat lamp warms
option-section-lamp = { option-distance-lamp }
option-section-readings = { option-distance-readings }
option-section-light = a white lamp too, such as 24W led bar

## dose
option-dose-uvi = UV index at the basking spot, such as 4
option-dose-hours = hours a day that the lamp is on, such as 10
option-dose-distance = from the lamp to that spot, to tell how you fare
option-dose-length = { option-distance-length }
option-dose-latitude = latitude of the sun to compare with: 40N, 27S
option-dose-month = month of the sun to compare with: June
option-dose-lamp = kind of UV lamp, such as T5 HO tube or compact, or one of your group's own by name
option-dose-readings = { option-distance-readings }

## plan
option-plan-animal = { option-distance-animal }
option-plan-enclosure = inside length, depth and height, such as 48x24x24in or 120x60x60cm
option-plan-lid = the lid: solid, part mesh or full mesh
option-plan-material = the walls: glass, wood, pvc, melamine, or mesh on all sides
option-plan-room = the air of the room by day, such as 70F
option-plan-night = the coldest the room gets at night, such as 62F
option-plan-place = the tube hangs inside, or above a mesh lid; else I choose
option-plan-screen = { option-tube-screen }
option-plan-tube = a tube you have, by the strength on its label: 12%
option-plan-reflector = the fixture that you have: polished or plain
option-plan-length = length of the tube you have, or the watts on it: 34in, 39W
option-plan-lamp = the heat lamp's shape: wide dome, flood or narrow
option-plan-watts = wattage of a heat lamp you have, such as 75W
option-plan-back = height of the animal's back over what it lies on, such as 2in or 5cm
option-plan-uvi = { option-distance-uvi }
option-plan-tubes = { option-distance-tubes }
option-plan-gap = { option-distance-gap }
option-plan-state = { option-distance-state }
option-plan-level = how far to go: minimum, good (a white light too) or better
option-plan-light = { option-section-light }

## card
option-outdoors-latitude = latitude of your place: 40N, 27S
option-outdoors-month = month: June
option-outdoors-hour = hour of the day by the sun, such as 9:00
option-outdoors-place = open pen, window or greenhouse
option-outdoors-shade = temperature in the shade out there
option-outdoors-animal = { option-distance-animal }
option-outdoors-uvi = { option-distance-uvi }
option-outdoors-state = { option-distance-state }
option-card-animal = { option-distance-animal }
option-card-uvi = { option-distance-uvi }
option-card-screens = what may be between, one to four: none; 30%; 45%
option-card-tubes = tube strengths, one to four: 6%; 12%
option-card-length = { option-distance-length }
option-card-state = { option-distance-state }

## needs
option-needs-animal = { option-distance-animal }
option-needs-about = the one thing that you want to know first
option-needs-heard = a temperature that you were told: is it right?
option-needs-state = { option-distance-state }

## temps
option-temps-basking = basking surface, by infrared gun, such as 98F
option-temps-cool = air at the cool end, by digital probe, such as 75F
option-temps-warm = air at the warm end, out of the beam, such as 83F
option-temps-night = the lowest at night, such as 64F
option-temps-water = the water, where it swims, such as 78F
option-temps-lamp_on = how long the lamp had been on, such as 3 hours
option-temps-measured = what you measured with: infrared gun, digital probe, dial or strip
option-temps-animal = your animal, such as bearded dragon; every animal needs its own
option-temps-room = the air of the room by day; with it I reckon what mends the cool end
option-temps-enclosure = { option-plan-enclosure }
option-temps-material = { option-plan-material }
option-temps-lid = { option-plan-lid }
option-temps-watts = the heat lamp's wattage, such as 75W
option-temps-state = { option-distance-state }

## basking
option-basking-surface = the basking surface now, by infrared gun, such as 92F
option-basking-air = the air beside the spot, out of the beam, such as 80F
option-basking-distance = from the lamp's face to the surface, such as 10in or 25cm
option-basking-want = the temperature you want; without it, name the animal, whose own is taken
option-basking-animal = { option-temps-animal }
option-basking-watts = the lamp's wattage, such as 75W
option-basking-dimmer = how far up the dimmer is: 100% is full
option-basking-safe = the nearest distance that the lamp's label allows
option-basking-holder = the most watts marked on the lamp holder
option-basking-reach = can the animal touch the lamp: yes or no
option-basking-wood = the hottest wood near the lamp, if there is any

## watts
option-watts-room = the air of the room, such as 70F
option-watts-distance = { option-basking-distance }
option-watts-lamp = the lamp's shape: wide dome, flood or narrow
option-watts-want = { option-basking-want }
option-watts-animal = { option-temps-animal }
option-watts-holder = { option-basking-holder }
option-watts-enclosure = { option-plan-enclosure }
option-watts-material = { option-plan-material }
option-watts-lid = { option-plan-lid }
option-watts-place = the lamp is inside, or above a mesh lid

## air
option-air-enclosure = { option-plan-enclosure }
option-air-material = { option-plan-material }
option-air-lid = { option-plan-lid }
option-air-room = the air of the room, such as 68F
option-air-want = { option-basking-want }
option-air-animal = { option-temps-animal }
option-air-watts = the basking lamp's wattage, to see if it is enough
option-air-place = { option-watts-place }

## night
option-night-room = the coldest the room gets at night, such as 58F
option-night-animal = { option-temps-animal }
option-night-enclosure = { option-plan-enclosure }
option-night-material = { option-plan-material }
option-night-lid = { option-plan-lid }
option-night-place = the heater is inside, or above a mesh lid
option-night-state = { option-distance-state }

## hours
option-hours-animal = { option-distance-animal }
option-hours-on = when you want the lights to go on, such as 8:00
option-hours-off = when they go off, to judge how long it is light
option-hours-latitude = whose seasons to follow: 35N, 30S, or home for the animal's own
option-hours-zone = your time zone, such as America/Chicago
option-hours-months = own, or turned by half a year so that its summer falls in yours
option-hours-year = the year of the clock changes; this year if not given

## surface
option-surface-reading = what the infrared gun shows, such as 98F
option-surface-material = what you shot at, such as slate, tile, wood, brick or metal
option-surface-air = the air around, which the surface mirrors
option-surface-setting = the gun's emissivity setting in percent; most are 95%
option-surface-glass = did you shoot through glass: yes or no

## lamp
option-lamp-kind = the kind of lamp or heater; nothing lists them all
option-lamp-about = what you want to know of it: uv, light, night or use

## ask
option-ask-question = your question in your own words

## check
option-check-setup = your set-up in your own words, as you would tell a friend
option-check-animal = { option-distance-animal }
option-check-tube = tube strength on the label
option-check-reflector = { option-meter-reflector }
option-check-screen = what is between: none, 45% (blocked), passes 55%
option-check-distance = from the tube to the animal's back
option-check-length = length of the tube
option-check-age = how long the tube has been in use
option-check-meter = UV index that a meter shows at the animal's back
option-check-basking = basking surface, by infrared gun
option-check-cool = air at the cool end, by digital probe
option-check-warm = air at the warm end, out of the beam
option-check-night = the lowest at night in the enclosure or its room
option-check-water = { option-temps-water }
option-check-lamp_on = how long the lamp had been on when you read
option-check-measured = { option-temps-measured }
option-check-hours = how long the lights are on each day
option-check-lamp = { option-distance-lamp }
option-check-tubes = { option-distance-tubes }
option-check-gap = { option-distance-gap }
option-check-state = { option-distance-state }

## convert
option-convert-value = a length, a temperature, or a difference: 14in, 35 C, difference 10F

## guide
option-guide-page = the page to open; nothing lists them all
option-guide-part = the part of the page to begin with, by its heading

## help
option-help-command = the question you want explained; nothing lists them all

## mine save
option-mine-save-name = a name for the enclosure
option-mine-save-words = the set-up in your own words; the facts are kept, the words are not
option-mine-save-animal = who lives in it, such as bearded dragon
option-mine-save-tube = { option-section-tube }
option-mine-save-reflector = { option-meter-reflector }
option-mine-save-screen = { option-check-screen }
option-mine-save-distance = from the tube to the animal's back, such as 14in
option-mine-save-length = { option-distance-length }
option-mine-save-age = { option-distance-age }
option-mine-save-enclosure = length, depth and height: 48x24x24in
option-mine-save-lamp = { option-distance-lamp }
option-mine-save-tubes = { option-distance-tubes }
option-mine-save-gap = { option-distance-gap }

## mine reading
option-mine-reading-name = the name of the enclosure; not needed if you keep one
option-mine-reading-uvi = the UV index read where it basks, such as 4.2
option-mine-reading-distance = how far from the tube the UV was read
option-mine-reading-basking = the basking surface, such as 103F
option-mine-reading-warm = the air at the warm end, such as 84F
option-mine-reading-cool = the air at the cool end, such as 79F
option-mine-reading-night = the coldest at night, such as 68F
option-mine-reading-day = the day it was read: today, yesterday or 2026-05-04; today if not given

## mine show
option-mine-show-name = { option-mine-reading-name }

## mine sheet
option-mine-sheet-name = { option-mine-reading-name }

## mine compare
option-mine-compare-name = { option-mine-reading-name }
option-mine-compare-first = the earlier day; else the first
option-mine-compare-second = the later day; else the last
option-mine-compare-other = a second enclosure: both by their last readings
option-mine-compare-lamp = a spare lamp, or an enclosure for the lamp over it
option-mine-compare-other_lamp = the second lamp

## mine share, mine case, mine unshare, cases
option-mine-share-name = { option-mine-reading-name }
option-mine-share-sure = yes: you agree that helpers here see it
option-mine-case-name = { option-mine-reading-name }
option-mine-unshare-name = { option-mine-reading-name }
option-cases-show-number = the number of the case
option-cases-end-number = { option-cases-show-number }
option-cases-advise-number = { option-cases-show-number }
option-cases-advise-distance = hang the tube this far above the back: 14in
option-cases-advise-tube = change the tube: new, or a class such as 12%
option-cases-advise-screen = none: hang the tube below the screen
option-cases-advise-measure = a reading you wish for: uvi, basking, warm, cool, night
option-cases-advise-basking = bring the basking surface to: 103F
option-cases-advise-warm = bring the air at the warm end to: 84F
option-cases-advise-cool = bring the air at the cool end to: 79F
option-cases-advise-night = bring the coldest of the night to: 68F
option-cases-advise-vet = yes: take the animal to a reptile vet

## mine spare, mine timer
option-mine-spare-name = a name for the spare lamp
option-mine-spare-tube = { option-section-tube }
option-mine-spare-length = { option-distance-length }
option-mine-spare-lamp = { option-distance-lamp }
option-mine-spare-bought = the day it was bought: today or 2026-01-10
option-mine-spare-into = the enclosure that it hangs over from today
option-mine-spare-gone = yes: it is used up or given away
option-mine-timer-on = when the longest day begins, such as 8:00

## mine unread
option-mine-unread-name = { option-mine-reading-name }
option-mine-unread-day = the day whose readings go: 2026-05-04
option-mine-unread-of = only this kind: uvi, basking, warm, cool, night

## mine offer
option-mine-offer-name = the enclosure whose last UV reading you give
option-mine-offer-readings = or what you read, and where: 4.2 at 12 in
option-mine-offer-tube = the tube by its label: 12%; or a lamp of the group's own
option-mine-offer-reflector = what is behind the tube
option-mine-offer-screen = what was between meter and lamp: none, 45%
option-mine-offer-length = how long the tube is, or its watts
option-mine-offer-age = how long it has been in use
option-mine-offer-lamp = which kind of lamp, if it is no T5 HO tube
option-mine-offer-day = the day you read it; else today
option-mine-offer-sure = yes gives it to the group

## mine withdraw
option-mine-withdraw-reading = its number, or all

## mine remove
option-mine-remove-name = the enclosure that goes

## mine prefer
option-mine-prefer-units = in (with °F), cm (with °C), or none
option-mine-prefer-language = the language of answers: en, de, or none
option-mine-prefer-zone = your time zone, such as Europe/Berlin, or none

## mine import
option-mine-import-file = the JSON file that an export made

## mine forget
option-mine-forget-sure = yes deletes for good

## remind me
option-remind-me-about = meter reading, tube replacement, season change, check
option-remind-me-when = in 3 months, tomorrow 8:00, 2026-06-01 9:00
option-remind-me-name = which enclosure
option-remind-me-every = again and again: 3 months, 2 weeks
option-remind-me-where = by direct message, or here in this channel
option-remind-me-zone = your time zone, such as Europe/Berlin

## remind snooze
option-remind-snooze-number = the number of the reminder
option-remind-snooze-until = in 2 days, tomorrow 8:00

## remind off
option-remind-off-number = { option-remind-snooze-number }

## server set
option-server-set-units = shown first: in (with °F), cm (with °C), or none
option-server-set-animal = taken where none is named, or none
option-server-set-site = where the guide is published, or none
option-server-set-language = the language of answers here: en, de, or none
option-server-set-zone = the group's time zone, or none

## server answers
option-server-answers-show = private: the asker alone; public: the channel; usual

## server lamp
option-server-lamp-name = a name for the lamp
option-server-lamp-readings = { option-meter-readings }
option-server-lamp-length = { option-distance-length }
option-server-lamp-screen = what was between lamp and meter, if anything
option-server-lamp-lamp = the kind of UV lamp, such as metal halide lamp; left out: a T5 HO tube

## server screen
option-server-screen-name = a name for the screen
option-server-screen-screen = the share: blocks 45% or passes 55%
option-server-screen-readings = UV index read through it: 3.3 at 12 in
option-server-screen-without = the same read with the screen taken away

## server target
option-server-target-animal = the animal
option-server-target-of = what the target is of
option-server-target-range = from where to where: 95-110F, 3-5 for UV, 10-14h, 12-16in
option-server-target-best = what to aim for, if known: 103F

## server animal
option-server-animal-name = the animal's name
option-server-animal-scientific = its scientific name
option-server-animal-uvi = UV index where it basks: 2-3
option-server-animal-basking = basking surface: 88-93F
option-server-animal-warm = warm-end air: 80-84F
option-server-animal-cool = cool-end air: 70-76F
option-server-animal-night = night heat only below: 58-64F
option-server-animal-night_off = night heat off at: 64-66F
option-server-animal-water = water that it lives in: 72-78F
option-server-animal-depth = how deep that water is: 12-16in
option-server-animal-hours = light a day: 12-14 hours
option-server-animal-surface_limit = no surface may be hotter: 104F
option-server-animal-cool_limit = the coolest place may not reach this: 86F
option-server-animal-night_limit = no night may be colder: 52F
option-server-animal-uvi_limit = no UV index may reach this: 6
option-server-animal-back = height of its back over what it lies on: 2in
option-server-animal-life = how it lives: climbs, water, digs or night

## server remove
option-server-remove-lamp = the lamp that goes
option-server-remove-screen = the screen that goes
option-server-remove-animal = an animal of the group's own, or the one whose target goes
option-server-remove-of = which target goes

## server vets, server helpers, server wrong
option-server-vets-line = a channel, a number or an address, or none
option-server-helpers-ask = here: in this channel; nowhere
option-server-public-who = everybody, helpers (with the role), moderators, or usual
option-server-public-where = here; parent: the channel or forum around it; everywhere
option-server-public-most = public posts an hour for each person, 1 to 100, or none
option-server-public-role = the role of your helpers, such as @helpers, or none
option-server-wrong-clear = yes to take them away
option-server-wrong-file = all of them as a file: csv or json

## server readings
option-server-readings-clear = the number of the reading that goes

## server stats
option-server-stats-weeks = how many weeks back, 1 to 104

## server import
option-server-import-file = { option-mine-import-file }

## server forget
option-server-forget-sure = { option-mine-forget-sure }

## board preview
option-board-preview-topic = what it is about: distances, temperatures, first-day, guide or welcome
option-board-preview-animal = the animals, up to four, parted by “;”; else the group's

## board post
option-board-post-topic = { option-board-preview-topic }
option-board-post-animal = { option-board-preview-animal }

## board remove
option-board-remove-topic = { option-board-preview-topic }

## bright
option-bright-lamp = the kind of lamp that gives the light, such as led bar
option-bright-lumens = the lumens on its label; without them its watts
option-bright-watts = the watts it really takes, not those it replaces
option-bright-distance = from the lamp's face to where the animal basks
option-bright-length = length of the bar or tube, or a side of the panel
option-bright-beam = a flood's beam angle, from its box: 36 degrees
option-bright-screen = what is between: none, 45% (blocked), 18x16 0.011in
option-bright-reflector = has the tube a reflector behind it: yes or no
option-bright-lamps = how many, or several: 24W led bar + 75W flood
option-bright-enclosure = length, depth and height, to tell the cool end too
option-bright-animal = { option-distance-animal }
option-bright-hours = hours of light a day, for plants; else 12
option-bright-reading = what a meter shows there: 6000 lux, 560 fc
option-bright-by = what you read it with: meter or phone
option-bright-latitude = { option-dose-latitude }
option-bright-month = { option-dose-month }

## next
option-next-setup = { option-check-setup }
option-next-animal = { option-check-animal }
option-next-tube = { option-check-tube }
option-next-reflector = { option-check-reflector }
option-next-screen = { option-check-screen }
option-next-distance = { option-check-distance }
option-next-length = { option-check-length }
option-next-age = { option-check-age }
option-next-meter = { option-check-meter }
option-next-basking = { option-check-basking }
option-next-cool = { option-check-cool }
option-next-warm = { option-check-warm }
option-next-night = { option-check-night }
option-next-water = { option-check-water }
option-next-lamp_on = { option-check-lamp_on }
option-next-measured = { option-check-measured }
option-next-hours = { option-check-hours }
option-next-lamp = { option-check-lamp }
option-next-tubes = { option-check-tubes }
option-next-gap = { option-check-gap }
option-next-state = { option-check-state }
option-next-there = what you have: hides, uv meter, white light, long tube, seasons, plants

## arrange
option-arrange-animal = { option-plan-animal }
option-arrange-enclosure = { option-plan-enclosure }
option-arrange-lid = { option-plan-lid }
option-arrange-material = { option-plan-material }
option-arrange-room = { option-plan-room }
option-arrange-night = { option-plan-night }
option-arrange-place = { option-plan-place }
option-arrange-screen = { option-plan-screen }
option-arrange-tube = { option-plan-tube }
option-arrange-reflector = { option-plan-reflector }
option-arrange-length = { option-plan-length }
option-arrange-lamp = { option-plan-lamp }
option-arrange-watts = { option-plan-watts }
option-arrange-back = { option-plan-back }
option-arrange-uvi = { option-plan-uvi }
option-arrange-tubes = { option-plan-tubes }
option-arrange-gap = { option-plan-gap }
option-arrange-state = { option-plan-state }
option-arrange-level = { option-plan-level }
option-arrange-light = { option-section-light }
