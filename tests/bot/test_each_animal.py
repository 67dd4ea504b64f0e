"""One question for several animals gets an answer for each, and a danger of one stands alone."""

import pytest

from bot.ask import ask
from bot.brief import MOST_LINES, phone_lines
from bot.preferences import Preferences

ANYONE = Preferences()


def brief(words: str) -> list[str]:
    return [line.text for line in ask(f"ask {words}", ANYONE).brief]


def test_each_animal_that_is_named_side_by_side_gets_its_answer() -> None:
    told = brief("is 90F ok basking for my leo and my beardie")
    assert told[0].startswith("For a leopard gecko: Fine.")
    assert told[1].startswith("For a bearded dragon: The basking surface is 5 °F (3 °C) too cool")


@pytest.mark.parametrize(
    "words",
    [
        "what temps do a leopard gecko and a bearded dragon need",
        "basking temps for corn snake, leopard gecko and beardie",
        "which tube for a corn snake and a crested gecko, 12 inches, no mesh",
    ],
)
def test_a_phone_shows_all_of_it_at_once(words: str) -> None:
    reply = ask(f"ask {words}", ANYONE)
    assert reply.status == "ok"
    assert phone_lines(reply.brief) <= MOST_LINES
    assert len(reply.offers) >= 2
    assert {str(each.given["animal"]) for each in reply.offers} >= {"corn snake"} or (
        "leopard gecko" in {str(each.given["animal"]) for each in reply.offers}
    )


def test_a_danger_of_one_is_told_whole_and_for_which_it_is() -> None:
    told = brief("does 112F basking fit a leopard gecko and a bearded dragon")
    assert told[0].startswith("Switch all heat off now")
    assert told[-1] == "This is for a leopard gecko alone."


def test_an_animal_that_is_only_spoken_of_gets_none() -> None:
    told = brief("my friend has a bearded dragon. is 90F basking ok for my leo")
    assert len([line for line in told if line.startswith("For a")]) == 0


def test_what_is_told_of_the_first_alone_is_answered_for_it() -> None:
    words = "I have two animals, one leopard gecko and one veiled chameleon. First for the gecko, "
    reply = ask(f"ask {words}7% at 25 cm", ANYONE)
    assert reply.meant is not None
    assert reply.meant.given["animal"] == "leopard gecko"
