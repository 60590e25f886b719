// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include <array>
#include <cmath>
#include <cstddef>
#include <optional>

namespace padside {

using Vector4 = std::array<double, 4>;
using Matrix4 = std::array<Vector4, 4>;

/// The lower triangle L of a positive definite matrix L L'; empty if it is not one.
[[nodiscard]] inline std::optional<Matrix4> choleskyOf(const Matrix4& matrix)
{
    Matrix4 lower{};
    for (std::size_t row = 0; row < 4; ++row) {
        for (std::size_t column = 0; column <= row; ++column) {
            double rest = matrix[row][column];
            for (std::size_t k = 0; k < column; ++k)
                rest -= lower[row][k] * lower[column][k];
            if (row != column)
                lower[row][column] = rest / lower[column][column];
            else if (rest > 0 && std::isfinite(rest))
                lower[row][row] = std::sqrt(rest);
            else
                return std::nullopt;
        }
    }
    return lower;
}

/// x of L L' x = b.
[[nodiscard]] inline Vector4 solveBy(const Matrix4& lower, const Vector4& right)
{
    Vector4 x = right;
    for (std::size_t row = 0; row < 4; ++row) {
        for (std::size_t k = 0; k < row; ++k)
            x[row] -= lower[row][k] * x[k];
        x[row] /= lower[row][row];
    }
    for (std::size_t row = 4; row-- > 0;) {
        for (std::size_t k = row + 1; k < 4; ++k)
            x[row] -= lower[k][row] * x[k];
        x[row] /= lower[row][row];
    }
    return x;
}

/// The diagonal of the inverse of L L'.
[[nodiscard]] inline Vector4 inverseDiagonalBy(const Matrix4& lower)
{
    Vector4 diagonal{};
    for (std::size_t row = 0; row < 4; ++row) {
        Vector4 unit{};
        unit[row] = 1;
        diagonal[row] = solveBy(lower, unit)[row];
    }
    return diagonal;
}

} // namespace padside
