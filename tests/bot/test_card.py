"""The table to pin: the same figures as asking one by one."""

import pytest

from bot.ask import ask
from bot.drawing import Card, Tone
from bot.preferences import Preferences
from bot.reply import Reply

CARD = "card animal:bearded dragon screens:none; 45%; 18x16 0.011in"
SET_UPS = [
    ("12%", "polished", "none", "distance_12_polished_bare"),
    ("12%", "plain", "45%", "distance_12_plain_blocks_45"),
    ("6%", "polished", "18x16 0.011in", "distance_6_polished_mesh_66_open"),
]


@pytest.fixture
def card(anyone: Preferences) -> Reply:
    return ask(CARD, anyone)


@pytest.mark.parametrize(("tube", "fixture", "screen", "name"), SET_UPS)
def test_a_cell_is_what_the_single_question_answers(
    tube: str, fixture: str, screen: str, name: str, card: Reply, anyone: Preferences
) -> None:
    line = f"distance tube:{tube} reflector:{fixture} screen:{screen} animal:bearded dragon"
    single = ask(line, anyone).values[0]
    cell = next(v for v in card.values if v.name == name)
    assert (cell.low, cell.best, cell.high) == (single.low, single.best, single.high)


def test_what_is_refused_singly_is_refused_in_the_table(card: Reply, anyone: Preferences) -> None:
    assert card.table is not None
    cell = card.table.rows[7][2]
    assert cell == "too close: do not use"
    line = "distance tube:6% reflector:plain screen:45% animal:bearded dragon"
    assert ask(line, anyone).status == "problem"
    assert "distance_6_plain_blocks_45" not in {v.name for v in card.values}


def test_the_picture_says_what_the_table_says(card: Reply) -> None:
    assert card.table is not None
    assert card.picture is not None
    drawing = card.picture.drawing
    assert isinstance(drawing, Card)
    for row, shown in zip(card.table.rows, drawing.rows, strict=True):
        for told, cell in zip(row[1:], shown.cells, strict=True):
            bad = cell.tone is Tone.BAD
            drawn = f"{cell.first}{': ' if bad else ' ('}{cell.second}{'' if bad else ')'}"
            assert told == drawn.replace("\u00a0", " ")


def test_the_asker_chooses_tubes_and_screens(anyone: Preferences) -> None:
    reply = ask("card uvi:3-5 tubes:14%, 12% and 6% screens:none", anyone)
    assert reply.table is not None
    assert len(reply.table.rows) == 6
    assert len(reply.table.columns) == 2


@pytest.mark.parametrize("wrong", ["screens:none; banana", "screens:;", "tubes:1%;2%;3%;4%;5%"])
def test_a_list_that_cannot_be_read_is_refused(wrong: str, anyone: Preferences) -> None:
    reply = ask(f"card animal:bearded dragon {wrong}", anyone)
    assert reply.status == "problem"
    assert "for example" in reply.answer


def test_where_nothing_fits_the_answer_says_so(anyone: Preferences) -> None:
    reply = ask("card uvi:9.5-10.5 tubes:2% screens:60%", anyone)
    assert reply.status == "ok"
    assert "none of these" in reply.answer
    assert [entry.name for entry in reply.values] == ["length"]


def test_a_pale_animal_gets_a_card_of_its_own() -> None:
    kind, pale = (
        ask(f"card animal:bearded dragon{state}", Preferences()) for state in ("", " state:pale")
    )
    assert "UV index 3 to 5" in kind.answer
    assert "UV index 1.5 to 2.5" in pale.answer
    assert any("half the UV" in line.text for line in pale.brief)
