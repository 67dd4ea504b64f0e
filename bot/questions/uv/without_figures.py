"""What has no figures, whatever else was told: a pane between, a lamp that is no T5 HO tube.

Words: ``pane.ftl`` and ``otherlamp.ftl``.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Protocol

from bot.facts import Length, Number, Say, Says, Uvi, metres, plain_number, uvi
from bot.language.lamps import OtherLamp as OtherTube
from bot.language.readings import PlacedReading
from bot.language.screens import Pane, Screen
from bot.language.unsure import Unsure
from bot.language.uv_lamps import TUBES, WARM, UvLamp
from bot.layered import Brief, Layered, Row
from bot.preferences import Context
from bot.queries.options import OwnTube
from bot.questions.animals import ANY_ANIMAL, AnimalNotNamedError
from bot.questions.shared import limits_for
from bot.questions.uv.danger import uv_alarms
from bot.questions.uv.lamp_asked import wanted_asked
from bot.questions.uv.readings import enough_read
from bot.questions.uv.shared import EYES_CARE, SHADE_CARE, Wish, wish_rows, wish_told
from bot.reply import Alarm
from calc.judgement import Verdict, as_read
from calc.quantities import Quantity
from calc.uv.danger import judge_uvi
from calc.uv.placement import COMFORTABLE_MINIMUM_M, HIGHEST_UVI

__all__ = ["OtherLamp", "ThroughPane", "tell_without", "without_figures"]

_NO_UV = "no_uv_through_glass"
_PANE_GUIDE = ("screens", "measuring-the-distance", "how-to-take-a-reading")
_PANE_SOURCES = ("float_glass_uv", "common_practice")
_LAMP_GUIDE = ("how-to-take-a-reading", "reading-a-uv-meter", "measuring-the-distance")
_LAMP_SOURCES = ("common_practice", "uv_meter_judgement", "nearest_distance")
# Where nothing is known one begins farther away than any tube that is answered for hangs.
_START_M = 0.9144
# Where to read: 12, 15 and 18 in, as good as any.
_PLACES_M = (0.3048, 0.381, 0.4572)
# Two distances are one place [m] where they differ by less.
_SAME_PLACE_M = 0.005


class _AboutUv(Protocol):
    """What every question about a UV lamp tells."""

    @property
    def screen(self) -> Screen | Pane | Unsure | None: ...

    @property
    def animal(self) -> str: ...

    @property
    def uvi(self) -> tuple[float, float] | None: ...


@dataclass(frozen=True, slots=True)
class ThroughPane:
    """A tube over a pane, through which no useful UVB comes."""

    glass: bool
    alarms: tuple[Alarm, ...]


@dataclass(frozen=True, slots=True)
class ReadThere:
    """What the keeper read at one place, and how it stands to what is aimed at."""

    read: Uvi
    at: Length
    wanted: Uvi | None
    verdict: Verdict | None

    @property
    def judged(self) -> Say | None:
        """Return how it is judged, in a word or two."""
        return None if self.verdict is None else Say.by("verdict", self.verdict)


@dataclass(frozen=True, slots=True)
class OtherLamp:
    """A UV lamp without figures, and how its place is found with a meter."""

    kind: UvLamp
    wish: Wish | None
    start: Length
    nearest: Length
    places: tuple[Length, ...]
    asked_for: str
    read: tuple[ReadThere, ...]
    label: Number | None = None
    alarms: tuple[Alarm, ...] = ()

    @property
    def wanted(self) -> Uvi | None:
        """Return the UVI to aim at, where an animal or a range was told."""
        return self.wish.wanted if self.wish else None

    @property
    def first_place(self) -> Length:
        """Return the first place of the example to read at."""
        return self.places[0]

    @property
    def second_place(self) -> Length:
        """Return the second place."""
        return self.places[1]

    @property
    def third_place(self) -> Length:
        """Return the third place."""
        return self.places[2]

    @property
    def typed(self) -> str:
        """Return the kind as it is typed in an option."""
        return self.kind.value


def without_figures(
    query: _AboutUv,
    kind: UvLamp,
    context: Context,
    readings: tuple[PlacedReading, ...] | None = None,
    at_m: float | None = None,
    *,
    along_tube: bool = False,
) -> ThroughPane | OtherLamp | None:
    """Return why no figure holds; enough readings take the place of figures, as a kept lamp's do.

    ``along_tube``: only a lamp that is as long as a tube will do. What was read at ``at_m``,
    where the animal is, or beyond it, is held against the limits.
    """
    if isinstance(query.screen, Pane):
        alarm = Alarm(key=_NO_UV, words=query.screen.text)
        return ThroughPane(query.screen.material == "glass", (alarm,))
    if kind is UvLamp.T5_HO or enough_read(readings, kind):
        return None
    kept = getattr(query, "tube", None)
    if isinstance(kept, OwnTube) and not readings and (kind in TUBES or not along_tube):
        return None
    wish = _wish(query, context)
    return OtherLamp(
        kind=kind,
        wish=wish,
        start=metres(_START_M),
        nearest=metres(COMFORTABLE_MINIMUM_M),
        places=tuple(metres(place) for place in _PLACES_M),
        asked_for=(query.animal if wish else "") or ANY_ANIMAL,
        read=tuple(_read(one, wish, query.animal, context) for one in readings or ()),
        label=_label(query),
        alarms=tuple(
            alarm.model_copy(update={"one_lamp": kind in WARM})
            for alarm in _alarms(query, wish, context, readings or (), at_m)
        ),
    )


def _alarms(
    query: _AboutUv,
    wish: Wish | None,
    context: Context,
    readings: tuple[PlacedReading, ...],
    at_m: float | None,
) -> tuple[Alarm, ...]:
    if at_m is None:
        return ()
    there = [one.value for one in readings if one.distance.low >= at_m - _SAME_PLACE_M]
    if not there:
        return ()
    most = wish.wanted.high if wish else HIGHEST_UVI
    return uv_alarms(as_read(Quantity.UVI, max(there)), query.animal, most, context)


def _label(query: _AboutUv) -> Number | None:
    """Return the number printed on the lamp, which tells nothing of another kind."""
    tube = getattr(query, "tube", None)
    number = tube.number if isinstance(tube, OtherTube) else None
    return None if number is None else plain_number(number)


def _wish(query: _AboutUv, context: Context) -> Wish | None:
    """Return the range to aim at; without an animal there is none yet, and the rest holds."""
    try:
        return wish_told(wanted_asked(query.animal, query.uvi, context), context)
    except AnimalNotNamedError:
        return None


def _read(one: PlacedReading, wish: Wish | None, animal: str, context: Context) -> ReadThere:
    at = metres(one.distance.low)
    if wish is None:
        return ReadThere(uvi(one.value), at, None, None)
    ends = wish.wanted.low, wish.wanted.high
    limits = limits_for(animal, context)
    shown = as_read(Quantity.UVI, one.value)
    judged = judge_uvi(shown, *ends, limits, unchecked=wish.unchecked)
    return ReadThere(uvi(one.value), at, wish.wanted, judged.verdict)


def tell_without(command: str, facts: ThroughPane | OtherLamp) -> Layered:
    """Tell that no figure holds, and what works."""
    return _pane(command, facts) if isinstance(facts, ThroughPane) else _lamp(command, facts)


def _pane(command: str, facts: ThroughPane) -> Layered:
    pane = Says("pane", facts)
    return Layered(
        command=command,
        status="problem",
        title=pane("title"),
        brief=Brief(head=pane("head"), range=(pane("range"),), steps=(pane("do-move"),)),
        steps=(pane("step-move"), pane("step-ask"), pane("step-meter")),
        why=(pane("why"),),
        care=(EYES_CARE,),
        guide=_PANE_GUIDE,
        sources=_PANE_SOURCES,
        alarms=facts.alarms,
    )


def _lamp(command: str, facts: OtherLamp) -> Layered:
    lamp = Says("otherlamp", facts)
    wish = facts.wish
    return Layered(
        command=command,
        status="problem",
        title=lamp.by("title", facts.kind),
        brief=Brief(
            head=lamp("head"),
            range=(lamp.by("why-short", facts.kind),),
            steps=(lamp("do-start"), lamp("do-nearer")),
        ),
        steps=tuple(_lamp_steps(facts)),
        numbers=(*(wish_rows(wish) if wish else ()), *_read_rows(facts)),
        why=(lamp.by("why", facts.kind), lamp("why-t5")),
        care=(EYES_CARE, SHADE_CARE),
        guide=_LAMP_GUIDE,
        sources=(*(wish.sources if wish else ()), *_LAMP_SOURCES),
        alarms=facts.alarms,
    )


def _lamp_steps(facts: OtherLamp) -> Iterator[Say]:
    lamp = Says("otherlamp", facts)
    yield lamp("step-warm-up")
    yield lamp("step-hold")
    if facts.kind in WARM:
        yield lamp("step-heat")
    yield lamp("step-write")
    yield lamp("step-no-meter")


def _read_rows(facts: OtherLamp) -> Iterator[Row]:
    if facts.label is not None:
        yield Row(Say("otherlamp-label-printed"), Say("otherlamp-printed", facts))
    for one in facts.read:
        yield Row(Say("otherlamp-label-read"), Say("otherlamp-read", one))
