"""What one answer advises, every other one calls fine: all of them ask the same judgement.

``NOONSTONE_PLACES`` sets how many advised places are asked back; few by default.
"""

import os
import re
from collections.abc import Iterator
from dataclasses import dataclass, replace
from datetime import date
from itertools import islice, product
from random import Random

from bot.ask import ask
from bot.language.quantities import Units
from bot.preferences import Context, Preferences
from bot.questions.animals import animal_asked
from bot.questions.saved.standing import standing_rows
from bot.reply import Reply
from bot.saved.keeper import Enclosure, Reading, Setup
from bot.saying.voice import voice
from calc.quantities import Quantity

_PLACES = int(os.environ.get("NOONSTONE_PLACES", "60"))
_STRENGTHS = ("2%", "6%", "12%", "14%")
_FIXTURES = ("polished", "plain")
_SCREENS = ("none", "blocks 30%", "blocks 45%", "blocks 60%", "18x18 wire 0.009in")
_LENGTHS = ("", "22in", "34in", "46in", "58in", "24W", "39W", "54W", "80W")
_ANIMALS = (
    "bearded dragon",
    "leopard gecko",
    "crested gecko",
    "corn snake",
    "veiled chameleon",
    "green iguana",
    "Hermann's tortoise",
    "Saharan uromastyx",
    "Australian blue-tongued skink",
    "royal python",
)
_ANYONE = Context(Units.IN)
_ADVISED = re.compile(
    r"(?:([\d.]+) to )?([\d.]+) in \((?:([\d.]+) to )?([\d.]+) cm\); "
    r"start at ([\d.]+) in \(([\d.]+) cm\)"
)
_FOUND = re.compile(r"([\d.]+) \([\d.]+ to [\d.]+\)")


@dataclass(frozen=True)
class _Setup:
    """A tube in a fixture under a screen, for an animal; its length may be untold."""

    tube: str
    reflector: str
    screen: str
    length: str
    animal: str

    @property
    def told(self) -> str:
        length = f" length:{self.length}" if self.length else ""
        return f"{self.between} tube:{self.tube} reflector:{self.reflector}{length}"

    @property
    def between(self) -> str:
        return f"screen:{self.screen} animal:{self.animal}"


def _asked(line: str) -> Reply:
    return ask(line, Preferences())


def _range(reply: Reply) -> str:
    """Return the range and the start as they are told; else the answer."""
    told = (row.text for row in reply.rows if row.label == "Tube to back")
    return next(told, reply.answer)


def _advised(answer: str) -> tuple[str, ...]:
    """Return the near end, the start and the far end in both units, as they were shown."""
    found = _ADVISED.search(answer)
    assert found is not None, answer
    near, far, near_cm, far_cm, start, start_cm = found.groups()
    assert float(near or far) <= float(start) <= float(far), answer
    assert float(near_cm or far_cm) <= float(start_cm) <= float(far_cm), answer
    inches, cm = {near or far, start, far}, {near_cm or far_cm, start_cm, far_cm}
    return (*sorted(f"{x}in" for x in inches), *sorted(f"{x}cm" for x in cm))


def _by_meter(setup: _Setup, place: str, expected: str) -> Iterator[str]:
    """Ask back with a meter that shows what was told to expect there."""
    uvi = _FOUND.search(expected)
    assert uvi is not None, expected
    length = f" length:{setup.length}" if setup.length else ""
    reply = _asked(f"meter readings:{uvi[1]} at {place}{length} {setup.between}")
    if f"UV index {uvi[1]}, fine." not in reply.answer:
        yield reply.answer


def _by_tube(setup: _Setup, place: str) -> Iterator[str]:
    length = f" length:{setup.length}" if setup.length else ""
    table = _asked(f"tube distance:{place} {setup.between}{length}").table
    assert table is not None
    name = setup.tube.replace("%", " %")
    (row,) = (r for r in table.rows if r[0] == name and r[1].startswith(setup.reflector))
    if not row[3].startswith("fine"):
        yield str(row)


