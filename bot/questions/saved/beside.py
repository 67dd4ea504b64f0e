"""Readings of two days, or of two enclosures, beside each other: what matters first.

Words: ``words/<language>/mine-compare.ftl``, ``home.ftl``.
"""

from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass
from enum import Enum, auto

from bot.dangers.past_limits import alarms_past
from bot.facts import Diff, Say, Share, Uvi, kelvins, share, uvi
from bot.questions.saved.reading import ReadOnce, read_once, read_said, what_said
from bot.questions.uv.judged import judged_uvi_read
from bot.reply import Alarm
from bot.saved.keeper import KEPT_AS, Reading
from calc.animal import Animal
from calc.heat.readings import finding_for
from calc.judgement import Verdict, as_read
from calc.limits import Met, limits_of
from calc.quantities import Quantity
from calc.setup.measured import wanted_at

__all__ = ["MET", "WEIGHT", "Beside", "Stood", "Way", "beside_each_other", "stood"]

WEIGHT = {
    Verdict.FAR_TOO_LOW: 3.0,
    Verdict.LOW: 2.0,
    Verdict.PROBABLY_LOW: 1.0,
    Verdict.FINE: 0.0,
    Verdict.CANNOT_TELL: 0.5,
    Verdict.PROBABLY_HIGH: 1.0,
    Verdict.HIGH: 2.0,
    Verdict.DANGEROUS: 4.0,
}
"""How much a verdict matters."""

MET: dict[Quantity, Callable[[float], Met]] = {
    Quantity.BASKING_SURFACE: lambda read_c: Met(surface_c=read_c),
    Quantity.WARM_AIR: lambda read_c: Met(warm_air_c=read_c),
    Quantity.COOL_AIR: lambda read_c: Met(coolest_air_c=read_c),
    Quantity.NIGHT_AIR: lambda read_c: Met(night_c=read_c),
}
"""A temperature [degC] of each place, as it is held against the limits."""

# A change of this much [K], or of this part of a UV index, is a large one. Chosen, no source.
_LARGE_K, _LARGE_PART = 10.0, 1.0


class Way(Enum):
    """Which way something changed."""

    MORE = auto()
    LESS = auto()


@dataclass(frozen=True, slots=True)
class Stood:
    """A reading and how it stands; None where no target is known."""

    read: ReadOnce
    value: float
    verdict: Verdict | None
    wanted: tuple[float, float] | None
    alarms: tuple[Alarm, ...] = ()

    @property
    def told(self) -> Say:
        """Return its value, and where it was taken."""
        return read_said(self.read)

    @property
    def judged(self) -> Say | None:
        """Return how it stands, in a word or two."""
        return None if self.verdict is None else Say.by("verdict", self.verdict)


@dataclass(frozen=True, slots=True)
class Beside:
    """One kind of reading twice: a difference, or of a UV index its part of the first."""

    of: Quantity
    earlier: Stood
    later: Stood
    way: Way
    part: Share | None
    index: Uvi | None
    degrees: Diff | None

    @property
    def what(self) -> Say:
        """Return what was read."""
        return what_said(self.later.read)

    @property
    def said(self) -> Say:
        """Return by how much it changed."""
        if self.degrees is not None:
            return Say("mine-compare-degrees", self)
        return Say("mine-compare-part" if self.part is not None else "mine-compare-index", self)

    @property
    def turned(self) -> bool:
        """Say whether it is judged otherwise."""
        verdicts = self.earlier.verdict, self.later.verdict
        return None not in verdicts and verdicts[0] != verdicts[1]

    @property
    def matters(self) -> tuple[float, float, float]:
        """Return how much it matters: first what is judged otherwise, then what is off."""
        one, other = (
            0.0 if each.verdict is None else WEIGHT[each.verdict]
            for each in (self.earlier, self.later)
        )
        change = abs(self.later.value - self.earlier.value)
        of_uvi = self.of is Quantity.UVI
        large = _LARGE_PART * max(self.earlier.value, 0.1) if of_uvi else _LARGE_K
        return abs(one - other) if self.turned else 0.0, max(one, other), change / large


def stood(reading: Reading, animal: Animal | None) -> Stood:
    """Return a reading with how it stands for an animal."""
    told = read_once(reading)
    if animal is None:
        return Stood(told, reading.value, None, None)
    if reading.of is not Quantity.UVI:
        finding = finding_for(reading.of, reading.value, animal)
        verdict = None if finding.judged is None else finding.judged.verdict
        unsure = Verdict.CANNOT_TELL if finding.keepers_differ else verdict
        night = reading.of is Quantity.NIGHT_AIR
        ends = None if night else wanted_at(reading.of, animal)
        alarms = alarms_past(limits_of(animal), MET[reading.of](reading.value))
        return Stood(told, reading.value, unsure, ends, alarms)
    wanted = animal.uvi
    if wanted is None:
        return Stood(told, reading.value, None, None)
    ends, limits = (wanted.low, wanted.high), limits_of(animal)
    judged = judged_uvi_read((reading.value,), *ends, limits, unchecked=wanted.is_unchecked)
    met = Met(uvi=as_read(Quantity.UVI, reading.value))
    return Stood(told, reading.value, judged.verdict, ends, alarms_past(limits, met))


def beside_each_other(
    one: Mapping[Quantity, Stood], other: Mapping[Quantity, Stood]
) -> tuple[Beside, ...]:
    """Return what was read both times, that which matters most first."""
    both: Iterable[Beside] = (
        _beside(of, one[of], other[of]) for of in KEPT_AS if of in one and of in other
    )
    return tuple(sorted(both, key=lambda each: each.matters, reverse=True))


def _beside(of: Quantity, one: Stood, other: Stood) -> Beside:
    change = other.value - one.value
    of_uvi = of is Quantity.UVI
    grown = of_uvi and one.value <= 0.0
    return Beside(
        of=of,
        earlier=one,
        later=other,
        way=Way.MORE if change >= 0 else Way.LESS,
        part=share(abs(change) / one.value) if of_uvi and not grown else None,
        index=uvi(abs(change)) if grown else None,
        degrees=None if of_uvi else kelvins(abs(change)),
    )
