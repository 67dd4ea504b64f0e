"""The objects that Discord sends, built from the cast."""

import time
from itertools import count
from typing import Any

from tests.discord.cast import Person, Place, Server
from tests.discord.limits import Json

__all__ = [
    "APPLICATION_ID",
    "BOT_ID",
    "application",
    "asked_by",
    "bot_user",
    "channel",
    "guild",
    "interaction",
    "member",
    "message",
    "snowflake",
    "user",
]

APPLICATION_ID = "2000000000000001"
# For an app of today the bot user has the application's id.
BOT_ID = APPLICATION_ID
DISCORD_EPOCH_MS = 1_420_070_400_000
TIMESTAMP = "2026-01-01T00:00:00.000000+00:00"

# What every guild of the stand-in has in common.
QUIET_GUILD: Json = {
    "owner_id": "1000000000000001",
    "threads": [],
    "member_count": 3,
    "features": [],
    "large": False,
    "unavailable": False,
    "emojis": [],
    "stickers": [],
    "voice_states": [],
    "presences": [],
    "stage_instances": [],
    "guild_scheduled_events": [],
    "soundboard_sounds": [],
    "verification_level": 0,
    "default_message_notifications": 0,
    "explicit_content_filter": 0,
    "mfa_level": 0,
    "nsfw_level": 0,
    "premium_tier": 0,
    "system_channel_flags": 0,
    "afk_timeout": 60,
    "icon": None,
    "joined_at": TIMESTAMP,
}

_steps = count(1)


def snowflake() -> str:
    """Return a new id that carries the present time."""
    return str((int(time.time() * 1000) - DISCORD_EPOCH_MS << 22) + next(_steps))


def user(person: Person) -> Json:
    """Return a user object."""
    return _user(str(person.id), person.name, bot=False)


def bot_user() -> Json:
    """Return the bot's own user object."""
    return _user(BOT_ID, "noonstone", bot=True)


def _user(identifier: str, name: str, *, bot: bool) -> Json:
    return {
        "id": identifier,
        "username": name,
        "discriminator": "0",
        "global_name": name.title(),
        "avatar": None,
        "bot": bot,
        "public_flags": 0,
        "flags": 0,
    }


def application() -> Json:
    """Return the bot's application object."""
    return {
        "id": APPLICATION_ID,
        "name": "Noonstone",
        "icon": None,
        "description": "",
        "bot_public": True,
        "bot_require_code_grant": False,
        "verify_key": "0" * 64,
        "owner": _user("1000000000000001", "owner", bot=False),
        "flags": 0,
        "interactions_endpoint_url": None,
    }


def member(person: Person) -> Json:
    """Return a member object with the member's permissions in the channel."""
    return {
        "user": user(person),
        "roles": [str(role) for role in person.roles],
        "joined_at": TIMESTAMP,
        "deaf": False,
        "mute": False,
        "flags": 0,
        "nick": None,
        "permissions": str(person.rights),
    }


def channel(place: Place) -> Json:
    """Return the channel object that comes with an interaction."""
    if place.server is not None and place.channel_id != place.server.channel_id:
        return _thread(place.channel_id, place.server)
    if place.server is not None:
        return _text_channel(place.server)
    kind = 1 if place.context == 1 else 3
    return {"id": str(place.channel_id), "type": kind, "recipients": [], "flags": 0}


def _text_channel(server: Server) -> Json:
    return {
        "id": str(server.channel_id),
        "type": 0,
        "guild_id": str(server.id),
        "name": "lamps",
        "position": 0,
        "permission_overwrites": [],
        "nsfw": False,
        "topic": None,
        "parent_id": None,
        "flags": 0,
        "rate_limit_per_user": 0,
        "last_message_id": None,
    }


def _thread(number: int, server: Server) -> Json:
    archive = {"archived": False, "auto_archive_duration": 1440, "locked": False}
    return {
        "id": str(number),
        "type": 11,
        "guild_id": str(server.id),
        "parent_id": str(server.channel_id),
        "owner_id": BOT_ID,
        "name": "a lamp of mine",
        "last_message_id": None,
        "message_count": 1,
        "member_count": 1,
        "rate_limit_per_user": 0,
        "flags": 0,
        "thread_metadata": {**archive, "archive_timestamp": TIMESTAMP},
    }


