"""A helper hears several messages of one writer, asks on, and the reply updates itself."""

import pytest

from bot.fronts.discord import helping
from tests.discord.answers import Answer, post_buttons, post_rows, post_text
from tests.discord.cast import FERN, MOSS, PEBBLE
from tests.discord.conftest import Maker
from tests.discord.limits import Json
from tests.discord.platform import Post
from tests.discord.world import World

ANSWER, ADD = "Answer this", "Add to the last one"
SET_UP = "beardie, 12% tube 16in to his back, basking 98F, cool side 78F"
LIST = 3


def lists(post: Post) -> list[Json]:
    return [part for row in post_rows(post) for part in row if part["type"] == LIST]


async def asked_on(world: World, answer: Answer) -> Post:
    pressed = await world.press(answer, "Ask what is missing")
    await world.platform.until(lambda: pressed.further, "the question to the writer")
    (public,) = pressed.further
    return public


async def test_a_set_up_is_shown_by_its_options_and_no_word_of_it_is_kept(
    world: World, bot: Maker
) -> None:
    said = f"hi everyone, my name is Moss and I worry a lot! {SET_UP}"
    async with world.running(bot()):
        answer = await world.menu(ANSWER, world.says(MOSS, said))
    assert answer.ephemeral
    heard = "animal:bearded dragon tube:12% distance:16 in basking:98 F cool:78 F"
    assert f"/check {heard}" in answer.text
    assert "worry" not in answer.text
    assert "Correct" in answer.buttons


async def test_the_next_message_of_the_same_writer_is_added(world: World, bot: Maker) -> None:
    async with world.running(bot()):
        await world.menu(ANSWER, world.says(MOSS, SET_UP))
        more = world.says(MOSS, "oh and a polished reflector, no mesh. cool side is 80F now")
        answer = await world.menu(ADD, more)
    assert "reflector:polished screen:none distance:16 in" in answer.text
    assert "cool:80 F" in answer.text
    assert "Reply in the channel" in answer.buttons


async def test_a_question_is_made_whole_by_the_next_message(world: World, bot: Maker) -> None:
    async with world.running(bot()):
        first = await world.menu(ANSWER, world.says(MOSS, "how far should my 12% tube be?"))
        assert "animal:" not in first.text
        answer = await world.menu(ADD, world.says(MOSS, "its for a bearded dragon, no mesh"))
    assert "/distance tube:12% reflector:not sure screen:none animal:bearded dragon" in answer.text


async def test_only_the_same_writer_and_the_last_quarter_of_an_hour_are_added_to(
    world: World, bot: Maker
) -> None:
    none = "There is no message of this writer from the last quarter of an hour."
    now = [0.0]
    async with world.running(client := bot()):
        client.helpers = helping.Helpers(lambda: now[0])
        await world.menu(ANSWER, world.says(MOSS, SET_UP))
        other = await world.menu(ADD, world.says(PEBBLE, "no mesh"))
        now[0] = 901.0
        late = await world.menu(ADD, world.says(MOSS, "no mesh"))
    assert other.text.startswith(none)
    assert late.text.startswith(none)


async def test_what_tells_nothing_is_not_added(world: World, bot: Maker) -> None:
    async with world.running(bot()):
        await world.menu(ANSWER, world.says(MOSS, SET_UP))
        answer = await world.menu(ADD, world.says(MOSS, "lol same"))
    assert answer.text == "I found nothing about light or heat to add in that message."


async def test_a_danger_in_a_further_message_is_said_first(world: World, bot: Maker) -> None:
    async with world.running(bot()):
        await world.menu(ANSWER, world.says(MOSS, SET_UP))
        more = world.says(MOSS, "the plug of the heat lamp is melting btw")
        answer = await world.menu(ADD, more)
    assert answer.text.split("\n")[0].startswith("**")
    assert "/ask" in answer.text
    assert "Ask what is missing" not in answer.buttons


@pytest.mark.slow
async def test_a_heard_fact_is_corrected_in_a_form_before_it_is_posted(
    world: World, bot: Maker
) -> None:
    async with world.running(bot()):
        answer = await world.menu(ANSWER, world.says(MOSS, SET_UP))
        form = await world.press(answer, "Correct")
        assert form.fields["distance"]["value"] == "16 in"
        right = await world.submit(form, {"distance": "14 in"})
        pressed = await world.press(right, "Reply in the channel")
        await world.platform.until(lambda: pressed.further, "the public reply")
    assert "distance:14 in" in post_text(pressed.further[0])


async def test_the_writer_picks_what_is_missing_and_the_reply_updates_itself(
    world: World, bot: Maker
) -> None:
    async with world.running(bot()):
        answer = await world.menu(ANSWER, world.says(MOSS, SET_UP))
        public = await asked_on(world, answer)
        assert public.pings == {f"@{MOSS.id}"}
        assert post_text(public).startswith(f"<@{MOSS.id}>, <@{FERN.id}> would like to help you")
        assert "Ask what is missing" not in answer.buttons
        one = await world.pick(public, "polished", user=MOSS)
        assert one.post is public
        assert lists(public)
        assert "reflector:polished" in post_text(public)
        two = await world.pick(public, "none", user=MOSS)
    assert two.post is public
    assert not lists(public)
    assert "reflector:polished screen:none" in post_text(public)
    assert post_text(public).startswith(f"<@{MOSS.id}>, <@{FERN.id}> asked this for you:")


async def test_who_reads_along_picks_for_nobody_else(world: World, bot: Maker) -> None:
    async with world.running(bot()):
        answer = await world.menu(ANSWER, world.says(MOSS, SET_UP))
        public = await asked_on(world, answer)
        before = post_text(public)
        theirs = await world.pick(public, "polished", user=PEBBLE)
    assert theirs.ephemeral
    assert post_text(public) == before


async def test_a_question_without_its_animal_is_asked_on_and_becomes_the_answer(
    world: World, bot: Maker
) -> None:
    async with world.running(bot()):
        answer = await world.menu(ANSWER, world.says(MOSS, "is 104F too hot for the basking spot?"))
        public = await asked_on(world, answer)
        assert len(lists(public)) >= 3
        await world.pick(public, "bearded dragon", user=MOSS)
    assert "temps basking:104 F animal:bearded dragon" in post_text(public)
    assert not lists(public)
    assert "Fill in" not in post_buttons(public)


async def test_a_figure_is_filled_in_by_the_writer_and_the_reply_updates_itself(
    world: World, bot: Maker
) -> None:
    async with world.running(bot()):
        said = world.says(MOSS, "which watts for my bearded dragon, my room is 70F")
        answer = await world.menu(ANSWER, said)
        public = await asked_on(world, answer)
        assert not lists(public)
        form = await world.press(public, "Fill in", user=MOSS)
        await world.submit(form, {"distance": "11 in"}, user=MOSS)
    assert "distance:11 in" in post_text(public)
    assert post_text(public).startswith(f"<@{MOSS.id}>, <@{FERN.id}> asked this for you:")
    assert "Fill in" not in post_buttons(public)
