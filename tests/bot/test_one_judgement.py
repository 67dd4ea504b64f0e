"""What one answer advises, every other one calls fine: all of them ask the same judgement.

``NOONSTONE_PLACES`` sets how many advised places are asked back; few by default.
"""

import os
import re
from collections.abc import Iterator
from dataclasses import dataclass, replace
from random import Random

from bot.ask import ask
from bot.preferences import Preferences
from bot.reply import Reply

_PLACES = int(os.environ.get("NOONSTONE_PLACES", "150"))
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
_ADVISED = re.compile(
    r"[Kk]eep (?:([\d.]+) to )?([\d.]+) in \((?:([\d.]+) to )?([\d.]+) cm\).*"
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
    if ": fine, wanted" not in reply.answer:
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
    table = _asked(f"check text:{text}").table
    assert table is not None
    row = next(r for r in table.rows if r[0] == "UV")
    # A long tube may be too strong where a short one is fine: then its length is asked for.
    marks = {"fine"} if setup.length else {"fine", "cannot tell"}
    if ": fine, wanted" not in row[2] or row[1] not in marks:
        yield f"{text}: {row}"


def _by_card(setup: _Setup, answer: str) -> Iterator[str]:
    length = f" length:{setup.length}" if setup.length else ""
    line = f"card tubes:{setup.tube} screens:{setup.screen} animal:{setup.animal}{length}"
    table = _asked(line).table
    assert table is not None
    (row,) = (r for r in table.rows if setup.reflector in r[0])
    if answer.startswith("Measure the tube first"):
        if row[1] != "by its length: tell it":
            yield f"{row} against {answer}"
        return
    if f"Keep {row[1]} from" not in answer:
        yield f"{row} against {answer}"


def _stays(reply: Reply) -> bool:
    """Whether the tube is left, or at most hung at the start until its length is known."""
    return reply.steps[0].startswith(("Leave it.", "Until you know how long"))


def _disagreements(setup: _Setup, place: str) -> Iterator[str]:
    reply = _asked(f"uvi distance:{place} {setup.told}")
    if ": fine, wanted" not in reply.answer or not _stays(reply):
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
        yield from ((setup, place) for place in _advised(reply.answer))
        return
    for long, span, start in reply.table.rows:
        known = replace(setup, length=long.partition(" (")[0].replace(" ", ""))
        if start:
            yield from ((known, place) for place in _advised(f"Keep {span}; start at {start}"))


def test_a_place_that_is_advised_is_fine_in_every_other_answer() -> None:
    asked, wrong = 0, []
    for setup in _setups(Random(20)):
        reply = _asked(f"distance {setup.told}")
        if reply.status != "ok":
            continue
        wrong += [f"{setup}: {told}" for told in _by_card(setup, reply.answer)]
        for known, place in _places(setup, reply):
            asked += 1
            wrong += [f"{known} {place}: {told}" for told in _disagreements(known, place)]
        if asked >= _PLACES:
            break
    assert not wrong, "\n".join([f"{len(wrong)} of {asked}", *wrong[:20]])


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
        for row in (r for r in check.table.rows if r[0] in _HEATED):
            clause = row[2].partition("; ")[0]
            if "contradict" not in temps.answer:
                assert clause in temps.answer, (animal, given)
            fine = " is right at " in clause
            assert (row[1] == "fine") is fine, row
            compared += 1
    assert compared >= 100
