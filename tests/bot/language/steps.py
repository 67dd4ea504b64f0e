"""Work counted in lines of Python run, so that a test of speed needs no clock."""

import sys
from collections.abc import Callable
from typing import Any

__all__ = ["steps_of"]


def steps_of(work: Callable[[], object]) -> int:
    """Count the lines of Python that ``work`` runs."""
    count = 0

    def trace(_frame: object, event: str, _argument: object) -> Any:
        nonlocal count
        count += event == "line"
        return trace

    before = sys.gettrace()
    sys.settrace(trace)
    try:
        work()
    finally:
        sys.settrace(before)
    return count
