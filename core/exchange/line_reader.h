// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <string_view>

namespace padside {

/// Cuts text into lines that end in LF or CRLF (or CR, where there is no LF at all); a byte order mark is passed over.
/// Views of the text given; nothing is copied.
class LineReader
{
public:
    explicit LineReader(std::string_view text)
        : m_rest(text)
    {
        constexpr std::string_view byteOrderMark = "\xEF\xBB\xBF";
        if (m_rest.starts_with(byteOrderMark))
            m_rest.remove_prefix(byteOrderMark.size());
        m_end = m_rest.find('\n') == std::string_view::npos ? '\r' : '\n';
    }

    /// The next line into `line`; false where there is none.
    [[nodiscard]] bool next(std::string_view& line)
    {
        if (m_rest.empty())
            return false;
        const auto end = m_rest.find(m_end);
        line = m_rest.substr(0, end);
        m_rest.remove_prefix(end == std::string_view::npos ? m_rest.size() : end + 1);
        if (line.ends_with('\r'))
            line.remove_suffix(1);
        ++m_number;
        return true;
    }

    [[nodiscard]] std::size_t number() const { return m_number; } ///< of the line last read, counted from 1

private:
    std::string_view m_rest;
    char m_end = '\n';
    std::size_t m_number = 0;
};

} // namespace padside
