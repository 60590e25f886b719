// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/visit/suspicion_list.h"

#include "ui/models/record_book.h"
#include "ui/models/speaker.h"
#include "ui/models/visit_words.h"
#include "ui/pages/visit/lettering.h"

#include <QVBoxLayout>

namespace padside {

using namespace Qt::Literals::StringLiterals;

SuspicionList::SuspicionList(const RecordBook& book, QWidget* parent)
    : QWidget(parent)
    , m_book(book)
    , m_text(new QLabel)
{
    m_text->setObjectName(u"suspicions"_s);
    m_text->setWordWrap(true);
    m_text->setTextFormat(Qt::RichText);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 8, 0, 0);
    layout->setSpacing(4);
    layout->addWidget(headingLabel(tr("What the readings may point to")));
    layout->addWidget(m_text);
    layout->addWidget(quietLabel(tr("A hint from common practice, not a verdict; a licensed technician decides.")));
    hide();
}

void SuspicionList::show(const std::vector<Suspicion>& suspicions)
{
    setVisible(!suspicions.empty());
    if (suspicions == m_suspicions)
        return;
    m_suspicions = suspicions;
    const auto said = [this](const std::vector<Sentence>& sentences) {
        QStringList all;
        for (const Sentence& sentence : sentences)
            all << m_book.speaker().said(sentence).toHtmlEscaped();
        return all.join(u' ');
    };
    QStringList paragraphs;
    int place = 0;
    for (const Suspicion& one : suspicions) {
        QString text = u"<p><b>%1. %2</b>"_s.arg(++place).arg(translated(m_book, one.name).toHtmlEscaped());
        text += u"<br/>"_s + tr("For it: %1").arg(said(one.speaksFor));
        if (!one.speaksAgainst.empty())
            text += u"<br/>"_s + tr("Against it: %1").arg(said(one.speaksAgainst));
        text += u"<br/>"_s + tr("What would decide: %1").arg(m_book.speaker().said(one.decides).toHtmlEscaped());
        paragraphs << text + u"</p>"_s;
    }
    m_text->setText(paragraphs.join(QString()));
}

} // namespace padside
