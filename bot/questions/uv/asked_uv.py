"""What was asked about a tube in its place: the set-up as facts, with the engine's values."""

from dataclasses import dataclass, field

from bot.facts import Length, Say, Uvi, uvi
from bot.language import screens as typed
from bot.language.lamps import Fixture
from bot.language.unsure import Unsure
from bot.layered import Row
from bot.queries.uv import DistanceQuery
from bot.questions.uv.readings import LampRead, readings_rows
from bot.questions.uv.shared import Between, Net, Wish, between_row, between_told, wish_rows
from bot.questions.uv.tubes import Tube, tube_assumed, tube_rows, tube_told
from calc.uv.as_read import Groups
from calc.uv.lamp import Lamp
from calc.uv.placement import Placement, Spot
from calc.uv.screen import Screen

__all__ = ["Asked", "At", "TubeAsked", "at_spot", "told_surely"]


@dataclass(frozen=True, slots=True)
class TubeAsked:
    """Fixture and screen as far as they were told; None where readings hold them."""

    reflector: Fixture | None
    screen: typed.Screen | None


def told_surely(query: DistanceQuery) -> TubeAsked | None:
    """Return what was told of fixture and screen, or None where the asker does not know it.

    Readings of the tube through its screen hold both, known or not.
    """
    reflector, screen = query.behind, query.screen
    assert not isinstance(screen, typed.Pane)
    unsure = isinstance(reflector, Unsure) or isinstance(screen, Unsure)
    if unsure and query.readings is None:
        return None
    return TubeAsked(
        None if isinstance(reflector, Unsure) else reflector,
        None if isinstance(screen, Unsure) else screen,
    )


@dataclass(frozen=True, slots=True)
class At:
    """The UVI at a place."""

    uvi: Uvi
    at: Length


def at_spot(spot: Spot, at: Length) -> At:
    """Return the UVI of a spot, at its distance as it is to be rounded."""
    return At(uvi(spot.uvi), at)


@dataclass(frozen=True, slots=True)
class Asked:
    """A tube, a screen and whose UVI is aimed at, and where the tube can go.

    ``screen_told`` is None where readings were taken through what is there.
    """

    wish: Wish
    tube: Tube
    read: LampRead
    screen: Screen
    screen_told: typed.Screen | None
    placement: Placement
    groups: Groups = field(default_factory=dict, hash=False)

    @classmethod
    def of(
        cls,
        query: DistanceQuery,
        told: TubeAsked,
        read: LampRead,
        screen: Screen,
        wish: Wish,
        placement: Placement,
        groups: Groups,
    ) -> "Asked":
        """Return what a question asked."""
        tube = tube_told(read.lamp, query.tube, query.lamp)
        return cls(wish, tube, read, screen, told.screen, placement, groups)

    @property
    def lamp(self) -> Lamp:
        """Return the lamp of the engine, by its readings where there are any."""
        return self.read.lamp

    @property
    def wanted(self) -> tuple[float, float]:
        """Return the UVI range to aim at."""
        return self.wish.wanted.low, self.wish.wanted.high

    def between(self, transmission: float | None = None) -> Between:
        """Return the screen as facts, with what it blocks where it passes so much."""
        return between_told(self.screen_told, self.screen, transmission)

    @property
    def assumed(self) -> tuple[Say, ...]:
        """Return what was assumed that changes the answer, in brief."""
        kept = (Say("between-assumed"),) if self.between().net is Net.AS_READ else ()
        return (*tube_assumed(self.tube), *kept)

    def rows(self, transmission: float) -> tuple[Row, ...]:
        """Return how the question was taken."""
        return (
            *wish_rows(self.wish),
            *tube_rows(self.tube),
            between_row(self.between(transmission)),
            *readings_rows(self.read),
        )

    @property
    def below_picture(self) -> tuple[Say, ...]:
        """Return what stands below the title of a picture."""
        between = self.between()
        named = Say("tubes-name", self.tube)
        return (named,) if between.net is Net.AS_READ else (named, Say("between-name", between))
