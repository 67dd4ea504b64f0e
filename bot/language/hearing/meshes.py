"""What is between tube and animal: mesh over or under the tube, its share or weave, the lid."""

import re
from collections.abc import Iterator

from bot.facts import Say
from bot.language.hearing.facts import THERE, WISHES, Ask, Fact, FactName, Lid, Placement, Standing
from bot.language.hearing.figures import Figure
from bot.language.hearing.lexicon import Mark
from bot.language.hearing.scene import LIVING, Part, Scene
from bot.language.hearing.strengths import LABELS, STRONGEST_TUBE, UV_LAMPS, tube_beside
from bot.language.hearing.word_lists import word_list
from bot.language.screens import Blocks, NoScreen, Pane, Passes, pane_in, weaves_in
from bot.language.wanted import Spelled

__all__ = ["meshes"]

_MESHY = frozenset(("mesh", "lid"))
_SOURCES = frozenset(("tube", "heat", "lamp"))
# How far around a mesh the lamp is looked for that stands on it, in characters.
_REACH = 300
_A_FEW = 3
_OVER = frozenset(("over",))
_FILLERS = frozenset(("the", "a", "my", "his", "her", "this", "its", "of", "tank", "top", "an"))
_THROUGH = re.compile(
    r"\b(?P<how>through|behind|above|over|on top of|on) (?:the |a |my |his |her |some )?"
    r"(?:clear )?(?:glass|plexi(?:glass)?|perspex|acrylic|polycarbonate|plastic)"
    r"(?! (?:tank|viv\w*|terrarium|enclosure|box|cage|door|doors|side|sides|mesh|net|dome|hood))\b"
)
_OTHERS = frozenset(("cat", "cats", "dog", "he", "she", "kid", "kids"))
_MINE = frozenset(("mine", "it", "ours"))
_IT = re.compile(r" (?:it|that)\b")
_THE_LID = re.compile(r" (?:the|its|my|that) (?:lid|top|roof)\b")


def _weaves(scene: Scene) -> Iterator[Fact | Ask]:
    for screen, start, end in weaves_in(scene.text):
        scene.take(*scene.figures.touching(start, end))
        mark = Mark("mesh", "weave", start, end)
        yield scene.fact(FactName.SCREEN, screen, mark)


def meshes(scene: Scene) -> Iterator[Fact | Ask]:
    """Return screens, placements and lids."""
    told = list(_weaves(scene))
    told += _shares(scene)
    told += _nothing_between(scene)
    told += _panes(scene)
    denied = [mark for mark in _meshes_and_lids(scene) if scene.free(mark) and scene.denial(mark)]
    scene.take(*denied)
    told += _placements(scene)
    told += _lids(scene)
    yield from told
    settled = {fact.name for fact in told}
    inside = any(isinstance(row, Fact) and row.value is Placement.INSIDE for row in told)
    if denied and not inside and FactName.SCREEN not in settled:
        yield scene.ask(FactName.SCREEN, Say("unclear-between"), *_with_denial(scene, denied[0]))
    elif not settled & {FactName.SCREEN, FactName.PLACEMENT, FactName.LID}:
        for mark in scene.of("mesh", "noun"):
            if scene.standing(mark) in THERE:
                yield scene.ask(FactName.SCREEN, Say("unclear-mesh"), mark)
                return


def _meshes_and_lids(scene: Scene) -> list[Mark]:
    """Return the words for what may lie between tube and animal, in order."""
    marks = [*scene.of("mesh", "noun"), *scene.of("lid", "mesh")]
    return sorted(marks, key=lambda mark: mark.start)


def _shares(scene: Scene) -> Iterator[Fact | Ask]:
    for figure in scene.loose("percent"):
        told = _share_word(scene, figure)
        mark = told or _mesh_beside(scene, figure)
        if mark is None or not 0 < figure.low <= figure.high < 100:
            continue
        if scene.standing(figure) in WISHES or (told and _is_asked(scene, figure)):
            continue
        scene.take(figure)
        if told is None and figure.low in LABELS and not _another_tube(scene, figure):
            scene.take(mark)
            yield scene.ask(
                FactName.SCREEN, Say("unclear-whose", Spelled(figure.text)), figure, mark
            )
            continue
        passes = mark.value == "passes" or (told is None and _is_open(scene, figure))
        kind = Passes if passes else Blocks
        screen = kind(float((figure.low + figure.high) / 200), figure.text)
        taken = told is None and not passes
        yield scene.fact(FactName.SCREEN, screen, figure, mark, assumed=taken)


