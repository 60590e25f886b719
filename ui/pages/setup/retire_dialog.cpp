// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/setup/retire_dialog.h"

#include "ui/models/record_book.h"
#include "ui/models/setup_log.h"
#include "ui/models/speaker.h"
#include "ui/pages/setup/checked_form.h"

#include <QDateEdit>
#include <QLineEdit>

namespace padside {

using namespace Qt::Literals::StringLiterals;

RetireDialog::RetireDialog(RecordBook& book, SetupLog& log, const Unit& unit, QWidget* parent)
    : SetupDialog(book, tr("Retire %1").arg(shown(unit.tag)), parent)
    , m_log(log)
    , m_unit(unit.id)
    , m_form(new CheckedForm)
    , m_day(new QDateEdit(toQDate(book.today())))
{
    setObjectName(u"retire-dialog"_s);
    m_day->setCalendarPopup(true);
    m_day->setDisplayFormat(u"yyyy-MM-dd"_s);
    m_day->setMaximumDate(toQDate(book.today()));
    auto* because = new QLineEdit;
    because->setPlaceholderText(tr("Replaced, scrapped, given up"));
    m_form->addNote(
        tr("A retired unit keeps its record, but is no longer planned for visits. It can be brought back."));
    m_form->addField(day, tr("&Day"), m_day, u"retire-day"_s);
    m_form->addField(reason, tr("&Reason"), because, u"retire-reason"_s);
    setForm(m_form, tr("Retire it"));
    resizeToForm(460);
}

bool RetireDialog::keep()
{
    const QString because = m_form->text(reason).trimmed();
    std::map<int, QString> problems;
    if (because.isEmpty())
        problems.emplace(reason, tr("Say in a few words why: the next person will ask."));
    m_form->setProblems(problems);
    return problems.empty() && m_log.retire(m_unit, fromQDate(m_day->date()), because);
}

} // namespace padside
