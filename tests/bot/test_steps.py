"""The form that asks one thing at a time: what it asks, the ways on, and the answer at its end."""

import itertools
import re
from urllib.parse import parse_qsl

import html5lib
import pytest

from bot.ask import ask
from bot.command import Command
from bot.fronts.pages.edition import Edition, editions
from bot.fronts.pages.stepping import steps_page
from bot.fronts.pages.steps import Form, questions_of_an_animal
from bot.fronts.pages.trail import ASKED, FIRST_UNIT, KIND, NOW, QUESTION, TOPIC, UNKNOWN, Trail
from bot.preferences import FIRST
from bot.saying.words import words
from tests.bot.site_read import SERVED, shown_of

EDITIONS = editions(try_it=True)
ENGLISH = EDITIONS[0]
QUESTIONS = [command for some in questions_of_an_animal().values() for command in some]
HEADINGS = {f"h{level}" for level in range(1, 7)}
HELD = {"tube": "12%", "reflector": "polished", "screen": "none", "distance": "14in"}
# No question of an animal needs more steps than this.
MOST_STEPS = 14


def trail(**told: str) -> Trail:
    return Trail.of(told.items())


def followed(link: str) -> Trail:
    return Trail.of(parse_qsl(link.partition("?")[2]))


def walk(start: Trail, edition: Edition, take: str) -> list[Trail]:
    """Return every trail until the answer: by typing the example, or by not knowing."""
    gone = [start]
    while (step := Form(edition, gone[-1]).step()).reply is None:
        assert len(gone) <= MOST_STEPS, gone[-1]
        if take == "unknown":
            gone.append(followed(step.unknown))
        elif step.choices:
            gone.append(followed(step.choices[0].link))
        else:
            gone.append(gone[-1].put(step.field, step.example))
    return gone


def test_no_option_has_a_name_that_the_address_uses_itself() -> None:
    reserved = {ASKED, FIRST_UNIT, KIND, NOW, QUESTION, TOPIC}
    names = {option.name for command in QUESTIONS for option in command.query.options()}
    assert not names & reserved


@pytest.mark.parametrize("edition", EDITIONS, ids=lambda edition: edition.language)
def test_every_option_has_its_name_and_what_is_asked_its_sentence(edition: Edition) -> None:
    told = words(edition.language)
    names = {option.name for command in QUESTIONS for option in command.query.options()}
    assert {f"form-name-{name}" for name in names} == {
        key for key in told.entries("form") if key.startswith("form-name-")
    }
    for command in QUESTIONS:
        for gone in walk(trail(animal="corn snake", q=command.name), edition, "unknown")[:-1]:
            step = Form(edition, gone).step()
            assert step.heading.endswith((".", "?")) or step.hint, (command.name, gone)


@pytest.mark.parametrize("command", QUESTIONS, ids=lambda command: command.name)
@pytest.mark.parametrize("edition", EDITIONS, ids=lambda edition: edition.language)
def test_whoever_tells_what_is_asked_gets_the_answer_of_the_question(
    edition: Edition, command: Command
) -> None:
    name = command.name
    form = Form(edition, walk(trail(animal="bearded dragon", q=name), edition, "example")[-1])
    reply = form.step().reply
    assert reply is not None
    assert reply.command == name
    assert reply.status == "ok", (name, reply.answer)
    assert reply == ask(reply.meant or "", form.preferences)


@pytest.mark.parametrize("command", QUESTIONS, ids=lambda command: command.name)
def test_whoever_knows_nothing_is_told_what_the_animal_needs_or_what_to_find_out(
    command: Command,
) -> None:
    name = command.name
    reply = (
        Form(ENGLISH, walk(trail(animal="leopard gecko", q=name), ENGLISH, "unknown")[-1])
        .step()
        .reply
    )
    assert reply is not None
    assert reply.brief


def test_the_first_steps_are_the_kind_the_animal_and_what_it_is_about() -> None:
    step = Form(ENGLISH, trail()).step()
    kinds = {choice.label: choice for choice in step.choices}
    assert len(kinds) == 6
    assert all(choice.drawn for choice in step.choices)
    snakes = Form(ENGLISH, followed(kinds["Snakes"].link)).step()
    corn = next(choice for choice in snakes.choices if choice.label == "Corn snake")
    topics = Form(ENGLISH, followed(corn.link)).step()
    assert [choice.label for choice in topics.choices][1:3] == ["The whole box", "UV light"]
    asked = Form(ENGLISH, followed(topics.choices[2].link)).step()
    first = Form(ENGLISH, followed(asked.choices[0].link)).step()
    assert first.heading.startswith("How strong is the tube?")
    assert [choice.label for choice in first.choices][:2] == ["12 %", "6 %"]


def test_a_step_back_is_the_step_before() -> None:
    gone = walk(trail(animal="bearded dragon", q="distance"), ENGLISH, "example")
    for before, after in itertools.pairwise(gone):
        assert after.before == before
    assert trail().before is None


