"""What cannot wait is said first: order, calls, what is left out, and through which doors."""

import json
import re
import tomllib
from pathlib import Path

import pytest

from bot.ask import ask
from bot.dangers.table import HazardKind, hazard, hazards
from bot.dialogue import START, after
from bot.facts import Say
from bot.guide import page, sections
from bot.preferences import Preferences
from bot.problems import problem
from bot.queries.question import Question
from bot.render.html import render_html
from bot.render.post import MOST_TEXT, render_post
from bot.render.text import render_text
from bot.reply import Alarm, Reply
from bot.said_first import said_first
from calc.sources import bibliography
from tests.bot.dangers.saying import english

ANYONE = Preferences()
NOTHING = problem("help", Say("refused-nothing"), ANYONE)
EVERY = pytest.mark.parametrize("key", list(hazards()))


def told(*keys: str, reply: Reply = NOTHING, asked: bool = False) -> Reply:
    return said_first(reply, [Alarm(key=key, asked=asked) for key in keys], ANYONE)


@EVERY
def test_a_row_is_short_and_leads_to_a_part_that_exists(key: str) -> None:
    row = hazard(key)
    assert row.part in dict(sections(page(row.page)))
    assert set(row.sources) <= set(bibliography())
    assert row.mutes <= set(hazards())
    assert set().union(*row.made_of) <= set(hazards())


@EVERY
def test_a_hazard_alone_is_an_answer_that_begins_with_its_act(key: str) -> None:
    row = hazard(key)
    reply = told(key)
    assert reply.status == "ok"
    assert reply.title == english(row.title)
    assert reply.answer.startswith(english(row.do_now[0]))
    assert reply.guide[0].slug == row.page
    assert [danger.key for danger in reply.dangers] == [key]
    assert json.loads(reply.model_dump_json())["dangers"][0]["call"]["who"] == row.call.who


@EVERY
def test_every_renderer_shows_the_act_before_the_rest(key: str) -> None:
    reply = told(key, reply=ask("needs animal:bearded dragon", ANYONE))
    act = english(hazard(key).do_now[0])
    for shown in (render_text(reply, 10_000), render_html(reply)):
        assert shown.index(act[:20]) < shown.index(reply.rows[-1].label)
    first = render_post(reply).text
    assert len(first) <= MOST_TEXT
    if hazard(key).kind in (HazardKind.WRONG, HazardKind.NEVER):
        assert f"\n1. {act.split(',')[0][:20]}" in first
    else:
        assert first.startswith("**" + act.split(",")[0][:20])


@EVERY
def test_what_is_only_asked_about_gets_the_calm_rule(key: str) -> None:
    reply = told(key, asked=True)
    assert reply.answer.startswith(english(hazard(key).asked))
    assert reply.dangers == ()
    assert " now" not in english(hazard(key).asked).replace("now and", "")


WORDS = tomllib.loads((Path(__file__).parent / "guide_words.toml").read_text(encoding="utf-8"))


@pytest.mark.parametrize("key", list(WORDS["both"]))
def test_table_and_guide_tell_the_same_acts(key: str) -> None:
    row = hazard(key)
    table = " ".join(map(english, (*row.do_now, *row.then, row.asked))).lower()
    part = dict(sections(page(row.page)))[row.part].lower()
    call = row.call.who
    for words in WORDS["both"][key]["says"]:
        assert words in f"{table} {call}", "table"
        assert words in part, "guide"


def forbids(text: str, words: str) -> bool:
    """Say whether a sentence forbids something: its words stand behind a no, at most nine on."""
    said = rf"\b(?:no|not|never|nothing|nobody)\b(?:\W+\w+){{0,9}}?\W+{words}"
    return any(re.search(said, part) for part in re.split(r"[.;:!?\n]+", text.lower()))


def table_text(key: str) -> str:
    row = hazard(key)
    return ". ".join(map(english, (*row.do_now, *row.then, row.asked)))


def page_text(key: str) -> str:
    return "\n".join(text for _, text in sections(page(hazard(key).page)))


@pytest.mark.parametrize("words", WORDS["never"])
def test_what_the_table_forbids_is_forbidden_on_the_page_it_sends_to(words: str) -> None:
    forbidding = {key for key in hazards() if forbids(table_text(key), words)}
    assert forbidding
    assert {key for key in forbidding if not forbids(page_text(key), words)} == set()


