"""What a person sees of an answer: its words, its buttons, who else sees it, who is pinged."""

from dataclasses import dataclass
from typing import Any

from tests.discord.limits import Json
from tests.discord.message_limits import COMPONENTS_V2, ROW, TEXT, walked
from tests.discord.platform import Exchange, Platform, Post

__all__ = [
    "Answer",
    "embed_text",
    "forget_the_question",
    "is_card",
    "post_buttons",
    "post_rows",
    "post_text",
]

FORM, CHOICES, LATER_UPDATE = 9, 8, 6


def embed_text(embed: Json) -> str:
    """Return the words of an embed, top to bottom."""
    parts = [embed.get("title"), embed.get("description")]
    for field in embed.get("fields") or []:
        parts += [field["name"], field["value"]]
    parts.append((embed.get("footer") or {}).get("text"))
    return "\n".join(part for part in parts if part)


def post_text(post: Post) -> str:
    """Return the words of a message, top to bottom."""
    words = [post.payload["content"], *map(embed_text, post.payload["embeds"])]
    parts = walked(post.payload["components"])
    words += [part["content"] for part in parts if part["type"] == TEXT]
    return "\n".join(word for word in words if word)


def post_rows(post: Post) -> list[list[Json]]:
    """Return the rows of buttons and lists of a message, in a card or under a text."""
    parts = walked(post.payload["components"])
    return [part["components"] for part in parts if part["type"] == ROW]


def forget_the_question(post: Post) -> None:
    """Take the line away that tells the question, as a message of long ago might lack it."""
    for part in walked(post.payload["components"]):
        if part["type"] == TEXT and part["content"].startswith("-# /"):
            part["content"] = "…"


def is_card(post: Post) -> bool:
    """Say whether a message is a card."""
    return bool(post.payload["flags"] & COMPONENTS_V2)


def post_buttons(post: Post) -> dict[str, Json]:
    """Return the buttons of a message by label."""
    return {part["label"]: part for row in post_rows(post) for part in row if "label" in part}


@dataclass(frozen=True)
class Answer:
    """The answer to one interaction."""

    platform: Platform
    exchange: Exchange

    @property
    def kind(self) -> int:
        """Return the callback's type."""
        assert self.exchange.callback is not None
        return int(self.exchange.callback["type"])

    @property
    def data(self) -> Json:
        """Return the callback's data as sent."""
        assert self.exchange.callback is not None
        data: Json = self.exchange.callback.get("data") or {}
        return data

    @property
    def post(self) -> Post:
        """Return the message that answers."""
        post = self.exchange.original
        if self.kind == LATER_UPDATE and self.exchange.follow_ups:
            post = self.exchange.follow_ups[-1]
        assert post is not None, "no message was sent"
        return post

    @property
    def further(self) -> list[Post]:
        """Return the follow-up messages."""
        return self.exchange.follow_ups

    @property
    def text(self) -> str:
        """Return the words of the message."""
        return post_text(self.post)

    @property
    def ephemeral(self) -> bool:
        """Say whether only the asker sees the message."""
        return self.post.ephemeral

    @property
    def buttons(self) -> list[str]:
        """Return the labels of the message's buttons."""
        return list(post_buttons(self.post))

    @property
    def choices(self) -> list[str]:
        """Return the values that an autocomplete offers."""
        assert self.kind == CHOICES
        return [choice["value"] for choice in self.data["choices"]]

    @property
    def modal(self) -> Json:
        """Return the form that was opened."""
        assert self.kind == FORM
        return self.data

    @property
    def fields(self) -> dict[str, Any]:
        """Return the form's fields by custom id."""
        parts = [part["component"] for part in self.modal["components"] if "component" in part]
        return {part["custom_id"]: part for part in parts}
