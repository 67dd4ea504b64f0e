"""Public posts of groups: the rules of their places, and the log without text."""

from collections.abc import Mapping
from datetime import datetime

from sqlalchemy import ColumnElement, delete, insert, select
from sqlalchemy.ext.asyncio import AsyncSession

from bot.database.changes import Changed, note_changes
from bot.database.engine import Database
from bot.database.errors import Full, LimitError
from bot.database.newest import newest_of
from bot.database.servers import hold_server
from bot.database.tables import PostRow, PublicRow
from bot.saved.group import By
from bot.saved.public import (
    IN_CHANNEL,
    KEPT_FOR,
    MOST_PLACES,
    WITHIN,
    Posted,
    PublicRule,
    Reached,
    Share,
)

__all__ = ["PublicPosts", "put_rules", "read_rules"]


async def read_rules(session: AsyncSession, server: int) -> dict[int, PublicRule]:
    """Return the rules of a group by their channels, 0 for everywhere."""
    rows = await session.scalars(
        select(PublicRow).where(PublicRow.server_id == server).order_by(PublicRow.channel_id)
    )
    return {
        row.channel_id: PublicRule.model_validate({"who": row.who, "most": row.most})
        for row in rows
    }


async def put_rules(
    session: AsyncSession, database: Database, server: int, given: Mapping[int, PublicRule], by: By
) -> None:
    """Write rules of a held server, an empty one for none, and log what changed."""
    before = await read_rules(session, server)
    after = {place: rule for place, rule in {**before, **given}.items() if rule != PublicRule()}
    if len(after) > max(MOST_PLACES, len(before)):
        raise LimitError(MOST_PLACES, Full.CHANNELS)
    gone = [place for place in before if place not in after]
    if gone:
        of_these = (PublicRow.server_id == server, PublicRow.channel_id.in_(gone))
        await session.execute(delete(PublicRow).where(*of_these))
    written = [
        {"server_id": server, "channel_id": place, "who": after[place].who}
        | {"most": after[place].most}
        for place in given
        if place in after
    ]
    await database.put(session, PublicRow, written)
    changed = [
        Changed("public", str(place), _logged(before.get(place)), _logged(after.get(place)))
        for place in given
    ]
    await note_changes(session, server, by, changed)


def _logged(rule: PublicRule | None) -> str:
    return "" if rule is None else rule.model_dump_json(exclude_none=True)


class PublicPosts:
    """What is public in all groups."""

    def __init__(self, database: Database) -> None:
        self._database = database

    async def rules(self, server: int) -> dict[int, PublicRule]:
        """Return the rules of a group by their channels, 0 for everywhere."""
        async with self._database.reading() as session:
            return await read_rules(session, server)

    async def change(self, server: int, place: int, by: By, **changed: object) -> PublicRule:
        """Change what is named of the rule of a place, and return it."""
        async with self._database.writing() as session:
            await hold_server(session, self._database, server)
            before = (await read_rules(session, server)).get(place, PublicRule())
            rule = PublicRule.model_validate(before.model_dump() | changed)
            await put_rules(session, self._database, server, {place: rule}, by)
            return rule

    async def note(self, server: int, post: Posted, most: int | None) -> Reached | None:
        """Note a post and return None; where a share of the hour is used up, note nothing.

        ``most`` is what one person may post an hour, a channel three times as much; None: any.
        The group is held meanwhile, so that several processes count one after the other.
        """
        async with self._database.writing() as session:
            await hold_server(session, self._database, server)
            if most is not None:
                of_group = PostRow.server_id == server
                shares = (
                    (Share.PERSON, PostRow.who == post.who, most),
                    (Share.CHANNEL, PostRow.channel_id == post.channel, IN_CHANNEL * most),
                )
                for share, theirs, allowed in shares:
                    first = await _first_of(session, of_group & theirs, allowed, post.at)
                    if first is not None:
                        return Reached(share=share, again_at=first + WITHIN)
            line = post.model_dump(exclude={"channel"})
            row = {"server_id": server, "channel_id": post.channel, **line}
            await session.execute(insert(PostRow).values(row))
            return None

    async def newest(self, server: int, most: int) -> tuple[Posted, ...]:
        """Return the newest posts of a group, the newest first."""
        async with self._database.reading() as session:
            rows = await newest_of(session, PostRow, server, most)
            return tuple(
                Posted(
                    at=row.at,
                    who=row.who,
                    channel=row.channel_id,
                    command=row.command,
                    pings=row.pings,
                )
                for row in rows
            )

    async def sweep(self, now: datetime) -> None:
        """Delete the lines that are past their time."""
        async with self._database.writing() as session:
            await session.execute(delete(PostRow).where(PostRow.at <= now - KEPT_FOR))


async def _first_of(
    session: AsyncSession, theirs: ColumnElement[bool], allowed: int, now: datetime
) -> datetime | None:
    """Return when the first of the last ``allowed`` posts was; None where there are fewer."""
    recent = select(PostRow.at).where(theirs, PostRow.at > now - WITHIN)
    wanted = recent.order_by(PostRow.at.desc()).offset(allowed - 1).limit(1)
    return (await session.scalars(wanted)).one_or_none()
