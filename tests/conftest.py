"""What holds for every test."""

import logging
import os
import sys
from collections.abc import Iterator

import pytest
from hypothesis import settings

# A test is never timed: on a busy machine it would fail for no reason. The benchmarks measure.
settings.register_profile("noonstone", deadline=None)
settings.load_profile("noonstone")

# What tests start keeps what it compiles, whatever the environment of the caller says: to compile
# everything anew is half of the time that a short program takes.
os.environ.pop("PYTHONDONTWRITEBYTECODE", None)
sys.dont_write_bytecode = False

_LOGGERS = (None, "bot", "aiosqlite")


@pytest.fixture(autouse=True)
def _levels_of_logs() -> Iterator[None]:
    """Give back the levels that a test which starts the program's logs has set."""
    levels = {name: logging.getLogger(name).level for name in _LOGGERS}
    yield
    for name, level in levels.items():
        logging.getLogger(name).setLevel(level)
