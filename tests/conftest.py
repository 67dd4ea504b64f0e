"""What holds for every test."""

import gc
import logging
import os
import shutil
import sys
from collections.abc import Generator, Iterator
from pathlib import Path
from typing import Any

import pytest
from hypothesis import settings

from tests.turns import TURN, Case, in_turn, now, turns

# A test is never timed: on a busy machine it would fail for no reason. The benchmarks measure.
settings.register_profile("noonstone", deadline=None, max_examples=20)
settings.register_profile("full", deadline=None, max_examples=100)
settings.load_profile("noonstone")

# What tests start keeps what it compiles, whatever the environment of the caller says: to compile
# everything anew is half of the time that a short program takes.
os.environ.pop("PYTHONDONTWRITEBYTECODE", None)
sys.dont_write_bytecode = False

# Arrays are small here: threads of an algebra library cost each process more than they save.
os.environ.setdefault("OPENBLAS_NUM_THREADS", "1")

# Databases wait for a disk at every commit, some ten thousand times in the suite: memory does not.
_MEMORY, _ROOM_BYTES = Path("/dev/shm"), 2 << 30
if os.access(_MEMORY, os.W_OK) and shutil.disk_usage(_MEMORY).free > _ROOM_BYTES:
    os.environ.setdefault("PYTEST_DEBUG_TEMPROOT", str(_MEMORY))

# Nothing of what is collected is garbage.
gc.disable()

_LOGGERS = (None, "bot", "aiosqlite")
_TURN = pytest.StashKey[int | None]()


def pytest_configure(config: pytest.Config) -> None:
    """Try every property with all its examples where all is asked for, and else tell the turn."""
    if config.option.markexpr == "full":
        os.environ["NOONSTONE_TEST_FULL"] = "1"
        settings.load_profile("full")
    elif hasattr(config, "workerinput"):
        config.stash[_TURN] = config.workerinput["turn"]
    elif config.args_source is pytest.Config.ArgsSource.TESTPATHS:
        config.stash[_TURN] = now()


@pytest.hookimpl(optionalhook=True)
def pytest_configure_node(node: Any) -> None:
    """Have all workers take the same turn."""
    node.workerinput["turn"] = node.config.stash.get(_TURN, None)


def pytest_report_header(config: pytest.Config) -> str | None:
    """Tell how this run is repeated."""
    turn = config.stash.get(_TURN, None)
    return None if turn is None else f"by turns: {TURN}={turn} takes the same tests, -m full all"


@pytest.hookimpl(wrapper=True)
def pytest_collect_file() -> Generator[None, list[pytest.Collector], list[pytest.Collector]]:
    """Look for examples in the program alone: what only tests has none."""
    found = yield
    return [one for one in found if isinstance(one, pytest.Module)]


@pytest.hookimpl(tryfirst=True)
def pytest_collection_modifyitems(config: pytest.Config, items: list[pytest.Item]) -> None:
    """Take those whose turn it is; where all is asked for in full, mark what else takes turns."""
    full, turn = config.option.markexpr == "full", config.stash.get(_TURN, None)
    if not full and turn is None:
        return
    groups = turns(
        Case(item.nodeid, _function(item), item.get_closest_marker("slow") is not None)
        for item in items
        if item.get_closest_marker("full") is None
    )
    if turn is not None:
        _, left = in_turn(groups, turn)
        config.hook.pytest_deselected(items=[item for item in items if item.nodeid in left])
        items[:] = [item for item in items if item.nodeid not in left]
        return
    waiting = {name for group in groups for part in group for name in part}
    for item in items:
        drawn = getattr(getattr(item, "obj", None), "is_hypothesis_test", False)
        if drawn or item.nodeid in waiting:
            item.add_marker("full")


def _function(item: pytest.Item) -> str:
    return item.nodeid.partition("[")[0]


def pytest_collection_finish() -> None:
    """Have the collector of garbage pass by the tests themselves, which stay to the end."""
    gc.freeze()
    gc.enable()


@pytest.fixture(autouse=True)
def _levels_of_logs() -> Iterator[None]:
    """Give back the levels that a test which starts the program's logs has set."""
    levels = {name: logging.getLogger(name).level for name in _LOGGERS}
    yield
    for name, level in levels.items():
        logging.getLogger(name).setLevel(level)
