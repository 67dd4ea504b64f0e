"""Which of the hazards speaks first, and what another one's act does already."""

from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass

from bot.dangers.calls import CALLS_A_VET, soonest_vet, told_call
from bot.dangers.table import Hazard, HazardKind, Later, Urgency, hazard, hazards
from bot.facts import Say
from bot.reply import Alarm, Danger

__all__ = ["MOST_ACTS", "Ordered", "in_order", "merged", "spoken_of", "steps_of"]

MOST_ACTS = 3
"""Hazards whose first acts are said, at most."""
_LATER_BY = 100
_SOONEST = tuple(Urgency)


@dataclass(frozen=True, slots=True)
class Ordered:
    """A hazard as it was heard, and where it stands among the others."""

    hazard: Hazard
    alarm: Alarm
    order: float

    @property
    def urgency(self) -> Urgency:
        """Return when its first act is due."""
        return _urgency(self.alarm)

    @property
    def _is_later(self) -> bool:
        return _SOONEST.index(self.urgency) > _SOONEST.index(self.hazard.urgency)

    @property
    def _instead(self) -> Later | None:
        """What is said in place of the row's own: there is more time, or UV and heat are one."""
        row, late = self.hazard, self._is_later
        if self.alarm.one_lamp:
            return (row.one_lamp_later if late else row.one_lamp) or (row.later if late else None)
        return row.later if late else None

    @property
    def title(self) -> Say:
        """Return what it is called."""
        return self._instead.title if self._instead else self.hazard.title

    @property
    def acts(self) -> tuple[Say, ...]:
        """Return what is to be done now, the first act alone."""
        return self._instead.do_now if self._instead else self.hazard.do_now

    @property
    def does(self) -> frozenset[str]:
        """Return what its first act does."""
        return self.hazard.covers | {self.hazard.act}

    def as_danger(self, say: Callable[[Say], str]) -> Danger:
        """Return the hazard as the reply's data tell it."""
        call = {n: say(x) if isinstance(x, Say) else x for n, x in told_call(self.hazard).items()}
        return Danger(key=self.hazard.key, urgency=self.urgency.value, call=call)


def _urgency(alarm: Alarm) -> Urgency:
    return Urgency(alarm.urgency) if alarm.urgency else hazard(alarm.key).urgency


def merged(alarms: Iterable[Alarm]) -> list[Alarm]:
    """Return each hazard once: what is there before what is only asked, and the sooner one."""
    found: dict[str, Alarm] = {}
    for alarm in alarms:
        known = found.setdefault(alarm.key, alarm)
        soonest = min(known, alarm, key=lambda a: (a.asked, _SOONEST.index(_urgency(a))))
        words = soonest.words or known.words or alarm.words
        found[alarm.key] = soonest.model_copy(update={"words": words})
    return list(found.values())


def in_order(alarms: Sequence[Alarm]) -> list[Ordered]:
    """Return the hazards, the one that speaks first before the others."""
    keys = {alarm.key for alarm in alarms}
    made = [
        Alarm(key=row.key, one_lamp=any(alarm.one_lamp for alarm in alarms))
        for row in hazards().values()
        if row.made_of and row.key not in keys and all(keys & part for part in row.made_of)
    ]
    told = [_placed(alarm, keys) for alarm in (*alarms, *made)]
    return sorted(told, key=lambda item: item.order)


def _placed(alarm: Alarm, keys: set[str]) -> Ordered:
    row = hazard(alarm.key)
    causes = keys & row.made_of[0] if row.made_of else set()
    # The act for the victim also stops its cause, and so it comes before every act it covers.
    stopped = {key for key in keys if causes and hazard(key).kind is HazardKind.STOP}
    covered = {key for key in stopped if hazard(key).act in row.covers | {row.act}}
    order = min((row.rank, *(hazard(key).rank - 0.5 for key in causes | covered)))
    late = _SOONEST.index(_urgency(alarm)) > _SOONEST.index(row.urgency)
    return Ordered(row, alarm, order + _LATER_BY * late)


def spoken_of(told: Sequence[Ordered]) -> list[Ordered]:
    """Return the hazards whose first acts are said: none that another act does already."""
    spoken: list[Ordered] = []
    done: set[str] = set()
    soon = soonest_vet([item.hazard for item in told])
    for item in told:
        # A vet that another hazard wants sooner is called once, and that soon.
        if item.hazard.act == CALLS_A_VET and item.hazard.call.soon != soon:
            continue
        if item.hazard.act not in done and len(spoken) < MOST_ACTS:
            spoken.append(item)
            done |= item.does
    return spoken


def steps_of(
    pressing: Sequence[Ordered], spoken: Sequence[Ordered], calls: Sequence[Say]
) -> Iterator[Say]:
    """Return all the acts in their order, whom to call, and what follows.

    What may not stand beside another hazard's is left out.
    """
    muted = {key for item in pressing for key in item.hazard.mutes}
    for item in pressing:
        done = item not in spoken and _does(spoken, item)
        acts = item.acts[:1] if item.hazard.key in muted else item.acts
        yield from acts[1:] if done else acts
    yield from calls
    for item in pressing[:1]:
        if item.hazard.key not in muted:
            yield from item.hazard.then


def _does(spoken: Sequence[Ordered], item: Ordered) -> bool:
    return any(item.hazard.act in other.does for other in spoken)
