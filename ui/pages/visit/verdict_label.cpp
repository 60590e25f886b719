// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/visit/verdict_label.h"

#include "ui/models/record_book.h"
#include "ui/models/speaker.h"
#include "ui/models/verdict_words.h"

#include <QEvent>

namespace padside {

using namespace Qt::Literals::StringLiterals;

VerdictLabel::VerdictLabel(const RecordBook& book, QWidget* parent)
    : QLabel(parent)
    , m_book(book)
{
    setWordWrap(true);
    setTextFormat(Qt::RichText);
    hide();
}

void VerdictLabel::show(const std::vector<Verdict>& verdicts)
{
    if (verdicts == m_verdicts)
        return;
    m_verdicts = verdicts;
    write();
}

QString VerdictLabel::plainText() const
{
    QStringList lines;
    for (const Verdict& verdict : m_verdicts)
        lines << verdictText(m_book, verdict);
    return lines.join(u'\n');
}

void VerdictLabel::write()
{
    const QString quiet = palette().color(QPalette::PlaceholderText).name(QColor::HexArgb);
    QStringList lines;
    for (const Verdict& verdict : m_verdicts) {
        QString line = u"<b>%1.</b> %2"_s.arg(judgementWord(m_book, verdict.judgement).toHtmlEscaped(),
                                              m_book.speaker().said(verdict.sentence).toHtmlEscaped());
        const QString source = verdictSource(m_book, verdict);
        if (!source.isEmpty())
            line += u" <span style='color:%1'>(%2)</span>"_s.arg(quiet, source.toHtmlEscaped());
        lines << line;
    }
    setText(lines.join(u"<br/>"_s));
    setAccessibleName(plainText());
}

void VerdictLabel::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::StyleChange)
        write();
    QLabel::changeEvent(event);
}

} // namespace padside
