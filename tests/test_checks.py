"""The checks that are programs of their own: lint, format, types."""

import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).parent.parent

CHECKS = {
    "the linter finds nothing": ["ruff", "check", "."],
    "every file is formatted": ["ruff", "format", "--check", "."],
    "every type holds": ["mypy"],
}


@pytest.mark.parametrize("command", CHECKS.values(), ids=CHECKS.keys())
def test_check(command: list[str]) -> None:
    done = subprocess.run(
        [sys.executable, "-m", *command], cwd=ROOT, capture_output=True, text=True, check=False
    )
    assert done.returncode == 0, done.stdout + done.stderr
