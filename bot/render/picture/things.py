"""What stands and hangs in an enclosure, drawn so that a beginner knows it again."""

from bot.drawing import Behind
from bot.render.picture.geometry import Rect
from bot.render.picture.inks import Ink
from bot.render.picture.svg import Shape, circle, path, polygon, rect, stroke

__all__ = [
    "beam",
    "floor",
    "hide",
    "lamp",
    "light_across",
    "light_along",
    "mesh",
    "stone",
    "sun_strip",
    "tube_across",
    "tube_along",
    "walls",
    "water",
]


def walls(box: Rect, *, mesh_lid: bool) -> list[Shape]:
    """Return the walls of a box, open at the top where its lid is mesh."""
    if not mesh_lid:
        return [rect(box.x0, box.y0, box.x1 - box.x0, box.y1 - box.y0, stroke=Ink.WALL,
                     stroke_width=5.0, stroke_linejoin="round")]  # fmt: skip
    d = f"M{box.x0:.1f} {box.y0:.1f}V{box.y1:.1f}H{box.x1:.1f}V{box.y0:.1f}"
    return [path(d, stroke=Ink.WALL, stroke_width=5.0), *mesh(box.x0 - 4.0, box.x1 + 4.0, box.y0)]


def mesh(x0: float, x1: float, foot: float) -> list[Shape]:
    """Return a mesh lid: crossed wires in a frame."""
    d, x, tall = [], x0, 9.0
    while x < x1 - 1.0:
        last = min(x + tall, x1)
        d.append(f"M{x:.0f} {foot - tall:.0f}L{last:.0f} {foot:.0f}M{x:.0f} {foot:.0f}")
        d.append(f"L{last:.0f} {foot - tall:.0f}")
        x += tall
    frame = rect(x0, foot - tall, x1 - x0, tall, stroke=Ink.METAL_LINE, stroke_width=2.0)
    return [path("".join(d), stroke=Ink.METAL_LINE, stroke_width=1.4), frame]


def floor(box: Rect) -> Shape:
    """Return the ground a box stands on."""
    wide = box.x1 - box.x0
    d = f"M{box.x0 - 5:.1f} {box.y1:.1f}h{wide + 10:.1f}v10q0 6-6 6h-{wide - 2:.1f}q-6 0-6-6z"
    return path(d, fill=Ink.BASE, stroke=Ink.WALL, stroke_width=2.5)


def hide(x0: float, x1: float, top: float, foot: float, *, there: bool = True) -> list[Shape]:
    """Return a hide of cork: an arch with its dark mouth; a broken outline where it is wanted."""
    wide, tall = x1 - x0, foot - top
    arch = (
        f"M{x0:.1f} {foot:.1f}C{x0 + wide * 0.02:.1f} {top - tall * 0.1:.1f} "
        f"{x1 - wide * 0.02:.1f} {top - tall * 0.1:.1f} {x1:.1f} {foot:.1f}z"
    )
    mouth = (
        f"M{x0 + wide * 0.3:.1f} {foot:.1f}C{x0 + wide * 0.3:.1f} {top + tall * 0.34:.1f} "
        f"{x0 + wide * 0.74:.1f} {top + tall * 0.34:.1f} {x0 + wide * 0.74:.1f} {foot:.1f}z"
    )
    if not there:
        broken: dict[str, float | Ink | str] = {"stroke": Ink.HEAT, "stroke_dasharray": "9 7"}
        return [
            path(arch, fill=Ink.AIR, fill_opacity=0.6, stroke_width=3.5, **broken),
            path(mouth, stroke_width=2.5, **broken),
        ]
    return [
        path(arch, fill=Ink.BARK, stroke=Ink.BARK_DARK, stroke_width=3.0, stroke_linejoin="round"),
        path(mouth, fill=Ink.EDGE),
    ]


