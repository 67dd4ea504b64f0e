### What is noted of a target: note-<animal>-<subject>, as the animal's own table has it.

note-horsfields-tortoise-night_floor = for an awake and healthy animal indoors
note-hermanns-tortoise-night_floor = for an awake and healthy animal indoors
note-blue-tongued-skink-uvi = between zone 2 and zone 3
note-green-anole-uvi = between zone 2 and zone 3
note-corn-snake-uvi = with shade to choose at all times
note-boa-uvi = with shade to choose at all times
note-leopard-gecko-uvi = with shade to choose at all times
note-royal-python-uvi = with shade to choose at all times
note-crested-gecko-uvi = with shade to choose at all times
note-slider-uvi = on the dry basking platform
note-slider-basking_surface = on the dry basking platform
note-veiled-chameleon-uvi = at the highest perch, with leaf shade below
note-panther-chameleon-uvi = at the highest perch, with leaf shade below
note-uromastyx-basking_surface = on a small spot only
note-argentine-tegu-basking_surface = wide enough for the whole body
note-ackie-monitor-basking_surface = on a small spot only; keepers differ widely
note-leopard-gecko-basking_surface = the warm floor or flat stone
note-bearded-dragon-warm_air = measured out of the beam
note-crested-gecko-warm_air = 82 °F (28 °C) is a ceiling, not an aim
