"""What Discord accepts as a message, its embeds, its components, and a modal."""

from collections.abc import Iterable, Iterator
from typing import Any

from tests.discord.limits import Breach, Check, Json, Path_

__all__ = ["COMPONENTS_V2", "embed_characters", "message_breaches", "modal_breaches", "walked"]

ROW, BUTTON, SELECT, TEXT_INPUT, LABEL, RADIO, CHECKBOXES = 1, 2, 3, 4, 18, 21, 22
TEXT, GALLERY, FILE, SEPARATOR, CONTAINER = 10, 12, 13, 14, 17
LINK_STYLE, PREMIUM_STYLE = 5, 6
COMPONENTS_V2 = 1 << 15
OWN_MENTIONS = {"users", "roles", "everyone"}


def message_breaches(message: Json, file_bytes: Iterable[int] = ()) -> list[Breach]:
    """Return what is wrong with a message, or an edit of one."""
    check = Check()
    check.size(("content",), message.get("content"), "content")
    embeds = message.get("embeds") or []
    check.size(("embeds",), embeds, "embeds")
    for index, embed in enumerate(embeds):
        _embed(check, ("embeds", index), embed)
    check.number(("embeds",), sum(map(embed_characters, embeds)), "embed characters")
    _attachments(check, message.get("attachments") or [], list(file_bytes))
    _allowed_mentions(check, message.get("allowed_mentions"))
    parts = message.get("components") or []
    if (message.get("flags") or 0) & COMPONENTS_V2:
        bare = not (message.get("content") or embeds)
        check.rule(("flags",), bare, "a card has neither content nor embeds")
        _card(check, parts)
    else:
        _rows(check, parts)
    return check.breaches


def walked(parts: list[Json]) -> Iterator[Json]:
    """Yield the parts of a message and all that lie in them."""
    for part in parts:
        yield part
        yield from walked(part.get("components") or [])


def _card(check: Check, parts: list[Json]) -> None:
    there = list(walked(parts))
    texts = [part["content"] for part in there if part["type"] == TEXT]
    check.number(("components",), len(there), "card components")
    check.number(("components",), sum(map(len, texts)), "card text")
    check.rule(("components",), all(text.strip() for text in texts), "a text says something")
    known = {ROW, BUTTON, SELECT, TEXT, GALLERY, FILE, SEPARATOR, CONTAINER}
    check.rule(("components",), {part["type"] for part in there} <= known, "known parts")
    for part in there:
        if part["type"] == GALLERY:
            check.size(("components",), part["items"], "gallery items")
            for item in part["items"]:
                check.size(("components",), item.get("description"), "gallery words")
    numbers = [part["id"] for part in there if part.get("id")]
    check.rule(("components",), len(set(numbers)) == len(numbers), "ids are unique")
    _held_rows(check, [part for part in there if part["type"] == ROW])


def embed_characters(embed: Json) -> int:
    """Return the characters of an embed that count towards a message's 6000."""
    return sum(len(text) for text in _embed_texts(embed))


def _embed_texts(embed: Json) -> Iterator[str]:
    yield embed.get("title") or ""
    yield embed.get("description") or ""
    yield (embed.get("footer") or {}).get("text") or ""
    yield (embed.get("author") or {}).get("name") or ""
    for field in embed.get("fields") or []:
        yield field["name"]
        yield field["value"]


def _embed(check: Check, path: Path_, embed: Json) -> None:
    check.size((*path, "title"), embed.get("title"), "embed title")
    check.size((*path, "description"), embed.get("description"), "embed description")
    check.size((*path, "footer"), (embed.get("footer") or {}).get("text"), "embed footer")
    check.size((*path, "author"), (embed.get("author") or {}).get("name"), "embed author")
    fields = embed.get("fields") or []
    check.size((*path, "fields"), fields, "embed fields")
    for index, field in enumerate(fields):
        here = (*path, "fields", index)
        check.size((*here, "name"), field["name"].strip(), "field name")
        check.size((*here, "value"), field["value"].strip(), "field value")
    empty = embed_characters(embed) == 0 and not embed.get("image")
    check.rule(path, not empty, "an embed shows something")


def _attachments(check: Check, attachments: list[Json], file_bytes: list[int]) -> None:
    check.size(("attachments",), attachments, "attachments")
    for index, attachment in enumerate(attachments):
        path = ("attachments", index, "description")
        check.size(path, attachment.get("description"), "attachment description")
    for index, size in enumerate(file_bytes):
        check.number(("files", index), size, "attachment bytes")


