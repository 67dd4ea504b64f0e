"""What a question answered before it moved: status, values, dangers and figures, without its words.

``python -m tests.bot.saying.pinning night`` writes the pin of a question anew; do it before the
move, and afterwards only where a figure was changed on purpose.
"""

import json
import re
import sys
import tomllib
from datetime import date
from pathlib import Path
from random import Random
from typing import Any

from bot.ask import ask
from bot.preferences import Preferences
from bot.reply import Reply

FOLDER = Path(__file__).parent.parent / "pinned" / "moved"
_NUMBER = r"\d+(?:\.\d+)?"
_UNIT = "(?:°F|°C|in|cm|W|%|h)"
# Both ends of a range have its unit.
_SHOWN = re.compile(rf"({_NUMBER})(?:(?: to | and )({_NUMBER}))? ?({_UNIT})(?!\w)")


def _wanted(question: str) -> dict[str, Any]:
    return tomllib.loads((FOLDER / f"{question}.toml").read_text(encoding="utf-8"))


def asker(question: str) -> Preferences:
    """Return who asks: on the pinned day, where the answer depends on it."""
    today: date | None = _wanted(question).get("today")
    return Preferences(today=today)


def lines(question: str) -> list[str]:
    """Return what is asked: mixtures of the options, drawn by lot, the same ones every time."""
    wanted = _wanted(question)
    draw = Random(question)
    told: dict[str, None] = {}
    for _ in range(wanted["draws"]):
        chosen = {name: draw.choice(values) for name, values in wanted["options"].items()}
        parts = (f"{name}:{value}" for name, value in chosen.items() if value)
        told[" ".join((question, *parts))] = None
    return list(told)


def everything(reply: Reply) -> str:
    """Return all that a reply says, of its sources nothing."""
    rows = (f"{row.label}: {row.text}" for row in reply.rows)
    table = (" ".join(row) for row in reply.table.rows) if reply.table else ()
    brief = (line.text for line in reply.brief)
    layers = (*reply.steps, *reply.cautions, *brief, *reply.why)
    parts = (reply.title, reply.answer, *rows, *table, *layers)
    return "\n".join(parts).replace("\u00a0", " ")


def figures(reply: Reply) -> list[str]:
    """Return every figure with a unit that a reply shows, once."""
    return in_text(everything(reply))


def in_text(text: str) -> list[str]:
    """Return every figure with a unit in a text, once."""
    found = _SHOWN.findall(text)
    return sorted({f"{end} {unit}" for low, high, unit in found for end in (low, high) if end})


def told(line: str) -> dict[str, Any]:
    """Return what must not change when a question moves."""
    reply = ask(line, asker(line.partition(" ")[0]))
    values = {v.name: [round(x, 6) for x in (v.low, v.best, v.high)] for v in reply.values}
    dangers = [danger.key for danger in reply.dangers]
    return {
        "status": reply.status,
        "values": values,
        "dangers": dangers,
        "figures": figures(reply) if reply.status == "ok" else [],
    }


def pinned(question: str) -> dict[str, Any]:
    """Return what was answered before."""
    found: dict[str, Any] = json.loads((FOLDER / f"{question}.json").read_text(encoding="utf-8"))
    return found


def write(question: str) -> None:
    """Pin what is answered now."""
    rows = (f"{json.dumps(x)}: {json.dumps(told(x), ensure_ascii=False)}" for x in lines(question))
    text = "{\n" + ",\n".join(rows) + "\n}\n"
    (FOLDER / f"{question}.json").write_text(text, encoding="utf-8")


if __name__ == "__main__":
    for name in sys.argv[1:]:
        write(name)
