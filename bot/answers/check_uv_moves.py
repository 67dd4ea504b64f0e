"""What is to be moved for the UV of a set-up that was told, in words and as a movement."""

from collections.abc import Iterator

from bot.answers.check_cases import Case
from bot.answers.check_parts import Todo, Urgency
from bot.answers.figures import length
from bot.answers.placed import start_told
from bot.answers.uv_asked import fixture_of, screen_asked
from bot.answers.uv_parts import fixture_name, screen_phrase
from bot.answers.verdicts import until_measured
from bot.language.quantities import Units
from calc.judgement import Judged
from calc.setup.set_up import Act, Movement, Thing
from calc.uv.placement import COMFORTABLE_MINIMUM_M

__all__ = ["more_room", "moves", "tube_moved"]


def more_room(distance_m: float, units: Units) -> Todo:
    """Return that the animal has to get farther from the tube."""
    return Todo(
        Urgency.DANGER,
        f"Give the animal more room: {length(distance_m, units)} from the tube is too near "
        f"to be safe, at least {length(COMFORTABLE_MINIMUM_M, units)} is wanted.",
        tube_moved(up=True, by_m=COMFORTABLE_MINIMUM_M - distance_m),
    )


def moves(cases: tuple[Case, ...], judged: Judged, units: Units) -> Iterator[Todo]:
    """Yield where the tube goes, where one is likely too strong or surely too weak there."""
    above = judged.is_likely_above
    urgency = Urgency.TOO_MUCH_UV if above else Urgency.TOO_LITTLE_UV
    way = "farther from" if above else "nearer to"
    fitting = [case.check.placement for case in cases if case.check.placement.ends]
    lengths = [case.check for case in cases if case.check.placement.mild_m is not None]
    if lengths and not fitting:
        most = max(lengths, key=lambda check: check.placement.mild_m or 0.0)
        yield Todo(urgency, until_measured(most, units), tube_moved(up=True))
    elif not fitting:
        case = cases[0]
        what = (
            f"{fixture_name(fixture_of(case.fixture))} {screen_phrase(screen_asked(case.screen))}"
        )
        yield Todo(
            urgency,
            f"No sensible distance gives the wanted UV with this tube in a {what}: the question "
            "distance, with the same words, says why and what to use instead.",
        )
    elif len(fitting) == 1 and len(cases) == 1:
        yield Todo(
            urgency,
            f"Bring the tube {way} the animal's back, to {start_told(fitting[0], units)}; moving "
            "the platform does the same.",
            tube_moved(up=above, by_m=cases[0].check.move_to_start_m),
        )
    else:
        yield Todo(
            urgency,
            f"Bring the tube {way} the animal's back; tell me the fixture and the screen, and I "
            "can say how far.",
            tube_moved(up=above),
        )


def tube_moved(*, up: bool, by_m: float | None = None) -> Movement:
    """Return the tube moved away from the back or towards it [m]; how far may not be known."""
    way = (0, 0, 1 if up else -1)
    by = None if by_m is None else (0.0, 0.0, by_m)
    return Movement(Act.MOVE, (Thing.TUBE,), by, way)
