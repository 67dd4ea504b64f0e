"""A plan in a form: five fields at most, the wrong one among them, pre-filled again."""

from tests.discord.conftest import Maker
from tests.discord.world import World

BOX = {"enclosure": "48x24x24in", "lid": "full mesh", "animal": "bearded dragon"}
FULL = {**BOX, "material": "glass", "room": "70F", "night": "62F", "tube": "12%"}


async def test_a_plan_answers_with_a_shopping_list(world: World, bot: Maker) -> None:
    async with world.running(bot()):
        answer = await world.slash("plan", BOX)
        assert "Tube to back" in answer.text
        numbers = await world.press(answer, "Numbers")
        assert "UV fixture" in numbers.text
        steps = await world.press(numbers, "Steps")
    assert "First week" in steps.text


async def test_a_size_without_a_unit_is_mended_in_a_form_that_kept_the_rest(
    world: World, bot: Maker
) -> None:
    async with world.running(bot()):
        wrong = await world.slash("plan", {**BOX, "enclosure": "60x30x30"})
        form = await world.press(wrong, "Change")
        assert len(form.fields) == 5
        assert form.fields["enclosure"]["value"] == "60x30x30"
        assert form.fields["animal"]["value"] == "bearded dragon"
        right = await world.submit(form, {"enclosure": "48x24x24in"})
    assert right.post is wrong.post
    assert "Tube to back" in right.text


async def test_a_field_that_was_wrong_is_in_the_form_even_where_much_was_given(
    world: World, bot: Maker
) -> None:
    async with world.running(bot()):
        wrong = await world.slash("plan", {**FULL, "watts": "warm"})
        form = await world.press(wrong, "Change")
        assert len(form.fields) == 5
        assert form.fields["watts"]["value"] == "warm"
        still = await world.submit(form, {"watts": "hot"})
        again = await world.press(still, "Change")
        assert again.fields["watts"]["value"] == "hot"
        right = await world.submit(again, {"watts": "75W"})
        right = await world.press(right, "Numbers")
    assert "you have it: flood, 75 W" in right.text
    assert "night:62F" in right.text


async def test_a_box_that_cannot_be_used_is_changed_in_the_form(world: World, bot: Maker) -> None:
    async with world.running(bot()):
        low = await world.slash("plan", {**BOX, "enclosure": "48x24x9in"})
        assert "too low" in low.text
        form = await world.press(low, "Change")
        right = await world.submit(form, {"enclosure": "48x24x24in"})
    assert "Tube to back" in right.text


async def test_a_plan_asked_with_nothing_opens_its_form(world: World, bot: Maker) -> None:
    async with world.running(bot()):
        form = await world.slash("plan")
        assert {"animal", "enclosure", "lid"} <= set(form.fields)
        answer = await world.submit(form, BOX)
    assert answer.ephemeral
    assert "Tube to back" in answer.text


async def test_a_form_sent_with_a_field_nobody_understands_opens_again_with_it(
    world: World, bot: Maker
) -> None:
    async with world.running(bot()):
        form = await world.slash("plan")
        wrong = await world.submit(form, {**BOX, "enclosure": "big"})
        assert "big" in wrong.text
        again = await world.press(wrong, "Change")
        assert again.fields["enclosure"]["value"] == "big"
        right = await world.submit(again, {"enclosure": "120x60x60cm"})
    assert "Tube to back" in right.text
