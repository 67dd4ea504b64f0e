"""Heat: air, convection and radiation; the basking surface, the walls, the night, the readings.

Start at ``basking`` for a lamp and its surface, ``enclosure`` for the air of the whole box,
``judge`` for a keeper's readings. Temperatures are degrees Celsius and end in ``_c``;
differences are kelvin and end in ``_k``.
"""