def _is_asked(scene: Scene, figure: Figure) -> bool:
    return scene.standing(figure) is Standing.ASKED


def _is_open(scene: Scene, figure: Figure) -> bool:
    return scene.next_word(figure.end) == "open"


def _mesh_beside(scene: Scene, figure: Figure) -> Mark | None:
    """Return the mesh right before or after a percentage that says no more of it."""
    start, end = scene.clause(figure.start)
    small = figure.high <= STRONGEST_TUBE
    before = scene.before(figure.start, _MESHY, start)
    if before and set(scene.words(before.end, figure.start)) <= word_list("equals"):
        over = scene.before(before.start, frozenset(("over", "inside", "not")), start)
        stands_on = over is not None and len(scene.words(over.end, before.start)) <= 1
        of_tube = small and (stands_on or before.kind == "lid" or _tube_after(scene, figure))
        if before.value in ("noun", "mesh") and not of_tube and not scene.denial(before):
            return before
    after = scene.after(figure.end, _MESHY, min(end, figure.end + 16))
    if after and set(scene.words(figure.end, after.start)) <= {"open", "blocking"}:
        # In "12% tube, 20% screen" the comma parts the second figure from the tube.
        parts = (scene.text[mark.end : figure.start] for mark in tube_beside(scene, figure))
        tube = small and any("," not in part for part in parts)
        if after.value in ("noun", "mesh") and not tube and not scene.denial(after):
            return after
    return None


def _tube_after(scene: Scene, figure: Figure) -> bool:
    return any(mark.start >= figure.end for mark in tube_beside(scene, figure))


def _another_tube(scene: Scene, figure: Figure) -> bool:
    """Say whether another figure is the strength of the tube, so that this one is not."""
    others = (f for f in scene.loose("percent", "plain") if f is not figure)
    return any(
        f.high <= STRONGEST_TUBE and (tube_beside(scene, f) or f.text.endswith((".0", ",0")))
        for f in others
    )


def _share_word(scene: Scene, figure: Figure) -> Mark | None:
    """Return the word that makes a percentage the share of a screen."""
    start, end = scene.sentence(figure.start)
    word = scene.before(figure.start, frozenset(("share",)), max(start, figure.start - 20))
    word = word or scene.after(figure.end, frozenset(("share",)), min(end, figure.end + 14))
    if word:
        mesh = scene.before(word.start, _MESHY, start) or scene.after(figure.end, _MESHY, end)
        if mesh is None and _MINE & set(scene.words(start, word.start)[-2:]):
            # "Mesh takes a lot of it. Mine blocks 38%."
            mesh = scene.before(start, _MESHY, start - 80)
        return word if mesh else None
    return None


def _nothing_between(scene: Scene) -> Iterator[Fact | Ask]:
    for mark in scene.of("mesh", "nothing"):
        yield scene.fact(FactName.SCREEN, NoScreen(mark.value), mark)
    for mark in _meshes_and_lids(scene):
        if scene.absent(mark):
            scene.take(mark)
            yield scene.fact(FactName.SCREEN, NoScreen("none"), *_with_denial(scene, mark))


def _panes(scene: Scene) -> Iterator[Fact | Ask]:
    """Return a lid of glass or plastic that the tube shines through."""
    for mark in scene.of("lid", "glass", "plastic"):
        if scene.standing(mark) not in THERE:
            continue
        over = scene.before(mark.start, _OVER, max(scene.clause(mark.start)[0], mark.start - 40))
        if over is None or not set(scene.words(over.end, mark.start)) <= _FILLERS:
            continue
        if _subject(scene, over) == "uv":
            scene.take(mark)
            yield scene.fact(FactName.SCREEN, Pane(mark.value, mark.value), over, mark)
            return
    yield from _through_glass(scene)


def _through_glass(scene: Scene) -> Iterator[Fact | Ask]:
    """Return a pane that is told as what the UV has to come through."""
    for match in _THROUGH.finditer(scene.text):
        mark = Mark("lid", "pane", *match.span())
        pane = pane_in(match[0])
        if pane is None or _subject(scene, mark) != "uv":
            continue
        lamp = scene.before(mark.start, _SOURCES, scene.clause(mark.start)[0])
        near = lamp is not None and len(scene.words(lamp.end, mark.start)) <= _A_FEW
        if match["how"] not in ("through", "behind") and not near:
            # A thermometer sticks on the glass as well.
            continue
        if scene.standing(mark) in THERE:
            yield scene.fact(FactName.SCREEN, Pane(pane.material, pane.material), mark)
            return