def _allowed_mentions(check: Check, allowed: Json | None) -> None:
    if allowed is None:
        return
    parse = allowed.get("parse") or []
    path = ("allowed_mentions",)
    check.rule(path, set(parse) <= OWN_MENTIONS, "known kinds of mentions")
    for kind in ("users", "roles"):
        both = kind in parse and bool(allowed.get(kind))
        check.rule((*path, kind), not both, "parse and ids exclude each other")


def _rows(check: Check, rows: list[Json]) -> None:
    check.size(("components",), rows, "rows")
    _held_rows(check, rows)


def _held_rows(check: Check, rows: list[Json]) -> None:
    ids: list[str] = []
    for number, row in enumerate(rows):
        path = ("components", number)
        check.rule(path, row["type"] == ROW, "components lie in rows")
        parts = row.get("components") or []
        check.size((*path, "components"), parts, "buttons in a row")
        selects = sum(part["type"] not in (BUTTON,) for part in parts)
        check.rule(path, not selects or len(parts) == 1, "a select has its row to itself")
        for index, part in enumerate(parts):
            _component(check, (*path, "components", index), part)
            ids += [part["custom_id"]] if "custom_id" in part else []
    check.rule(("components",), len(set(ids)) == len(ids), "custom ids are unique")


def _component(check: Check, path: Path_, part: Json) -> None:
    if part["type"] == BUTTON:
        _button(check, path, part)
    elif part["type"] == SELECT:
        _select(check, path, part)
    else:
        check.size((*path, "custom_id"), part.get("custom_id"), "custom_id")


def _button(check: Check, path: Path_, button: Json) -> None:
    check.size((*path, "label"), button.get("label"), "button label")
    check.rule(path, bool(button.get("label") or button.get("emoji")), "a button shows something")
    if button["style"] == LINK_STYLE:
        check.size((*path, "url"), button.get("url"), "button url")
        check.rule(path, bool(button.get("url")), "a link button has an address")
        check.rule(path, "custom_id" not in button, "a link button has no custom id")
    elif button["style"] != PREMIUM_STYLE:
        check.size((*path, "custom_id"), button.get("custom_id"), "custom_id")
        check.rule(path, "url" not in button, "only a link button has an address")


def _select(check: Check, path: Path_, select: Json) -> None:
    check.size((*path, "custom_id"), select.get("custom_id"), "custom_id")
    check.size((*path, "placeholder"), select.get("placeholder"), "select placeholder")
    options = select.get("options") or []
    check.size((*path, "options"), options, "select options")
    for index, option in enumerate(options):
        here = (*path, "options", index)
        check.size((*here, "label"), option["label"], "select option label")
        check.size((*here, "value"), option["value"], "select option value")
        text = option.get("description")
        check.size((*here, "description"), text, "select option description")
    values = [option["value"] for option in options]
    check.rule(path, len(set(values)) == len(values), "select values are unique")


def modal_breaches(modal: Json) -> list[Breach]:
    """Return what is wrong with a modal."""
    check = Check()
    check.size(("custom_id",), modal.get("custom_id"), "custom_id")
    check.size(("title",), modal.get("title"), "modal title")
    parts = modal.get("components") or []
    check.size(("components",), parts, "modal parts")
    ids: list[Any] = []
    for index, part in enumerate(parts):
        path = ("components", index)
        if part["type"] == LABEL:
            check.size((*path, "label"), part.get("label"), "modal label")
            check.size((*path, "description"), part.get("description"), "modal label description")
            _field(check, (*path, "component"), part["component"])
            ids.append(part["component"].get("custom_id"))
    check.rule(("components",), len(set(ids)) == len(ids), "custom ids are unique")
    return check.breaches


def _field(check: Check, path: Path_, field: Json) -> None:
    if field["type"] == SELECT:
        _select(check, path, field)
        return
    check.size((*path, "custom_id"), field.get("custom_id"), "custom_id")
    if field["type"] == TEXT_INPUT:
        check.size((*path, "value"), field.get("value"), "modal text value")
        check.size((*path, "placeholder"), field.get("placeholder"), "modal text placeholder")
    elif field["type"] == RADIO:
        check.size((*path, "options"), field.get("options"), "radio options")
    elif field["type"] == CHECKBOXES:
        check.size((*path, "options"), field.get("options"), "checkbox options")
