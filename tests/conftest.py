"""What holds for every test."""

import gc
import logging
import os
import shutil
import sys
from collections.abc import Iterator
from pathlib import Path

import pytest
from hypothesis import settings

# A test is never timed: on a busy machine it would fail for no reason. The benchmarks measure.
settings.register_profile("noonstone", deadline=None, max_examples=20)
settings.register_profile("full", deadline=None, max_examples=100)
settings.load_profile("noonstone")

# What tests start keeps what it compiles, whatever the environment of the caller says: to compile
# everything anew is half of the time that a short program takes.
os.environ.pop("PYTHONDONTWRITEBYTECODE", None)
sys.dont_write_bytecode = False

# Databases wait for a disk at every commit, some ten thousand times in the suite: memory does not.
_MEMORY, _ROOM_BYTES = Path("/dev/shm"), 2 << 30
if os.access(_MEMORY, os.W_OK) and shutil.disk_usage(_MEMORY).free > _ROOM_BYTES:
    os.environ.setdefault("PYTEST_DEBUG_TEMPROOT", str(_MEMORY))

# Nothing of what is collected is garbage.
gc.disable()

_LOGGERS = (None, "bot", "aiosqlite")


def pytest_configure(config: pytest.Config) -> None:
    """Try every property with all its examples where all is asked for."""
    if config.option.markexpr == "full":
        os.environ["NOONSTONE_TEST_FULL"] = "1"
        settings.load_profile("full")


@pytest.hookimpl(tryfirst=True)
def pytest_collection_modifyitems(config: pytest.Config, items: list[pytest.Item]) -> None:
    """Take every property for a part of what is asked for in full."""
    if config.option.markexpr == "full":
        for item in items:
            if getattr(getattr(item, "obj", None), "is_hypothesis_test", False):
                item.add_marker("full")


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
