// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/unit/part_costs_dialog.h"

#include "core/catalogue/cost_figures.h"
#include "core/quantity/measure.h"
#include "ui/models/record_book.h"
#include "ui/models/speaker.h"
#include "ui/models/worth_log.h"
#include "ui/models/written_number.h"
#include "ui/pages/setup/checked_form.h"

#include <QLineEdit>

namespace padside {

using namespace Qt::Literals::StringLiterals;

namespace {

/// The catalogue's code of what is written on the unit; empty if it knows no such refrigerant.
std::string refrigerantCode(const RecordBook& book, const std::string& written)
{
    const Refrigerant* known = book.catalogue().refrigerant(written);
    return known != nullptr ? priceCode(known->code) : std::string();
}

} // namespace

PartCostsDialog::PartCostsDialog(RecordBook& book, WorthLog& log, const std::string& partKind, const QString& name,
                                 const std::string& refrigerant, QWidget* parent)
    : SetupDialog(book, tr("Costs: %1").arg(name), parent)
    , m_log(log)
    , m_form(new CheckedForm)
{
    setObjectName(u"part-costs"_s);
    book.attempt([&] {
        const OwnChanges changes = log.ownChanges();
        m_fields = changes.fields().costs(partKind);
        if (const std::string code = refrigerantCode(book, refrigerant); !code.empty())
            m_fields.push_back(changes.fields().money({{code, refrigerant}}).front());
    });
    m_form->addNote(tr("In your own money, for every part of this kind in the file. What is left empty is not reckoned "
                       "with, and is named where it is missing."));
    for (std::size_t i = 0; i < m_fields.size(); ++i) {
        const OwnField& field = m_fields[i];
        m_form->addField(static_cast<int>(i), m_book.speaker().said(field.label), new QLineEdit,
                         u"cost-"_s + QString::fromStdString(field.path.back()));
        if (field.own)
            m_form->setText(static_cast<int>(i), writtenNumber(book, std::get<double>(*field.own)));
    }
    setForm(m_form, tr("Keep"));
    resizeToForm(520);
}

bool PartCostsDialog::keep()
{
    std::vector<WorthLog::Figure> figures;
    std::map<int, QString> problems;
    for (std::size_t i = 0; i < m_fields.size(); ++i) {
        const QString text = m_form->text(static_cast<int>(i)).trimmed();
        if (text.isEmpty()) {
            figures.emplace_back(m_fields[i].path, std::nullopt);
            continue;
        }
        const auto number = parseNumber(text.toStdString(), m_book.numberStyle());
        if (!number)
            problems.emplace(static_cast<int>(i), m_book.speaker().said(number.error().what));
        else
            figures.emplace_back(m_fields[i].path, *number);
    }
    if (problems.empty()) { // then there is a figure for every field
        const auto refusal = m_log.setFigures(figures);
        if (!refusal)
            return true;
        if (!refusal->why.isEmpty())
            problems.emplace(static_cast<int>(refusal->figure), refusal->why);
    }
    m_form->setProblems(problems);
    return false;
}

} // namespace padside