def asked_by(interaction: Json, person: Person) -> Json:
    """Return what a message tells of the interaction that it answers."""
    return {
        "id": interaction["id"],
        "type": interaction["type"],
        "user": user(person),
        "authorizing_integration_owners": interaction["authorizing_integration_owners"],
    }


def guild(server: Server) -> Json:
    """Return the guild object of a GUILD_CREATE."""
    bot = {"user": bot_user(), "roles": [], "joined_at": TIMESTAMP, "flags": 0}
    return {
        **QUIET_GUILD,
        "id": str(server.id),
        "name": server.name,
        "preferred_locale": server.locale,
        "roles": [_everyone(server), *_more_roles(server)],
        "channels": [_text_channel(server), *_more_channels(server)],
        "members": [{**bot, "deaf": False, "mute": False}],
    }


def _everyone(server: Server) -> Json:
    return {
        "id": str(server.id),
        "name": "@everyone",
        "permissions": str(server.bot_rights),
        "position": 0,
        "color": 0,
        "colors": {"primary_color": 0, "secondary_color": None, "tertiary_color": None},
        "hoist": False,
        "managed": False,
        "mentionable": False,
        "flags": 0,
    }


def _more_roles(server: Server) -> list[Json]:
    everyone = _everyone(server)
    return [
        {**everyone, "id": str(server.id + n), "name": f"role {n}", "position": n}
        for n in range(1, server.more_roles + 1)
    ]


def _more_channels(server: Server) -> list[Json]:
    """Return further channels, each closed to everybody but one role."""
    first = _text_channel(server)
    closed = {"id": str(server.id), "type": 0, "allow": "0", "deny": "1024"}
    opened = {"id": str(server.id + 1), "type": 0, "allow": "1024", "deny": "0"}
    return [
        {
            **first,
            "id": str(server.channel_id + n),
            "name": f"channel-{n}",
            "position": n,
            "topic": "What is said here, in a few words of the group's own",
            "permission_overwrites": [closed, opened],
        }
        for n in range(1, server.more_channels + 1)
    ]


def message(channel_id: int, author: Json, **parts: Any) -> Json:
    """Return a message object; ``parts`` are what its author chose."""
    return {
        "id": snowflake(),
        "type": 0,
        "channel_id": str(channel_id),
        "author": author,
        "content": "",
        "timestamp": TIMESTAMP,
        "edited_timestamp": None,
        "tts": False,
        "mention_everyone": False,
        "mentions": [],
        "mention_roles": [],
        "attachments": [],
        "embeds": [],
        "components": [],
        "pinned": False,
        "flags": 0,
        **parts,
    }


def interaction(
    kind: int, person: Person, place: Place, *, locale: str, data: Json, token: str
) -> Json:
    """Return the data of an INTERACTION_CREATE."""
    owners = {"1": str(person.id)} if place.user_install else {"0": "0"}
    base: Json = {
        "id": snowflake(),
        "application_id": APPLICATION_ID,
        "type": kind,
        "token": token,
        "version": 1,
        "data": data,
        "channel_id": str(place.channel_id),
        "channel": channel(place),
        "locale": locale,
        "context": place.context,
        "entitlements": [],
        "authorizing_integration_owners": owners,
        "attachment_size_limit": 10 * 1024 * 1024,
        "app_permissions": str((1 << 53) - 1),
    }
    if place.server is None:
        return {**base, "user": user(person)}
    server = place.server
    if not place.user_install:
        base["authorizing_integration_owners"] = {"0": str(server.id)}
    return {
        **base,
        "guild_id": str(server.id),
        "guild": {"id": str(server.id), "locale": server.locale, "features": []},
        "guild_locale": server.locale,
        "member": member(person),
        "app_permissions": str(server.bot_rights),
    }
