"""Heat: air, convection and radiation; the basking surface, the walls, the night, the readings.

Start at ``basking`` for a lamp and its surface, ``first_wattage`` for a lamp to buy,
``enclosure`` for the air of the whole box, ``night`` for the night, ``judge`` for a keeper's
readings, ``thermometer`` for an infrared gun, ``sources_of_heat`` for what a lamp is good for.
Temperatures are degrees Celsius and end in ``_c``; differences are kelvin and end in ``_k``.
"""
