"""Every documented limit is kept at n and broken at n + 1 (and at the least and one below)."""

from collections.abc import Callable
from typing import Any

import pytest

from tests.discord.command_limits import command_breaches, command_characters
from tests.discord.limits import Breach, Json, autocomplete_breaches, form_errors, limits
from tests.discord.message_limits import message_breaches, modal_breaches

Builder = Callable[[int], list[Breach]]


def slash(**changes: Any) -> Json:
    return {"name": "lamp", "description": "A lamp.", "type": 1, **changes}


def option(**changes: Any) -> Json:
    return {"name": "tube", "description": "The tube.", "type": 3, **changes}


def commands(**changes: Any) -> list[Breach]:
    return command_breaches([slash(**changes)])


def one_option(**changes: Any) -> list[Breach]:
    return commands(options=[option(**changes)])


def many(kind: int, n: int) -> list[Breach]:
    words = {} if kind == 1 else {"description": ""}
    return command_breaches([slash(name=f"c{i}", type=kind, **words) for i in range(n)])


def heavy(n: int) -> list[Breach]:
    """Return a command of exactly n characters."""
    options = [option(name=f"o{i:02}", description="d") for i in range(20)]
    for part in options:
        part["choices"] = [{"name": f"{i:03}", "value": "v" * 12} for i in range(25)]
    command = slash(options=options)
    for part in (p for o in options for p in [*o["choices"]]):
        room = min(n - command_characters(command), 100 - len(part["value"]))
        part["value"] += "v" * room
    assert command_characters(command) == n
    return command_breaches([command])


def embed(**parts: Any) -> list[Breach]:
    return message_breaches({"embeds": [{"title": "t", **parts}]})


def heavy_embeds(n: int) -> list[Breach]:
    first = min(n, 4096)
    parts = [{"description": "x" * first}, {"description": "x" * (n - first)}]
    return message_breaches({"embeds": parts})


def row(*parts: Json) -> list[Breach]:
    return message_breaches({"components": [{"type": 1, "components": list(parts)}]})


def card(*parts: Json, **more: Any) -> list[Breach]:
    return message_breaches({"flags": 1 << 15, "components": list(parts), **more})


def button(**changes: Any) -> Json:
    return {"type": 2, "style": 2, "label": "Share", "custom_id": "share", **changes}


def gallery(items: int, words: int = 1) -> list[Breach]:
    one = {"media": {"url": "https://x/y.png"}, "description": "x" * words}
    return card({"type": 10, "content": "x"}, {"type": 12, "items": [one] * items})


def select(**changes: Any) -> list[Breach]:
    choice = {"label": "l", "value": "v"}
    return row({"type": 3, "custom_id": "s", "options": [choice], **changes})


def select_option(**changes: Any) -> list[Breach]:
    return select(options=[{"label": "l", "value": "v", **changes}])


def modal(**changes: Any) -> list[Breach]:
    return modal_breaches({"custom_id": "m", "title": "Plan", "components": [label()], **changes})


def label(component: Json | None = None, **changes: Any) -> Json:
    field = component or {"type": 4, "custom_id": "f", "style": 1}
    return {"type": 18, "label": "Tube", "component": field, **changes}


def labels(n: int) -> list[Breach]:
    return modal(
        components=[label({"type": 4, "custom_id": f"f{i}", "style": 1}) for i in range(n)]
    )


def text_field(**changes: Any) -> list[Breach]:
    return modal(components=[label({"type": 4, "custom_id": "f", "style": 1, **changes})])


def group(kind: int, n: int) -> list[Breach]:
    options = [{"label": "l", "value": f"v{i}"} for i in range(n)]
    return modal(components=[label({"type": kind, "custom_id": "f", "options": options})])


def choices(n: int) -> list[Json]:
    return [{"name": f"c{i}", "value": "v"} for i in range(n)]


