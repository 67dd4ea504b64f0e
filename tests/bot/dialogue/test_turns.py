"""A conversation goes on: a figure, a name, a lid, a choice, another unit, another question."""

from collections.abc import Iterator

import pytest

from bot.ask import ask
from bot.dialogue import START, Dialogue, next_line, turn
from bot.fronts.console import converse
from bot.preferences import Preferences
from bot.queries.question import Question
from bot.reply import Reply

ANYONE = Preferences()


def turns(*lines: str) -> Iterator[tuple[str, Reply | None, Dialogue]]:
    """Yield what each line meant, its answer and the dialogue after it."""
    dialogue = START
    for line in lines:
        _, meant, _ = next_line(dialogue, line, ANYONE)
        reply, dialogue = turn(dialogue, line, ANYONE, ask)
        yield meant.line() if isinstance(meant, Question) else str(meant), reply, dialogue


def last(*lines: str) -> str:
    return list(turns(*lines))[-1][0]


FIRST = "how far for a 12% t5 for my bearded dragon?"


@pytest.mark.parametrize(
    ("lines", "meant"),
    [
        (("its on a mesh",), "distance tube:12% reflector:not sure screen:mesh"),
        (("its on a mesh", "and if i take the mesh off?"), "reflector:not sure screen:none"),
        (("polished reflector",), "reflector:polished"),
        (("12 inches",), "uvi tube:12% reflector:not sure screen:not sure"),
        (("what about 40cm",), "distance:40 cm"),
        (("its on a mesh", "blocks 30%"), "tube:12% reflector:not sure screen:blocks 30%"),
        (("its on a mesh", "it lets 60% through"), "tube:12% reflector:not sure screen:passes 60%"),
        (("actually 60%", "its on a mesh"), "distance tube:12% reflector:not sure screen:mesh"),
        (("actually its a 6% one",), "distance tube:6%"),
        (("what about a leopard gecko",), "animal:leopard gecko"),
        (("what about the 6",), "distance tube:6%"),
        (("same for a panther chameleon?",), "animal:panther chameleon"),
        (("its 45 now",), "animal:bearded dragon tube:12% distance:45"),
        (("and how many hours of light?",), "hours animal:bearded dragon"),
        (("room is 58F at night, ok?",), "night room:58 F animal:bearded dragon"),
    ],
)
def test_a_few_words_change_the_question_before(lines: tuple[str, ...], meant: str) -> None:
    assert meant in last(FIRST, *lines)


def test_what_was_told_goes_along_to_another_question_and_back() -> None:
    lines = ("needs corn snake", "mine is 35C", "no, 31C", "12% tube at 14 in, no mesh")
    meant = [line for line, _, _ in turns(*lines)]
    assert meant[1].startswith("temps")
    assert "basking:35" in meant[1]
    assert "basking:31 C" in meant[2]
    assert "35" not in meant[2]
    assert meant[3].startswith("uvi")
    assert "animal:corn snake" in meant[3]


def test_a_unit_wished_for_stays_for_the_rest_of_the_conversation() -> None:
    first, wished, later = (r for _, r, _ in turns(FIRST, "in cm please", "its on a mesh"))
    assert first is not None
    assert wished is not None
    assert later is not None
    assert "20 in (51 cm)" in first.answer
    assert "51 cm (20 in)" in wished.answer
    assert "38 cm (15 in)" in later.answer


def test_an_offer_is_taken_by_its_number_and_thanks_are_no_question() -> None:
    (_, offered, _), (meant, taken, _), (_, nothing, _) = turns(
        "is led or halogen better", "the second one", "thanks!"
    )
    assert offered is not None
    assert taken is not None
    assert meant == offered.offers[1].line()
    assert taken.command == "lamp"
    assert nothing is None


def test_a_danger_is_answered_as_it_is_and_the_conversation_goes_on() -> None:
    (_, _, _), (meant, alarmed, _), (later, _, _) = turns(
        FIRST, "the plug is melting!", "its on a mesh"
    )
    assert meant == "the plug is melting!"
    assert alarmed is not None
    assert alarmed.dangers
    assert later.startswith("distance ")
    assert "tube:12%" in later


