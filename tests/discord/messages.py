"""Messages of the stand-in: sent, edited, deleted, pinned, and whom they ping."""

import re
from typing import Any

from tests.discord.cast import ATTACH_FILES, PIN_MESSAGES, SEND_MESSAGES
from tests.discord.limits import Json
from tests.discord.message_limits import COMPONENTS_V2, message_breaches, walked
from tests.discord.payloads import TIMESTAMP, bot_user, message, snowflake
from tests.discord.platform import ApiError, Platform, Post, refuse_breaches

__all__ = [
    "EPHEMERAL",
    "Files",
    "edit",
    "newest",
    "pin",
    "pings_of",
    "post_in_channel",
    "remove",
    "store",
    "unpin",
]

Files = dict[str, bytes]
EPHEMERAL = 1 << 6
LOADING = 1 << 7
MOST_PINS = 250
MOST_NONCE = 25
CHOSEN = ("content", "embeds", "components", "tts")


def pings_of(body: Json) -> frozenset[str]:
    """Return whom a message notifies, by Discord's rules for ``allowed_mentions``."""
    content = body.get("content") or ""
    allowed = body.get("allowed_mentions")
    parse = {"users", "roles", "everyone"} if allowed is None else set(allowed.get("parse") or ())
    named = {} if allowed is None else allowed
    pinged = {
        f"{sign}{number}"
        for kind, sign, pattern in (("users", "@", r"<@!?(\d+)>"), ("roles", "&", r"<@&(\d+)>"))
        for number in re.findall(pattern, content)
        if kind in parse or number in map(str, named.get(kind) or ())
    }
    if "everyone" in parse:
        pinged |= set(re.findall(r"@everyone|@here", content))
    if body.get("message_reference") and named.get("replied_user", allowed is None):
        pinged.add("replied")
    return frozenset(pinged)


def store(
    platform: Platform,
    channel_id: int,
    body: Json,
    files: Files,
    *,
    seen_by: int | None = None,
    **parts: Any,
) -> Post:
    """Check and keep a message of the bot."""
    refuse_breaches(message_breaches(body, map(len, files.values())))
    shown = body.get("content") or body.get("embeds") or body.get("components") or files
    if not shown:
        raise ApiError(400, 50006, "Cannot send an empty message")
    flags = (body.get("flags") or 0) | (EPHEMERAL if seen_by is not None else 0)
    chosen = {key: body[key] for key in CHOSEN if body.get(key) is not None}
    attached = _attachments(platform, body, files)
    if flags & COMPONENTS_V2:
        # What lies in a card is told by the card alone.
        _lay_in(chosen["components"], attached)
        attached = []
    payload = message(
        channel_id,
        bot_user(),
        **{**chosen, "flags": flags, "attachments": attached, **parts},
    )
    post = Post(payload, seen_by, pings_of(body), dict(files))
    platform.posts[post.id] = post
    platform.changed()
    return post


def _lay_in(components: list[Json], attached: list[Json]) -> None:
    there = {f"attachment://{one['filename']}": one["url"] for one in attached}
    items = [item for part in walked(components) for item in part.get("items") or []]
    for item in items:
        address = item["media"]["url"]
        if address.startswith("attachment:") and address not in there:
            raise ApiError(400, 50035, f"{address} is not attached")
        item["media"] = {"url": there.pop(address, address)}
    if there:
        raise ApiError(400, 50035, "what is attached to a card lies in it")


def placeholder(platform: Platform, channel_id: int, seen_by: int | None, **parts: Any) -> Post:
    """Keep the 'thinking' message of a deferred answer."""
    flags = LOADING | (EPHEMERAL if seen_by is not None else 0)
    payload = message(channel_id, bot_user(), flags=flags, **parts)
    post = Post(payload, seen_by, frozenset(), loading=True)
    platform.posts[post.id] = post
    platform.changed()
    return post


def edit(platform: Platform, post: Post, body: Json, files: Files) -> Post:
    """Check and apply an edit."""
    if post.payload["author"]["id"] != bot_user()["id"]:
        raise ApiError(403, 50005, "Cannot edit a message authored by another user")
    merged = {key: body.get(key, post.payload.get(key)) for key in CHOSEN}
    merged["allowed_mentions"] = body.get("allowed_mentions")
    merged["attachments"] = body.get("attachments", [])
    # Once a card, always a card.
    card = int(body.get("flags") or 0) & COMPONENTS_V2
    post.payload["flags"] = int(post.payload["flags"] or 0) | card
    flags = int(post.payload["flags"])
    merged["flags"] = flags
    if flags & COMPONENTS_V2 and files:
        raise ApiError(400, 50035, "a card takes no picture by an edit")
    if flags & COMPONENTS_V2:
        _lay_in(merged["components"] or [], [])
    refuse_breaches(message_breaches(merged, map(len, files.values())))
    post.payload.update({key: body[key] for key in CHOSEN if key in body})
    for key, empty in (("content", ""), ("embeds", []), ("components", [])):
        post.payload[key] = post.payload[key] or empty
    if "attachments" in body:
        kept = {str(a["id"]) for a in body["attachments"]}
        old = [a for a in post.payload["attachments"] if a["id"] in kept]
        post.payload["attachments"] = old + _attachments(platform, body, files)
    post.files.update(files)
    post.payload["edited_timestamp"] = TIMESTAMP
    post.payload["flags"] &= ~LOADING
    # A placeholder becomes the message and may ping; an edit of a message never does.
    post.pings = pings_of(body) if post.loading else post.pings
    post.loading = False
    platform.changed()
    return post


