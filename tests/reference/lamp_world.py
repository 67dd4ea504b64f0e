"""A world of tubes, boxes, meters and tapes to ask ranges in: true figures that nobody is told.

It was written from published spreads before the engine's doubts were looked at anew, and imports
nothing of the engine: neither its geometry nor its constants nor its doubts. Where no figure was
published, the assumption says so. `RIGHT` is the world as far as it is known; the others are wrong
in one named way each, so that a test can tell how much a range bears.

What it rests on:

- a tube: a thin Lambertian line (Keitz 1971), summed here over its elements; that this errs by 3
  to 5 % against a goniophotometer is published (Prytkov, Kapitonov, Vinokurov, abstract)
- the class: six distance rows of the trade, their ends UVI 5 and 3; the rows name no length, so
  the tube they were read under is any standard one (an assumption)
- lamp to lamp: McGinley et al. 1998, sunbeds of one model differ two- to threefold, extremes of a
  survey; taken as six deviations, without the part of age
- fixture: a specular retrofit gives 10 to 25 % more, not one figure (IAEEL newsletter 2/1993)
- warmth: about 10 % between 25 and 35 °C (NLPIP 2002)
- ageing: the steepest fall in the first 50 to 100 hours, replaced at 30 % below the first output
  (a tanning trade magazine); stable from 70 to 386 hours (Adamse and Britz 1992), so the fall
  after that is slow; counted from 100 hours, the convention of photometry
- meter: of eleven owners' meters eight stood within 5 %, ten within 10 % of the reference (Oslo
  2005); spectral responses agree to 20 % (Hülsen et al. 2008); a hand meter is taken between
- screen: a shade cloth passes 0.14 ± 0.03, a net sold as 50 % passed 55 % (Wong 1994; Kotilainen
  et al. 2018)
- tape, sideways pattern of a reflector, how a hand holds a meter: no figure was found; assumed
"""

from dataclasses import dataclass
from math import exp, log

import numpy as np
from numpy.typing import ArrayLike, NDArray

INCH_M = 0.0254
STANDARD_FACE_M = (0.549, 0.849, 1.149, 1.449)
LIT_M = tuple(face - 0.03 for face in STANDARD_FACE_M)
HOUR_S = 3600.0
DAY_S = 86_400.0
HOURS_A_DAY = 12.0
_BURNT_IN_S = 100.0 * HOUR_S / HOURS_A_DAY * 24.0

# Strength [%], polished, share the screen passes, distances [in] for UVI 5 and 3.
ROWS = (
    (12.0, True, 1.00, 16.0, 20.0),
    (12.0, False, 1.00, 12.0, 16.0),
    (6.0, True, 1.00, 10.0, 12.0),
    (6.0, False, 1.00, 8.0, 10.0),
    (12.0, True, 0.55, 10.0, 14.0),
    (12.0, False, 0.55, 8.0, 10.0),
)


@dataclass(frozen=True)
class World:
    """How true tubes differ; deviations are of logarithms unless they name a unit."""

    name: str = "as published"
    rules_lit_m: tuple[float, ...] = LIT_M[:3]
    class_bias: float = 0.0
    class_deviation: float = 0.04
    lamp_deviation: float = log(2.5) / 6.0
    line_deviation: float = 0.04
    fixture_half: float = 0.5 * log(1.25 / 1.10)
    warmth_half: float = 0.5 * log(1.10)
    fading_times: float = 1.0
    oldest_years: float = 1.25
    screen_bias: float = 0.0
    screen_deviation: float = 0.08
    tape_m: float = 0.006
    meter_bias: float = 0.0
    meter_deviation: float = 0.08
    hand_deviation: float = 0.05
    sideways: tuple[float, float] = (-0.5, 1.5)


RIGHT = World()
WRONG = (
    World("rows read under 22 in tubes", rules_lit_m=LIT_M[:1]),
    World("rows read under 46 in tubes", rules_lit_m=LIT_M[2:3]),
    World("the class gives a quarter less than the rows say", class_bias=log(0.75)),
    World("the class gives a quarter more than the rows say", class_bias=log(1.25)),
    World("lamps of one class differ twice as much", lamp_deviation=log(2.5) / 3.0),
    World("tubes fade twice as fast", fading_times=2.0),
    World("tubes are used for three years", oldest_years=3.0),
    World("screens are dirty: a fifth less", screen_bias=log(0.8)),
    World("hand meters read a quarter too high", meter_bias=log(1.25)),
    World("tapes are off by an inch", tape_m=INCH_M),
)


def shape(distance_m: float, lit_m: float) -> float:
    """Keitz: irradiance under the middle per flux and length, up to a constant [1/m]."""
    half_angle = np.arctan2(lit_m / 2.0, distance_m)
    return float((2.0 * half_angle + np.sin(2.0 * half_angle)) / (2.0 * distance_m))


