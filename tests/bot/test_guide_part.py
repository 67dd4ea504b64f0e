"""A page opened at the part that answers, and free words that find it."""

import re

import pytest

from bot import guide
from bot.ask import ask
from bot.language.quantities import Units
from bot.preferences import LANGUAGES, Language, Preferences
from bot.queries.question import Question
from bot.reply import Role
from tests.bot.saying.test_briefs import MOST_WORDS, UNIT


def test_a_part_comes_first_and_the_rest_of_the_page_after_it(anyone: Preferences) -> None:
    whole = ask("guide page:screens", anyone)
    reply = ask(Question("guide", {"page": "screens", "part": "glass and plastic"}), anyone)
    assert reply.title == "What a screen does: Glass and plastic"
    assert reply.answer.startswith("Do not put glass")
    told = [(row.label, row.text) for row in whole.rows]
    rest = [(row.label, row.text) for row in reply.rows]
    others = [row for row in told if row[0] != "Glass and plastic"]
    # A part that is told in more than one piece stands whole before the others.
    assert rest == [*(row for row in told if row not in others), *others]
    assert [line.role for line in reply.brief][:2] == [Role.HEAD, Role.RANGE]
    assert all(line.text in rest[0][1] for line in reply.brief[:2])


@pytest.mark.parametrize("page", guide.pages(), ids=lambda page: page.slug)
def test_every_part_of_every_page_can_be_opened(page: guide.Page, anyone: Preferences) -> None:
    for heading in dict.fromkeys(heading for heading, _ in guide.sections(page)):
        reply = ask(Question("guide", {"page": page.slug, "part": heading}), anyone)
        assert reply.status == "ok"
        assert reply.title.endswith(heading)


@pytest.mark.parametrize("page", guide.pages(), ids=lambda page: page.slug)
def test_no_page_is_taken_for_a_danger_by_its_own_name(
    page: guide.Page, anyone: Preferences
) -> None:
    for name in (page.slug, page.title, page.title.upper()):
        reply = ask(Question("guide", {"page": name}), anyone)
        assert (reply.title, reply.dangers) == (page.title, ())


@pytest.mark.parametrize(
    ("command", "given"),
    [
        ("guide", {"page": "uv-and-your-eyes", "part": "i got a shock from the lamp"}),
        ("guide", {"page": "the plug is melting"}),
        ("ask", {"question": "Sun on the box"}),
        ("ask", {"question": "i get a shock when i touch the lamp"}),
    ],
)
def test_own_words_are_listened_to_also_where_a_page_is_asked_for(
    command: str, given: dict[str, str], anyone: Preferences
) -> None:
    assert ask(Question(command, given), anyone).dangers


def test_a_part_that_is_not_there_is_asked_for_by_the_headings(anyone: Preferences) -> None:
    reply = ask(Question("guide", {"page": "screens", "part": "qqqq"}), anyone)
    assert reply.status == "problem"
    assert "Glass and plastic" in reply.answer


@pytest.mark.parametrize(
    ("words", "part"),
    [
        ("does uvb go through glass", "Does glass let UV through?"),
        ("does the tube go inside or on top of the mesh", "Inside or on top?"),
        ("can i dim a basking bulb", "Can a heat lamp be dimmed?"),
        ("is mesh bad for uvb", ""),
    ],
)
def test_free_words_open_the_page_at_the_part_they_are_about(
    words: str, part: str, anyone: Preferences
) -> None:
    reply = ask(f"ask {words}", anyone)
    assert reply.command == "guide"
    assert reply.title.partition(": ")[2] == part


@pytest.mark.parametrize("language", ["en", "de"])
def test_page_and_answer_tell_one_distance_between_lamp_and_tube(language: Language) -> None:
    asked = Preferences(language=language, units=Units.IN)
    page = ask("guide arranging-the-lamps", asked).model_dump_json()
    box = "animal:bearded dragon enclosure:48x24x24in lid:full mesh room:70F"
    assert "{{" not in page
    for told in (page, ask(f"arrange {box}", asked).model_dump_json()):
        assert "6 in (15 cm)" in told.replace("\u00a0", " ")


@pytest.mark.parametrize("language", LANGUAGES)
def test_a_part_that_answers_says_it_in_twelve_words(language: Language) -> None:
    for page in guide.pages(language):
        for answers in page.answers:
            told = page.body.partition(f"## {answers.part}\n")[2].replace("*", "").strip()
            first = re.split(r"[.!?:](?: |$)|\n", told)[0]
            assert len(UNIT.sub("", first).split()) <= MOST_WORDS, (page.slug, answers.part, first)
