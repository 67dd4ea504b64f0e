"""What is between tube and animal: mesh over or under the tube, its share or weave, the lid."""

from collections.abc import Iterator

from bot.language.hearing.facts import Ask, Fact, FactName, Lid, Placement
from bot.language.hearing.figures import Figure
from bot.language.hearing.lexicon import Mark
from bot.language.hearing.scene import SPOKEN_NONE, Part, Scene, Standing
from bot.language.screens import Blocks, NoScreen, Passes, weaves_in

__all__ = ["meshes"]

_MESHY = frozenset(("mesh", "lid"))
_SOURCES = frozenset(("tube", "heat", "lamp"))
_UV_LAMPS = frozenset(("t5", "t5 ho", "t8", "compact"))
_STRONGEST = 20
# How far around a mesh the lamp is looked for that stands on it, in characters.
_REACH = 300
_HOW_MUCH = (
    "What is this mesh: how much does it block (45%), or its weave and wire (18x16 0.011in), and"
    " is the tube over it or inside?"
)


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
    told += _placements(scene)
    told += _lids(scene)
    yield from told
    settled = {fact.name for fact in told if isinstance(fact, Fact)}
    if not settled & {FactName.SCREEN, FactName.PLACEMENT, FactName.LID}:
        for mark in scene.of("mesh", "noun"):
            if scene.standing(mark) in (Standing.HAVE, Standing.INTENT):
                yield scene.ask(FactName.SCREEN, _HOW_MUCH, mark)
                return


def _shares(scene: Scene) -> Iterator[Fact | Ask]:
    for figure in scene.loose("percent"):
        mark = _share_word(scene, figure)
        if mark is None or not 0 < figure.low <= figure.high < 100:
            continue
        if scene.standing(figure) in (Standing.WISH, Standing.ASKED):
            continue
        scene.take(figure)
        kind = Passes if mark.value == "passes" else Blocks
        screen = kind(float((figure.low + figure.high) / 200), figure.text)
        yield scene.fact(FactName.SCREEN, screen, figure, mark)


def _share_word(scene: Scene, figure: Figure) -> Mark | None:
    """Return the word that makes a percentage the share of a screen."""
    start, end = scene.sentence(figure.start)
    word = scene.before(figure.start, frozenset(("share",)), max(start, figure.start - 20))
    word = word or scene.after(figure.end, frozenset(("share",)), min(end, figure.end + 14))
    if word:
        mesh = scene.before(word.start, _MESHY, start) or scene.after(figure.end, _MESHY, end)
        return word if mesh else None
    mesh = scene.before(figure.start, frozenset(("mesh",)), scene.clause(figure.start)[0])
    if mesh and not scene.words(mesh.end, figure.start) and figure.low > 20:
        return mesh
    return None


def _nothing_between(scene: Scene) -> Iterator[Fact | Ask]:
    for mark in scene.of("mesh"):
        if mark.value == "nothing":
            yield scene.fact(FactName.SCREEN, NoScreen(mark.value), mark)
        elif mark.value == "noun" and _is_denied(scene, mark):
            scene.take(mark)
            yield scene.fact(FactName.SCREEN, NoScreen("none"), *_with_denial(scene, mark))
    for mark in scene.of("lid", "mesh"):
        if scene.standing(mark) is Standing.NOT:
            scene.take(mark)
            yield scene.fact(FactName.SCREEN, NoScreen("none"), *_with_denial(scene, mark))


def _is_denied(scene: Scene, mark: Mark) -> bool:
    return scene.standing(mark) is Standing.NOT or bool(SPOKEN_NONE.match(scene.text, mark.end))


def _with_denial(scene: Scene, mark: Mark) -> tuple[Part, ...]:
    start, end = scene.sentence(mark.start)
    word = scene.before(mark.start, frozenset(("not",)), start)
    word = word or scene.after(mark.end, frozenset(("not",)), end)
    return (word, mark) if word else (mark,)


def _placements(scene: Scene) -> Iterator[Fact | Ask]:
    for mark in scene.marks:
        if mark.kind not in ("over", "inside"):
            continue
        standing = scene.standing(mark)
        if standing in (Standing.NOT, Standing.WISH, Standing.ASKED):
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
        if subject == "uv" or (subject is None and mesh):
            yield scene.fact(FactName.PLACEMENT, Placement.OVER, *parts)


def _mesh_after(scene: Scene, over: Mark) -> Mark | None:
    """Return the mesh that something is said to be over."""
    _, end = scene.clause(over.start)
    mesh = scene.after(over.end, _MESHY, end)
    if mesh is None or not scene.free(mesh) or mesh.value in ("side", "nothing", "solid", "glass"):
        return None
    fillers = {"the", "a", "my", "his", "her", "this", "its", "of", "tank", "top"}
    return mesh if set(scene.words(over.end, mesh.start)) <= fillers else None


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
    return mark.kind == "tube" or mark.value in _UV_LAMPS


def _is_strength(figure: Figure) -> bool:
    label = figure.text.endswith((".0", ",0"))
    return label or (figure.kind == "percent" and figure.high <= _STRONGEST)


def _lids(scene: Scene) -> Iterator[Fact | Ask]:
    for mark in scene.of("lid"):
        if scene.free(mark) and scene.standing(mark) in (Standing.HAVE, Standing.INTENT):
            yield scene.fact(FactName.LID, Lid(mark.value), mark)
