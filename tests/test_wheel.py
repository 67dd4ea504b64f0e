"""The installed program: a wheel holds every file of the packages and answers by itself."""

import subprocess
import sys
import sysconfig
import zipfile
from pathlib import Path

import pytest

from bot import __version__

ROOT = Path(__file__).parent.parent


@pytest.fixture(scope="module")
def unpacked(tmp_path_factory: pytest.TempPathFactory) -> Path:
    folder = tmp_path_factory.mktemp("wheel")
    subprocess.run(
        [sys.executable, "-m", "hatchling", "build", "-t", "wheel", "-d", str(folder)],
        cwd=ROOT,
        check=True,
        capture_output=True,
    )
    (wheel,) = folder.glob("*.whl")
    with zipfile.ZipFile(wheel) as packed:
        packed.extractall(folder / "unpacked")
    return folder / "unpacked"


def test_the_wheel_holds_every_file_of_the_packages(unpacked: Path) -> None:
    kept = {
        str(file.relative_to(ROOT))
        for package in ("bot", "calc")
        for file in (ROOT / package).rglob("*")
        if file.is_file() and file.suffix != ".pyc"
    }
    packed = {str(file.relative_to(unpacked)) for file in unpacked.rglob("*") if file.is_file()}
    assert kept <= packed
    assert {"bot/py.typed", "calc/py.typed"} <= packed


def test_the_wheel_names_its_version_and_its_command(unpacked: Path) -> None:
    (told,) = unpacked.glob("*.dist-info")
    assert f"Version: {__version__}\n" in (told / "METADATA").read_text("utf-8")
    assert "noonstone = bot.__main__:main" in (told / "entry_points.txt").read_text("utf-8")


def test_the_unpacked_wheel_answers_away_from_the_checkout(unpacked: Path, tmp_path: Path) -> None:
    script = (
        f"import sys; sys.path[:0] = [{str(unpacked)!r}, {sysconfig.get_path('purelib')!r}]\n"
        "import bot; assert bot.__file__.startswith(sys.path[0]), bot.__file__\n"
        "from bot.__main__ import main; sys.exit(main(sys.argv[1:]))"
    )
    done = subprocess.run(
        [sys.executable, "-S", "-c", script, "ask", "convert 14in"],
        cwd=tmp_path,
        env={"PATH": "", "NOONSTONE_DATA_DIR": str(tmp_path), "HOME": str(tmp_path)},
        capture_output=True,
        text=True,
        check=True,
    )
    assert "35.56 cm" in done.stdout
