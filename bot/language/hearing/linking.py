"""Which figure belongs to which place, where a sentence names several of both.

People write "basking 98, cool 75" and "98 basking, 75 cool". Looking at single neighbours mixes
the two up, so all figures and places are matched at once: in order, as many as possible, the
nearest first.
"""

from collections.abc import Callable, Sequence
from itertools import accumulate

from bot.language.hearing.figures import Figure
from bot.language.hearing.lexicon import Mark
from bot.language.hearing.scene import Scene
from bot.language.hearing.word_lists import word_list

__all__ = ["link_cost", "linked"]

# A link that costs more is no link.
MOST_COST = 6.0
# No more than this many of each are matched, which bounds the work; no message has more.
_MOST_PARTS = 40
# What a word between costs, and one that joins nothing beside that.
_ANY, _OTHER = 0.05, 0.6
# Ambient, left and right say little; any other place is preferred.
_NOWHERE = 1.0
_FURTHEST = 120

_NO_PLACES = frozenset(("ambient", "day", "gun", "floor", "air"))
_BINDING = frozenset(("on", "at", "in", "under", "for", "as"))


def link_cost(scene: Scene, figure: Figure, place: Mark) -> float:
    """Return how badly a figure and a place fit together; more than MOST_COST is not at all."""
    before = place.start < figure.start
    gap = (place.end, figure.start) if before else (figure.end, place.start)
    if gap[1] - gap[0] > _FURTHEST:
        return MOST_COST + 1
    words, glue = scene.words(gap[0], max(gap)), word_list("glue")
    cost = _NOWHERE * (place.value in _NO_PLACES)
    cost += _OTHER * len([word for word in words if word not in glue]) + _ANY * len(words)
    between = scene.text[gap[0] : max(gap)]
    cost += 1.2 * between.count(",") + 1.2 * between.count("/") + 0.5 * between.count("(")
    cost += 0.8 * ("and" in words) + 1.5 * (" - " in between)
    if scene.sentence(place.start) != scene.sentence(figure.start):
        if place.value == "there":
            return MOST_COST + 1
        cost += 4.5 if "\n" in between else 3.2
    if before:
        return cost
    return cost + (0.15 if words and words[0] in _BINDING else 0.5)


def _told_so_far(scene: Scene) -> Callable[[int], tuple[float, float]]:
    """Return what tells the cost of all words up to a place: those that begin and that end there.

    What stands between two places costs the difference.
    """
    glue = word_list("glue")
    costs = [0.0, *accumulate(_ANY + _OTHER * (word not in glue) for word in scene.tokens)]

    def told(at: int) -> tuple[float, float]:
        first, last = scene.tokens.around(at)
        return costs[first], costs[last]

    return told


def linked(
    scene: Scene,
    figures: Sequence[Figure],
    places: Sequence[Mark],
    limit: Callable[[Figure, Mark], float],
) -> list[tuple[Figure, Mark]]:
    """Return the figures with their places; ``limit`` says what a link may cost at most."""
    rows, columns = figures[:_MOST_PARTS], places[:_MOST_PARTS]
    told = _told_so_far(scene)
    around = [(told(place.end)[0], told(place.start)[1]) for place in columns]
    gain = []
    for figure in rows:
        behind, before = told(figure.end)[0], told(figure.start)[1]
        gain.append(
            [
                MOST_COST - cost
                # Most are too far from each other for a look at what stands between.
                if max(before - after, up_to - behind) <= MOST_COST
                and place.start - figure.end <= _FURTHEST
                and figure.start - place.end <= _FURTHEST
                and (cost := link_cost(scene, figure, place)) <= limit(figure, place)
                else 0.0
                for place, (after, up_to) in zip(columns, around, strict=True)
            ]
        )
    best = [[0.0] * (len(columns) + 1) for _ in range(len(rows) + 1)]
    for i in range(len(rows) - 1, -1, -1):
        here, below, gains = best[i], best[i + 1], gain[i]
        for j in range(len(columns) - 1, -1, -1):
            most = below[j] if below[j] > here[j + 1] else here[j + 1]
            both = below[j + 1] + gains[j] if gains[j] > 0 else 0.0
            here[j] = both if both > most else most
    found, i, j = [], 0, 0
    while i < len(rows) and j < len(columns):
        if gain[i][j] > 0 and best[i][j] == best[i + 1][j + 1] + gain[i][j]:
            found.append((rows[i], columns[j]))
            i, j = i + 1, j + 1
        elif best[i][j] == best[i + 1][j]:
            i += 1
        else:
            j += 1
    return found
