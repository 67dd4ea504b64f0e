"""What holds for every test."""

import logging
from collections.abc import Iterator

import pytest
from hypothesis import settings

# A test is never timed: on a busy machine it would fail for no reason. The benchmarks measure.
settings.register_profile("noonstone", deadline=None)
settings.load_profile("noonstone")

_LOGGERS = (None, "bot", "aiosqlite")


@pytest.fixture(autouse=True)
def _levels_of_logs() -> Iterator[None]:
    """Give back the levels that a test which starts the program's logs has set."""
    levels = {name: logging.getLogger(name).level for name in _LOGGERS}
    yield
    for name, level in levels.items():
        logging.getLogger(name).setLevel(level)
