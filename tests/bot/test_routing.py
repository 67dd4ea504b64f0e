"""Free questions find their question, with options that it can read."""

import string
import tomllib
from collections.abc import Mapping
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bot.answering import in_words
from bot.ask import ask
from bot.command import Routed
from bot.commands import command_named
from bot.dangers import listen
from bot.dangers.table import HazardKind, hazard
from bot.guide import pages
from bot.language.errors import NotUnderstoodError
from bot.language.quantities import Units
from bot.menu import MODULES
from bot.preferences import Context, Preferences
from bot.queries.question import Question
from bot.queries.setup import AskQuery
from bot.questions.record import record_of
from bot.reply import Reply
from bot.routes.filled import is_asked_freely
from bot.routes.routing import route
from bot.understood import Understood, understand
from calc.heat.sources_of_heat import find_heat_source
from tests.bot.refusing import copied, sentence
from tests.some import some

CONTEXT = Context(Units.IN)
ASKED = tomllib.loads((Path(__file__).parent / "free_questions.toml").read_text(encoding="utf-8"))
EVERY = [row for rows in ASKED.values() for row in rows]
OFF = ("Not a question for me", "Keine Frage für mich")


def meant(words: str, context: Context = CONTEXT) -> Routed | Reply:
    found = route(AskQuery(question=words), context)
    return found if isinstance(found, Routed) else in_words(found, context)


def routed(words: str) -> Routed:
    found = meant(words)
    assert isinstance(found, Routed), found
    return found


def tells_of_an_ill_animal(words: str) -> bool:
    return any(hazard(a.key).kind is HazardKind.VET and not a.asked for a in listen(words))


def outcome(row: Mapping[str, object], context: Context = CONTEXT) -> str:
    """Return right, offered, nothing or wrong for a question of the list."""
    wants = str(row["want"]).split("|")
    if tells_of_an_ill_animal(str(row["say"])):
        return "right" if "vet" in wants else "wrong"
    try:
        found = meant(str(row["say"]), context)
    except NotUnderstoodError:
        return "right" if "none" in wants else "nothing"
    if isinstance(found, Reply):
        if found.title in OFF:
            return "right" if "off" in wants else "wrong"
        names = {line.split()[0] for line in copied(found)}
        return "offered" if "none" in wants or names & set(wants) else "wrong"
    page = found.given.get("page", "") if found.command == "guide" else ""
    name = f"guide:{page}" if page else found.command
    wanted = row["given"]
    assert isinstance(wanted, dict)
    heard = all(same(option, text, found.given.get(option, "")) for option, text in wanted.items())
    return "right" if name in wants and (heard or page) else "wrong"


def same(option: str, one: str, other: str) -> bool:
    if option == "kind":
        return find_heat_source(one) is find_heat_source(other)
    return one.replace(" ", "") == other.replace(" ", "")


ROUTES = [
    (sample.say, name, sample.given)
    for name in MODULES
    if is_asked_freely(name)
    for sample in record_of(name).samples
]


def test_every_question_shows_how_it_is_asked_in_free_words() -> None:
    assert {name for _, name, _ in ROUTES} == set(filter(is_asked_freely, MODULES))


@pytest.mark.parametrize(("words", "command", "options"), ROUTES)
def test_a_free_question_finds_its_question(
    words: str, command: str, options: Mapping[str, str]
) -> None:
    found = routed(words)
    assert (found.command, dict(found.given)) == (command, dict(options))


def test_a_whole_set_up_is_checked() -> None:
    told = "my beardie has 12% in a shiny hood, no mesh, 16in to his back, basking 98, cool 75, ok?"
    found = routed(told)
    assert (found.command, dict(found.given)) == ("check", {"setup": told})


@pytest.mark.parametrize("words", ["hello", "how are you", "lol nice pic", "<@1> **hi**"])
def test_what_asks_nothing_is_asked_about_in_one_plain_sentence(words: str) -> None:
    with pytest.raises(NotUnderstoodError) as caught:
        meant(words)
    assert not set("*<>@") & set(sentence(caught.value))


@pytest.mark.parametrize("part", list(ASKED))
def test_what_newcomers_ask_finds_its_question_and_never_another(part: str) -> None:
    outcomes = {str(row["say"]): outcome(row) for row in ASKED[part]}
    wrong = {say: str(meant(say))[:200] for say, how in outcomes.items() if how == "wrong"}
    right = sum(how in ("right", "offered") for how in outcomes.values())
    assert wrong == {}
    assert right >= 0.95 * len(outcomes)


@pytest.mark.parametrize("say", [str(row["say"]) for row in EVERY])
def test_every_line_that_a_free_question_gets_to_copy_is_answered(say: str) -> None:
    reply = ask(f"ask {say}", Preferences())
    lines = copied(reply) if reply.status == "problem" else []
    assert reply.status == "ok" or lines or "for example: distance" in reply.answer
    for line in lines:
        told = ask(line, Preferences())
        # That no tube fits into the box is an answer too, with its table.
        assert told.status == "ok" or told.table is not None, line


