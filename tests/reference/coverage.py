"""How often a range that is said to hold nine in ten holds the truth, in a world of lamps.

``python -m tests.reference.coverage`` prints the table for the right world and the wrong ones.
Everything that is asked of the engine is what a keeper could tell; the truth stays in the world.
"""

from collections.abc import Callable, Iterator

import numpy as np

from calc.uncertainty import Estimate
from calc.uv.class_prior import lamp_with_class
from calc.uv.decline import DatedReading, Trend, decline_of
from calc.uv.ground import Platform, ground_of
from calc.uv.lamp import Fixture, Lamp, of_length
from calc.uv.lamp_unknowns import uvi_estimate
from calc.uv.lengths import length_of_tube
from calc.uv.meter import LOWEST_UVI_READ, Reading, fit_readings
from calc.uv.patches import CELLS, LEAST_SHADE, SHADE_UVI, Patches, patches
from calc.uv.placement import place
from calc.uv.screen import FlatScreen, NoScreen, Screen
from calc.uv.section import Box, HungTube
from tests.reference.lamp_world import (
    DAY_S,
    RIGHT,
    WRONG,
    Truth,
    World,
    draw,
    hung,
    read,
    read_at_age,
)

WANTED = (3.0, 5.0)
_SEED = 20261128
_ROUNDED = 1e-9
# Cells along each side of a platform, for shares: the truth is summed over its elements in each.
_FEW = 10
Miss = tuple[bool, bool]
"""Whether the truth lies below the range, and whether above."""
Ask = Callable[[World, np.random.Generator], Iterator[Miss]]


def lamp_of(truth: Truth, rng: np.random.Generator) -> Lamp:
    """Return the lamp as its keeper tells it: age and length half the time, or a box."""
    fixture = Fixture.POLISHED if truth.polished else Fixture.PLAIN
    age_s = truth.age_s if rng.random() < 0.5 else None
    face_m = truth.lit_m + 0.03
    told = (
        length_of_tube(truth.lit_m),
        length_of_tube(),
        length_of_tube(box_m=face_m + float(rng.choice((0.05, 0.3, 0.6)))),
    )[int(rng.integers(3))]
    return of_length(Lamp(truth.strength, fixture, age_s=age_s), told)


def screen_of(truth: Truth) -> Screen:
    return NoScreen() if truth.passes_told == 1.0 else FlatScreen(truth.passes_told)


def distance(world: World, rng: np.random.Generator) -> Iterator[Miss]:
    """The UVI that is told for the start."""
    truth = draw(world, rng)
    found = place(lamp_of(truth, rng), screen_of(truth), *WANTED)
    if found.ends:
        _, start, _ = found.ends
        uvi = truth.uvi(hung(world, rng, start.distance_m))
        yield uvi < start.uvi.low, uvi > start.uvi.high


def meter(world: World, rng: np.random.Generator) -> Iterator[Miss]:
    """The UVI at another place, by one to four readings with or without the screen."""
    truth = draw(world, rng)
    screen, screened = screen_of(truth), bool(rng.random() < 0.5)
    named = of_length(Lamp(truth.strength, Fixture.POLISHED), length_of_tube(truth.lit_m))
    readings = [
        Reading(
            float(d),
            read(world, rng, truth, float(d), screened=screened),
            screen if screened else NoScreen(),
        )
        for d in rng.uniform(0.2, 0.5, int(rng.integers(1, 5)))
    ]
    there_m = float(rng.uniform(0.2, 0.5))
    found = uvi_estimate(fit_readings(readings, named).lamp(named), there_m, screen)
    uvi = truth.uvi(hung(world, rng, there_m))
    yield uvi < found.low, uvi > found.high


