"""What becomes public: set by place, shown, taken along in a file, counted by the hour."""

import json
from dataclasses import replace
from datetime import timedelta

from bot.ask import ask as at_the_door
from bot.database.store import Store
from bot.desk import Desk
from bot.preferences import Preferences
from bot.saved.group import By
from bot.saved.public import IN_CHANNEL, KEPT_FOR, Posted, Share, Who, in_force
from tests.bot.keeping.conftest import NOW, Ask
from tests.bot.keeping.people import CHANNEL, FERN, GARDEN, MOSS, row

ROLE = 9_000_000_000_000_001


def post(minutes: int = 0, *, who: int = FERN, channel: int = CHANNEL) -> Posted:
    at = NOW + timedelta(minutes=minutes)
    return Posted(at=at, who=who, channel=channel, command="distance", pings=0)


async def test_a_rule_is_kept_by_place_and_each_part_is_taken_from_the_nearest(
    ok: Ask, store: Store
) -> None:
    await ok(f"server public who:helpers most:10 role:<@&{ROLE}> where:everywhere")
    told = await ok("server public most:5 where:here")
    assert "Helpers and moderators" in told.brief[0].text
    assert "at most 5 from one person, 15 in one channel" in told.brief[1].text
    rules = await store.public.rules(GARDEN)
    assert in_force([rules.get(CHANNEL), rules.get(0)]) == (Who.HELPERS, 5)
    shown = await ok("server show")
    assert row(shown, "Public posts") == (
        "by helpers and moderators, 10 an hour each; 1 channel has its own rule"
    )
    assert row(shown, "Helpers' role") == f"role {ROLE}"
    await ok("server public who:usual most:none where:here")
    assert CHANNEL not in await store.public.rules(GARDEN)


async def test_it_comes_back_from_a_file_and_stands_in_the_log(ok: Ask, store: Store) -> None:
    await ok("server public who:moderators most:10 where:here")
    kept = await store.exchange.server(GARDEN)
    file = (await ok("server export")).document
    assert file is not None
    assert json.loads(file.text)["public"] == {str(CHANNEL): {"who": "moderators", "most": 10}}
    await ok("server forget sure:yes")
    assert await store.public.rules(GARDEN) == {}
    await store.exchange.take_server(GARDEN, kept, By(FERN, NOW))
    assert await store.exchange.server(GARDEN) == kept
    logged = (await ok("server changes")).table
    assert logged is not None
    assert logged.rows[0][1:4] == (
        f"public posts, channel {CHANNEL}",
        "nothing",
        "moderators, 10 an hour",
    )


async def test_helpers_without_a_role_are_refused(ask: Ask) -> None:
    told = await ask("server public who:helpers where:here")
    assert "do not know your helpers' role" in told.answer


async def test_nobody_but_a_moderator_sets_or_sees_it(store: Store, desk: Desk) -> None:
    for line in ("server public who:everybody where:everywhere", "server posts"):
        told = await at_the_door(line, Preferences(), replace(desk, moderator=False))
        assert told.status == "problem"
    assert await store.public.rules(GARDEN) == {}


async def test_an_hour_holds_a_share_for_each_person_and_three_for_a_channel(store: Store) -> None:
    note = store.public.note
    assert [await note(GARDEN, post(m), 2) for m in (0, 10)] == [None, None]
    reached = await note(GARDEN, post(20), 2)
    assert reached is not None
    assert (reached.share, reached.again_at) == (Share.PERSON, NOW + timedelta(hours=1))
    assert await note(GARDEN, post(61), 2) is None
    others = [await note(GARDEN, post(61, who=MOSS + n), 2) for n in range(2 * IN_CHANNEL)]
    full = [one for one in others if one is not None]
    assert {one.share for one in full} == {Share.CHANNEL}
    assert await note(GARDEN, post(61, who=7, channel=CHANNEL + 1), 2) is None


async def test_a_line_is_kept_for_ninety_days_without_text(store: Store) -> None:
    await store.public.note(GARDEN, post(), None)
    await store.public.sweep(NOW + KEPT_FOR - timedelta(minutes=1))
    assert len(await store.public.newest(GARDEN, 9)) == 1
    await store.public.sweep(NOW + KEPT_FOR)
    assert await store.public.newest(GARDEN, 9) == ()
