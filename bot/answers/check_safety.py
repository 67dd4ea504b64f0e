"""What cannot wait in a set-up: fire, a sick animal, far too much UV, an unwatched heater."""

from collections.abc import Iterator

from bot.answers.check_parts import Mark, Part, Todo, Urgency
from bot.answers.figures import number
from bot.answers.fire import PULL_THE_PLUG
from bot.answers.heat_parts import Kept
from bot.answers.setup_told import Told
from bot.answers.uv_danger import SWITCH_OFF, is_far_too_strong
from bot.language.hearing import FactName
from bot.language.hearing.facts import LampKind
from bot.language.shown import shown
from bot.language.signs import Sign
from calc.limits import Due, Met, limits_of, passed
from calc.uncertainty import Estimate

__all__ = ["safety_parts"]

_NAME = "Safety"
_WATCHED = {
    LampKind.HEAT_MAT: "heat mat",
    LampKind.HEAT_ROCK: "heat rock",
    LampKind.CERAMIC: "ceramic heater",
    LampKind.RADIANT_PANEL: "radiant panel",
    LampKind.INFRARED_PROJECTOR: "infrared projector",
}


def safety_parts(
    signs: tuple[Sign, ...], fire: str, told: Told, uv: Part, kept: Kept
) -> Iterator[Part]:
    """Judge what cannot wait, from the signs, the words for fire, the facts and the UV."""
    if fire:
        yield _fire(fire)
    yield from _strong_uv(uv, kept)
    yield from _unwatched(told)
    if signs:
        yield _signs(signs)


def _fire(words: str) -> Part:
    why = f"“{shown(words)}”: this can become a fire or a bad shock (common practice, no source)"
    return Part(_NAME, Mark.CHANGE, why, (Todo(Urgency.FIRE, PULL_THE_PLUG),))


def _signs(signs: tuple[Sign, ...]) -> Part:
    words = ", ".join(f"“{shown(sign.words)}”" for sign in signs)
    text = f"Call a reptile vet {signs[0].soon}: you wrote {words}, and no lamp mends that."
    kinds = " and ".join(sign.told for sign in signs)
    why = f"{words}: {kinds} can mean illness or injury, which I cannot judge"
    return Part("The animal", Mark.CANNOT_TELL, why, (Todo(Urgency.VET, text),))


def _strong_uv(uv: Part, kept: Kept) -> Iterator[Part]:
    """Judge a UV that is far above the range, by a reading or by every fixture it may be."""
    wanted = kept.animal.uvi
    read = next((value.best for value in uv.values if value.name == "uvi"), 0.0)
    if wanted is None:
        yield from _strong_for_any(read, kept)
        return
    if not is_far_too_strong(read, wanted.high):
        return
    why = (
        f"the UV is about {number(read / wanted.high, 0.5)} times the most that {kept.whom} is "
        "given: it can hurt eyes and skin"
    )
    yield Part(_NAME, Mark.CHANGE, why, (Todo(Urgency.DANGER, SWITCH_OFF),))


def _strong_for_any(read: float, kept: Kept) -> Iterator[Part]:
    """Judge a UV that is too strong whatever the animal wants."""
    limits = limits_of(kept.animal)
    if not any(x.due is Due.NOW for x in passed(limits, Met(uvi=Estimate(read, read, read)))):
        return
    why = f"a UV index of about {number(read, 0.5)} hurts eyes and skin of nearly every animal"
    yield Part(_NAME, Mark.CHANGE, why, (Todo(Urgency.DANGER, SWITCH_OFF),))


def _unwatched(told: Told) -> Iterator[Part]:
    """Judge heaters that run by themselves and are said to have no thermostat."""
    without = any(fact.value is False for fact in told.all(FactName.THERMOSTAT))
    kinds = [name for kind, name in _WATCHED.items() if any(x.value is kind for x in told.lamps)]
    if not (without and kinds):
        return
    names = " and ".join(kinds)
    why = f"a {names} without a thermostat can overheat and burn (common practice, no source)"
    text = f"Unplug the {names} until it runs on a thermostat: then check it with a thermometer."
    yield Part(_NAME, Mark.CHANGE, why, (Todo(Urgency.DANGER, text),))