def meter_of_class(world: World, rng: np.random.Generator) -> Iterator[Miss]:
    """The same where class, fixture and half the time the age were told; some read far away."""
    truth = draw(world, rng)
    fixture = Fixture.POLISHED if truth.polished else Fixture.PLAIN
    age_s = truth.age_s if rng.random() < 0.5 else None
    named = of_length(Lamp(truth.strength, fixture, age_s=age_s), length_of_tube(truth.lit_m))
    ends = (0.8, 1.4) if rng.random() < 0.3 else (0.2, 0.5)
    shown = [
        (float(d), read(world, rng, truth, float(d), screened=False))
        for d in rng.uniform(*ends, int(rng.integers(1, 5)))
    ]
    readings = [Reading(d, uvi) for d, uvi in shown if uvi >= LOWEST_UVI_READ]
    there_m = float(rng.uniform(0.2, 0.5))
    uvi = truth.uvi(hung(world, rng, there_m), screened=False)
    if readings:
        lamp = lamp_with_class(fit_readings(readings, named).lamp(named), named)
        found = uvi_estimate(lamp, there_m, NoScreen())
        yield uvi < found.low, uvi > found.high


def decline(world: World, rng: np.random.Generator) -> Iterator[Miss]:
    """The UVI on the last day read of a fading tube, and the day on which it leaves the range."""
    truth = draw(world, rng)
    first, span = float(rng.uniform(10.0, 120.0)), float(rng.uniform(60.0, 300.0))
    between = rng.uniform(0.0, span, int(rng.integers(1, 7)))
    days = np.sort(np.concatenate(([0.0, span], between)))
    low = truth.uvi(0.3, age_s=first * DAY_S) * float(rng.uniform(0.6, 0.95))
    if not 0.1 <= low <= 20.0:
        return
    dated = [
        DatedReading(float(d), read_at_age(world, rng, truth, 0.3, (first + float(d)) * DAY_S))
        for d in days
    ]
    found = decline_of(dated, low)
    now = truth.uvi(0.3, age_s=(first + span) * DAY_S)
    yield now < found.now.low, now > found.now.high
    if found.trend is Trend.FALLING and not found.below_already:
        later = np.arange(span, found.horizon_day + 1.0)
        below = [d for d in later if truth.uvi(0.3, age_s=(first + float(d)) * DAY_S) < low]
        leaves = below[0] if below else np.inf
        earliest = np.inf if found.earliest_day is None else found.earliest_day
        latest = np.inf if found.latest_day is None else found.latest_day
        yield bool(leaves < earliest), bool(leaves > latest)


def _boxed(
    world: World, rng: np.random.Generator, cells: int = CELLS
) -> tuple[Truth, HungTube, Box, Platform, Patches]:
    """Return a keeper's tube over a platform in a box, and what is told of it."""
    truth = draw(world, rng)
    length = float(rng.uniform(max(0.6, truth.lit_m + 0.05), 1.8))
    depth, height = float(rng.uniform(0.45, 0.75)), float(rng.uniform(0.45, 0.9))
    along, across = min(truth.lit_m / 2.0 + 0.05, length / 2.0), float(rng.uniform(0.1, depth / 2))
    platform = Platform(0.1, 0.45, 0.1, 0.4, float(rng.uniform(0.1, max(0.1, height - 0.35))))
    fixture = Fixture.POLISHED if truth.polished else Fixture.PLAIN
    age_s = truth.age_s if rng.random() < 0.5 else None
    lamp = Lamp(truth.strength, fixture, truth.lit_m, age_s)
    tube = HungTube(lamp, along, across, height - 0.03, screen_of(truth))
    box = Box(length, depth, height)
    return truth, tube, box, platform, patches([tube], box, platform, 0.05, *WANTED, cells=cells)


def section(world: World, rng: np.random.Generator) -> Iterator[Miss]:
    """The UVI at the strongest and at the weakest place of a box."""
    truth, tube, _, _, found = _boxed(world, rng)
    for spot in (found.strongest, found.weakest):
        below = hung(world, rng, tube.z_m - spot.z_m)
        uvi = float(truth.uvi_beside(below, spot.x_m - tube.x_m, spot.y_m - tube.y_m))
        yield uvi < spot.uvi.low, uvi > spot.uvi.high


