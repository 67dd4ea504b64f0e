"""Runs a batch of messages of another hand once and prints what was heard.

    PYTHONPATH=. python -m tests.bot.dangers.batch FOLDER

The folder has ``hazards.tsv`` (a line is key, tab, message), ``lookalikes.tsv`` and
``ordinary.tsv`` (a line is a message). The first run alone is a measure; then read on.
"""

import sys
from pathlib import Path

from bot.dangers import listen
from bot.dangers.learned import NOTHING

__all__ = ["main"]


def _first(text: str) -> str:
    return next((alarm.key for alarm in listen(text) if not alarm.asked), NOTHING)


def main() -> None:
    """Print the shares, and below them each message that was heard wrongly."""
    folder = Path(sys.argv[1])
    wrong = []
    for name in ("hazards", "lookalikes", "ordinary"):
        lines = (folder / f"{name}.tsv").read_text(encoding="utf-8").splitlines()
        rows = [line.rpartition("\t") for line in lines if line.strip()]
        heard = [(key or NOTHING, _first(text), text) for key, _, text in rows]
        alarms = sum(first != NOTHING for _, first, _ in heard)
        right = sum(key == first for key, first, _ in heard)
        print(f"{name}: {right} of {len(heard)} right first, {alarms} alarmed")
        wrong += [f"  {key} <- {first}: {text}" for key, first, text in heard if key != first]
    print("\n".join(wrong))


if __name__ == "__main__":
    main()