@EVERY
def test_what_a_guide_part_forbids_is_forbidden_by_a_hazard_that_sends_there(key: str) -> None:
    row = hazard(key)
    part = dict(sections(page(row.page)))[row.part]
    table = ". ".join(
        table_text(other)
        for other, its in hazards().items()
        if (its.page, its.part) == (row.page, row.part)
    )
    forbidden = [words for words in WORDS["never"] if forbids(part, words)]
    assert [words for words in forbidden if not forbids(table, words)] == []


def test_people_come_before_causes_and_causes_before_the_animal() -> None:
    reply = told("not_moving", "no_thermostat", "shock")
    said = [english(hazard(key).do_now[0]) for key in ("shock", "not_moving")]
    assert reply.answer.startswith(" ".join(said))


def test_one_plug_does_for_two_hazards() -> None:
    reply = told("no_thermostat", "fire")
    assert english(hazard("no_thermostat").do_now[0]) not in reply.answer
    assert english(hazard("no_thermostat").do_now[1]) in reply.steps


def test_a_cause_and_its_victim_are_one_act_and_then_the_vet() -> None:
    reply = told("not_moving", "box_too_hot")
    assert reply.answer.startswith(
        "Switch all heat off now and cool it slowly. Call a reptile vet now."
    )


@pytest.mark.parametrize("keys", [("ill", "tremor"), ("eyes", "uv_too_strong")])
def test_a_vet_is_called_once_and_as_soon_as_the_soonest(keys: tuple[str, ...]) -> None:
    answer = told(*keys).answer
    assert answer.count("all a reptile vet") == 1
    assert "this week" not in answer


def test_no_usual_warmth_stands_beside_a_burn() -> None:
    steps = " ".join(told("breathing", "animal_burn").steps)
    assert "normal warmth" not in steps


def test_a_milder_hazard_leaves_the_title_to_the_answer() -> None:
    whole = ask("needs animal:bearded dragon", ANYONE)
    reply = told("no_shade", reply=whole)
    assert reply.title == whole.title
    assert reply.answer == f"{english(hazard('no_shade').do_now[0])} {whole.answer}"


@pytest.mark.parametrize(
    "key", [key for key, row in hazards().items() if row.kind in ("people", "stop")]
)
def test_an_answer_that_would_feed_a_hazard_is_left_out(key: str) -> None:
    assert hazard(key).kind in (HazardKind.PEOPLE, HazardKind.STOP)
    for name in hazard(key).silences:
        answer = NOTHING.model_copy(update={"command": name, "status": "ok", "answer": "Feeds it."})
        assert "Feeds it" not in told(key, reply=answer).answer


@pytest.mark.parametrize(
    "line",
    [
        "the lamp is smoking",
        "check leopard gecko, 6% t8 over mesh, the dome is smoking",
        "distance tube:12% reflector:polished screen:none animal:the lamp is smoking",
        "distance tube:the lamp is smoking",
        "xyz:1 the lamp is smoking",
        "needs the lamp is smoking",
    ],
)
def test_fire_is_heard_through_every_door(line: str) -> None:
    reply = ask(line, ANYONE)
    assert reply.status == "ok"
    assert reply.title == english(hazard("fire").title)
    assert reply.answer.startswith(english(hazard("fire").do_now[0]))


def test_an_option_of_a_form_is_heard_too() -> None:
    given = {"tube": "12%", "reflector": "polished", "screen": "none", "animal": "my gecko is limp"}
    assert ask(Question("distance", given), ANYONE).dangers[0].key == "not_moving"


def test_a_name_or_note_of_what_is_saved_is_heard_without_a_store() -> None:
    given = {"name": "Spike", "setup": "beardie, 12% tube, the plug is melting"}
    assert ask(Question("setup save", given), ANYONE).dangers[0].key == "fire"


ALSO_ASKED = (
    "my cable is smoking. how far should a 12% tube be from a bearded dragon, polished reflector, "
    "no screen?"
)


def test_what_was_heard_beside_a_question_is_said_again_when_a_button_asks_it_again() -> None:
    first = ask(Question("ask", {"question": ALSO_ASKED}), ANYONE)
    assert first.command == "distance"
    assert [danger.key for danger in first.dangers] == ["fire"]
    assert ask(first.asked, ANYONE) == first
    # A conversation goes on from the question that was meant.
    kept = after(START, first).asked
    assert kept is not None
    assert kept.line().startswith("distance tube:")


def test_a_question_without_a_hazard_is_asked_again_by_its_options() -> None:
    calm = ask(Question("ask", {"question": ALSO_ASKED.partition(". ")[2]}), ANYONE)
    assert calm.dangers == ()
    assert calm.asked.startswith("distance tube:")
