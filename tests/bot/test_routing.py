"""Free questions find their question, with options that it can read."""

import pytest

from bot.answers.routing import route
from bot.language.errors import NotUnderstoodError
from bot.queries.setup import AskQuery

ROUTES = [
    (
        "how far should a 12% tube be with a polished reflector and no screen, bearded dragon",
        "distance",
        {
            "animal": "bearded dragon",
            "tube": "12%",
            "reflector": "polished",
            "screen": "none",
        },
    ),
    (
        "what uvi at 14 inches with a 12% polished no screen beardie",
        "uvi",
        {
            "animal": "bearded dragon",
            "tube": "12%",
            "reflector": "polished",
            "screen": "none",
            "distance": "14 in",
        },
    ),
    (
        "which tube for a 4 foot tank 14 inches no screen bearded dragon",
        "tube",
        {
            "animal": "bearded dragon",
            "distance": "14 in",
            "screen": "none",
            "enclosure": "4 ft",
        },
    ),
    (
        "what wattage do i need, room 70F, lamp 10 inches from the rock, beardie",
        "watts",
        {"animal": "bearded dragon", "room": "70 F", "distance": "10 in"},
    ),
    (
        "do i need heat at night for my beardie if the room drops to 58F",
        "night",
        {"animal": "bearded dragon", "room": "58 F"},
    ),
    ("how many hours should the lights be on for a corn snake", "hours", {"animal": "corn snake"}),
    ("is a red bulb ok at night?", "lamp", {"kind": "red"}),
    ("is a heat mat good for a leopard gecko", "lamp", {"kind": "heat mat"}),
    ("what is 14 inches in cm", "convert", {"value": "14 inches"}),
    (
        "basking 98 cool 75 beardie",
        "temps",
        {"animal": "bearded dragon", "basking": "98 F", "cool": "75 F"},
    ),
    ("should i get a 12% or 6% for my beardie", "tube", {"animal": "bearded dragon"}),
]


@pytest.mark.parametrize(("words", "command", "given"), ROUTES)
def test_a_free_question_finds_its_question(
    words: str, command: str, given: dict[str, str]
) -> None:
    routed = route(AskQuery(question=words))
    assert (routed.command, dict(routed.given)) == (command, given)


def test_a_whole_set_up_is_checked_and_a_wish_is_planned() -> None:
    told = "my beardie has 12% in a shiny hood, no mesh, 16in to his back, basking 98, cool 75, ok?"
    routed = route(AskQuery(question=told))
    assert (routed.command, dict(routed.given)) == ("check", {"setup": told})
    wish = "want to get a bearded dragon, 4x2x2 wooden, mesh lid, room 70F, 60F at night"
    routed = route(AskQuery(question=wish))
    assert (routed.command, dict(routed.given)) == (
        "plan",
        {
            "animal": "bearded dragon",
            "enclosure": "4x2x2 ft",
            "material": "wood",
            "lid": "full mesh",
            "room": "70 F",
            "night": "60 F",
        },
    )


@pytest.mark.parametrize("words", ["hello", "how are you", "my lizard is sad", "<@1> **hi**"])
def test_what_asks_nothing_is_asked_about_in_one_plain_sentence(words: str) -> None:
    with pytest.raises(NotUnderstoodError) as caught:
        route(AskQuery(question=words))
    assert not set("*<>@") & set(str(caught.value))
