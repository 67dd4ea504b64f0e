"""One table of the figures that matter, from the file that pytest-benchmark writes.

The table of DEVELOPERS.md is renewed by ``python -m pytest tests/bench --figures DEVELOPERS.md``.
"""

import re
import tomllib
from collections.abc import Mapping
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path
from typing import Any

__all__ = ["Row", "places", "put_between_marks", "rows", "table", "told"]

_MARKS = re.compile(r"(<!-- figures: begin -->\n).*?(<!-- figures: end -->)", re.DOTALL)
_PLACE = re.compile(r"\{([^}]+)\}")
_NOT_MEASURED = "not measured"


@dataclass(frozen=True)
class Row:
    """A line of the table; its figures have places {file:test:figure} to be filled."""

    what: str
    figures: str


def rows() -> list[Row]:
    """Return the lines of the table, to be filled."""
    read = tomllib.loads(Path(__file__).with_name("figures.toml").read_text(encoding="utf-8"))
    return [Row(row["what"], " ".join(row["figures"].split("\n"))) for row in read["row"]]


def places(row: Row) -> list[tuple[str, str, str]]:
    """Return file, test and figure of every place of a row."""
    found = (place.split(":", 1) for place in _PLACE.findall(row.figures))
    return [(file, *rest.rpartition(":")[::2]) for file, rest in found]


def table(results: Mapping[str, Any]) -> str:
    """Return the table as Markdown, with the day and the machine."""
    known = {_name(entry["fullname"]): entry for entry in results["benchmarks"]}
    lines = [f"| {row.what} | {_filled(row.figures, known)} |" for row in rows()]
    head = [_measured_on(results), "", "| what | figure |", "| --- | --- |"]
    return "\n".join([*head, *lines]) + "\n"


def put_between_marks(file: Path, text: str) -> None:
    """Put the text into a file between its marks, which must be there."""
    before = file.read_text(encoding="utf-8")
    after, times = _MARKS.subn(lambda marks: f"{marks[1]}{text}{marks[2]}", before)
    if times != 1:
        raise ValueError(f"{file} has no place for the figures")
    file.write_text(after, encoding="utf-8")


def told(name: str, value: float) -> str:
    """Return a figure with its unit, which its name tells.

    >>> told("median", 0.0000123), told("p99_ms", 4.56), told("held_mb", 81.2)
    ('12 µs', '4.6 ms', '81 MB')
    """
    if name == "median":
        name, value = "time_ms", 1000.0 * value
    if name.endswith("_ms"):
        small = value < 0.1
        return f"{_short(1000.0 * value if small else value)} {'µs' if small else 'ms'}"
    if name.endswith("_mb"):
        return f"{value:.0f} MB"
    return f"{value:.2f} ×"


def _short(value: float) -> str:
    return f"{value:.0f}" if value >= 10.0 else f"{value:.2g}"


def _name(fullname: str) -> str:
    file, _, test = fullname.partition("::")
    return f"{Path(file).stem.removeprefix('test_bench_')}:{test}"


def _filled(figures: str, known: Mapping[str, Any]) -> str:
    def one(place: re.Match[str]) -> str:
        test, _, figure = place[1].rpartition(":")
        if test not in known:
            return _NOT_MEASURED
        entry = known[test]
        values = {"median": entry["stats"]["median"], **entry["extra_info"]}
        return told(figure, values[figure])

    return _PLACE.sub(one, figures)


def _measured_on(results: Mapping[str, Any]) -> str:
    machine = results["machine_info"]
    day = datetime.fromisoformat(results["datetime"]).date()
    chip, python = machine["cpu"].get("brand_raw", machine["machine"]), machine["python_version"]
    return (
        f"Measured on {day}: {machine['cpu'].get('count', '?')} cores of {chip}, Python {python}."
    )