def test_a_question_about_an_ill_animal_is_sent_to_a_vet_first() -> None:
    reply = ask("my beardie isn't eating, 12% tube no mesh 16in basking 98", Preferences())
    assert reply.answer.startswith("Call a reptile vet")
    assert reply.guide[0].slug == "when-to-call-a-vet"
    assert reply.command == "check"


@pytest.mark.parametrize(
    "words",
    [
        "my heat lamp is dead what now",
        "which tube fits a 4ft viv",
        "is a 2% too weak for a crestie",
        "is my uvb tube weak",
        "is my uvb tube weak after 14 months",
        "i'll get a 12% tube for my beardie how far away",
        "the temp fell to 60 at night is my corn snake ok",
        "does thin mesh block uvb",
        "does my 2 year old beardie need uvb",
        "can a used fish tank hold heat",
        "my beardie sits 14 inches from a 12% with no mesh and looks right",
    ],
)
def test_words_of_lamps_and_rooms_tell_of_no_ill_animal(words: str) -> None:
    assert not tells_of_an_ill_animal(words)


@pytest.mark.parametrize(
    "words",
    [
        "my gecko looks weak",
        "my beardie is dead tired and thin",
        "corn snake seems ill",
        "my skink is getting very thin",
        "my chameleon fell off his branch",
        "he has not opened his eyes",
    ],
)
def test_an_ill_animal_is_heard_in_few_words(words: str) -> None:
    assert "reptile vet" in ask(words, Preferences()).answer.partition(". ")[0]


def test_the_age_of_an_animal_is_not_that_of_its_tube() -> None:
    assert routed("does my 2 year old beardie need uvb").command == "needs"


def test_two_kinds_of_lamp_are_each_offered() -> None:
    reply = ask("what is better a heat mat or a ceramic", Preferences())
    assert copied(reply) == ["lamp kind:heat mat", "lamp kind:ceramic heat emitter"]


def test_a_tube_and_its_place_told_without_a_question_is_asked_how_strong_it_is_there() -> None:
    assert routed("beardie 12% 14 inches").command == "uvi"


def test_a_fixture_and_a_mesh_not_told_are_not_known_and_every_way_is_looked_at() -> None:
    words = "how high should i hang my 5.0 over mesh for a crested gecko"
    assert dict(routed(words).given) == {
        "animal": "crested gecko",
        "tube": "5.0",
        "reflector": "not sure",
        "screen": "mesh",
    }
    assert ask(words, Preferences()).status == "ok"


@pytest.mark.parametrize("at_the_end", [False, True])
def test_a_question_at_either_end_of_a_long_tale_is_found(at_the_end: bool) -> None:
    tale, question = "we like her very much and " * 60, "how many hours of light for a corn snake"
    found = routed(f"{tale}{question}" if at_the_end else f"{question}, {tale}")
    assert (found.command, dict(found.given)) == ("hours", {"animal": "corn snake"})


WORDS = sorted({word for row in EVERY for word in str(row["say"]).split()})
SENTENCES = st.one_of(
    st.text(min_size=1, max_size=200),
    st.text(alphabet=string.printable, min_size=1, max_size=200),
    st.lists(st.sampled_from(WORDS), min_size=1, max_size=14).map(" ".join),
)


@settings(max_examples=some(200), deadline=None)
@given(SENTENCES)
def test_any_text_is_routed_to_what_its_question_reads_or_is_asked_about(words: str) -> None:
    try:
        found = meant(words)
    except NotUnderstoodError:
        return
    if isinstance(found, Reply):
        assert found.guide
        return
    if found.command == "guide":
        assert found.given["page"] in {page.slug for page in pages()}
        return
    command = command_named(found.command)
    assert command is not None
    assert set(found.given) <= {option.name for option in command.query.options()}
    read = understand(Question("ask", {"question": words}), Preferences())
    # Read by it, or asked for what is missing, or told what is unreadable, a danger before that.
    assert (
        isinstance(read, Understood)
        or read.dangers
        or read.answer[:6] in ("I need", "I read", "I do n")
    )


@settings(max_examples=some(60), deadline=None)
@given(st.lists(st.sampled_from(WORDS), min_size=3, max_size=12).map(" ".join))
def test_every_line_offered_for_any_words_is_a_whole_question(words: str) -> None:
    reply = ask(f"ask {words}", Preferences())
    offers = reply.title in ("Which one do you mean?", "Do you mean this?")
    for line in copied(reply) if offers else ():
        # The figures are the asker's own, and may be beyond what can be answered.
        assert isinstance(understand(line, Preferences()), Understood), line
