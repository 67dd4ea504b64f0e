"""Which test reaches which function of the program: so a mutant meets its own tests alone."""

import json
import sys
import time
from collections.abc import Iterator, Sequence
from dataclasses import dataclass, field
from pathlib import Path
from types import CodeType, FrameType
from typing import Any

import pytest

__all__ = ["Reach", "Reached", "Recording", "reaching", "read"]


@dataclass(frozen=True, slots=True)
class Reach:
    """A test: its time [s], and the functions it called as (file, first line, last line)."""

    name: str
    seconds: float
    called: frozenset[tuple[str, int, int]]
    failed: bool = False


Reached = tuple[Reach, ...]


@dataclass
class Recording:
    """A plugin that notes for each test what it calls below ``root``, and writes it to a file."""

    root: Path
    into: Path
    _rows: list[dict[str, Any]] = field(default_factory=list)

    @pytest.hookimpl(hookwrapper=True)
    def pytest_runtest_protocol(self, item: pytest.Item) -> Iterator[None]:
        # By identity: the hash of a code object is that of all that it is made of.
        seen: dict[int, CodeType] = {}

        def note(frame: FrameType, _event: str, _given: object) -> None:
            code = frame.f_code
            seen[id(code)] = code

        began = time.process_time()
        sys.settrace(note)
        failed = item.session.testsfailed
        yield
        sys.settrace(None)
        seconds = time.process_time() - began
        row = {"name": item.nodeid, "seconds": seconds, "called": self._own(seen)}
        self._rows.append({**row, "failed": item.session.testsfailed > failed})

    def pytest_sessionfinish(self) -> None:
        self.into.write_text(json.dumps(self._rows), encoding="utf-8")

    def _own(self, seen: dict[int, CodeType]) -> list[tuple[str, int, int]]:
        folders = tuple(str(self.root / name) for name in ("bot", "calc"))
        return [
            (code.co_filename, code.co_firstlineno, max(n for *_, n in code.co_lines() if n))
            for code in seen.values()
            if code.co_filename.startswith(folders) and code.co_name != "<module>"
        ]


def read(kept: Path) -> Reached:
    """Return what was recorded."""
    rows = json.loads(kept.read_text(encoding="utf-8"))
    return tuple(
        Reach(row["name"], row["seconds"], frozenset(map(tuple, row["called"])), row["failed"])
        for row in rows
    )


def reaching(reached: Reached, path: Path, line: int, inside: bool) -> Sequence[str]:
    """Return the tests that call the function of a line, the quickest first.

    Of a line outside every function (``inside`` is false) those that call any of its file.
    """
    found = [
        test
        for test in reached
        if any(
            file == str(path) and (not inside or first <= line <= last)
            for file, first, last in test.called
        )
    ]
    return [test.name for test in sorted(found, key=lambda test: test.seconds)]
