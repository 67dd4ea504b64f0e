"""Do the tests notice? ``python -m tests.mutation ROOM [--seed N] [--sample K] [--again]``.

A sample of the mutants of a room's modules, each tried until the first test fails: with those of
the room's tests that call the changed function, and, if it survives them, with all. What survived
is printed and kept in the system's temporary files; ``--again`` tries only that, after new tests.
``--minutes`` ends a room's mutants early and tells how many were tried, in the order in which they
were drawn. Without a room, every room of ``rooms.toml`` is tried.
"""

import argparse
import json
import random
import time
import tomllib
from collections.abc import Sequence
from math import inf
from pathlib import Path
from tempfile import gettempdir
from typing import Any

from tests.mutation.mutants import Mutant, mutants_of
from tests.mutation.reach import Recording, reaching, read
from tests.mutation.trial import ROOT, Outcome, preload, run

_ROOMS = Path(__file__).with_name("rooms.toml")
_KEPT = Path(gettempdir()) / "noonstone-mutation"
_FIRST_CPU_S = 900
# A mutant that takes so many times as long as the tests do otherwise has hung.
_HUNG, _LEAST_CPU_S = 5, 20


def rooms() -> dict[str, Any]:
    """Return the rooms: which modules, and which tests are to notice."""
    return tomllib.loads(_ROOMS.read_text(encoding="utf-8"))


def modules_of(room: dict[str, Any]) -> list[Path]:
    """Return the files of a room: those named or all of a folder, but what it goes without."""
    named = [ROOT / name for name in room["modules"]]
    found = [
        path for one in named for path in (sorted(one.rglob("*.py")) if one.is_dir() else [one])
    ]
    left_out = {ROOT / name for name in room.get("without", ())}
    return [path for path in found if left_out.isdisjoint((path, *path.parents))]


def sampled(room: dict[str, Any], seed: int, count: int) -> tuple[list[tuple[Path, Mutant]], int]:
    """Return a sample of a room's mutants as they were drawn, and how many there are."""
    every = [(path, m) for path in modules_of(room) for m in mutants_of(path.read_text("utf-8"))]
    chosen = random.Random(seed).sample(range(len(every)), min(count, len(every)))
    return [every[index] for index in chosen], len(every)


def try_room(
    name: str, room: dict[str, Any], seed: int, count: int, *, again: bool, minutes: float
) -> None:
    """Try a sample of a room's mutants, and print what survived."""
    tests = room["tests"]
    noted = _KEPT / f"{name}-reached.json"
    noted.parent.mkdir(exist_ok=True)
    outcome, seconds = run(tests, _FIRST_CPU_S, record=Recording(ROOT, noted))
    if outcome is not Outcome.SURVIVED:
        failed = ", ".join(one.name for one in read(noted) if one.failed)
        raise SystemExit(f"{name}: its tests fail without a mutant: {failed}")
    reached = read(noted)
    cpu_s = max(_LEAST_CPU_S, round(_HUNG * seconds))
    chosen, whole = sampled(room, seed, count)
    kept = _KEPT / f"{name}-{seed}-{count}.json".replace("/", "-")
    if again:
        before = set(json.loads(kept.read_text("utf-8")))
        chosen = [(path, mutant) for path, mutant in chosen if _id(path, mutant) in before]
    print(
        f"{name}: {len(chosen)} of {whole} mutants, seed {seed}, {seconds:.1f} s of tests",
        flush=True,
    )
    survived, tried, ends_s = [], 0, time.monotonic() + 60.0 * minutes
    for path, mutant in chosen:
        if time.monotonic() > ends_s:
            break
        tried += 1
        outcome = _tried(
            tests, cpu_s, path, mutant, reaching(reached, path, mutant.line, mutant.inside)
        )
        if outcome is Outcome.SURVIVED:
            survived.append(_id(path, mutant))
            print(f"  survived {survived[-1]}", flush=True)
    kept.parent.mkdir(exist_ok=True)
    kept.write_text(json.dumps(survived), encoding="utf-8")
    killed = tried - len(survived)
    print(f"  killed {killed} of {tried} ({100.0 * killed / max(1, tried):.1f} %)", flush=True)


def _tried(
    tests: Sequence[str], cpu_s: int, path: Path, mutant: Mutant, own: Sequence[str]
) -> Outcome:
    """Return what became of a mutant: with its own tests, and with all where it survives them."""
    changed = path, mutant.tree
    if own:
        files = list(dict.fromkeys(name.partition("::")[0] for name in own))
        outcome, _ = run(files, cpu_s, changed, own)
        if outcome is not Outcome.SURVIVED:
            return outcome
    # What is kept at hand, or reached by another process, is seen by tests that do not call it.
    return run(tests, cpu_s, changed)[0]


def _id(path: Path, mutant: Mutant) -> str:
    return f"{path.relative_to(ROOT)}:{mutant}"


def main() -> None:
    """Try the rooms that are asked for."""
    parser = argparse.ArgumentParser(prog="python -m tests.mutation", description=__doc__)
    parser.add_argument("room", nargs="*", help="a room of rooms.toml; all without one")
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--sample", type=int, default=80, metavar="K")
    parser.add_argument("--again", action="store_true", help="only what survived the last time")
    parser.add_argument("--minutes", type=float, default=inf, help="for each room, at most")
    asked = parser.parse_args()
    known = rooms()
    unknown = [name for name in asked.room if name not in known]
    if unknown:
        parser.error(f"no such room: {', '.join(unknown)}; there are {', '.join(known)}")
    preload()
    for name in asked.room or known:
        try_room(
            name, known[name], asked.seed, asked.sample, again=asked.again, minutes=asked.minutes
        )


if __name__ == "__main__":
    main()
