"""What the listening hears of messages that it was mended on; no measure of other messages."""

import tomllib
from pathlib import Path
from typing import Any

from bot.dangers import listen

_HERE = Path(__file__).parent


def _read(name: str) -> dict[str, Any]:
    return tomllib.loads((_HERE / name).read_text(encoding="utf-8"))


def _acts(text: str) -> list[str]:
    return [alarm.key for alarm in listen(text) if not alarm.asked]


def test_most_hazards_of_the_mended_messages_come_first() -> None:
    rows = _read("mended.toml")["hazard"]
    heard = [listen(row["text"]) for row in rows]
    right = [
        bool(alarms) and alarms[0].key in {row["key"], *row["also"]}
        for row, alarms in zip(rows, heard, strict=True)
    ]
    assert len(rows) == 220
    assert sum(right) >= 205


def test_few_look_alikes_of_the_mended_messages_raise_an_alarm() -> None:
    rows = _read("mended.toml")["look_alike"]
    assert len(rows) == 160
    assert sum(bool(_acts(row["text"])) for row in rows) <= 3


def test_hardly_any_ordinary_message_opens_with_an_act() -> None:
    rows = _read("mended.toml")["ordinary"]
    assert len(rows) == 500
    assert len([text for text in rows if _acts(text)]) <= 2


def test_short_sentences_are_heard_and_calm_ones_are_not() -> None:
    rows = _read("plain.toml")
    told = [(key, text) for key, texts in rows["hazard"].items() for text in texts]
    missed = [(key, text) for key, text in told if not any(a.key == key for a in listen(text))]
    assert len(told) > 400
    assert len(missed) <= 6
    assert [text for text in rows["calm"] if _acts(text)] == []
