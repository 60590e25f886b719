// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "app/progress_line.h"

#include "app/command_line.h"

#include <algorithm>
#include <cmath>
#include <ostream>
#include <utility>

namespace padside {

ProgressLine::ProgressLine(const CommandSurroundings& surroundings, std::string doing)
    : m_terminal(surroundings.errIsTerminal ? &surroundings.err : nullptr)
    , m_doing(std::move(doing))
{
}

ProgressLine::~ProgressLine()
{
    if (m_terminal && m_shownPercent >= 0)
        *m_terminal << '\r' << std::string(m_doing.size() + sizeof " 100 %", ' ') << '\r' << std::flush;
}

std::function<bool(double)> ProgressLine::teller()
{
    return [this](double done) {
        show(done);
        return true;
    };
}

void ProgressLine::show(double done)
{
    const int percent = static_cast<int>(std::floor(std::clamp(done, 0.0, 1.0) * 100));
    if (!m_terminal || percent == m_shownPercent)
        return;
    m_shownPercent = percent;
    *m_terminal << '\r' << m_doing << ' ' << percent << " %" << std::flush;
}

} // namespace padside
