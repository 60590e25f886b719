// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <functional>
#include <iosfwd>
#include <string>

namespace padside {

struct CommandSurroundings;

/// How far a long command has come, as one line on a terminal that is written over and wiped at the end. Where `err` is
/// not a terminal nothing is written: a log or a pipe gets no noise.
class ProgressLine
{
public:
    ProgressLine(const CommandSurroundings& surroundings, std::string doing);
    ~ProgressLine();
    ProgressLine(const ProgressLine&) = delete;
    ProgressLine& operator=(const ProgressLine&) = delete;

    /// For the functions that tell how far they are, 0 to 1; never cancels.
    [[nodiscard]] std::function<bool(double)> teller();

private:
    void show(double done);

    std::ostream* m_terminal; ///< null if there is none
    std::string m_doing;
    int m_shownPercent = -1;
};

} // namespace padside