def _by_check(setup: _Setup, place: str) -> Iterator[str]:
    length = f" length:{setup.length}" if setup.length else ""
    screen = "nothing between" if setup.screen == "none" else f"mesh {setup.screen}"
    text = (
        f"{setup.animal}, {setup.tube} T5 HO tube, {setup.reflector} reflector, {screen}, "
        f"{place} from the tube to its back{length}"
    )
    reply = _asked(f"check text:{text}")
    assert reply.table is not None
    row = next(r for r in reply.table.rows if r[0] == "UV")
    uv_told = [why for why in reply.why if why.startswith("UV: ") and ": fine. Aim" in why]
    # A long tube may be too strong where a short one is fine: then its length is asked for.
    marks = {"fine"} if setup.length else {"fine", "cannot tell"}
    if not uv_told or row[1] not in marks:
        yield f"{text}: {row}"


def _by_card(setup: _Setup, answer: str) -> Iterator[str]:
    length = f" length:{setup.length}" if setup.length else ""
    line = f"card tubes:{setup.tube} screens:{setup.screen} animal:{setup.animal}{length}"
    table = _asked(line).table
    assert table is not None
    (row,) = (r for r in table.rows if setup.reflector in r[0])
    if answer.startswith("It depends on how long"):
        if row[1] != "by its length: tell it":
            yield f"{row} against {answer}"
        return
    if not answer.startswith(f"{row[1]};"):
        yield f"{row} against {answer}"


def _stays(reply: Reply) -> bool:
    """Whether the tube is left, or at most hung at the start until its length is known."""
    return reply.steps[0].startswith(("Leave it.", "Until you know how long"))


def _disagreements(setup: _Setup, place: str) -> Iterator[str]:
    reply = _asked(f"uvi distance:{place} {setup.told}")
    if ": fine, aim for" not in reply.answer or not _stays(reply):
        yield f"{reply.answer} {reply.steps[0]}"
    yield from _by_meter(setup, place, reply.answer)
    yield from _by_tube(setup, place)
    yield from _by_check(setup, place)


def _setups(random: Random) -> Iterator[_Setup]:
    while True:
        yield _Setup(
            random.choice(_STRENGTHS),
            random.choice(_FIXTURES),
            random.choice(_SCREENS),
            random.choice(_LENGTHS),
            random.choice(_ANIMALS),
        )


def _places(setup: _Setup, reply: Reply) -> Iterator[tuple[_Setup, str]]:
    """Return what is advised: one range, or one for every length that the tube may have."""
    if reply.table is None:
        yield from ((setup, place) for place in _advised(_range(reply)))
        return
    for long, span, start in reply.table.rows:
        known = replace(setup, length=long.partition(" (")[0].replace(" ", ""))
        if start != "–":
            yield from ((known, place) for place in _advised(f"{span}; start at {start}"))


def test_a_place_that_is_advised_is_fine_in_every_other_answer() -> None:
    asked, wrong = 0, []
    for setup in _setups(Random(20)):
        reply = _asked(f"distance {setup.told}")
        if reply.status != "ok":
            continue
        wrong += [f"{setup}: {told}" for told in _by_card(setup, _range(reply))]
        for known, place in _places(setup, reply):
            asked += 1
            wrong += [f"{known} {place}: {told}" for told in _disagreements(known, place)]
        if asked >= _PLACES:
            break
    assert not wrong, "\n".join([f"{len(wrong)} of {asked}", *wrong[:20]])


_ALIKE = (
    ("lamp does not cover it", "so plan a second heater"),
    ("lamp may just do", "may be too cool"),
    ("lamp covers it", "That suits"),
    ("lamp may give too much", "may be too warm"),
    ("lamp gives too much", "refused"),
    ("do not use your", "refused"),
)
_VERDICT = r"(far too low|low|probably low|fine|cannot tell|probably high|high|dangerous)"
_HERE = re.compile(rf": {_VERDICT}(?:, wanted|, aim for|\. Aim for)")


def _verdict(text: str) -> str:
    found = _HERE.search(text)
    assert found is not None, text
    return found[1]


def _uv_told(line: str) -> str:
    return next(why for why in _asked(line).why if why.startswith("UV: "))


def test_any_place_is_judged_alike_by_every_question_of_a_place() -> None:
    random, seen = Random(22), set()
    for setup in islice((s for s in _setups(Random(23)) if s.length), 40):
        inches = random.randint(16, 120) / 2.0
        verdict = _verdict(_asked(f"uvi distance:{inches}in {setup.told}").answer)
        table = _asked(f"tube distance:{inches}in {setup.between} length:{setup.length}").table
        assert table is not None
        name = setup.tube.replace("%", " %")
        (row,) = (r for r in table.rows if r[0] == name and r[1].startswith(setup.reflector))
        screen = "nothing between" if setup.screen == "none" else f"mesh {setup.screen}"
        check = _uv_told(
            f"check text:{setup.animal}, {setup.tube} T5 HO tube, {setup.reflector} reflector, "
            f"{screen}, {inches}in from the tube to its back length:{setup.length}"
        )
        assert row[3].partition(" up to ")[0] == verdict == _verdict(check), (setup, inches)
        seen.add(verdict)
    assert len(seen) >= 5, seen