def test_a_value_is_changed_and_the_rest_stays() -> None:
    last = walk(trail(animal="bearded dragon", q="distance"), ENGLISH, "example")[-1]
    form = Form(ENGLISH, last)
    tube = next(one for one in form.known if one.name == "Tube")
    step = Form(ENGLISH, followed(tube.change)).step()
    assert step.heading.startswith("How strong is the tube?")
    six = next(choice for choice in step.choices if choice.label == "6 %")
    changed = followed(six.link)
    assert changed.get("tube") == "6%"
    assert changed.get("screen") == last.get("screen")
    assert Form(ENGLISH, changed).step().reply is not None


def test_more_that_is_told_leads_back_to_the_answer() -> None:
    last = walk(trail(animal="bearded dragon", q="distance"), ENGLISH, "example")[-1]
    step = Form(ENGLISH, last).step()
    length = next(way for way in step.more if way.label == "Length of the lamp")
    asked = Form(ENGLISH, followed(length.link)).step()
    assert asked.field == "length"
    told = followed(length.link).without(ASKED).put("length", "34in")
    reply = Form(ENGLISH, told).step().reply
    assert reply is not None
    assert "length:34in" in reply.asked


def test_a_danger_is_told_at_once_and_not_after_the_last_question() -> None:
    step = Form(
        ENGLISH, trail(animal="bearded dragon", q="check", tube="12%", basking="150F")
    ).step()
    assert step.reply is not None
    assert step.reply.dangers


@pytest.mark.parametrize(
    ("typed", "told"),
    [
        ({"q": "distance", "tube": "foo"}, "I read “foo”. I need the strength on the label"),
        ({"q": "night", "room": "warm"}, "I read “warm”. I need a temperature with its unit"),
    ],
)
def test_what_cannot_be_read_is_asked_again_with_what_would_do(
    typed: dict[str, str], told: str
) -> None:
    step = Form(ENGLISH, trail(animal="bearded dragon", **typed)).step()
    assert step.told.startswith(told)
    assert step.reply is None
    assert step.typed in typed.values()


def test_a_name_of_several_animals_is_asked_with_each_of_them() -> None:
    step = Form(ENGLISH, trail(animal="gecko")).step()
    assert {"Leopard gecko", "Crested gecko"} <= {choice.label for choice in step.choices}
    assert step.told.startswith("Which one is it")
    assert "perhaps" in Form(ENGLISH, trail(animal="pony")).step().told


def test_a_bare_number_has_the_unit_that_was_chosen() -> None:
    told = {"animal": "bearded dragon", "q": "uvi", **HELD, "distance": "40"}
    for first, unit in (("in", "40 in"), ("cm", "40 cm")):
        step = Form(ENGLISH, trail(**told, first=first)).step()
        assert step.reply is not None
        assert unit in step.reply.title


def test_an_animal_that_nobody_knows_is_asked_for_again_where_the_answer_is_its_own() -> None:
    step = Form(ENGLISH, trail(animal=UNKNOWN, q="needs")).step()
    assert step.reply is None
    assert step.told == "Which animal is it for?"


SHOWN = [
    {},
    {"group": "lizard"},
    {"animal": "bearded dragon"},
    {"animal": "bearded dragon", "topic": "heat"},
    {"animal": "bearded dragon", "q": "distance"},
    {"animal": "bearded dragon", "q": "uvi", "tube": "12%", "reflector": "polished"},
    {"animal": "bearded dragon", "q": "uvi", **HELD},
    {"animal": "bearded dragon", "q": "check", "now": "1", **HELD, "cool": "75F"},
    {"animal": UNKNOWN, "q": "plan"},
    {"animal": "gecko"},
    {"animal": "<script>alert(1)</script>", "q": '"><b>', "tube": "'><i>"},
]


@pytest.mark.parametrize("told", SHOWN)
@pytest.mark.parametrize("edition", EDITIONS, ids=lambda edition: edition.language)
def test_a_page_of_it_is_valid_light_and_its_links_lead_somewhere(
    edition: Edition, told: dict[str, str]
) -> None:
    html = steps_page(edition, trail(**told))
    assert len(html.encode()) < 200_000
    parsed = html5lib.HTMLParser(strict=True, namespaceHTMLElements=False).parse(html)
    levels = [int(e.tag[1]) for e in parsed.find("body/div/main").iter() if e.tag in HEADINGS]
    assert levels[0] == 1
    assert levels.count(1) == 1
    assert all(after <= before + 1 for before, after in itertools.pairwise(levels))
    ids = [e.attrib["id"] for e in parsed.iter() if "id" in e.attrib]
    assert len(set(ids)) == len(ids)
    for element in parsed.iter("a"):
        name = element.attrib["href"].partition("#")[0].partition("?")[0]
        plain = name.removeprefix("../")
        is_ours = plain.rpartition("/")[2] in ("steps.html", "try.html", "sheet.html")
        assert is_ours or name in ("", *SERVED) or plain in SERVED, name
    for element in parsed.find("body/div/main").iter():
        assert element.tag not in ("script", "b") or not (element.text or "").startswith("alert")
    if edition.language != FIRST and "script" not in told.get("animal", ""):
        bare = " ".join(shown_of(parsed.find("body/div/main")))
        assert not re.search(r"\b(?:which|your|with|what|the)\b", bare.replace("not sure", "")), (
            bare
        )
