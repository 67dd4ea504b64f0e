"""Animals without figures here get no figure of another, through any question."""

import re
import tomllib
from pathlib import Path

import pytest

from bot.ask import ask
from bot.commands import COMMANDS
from bot.preferences import Preferences
from bot.reply import Reply
from calc.animals import animals

LINES = tomllib.loads((Path(__file__).parent / "unfigured.toml").read_text(encoding="utf-8"))
LATER = tomllib.loads((Path(__file__).parent / "unfigured_later.toml").read_text(encoding="utf-8"))
EVERY = [line for kind in ("known_by_name", "not_known", "kin") for line in LINES[kind]]
FIGURES = LINES["figures"] | LATER["figures"]
OTHERS = [*LATER["known_by_name"], *LATER["kin"]]
HERE = {animal.name.lower() for animal in animals().values()}
TARGETS = frozenset(
    ("uvi_wanted", "wanted_uvi", "basking_surface", "warm_air", "cool_air", "night_floor", "light")
)
OF_A_KIND = re.compile(r"Your set-up for an? ")
ASKS = ("Animal", "Unclear")
PICK = re.compile(
    r"If it is an? [^:]+: needs|for example animal:|For example: |Try it: "
    r"|If you have one, ask: |such as animal:|Or did you mean: "
)


def told(reply: Reply) -> str:
    """Return all that a reply says of its own, without the examples that a keeper may pick."""
    rows = [f"{row.label}: {row.text}" for row in reply.rows if row.label not in ASKS]
    offers = reply.title in ("Which one do you mean?", "Do you mean this?")
    steps = [step for step in reply.steps if not (offers or PICK.search(step))]
    table = [" ".join(row) for row in reply.table.rows] if reply.table else []
    return "\n".join((reply.title, *rows, *steps, *table, *reply.cautions)).lower()


def gives_another(reply: Reply) -> str:
    """Return what of the reply is the figure of an animal of the list."""
    if reply.title.startswith(("What a", "Your set-up for a ")):
        return reply.title
    if any(value.name in TARGETS for value in reply.values) and reply.command in ("needs", "plan"):
        return str(reply.values)
    said = told(reply).replace("eastern bearded dragon", "")
    named = [name for name in HERE if name in said]
    return ", ".join(named) or ("wanted" if "\nwanted: uvi" in told(reply) else "")


@pytest.mark.parametrize("line", [*EVERY, *OTHERS])
def test_no_other_animals_figures_in_free_words(line: str) -> None:
    assert gives_another(ask(f"ask {line}", Preferences())) == ""


@pytest.mark.parametrize("line", EVERY)
def test_the_usual_animal_is_not_taken_for_one_that_was_named(line: str) -> None:
    reply = ask(f"ask {line}", Preferences(default_animal="veiled chameleon"))
    assert reply.title != "What a veiled chameleon needs"
    assert "for a veiled chameleon" not in f"{reply.title} {reply.answer}"
    assert not any("so I took the group's" in row.text for row in reply.rows)


@pytest.mark.parametrize("line", LINES["known_by_name"])
def test_one_known_by_name_is_told_that_there_are_no_figures(line: str) -> None:
    reply = ask(f"ask {line}", Preferences(language="en"))
    said = f"{reply.title} {reply.answer}"
    about_lamps = reply.command in ("guide", "lamp", "convert", "surface")
    beyond = reply.title in ("Not a question for me", "Please call a reptile vet")
    assert "I have no figures for" in said or about_lamps or beyond


@pytest.mark.parametrize("line", EVERY)
def test_a_set_up_is_never_judged_by_another_animal(line: str) -> None:
    setup = f"{line}, 12% tube 16in to the back, no mesh, polished, basking 98F, cool 78F"
    for usual in ("", "veiled chameleon"):
        reply = ask(f"check {setup}", Preferences(default_animal=usual))
        assert not OF_A_KIND.match(reply.title)
        assert gives_another(reply) == ""
        marks = {row[0]: row[1] for row in reply.table.rows} if reply.table else {}
        assert marks["Basking spot"] == "cannot tell"
        assert marks["UV"] != "fine"


@pytest.mark.parametrize("line", OTHERS)
def test_no_set_up_of_another_hand_is_judged_by_another_animal(line: str) -> None:
    title = ask(f"check {line}", Preferences(default_animal="veiled chameleon")).title
    assert not OF_A_KIND.match(title)


@pytest.mark.parametrize(("line", "name"), FIGURES.items())
def test_an_animal_with_figures_is_taken_for_no_other(line: str, name: str) -> None:
    title = ask(f"check {line}", Preferences()).title
    title = title.replace(" that is pale or very young", "")
    assert not OF_A_KIND.match(title) or title.endswith(f" {name}, checked")


NAMED = (
    *("emerald tree boa", "rhinoceros iguana", "mountain horned dragon", "caiman lizard"),
    "tiger salamander",
)
GIVEN = {
    "distance": "tube:12% reflector:polished screen:none",
    "uvi": "tube:12% reflector:polished screen:none distance:14in",
    "tube": "distance:14in screen:none",
    "meter": "readings:4.2 at 12in",
    "temps": "basking:98F cool:78F",
    "night": "room:62F",
    "watts": "room:70F distance:10in",
    "basking": "surface:92F air:80F distance:10in",
    "plan": "enclosure:48x24x24in lid:full mesh room:70F night:62F",
    "hours": "",
    "needs": "",
    "card": "",
    "section": "tube:12% reflector:polished screen:none distance:14in enclosure:48x24x24in",
}


@pytest.mark.parametrize("name", NAMED)
@pytest.mark.parametrize("question", GIVEN)
def test_a_question_with_options_has_no_figures_either(question: str, name: str) -> None:
    assert question in {command.name for command in COMMANDS}
    reply = ask(f"{question} {GIVEN[question]} animal:{name}", Preferences())
    assert f"I have no figures for “{name}”" in reply.answer
    assert reply.values == ()
    assert (reply.status == "ok") == (question == "needs")
    assert gives_another(reply) == ""


def test_a_distance_for_a_range_that_the_keeper_was_told_needs_no_figures_of_ours() -> None:
    line = "distance tube:12% reflector:polished screen:none uvi:2-3 animal:emerald tree boa"
    reply = ask(line, Preferences())
    assert reply.status == "ok"
    assert reply.values


@pytest.mark.parametrize(
    ("line", "act"),
    [
        ("check emerald tree boa, basking 140F", "Switch"),
        ("check basking 140F", "Switch"),
        ("check my boa, night 35F", "Move the animal to a warmer room"),
        ("check uvi 14", "Switch the UV tube off"),
        ("check polished, no mesh, 12% 5in from its back", "Switch the UV tube off"),
    ],
)
def test_what_harms_any_animal_is_said_first_though_none_is_known(line: str, act: str) -> None:
    reply = ask(line, Preferences())
    assert reply.answer.startswith(act)
    assert any("20 cm" in step for step in reply.steps)


def test_two_animals_are_not_taken_for_one_without_a_word() -> None:
    reply = ask("check beardie and corn snake, basking 98F", Preferences())
    named = "You named bearded dragon and corn snake. I went by a bearded dragon."
    assert named in [row.text for row in reply.rows if row.label == "Animal"]
    assert "I went by a bearded dragon." in reply.answer
