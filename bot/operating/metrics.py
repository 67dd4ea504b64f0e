"""Counts and times of what the bot does, for Prometheus; a registry of our own, no globals.

Labels hold names of questions and outcomes only: no text, no user, no server.
"""

from prometheus_client import CollectorRegistry, Counter, Gauge, Histogram

__all__ = ["Metrics"]

REMINDERS = ("delivered", "late", "put off", "unsure", "undeliverable", "snoozed", "off")
BOARDS = ("shown", "troubled", "put off", "unsure", "removed", "lost")
_SECONDS = (0.005, 0.01, 0.025, 0.05, 0.1, 0.25, 0.5, 1.0, 3.0)


class Metrics:
    """What is counted while the bot runs."""

    def __init__(self) -> None:
        self.registry = CollectorRegistry()
        self.questions = Counter(
            "noonstone_questions",
            "Questions answered, by question and outcome (ok, problem, error).",
            ["question", "outcome"],
            registry=self.registry,
        )
        self.acknowledged = Histogram(
            "noonstone_acknowledge_seconds",
            "From the arrival of an interaction to its first response.",
            registry=self.registry,
            buckets=_SECONDS,
        )
        self.pictures = Counter(
            "noonstone_pictures",
            "Pictures asked for, by outcome (ready, busy, failed), and those in cards (card).",
            ["outcome"],
            registry=self.registry,
        )
        self.reminders = _by_outcome(
            self.registry,
            "noonstone_reminders",
            "Reminders sent, tried again, given up, or answered by their buttons",
            REMINDERS,
        )
        self.boards = _by_outcome(
            self.registry, "noonstone_boards", "Looks at boards, by what came of them", BOARDS
        )
        self.servers = Gauge(
            "noonstone_servers", "Servers the bot is in, in this process.", registry=self.registry
        )
        self.stall = Gauge(
            "noonstone_loop_stall_seconds",
            "The longest stall of the event loop in the last minute.",
            registry=self.registry,
        )


def _by_outcome(
    registry: CollectorRegistry, name: str, what: str, outcomes: tuple[str, ...]
) -> Counter:
    """Return a counter whose outcomes are all there from the beginning, at none."""
    told = f"{what} ({', '.join(outcomes)})."
    counter = Counter(name, told, ["outcome"], registry=registry)
    for outcome in outcomes:
        counter.labels(outcome)
    return counter
