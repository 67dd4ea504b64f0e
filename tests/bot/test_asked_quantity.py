"""The first sentence of an answer is the quantity that was asked for."""

import pytest

from bot.ask import ask
from bot.brief import brief_of
from bot.preferences import Preferences
from bot.queries.question import Question
from bot.reply import Reply, Role
from calc.animals import animals


def head(reply: Reply) -> str:
    return next(line.text for line in brief_of(reply) if line.role is Role.HEAD)


@pytest.mark.parametrize(
    ("line", "begins"),
    [
        ("does my corn snake need uvb", "Yes. A corn snake needs UV index 0.5 to 2"),
        ("what uvi for a bearded dragon", "A bearded dragon needs UV index 3 to 5"),
        ("is my uv bulb enough for a corn snake", "A corn snake needs UV index 0.5 to 2"),
        ("is a uv bulb too strong for a crested gecko", "A crested gecko needs UV index 0.5"),
        ("is a uv panel strong enough for a bearded dragon", "A bearded dragon needs UV index"),
        ("how cold may the night be for a bearded dragon", "No heat at night down to 60 °F"),
        ("how cold may the night be for a leopard gecko", "No heat at night above 68 °F"),
        (
            "how hot should the basking spot of a corn snake be",
            "Basking for a corn snake: 85 to 90 °F",
        ),
        ("what should the cool end be for a corn snake", "Cool end for a corn snake: 72 to 80 °F"),
        (
            "how warm should the water be for a slider",
            "A slider turtle needs 73 to 82 °F (23 to 28 °C). That is for its water",
        ),
        ("does my axolotl need uv", "No. An axolotl needs no UV."),
        ("when should i change my t8", "Keepers replace a T8"),
        ("does a ceramic heater give uv", "No. A ceramic heater gives heat alone"),
        ("does a halogen bulb give any uvb", "No. A halogen flood lamp gives no UV."),
        ("can a ceramic heater be on at night", "Yes, on a thermostat."),
        ("is 60F ok for a leopard gecko", "Too cool: 60 °F (15.5 °C) at its cool end"),
        ("they told me a leopard gecko should bask at 92F", "Good: 92 °F (33.5 °C) is right"),
        ("my shop told me 120F for a crested gecko, right?", "Too hot: 120 °F (49 °C)"),
        ("are you a bot or a human", "I am a bot."),
    ],
)
def test_the_head_says_what_was_asked(line: str, begins: str, anyone: Preferences) -> None:
    assert head(ask(f"ask {line}", anyone)).startswith(begins)


@pytest.mark.parametrize(
    ("line", "begins"),
    [
        ("needs corn snake about:uv", "Ja. Eine Kornnatter braucht UV-Index 0,5 bis 2"),
        ("needs corn snake about:night", "Nachts braucht es"),
        ("ist eine UV-Lampe stark genug für eine Bartagame", "Eine Bartagame braucht UV-Index"),
        ("lamp ceramic heat emitter about:uv", "Nein. Ein Keramikstrahler gibt nur Wärme"),
    ],
)
def test_the_head_says_it_in_german_too(line: str, begins: str) -> None:
    assert head(ask(line, Preferences(language="de"))).startswith(begins)


@pytest.mark.parametrize("slug", sorted(animals()))
def test_what_is_told_of_a_basking_spot_follows_the_range_of_the_animal(
    slug: str, anyone: Preferences
) -> None:
    """Exact: inside its own range it is right, far outside it never is."""
    animal = animals()[slug]
    spot = animal.basking_surface_c

    def told(heard_c: float) -> str:
        given = {"animal": animal.name, "about": "basking", "heard": f"{heard_c:g}C"}
        return head(ask(Question("needs", given), anyone))

    if spot is not None:
        assert told((spot.low + spot.high) / 2.0).startswith("Good: ")
        assert told(spot.high + 1.0).startswith("Too hot: ")
    assert not told(70.0).startswith(("Good", "Maybe"))
    assert not told(5.0).startswith(("Good", "Maybe"))


@pytest.mark.parametrize(
    "line", ["how warm should the water be for a musk turtle", "what temps for a tegu"]
)
def test_the_only_one_with_figures_is_asked_about_and_never_taken(
    line: str, anyone: Preferences
) -> None:
    assert ask(f"ask {line}", anyone).status == "problem"


def test_of_several_with_figures_none_is_taken(anyone: Preferences) -> None:
    reply = ask("ask how warm should it be for a dart frog", anyone)
    assert reply.status == "problem"


@pytest.mark.parametrize("line", ["what is the right lamp distance", "my thermostat is odd"])
def test_no_question_about_light_or_heat_goes_away_with_nothing(
    line: str, anyone: Preferences
) -> None:
    assert "That did not work" not in ask(f"ask {line}", anyone).title


@pytest.mark.parametrize(
    "line",
    [
        "my beardie's mouth is open and he is limp under the lamp",
        "my dragon is black all day and can't lift its head, is that the temperature",
    ],
)
def test_no_general_words_calm_who_has_to_act_now(line: str, anyone: Preferences) -> None:
    reply = ask(f"ask {line}", anyone)
    assert reply.dangers
    assert "normal" not in reply.answer
    assert "Yes" not in reply.answer


@pytest.mark.parametrize(
    "line",
    [
        "is a halogen too strong for a crested gecko",
        "is a halogen hot enough for a bearded dragon",
        "is my basking bulb too hot for a beardie",
    ],
)
def test_whether_a_lamp_that_glows_is_too_hot_gets_no_yes(line: str, anyone: Preferences) -> None:
    reply = ask(f"ask {line}", anyone)
    assert reply.meant is not None
    assert reply.meant.command == "watts"
    assert reply.status == "problem"
