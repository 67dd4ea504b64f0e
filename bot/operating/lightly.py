"""Starting light and ending quietly, for a program that mostly answers one question."""

import gc
import os
import sys
from collections.abc import Iterator
from contextlib import contextmanager

__all__ = ["lightly"]


@contextmanager
def lightly() -> Iterator[None]:
    """Run without looking for garbage; who answers many questions looks again once started.

    A reader that has seen enough (``… | head``) ends the program without a word.
    """
    gc.disable()
    # No array here is large enough for more threads, each of which costs time to start.
    os.environ.setdefault("OPENBLAS_NUM_THREADS", "1")
    try:
        yield
        sys.stdout.flush()
    except BrokenPipeError:
        # What Python still writes when it ends goes nowhere.
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
    finally:
        # What ends now is not looked through once more.
        gc.freeze()
        gc.enable()
