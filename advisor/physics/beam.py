"""Least bending frequency of a stepped or tapered round bar: Hermite beam elements, solved by inverse iteration.

    (E·I(x)·y'')'' + F·y'' = ω²·ρ·A(x)·y

Everything is without dimension: lengths over the bar's length, diameters over its greatest, so that the stiffness is
d⁴, the mass d², and the thrust F·L²/(E·I). Elements end on the steps of the profile.
Source: beam vibration theory; consistent mass and geometric stiffness of a cubic beam element.
"""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence

LEAST_ELEMENTS = 20  # numerics
STEEPEST_ELEMENT = 0.15  # change of the logarithm of the diameter over one element; numerics
TINY_SEGMENT = 1e-4  # of the length; shorter ones are steps; numerics
CONVERGED = 1e-9  # numerics
MOST_ROUNDS = 200  # numerics
BAND = 4  # entries of a row from the diagonal on; numerics

# Gauss points on 0..1 and their weights.
_ROOT = math.sqrt(0.6) / 2  # exact
GAUSS = ((0.5 - _ROOT, 5 / 18), (0.5, 8 / 18), (0.5 + _ROOT, 5 / 18))  # exact
_PAIRS = tuple((row, column) for row in range(4) for column in range(row, 4))  # exact
# Length powers of each degree of freedom: a slope brings one element length.
_POWER = (0, 1, 0, 1)  # exact


def _shape(at: float) -> tuple[float, float, float, float]:
    return 1 - 3 * at**2 + 2 * at**3, at - 2 * at**2 + at**3, 3 * at**2 - 2 * at**3, at**3 - at**2


def _slope(at: float) -> tuple[float, float, float, float]:
    return -6 * at + 6 * at**2, 1 - 4 * at + 3 * at**2, 6 * at - 6 * at**2, 3 * at**2 - 2 * at


def _bend(at: float) -> tuple[float, float, float, float]:
    return -6 + 12 * at, -4 + 6 * at, 6 - 12 * at, -2 + 6 * at


_STIFF = tuple(tuple(w * _bend(at)[i] * _bend(at)[j] for at, w in GAUSS) for i, j in _PAIRS)
_MASS = tuple(tuple(w * _shape(at)[i] * _shape(at)[j] for at, w in GAUSS) for i, j in _PAIRS)
_PUSH = tuple(sum(w * _slope(at)[i] * _slope(at)[j] for at, w in GAUSS) for i, j in _PAIRS)

Matrix = list[list[float]]  # upper band: row i holds entries (i, i) to (i, i + 3)


def elements(profile: Sequence[tuple[float, float]]) -> Iterator[tuple[float, float, float]]:
    """Pieces (length, first diameter, last diameter) of a profile whose length and greatest diameter are one."""
    start, first = profile[0]
    for position, diameter in profile[1:]:
        length = position - start
        if length >= TINY_SEGMENT:
            steep = abs(math.log(diameter / first)) / STEEPEST_ELEMENT
            parts = max(math.ceil(length * LEAST_ELEMENTS - 1e-9), math.ceil(steep))
            for part in range(parts):
                yield (
                    length / parts,
                    first + (diameter - first) * part / parts,
                    first + (diameter - first) * (part + 1) / parts,
                )
            start = position
        first = diameter


def _assemble(pieces: Sequence[tuple[float, float, float]], push: float, heavy: float | None) -> tuple[Matrix, Matrix]:
    size = 2 * len(pieces) + 2
    stiff = [[0.0] * BAND for _ in range(size)]
    mass = [[0.0] * BAND for _ in range(size)]
    for place, (length, first, last) in enumerate(pieces):
        squares = [(first + (last - first) * at) ** 2 for at, _ in GAUSS]
        (s0, s1, s2), (q0, q1, q2) = squares, [square * square for square in squares]
        if heavy is not None:
            s0 = s1 = s2 = heavy * heavy
        powers = (1.0, length, length * length)
        for (row, column), k, m, g in zip(_PAIRS, _STIFF, _MASS, _PUSH, strict=True):
            scale = powers[_POWER[row] + _POWER[column]]
            bent = (k[0] * q0 + k[1] * q1 + k[2] * q2) / length**3 - push * g / length
            stiff[2 * place + row][column - row] += scale * bent
            mass[2 * place + row][column - row] += scale * length * (m[0] * s0 + m[1] * s1 + m[2] * s2)
    return stiff, mass