def _with_denial(scene: Scene, mark: Mark) -> tuple[Part, ...]:
    word = scene.denial(mark)
    if word is None and scene.absent(mark):
        word = scene.after(mark.end, frozenset(("not",)), scene.sentence(mark.start)[1])
    return (word, mark) if word else (mark,)


def _placements(scene: Scene) -> Iterator[Fact | Ask]:
    for mark in scene.marks:
        if mark.kind not in ("over", "inside"):
            continue
        standing = scene.standing(mark)
        if standing not in THERE:
            continue
        lamp = scene.before(mark.start, _SOURCES, scene.clause(mark.start)[0])
        if (lamp and scene.denial(lamp)) or (lamp is None and _behind_reading(scene, mark)):
            continue
        subject = _subject(scene, mark)
        if mark.kind == "inside":
            if subject == "uv":
                yield scene.fact(FactName.PLACEMENT, Placement.INSIDE, mark)
            continue
        mesh = _mesh_after(scene, mark)
        if mesh is None and mark.value != "top":
            continue
        parts = (mark, mesh) if mesh else (mark,)
        if mesh and scene.free(mesh) and mesh.kind == "mesh":
            yield scene.fact(FactName.LID, Lid.MESH, *parts)
        if subject == "uv" or (subject is None and mesh and not _somebody_is(scene, mark)):
            yield scene.fact(FactName.PLACEMENT, Placement.OVER, *parts)


def _somebody_is(scene: Scene, over: Mark) -> bool:
    """Say whether it is an animal that is on the mesh, and no lamp."""
    start, _ = scene.clause(over.start)
    living = scene.before(over.start, LIVING, start)
    return living is not None or bool(_OTHERS & set(scene.words(start, over.start)))


def _behind_reading(scene: Scene, mark: Mark) -> bool:
    """Say whether a word stands behind a temperature that it tells of: 90f inside."""
    figures = scene.figures.within(mark.start - 12, mark.start)
    return any(f.kind in ("temperature", "degrees") for f in figures) and mark.kind == "inside"


def _mesh_after(scene: Scene, over: Mark) -> Mark | None:
    """Return the mesh that something is said to be over."""
    _, end = scene.clause(over.start)
    mesh = scene.after(over.end, _MESHY, end)
    if _THE_LID.match(scene.text, over.end):
        # "Mesh lid, and the tube lies on the lid."
        told = scene.after(over.end, _MESHY, over.end + 16)
        mesh = told or scene.before(over.start, _MESHY, 0)
        return mesh if mesh and mesh.value in ("noun", "mesh") and not scene.denial(mesh) else None
    if _IT.match(scene.text, over.end):
        # "The lid is mesh, the tube lies on it."
        mesh = scene.before(over.start, _MESHY | {"reference", "home"}, over.start - 80)
        return mesh if mesh and mesh.kind in _MESHY and mesh.value in ("noun", "mesh") else None
    if mesh is None or not scene.free(mesh) or mesh.value in ("side", "nothing", "solid", "glass"):
        return None
    return mesh if set(scene.words(over.end, mesh.start)) <= _FILLERS else None


def _subject(scene: Scene, part: Mark) -> str | None:
    """Return "uv" or "heat" by what the sentence has told of before, or else after."""
    start, end = scene.sentence(part.start)
    start, end = max(start, part.start - _REACH), min(end, part.end + _REACH)
    told = [(m.start, _is_uv(m)) for m in scene.marks.within(start, end) if m.kind in _SOURCES]
    told += [(f.start, True) for f in scene.figures.within(start, end) if _is_strength(f)]
    before = [is_uv for at, is_uv in told if at < part.start]
    for said in (before, [is_uv for _, is_uv in told]):
        if said:
            return "uv" if any(said) else "heat"
    previous = scene.before(start, _SOURCES, max(0, start - _REACH))
    if previous is None:
        return None
    return "uv" if _is_uv(previous) else "heat"


def _is_uv(mark: Mark) -> bool:
    return mark.kind == "tube" or mark.value in UV_LAMPS


def _is_strength(figure: Figure) -> bool:
    label = figure.text.endswith((".0", ",0"))
    return label or (figure.kind == "percent" and figure.high <= STRONGEST_TUBE)


def _lids(scene: Scene) -> Iterator[Fact | Ask]:
    for mark in scene.of("lid"):
        if scene.free(mark) and scene.standing(mark) in THERE:
            yield scene.fact(FactName.LID, Lid(mark.value), mark)
