"""Every species is answered in every question, in both units and languages, within its limits."""

import pytest

from bot.brief import MOST_LINES, PHONE, brief_of, phone_lines
from bot.commands import COMMANDS
from bot.language.units import Units
from bot.layered import Layered
from bot.preferences import LANGUAGES, Preferences
from bot.questions.animals import animal_asked
from bot.refusal import RefusedError
from bot.reply import Reply
from bot.saying.said import said
from bot.saying.voice import voice
from bot.understood import Understood, understand
from calc.animal import Animal
from calc.animals import animals
from calc.limits import Limit, limits_of
from calc.validity import OutsideModelError

TUBE = "tube:6% reflector:polished screen:none length:34in"
LINES = (
    "needs animal:{}",
    f"distance {TUBE} animal:{{}}",
    f"uvi distance:30in {TUBE} animal:{{}}",
    "tube distance:20in screen:none animal:{}",
    "meter readings:1.2 at 20 in animal:{}",
    f"section {TUBE} distance:24in enclosure:48x24x24in animal:{{}}",
    "plan animal:{} enclosure:48x24x24in lid:full mesh room:64F night:60F",
    "plan animal:{} enclosure:12x12x12in lid:full mesh room:64F",
    "plan animal:{} enclosure:48x24x24in lid:full mesh room:95F",
    "temps basking:85F cool:70F night:62F water:70F animal:{}",
    "night room:64F animal:{}",
    "air room:66F enclosure:36x18x18in lid:part mesh animal:{}",
    "hours animal:{}",
    "check animal:{}",
    "check 6% tube in a polished hood, no mesh, 24in away, cool 70F, night 62F animal:{}",
    "next 6% tube in a polished hood, no mesh, 24in away, cool 70F, night 62F animal:{}",
    "arrange animal:{} enclosure:48x24x24in lid:full mesh room:64F night:60F",
    "bright lamp:led bar lumens:4000 distance:16in length:33in animal:{}",
    "outdoors animal:{} latitude:27S month:December hour:9:00",
    "outdoors latitude:40N month:June hour:9:00 shade:70F animal:{}",
    "section lamp:compact readings:1.4 at 1ft, 0.8 at 2ft distance:2ft enclosure:4x2x3ft animal:{}",
    "air room:66F enclosure:24x24x48in material:mesh animal:{}",
    "night room:50F enclosure:24x24x48in material:mesh animal:{}",
    "plan animal:{} enclosure:48x24x48in material:mesh room:66F night:56F",
    "watts room:64F distance:12in animal:{}",
    "card animal:{} length:22in",
    "decline age:8 months animal:{}",
    "compare distance:30in with_screen:blocks 45% tube:6% reflector:polished screen:none animal:{}",
)
WAYS = [(language, units) for language in LANGUAGES for units in Units]
LONGEST_LINES = MOST_LINES + 2


def layered_of(line: str) -> Layered | None:
    """Return the answer to a line, a refusal of its question included; None where it asks more."""
    understood = understand(line, Preferences())
    if isinstance(understood, Reply):
        return None
    assert isinstance(understood, Understood)
    command = understood.command
    assert command.facts is not None
    assert command.tell is not None
    try:
        return command.tell(command.facts(understood.query, understood.context))
    except RefusedError as error:
        return error.told(error.example)
    except OutsideModelError:
        return None


def under(reached: float, limit: Limit | None) -> bool:
    return limit is None or reached <= limit.value + 1e-9


def assert_within(reply: Reply, animal: Animal) -> None:
    """Hold what is advised, not what was read, against the limits of the animal."""
    limits = limits_of(animal)
    highs = {value.name: value.high for value in reply.values}
    for name in ("basking_surface_wanted", "warm_air_wanted"):
        assert under(highs.get(name, 0.0), limits.surface_c), name
    assert under(highs.get("cool_air_wanted", 0.0), limits.caution_c)
    if reply.command == "needs":
        assert under(highs.get("basking_surface", 0.0), limits.surface_c)
        assert under(highs.get("cool_air", 0.0), limits.caution_c)
        assert under(highs.get("water", 0.0), limits.water_caution_c)
        assert under(highs.get("uvi", 0.0), limits.uvi_high)
    if reply.command == "plan" and reply.status == "ok" and "uvi" in highs:
        best = next(value.best for value in reply.values if value.name == "uvi")
        assert under(best, limits.uvi_high)
        held = next((v.best for v in reply.values if v.name == "air_held"), 0.0)
        assert under(held, limits.caution_c)


@pytest.mark.parametrize("animal", animals().values(), ids=lambda animal: animal.slug)
def test_every_question_is_answered_within_the_limits(animal: Animal) -> None:
    told = 0
    for line in LINES:
        layered = layered_of(line.format(animal.name))
        if layered is None:
            continue
        told += 1
        replies = [said(layered, voice(language, units)) for language, units in WAYS]
        assert len({reply.status for reply in replies}) == 1
        for reply in replies:
            brief = brief_of(reply)
            assert brief, line
            assert phone_lines(brief) <= LONGEST_LINES, (line, PHONE)
        assert_within(replies[0], animal)
    assert told >= len(LINES) - 3


def test_the_lines_ask_every_question_that_has_an_animal_and_no_store() -> None:
    asked = {line.split()[0] for line in LINES}
    # These are about a lamp, a surface or a wattage that the animal only has a wish for.
    of_lamps = {"basking", "dose"}
    have = {
        command.name
        for command in COMMANDS
        if command.facts and any(option.name == "animal" for option in command.query.options())
    }
    assert have - of_lamps <= asked


def test_an_animal_is_the_one_that_was_named() -> None:
    from bot.preferences import Context

    for animal in animals().values():
        assert animal_asked(animal.name, Context(Units.IN)).slug == animal.slug
