// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/setup/unit_dialog.h"

#include "core/catalogue/fit_out.h"
#include "core/store/site_book.h"
#include "core/store/store.h"
#include "ui/models/counted_tags.h"
#include "ui/models/record_book.h"
#include "ui/models/setup_log.h"
#include "ui/models/speaker.h"
#include "ui/pages/setup/fitted_parts_list.h"
#include "ui/pages/setup/unit_form.h"

#include <QCheckBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QSpinBox>
#include <QVBoxLayout>

#include <algorithm>
#include <iterator>

namespace padside {

using namespace Qt::Literals::StringLiterals;

namespace {

constexpr QSize unitSize{860, 600};
constexpr int changedUnitWidth = 560;
constexpr int mostAtOnce = 50; // written at once, without a pause; a longer list comes in as a file
constexpr std::size_t mostListed = 12;

std::set<std::string> tagsOf(RecordBook& book)
{
    std::set<std::string> tags;
    book.attempt([&] { tags = book.store().sites().tags(); });
    return tags;
}

/// The next one that is free; nothing where the tag has no number.
std::string nextTag(const std::string& tag, const std::set<std::string>& taken)
{
    const auto tags = countedTags(tag, static_cast<int>(taken.size()) + 2);
    if (tags) {
        for (const std::string& next : *tags) {
            if (!taken.contains(next))
                return next;
        }
    }
    return {};
}

QString listed(const std::vector<std::string>& tags)
{
    QStringList words;
    for (const std::string& tag : tags)
        words << shown(tag);
    return words.join(u", "_s);
}

} // namespace

QString UnitDialog::tagsSaid(const std::vector<std::string>& tags, const std::set<std::string>& taken)
{
    std::vector<std::string> clashes;
    std::ranges::copy_if(tags, std::back_inserter(clashes), [&](const auto& tag) { return taken.contains(tag); });
    QString says = tags.size() > mostListed ? tr("Tags: %1 to %2.").arg(shown(tags.front()), shown(tags.back()))
                                            : tr("Tags: %1.").arg(listed(tags));
    if (!clashes.empty())
        says += u' ' + tr("Taken already: %1.").arg(listed(clashes));
    return says + u' ' + tr("Serial numbers and places come later.");
}

UnitDialog::Task UnitDialog::newAt(SiteId site, RecordBook& book)
{
    Task task;
    task.unit.id = book.ids().make<UnitId>();
    task.unit.siteId = site;
    return task;
}

UnitDialog::Task UnitDialog::oneLike(const FittedUnit& pattern, RecordBook& book)
{
    Task task;
    task.unit = pattern.unit;
    task.unit.id = book.ids().make<UnitId>();
    task.unit.tag = nextTag(pattern.unit.tag, tagsOf(book));
    task.unit.serial.clear(); // of the other unit alone
    task.unit.note.clear();
    task.unit.place.clear();
    task.unit.retiredOn.reset();
    task.like = pattern.parts;
    return task;
}

UnitDialog::Task UnitDialog::change(const Unit& unit)
{
    return {unit, {}, false};
}

UnitDialog::UnitDialog(RecordBook& book, SetupLog& log, Task task, QWidget* parent)
    : SetupDialog(book, task.isNew ? tr("New unit") : tr("Unit %1").arg(shown(task.unit.tag)), parent)
    , m_log(log)
    , m_task(std::move(task))
    , m_taken(tagsOf(book))
    , m_form(new UnitForm(book.catalogue(), book.speaker()))
{
    setObjectName(u"unit-dialog"_s);
    std::vector<Site> sites;
    book.attempt([&] { sites = book.store().sites().sites(); });
    m_form->setSites(sites, m_task.unit.siteId, m_task.isNew);
    if (sites.empty())
        setWindowTitle(tr("First site and unit"));
    if (m_task.isNew) {
        setForm(makePanes(), tr("Add it"),
                sites.empty()
                    ? tr("Name the site, the unit's tag and its kind: that is enough, the rest can be filled in "
                         "later. Next you start its first visit.")
                    : tr("A tag and a kind are enough; the rest can be filled in later. Next you start its "
                         "first visit."));
        resize(unitSize);
    } else {
        m_taken.erase(m_task.unit.tag);
        m_form->fixKind();
        setForm(m_form, tr("Keep"));
    }
    m_form->setInput(inputOf(m_task.unit));
    if (!m_task.isNew)
        resizeToForm(changedUnitWidth); // with what is said of its refrigerant
    if (m_task.like)
        m_parts->tickOnly(*m_task.like);
    m_form->control(static_cast<int>(m_task.unit.siteId.isNull() ? UnitField::site : UnitField::tag))->setFocus();
}

QWidget* UnitDialog::makePanes()
{
    m_parts = new FittedPartsList(m_book.catalogue(), m_book.speaker());
    m_count = new QSpinBox;
    m_count->setObjectName(u"unit-count"_s);
    m_count->setRange(1, mostAtOnce);
    m_tags = new QLabel;
    m_tags->setObjectName(u"unit-tags"_s);
    m_tags->setWordWrap(true);
    m_tags->hide();
    connect(m_form, &UnitForm::kindChosen, this,
            [this](const QString& kind) { m_parts->showKind(kind.toStdString()); });
    connect(m_form, &UnitForm::tagEdited, this, &UnitDialog::showTags);
    connect(m_count, &QSpinBox::valueChanged, this, &UnitDialog::showTags);

    auto* panes = new QWidget;
    auto* row = new QHBoxLayout(panes);
    row->setContentsMargins(0, 0, 0, 0);
    row->addWidget(m_form, 3);
    auto* column = new QVBoxLayout;
    column->setContentsMargins(0, m_form->layout()->contentsMargins().top(), 0, 0); // its first line beside the form's
    row->addLayout(column, 2);
    auto* howMany = new QHBoxLayout;
    const auto labelled = [](const QString& text, QWidget* buddy) {
        auto* label = new QLabel(text);
        label->setBuddy(buddy);
        buddy->setAccessibleName(QString(text).remove(u'&'));
        return label;
    };
    howMany->addWidget(labelled(tr("&How many of them"), m_count));
    howMany->addWidget(m_count);
    howMany->addStretch(1);
    column->addLayout(howMany);
    column->addWidget(m_tags);
    column->addWidget(labelled(tr("Parts it has; &untick what it lacks"), m_parts));
    column->addWidget(m_parts, 1);
    m_asOld = new QCheckBox(tr("&All parts are as old as the unit"));
    m_asOld->setObjectName(u"unit-parts-as-old"_s);
    m_asOld->setToolTip(tr("Leave it unticked where some may have been replaced: their age is then unknown."));
    column->addWidget(m_asOld);
    return panes;
}

void UnitDialog::showTags()
{
    const bool one = m_count->value() == 1;
    m_form->control(static_cast<int>(UnitField::serial))->setEnabled(one); // each has its own
    QString says;
    if (!one) {
        const auto tags
            = countedTags(m_form->text(static_cast<int>(UnitField::tag)).trimmed().toStdString(), m_count->value());
        says = tags ? tagsSaid(*tags, m_taken) : m_book.speaker().said(tags.error().what);
    }
    setKeepText(one ? tr("Add it") : tr("Add %n units", nullptr, m_count->value()));
    m_tags->setText(says);
    m_tags->setVisible(!says.isEmpty());
}

std::optional<Sentence> UnitDialog::tagProblem(const std::string& first) const
{
    const auto tags = countedTags(first, m_count->value());
    if (!tags)
        return tags.error().what;
    const auto taken = std::ranges::find_if(*tags, [this](const auto& tag) { return m_taken.contains(tag); });
    if (taken != tags->end())
        return Sentence{PADSIDE_SAY("The tag {0} is taken by another unit: choose another one."), {*taken}};
    return std::nullopt;
}

std::vector<FittedUnit> UnitDialog::several(const Unit& first) const
{
    std::vector<FittedUnit> units;
    const auto tags = countedTags(first.tag, m_count->value()).value(); // tagProblem() found none
    for (const std::string& tag : tags) {
        FittedUnit fitted{first, {}};
        fitted.unit.tag = tag;
        if (!units.empty())
            fitted.unit.id = m_book.ids().make<UnitId>();
        if (tags.size() > 1)
            fitted.unit.serial.clear();
        const auto fittedOn = m_asOld->isChecked() ? fitted.unit.installedOn : std::nullopt;
        fitted.parts = partsFor(fitted.unit, m_book.catalogue(), m_book.ids(), m_parts->leftOut(), fittedOn);
        units.push_back(std::move(fitted));
    }
    return units;
}

bool UnitDialog::keep()
{
    CheckedUnit checked = checkedUnit(m_form->input(), m_task.unit, m_taken, m_book.today());
    if (m_form->site().isNull() && m_form->newSite().name.empty())
        checked.problems.emplace(UnitField::site, Sentence{PADSIDE_SAY("Name the site it stands at."), {}});
    if (m_task.isNew && !checked.problems.contains(UnitField::tag)) {
        if (auto why = tagProblem(checked.unit.tag))
            checked.problems.emplace(UnitField::tag, std::move(*why));
    }
    m_form->say(checked.problems);
    if (!checked.problems.empty())
        return false;
    Unit unit = checked.unit;
    unit.siteId = m_form->site();
    return m_task.isNew ? add(std::move(unit)) : m_log.change(m_task.unit, unit);
}

bool UnitDialog::add(Unit unit)
{
    std::vector<Site> sites;
    if (unit.siteId.isNull()) {
        Site site = m_form->newSite();
        site.id = m_book.ids().make<SiteId>();
        unit.siteId = site.id;
        sites.push_back(std::move(site));
    }
    return m_log.add(std::move(sites), several(unit));
}

void UnitDialog::announce()
{
    Q_EMIT kept(m_task.unit.id);
}

} // namespace padside
