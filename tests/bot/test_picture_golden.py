"""Pinned: 28 pictures of real questions, compared as an eye compares them; no proof of anything.

After a blur of a pixel the mean distance in OKLab × 100 stays under 0.5, and that of the worst tile
of 16 pixels under 4: another version of the rasteriser does not trip this, a word that has wandered
off does. After a wanted change look at both side by side, and then renew them:
``python -m tests.bot.test_picture_golden FOLDER``.
"""

import sys
from datetime import date
from io import BytesIO
from pathlib import Path

import numpy as np
import pytest
from numpy.typing import NDArray
from PIL import Image, ImageFilter

from bot.ask import ask
from bot.drawing import Drawing
from bot.preferences import Language, Preferences
from bot.render.picture import Theme, draw
from tests.bot.test_picture_colours import linear

FOLDER = Path(__file__).parent / "golden"
WIDE, TILE = 400, 16
MEAN, WORST = 0.5, 4.0
TODAY = date(2026, 5, 2)
_TUBE = "tube:12% reflector:polished screen:none"
_BOX = "enclosure:48x24x24in"
_DRAGON = "animal:bearded dragon"
QUESTIONS: dict[str, str] = {
    "temps-cool-end": f"temps basking:98F cool:75F {_DRAGON}",
    "temps-fine": "temps basking:31C cool:24C lamp_on:3h animal:corn snake",
    "temps-hot": f"temps basking:150C cool:-10C warm:60C night:50C {_DRAGON}",
    "temps-water": "temps water:24C basking:40C animal:red-eared slider",
    "needs-dragon": "needs bearded dragon",
    "needs-chameleon": "needs panther chameleon",
    "needs-gecko": "needs crested gecko",
    "needs-axolotl": "needs axolotl",
    "check-alarm": f"check beardie, 12% polished hood, no mesh, 10in to back, basking 120, {_BOX}",
    "check-moved": "check bearded dragon, 12% t5 34in, polished reflector, no mesh, 28in to back",
    "check-snake": "check ball python, 36x18x18in enclosure, 6% tube, 12in to his back, cool 78F",
    "check-bare": "check bearded dragon, basking 98, cool 75",
    "tube-take": f"tube distance:16in screen:none {_DRAGON}",
    "tube-own": f"tube distance:16in screen:none {_DRAGON} readings:4 at 12in",
    "section": f"section {_TUBE} distance:16in {_BOX} {_DRAGON}",
    "section-tall": f"section {_TUBE} distance:30in enclosure:48x24x36in {_DRAGON}",
    "plan": f"plan {_DRAGON} {_BOX} lid:solid material:wood room:70F night:62F",
    "plan-across": "plan enclosure:24x24x48in lid:full mesh room:70F night:65F"
    " animal:veiled chameleon",
    "distance": f"distance tube:12% reflector:plain screen:blocks 45% {_DRAGON}",
    "uvi-near": "uvi distance:5in tube:14% reflector:polished screen:none animal:crested gecko",
    "meter": f"meter readings:5.6 at 30cm, 4.3 at 36cm, 3.4 at 42cm {_DRAGON}",
    "decline": f"decline readings:2026-01-03 5.2, 2026-03-04 4.3, 2026-05-01 3.9 {_DRAGON}",
    "card": "card animal:leopard gecko",
    "hours": f"hours latitude:52N {_DRAGON}",
    "distance-unsure": f"distance tube:12% reflector:not sure screen:not sure {_DRAGON}",
    "dose": "dose uvi:4 hours:10 distance:14in latitude:27S month:June",
    "lamps": "lamp",
    "check-odd": "check veiled chameleon, 18x18x79in enclosure, 6% polished, no mesh, 10in to back",
    "hours-day": f"hours {_DRAGON}",
    "decline-age": "decline age:20 months lamp:compact lamp",
}


def drawing_of(name: str, language: Language) -> Drawing:
    picture = ask(QUESTIONS[name], Preferences(language=language, today=TODAY)).picture
    assert picture is not None, name
    assert picture.drawing is not None, name
    return picture.drawing


