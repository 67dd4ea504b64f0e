"""How often one may ask: a bucket for each asker that refills steadily and is forgotten when full.

It is memory of this process only: it needs no store, and a restart forgives everything.
"""

import time
from collections.abc import Callable, Hashable
from typing import Final

from cachetools import LRUCache

__all__ = ["Allowance", "Claim", "Limits", "take_together"]

# Many times what anybody types, and an answer costs milliseconds.
_PERSON_PER_MINUTE: Final = 20
_SERVER_PER_MINUTE: Final = 240

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
        self._left: LRUCache[Hashable, tuple[float, float]] = LRUCache(most_keys)

    def wait(self, key: Hashable) -> float:
        """Return the seconds until the next question is allowed: 0 for now."""
        left, _ = self._now_left(key)
        return 0.0 if left >= _WHOLE else (1.0 - left) / self._per_second

    def take(self, key: Hashable) -> float:
        """Take one question; return 0 when allowed, otherwise the seconds to wait."""
        wait = self.wait(key)
        left, now = self._now_left(key)
        self._left[key] = (left if wait else max(0.0, left - 1.0), now)
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


class Limits:
    """The shares of everybody who asks: a person and a server each have one."""

    def __init__(
        self,
        person_per_minute: int = _PERSON_PER_MINUTE,
        server_per_minute: int = _SERVER_PER_MINUTE,
        clock: Callable[[], float] = time.monotonic,
    ) -> None:
        self._persons = Allowance(person_per_minute, clock)
        self._servers = Allowance(server_per_minute, clock)

    def take(self, person: int, server: int | None) -> float:
        """Take one question of both shares; return 0, or the seconds to wait."""
        claims: list[Claim] = [(self._persons, person)]
        if server is not None:
            claims.append((self._servers, server))
        return take_together(*claims)