def test_the_console_holds_one_conversation_and_forgets_it_at_new() -> None:
    written: list[str] = []
    lines = [f"{FIRST}\n", "its on a mesh\n", "thanks\n", "new\n", "12 inches\n"]
    converse(iter(lines), lambda text: written.append(text), ANYONE)
    assert "15 in (38 cm)" in written[1]
    assert written[2] == "You are welcome.\n\n"
    assert "Done." in written[3]
    assert "UV index" not in written[4]


def test_a_bare_number_is_a_temperature_where_temperatures_are_spoken_of() -> None:
    meant = [line for line, _, _ in turns("needs royal python", "mine reads 84", "78 cool side")]
    assert meant[1] == "temps animal:royal python basking:84"
    assert "cool:78" in meant[2]


@pytest.mark.parametrize(
    ("lines", "meant"),
    [
        (("does my corn snake need heat at night", "65"), "night animal:corn snake room:65 F"),
        (("night room:65F animal:corn snake", "and at 20C"), "room:20 C"),
        (("uvi of a 12% at 30 cm", "and at 40", "for a beardie"), "distance:40 cm"),
        (("uvi tube:12% distance:30cm animal:bearded dragon", "is that enough?"), "uvi tube:12%"),
        (("when should i change my uvb", "its a t8", "1 year old"), "age:1 year"),
        (("how many hours of light", "hermanns tortoise", "and in winter"), "latitude:home"),
        (
            ("temps basking:95F warm:88F animal:corn snake", "cool side 24C"),
            "warm:88F animal:corn snake cool:24 C",
        ),
        (("temps basking:82F animal:corn snake", "how do i get it hotter"), "basking surface:82F"),
        (("beardie, basking 100, 12% tube at 15 in", "with a reflector"), "reflector:polished"),
        (("is 12 inches ok", "bearded dragon with a 12% t5"), "uvi reflector:not sure"),
        (("my gecko is cold what now", "leopard"), "needs animal:leopard gecko"),
        (("night room:65F animal:corn snake", "new topic, 12% for a beardie"), "12% for a beardie"),
    ],
)
def test_what_stands_before_makes_a_few_words_whole(lines: tuple[str, ...], meant: str) -> None:
    assert meant in last(*lines)


def test_one_thing_is_asked_at_a_time_and_what_cannot_wait_stays() -> None:
    written: list[str] = []
    lines = ["what tube for a crested gecko", "10 in", "sorry i meant 10 cm"]
    converse(iter(lines), written.append, ANYONE)
    assert written[0].startswith("Choose T5 HO, 6 % or weaker.")
    assert written[1].startswith("What is between tube and animal")
    assert "at least 8 in (20 cm)" in written[2]


def test_why_opens_the_reasons_of_the_answer_before() -> None:
    written: list[str] = []
    converse(iter(["night room:65F animal:corn snake", "but why?"]), written.append, ANYONE)
    assert "usually fine" in written[1]
    assert "usually fine" not in written[0]


def test_what_is_known_so_far_is_told_at_a_word() -> None:
    written: list[str] = []
    converse(iter(["known", FIRST, "known"]), written.append, ANYONE)
    assert "nothing of your set-up" in written[0]
    assert "animal: bearded dragon; tube: 12%" in written[2]
    assert "distance tube:12%" in written[2]


def test_a_line_that_tells_no_language_is_answered_in_the_one_spoken_before() -> None:
    lines = ("welche Röhre für ein Jemenchamäleon", "25 cm", "kein Gitter", "T5")
    told = list(turns(*lines, "and how warm should it be"))
    assert [dialogue.spoken for *_, dialogue in told] == [*["de"] * 4, "en"]
    *_, reply, dialogue = told[1]
    assert reply is not None
    assert "Röhre" in "".join(said.text for said in reply.brief)
    assert Dialogue.unpacked(dialogue.packed()) == dialogue


def test_an_option_that_cannot_be_read_is_told_and_not_filled_with_what_was_told_before() -> None:
    first = "distance tube:12% reflector:polished screen:none animal:bearded dragon"
    reply = list(turns(first, "distance tube:pony"))[-1][1]
    assert reply is not None
    assert reply.status == "problem"
    assert "pony" in reply.answer
