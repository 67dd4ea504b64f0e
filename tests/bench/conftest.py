"""Prints the figures that matter as one table, and puts it into a file when asked to."""

import json
from pathlib import Path

import pytest

from tests.bench.figures import put_between_marks, table

_RESULTS = Path(".benchmarks") / "latest.json"


def pytest_addoption(parser: pytest.Parser) -> None:
    """Take the file whose table is to be renewed."""
    parser.addoption("--figures", type=Path, help="renew the table of figures in this file")


@pytest.hookimpl(tryfirst=True)
def pytest_configure(config: pytest.Config) -> None:
    """Have the results written where the table is made from, and no other table printed."""
    if not config.option.benchmark_json:
        _RESULTS.parent.mkdir(exist_ok=True)
        config.option.benchmark_json = str(_RESULTS)
    config.option.benchmark_quiet = True


@pytest.hookimpl(trylast=True)
def pytest_terminal_summary(
    terminalreporter: pytest.TerminalReporter, config: pytest.Config
) -> None:
    """Print the table."""
    file = Path(config.option.benchmark_json)
    if config.option.collectonly or not file.exists():
        return
    text = table(json.loads(file.read_text(encoding="utf-8")))
    terminalreporter.write_sep("=", "figures")
    terminalreporter.write(text)
    if config.option.figures is not None:
        put_between_marks(config.option.figures, text)
