"""What a question still needs is picked from lists under its answer."""

from tests.discord.answers import forget_the_question, post_rows
from tests.discord.cast import FERN, MOSS, direct, in_server
from tests.discord.conftest import Maker
from tests.discord.limits import Json
from tests.discord.platform import Post
from tests.discord.test_talking import answers
from tests.discord.world import World

LIST = 3


def lists(post: Post) -> list[Json]:
    return [part for row in post_rows(post) for part in row if part["type"] == LIST]


async def test_a_free_question_without_its_animal_offers_every_animal(
    world: World, bot: Maker
) -> None:
    async with world.running(bot()):
        asked = await world.slash("ask", {"question": "my basking is 104f, too hot?"})
        offered = [option["label"] for each in lists(asked.post) for option in each["options"]]
        whole = await world.pick(asked, "bearded dragon")
    assert len(offered) == len(set(offered)) >= 75
    assert whole.post is asked.post
    assert "temps basking:104 F animal:bearded dragon" in whole.text
    assert not lists(whole.post)


async def test_an_animal_meant_by_a_word_for_several_is_picked_by_its_name(
    world: World, bot: Maker
) -> None:
    async with world.running(bot()):
        told = {"question": "welches uv braucht mein gecko"}
        asked = await world.slash("ask", told, locale="de")
        (names,) = lists(asked.post)
        assert "Leopardgecko" in [option["label"] for option in names["options"]]
        values = {option["label"]: option["value"] for option in names["options"]}
        named = await world.pick(asked, values["Leopardgecko"], locale="de")
    assert "/uv tube animal:leopard gecko" in named.text


async def test_what_could_not_be_read_is_picked_too(world: World, bot: Maker) -> None:
    told = {"tube": "strong", "reflector": "polished", "screen": "none", "animal": "drgaon x"}
    async with world.running(bot()):
        asked = await world.slash("distance", told)
        (tubes,) = lists(asked.post)
        first = asked.text
        second = (await world.pick(asked, "7%")).text
        whole = await world.pick(asked, "bearded dragon")
    assert "“strong” for tube" in first
    assert "“drgaon x” for animal" in second
    assert {option["value"] for option in tubes["options"]} >= {f"{n}%" for n in range(1, 16)}
    assert "tube:7% reflector:polished screen:none animal:bearded dragon" in whole.text


async def test_an_example_in_own_words_can_be_clicked(world: World, bot: Maker) -> None:
    async with world.running(bot()):
        asked = await world.slash("ask", {"question": "how far should my bearded dragon's tube be"})
        helped = await world.slash("noonstone help", {"command": "ask"})
    assert "</ask:" in asked.text
    assert "</ask:" in helped.text


async def test_screen_and_fixture_are_picked_one_after_the_other(world: World, bot: Maker) -> None:
    async with world.running(bot()):
        asked = await world.slash("distance", {"tube": "12%", "animal": "bearded dragon"})
        assert len(lists(asked.post)) == 2
        assert "Fill in" in asked.buttons
        fitted = await world.pick(asked, "polished")
        assert len(lists(fitted.post)) == 1
        unsure = await world.pick(fitted, "not sure")
    assert "reflector:polished screen:not sure" in unsure.text
    assert "UV" in unsure.text
    assert not lists(unsure.post)


async def test_lid_and_walls_are_picked_and_a_figure_is_filled_in(world: World, bot: Maker) -> None:
    async with world.running(bot()):
        told = {"enclosure": "4x2x2 ft", "animal": "corn snake"}
        asked = await world.slash("heat air", told, where=direct(FERN))
        lidded = await world.pick(asked, "solid")
        walled = await world.pick(lidded, "wood")
        form = await world.press(walled, "Fill in")
        whole = await world.submit(form, {"room": "68F"})
    assert not lists(walled.post)
    assert form.fields["room"]["required"]
    assert "material:wood lid:solid room:68F" in whole.text


async def test_a_pick_outlives_a_restart_and_a_list_without_its_question_says_so(
    world: World, bot: Maker
) -> None:
    async with world.running(bot()):
        asked = await world.slash("distance", {"tube": "12%", "animal": "bearded dragon"})
    async with world.running(bot()):
        fitted = await world.pick(asked, "plain")
        assert "reflector:plain" in fitted.text
        (screens,) = lists(fitted.post)
        screens["custom_id"] = "n:screen.0:gone.0000|12%"
        forget_the_question(fitted.post)
        lost = await world.pick(fitted, "none")
    assert "Ask it again" in lost.text


async def test_what_cannot_wait_has_no_lists_beside_it(world: World, bot: Maker) -> None:
    async with world.running(bot()):
        asked = await world.slash("ask", {"question": "my basking is 140f, too hot?"})
    assert not lists(asked.post)


async def test_a_mention_has_the_lists_too_and_whoever_picks_gets_an_own_answer(
    world: World, bot: Maker
) -> None:
    place = in_server()
    async with world.running(bot()):
        await world.writes(MOSS, "my basking is 104f, too hot?")
        [asked] = await answers(world, place.channel_id, 1)
        picked = await world.pick(asked, "bearded dragon", user=MOSS, where=place)
    assert len(lists(asked)) == 3
    assert len(post_rows(asked)) <= 5
    assert picked.post is not asked
    assert picked.post.seen_by == MOSS.id
    assert "temps basking:104 F animal:bearded dragon" in picked.text
