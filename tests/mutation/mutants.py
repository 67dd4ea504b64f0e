"""Mutants of a module: each changes one place of its source, as a slip of the hand might.

Not changed are annotations, decorators, docstrings, imports and ``__all__``: no slip there changes
what is worked out. Several slips at one place are several mutants.
"""

import ast
import copy
from collections.abc import Callable, Iterator
from dataclasses import dataclass

__all__ = ["Mutant", "mutants_of"]

_SWAPPED: dict[type[ast.AST], type[ast.AST]] = {
    ast.Lt: ast.LtE,
    ast.LtE: ast.Lt,
    ast.Gt: ast.GtE,
    ast.GtE: ast.Gt,
    ast.Eq: ast.NotEq,
    ast.NotEq: ast.Eq,
    ast.Is: ast.IsNot,
    ast.IsNot: ast.Is,
    ast.In: ast.NotIn,
    ast.NotIn: ast.In,
    ast.Add: ast.Sub,
    ast.Sub: ast.Add,
    ast.Mult: ast.Div,
    ast.Div: ast.Mult,
    ast.Pow: ast.Mult,
    ast.FloorDiv: ast.Mult,
    ast.Mod: ast.Mult,
    ast.And: ast.Or,
    ast.Or: ast.And,
}
_NAMES = {"min": "max", "max": "min", "any": "all", "all": "any", "minimum": "maximum"}
_NAMES |= {after: before for before, after in _NAMES.items()}
_LEFT_OUT = {"annotation", "returns", "decorator_list", "type_params", "type_comment", "bases"}

Slip = Callable[[ast.AST], ast.AST]


_Path = tuple[tuple[str, int | None], ...]


@dataclass(frozen=True, slots=True)
class Mutant:
    """One place of a module with what might stand there; the changed source is made when asked.

    ``inside``: the place stands in a function.
    """

    whole: ast.Module
    path: _Path
    node: ast.AST
    changed: ast.AST
    inside: bool

    @property
    def line(self) -> int:
        """Return the line of the place."""
        return getattr(self.node, "lineno", 0)

    @property
    def before(self) -> str:
        """Return what stands there."""
        return _shown(self.node)

    @property
    def after(self) -> str:
        """Return what stands there in the mutant."""
        return _shown(self.changed)

    @property
    def tree(self) -> ast.Module:
        """Return the whole changed source."""
        tree = copy.deepcopy(self.whole)
        _put(tree, self.path, self.changed)
        return ast.fix_missing_locations(tree)

    def __str__(self) -> str:
        return f"{self.line}: {self.before} → {self.after}"


def mutants_of(source: str) -> list[Mutant]:
    """Return every mutant of a module in the order of its source."""
    whole = ast.parse(source)
    return [
        Mutant(whole, path, node, changed, _is_inside(whole, path))
        for path, node in _places(whole, ())
        for changed in _slips(node)
    ]


def _places(node: ast.AST, path: _Path) -> Iterator[tuple[_Path, ast.AST]]:
    """Yield what may be changed below a node, with the way there."""
    for name, value in ast.iter_fields(node):
        if name in _LEFT_OUT:
            continue
        for index, child in enumerate(value) if isinstance(value, list) else ((None, value),):
            if isinstance(child, ast.AST) and not _is_left_out(child):
                way = (*path, (name, index))
                yield way, child
                yield from _places(child, way)


def _is_inside(tree: ast.AST, path: _Path) -> bool:
    """Say whether the way leads through the body of a function."""
    node = tree
    for name, index in path:
        if isinstance(node, ast.FunctionDef | ast.AsyncFunctionDef) and name == "body":
            return True
        value = getattr(node, name)
        node = value if index is None else value[index]
    return False


def _is_left_out(node: ast.AST) -> bool:
    if isinstance(node, ast.Expr) and isinstance(node.value, ast.Constant):
        return True
    if isinstance(node, ast.Assign):
        return any(isinstance(to, ast.Name) and to.id == "__all__" for to in node.targets)
    return isinstance(node, ast.Import | ast.ImportFrom | ast.JoinedStr)


def _put(tree: ast.AST, path: _Path, changed: ast.AST) -> None:
    *way, (last, at) = path
    node = tree
    for name, index in way:
        value = getattr(node, name)
        node = value if index is None else value[index]
    if at is None:
        setattr(node, last, changed)
    else:
        getattr(node, last)[at] = changed


def _slips(node: ast.AST) -> Iterator[ast.AST]:
    """Yield what might stand there by a slip."""
    match node:
        case ast.Compare():
            yield from _compared(node)
        case ast.BinOp(op=op) | ast.BoolOp(op=op) | ast.AugAssign(op=op):
            if type(op) in _SWAPPED:
                yield _with(node, "op", _SWAPPED[type(op)]())
        case ast.UnaryOp(op=ast.Not() | ast.USub()):
            yield node.operand
        case ast.Constant():
            yield from _other_constant(node)
        case ast.If() | ast.IfExp() | ast.While():
            if isinstance(node.test, ast.Name | ast.Attribute | ast.Call):
                yield _with(node, "test", ast.UnaryOp(ast.Not(), node.test))
        case ast.Call(func=ast.Name() | ast.Attribute()):
            yield from _other_call(node)
        case ast.Break():
            yield ast.Continue()
        case ast.Continue():
            yield ast.Break()
        case ast.Raise() | ast.Expr():
            yield ast.Pass()


def _compared(node: ast.Compare) -> Iterator[ast.AST]:
    for at, op in enumerate(node.ops):
        ops = list(node.ops)
        ops[at] = _SWAPPED[type(op)]()  # type: ignore[call-overload]
        yield _with(node, "ops", ops)


def _other_constant(node: ast.Constant) -> Iterator[ast.AST]:
    value = node.value
    if isinstance(value, bool):
        yield ast.Constant(not value)
    elif isinstance(value, int | float):
        yield ast.Constant(value + 1)
    elif isinstance(value, str) and value:
        yield ast.Constant(f"XX{value}XX")


def _other_call(node: ast.Call) -> Iterator[ast.AST]:
    named = node.func
    if isinstance(named, ast.Name) and named.id in _NAMES:
        yield _with(node, "func", ast.Name(_NAMES[named.id], ast.Load()))
    elif isinstance(named, ast.Attribute) and named.attr in _NAMES:
        yield _with(node, "func", ast.Attribute(named.value, _NAMES[named.attr], ast.Load()))
    elif isinstance(named, ast.Name) and named.id == "abs":
        yield node.args[0]


def _with(node: ast.AST, name: str, value: object) -> ast.AST:
    changed = copy.copy(node)
    setattr(changed, name, value)
    return changed


def _shown(node: ast.AST) -> str:
    first, *more = ast.unparse(ast.fix_missing_locations(copy.deepcopy(node))).splitlines() or [""]
    return f"{first} …" if more else first
