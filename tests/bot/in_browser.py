"""The real browser of the tests: where it is, how it is started, and when it may be missing."""

import os
import shutil

import pytest

__all__ = ["CHROMIUM", "FLAGS", "needs_chromium"]

CHROMIUM = shutil.which("chromium") or shutil.which("chromium-browser")
FLAGS = [
    "--no-sandbox",
    "--disable-gpu",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
]
needs_chromium = pytest.mark.skipif(
    CHROMIUM is None and "NOONSTONE_TEST_NEVER_SKIP" not in os.environ,
    reason="no chromium on this machine",
)
