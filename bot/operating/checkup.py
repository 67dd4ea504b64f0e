"""What the machine must give the bot: each part is fine, or a sentence says what to do."""

import os
import shutil
import sys
import time
import tomllib
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from datetime import UTC, datetime
from enum import Enum
from importlib import metadata
from pathlib import Path
from tempfile import TemporaryFile
from zoneinfo import ZoneInfo, ZoneInfoNotFoundError

__all__ = [
    "Finding",
    "State",
    "clock_finding",
    "folder_finding",
    "packages_finding",
    "python_finding",
]

_PROGRAM = "noonstone"
_CHECKOUT = Path(__file__).resolve().parent.parent.parent
_OLDEST_PYTHON = (3, 11)
_LEAST_FREE_BYTES = 100_000_000


class State(Enum):
    """How a part is."""

    FINE = "fine"
    TO_DO = "to do"
    UNKNOWN = "not checked"


@dataclass(frozen=True, slots=True)
class Finding:
    """A part and what was found."""

    part: str
    state: State
    told: str


def _found(part: str, told: str, to_do: str = "") -> Finding:
    return Finding(part, State.TO_DO, to_do) if to_do else Finding(part, State.FINE, told)


def python_finding(version: tuple[int, ...] = sys.version_info[:3]) -> Finding:
    """Look at the version of Python."""
    told = ".".join(map(str, version))
    oldest = ".".join(map(str, _OLDEST_PYTHON))
    old = version < _OLDEST_PYTHON
    return _found("Python", told, f"{told} is too old: install {oldest} or newer." if old else "")


def packages_finding(checkout: Path = _CHECKOUT, program: str = _PROGRAM) -> Finding:
    """Look whether every package that the program needs is there in a version that it takes."""
    part = "packages"
    try:
        wanted = list(_wanted(checkout, program))
    except metadata.PackageNotFoundError:
        return _found(part, "", f"{program} is not installed here: install it as README.md says.")
    wrong = list(_wrong(wanted))
    told = f"{len(wanted)} wanted, all there"
    return _found(part, told, f"install again: {', '.join(wrong)}." if wrong else "")


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
            yield f"{requirement.name} is missing"
            continue
        if not requirement.specifier.contains(version, prereleases=True):
            yield f"{requirement.name} is {version}, wanted is {requirement.specifier}"


def folder_finding(folder: Path) -> Finding:
    """Look whether the data folder can be written and has room."""
    part = "data folder"
    there = next(place for place in (folder, *folder.absolute().parents) if place.exists())
    if not there.is_dir() or not os.access(there, os.W_OK | os.X_OK):
        return _found(part, "", _unwritable(there))
    try:
        if there == folder:
            with TemporaryFile(dir=folder) as trial:
                trial.write(b"trial")
        free = shutil.disk_usage(there).free
    except OSError:
        return _found(part, "", _unwritable(there))
    megabytes = free // 1_000_000
    if free < _LEAST_FREE_BYTES:
        return _found(part, "", f"only {megabytes} MB are free at {folder}: make room.")
    made = "" if there == folder else ", made at the first start"
    return _found(part, f"{folder}{made}; {megabytes} MB free")


def _unwritable(place: Path) -> str:
    return f"{place} cannot be written: give it to this user, or set NOONSTONE_DATA_DIR."


def clock_finding(now_s: float | None = None, zone: str = "Europe/Berlin") -> Finding:
    """Look whether the clock is not behind the program's own files, and time zones are known."""
    part = "clock"
    now = time.time() if now_s is None else now_s
    written = max(path.stat().st_mtime for path in Path(__file__).parent.glob("*.py"))
    told = f"{datetime.fromtimestamp(now, UTC):%Y-%m-%d %H:%M} UTC; time zones known"
    if now < written:
        return _found(part, "", f"it says {told[:20]}, before this program was written: set it.")
    try:
        summer = datetime(2026, 7, 1, tzinfo=ZoneInfo(zone)).utcoffset()
    except ZoneInfoNotFoundError:
        return _found(part, "", "time zones are not known here: pip install tzdata.")
    return _found(part, told, "" if summer else "time zones are wrong here: pip install tzdata.")