def test_any_reading_is_judged_alike_by_every_question_of_a_reading() -> None:
    random, seen = Random(24), set()
    for _ in range(40):
        animal, uvi = random.choice(_ANIMALS), random.randint(2, 140) / 10.0
        other = _asked(f"uvi distance:12in lamp:compact readings:{uvi} at 12in animal:{animal}")
        (read,) = (row.text for row in other.rows if row.label == "You read")
        kept = Enclosure(
            name="Box",
            setup=Setup(animal=animal_asked(animal, _ANYONE).slug),
            readings=(Reading(day=date(2026, 1, 1), of=Quantity.UVI, value=uvi),),
        )
        (shown,) = standing_rows(kept, _ANYONE)
        told = voice("en", Units.IN).text(shown.say)
        verdicts = {
            _verdict(read),
            _verdict(told),
            _verdict(_uv_told(f"check text:{animal}, 12% T5 HO tube, my meter shows UVI {uvi}")),
        }
        assert len(verdicts) == 1, (animal, uvi, verdicts)
        seen |= verdicts
    assert len(seen) >= 4, seen


def test_air_that_a_lamp_holds_is_judged_alike_by_air_and_by_plan() -> None:
    seen = set()
    for watts, room in product((25, 50, 75, 100, 150), (60, 66, 72)):
        box = "enclosure:48x24x24in material:wood lid:solid animal:bearded dragon"
        air = _asked(f"air {box} watts:{watts} room:{room}F")
        plan = _asked(f"plan {box} watts:{watts}W room:{room}F")
        (told,) = [row.text for row in plan.rows if row.label == "Air by day"] or ["refused"]
        pair = next(pair for pair in _ALIKE if pair[0] in air.answer)
        assert pair[1] in told, (watts, room, air.answer, told)
        seen.add(pair)
    assert len(seen) >= 3, seen


_HEATED = {"Basking spot": "basking", "Cool end": "cool", "Warm end": "warm"}


def test_readings_of_heat_are_judged_alike_by_temps_and_by_check() -> None:
    random, compared = Random(21), 0
    for _ in range(40):
        animal = random.choice(_ANIMALS)
        read = {"basking": random.randint(75, 130), "cool": random.randint(62, 95)}
        read["warm"] = read["cool"] + random.randint(0, 12)
        given = " ".join(f"{name}:{value}F" for name, value in read.items())
        temps = _asked(f"temps {given} lamp_on:3 hours animal:{animal}")
        check = _asked(f"check text:{animal} {given} lamp_on:3 hours")
        assert check.table is not None
        assert temps.set_up is not None
        assert check.set_up is not None
        judged = {spot.quantity: spot.judged for spot in temps.set_up.spots}
        for spot in check.set_up.spots:
            assert spot.judged == judged[spot.quantity], (animal, given)
        said = [row.text for row in temps.rows]
        for row in (r for r in check.table.rows if r[0] in _HEATED):
            why = next(text for text in check.why if text.startswith(row[0])).partition(": ")[2]
            assert "contradict" in temps.answer or why in said, (animal, given, why)
            needless = "it needs no basking spot" in why
            assert needless or (row[1] == "fine") is (": right. " in why), row
            compared += 1
    assert compared >= 100


def test_hours_of_light_are_judged_alike_by_hours_and_by_check() -> None:
    seen = set()
    for animal, quarters in product(("bearded dragon", "crested gecko"), range(38, 61)):
        lit, off = quarters / 4.0, 24 + quarters
        hours = _asked(f"hours animal:{animal} on:6:00 off:{off // 4}:{off % 4 * 15:02d}")
        check = _asked(f"check text:{animal}, lights {lit:g} hours a day")
        assert check.table is not None
        (told,) = [row[1] for row in check.table.rows if row[0] == "Hours of light"]
        if not hours.answer.startswith("I cannot tell"):
            assert (told == "fine") is hours.answer.startswith("Yes"), (animal, lit)
            seen.add(told)
    assert seen == {"fine", "change"}
