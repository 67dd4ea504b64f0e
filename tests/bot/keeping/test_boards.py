"""Boards of a group over the door: previewed, wanted, listed with who changed them, taken down."""

import pytest

from bot.database.store import Store
from bot.fronts.discord.board_message import board_text
from bot.language.units import Units
from bot.preferences import Context, Language
from bot.saved.boards import Topic
from bot.serving.boards import BoardShown, board_shown
from tests.bot.keeping.conftest import Ask
from tests.bot.keeping.people import CHANNEL

OTHER = 4242


@pytest.mark.parametrize("topic", ["distances", "temperatures", "first day", "guide"])
async def test_every_board_can_be_looked_at_before_it_is_posted(ok: Ask, topic: str) -> None:
    reply = await ok(f"board preview topic:{topic} animal:bearded dragon")
    assert reply.title
    assert reply.steps[-1].endswith(
        f"board post topic:{topic.replace(' ', '-')} animal:bearded dragon"
    )
    line = f"board post topic:{topic} animal:bearded dragon"
    assert "posted and pinned" in (await ok(line)).answer
    assert "changes in place" in (await ok(line)).answer


async def test_a_board_about_an_animal_needs_one_or_the_groups(ok: Ask, ask: Ask) -> None:
    assert "animal" in (await ask("board post topic:distances")).answer
    await ok("server set animal:bearded dragon")
    await ok("board post topic:distances")
    assert "channel" in (await ask("board post topic:guide", channel=None)).answer
    assert (await ok("board list")).answer == "1 board."


async def test_the_groups_lamps_are_on_its_board_of_distances(ok: Ask) -> None:
    line = "board preview topic:distances animal:bearded dragon"
    before = await ok(line)
    await ok("server lamp name:Hood by the door readings:4.2 at 12 in, 2.9 at 15 in length:34in")
    after = await ok(line)
    assert after.table is not None
    assert "Hood by the door, 34 in (86 cm)" in [cells[0] for cells in after.table.rows]
    marks = [BoardShown(reply, ()).fingerprint for reply in (before, after, await ok(line))]
    assert marks[0] != marks[1] == marks[2]


async def test_boards_are_listed_and_taken_down_in_their_channel(ok: Ask, ask: Ask) -> None:
    await ok("board post topic:guide")
    table = (await ok("board list")).table
    assert table is not None
    (row,) = table.rows
    assert row[:4] == ("the guide", "none", str(CHANNEL), "waiting to be posted")
    assert "no board of that topic" in (await ask("board remove topic:guide", channel=7)).answer
    await ok("board remove topic:guide")
    table = (await ok("board list")).table
    assert table is not None
    assert table.rows[0][3] == "is being taken down"


async def test_a_board_tells_who_changed_it_last_from_what_to_what_and_forgets_a_name(
    ok: Ask, store: Store
) -> None:
    await ok("board post topic:temperatures animal:bearded dragon")
    await ok("board post topic:temperatures animal:bearded dragon; leopard gecko", keeper=OTHER)
    table = (await ok("board list")).table
    assert table is not None
    (row,) = table.rows
    assert row[1] == "bearded dragon and leopard gecko"
    assert f"by {OTHER}: from bearded dragon to bearded dragon and leopard gecko" in row[4]
    await store.forgetting.keeper(OTHER)
    table = (await ok("board list")).table
    assert table is not None
    assert "by forgotten: from bearded dragon" in table.rows[0][4]
    assert str(OTHER) not in str(table)


async def test_a_board_tells_of_each_of_several_animals_and_of_at_most_four(
    ok: Ask, ask: Ask
) -> None:
    both = "animal:bearded dragon; leopard gecko"
    needs = await ok(f"board preview topic:temperatures {both}")
    assert [row.label for row in needs.rows] == ["Bearded dragon", "Leopard gecko"]
    assert all("Cool-end air: " in row.text for row in needs.rows)
    assert "0.5 to 1.4 *" in needs.rows[1].text
    far = await ok(f"board preview topic:distances {both} and bearded dragon")
    assert [row.label for row in far.rows] == [
        "Bearded dragon, UV index 3 to 5",
        "Leopard gecko, UV index 0.5 to 1.4",
    ]
    assert all(len(row.text.splitlines()) == 2 for row in far.rows)
    animals = "bearded dragon; leopard gecko; corn snake; crested gecko; boa"
    refused = await ask(f"board preview topic:temperatures animal:{animals}")
    assert "one to 4 animals" in refused.answer
    assert (await ask("board post topic:distances animal:boa; unicorn")).status == "problem"


@pytest.mark.parametrize("language", ["en", "de"])
def test_a_board_about_four_animals_stands_in_one_message_with_four_pictures(
    language: Language,
) -> None:
    """Pinned: nothing of the temperatures is left out, of the distances one line at most."""
    animals = ["bearded-dragon", "leopard-gecko", "crested-gecko", "hermanns-tortoise"]
    for topic in (Topic.TEMPERATURES, Topic.DISTANCES):
        shown = board_shown(topic, animals, Context(Units.IN, language=language))
        text = board_text(shown)
        assert len(shown.pictures) == 4
        assert len(text) <= 2000
        lines = [line for row in shown.reply.rows for line in row.text.splitlines()]
        missing = [line for line in lines if line.replace("*", "\\*") not in text]
        assert len(missing) <= (topic is Topic.DISTANCES)


async def test_a_board_is_told_in_the_language_of_its_group(ok: Ask) -> None:
    context = Context(Units.CM, language="de")
    shown = board_shown(Topic.TEMPERATURES, ["bearded-dragon"], context)
    told = shown.reply
    assert told.language == "de"
    assert told.title == "Was eine Bartagame braucht"
    english = board_shown(Topic.TEMPERATURES, ["bearded-dragon"], Context(Units.CM))
    assert english.reply.title == "What a bearded dragon needs"
    assert shown.fingerprint != english.fingerprint
    await ok("server set language:de animal:bearded dragon")
    assert (await ok("board preview topic:temperatures")).title == told.title