def _hold(stiff: Matrix, mass: Matrix, held: Sequence[int]) -> None:
    for place in held:
        for matrix, diagonal in ((stiff, 1.0), (mass, 0.0)):
            for back in range(1, min(BAND, place + 1)):
                matrix[place - back][back] = 0.0
            matrix[place] = [diagonal, 0.0, 0.0, 0.0]


def _factor(matrix: Matrix) -> Matrix | None:
    """L·D·Lᵀ in place of the band; None unless every pivot is positive."""
    size = len(matrix)
    for place in range(size):
        row = matrix[place]
        pivot = row[0]
        if pivot <= 0:
            return None
        for step in range(1, min(BAND, size - place)):
            share = row[step] / pivot
            below = matrix[place + step]
            for further in range(step, BAND):
                below[further - step] -= share * row[further]
        matrix[place] = [pivot, row[1] / pivot, row[2] / pivot, row[3] / pivot]
    return matrix


def _solve(factor: Matrix, load: Sequence[float]) -> list[float]:
    size = len(factor)
    shape = [*load, 0.0, 0.0, 0.0]
    for place in range(size):
        _, one, two, three = factor[place]
        value = shape[place]
        shape[place + 1] -= one * value
        shape[place + 2] -= two * value
        shape[place + 3] -= three * value
    shape[size:] = [0.0, 0.0, 0.0]
    for place in range(size - 1, -1, -1):
        pivot, one, two, three = factor[place]
        shape[place] = shape[place] / pivot - one * shape[place + 1] - two * shape[place + 2] - three * shape[place + 3]
    return shape[:size]


def _times(matrix: Matrix, shape: Sequence[float]) -> list[float]:
    size = len(matrix)
    long = [*shape, 0.0, 0.0, 0.0]
    found = [0.0] * (size + 3)
    for place in range(size):
        here, one, two, three = matrix[place]
        value = long[place]
        found[place] += here * value + one * long[place + 1] + two * long[place + 2] + three * long[place + 3]
        found[place + 1] += one * value
        found[place + 2] += two * value
        found[place + 3] += three * value
    return found[:size]


def least_frequency(
    profile: Sequence[tuple[float, float]], push: float, held: Sequence[int], heavy: float | None = None
) -> float | None:
    """Least ω² of a bar without dimension, None where the thrust bends it out.

    `profile` runs from position 0 to 1 with a greatest diameter of 1; `push` is F·L²/(E·I); `held` numbers the degrees
    of freedom that the ends hold: 0 deflection and 1 slope at the start, -2 and -1 at the far end. `heavy` is a
    diameter whose mass the bar has all along, stiff as its profile: no shape on the way from the one to the other
    swings slower.
    """
    stiff, mass = _assemble(list(elements(profile)), push, heavy)
    _hold(stiff, mass, [place % len(stiff) for place in held])
    factor = _factor(stiff)
    if factor is None:
        return None
    # a lopsided start has a part of every shape in it
    load = _times(mass, [1.0 + place / len(mass) if place % 2 == 0 else 0.0 for place in range(len(mass))])
    found = math.inf
    for _ in range(MOST_ROUNDS):
        shape = _solve(factor, load)
        inertia = _times(mass, shape)
        energy = sum(a * b for a, b in zip(shape, inertia, strict=True))
        before, found = found, sum(a * b for a, b in zip(shape, load, strict=True)) / energy
        if abs(before - found) <= CONVERGED * found:
            break
        scale = 1 / math.sqrt(energy)
        load = [value * scale for value in inertia]
    return found
