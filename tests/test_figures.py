"""The table of figures in DEVELOPERS.md: every line still has a benchmark, and was measured."""

import ast
from pathlib import Path

import pytest

from tests.bench.figures import Row, places, put_between_marks, rows, table, told

ROOT = Path(__file__).parent.parent


def functions(file: str) -> set[str]:
    path = ROOT / "tests" / "bench" / f"test_bench_{file}.py"
    tree = ast.parse(path.read_text(encoding="utf-8"))
    return {node.name for node in tree.body if isinstance(node, ast.FunctionDef)}


@pytest.mark.parametrize("row", rows(), ids=lambda row: row.what)
def test_every_row_names_benchmarks_that_are_there(row: Row) -> None:
    found = places(row)
    assert found
    for file, test, figure in found:
        assert test.partition("[")[0] in functions(file)
        assert figure == "median" or figure.rpartition("_")[2] in ("ms", "mb", "ratio")


def test_the_table_has_every_row_and_no_figure_is_missing() -> None:
    text = (ROOT / "DEVELOPERS.md").read_text(encoding="utf-8")
    shown = text.split("<!-- figures: begin -->")[1].split("<!-- figures: end -->")[0]
    assert "Measured on 20" in shown
    assert "not measured" not in shown
    for row in rows():
        assert f"| {row.what} | " in shown


def test_a_table_is_filled_and_put_between_the_marks(tmp_path: Path) -> None:
    results = {
        "datetime": "2026-05-01T10:00:00+00:00",
        "machine_info": {"machine": "x", "python_version": "3.11.7", "cpu": {"count": 2}},
        "benchmarks": [
            {
                "fullname": "tests/bench/test_bench_language.py::test_read_a_length[14in]",
                "stats": {"median": 0.000015},
                "extra_info": {},
            }
        ],
    }
    text = table(results)
    assert text.startswith("Measured on 2026-05-01: 2 cores of x, Python 3.11.7.\n")
    assert "| 15 µs; not measured |" in text
    file = tmp_path / "README.md"
    file.write_text("a\n<!-- figures: begin -->\nold\n<!-- figures: end -->\nb\n", encoding="utf-8")
    put_between_marks(file, text)
    after = file.read_text(encoding="utf-8")
    assert after == f"a\n<!-- figures: begin -->\n{text}<!-- figures: end -->\nb\n"
    with pytest.raises(ValueError, match="no place for the figures"):
        put_between_marks(ROOT / "pyproject.toml", text)


def test_a_figure_is_told_with_its_unit() -> None:
    assert told("median", 0.0000123) == "12 µs"
    assert told("median", 0.5) == "500 ms"
    assert told("p99_ms", 4.56) == "4.6 ms"
    assert told("held_mb", 81.2) == "81 MB"
    assert told("p50_ratio", 1.234) == "1.23 ×"
