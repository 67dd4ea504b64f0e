"""The invented people, servers and places of the stand-in."""

from dataclasses import dataclass, replace
from typing import Final

__all__ = [
    "ALL_RIGHTS",
    "BOT_RIGHTS",
    "BURROW",
    "FERN",
    "GARDEN",
    "MOSS",
    "PEBBLE",
    "Person",
    "Place",
    "Server",
    "Upload",
    "between_friends",
    "direct",
    "foreign_server",
    "in_server",
    "in_thread",
]

VIEW_CHANNEL, SEND_MESSAGES, EMBED_LINKS = 1 << 10, 1 << 11, 1 << 14
ATTACH_FILES, READ_HISTORY, THREADS = 1 << 15, 1 << 16, 1 << 38
USE_EXTERNAL_APPS, PIN_MESSAGES, MANAGE_MESSAGES = 1 << 50, 1 << 51, 1 << 13
# The invite of the README asks for these.
BOT_RIGHTS: Final = (
    VIEW_CHANNEL
    | SEND_MESSAGES
    | EMBED_LINKS
    | ATTACH_FILES
    | READ_HISTORY
    | THREADS
    | PIN_MESSAGES
)
ALL_RIGHTS: Final = BOT_RIGHTS | USE_EXTERNAL_APPS | MANAGE_MESSAGES


@dataclass(frozen=True)
class Person:
    """A user of the stand-in; ``rights`` are the member's permissions in servers."""

    id: int
    name: str
    rights: int = VIEW_CHANNEL | SEND_MESSAGES | USE_EXTERNAL_APPS
    takes_dms: bool = True
    roles: tuple[int, ...] = ()


@dataclass(frozen=True)
class Upload:
    """A file that somebody attaches, kept where the app may fetch it."""

    name: str
    url: str
    size: int


@dataclass(frozen=True)
class Server:
    """A guild with one text channel; ``bot_rights`` are the bot's permissions there.

    ``more_channels`` and ``more_roles`` are there only to be carried.
    """

    id: int
    name: str
    channel_id: int
    locale: str = "en-US"
    bot_rights: int = BOT_RIGHTS
    has_bot: bool = True
    more_channels: int = 0
    more_roles: int = 0


@dataclass(frozen=True)
class Place:
    """Where something is asked: context 0 server, 1 DM with the bot, 2 another DM.

    A place of a server that is not its channel is a thread of it.
    """

    channel_id: int
    context: int
    server: Server | None = None
    user_install: bool = False


FERN: Final = Person(4_000_000_000_000_001, "fern")
MOSS: Final = Person(4_000_000_000_000_002, "moss")
PEBBLE: Final = Person(4_000_000_000_000_003, "pebble", rights=ALL_RIGHTS)

GARDEN: Final = Server(5_000_000_000_000_001, "The Garden", 6_000_000_000_000_001)
BURROW: Final = Server(5_000_000_000_000_002, "Der Bau", 6_000_000_000_000_002, locale="de")


def in_server(server: Server = GARDEN) -> Place:
    """Return the server's channel."""
    return Place(server.channel_id, 0, server)


def in_thread(server: Server = GARDEN) -> Place:
    """Return a thread of the server's channel."""
    return Place(server.channel_id + 500, 0, server)


def direct(person: Person) -> Place:
    """Return the person's direct messages with the bot."""
    return Place(person.id + 1_000_000_000_000_000, 1)


def between_friends() -> Place:
    """Return a direct message of two people where one of them brought the bot along."""
    return Place(7_000_000_000_000_001, 2, user_install=True)


def foreign_server(server: Server = BURROW) -> Place:
    """Return a server that the bot has not joined, where a person brought it along."""
    return Place(server.channel_id, 0, replace(server, has_bot=False), user_install=True)
