"""A question changed in a form: pre-filled, sent, refused, opened again."""

from bot.commands import COMMANDS
from tests.discord.answers import FORM, forget_the_question
from tests.discord.app import SELECT
from tests.discord.cast import FERN, direct
from tests.discord.conftest import Maker
from tests.discord.world import World

TUBE = {"tube": "12%", "reflector": "polished", "screen": "none", "animal": "bearded dragon"}


async def test_a_wrong_field_is_corrected_in_a_form_that_kept_the_rest(
    world: World, bot: Maker
) -> None:
    async with world.running(bot()):
        wrong = await world.slash("distance", {**TUBE, "tube": "strong"})
        form = await world.press(wrong, "Change")
        assert form.fields["tube"]["value"] == "strong"
        assert form.fields["animal"]["value"] == "bearded dragon"
        right = await world.submit(form, {"tube": "12%"})
    assert right.post is wrong.post
    assert "Hang it" in right.text


async def test_a_field_wrong_again_opens_pre_filled_again(world: World, bot: Maker) -> None:
    async with world.running(bot()):
        wrong = await world.slash("distance", {**TUBE, "tube": "strong"})
        form = await world.press(wrong, "Change")
        still = await world.submit(form, {"tube": "stronger", "screen": "mesh of sorts"})
        again = await world.press(still, "Change")
    assert "I read" in still.text
    assert again.fields["tube"]["value"] == "stronger"
    assert again.fields["screen"]["value"] == "mesh of sorts"


async def test_what_the_form_has_no_room_for_is_kept(world: World, bot: Maker) -> None:
    given = {**TUBE, "length": "33.5 in", "age": "11 months", "distance": "14 in"}
    async with world.running(bot()):
        answer = await world.slash("uvi", given)
        form = await world.press(answer, "Change")
        changed = await world.submit(form, {"distance": "12 in"})
    assert len(form.fields) == 5
    assert "age:11 months" in changed.text
    assert "distance:12 in" in changed.text


async def test_a_form_emptied_of_an_option_forgets_it(world: World, bot: Maker) -> None:
    async with world.running(bot()):
        answer = await world.slash("distance", {**TUBE, "uvi": "2-3"})
        form = await world.press(answer, "Change")
        changed = await world.submit(form, {"uvi": ""})
    assert "uvi:" not in changed.text


async def test_a_tube_is_picked_and_an_odd_one_stays_as_it_was_typed(
    world: World, bot: Maker
) -> None:
    async with world.running(bot()):
        empty = await world.slash("distance", {})
        answer = await world.slash("distance", {**TUBE, "tube": "T8 5.0"})
        typed = await world.press(answer, "Change")
    assert "7%" in [option["value"] for option in empty.fields["tube"]["options"]]
    assert typed.fields["tube"]["value"] == "T8 5.0"


async def test_a_form_opened_before_a_restart_is_answered_after_it(
    world: World, bot: Maker
) -> None:
    async with world.running(bot()):
        answer = await world.slash("distance", TUBE, where=direct(FERN))
        form = await world.press(answer, "Change")
    async with world.running(bot()):
        changed = await world.submit(form, {"screen": "blocks 45%"})
    assert changed.post is answer.post
    assert "screen:blocks 45%" in changed.text


async def test_a_form_whose_question_is_lost_says_so(world: World, bot: Maker) -> None:
    async with world.running(bot()):
        answer = await world.slash("distance", TUBE)
        form = await world.press(answer, "Change")
        form.modal["custom_id"] = "f:distance.0000|12%"
        forget_the_question(answer.post)
        lost = await world.submit(form, {})
    assert "Ask it again" in lost.text


async def test_a_form_of_another_kind_is_left_alone(world: World, bot: Maker) -> None:
    async with world.running(bot()):
        answer = await world.slash("distance", TUBE)
        form = await world.press(answer, "Change")
        form.modal["custom_id"] = "somebody-elses"
        exchange = await world.begin_form(form)
        await world.slash("help")
    assert exchange.callback is None


async def test_what_was_heard_in_free_words_fills_the_form_of_the_question_they_meant(
    world: World, bot: Maker
) -> None:
    async with world.running(bot()):
        asked = await world.slash("ask", {"question": "which uvb for my ball python in a 4ft viv"})
        assert "6 % or weaker" in asked.text
        form = await world.press(asked, "Fill in")
        whole = await world.submit(form, {"distance": "14 in", "screen": "none"})
    assert form.fields["animal"]["value"] == "royal python"
    assert form.fields["enclosure"]["value"] == "4 ft"
    assert {"distance", "screen"} <= set(form.fields)
    assert "tube distance:14 in screen:none animal:royal python enclosure:4 ft" in whole.text


async def test_the_form_has_room_for_the_animal_where_only_that_was_missing(
    world: World, bot: Maker
) -> None:
    async with world.running(bot()):
        asked = await world.slash("ask", {"question": "my basking is 104f, too hot?"})
        assert "which animal it is" in asked.text
        form = await world.press(asked, "Fill in")
        whole = await world.submit(form, {"animal": "bearded dragon"})
    assert form.fields["basking"]["value"] == "104 F"
    assert "temps basking:104 F animal:bearded dragon" in whole.text


async def test_the_form_of_words_that_tell_a_hazard_keeps_the_words(
    world: World, bot: Maker
) -> None:
    async with world.running(bot()):
        asked = await world.slash("ask", {"question": "the plug is melting, is it too hot?"})
        assert "plug" in asked.text
        form = await world.press(asked, "Change")
        told = {"question": "my basking is 118f for my bearded dragon, too hot?"}
        whole = await world.submit(form, told)
    assert form.fields["question"]["value"] == "the plug is melting, is it too hot?"
    assert "Make it cooler today" in whole.text


async def test_free_words_that_may_mean_several_things_come_back_in_their_form(
    world: World, bot: Maker
) -> None:
    async with world.running(bot()):
        asked = await world.slash("ask", {"question": "beardie help please"})
        form = await world.press(asked, "Change")
        whole = await world.submit(form, {"question": "what does a beardie need"})
    assert form.fields["question"]["value"] == "beardie help please"
    assert "A bearded dragon needs UV index" in whole.text


async def test_a_question_sent_with_nothing_opens_a_form_whose_choices_are_picked(
    world: World, bot: Maker
) -> None:
    async with world.running(bot()):
        form = await world.slash("surface")
        assert form.kind == FORM
        assert form.fields["reading"]["required"]
        plain = await world.slash("guide")
    assert plain.text


async def test_every_question_that_cannot_be_answered_with_nothing_opens_its_form(
    world: World, bot: Maker
) -> None:
    lacking = [command.name for command in COMMANDS if command.query.lacking({})]
    async with world.running(bot()):
        forms = [await world.slash(name) for name in lacking]
        picked = [f for form in forms for f in form.fields.values() if f["type"] == SELECT]
    assert {form.kind for form in forms} == {FORM}
    assert picked
    assert all(1 <= len(field["options"]) <= 25 for field in picked)
