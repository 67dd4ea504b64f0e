"""One mutant tried: a child of this process imports the changed module and runs the room's tests.

The parent has imported what the tests lean on and nothing of the program, so that a child begins
quickly and yet imports every module of the program anew.
"""

import ast
import contextlib
import importlib.abc
import importlib.machinery
import importlib.util
import os
import resource
import sys
from collections.abc import Sequence
from dataclasses import dataclass
from enum import Enum
from pathlib import Path
from types import ModuleType

import pytest

from tests.mutation.reach import Recording

__all__ = ["ROOT", "Outcome", "module_name", "preload", "run"]

ROOT = Path(__file__).parents[2]
_ALSO = (
    *("numpy", "scipy.optimize", "hypothesis.strategies", "pydantic", "tomllib"),
    *("hypothesis.extra.numpy", "rapidfuzz"),
)
_OPTIONS = (
    *("-q", "-x", "--no-header", "--tb=no", "-p", "no:cacheprovider", "-p", "no:xdist"),
    # What the parent imported is not rewritten again.
    *("-W", "ignore::pytest.PytestAssertRewriteWarning"),
)
_PASSED, _NO_TESTS = 0, 5
_EXAMPLES = 25


class Outcome(Enum):
    """What became of a mutant."""

    SURVIVED = "survived"
    KILLED = "killed"
    TIMED_OUT = "timed out"


@dataclass
class _Changed(importlib.abc.MetaPathFinder, importlib.abc.Loader):
    """Imports one module from a changed tree."""

    name: str
    path: Path
    tree: ast.Module

    def find_spec(
        self, fullname: str, path: Sequence[str] | None, target: ModuleType | None = None
    ) -> importlib.machinery.ModuleSpec | None:
        if fullname != self.name:
            return None
        return importlib.util.spec_from_file_location(fullname, self.path, loader=self)

    def create_module(self, spec: importlib.machinery.ModuleSpec) -> None:
        return None

    def exec_module(self, module: ModuleType) -> None:
        exec(compile(self.tree, str(self.path), "exec"), module.__dict__)


@dataclass
class _Plugin:
    """Brings the changed module in, and lets hypothesis look for one failure, always the same."""

    changed: _Changed | None = None
    only: Sequence[str] = ()

    def pytest_collection_modifyitems(self, items: list[pytest.Item]) -> None:
        if self.only:
            place = {name: at for at, name in enumerate(self.only)}
            items[:] = sorted(
                (item for item in items if item.nodeid in place),
                key=lambda item: place[item.nodeid],
            )

    @pytest.hookimpl(tryfirst=True)
    def pytest_load_initial_conftests(self) -> None:
        # Before pytest's own finder, which rewrites assertions of what it is told to collect.
        if self.changed is not None:
            sys.meta_path.insert(0, self.changed)

    def pytest_collection(self) -> None:
        from hypothesis import Phase, settings

        phases = (Phase.explicit, Phase.generate)
        settings.register_profile(
            "mutation",
            max_examples=_EXAMPLES,
            deadline=None,
            database=None,
            derandomize=True,
            phases=phases,
        )
        settings.load_profile("mutation")


def module_name(path: Path) -> str:
    """Return the name under which a file of the program is imported."""
    parts = path.relative_to(ROOT).with_suffix("").parts
    return ".".join(parts[:-1] if parts[-1] == "__init__" else parts)


def preload() -> None:
    """Import once what every child would import."""
    for name in _ALSO:
        importlib.import_module(name)
    with (
        Path(os.devnull).open("w") as silent,
        contextlib.redirect_stdout(silent),
        contextlib.redirect_stderr(silent),
    ):
        # Its plugins, and of this program nothing but what stands beside this file.
        pytest.main(["--version", *_OPTIONS, str(Path(__file__).parent)])
    early = [name for name in sys.modules if name.partition(".")[0] in ("bot", "calc")]
    if early:
        raise SystemExit(f"imported before any mutant: {', '.join(early)}")


def run(
    tests: Sequence[str],
    cpu_s: int,
    changed: tuple[Path, ast.Module] | None = None,
    only: Sequence[str] = (),
    record: Recording | None = None,
) -> tuple[Outcome, float]:
    """Run tests in a child, with one file changed or none; return what came of it, and its time.

    Past ``cpu_s`` seconds of processor time the child is stopped. Of the tests those named in
    ``only`` run, in its order; ``record`` notes what each calls.
    """
    child = os.fork()
    if child == 0:
        os._exit(_in_child(tests, cpu_s, changed, only, record))
    _, status, used = os.wait4(child, 0)
    seconds = used.ru_utime + used.ru_stime
    if os.WIFSIGNALED(status):
        return Outcome.TIMED_OUT, seconds
    code = os.waitstatus_to_exitcode(status)
    if code == _NO_TESTS:
        raise SystemExit(f"no tests in {' '.join(tests)}")
    return (Outcome.SURVIVED if code == _PASSED else Outcome.KILLED), seconds


def _in_child(
    tests: Sequence[str],
    cpu_s: int,
    changed: tuple[Path, ast.Module] | None,
    only: Sequence[str],
    record: Recording | None,
) -> int:
    resource.setrlimit(resource.RLIMIT_CPU, (cpu_s, cpu_s + 5))
    silent = os.open(os.devnull, os.O_WRONLY)
    os.dup2(silent, 1)
    os.dup2(silent, 2)
    finder = None if changed is None else _Changed(module_name(changed[0]), *changed)
    try:
        plugins: list[object] = [_Plugin(finder, only), *([record] if record else [])]
        return int(pytest.main([*_OPTIONS, *tests], plugins=plugins))
    except BaseException:
        return 1
