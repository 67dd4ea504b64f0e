"""The mutants themselves: one change each, and the changed module is the one that tests import."""

import ast

from tests.mutation.__main__ import modules_of, rooms
from tests.mutation.mutants import mutants_of
from tests.mutation.reach import Reach, reaching
from tests.mutation.trial import ROOT, module_name

_SOURCE = '''"""What it is."""

__all__ = ["found"]


def found(a: float, most: int = 3) -> float | None:
    """Say."""
    if not a < most and a:
        raise ValueError("no")
    return min(-a, 2.0)
'''


def test_each_mutant_changes_one_place_and_compiles() -> None:
    before = ast.unparse(ast.parse(_SOURCE)).splitlines()
    found = mutants_of(_SOURCE)
    for mutant in found:
        after = ast.unparse(mutant.tree).splitlines()
        assert sum(a != b for a, b in zip(before, after, strict=True)) == 1
        compile(mutant.tree, "found", "exec")
    assert {(mutant.before, mutant.after) for mutant in found} == {
        ("3", "4"),
        ("not a < most and a", "not a < most or a"),
        ("not a < most", "a < most"),
        ("a < most", "a <= most"),
        ("raise ValueError('no')", "pass"),
        ("'no'", "'XXnoXX'"),
        ("min(-a, 2.0)", "max(-a, 2.0)"),
        ("-a", "a"),
        ("2.0", "3.0"),
    }


def test_rooms_name_modules_and_tests_that_are_there() -> None:
    for name, room in rooms().items():
        assert modules_of(room), name
        for path in (*room["modules"], *room["tests"], *room.get("without", ())):
            assert (ROOT / path).exists(), (name, path)


def test_what_a_room_goes_without_is_in_none_of_its_files_and_every_folder_has_a_room() -> None:
    saved = {path for path in modules_of(rooms()["questions"]) if "saved" in path.parts}
    assert not saved
    every = {path for room in rooms().values() for path in modules_of(room)}
    for folder in (ROOT / "calc", ROOT / "bot"):
        for path in folder.rglob("*.py"):
            alone = path.parent == folder or path.name == "__init__.py"
            assert alone or "migrations" in path.parts or path in every, path


def test_a_module_is_found_by_the_name_it_is_imported_under() -> None:
    assert module_name(ROOT / "calc/judgement.py") == "calc.judgement"
    assert module_name(ROOT / "calc/heat/__init__.py") == "calc.heat"


def test_a_mutant_meets_the_tests_that_call_its_function_the_quickest_first() -> None:
    here, other = ROOT / "calc/judgement.py", ROOT / "calc/limits.py"
    reached = (
        Reach("slow", 2.0, frozenset({(str(here), 1, 9)})),
        Reach("quick", 0.1, frozenset({(str(here), 4, 5), (str(other), 20, 30)})),
        Reach("elsewhere", 0.0, frozenset({(str(here), 20, 30)})),
    )
    assert reaching(reached, here, 5, inside=True) == ["quick", "slow"]
    assert reaching(reached, here, 10, inside=True) == []
    assert reaching(reached, here, 10, inside=False) == ["elsewhere", "quick", "slow"]
    assert reaching(reached, other, 25, inside=True) == ["quick"]


def test_a_place_is_in_a_function_or_in_the_module() -> None:
    found = {
        mutant.before: mutant.inside
        for mutant in mutants_of("A = 1\n\ndef f(b=2):\n    return 3\n")
    }
    assert found == {"1": False, "2": False, "3": True}