def water(box: Rect, top: float) -> list[Shape]:
    """Return water in a box up to a level, its surface in small waves."""
    wide = box.x1 - box.x0
    waves = "".join("q8-7 16 0t16 0" for _ in range(int(wide // 32)))
    d = f"M{box.x0:.1f} {top:.1f}{waves}H{box.x1:.1f}V{box.y1:.1f}H{box.x0:.1f}z"
    return [
        path(d, fill=Ink.COOL_PALE),
        path(f"M{box.x0:.1f} {top:.1f}{waves}H{box.x1:.1f}", stroke=Ink.COOL, stroke_width=2.6),
    ]


def sun_strip(x0: float, x1: float, top: float) -> list[Shape]:
    """Return a strip along the top of a basking place where UV, heat and light meet."""
    return [
        rect(x0, top + 1.0, x1 - x0, 9.0, fill=Ink.SUN, stroke=Ink.STONE_LINE, stroke_width=2.0)
    ]


def stone(box: Rect) -> list[Shape]:
    """Return a stone or another platform to bask on."""
    x0, x1, top, foot = box.x0, box.x1, box.y0, box.y1
    wide, tall = x1 - x0, foot - top
    round_off = min(12.0, tall * 0.4)
    edge = (
        f"M{x0 + 2:.1f} {foot:.1f}C{x0 - 3:.1f} {foot - tall * 0.5:.1f} {x0:.1f} "
        f"{top + tall * 0.2:.1f} {x0 + round_off:.1f} {top:.1f}H{x1 - round_off:.1f}"
        f"C{x1:.1f} {top + tall * 0.2:.1f} {x1 + 3:.1f} {foot - tall * 0.5:.1f} "
        f"{x1 - 2:.1f} {foot:.1f}z"
    )
    cracks = (
        f"M{x0 + wide * 0.08:.1f} {foot - 2:.1f}l{wide * 0.12:.1f} {-tall * 0.42:.1f}"
        f"M{x1 - wide * 0.12:.1f} {top + tall * 0.3:.1f}l{-wide * 0.18:.1f} {tall * 0.16:.1f}"
    )
    return [
        path(
            edge, fill=Ink.STONE, stroke=Ink.STONE_LINE, stroke_width=2.5, stroke_linejoin="round"
        ),
        path(cracks, stroke=Ink.STONE_LINE, stroke_width=1.6, stroke_opacity=0.5),
    ]


def tube_along(
    x0: float, x1: float, y: float, behind: Behind | None = None
) -> tuple[list[Shape], Rect]:
    """Return a tube in its fixture seen along, its underside at ``y``, and where it is.

    A mirror is a bright curve behind the tube under a curved hood, what is plain a flat line.
    """
    thick, hood = 12.0, 15.0
    top = y - thick - hood
    hull = (
        f"M{x0:.1f} {y - thick * 0.5:.1f}V{top + 6:.1f}q0-6 6-6H{x1 - 6:.1f}q6 0 6 6"
        f"V{y - thick * 0.5:.1f}z"
    )
    lines: list[Shape] = []
    if behind is Behind.POLISHED:
        low = y - thick * 0.5
        hull = f"M{x0:.1f} {low:.1f}{_arch(x0, x1, y - thick, top)}V{low:.1f}z"
        inner = _arch(x0 + 12.0, x1 - 12.0, y - thick, top + 5.0)
        curve = f"M{x0 + 12:.1f} {y - thick:.1f}{inner}"
        lines = [path(f"{curve}z", fill=Ink.WHITE, stroke=Ink.METAL_LINE, stroke_width=2.0)]
    elif behind is Behind.PLAIN:
        lines = [stroke((x0 + 14.0, top + 8.0), (x1 - 14.0, top + 8.0), Ink.METAL_LINE, 2.4)]
    caps = [
        rect(
            x,
            y - thick,
            12.0,
            thick,
            rx=3.0,
            fill=Ink.METAL,
            stroke=Ink.METAL_LINE,
            stroke_width=2.0,
        )
        for x in (x0, x1 - 12.0)
    ]
    glow = rect(
        x0 + 6.0, y - 4.0, x1 - x0 - 12.0, 12.0, rx=6.0, fill=Ink.UV_STRONG, fill_opacity=0.5
    )
    lit = rect(
        x0 + 12.0, y - thick, x1 - x0 - 24.0, thick, rx=2.0, fill=Ink.GLOW, stroke=Ink.UV,
        stroke_width=2.4,
    )  # fmt: skip
    case = path(hull, fill=Ink.METAL, stroke=Ink.METAL_LINE, stroke_width=2.5)
    return [glow, case, *lines, lit, *caps], Rect(x0, top, x1, y + 6.0)


def _arch(x0: float, x1: float, foot: float, top: float) -> str:
    """Return a line up from ``foot``, over in a curve and down again."""
    bend = max(min(60.0, (x1 - x0) / 2.0), 0.0)
    return (
        f"V{foot:.1f}C{x0 + bend * 0.2:.1f} {top:.1f} {x0 + bend * 0.6:.1f} {top:.1f} "
        f"{x0 + bend:.1f} {top:.1f}H{x1 - bend:.1f}C{x1 - bend * 0.6:.1f} {top:.1f} "
        f"{x1 - bend * 0.2:.1f} {top:.1f} {x1:.1f} {foot:.1f}"
    )


def tube_across(x: float, y: float, behind: Behind | None = None) -> tuple[list[Shape], Rect]:
    """Return a tube in its fixture seen from its end, its underside at ``y``, and where it is."""
    r, middle = 7.0, y - 7.0
    hood = _bow(x, 24.0, middle + 6.0, 30.0)
    lines: list[Shape] = []
    if behind is Behind.POLISHED:
        curve = _bow(x, 18.0, middle + 6.0, 23.0)
        lines = [
            path(curve, stroke=Ink.METAL_LINE, stroke_width=5.6),
            path(curve, stroke=Ink.WHITE, stroke_width=3.2),
        ]
    elif behind is Behind.PLAIN:
        hood = f"M{x - 24:.1f} {middle + 6:.1f}V{middle - 17:.1f}H{x + 24:.1f}V{middle + 6:.1f}"
        lines = [stroke((x - 17.0, middle - 11.0), (x + 17.0, middle - 11.0), Ink.METAL_LINE, 2.4)]
    return [
        circle(x, middle, r + 5.0, fill=Ink.UV_STRONG, fill_opacity=0.5),
        path(hood, fill=Ink.METAL, stroke=Ink.METAL_LINE, stroke_width=2.6),
        *lines,
        circle(x, middle, r, fill=Ink.GLOW, stroke=Ink.UV, stroke_width=2.6),
    ], Rect(x - 24.0, middle - 18.0, x + 24.0, y + 2.0)


def _bow(x: float, half: float, foot: float, tall: float) -> str:
    """Return a curve from one side of a tube over it to the other."""
    return (
        f"M{x - half:.1f} {foot:.1f}C{x - half + 2:.1f} {foot - tall:.1f} "
        f"{x + half - 2:.1f} {foot - tall:.1f} {x + half:.1f} {foot:.1f}"
    )


def light_across(x: float, y: float) -> tuple[list[Shape], Rect]:
    """Return a flat white lamp seen from its end, its underside at ``y``, and where it is."""
    body = rect(
        x - 15.0, y - 12.0, 30.0, 9.0, rx=2.5, fill=Ink.METAL, stroke=Ink.METAL_LINE,
        stroke_width=2.4,
    )  # fmt: skip
    lit = rect(
        x - 12.0, y - 4.5, 24.0, 4.5, rx=1.5, fill=Ink.WHITE, stroke=Ink.METAL_LINE,
        stroke_width=1.6,
    )  # fmt: skip
    return [body, lit], Rect(x - 16.0, y - 13.0, x + 16.0, y + 2.0)


def light_along(x0: float, x1: float, y: float) -> tuple[list[Shape], Rect]:
    """Return a flat white lamp seen along, its underside at ``y``, and where it is."""
    body = rect(
        x0, y - 12.0, x1 - x0, 9.0, rx=2.5, fill=Ink.METAL, stroke=Ink.METAL_LINE, stroke_width=2.4
    )
    lit = rect(
        x0 + 3.0, y - 4.5, x1 - x0 - 6.0, 4.5, rx=1.5, fill=Ink.WHITE, stroke=Ink.METAL_LINE,
        stroke_width=1.6,
    )  # fmt: skip
    return [body, lit], Rect(x0 - 1.0, y - 13.0, x1 + 1.0, y + 2.0)


def lamp(x: float, y: float, cord_to: float | None = None) -> tuple[list[Shape], Rect]:
    """Return a heat lamp with holder, dome and guard, its face at ``y``, and where it is."""
    dome = (
        f"M{x - 7:.1f} {y - 34:.1f}C{x - 22:.1f} {y - 31:.1f} {x - 30:.1f} {y - 16:.1f} "
        f"{x - 31:.1f} {y - 4:.1f}H{x + 31:.1f}C{x + 30:.1f} {y - 16:.1f} {x + 22:.1f} "
        f"{y - 31:.1f} {x + 7:.1f} {y - 34:.1f}Z"
    )
    bulb = f"M{x - 19:.1f} {y - 4:.1f}a19 10 0 0 0 38 0z"
    guard = (
        f"M{x - 31:.1f} {y - 4:.1f}C{x - 29:.1f} {y + 12:.1f} {x + 29:.1f} {y + 12:.1f} "
        f"{x + 31:.1f} {y - 4:.1f}M{x:.1f} {y - 4:.1f}V{y + 8:.1f}"
    )
    shapes = [
        rect(
            x - 7.0,
            y - 51.0,
            14.0,
            19.0,
            rx=3.0,
            fill=Ink.WHITE,
            stroke=Ink.METAL_LINE,
            stroke_width=2.4,
        ),
        path(dome, fill=Ink.METAL, stroke=Ink.METAL_LINE, stroke_width=2.6),
        path(bulb, fill=Ink.SUN, stroke=Ink.HEAT, stroke_width=2.4),
        path(guard, stroke=Ink.METAL_LINE, stroke_width=2.2),
    ]
    if cord_to is not None and cord_to < y - 52.0:
        shapes.insert(0, stroke((x, y - 50.0), (x, cord_to), Ink.INK, 3.0))
    return shapes, Rect(x - 31.0, y - 51.0, x + 31.0, y + 12.0)


def beam(x: float, y: float, foot: float, half: float) -> Shape:
    """Return the warmth below a lamp, down to ``foot``, ``half`` wide to either side there."""
    points = [(x - 18.0, y), (x - half, foot), (x + half, foot), (x + 18.0, y)]
    return polygon(points, fill=Ink.HEAT_PALE, fill_opacity=0.5)
