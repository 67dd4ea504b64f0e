"""The command line, run within this process or, where that matters, in one of its own.

A process of its own takes seconds to start; what is typed and printed is the same.
"""

import io
import logging
import os
import subprocess
import sys
from collections.abc import Mapping
from contextlib import redirect_stderr, redirect_stdout
from pathlib import Path
from unittest.mock import patch

from bot.__main__ import main

__all__ = ["run", "started"]

_ROOT = Path(__file__).parent.parent.parent
_BARE = {"PATH": "/usr/bin:/bin", "HOME": "/nonexistent", "PYTHONUTF8": "1"}


def started(*arguments: str, typed: str = "", **settings: str) -> subprocess.CompletedProcess[str]:
    """Run one command of the command line in a process of its own, in a bare environment."""
    return subprocess.run(
        [sys.executable, "-m", "bot", *arguments],
        cwd=_ROOT,
        input=typed,
        capture_output=True,
        text=True,
        check=False,
        env=_BARE | settings,
    )


def run(*arguments: str, typed: str = "", **settings: str) -> subprocess.CompletedProcess[str]:
    """Run one command of the command line in this process, with the same environment."""
    root = logging.getLogger()
    handlers = root.handlers[:]
    out, err = io.StringIO(), io.StringIO()
    try:
        with (
            patch.dict(os.environ, _environment(settings), clear=True),
            patch.object(sys, "stdin", io.StringIO(typed)),
            redirect_stdout(out),
            redirect_stderr(err),
        ):
            code = main(arguments)
    finally:
        root.handlers[:] = handlers
    return subprocess.CompletedProcess(arguments, code, out.getvalue(), err.getvalue())


def _environment(settings: Mapping[str, str]) -> dict[str, str]:
    # Pytest tells in this variable which test runs, and takes it away itself.
    told = {key: value for key, value in os.environ.items() if key.startswith("PYTEST_")}
    return {**_BARE, **told, **settings}
