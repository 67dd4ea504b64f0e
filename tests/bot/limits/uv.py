"""What holds of every answer about UV, whatever is asked of whatever animal."""

import re

from bot.reply import Reply
from tests.bot.limits.figures import (
    Given,
    edge,
    limits,
    metres,
    urgency,
    value,
)

_STRONGER = re.compile(
    r"nearer to the animal|closer to the back|Leave it\.|Leave it where|Leave it there", re.I
)


def uvi_now(given: Given) -> float:
    return limits(given).uvi_now.value


def law_wished(given: Given, reply: Reply) -> None:
    if "uvi" in given and float(given["uvi"].split("-")[-1]) >= uvi_now(given):
        assert urgency(reply, "uv_too_strong")
        assert not [v for v in reply.values if v.name.startswith("distance")]


def law_distance(given: Given, reply: Reply) -> None:
    law_wished(given, reply)
    advised = value(reply, "distance")
    if advised is not None:
        assert advised.low >= 0.20 - 1e-6
        near = value(reply, "uvi_near") or value(reply, "uvi_start")
        if near is not None:
            assert near.best < uvi_now(given)


def law_uvi(given: Given, reply: Reply) -> None:
    law_wished(given, reply)
    near = metres(given["distance"])
    there = value(reply, "uvi")
    if near < 0.15 - 1e-6 or (there is not None and there.best >= uvi_now(given)):
        assert urgency(reply, "uv_too_strong") == "now"
    elif near < 0.20 - 1e-6:
        assert urgency(reply, "uv_too_strong") in ("today", "now")
    if urgency(reply, "uv_too_strong"):
        assert not _STRONGER.search(" ".join(reply.steps))
    wanted = value(reply, "distance_wanted")
    if wanted is not None:
        assert wanted.low >= 0.20 - 1e-6


def law_tube(given: Given, reply: Reply) -> None:
    law_wished(given, reply)
    if metres(given["distance"]) < 0.20 - 1e-6:
        assert "Choose" not in reply.answer


def law_section(given: Given, reply: Reply) -> None:
    law_wished(given, reply)
    strongest = value(reply, "uvi_strongest")
    if strongest is not None and strongest.best >= uvi_now(given):
        assert urgency(reply, "uv_too_strong") == "now"
    if metres(given["distance"]) < 0.15 - 1e-6:
        assert urgency(reply, "uv_too_strong") == "now"


def law_decline(given: Given, reply: Reply) -> None:
    law_wished(given, reply)
    now = value(reply, "uvi")
    if now is not None and now.best >= uvi_now(given):
        assert urgency(reply, "uv_too_strong") == "now"


def law_plan(given: Given, reply: Reply) -> None:
    own = limits(given)
    law_wished(given, reply)
    near, uvi, held = (value(reply, name) for name in ("tube_to_back", "uvi", "air_held"))
    if near is not None:
        assert near.low >= 0.20 - 1e-6
    if uvi is not None:
        assert uvi.best < own.uvi_now.value
    if held is not None:
        assert held.best < edge(own, "caution_c")
    surface = value(reply, "basking_surface_wanted")
    if surface is not None:
        assert surface.high <= edge(own, "surface_c")
