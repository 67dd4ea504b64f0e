"""The shopping list of a plan, by class and never by maker."""

from bot.answers.figures import length, watts
from bot.answers.plan_asked import Asked
from bot.answers.uv_parts import fixture_name
from bot.language.quantities import Units
from bot.reply import Table
from calc.heat.enclosure import LampPlace
from calc.heat.night import NightDecision
from calc.setup.plan import Setup
from calc.setup.warmth import HeatKind, WarmthPlan

__all__ = ["shopping_list"]

_SHAPES = {"wide_dome": "bulb for a wide dome", "flood": "flood", "narrow": "narrow spot"}
_HAVE = "you have it"


def shopping_list(found: Setup, what: Asked, units: Units) -> Table:
    """Return what to buy and which, what is owned marked so."""
    owned, lamp, warmth = what.request.owned, found.light.lamp, found.warmth
    long = length(found.fit.length_m, units)
    power = f", {watts(found.fit.power_w)}" if found.fit.power_w else ""
    rows = []
    if owned.lamp is not None:
        rows.append(("UV tube", f"{_HAVE}: by its readings"))
    else:
        tube = f"T5 HO, {lamp.strength_percent:.0f} %, {long}{power}"
        have = owned.strength_percent is not None
        rows.append(("UV tube", f"{_HAVE}: {tube}" if have else tube))
        fixture = f"{fixture_name(lamp.fixture)} for that length"
        rows.append(("UV fixture", f"{_HAVE}: {fixture}" if owned.fixture else fixture))
    rows += _heat_rows(warmth, what)
    rows += [
        ("Timer", "one, for tube and lamp together"),
        (what.place_name.capitalize(), _platform(found, what, units)),
        ("Thermometers", "infrared gun; two digital probes, one keeping the lowest"),
        ("UV index meter", "to borrow, for one day"),
        ("Hides", "one at each end"),
        *_night_rows(warmth),
    ]
    return Table(columns=("To buy", "Which"), rows=tuple(rows))


def _heat_rows(warmth: WarmthPlan, what: Asked) -> list[tuple[str, str]]:
    if warmth.watts is None:
        if warmth.kind is HeatKind.ROOM_IS_NEARLY_ENOUGH or warmth.short_w is None:
            return []
        return [("Day heater", f"only if the warm end reads too cool: {_heater(warmth)}")]
    shape = _SHAPES[what.request.shape.value]
    if warmth.first is None:
        lamp, most = f"{_HAVE}: {shape}, {watts(warmth.watts.best)}", warmth.watts.best
    else:
        sizes = " and ".join(watts(w) for w in sorted(warmth.first.buy_w))
        lamp, most = f"{shape}, {sizes}", max(warmth.first.buy_w)
    inside = warmth.lamp_place is LampPlace.INSIDE
    guard = ", guard that it cannot get behind" if inside else ""
    rows = [
        ("Heat lamp", lamp),
        ("Lamp holder", f"ceramic, marked {watts(most)} or more, two supports{guard}"),
        ("Dimmer", "made for that kind of lamp and its watts"),
    ]
    if warmth.short_w is not None:
        surely = warmth.air is not None and warmth.air.verdict.wants_change
        when = "" if surely else "only if the cool end reads too cool: "
        rows.append(("Second heater", f"{when}{_heater(warmth)}"))
    return rows


def _heater(warmth: WarmthPlan) -> str:
    if warmth.extra_w is None:
        most = 0.0 if warmth.short_w is None else warmth.short_w.high
        return f"up to {watts(most)} without light in all; less mesh needs less"
    return f"{watts(warmth.extra_w)} without light, with thermostat"


def _platform(found: Setup, what: Asked, units: Units) -> str:
    platform = found.places.platform
    wide, deep = platform.x1_m - platform.x0_m, platform.y1_m - platform.y0_m
    made = "stone or wood" if what.place_name == "platform" else "firm enough to lie on"
    return f"{made}, {length(wide, units)} by {length(deep, units)}"


def _night_rows(warmth: WarmthPlan) -> list[tuple[str, str]]:
    night, emitter = warmth.night, warmth.emitter
    if night is None or emitter is None:
        return []
    size = watts(emitter.step_w) if emitter.step_w else "several, sharing the watts"
    maybe = "if you heat: " if night.decision is NightDecision.KEEPERS_DIFFER else ""
    return [("Night heater", f"{maybe}{size}, without light, with on/off thermostat")]
