// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "core/exchange/csv_reader.h"

namespace padside {

CsvReader::CsvReader(std::string_view text, std::string_view name)
    : m_text(text)
    , m_name(name)
{
    constexpr std::string_view byteOrderMark = "\xEF\xBB\xBF";
    if (m_text.starts_with(byteOrderMark))
        m_text.remove_prefix(byteOrderMark.size());
}

void CsvReader::skipEmptyLines()
{
    while (!atEnd() && atLineEnd())
        passLineEnd();
}

Result<CsvRow> CsvReader::next()
{
    CsvRow row{m_line, {}};
    m_rowPlace = m_place;
    m_rowLine = m_line;
    while (true) {
        Result<std::string> one = cell();
        if (!one)
            return tl::unexpected(one.error());
        row.cells.push_back(std::move(*one));
        if (atEnd() || atLineEnd())
            break;
        ++m_place; // the comma
    }
    passLineEnd();
    return row;
}

void CsvReader::passBadRow()
{
    m_place = m_rowPlace;
    m_line = m_rowLine;
    while (!atEnd() && !atLineEnd())
        ++m_place;
    passLineEnd();
}

Result<std::string> CsvReader::cell()
{
    if (!atEnd() && m_text[m_place] == '"')
        return quotedCell();
    const std::size_t begin = m_place;
    while (!atEnd() && !atLineEnd() && m_text[m_place] != ',') {
        if (m_text[m_place] == '"')
            return refuse(
                PADSIDE_SAY("{0}, line {1}: there is a quotation mark inside a value. Put the whole value in quotation "
                            "marks and write the inner ones twice."),
                m_line);
        ++m_place;
    }
    return std::string(m_text.substr(begin, m_place - begin));
}

Result<std::string> CsvReader::quotedCell()
{
    const std::size_t openedOn = m_line;
    std::string value;
    for (++m_place; !atEnd();) {
        if (m_text[m_place] == '"') {
            ++m_place;
            if (atEnd() || atLineEnd() || m_text[m_place] == ',')
                return value;
            if (m_text[m_place] != '"')
                return refuse(
                    PADSIDE_SAY(
                        "{0}, line {1}: something follows a closing quotation mark. Put a comma there, or write "
                        "quotation marks inside a value twice."),
                    m_line);
            value += '"';
            ++m_place;
        } else if (atLineEnd()) {
            const std::size_t begin = m_place;
            passLineEnd();
            value += m_text.substr(begin, m_place - begin);
        } else {
            value += m_text[m_place++];
        }
    }
    return refuse(
        PADSIDE_SAY("{0}, line {1}: a quotation mark is opened here and never closed. Close it, or take it out."),
        openedOn);
}

bool CsvReader::atLineEnd() const
{
    return m_text[m_place] == '\n' || m_text[m_place] == '\r';
}

void CsvReader::passLineEnd()
{
    if (atEnd())
        return;
    const bool two = m_text.substr(m_place).starts_with("\r\n");
    m_place += two ? 2 : 1;
    ++m_line;
}

tl::unexpected<Problem> CsvReader::refuse(std::string pattern, std::size_t line) const
{
    return problem(ProblemKind::badInput, std::move(pattern), {std::string(m_name), static_cast<std::int64_t>(line)});
}

} // namespace padside
