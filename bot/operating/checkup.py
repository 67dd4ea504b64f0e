"""What the machine must give the bot: each part is fine, or a sentence says what to do."""

import os
import shutil
import sys
import time
import tomllib
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from datetime import UTC, datetime
from enum import Enum, StrEnum
from importlib import metadata
from pathlib import Path
from tempfile import TemporaryFile
from zoneinfo import ZoneInfo, ZoneInfoNotFoundError

from bot.facts import Say

__all__ = [
    "Examined",
    "Finding",
    "Looked",
    "State",
    "clock_finding",
    "folder_finding",
    "found",
    "packages_finding",
    "python_finding",
    "to_do",
]

_PROGRAM = "noonstone"
_CHECKOUT = Path(__file__).resolve().parent.parent.parent
_OLDEST_PYTHON = (3, 11)
_LEAST_FREE_BYTES = 100_000_000


class Looked(StrEnum):
    """What is looked at."""

    PYTHON = "python"
    PACKAGES = "packages"
    FOLDER = "data folder"
    CLOCK = "clock"
    DATABASE = "database"
    PICTURES = "pictures"
    TOKEN = "token"
    RIGHTS = "permissions"


class State(Enum):
    """How a part is."""

    FINE = "fine"
    TO_DO = "to do"
    UNKNOWN = "not checked"


@dataclass(frozen=True, slots=True)
class Finding:
    """A part and what was found."""

    part: Looked
    state: State
    told: Say


@dataclass(frozen=True, slots=True)
class Examined:
    """What was seen of a part: what is there, what there should be, and how many."""

    here: str = ""
    wanted: str = ""
    count: int = 0


def found(
    part: Looked, what: str, seen: Examined | None = None, state: State = State.FINE
) -> Finding:
    """Return a finding, told by the message ``doctor-<what>`` of what was seen."""
    return Finding(part, state, Say.of("doctor", what, facts=seen or Examined()))


def to_do(part: Looked, what: str, seen: Examined | None = None) -> Finding:
    """Return a finding that says what to do."""
    return found(part, what, seen, State.TO_DO)


def python_finding(version: tuple[int, ...] = sys.version_info[:3]) -> Finding:
    """Look at the version of Python."""
    seen = Examined(".".join(map(str, version)), ".".join(map(str, _OLDEST_PYTHON)))
    old = version < _OLDEST_PYTHON
    return (to_do if old else found)(Looked.PYTHON, "python-old" if old else "python", seen)


def packages_finding(checkout: Path = _CHECKOUT, program: str = _PROGRAM) -> Finding:
    """Look whether every package that the program needs is there in a version that it takes."""
    try:
        wanted = list(_wanted(checkout, program))
    except metadata.PackageNotFoundError:
        return to_do(Looked.PACKAGES, "not-installed", Examined(program))
    if wrong := list(_wrong(wanted)):
        return to_do(Looked.PACKAGES, "packages-wrong", Examined(", ".join(wrong)))
    return found(Looked.PACKAGES, "packages", Examined(count=len(wanted)))


def _wanted(checkout: Path, program: str) -> Iterator[str]:
    """Yield the requirements of the checkout, which may be newer than what was installed."""
    file = checkout / "pyproject.toml"
    if file.exists():
        project = tomllib.loads(file.read_text(encoding="utf-8"))["project"]
        yield from project["dependencies"]
        return
    yield from (w for w in metadata.requires(program) or [] if "extra ==" not in w)


def _wrong(wanted: Iterable[str]) -> Iterable[str]:
    from packaging.requirements import Requirement

    for requirement in map(Requirement, wanted):
        if requirement.marker and not requirement.marker.evaluate():
            continue
        try:
            version = metadata.version(requirement.name)
        except metadata.PackageNotFoundError:
            yield f"{requirement.name} (-)"
            continue
        if not requirement.specifier.contains(version, prereleases=True):
            yield f"{requirement.name} ({version}, {requirement.specifier})"


def folder_finding(folder: Path) -> Finding:
    """Look whether the data folder can be written and has room."""
    there = next(place for place in (folder, *folder.absolute().parents) if place.exists())
    if not there.is_dir() or not os.access(there, os.W_OK | os.X_OK):
        return to_do(Looked.FOLDER, "folder-unwritable", Examined(str(there)))
    try:
        if there == folder:
            with TemporaryFile(dir=folder) as trial:
                trial.write(b"trial")
        free = shutil.disk_usage(there).free
    except OSError:
        return to_do(Looked.FOLDER, "folder-unwritable", Examined(str(there)))
    seen = Examined(str(folder), count=free // 1_000_000)
    if free < _LEAST_FREE_BYTES:
        return to_do(Looked.FOLDER, "folder-full", seen)
    return found(Looked.FOLDER, "folder" if there == folder else "folder-new", seen)


def clock_finding(now_s: float | None = None, zone: str = "Europe/Berlin") -> Finding:
    """Look whether the clock is not behind the program's own files, and time zones are known."""
    now = time.time() if now_s is None else now_s
    written = max(path.stat().st_mtime for path in Path(__file__).parent.glob("*.py"))
    seen = Examined(f"{datetime.fromtimestamp(now, UTC):%Y-%m-%d %H:%M} UTC")
    if now < written:
        return to_do(Looked.CLOCK, "clock-behind", seen)
    try:
        summer = datetime(2026, 7, 1, tzinfo=ZoneInfo(zone)).utcoffset()
    except ZoneInfoNotFoundError:
        return to_do(Looked.CLOCK, "zones-unknown")
    return found(Looked.CLOCK, "clock", seen) if summer else to_do(Looked.CLOCK, "zones-wrong")