def class_constant(lit_m: float) -> tuple[float, float]:
    """Return the constant [UVI m] of 12 % polished, and plain over it, of rows of a length."""
    design, logs = [], []
    for strength, polished, passed, near_in, far_in in ROWS:
        for inches, uvi in ((near_in, 5.0), (far_in, 3.0)):
            design.append((1.0, 0.0 if polished else 1.0))
            known = strength / 12.0 * passed * shape(inches * INCH_M, lit_m)
            logs.append(log(uvi / known))
    solved = np.linalg.lstsq(np.array(design), np.array(logs), rcond=None)[0]
    return exp(solved[0]), exp(solved[1])


@dataclass(frozen=True)
class Truth:
    """One keeper's tube as it really is, and what the keeper could tell of it."""

    strength: float
    polished: bool
    lit_m: float
    age_s: float
    passes_told: float
    constant_uvi_m: float
    passes: float
    meter: float
    fall: tuple[float, float]
    spread_power: float

    def aged(self, age_s: float) -> float:
        """Output after an age over that after 100 hours."""
        return exp(
            _faded(age_s, self.fall) - _faded(100.0 * HOUR_S / HOURS_A_DAY * 24.0, self.fall)
        )

    def uvi(self, distance_m: float, *, age_s: float | None = None, screened: bool = True) -> float:
        """The true UVI under the middle."""
        passed = self.passes if screened else 1.0
        aged = self.aged(self.age_s if age_s is None else age_s)
        return self.constant_uvi_m * aged * passed * shape(distance_m, self.lit_m)

    def uvi_beside(
        self, below_m: ArrayLike, along_m: ArrayLike, across_m: ArrayLike
    ) -> NDArray[np.float64]:
        """The true UVI of a level back below, along and across, summed over the elements."""
        below, along, across = (np.asarray(v, dtype=float) for v in (below_m, along_m, across_m))
        edges = np.linspace(-self.lit_m / 2.0, self.lit_m / 2.0, 121)
        u = (edges[1:] + edges[:-1]) / 2.0 - along[..., None]
        away = np.hypot(below, across)
        per_m = (away * below)[..., None] / (away[..., None] ** 2 + u**2) ** 2
        level = per_m.sum(axis=-1) * (edges[1] - edges[0])
        slant = below / away
        made = self.constant_uvi_m * self.passes * self.aged(self.age_s)
        return np.asarray(made * level * slant**self.spread_power)


def _faded(age_s: float, fall: tuple[float, float]) -> float:
    hours = age_s / HOUR_S / 24.0 * HOURS_A_DAY
    first, per_hour = fall
    return -first * (1.0 - exp(-hours / 40.0)) - per_hour * hours


def draw(world: World, rng: np.random.Generator) -> Truth:
    """Draw one keeper with one tube."""
    polished = bool(rng.random() < 0.6)
    constant, plain = class_constant(float(rng.choice(world.rules_lit_m)))
    strength = float(rng.choice((6.0, 12.0)))
    passes_told = 1.0 if rng.random() < 0.6 else float(rng.uniform(0.45, 0.8))
    log_made = (
        log(constant * strength / 12.0 * (1.0 if polished else plain))
        + world.class_bias
        + rng.normal(0.0, world.class_deviation)
        + rng.normal(0.0, world.lamp_deviation)
        + rng.normal(0.0, world.line_deviation)
        + rng.uniform(-world.fixture_half, world.fixture_half)
        + rng.uniform(-world.warmth_half, world.warmth_half)
    )
    passes = passes_told
    if passes_told < 1.0:
        passes *= exp(world.screen_bias + rng.normal(0.0, world.screen_deviation))
    first = rng.uniform(0.05, 0.20)
    # Thirty per cent below the first output after half a year to a year of twelve-hour days.
    per_hour = world.fading_times * (log(1.0 / 0.7) - first) / rng.uniform(2190.0, 4380.0)
    return Truth(
        strength=strength,
        polished=polished,
        lit_m=float(rng.choice(LIT_M, p=(0.3, 0.35, 0.3, 0.05))),
        age_s=float(rng.uniform(0.0, world.oldest_years) * 365.25 * DAY_S),
        passes_told=passes_told,
        constant_uvi_m=exp(log_made),
        passes=passes,
        meter=exp(world.meter_bias + rng.normal(0.0, world.meter_deviation)),
        fall=(first, per_hour),
        spread_power=float(rng.uniform(*world.sideways)),
    )


def hung(world: World, rng: np.random.Generator, wanted_m: float) -> float:
    """Return where a tube really hangs [m] that a keeper hung by the tape."""
    return max(0.05, wanted_m + float(rng.normal(0.0, world.tape_m)))


def read(
    world: World, rng: np.random.Generator, truth: Truth, told_m: float, *, screened: bool = True
) -> float:
    """Return what the keeper's meter shows at a place taken for ``told_m``, to one decimal."""
    seen = truth.uvi(hung(world, rng, told_m), screened=screened)
    return max(0.1, round(seen * truth.meter * exp(rng.normal(0.0, world.hand_deviation)), 1))


def read_at_age(
    world: World, rng: np.random.Generator, truth: Truth, told_m: float, age_s: float
) -> float:
    """Return what the meter shows when the tube is of an age [s]."""
    seen = truth.uvi(hung(world, rng, told_m), age_s=age_s)
    return max(0.1, round(seen * truth.meter * exp(rng.normal(0.0, world.hand_deviation)), 1))
