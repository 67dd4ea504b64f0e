"""What an animal is told to need, and what of that changed since it was told."""

from collections.abc import Mapping, Sequence

from bot.saved.group import OwnSubject
from bot.saved.values import Kept
from calc.animal import Subject

__all__ = ["Aim", "TargetMoved", "Targets", "joined", "moved_between", "targets_kept"]


class Aim(Kept):
    """From where to where, and what is best where it is known: UVI [1], [degC], [m] or [h]."""

    low: float
    best: float | None = None
    high: float


Targets = Mapping[OwnSubject, Aim]


class TargetMoved(Kept):
    """One target that was told, and what it is now; None: there is none any more."""

    subject: OwnSubject
    before: Aim
    now: Aim | None


def moved_between(told: Targets, now: Targets) -> tuple[TargetMoved, ...]:
    """Return what was told and is something else now; what is new alone misled nobody."""
    return tuple(
        TargetMoved(subject=subject, before=before, now=now.get(subject))
        for subject, before in told.items()
        if now.get(subject) != before
    )


def joined(first: Sequence[TargetMoved], then: Sequence[TargetMoved]) -> tuple[TargetMoved, ...]:
    """Return two changes as one, for whoever was told of neither."""
    told = {one.subject: one for one in first}
    for one in then:
        before = told[one.subject].before if one.subject in told else one.before
        told[one.subject] = TargetMoved(subject=one.subject, before=before, now=one.now)
    return tuple(one for one in told.values() if one.before != one.now)


def targets_kept(kept: Mapping[str, object]) -> dict[OwnSubject, Aim]:
    """Return targets as they were written; what nobody knows any more is left out."""
    known = {subject.value: subject for subject in Subject}
    return {known[key]: Aim.model_validate(aim) for key, aim in kept.items() if key in known}