def small(name: str) -> Image.Image:
    """Draw a picture, every second one dark and every third in German."""
    number = list(QUESTIONS).index(name)
    theme = Theme.DARK if number % 2 else Theme.LIGHT
    png = draw(drawing_of(name, "de" if number % 3 == 2 else "en"), theme)
    image = Image.open(BytesIO(png)).convert("RGB")
    return image.resize((WIDE, image.height * WIDE // image.width), Image.Resampling.BOX)


def seen(image: Image.Image) -> NDArray[np.float64]:
    """Return a picture in OKLab × 100, blurred by a pixel (Ottosson 2020; from memory)."""
    blurred = image.convert("RGB").filter(ImageFilter.GaussianBlur(1.0))
    light = linear(np.asarray(blurred, dtype=np.float64) / 255.0)
    lms = light @ np.array(
        [
            [0.4122214708, 0.2119034982, 0.0883024619],
            [0.5363325363, 0.6806995451, 0.2817188376],
            [0.0514459929, 0.1073969566, 0.6299787005],
        ]
    )
    lab = np.cbrt(np.clip(lms, 0.0, 1.0)) @ np.array(
        [
            [0.2104542553, 1.9779984951, 0.0259040371],
            [0.7936177850, -2.4285922050, 0.7827717662],
            [-0.0040720468, 0.4505937099, -0.8086757660],
        ]
    )
    return np.asarray(100.0 * lab)


def apart(one: Image.Image, other: Image.Image) -> tuple[float, float]:
    """Return the mean distance of two pictures, and that of the tile where they differ most."""
    if one.size != other.size:
        return 100.0, 100.0
    far = np.linalg.norm(seen(one) - seen(other), axis=2)
    rows, columns = far.shape[0] // TILE, far.shape[1] // TILE
    tiles = far[: rows * TILE, : columns * TILE].reshape(rows, TILE, columns, TILE)
    return float(far.mean()), float(tiles.mean(axis=(1, 3)).max())


@pytest.mark.parametrize("name", QUESTIONS)
def test_a_picture_looks_as_it_was_last_looked_at(name: str) -> None:
    mean, worst = apart(small(name), Image.open(FOLDER / f"{name}.png"))
    assert mean < MEAN, mean
    assert worst < WORST, worst


def test_there_are_30_of_them_and_no_other_file() -> None:
    assert len(QUESTIONS) == 30
    assert {path.stem for path in FOLDER.iterdir()} == set(QUESTIONS)


def test_a_word_that_is_gone_or_moved_would_be_noticed() -> None:
    pinned = Image.open(FOLDER / "temps-cool-end.png").convert("RGB")
    bare = pinned.copy()
    ground = bare.getpixel((1, 1))
    assert ground is not None
    bare.paste(ground, (30, 20, 250, 60))
    assert apart(bare, pinned)[1] > WORST
    moved = Image.new("RGB", pinned.size, ground)
    moved.paste(pinned, (3, 0))
    assert apart(moved, pinned)[1] > WORST


def renew(folder: Path) -> None:
    """Write old and new beside each other into a folder, and keep the new ones."""
    FOLDER.mkdir(exist_ok=True)
    folder.mkdir(parents=True, exist_ok=True)
    for name in QUESTIONS:
        new, kept = small(name), FOLDER / f"{name}.png"
        old = Image.open(kept).convert("RGB") if kept.is_file() else Image.new("RGB", new.size)
        both = Image.new("RGB", (2 * WIDE + 8, max(old.height, new.height)))
        both.paste(old, (0, 0))
        both.paste(new, (WIDE + 8, 0))
        both.save(folder / f"{name}.png")
        new.quantize(192, Image.Quantize.MEDIANCUT, dither=Image.Dither.NONE).save(
            kept, optimize=True
        )


if __name__ == "__main__":
    renew(Path(sys.argv[1]))
    sys.exit(0)
