"""The science of Noonstone: floats in SI units in, floats in SI units out; no chat, no parsing.

Rooms: ``uv`` (tube, screen, lamp, placement), ``heat`` (surface, air, night), ``setup`` (a whole
set-up in one box), ``daylight`` (day length), ``animals`` (what each animal wants),
``unknowns`` (what is not known, and how it combines), ``uncertainty`` (a value with its range),
``sources`` (where every number comes from). Units are in
the names: ``distance_m``, ``surface_c``. Nothing here imports ``bot``. A new formula goes into
the room of its topic, with its source in ``data/sources*.toml`` and something that
proves it in ``tests/published`` or ``tests/reference``.
"""
