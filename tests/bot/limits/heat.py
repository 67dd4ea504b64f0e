"""What holds of every answer about heat, whatever is asked of whatever animal."""

import re

from bot.reply import Reply
from calc.heat.basking import Reading, surface_at
from calc.limits import any_limits
from tests.bot.limits.figures import (
    Given,
    celsius,
    edge,
    limits,
    metres,
    urgency,
    value,
)

# Steps that make a place warmer or a back's UV stronger, by their words.
_WARMER = re.compile(
    r"bring the lamp a little nearer|lower the lamp|next stronger lamp|stronger one warms|"
    r"second, weaker heat lamp|a second heat lamp|lamp a bit to the middle|"
    r"leave everything as it is|leave the lamp where it is|a stronger lamp",
    re.I,
)


def met_hot(given: Given, surfaces: tuple[str, ...], coolest: tuple[str, ...]) -> str:
    """Return how soon heat is due by the figures that were given, worked out here anew."""
    own = limits(given)
    due = ""
    for name in surfaces:
        over = celsius(given[name]) - edge(own, "surface_c") if name in given else -1.0
        due = "now" if over >= 5.0 else due or ("today" if over > 0.0 else "")
    for name in coolest:
        if name in given and celsius(given[name]) >= edge(own, "coolest_air_c"):
            due = "now"
        elif name in given and celsius(given[name]) >= edge(own, "caution_c"):
            due = due or "today"
    return due


def near_an_edge(given: Given, names: tuple[str, ...]) -> bool:
    """Say whether a figure lies so near a limit that the reader's rounding decides."""
    own = limits(given)
    edges = [edge(own, "surface_c"), edge(own, "surface_c") + 5.0, edge(own, "caution_c")]
    edges += [edge(own, "coolest_air_c"), edge(own, "night_c")]
    edges += [edge(own, "room_c")]
    return any(
        abs(celsius(given[name]) - edge) < 1e-6 for name in names if name in given for edge in edges
    )


def law_temps(given: Given, reply: Reply) -> None:
    if near_an_edge(given, ("basking", "cool", "warm", "night")):
        return
    due = met_hot(given, ("basking", "warm"), ("cool",))
    # °F far too cold for a lit box may be a mistaken unit, which is asked first.
    assert urgency(reply, "box_too_hot") == due
    if due:
        assert not _WARMER.search(" ".join(reply.steps))
    cold = "night" in given and celsius(given["night"]) < edge(limits(given), "night_c")
    assert urgency(reply, "night_too_cold") == ("today" if cold else "")


def law_basking(given: Given, reply: Reply) -> None:
    own = limits(given)
    if not near_an_edge(given, ("surface", "air")):
        assert urgency(reply, "box_too_hot") == met_hot(given, ("surface", "air"), ())
    ceiling = edge(own, "surface_c")
    if "want" in given and celsius(given["want"]) > ceiling + 1e-6:
        assert urgency(reply, "too_hot_wish")
        assert value(reply, "lamp_distance") is None
    wanted, move = value(reply, "basking_surface_wanted"), value(reply, "lamp_distance")
    if wanted is not None:
        assert wanted.high <= ceiling + 1e-9
    read = None
    if reply.status == "ok" and (move or reply.table):
        read = Reading(celsius(given["surface"]), celsius(given["air"]), metres(given["distance"]))
    if move is not None and read is not None and move.low <= 2.0:
        assert surface_at(read, move.low).high <= ceiling + 1e-6
    for row in () if reply.table is None else reply.table.rows:
        if "of the same shape" in row[0]:
            found = re.findall(r"(-?[\d.]+) °C", row[1]) or re.findall(r"\(([\d.]+)", row[1])
            assert float(found[0]) <= ceiling + 0.5


def law_watts(given: Given, reply: Reply) -> None:
    ceiling = edge(limits(given), "surface_c")
    wanted = value(reply, "basking_surface_wanted")
    if wanted is not None:
        assert wanted.high <= ceiling + 1e-9
    if "want" in given and celsius(given["want"]) > ceiling + 1e-6:
        assert urgency(reply, "too_hot_wish")
        assert value(reply, "lamp_power") is None
    law_room(given, reply)


def law_room(given: Given, reply: Reply) -> None:
    if near_an_edge(given, ("room",)) or "room" not in given:
        return
    own, room = limits(given), celsius(given["room"])
    danger, caution = edge(own, "coolest_air_c"), edge(own, "room_c")
    due = "now" if room >= danger else "today" if room >= caution else ""
    assert urgency(reply, "power_cut_hot") == due


def law_air(given: Given, reply: Reply) -> None:
    own = limits(given)
    law_room(given, reply)
    if "want" in given and celsius(given["want"]) > edge(own, "caution_c") + 1e-6:
        assert urgency(reply, "too_hot_wish")
        assert value(reply, "power") is None
    held = value(reply, "air_held")
    if held is not None:
        due = urgency(reply, "box_too_hot")
        if held.best >= edge(own, "coolest_air_c"):
            assert due == "now"
        elif held.best >= edge(own, "caution_c"):
            assert due == "today"
        else:
            assert due == ""
        assert not (due and "watch the cool end" in reply.answer)


def law_night(given: Given, reply: Reply) -> None:
    law_room(given, reply)
    own = limits(given)
    if not near_an_edge(given, ("room",)):
        cold = celsius(given["room"]) < edge(own, "night_c")
        assert urgency(reply, "night_too_cold") == ("today" if cold else "")
    off = value(reply, "thermostat_off")
    if off is not None:
        assert edge(own, "night_c") <= off.best < edge(own, "caution_c")


def law_surface(given: Given, reply: Reply) -> None:
    real = value(reply, "surface")
    if real is not None:
        over = max(real.best, celsius(given["reading"])) - edge(any_limits(), "surface_c")
        if abs(over) > 1e-6 and abs(over - 5.0) > 1e-6:
            due = "now" if over >= 5.0 else "today" if over > 0.0 else ""
            assert urgency(reply, "box_too_hot") == due


def law_check(given: Given, reply: Reply) -> None:
    if near_an_edge(given, ("basking", "cool", "warm", "night")):
        return
    assert urgency(reply, "box_too_hot") == met_hot(given, ("basking", "warm"), ("cool",))
    cold = "night" in given and celsius(given["night"]) < edge(limits(given), "night_c")
    assert urgency(reply, "night_too_cold") == ("today" if cold else "")
    near = metres(given["distance"]) if "distance" in given else 1.0
    if near < 0.15 - 1e-6:
        assert urgency(reply, "uv_too_strong") == "now"
    elif near < 0.20 - 1e-6:
        assert urgency(reply, "uv_too_strong") in ("today", "now")
