"""How often one may ask: a bucket for each asker that refills steadily and is forgotten when full.

It is memory of this process only: it needs no store, and a restart forgives everything.
"""

import time
from collections import OrderedDict
from collections.abc import Callable, Hashable

__all__ = ["Allowance", "Claim", "take_together"]

# Waiting exactly as long as told must be enough, whatever the rounding of floats.
_WHOLE = 1.0 - 1e-9


class Allowance:
    """A number of questions per minute for each key, all of them at once if need be.

    It remembers the ``most_keys`` that asked last, so that a crowd cannot fill the memory; who
    is forgotten starts with a full bucket again.
    """

    def __init__(
        self,
        per_minute: int,
        clock: Callable[[], float] = time.monotonic,
        most_keys: int = 10_000,
    ) -> None:
        self._most = float(per_minute)
        self._per_second = per_minute / 60.0
        self._clock = clock
        self._most_keys = most_keys
        self._left: OrderedDict[Hashable, tuple[float, float]] = OrderedDict()

    def wait(self, key: Hashable) -> float:
        """Return the seconds until the next question is allowed: 0 for now."""
        left, _ = self._now_left(key)
        return 0.0 if left >= _WHOLE else (1.0 - left) / self._per_second

    def take(self, key: Hashable) -> float:
        """Take one question; return 0 when allowed, otherwise the seconds to wait."""
        wait = self.wait(key)
        left, now = self._now_left(key)
        self._left[key] = (left if wait else max(0.0, left - 1.0), now)
        self._left.move_to_end(key)
        if len(self._left) > self._most_keys:
            self._left.popitem(last=False)
        return wait

    def _now_left(self, key: Hashable) -> tuple[float, float]:
        now = self._clock()
        left, then = self._left.get(key, (self._most, now))
        return min(self._most, left + (now - then) * self._per_second), now


Claim = tuple[Allowance, Hashable]


def take_together(*claims: Claim) -> float:
    """Take one question of every claim, or of none; return the seconds to wait, 0 when taken."""
    wait = max((allowance.wait(key) for allowance, key in claims), default=0.0)
    if not wait:
        for allowance, key in claims:
            allowance.take(key)
    return wait