def _attachments(platform: Platform, body: Json, files: Files) -> list[Json]:
    told = {int(a["id"]): a for a in body.get("attachments") or [] if int(a["id"]) < 10}
    rows = []
    for index, (name, content) in enumerate(files.items()):
        row = {"id": str(7_000 + index), "filename": name, "size": len(content)}
        key = f"{snowflake()}/{name}"
        platform.files[key] = content
        address = f"{platform.files_at}/{key}"
        row |= {"url": address, "proxy_url": address, "content_type": "image/png"}
        description = told.get(index, {}).get("description")
        rows.append(row | ({"description": description} if description else {}))
    return rows


def post_in_channel(platform: Platform, channel_id: int, body: Json, files: Files) -> Post:
    """Send to a channel, which unlike an answer needs the right to do so."""
    server = platform.server_of(channel_id)
    person = platform.direct_channels.get(channel_id)
    if server is None and person is None:
        raise ApiError(404, 10003, "Unknown Channel")
    if server is not None and not server.bot_rights & SEND_MESSAGES:
        raise ApiError(403, 50013, "Missing Permissions")
    refuse_files(platform, channel_id, files)
    if person is not None and not person.takes_dms:
        raise ApiError(403, 50007, "Cannot send messages to this user")
    nonce = body.get("nonce") if body.get("enforce_nonce") else None
    if nonce is not None and (channel_id, nonce) in platform.nonces:
        return platform.nonces[channel_id, nonce]
    post = store(platform, channel_id, body, files)
    if "message_reference" in body:
        post.payload["message_reference"] = body["message_reference"]
    if nonce is not None:
        assert len(str(nonce)) <= MOST_NONCE
        platform.nonces[channel_id, nonce] = post
    return post


def refuse_files(platform: Platform, channel_id: int, files: Files) -> None:
    """Refuse pictures and files where the bot may not attach any."""
    server = platform.server_of(channel_id)
    if files and server is not None and not server.bot_rights & ATTACH_FILES:
        raise ApiError(403, 50013, "Missing Permissions")


def newest(platform: Platform, channel_id: int, most: int) -> list[Post]:
    """Return the messages of a channel that are still there, newest first."""
    if platform.server_of(channel_id) is None and channel_id not in platform.direct_channels:
        raise ApiError(404, 10003, "Unknown Channel")
    there = (p for p in reversed(platform.posts.values()) if not (p.deleted or p.ephemeral))
    return [p for p in there if int(p.payload["channel_id"]) == channel_id][:most]


def remove(platform: Platform, post: Post) -> None:
    """Delete a message."""
    post.deleted = True
    pins = platform.pins.get(int(post.payload["channel_id"]), [])
    if post.id in pins:
        pins.remove(post.id)
    platform.changed()


def pin(platform: Platform, channel_id: int, message_id: int) -> None:
    """Pin a message, within the rights and the room that a channel has."""
    _need_pin_right(platform, channel_id)
    post = platform.post(message_id, channel_id)
    pins = platform.pins.setdefault(channel_id, [])
    if message_id in pins:
        return
    if len(pins) >= MOST_PINS:
        raise ApiError(400, 30003, "Maximum number of pins reached for the channel (250)")
    pins.insert(0, message_id)
    post.payload["pinned"] = True
    platform.changed()


def unpin(platform: Platform, channel_id: int, message_id: int) -> None:
    """Unpin a message."""
    _need_pin_right(platform, channel_id)
    pins = platform.pins.setdefault(channel_id, [])
    if message_id not in pins:
        raise ApiError(404, 10008, "Unknown Message")
    pins.remove(message_id)
    platform.posts[message_id].payload["pinned"] = False
    platform.changed()


def _need_pin_right(platform: Platform, channel_id: int) -> None:
    server = platform.server_of(channel_id)
    if server is not None and not server.bot_rights & PIN_MESSAGES:
        raise ApiError(403, 50013, "Missing Permissions")
