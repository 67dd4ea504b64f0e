"""An albino or a hatchling gets less UV than its kind, in every answer, and is told so."""

import pytest

from bot.ask import ask
from bot.language.pale import tells_pale_or_young
from bot.preferences import Preferences
from bot.reply import Reply

TUBE = "tube:12% reflector:polished screen:none length:34in"


def wanted(reply: Reply) -> str:
    return next(row.text for row in reply.rows if row.label in ("Wanted", "Aim for"))


@pytest.mark.parametrize(
    "line",
    [
        f"distance {TUBE} animal:albino bearded dragon",
        f"distance {TUBE} animal:baby beardie",
        f"uvi distance:20in {TUBE} animal:bearded dragon hatchling",
        "meter readings:4.2 at 12 in animal:amelanistic bearded dragon",
        "how far should a 12% tube in a polished hood with no mesh be for my albino bearded dragon",
        "how far should a 12% tube in a polished hood with no mesh be for my baby bearded dragon",
    ],
)
def test_half_the_uv_of_its_kind_is_wanted_and_told(line: str, anyone: Preferences) -> None:
    # Pinned: half of UVI 3 to 5, our judgement.
    reply = ask(line, anyone)
    assert "1.5 to 2.5" in wanted(reply)
    assert "half of what its kind gets" in wanted(reply)


@pytest.mark.parametrize(
    "line",
    [
        f"distance {TUBE} animal:bearded dragon",
        "how far should a 12% tube in a polished hood with no mesh be for my baby, a beardie",
        "how far should a 12% tube in a polished hood with no mesh be for my beardie, not a baby",
    ],
)
def test_any_other_gets_that_of_its_kind(line: str, anyone: Preferences) -> None:
    assert "3 to 5" in wanted(ask(line, anyone))


def test_what_its_kind_bears_switches_the_tube_of_a_pale_one_off(anyone: Preferences) -> None:
    keys = [d.key for d in ask("check animal:albino bearded dragon meter:5", anyone).dangers]
    assert "uv_too_strong" in keys
    assert not ask("check animal:bearded dragon meter:5", anyone).dangers


def test_a_wish_that_its_kind_may_have_is_refused_for_a_pale_one(anyone: Preferences) -> None:
    reply = ask(f"distance {TUBE} animal:albino bearded dragon uvi:4-5", anyone)
    assert "too strong" in reply.answer
    assert ask(f"distance {TUBE} animal:bearded dragon uvi:4-5", anyone).status == "ok"


@pytest.mark.parametrize(
    ("text", "is_told"),
    [
        ("albino leopard gecko", True),
        ("baby corn snake", True),
        ("hatchling", True),
        ("leopard gecko", False),
        ("my baby", False),
        ("not an albino", False),
        ("albinos", True),
        ("babylon", False),
    ],
)
def test_the_words_are_read(text: str, is_told: bool) -> None:
    assert tells_pale_or_young(text) is is_told