def _shares(world: World, rng: np.random.Generator) -> Iterator[tuple[float, Estimate]]:
    """The true share of the platform in range and of floor and platform in shade, and the told."""
    truth, tube, box, platform, found = _boxed(world, rng, _FEW)
    ground = ground_of(box, platform, 0.05, None, _FEW)
    hangs_m = hung(world, rng, tube.z_m)
    uvi = truth.uvi_beside(hangs_m - ground.z_m, ground.x_m - tube.x_m, ground.y_m - tube.y_m)
    there = uvi[ground.platform]
    yield float(np.mean((there >= WANTED[0]) & (there <= WANTED[1]))), found.in_range
    yield float(np.mean(uvi[ground.everywhere] < SHADE_UVI)), found.shade_share


def _of_share(which: int, *, partly: bool) -> Ask:
    """Return the question whether a share is held; ``partly``: where it is neither 0 nor 1."""

    def ask(world: World, rng: np.random.Generator) -> Iterator[Miss]:
        true, told = tuple(_shares(world, rng))[which]
        if 0.0 < true < 1.0 or not partly:
            yield true < told.low - _ROUNDED, true > told.high + _ROUNDED

    return ask


ANY_SHARE = {"in range": _of_share(0, partly=False), "in shade": _of_share(1, partly=False)}
"""Shares of any keeper: most are nothing, and then a range of one figure holds every time."""


def shade(world: World, rng: np.random.Generator) -> tuple[float, bool]:
    """The chance that is told of shade to go to, and whether there is any."""
    truth = draw(world, rng)
    length = float(rng.uniform(max(0.6, truth.lit_m + 0.05), 1.8))
    box = Box(length, float(rng.uniform(0.45, 0.75)), float(rng.uniform(0.45, 0.9)))
    along, across = min(truth.lit_m / 2.0 + 0.05, length / 2.0), box.depth_m / 4.0
    platform = Platform(0.1, 0.45, 0.1, 0.4, 0.1)
    fixture = Fixture.POLISHED if truth.polished else Fixture.PLAIN
    lamp = Lamp(truth.strength, fixture, truth.lit_m, truth.age_s)
    tube = HungTube(lamp, along, across, box.height_m - 0.03, screen_of(truth))
    told = patches([tube], box, platform, 0.05, *WANTED).shade_chance
    ground = ground_of(box, platform, 0.05, None, 8)
    here = ground.everywhere
    places = zip(ground.x_m[here], ground.y_m[here], ground.z_m[here], strict=True)
    uvi = [truth.uvi_beside(np.array(tube.z_m - z), x - along, y - across) for x, y, z in places]
    return told, float(np.mean(np.array(uvi) < SHADE_UVI)) >= LEAST_SHADE


ASKED: dict[str, tuple[Ask, int]] = {
    "distance": (distance, 1000),
    "meter": (meter, 2000),
    "meter of a class": (meter_of_class, 1500),
    "decline": (decline, 1400),
    "section": (section, 400),
    "part in range": (_of_share(0, partly=True), 1600),
    "part in shade": (_of_share(1, partly=True), 1600),
}
"""What is asked, and how many keepers ask it."""


def misses(name: str, world: World, share: float = 1.0) -> tuple[float, float]:
    """Return how often the truth lies below and above the range that was told [1]."""
    ask, keepers = ASKED[name]
    return missed(ask, world, int(keepers * share))


def missed(ask: Ask, world: World, keepers: int) -> tuple[float, float]:
    """Return how often the truth lies below and above what so many keepers are told [1]."""
    rng = np.random.default_rng(_SEED)
    found = [miss for _ in range(keepers) for miss in ask(world, rng)]
    below, above = np.mean(np.array(found, dtype=float), axis=0)
    return float(below), float(above)


def table() -> Iterator[str]:
    """Yield the table of what nine in ten is, world by world."""
    yield "| world | " + " | ".join(ASKED) + " |"
    yield "| --- | " + " | ".join("---" for _ in ASKED) + " |"
    for world in (RIGHT, *WRONG):
        held = (1.0 - sum(misses(name, world, share=0.5)) for name in ASKED)
        yield f"| {world.name} | " + " | ".join(f"{100.0 * one:.0f} %" for one in held) + " |"


if __name__ == "__main__":
    print("\n".join(table()))