BUILDERS: dict[str, Builder] = {
    "slash commands": lambda n: many(1, n),
    "user commands": lambda n: many(2, n),
    "message commands": lambda n: many(3, n),
    "command name": lambda n: commands(name="x" * n),
    "command description": lambda n: commands(description="x" * n),
    "command characters": heavy,
    "options": lambda n: commands(options=[option(name=f"o{i}") for i in range(n)]),
    "option name": lambda n: one_option(name="x" * n),
    "option description": lambda n: one_option(description="x" * n),
    "choices": lambda n: one_option(choices=choices(n)),
    "choice name": lambda n: one_option(choices=[{"name": "x" * n, "value": "v"}]),
    "choice value": lambda n: one_option(choices=[{"name": "x", "value": "v" * n}]),
    "option max_length": lambda n: one_option(max_length=n),
    "autocomplete choices": lambda n: autocomplete_breaches(choices(n)),
    "content": lambda n: message_breaches({"content": "x" * n}),
    "embeds": lambda n: message_breaches({"embeds": [{"title": "t"}] * n}),
    "embed characters": heavy_embeds,
    "embed title": lambda n: embed(title="x" * n),
    "embed description": lambda n: embed(description="x" * n),
    "embed fields": lambda n: embed(fields=[{"name": "n", "value": "v"}] * n),
    "field name": lambda n: embed(fields=[{"name": "x" * n, "value": "v"}]),
    "field value": lambda n: embed(fields=[{"name": "n", "value": "x" * n}]),
    "embed footer": lambda n: embed(footer={"text": "x" * n}),
    "embed author": lambda n: embed(author={"name": "x" * n}),
    "attachments": lambda n: message_breaches({"attachments": [{"id": i} for i in range(n)]}),
    "attachment description": lambda n: message_breaches(
        {"attachments": [{"id": 0, "description": "x" * n}]}
    ),
    "gallery items": gallery,
    "gallery words": lambda n: gallery(1, n),
    "attachment bytes": lambda n: message_breaches({}, [n]),
    "rows": lambda n: message_breaches(
        {"components": [{"type": 1, "components": [button(custom_id=f"b{i}")]} for i in range(n)]}
    ),
    "buttons in a row": lambda n: row(*(button(custom_id=f"b{i}") for i in range(n))),
    "custom_id": lambda n: row(button(custom_id="x" * n)),
    "button label": lambda n: row(button(label="x" * n)),
    "button url": lambda n: row({"type": 2, "style": 5, "label": "l", "url": "x" * n}),
    "select options": lambda n: select(
        options=[{"label": "l", "value": f"v{i}"} for i in range(n)]
    ),
    "select placeholder": lambda n: select(placeholder="x" * n),
    "select option label": lambda n: select_option(label="x" * n),
    "select option value": lambda n: select_option(value="x" * n),
    "select option description": lambda n: select_option(description="x" * n),
    "card components": lambda n: card(*({"type": 10, "content": "x"} for _ in range(n))),
    "card text": lambda n: card({"type": 10, "content": "x" * n}),
    "modal title": lambda n: modal(title="x" * n),
    "modal parts": labels,
    "modal label": lambda n: modal(components=[label(label="x" * n)]),
    "modal label description": lambda n: modal(components=[label(description="x" * n)]),
    "modal text value": lambda n: text_field(value="x" * n),
    "modal text placeholder": lambda n: text_field(placeholder="x" * n),
    "radio options": lambda n: group(21, n),
    "checkbox options": lambda n: group(22, n),
}


def test_every_limit_of_the_table_is_tried_at_its_ends() -> None:
    assert BUILDERS.keys() == limits().keys()


@pytest.mark.parametrize("name", BUILDERS)
def test_a_limit_holds_at_its_most_and_breaks_above(name: str) -> None:
    most = limits()[name].most
    assert BUILDERS[name](most) == []
    assert {breach.rule for breach in BUILDERS[name](most + 1)} == {name}


@pytest.mark.parametrize("name", [row.name for row in limits().values() if row.least])
def test_a_limit_holds_at_its_least_and_breaks_below(name: str) -> None:
    least = limits()[name].least
    assert BUILDERS[name](least) == []
    assert name in {breach.rule for breach in BUILDERS[name](least - 1)}


@pytest.mark.parametrize(
    ("breaches", "rule"),
    [
        (commands(name="Lamp"), "slash name characters"),
        (commands(name="a lamp"), "slash name characters"),
        (
            commands(options=[option(name="a"), option(name="b", required=True)]),
            "required options come first",
        ),
        (commands(options=[option(), option()]), "option names are unique"),
        (
            one_option(choices=choices(1), autocomplete=True),
            "choices and autocomplete exclude each other",
        ),
        (command_breaches([slash(), slash()]), "command names are unique"),
        (command_breaches([slash(type=3, name="Check this")]), "menus say nothing"),
        (embed(fields=[{"name": "\n ", "value": "v"}]), "field name"),
        (message_breaches({"embeds": [{"color": 1}]}), "an embed shows something"),
        (row(button(), button()), "custom ids are unique"),
        (card({"type": 10, "content": "x"}, content="y"), "a card has neither content nor embeds"),
        (card({"type": 10, "content": " "}), "a text says something"),
        (card({"type": 99}), "known parts"),
        (row(button(style=5)), "a link button has an address"),
        (
            message_breaches({"allowed_mentions": {"parse": ["users"], "users": ["1"]}}),
            "parse and ids exclude each other",
        ),
    ],
)
def test_a_rule_that_is_no_number_is_checked(breaches: list[Breach], rule: str) -> None:
    assert rule in {breach.rule for breach in breaches}


@pytest.mark.parametrize(
    "name", ["lamp", "lámpara", "лампа", "ランプ", "गर्मी", "ที่", "o'clock", "a-b_2"]
)
def test_a_slash_name_may_use_any_script_in_lower_case(name: str) -> None:
    assert commands(name=name) == []


def test_a_translation_is_held_to_the_same_limit() -> None:
    [breach] = commands(description_localizations={"de": "x" * 101})
    assert breach.path == (0, "description_localizations", "de")


def test_a_breach_is_told_in_discords_own_shape() -> None:
    body = form_errors(embed(title="x" * 257))
    assert body["code"] == 50035
    assert "256" in body["errors"]["embeds"]["0"]["title"]["_errors"][0]["message"]
