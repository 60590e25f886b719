// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/setup/unit_form.h"

#include "core/catalogue/catalogue.h"
#include "ui/models/speaker.h"

#include <QComboBox>
#include <QLineEdit>

#include <array>

namespace padside {

using namespace Qt::Literals::StringLiterals;

namespace {

constexpr std::array typedFields{UnitField::tag,       UnitField::kind,  UnitField::maker,       UnitField::model,
                                 UnitField::serial,    UnitField::place, UnitField::refrigerant, UnitField::metering,
                                 UnitField::installed, UnitField::note};

} // namespace

UnitForm::UnitForm(const Catalogue& catalogue, const LocalSpeaker& speaker, QWidget* parent)
    : CheckedForm(parent)
    , m_speaker(speaker)
    , m_site(new QComboBox)
    , m_kind(new QComboBox)
{
    addField(static_cast<int>(UnitField::site), tr("&Site"), m_site, u"unit-site"_s);
    addLine(UnitField::tag, tr("&Tag"), u"unit-tag"_s, tr("What you call it, like RT-1"));
    addKinds(catalogue);
    addLine(UnitField::place, tr("&Place"), u"unit-place"_s, tr("North wall, roof by the hatch"));
    addLine(UnitField::maker, tr("M&aker"), u"unit-maker"_s);
    addLine(UnitField::model, tr("Mo&del"), u"unit-model"_s);
    addLine(UnitField::serial, tr("Se&rial number"), u"unit-serial"_s);
    addLine(UnitField::refrigerant, tr("Re&frigerant"), u"unit-refrigerant"_s, tr("As on the nameplate, like R-410A"));
    addMeterings();
    addLine(UnitField::installed, tr("&Installed"), u"unit-installed"_s, tr("2008-06-14, or only 2008"));
    addLine(UnitField::note, tr("N&ote"), u"unit-note"_s);
}

void UnitForm::addLine(UnitField field, const QString& label, const QString& name, const QString& example)
{
    auto* edit = new QLineEdit;
    edit->setPlaceholderText(example);
    addField(static_cast<int>(field), label, edit, name);
    if (field == UnitField::tag)
        connect(edit, &QLineEdit::textChanged, this, &UnitForm::tagEdited);
}

void UnitForm::addKinds(const Catalogue& catalogue)
{
    for (const UnitKind& kind : catalogue.unitKinds())
        m_kind->addItem(shown(m_speaker.translate(kind.name)), shown(kind.code));
    m_kind->setPlaceholderText(tr("Choose"));
    m_kind->setCurrentIndex(-1);
    addField(static_cast<int>(UnitField::kind), tr("&Kind"), m_kind, u"unit-kind"_s);
    connect(m_kind, &QComboBox::currentIndexChanged, this,
            [this] { Q_EMIT kindChosen(m_kind->currentData().toString()); });
}

void UnitForm::addMeterings()
{
    auto* metering = new QComboBox;
    for (const Coded<Metering>& way : codesOf(Metering::unknown))
        metering->addItem(shown(m_speaker.translate(std::string(way.word))), shown(way.code));
    addField(static_cast<int>(UnitField::metering), tr("M&etering"), metering, u"unit-metering"_s);
}

void UnitForm::setSites(const std::vector<Site>& sites, SiteId chosen)
{
    m_sites = sites;
    m_site->clear();
    for (const Site& site : m_sites) {
        m_site->addItem(shown(site.name));
        if (site.id == chosen)
            m_site->setCurrentIndex(m_site->count() - 1);
    }
}

SiteId UnitForm::site() const
{
    const int at = m_site->currentIndex();
    return at < 0 ? SiteId() : m_sites[static_cast<std::size_t>(at)].id;
}

void UnitForm::fixKind()
{
    m_kind->setEnabled(false);
    m_kind->setToolTip(tr("A unit keeps its kind: its parts and what was found on them stand on it."));
}

void UnitForm::setInput(const UnitInput& input)
{
    for (const auto& [field, text] : input)
        setText(static_cast<int>(field), text);
}

UnitInput UnitForm::input() const
{
    UnitInput input;
    for (const UnitField field : typedFields)
        input.emplace(field, text(static_cast<int>(field)));
    if (!m_kind->isEnabled())
        input.erase(UnitField::kind);
    return input;
}

void UnitForm::say(const std::map<UnitField, Sentence>& problems)
{
    std::map<int, QString> said;
    for (const auto& [field, why] : problems)
        said.emplace(static_cast<int>(field), m_speaker.said(why));
    setProblems(said);
}

} // namespace padside
