"""Which tube suits where no distance was told, and where it hangs.

Words: ``tube.ftl``.
"""

from collections.abc import Callable, Iterator
from dataclasses import dataclass

from bot.facts import Bound, Length, Say, Says, Share, metres, share
from bot.language import screens as typed
from bot.layered import Brief, Layered, Row
from bot.preferences import Context
from bot.queries.uv import TubeQuery
from bot.questions.uv.lamp_asked import classes_of, screen_asked, wanted_asked
from bot.questions.uv.length_asked import length_asked
from bot.questions.uv.shared import (
    UV_CARE,
    Between,
    Net,
    Wish,
    WishedFor,
    between_told,
    wish_assumed,
    wish_rows,
    wish_told,
)
from bot.questions.uv.tube_box import BoxFit, ForBox, box_rows, check_fits, for_box, length_to_buy
from bot.questions.uv.tubes import Tube, all_together, tube_told
from calc.uv.choice import TubeChoice
from calc.uv.lamp import Fixture, Lamp, of_group, of_length
from calc.uv.lengths import LengthKnown, TubeLength
from calc.uv.placement import place
from calc.uv.screen import FlatScreen, NoScreen, Screen
from calc.uv.tube import STANDARD_T5_HO

__all__ = ["TubePlaces", "tell_places", "tube_places"]

_SOURCES = ("keitz1971", "uv_distance_rows", "uv_class_strengths", "nearest_distance")
_OF_BOX = ("half_to_two_thirds", "t5_lengths")
# The two whose distances are known best, the weaker one first.
_STRENGTHS_PERCENT = (6.0, 12.0)
# A tube that hangs no closer than this with nothing between fits into few boxes.
_FAR_M = 0.55
_LONGEST = STANDARD_T5_HO[-1]
_AS_TOLD = typed.NoScreen("none")
# Common practice for a lid of mesh, no source.
_LID = FlatScreen(0.55)


@dataclass(frozen=True, slots=True)
class Place:
    """Where the tube hangs with one fixture and one screen."""

    fixture: Fixture
    between: Between
    away: Length

    @property
    def net(self) -> Net:
        """Return what is between."""
        return self.between.net


@dataclass(frozen=True, slots=True)
class TubePlaces(WishedFor):
    """Where the strength that suits hangs; what gives no place is left out."""

    wish: Wish
    strength: Share
    places: tuple[Place, ...]
    tube: Tube
    box: ForBox | None
    sources: tuple[str, ...]

    @property
    def many(self) -> int:
        """Return how many set-ups have a place."""
        return len(self.places)


def tube_places(query: TubeQuery, context: Context) -> TubePlaces:
    """Work out which strength hangs within reach, and where.

    The fixture with a mirror and nothing between is the strongest there is, the plain one over
    mesh the weakest; where a screen was told, both fixtures over it.
    """
    assert not isinstance(query.screen, typed.Pane)
    check_fits(query.length, query.enclosure)
    choice = length_to_buy(query.enclosure)
    long = _length(query, choice)
    wanted = wanted_asked(query.animal, query.uvi, context)
    groups = classes_of(context.own)

    def hung(percent: float, fixture: Fixture) -> Lamp:
        lamp = all_together(of_length(Lamp(percent, fixture), long), query)
        return of_group(lamp, groups.get((percent, fixture)))

    def away(percent: float, fixture: Fixture, screen: Screen) -> Length | None:
        lamp = hung(percent, fixture)
        ends = place(lamp, screen, wanted.low, wanted.high).ends
        if ends is None:
            return None
        near, start, far = (end.distance_m for end in ends)
        return metres(start, (near, far), Bound.INWARD)

    told = None if query.screen is None else screen_asked(query.screen)
    between = (told, told) if told else (NoScreen(), _LID)
    strength = _strength(lambda percent: away(percent, Fixture.POLISHED, between[0]))
    pairs = tuple(zip((Fixture.POLISHED, Fixture.PLAIN), between, strict=True))
    found = ((fixture, screen, away(strength, fixture, screen)) for fixture, screen in pairs)
    wish = wish_told(wanted, context)
    return TubePlaces(
        wish=wish,
        strength=share(strength / 100.0),
        places=tuple(
            Place(fixture, between_told(_AS_TOLD, screen), length)
            for fixture, screen, length in found
            if length
        ),
        tube=tube_told(hung(strength, Fixture.POLISHED), None),
        box=for_box(query.enclosure, choice, 0.0),
        sources=(*wish.sources, *_SOURCES, *(_OF_BOX if query.enclosure else ())),
    )


def _length(query: TubeQuery, choice: TubeChoice | None) -> TubeLength:
    """Return the length that was told, that to buy, or the longest: no other gives more."""
    if query.length is not None:
        return length_asked(query.length, query.enclosure)
    tube = choice.tube if choice and choice.tube else _LONGEST
    return TubeLength(tube.lit_length_m, LengthKnown.FROM_BOX)


def _strength(away: Callable[[float], Length | None]) -> float:
    """Return the strongest tube that hangs within reach, else the weakest."""
    near = (p for p in _STRENGTHS_PERCENT if (a := away(p)) and a.low <= _FAR_M)
    return max(near, default=_STRENGTHS_PERCENT[0])


def tell_places(facts: TubePlaces) -> Layered:
    """Tell where each strength hangs, then how to come to one of them."""
    say = Says("tube", facts)
    return Layered(
        command="tube",
        title=say("title"),
        brief=Brief(
            head=say("places-head"),
            range=tuple(_range(facts)),
            assumed=wish_assumed(facts.wish),
            steps=(say("places-do"),),
        ),
        steps=(say("step-measure"), say("places-step-again"), say("step-meter")),
        numbers=tuple(_numbers(facts, say)),
        why=(say("places-why"),),
        care=UV_CARE,
        lacking=("distance",),
        guide=("uv-and-heat-together", "measuring-the-distance", "reflectors", "screens"),
        sources=facts.sources,
    )


def _range(facts: TubePlaces) -> Iterator[Say]:
    for one in facts.places:
        yield Say("tube-places-each", one)
    if facts.box is not None and facts.box.fit is not BoxFit.ALL_LIT:
        yield Say.by("tube-length", facts.box.fit, facts.box)


def _numbers(facts: TubePlaces, say: Says) -> Iterator[Row]:
    yield from wish_rows(facts.wish)
    yield Row(Say("tubes-long-label"), Say("tubes-long", facts.tube))
    if facts.tube.count > 1:
        yield Row(Say("tubes-together-label"), say("several"))
    for one in facts.places:
        yield Row(say("label-place"), Say("tube-places-each", one))
    if facts.box is not None:
        yield from box_rows(facts.box, fixed=False)
