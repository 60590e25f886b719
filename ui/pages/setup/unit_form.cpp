// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/setup/unit_form.h"

#include "core/catalogue/catalogue.h"
#include "ui/models/refrigerant_words.h"
#include "ui/models/speaker.h"

#include <QComboBox>
#include <QCompleter>
#include <QLineEdit>

#include <algorithm>
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
    , m_catalogue(catalogue)
    , m_speaker(speaker)
    , m_site(new QComboBox)
    , m_kind(new QComboBox)
{
    addField(static_cast<int>(UnitField::site), tr("&Site"), m_site, u"unit-site"_s);
    addLine(UnitField::address, tr("Its add&ress"), u"unit-site-address"_s);
    setFieldShown(static_cast<int>(UnitField::address), false);
    addLine(UnitField::tag, tr("&Tag"), u"unit-tag"_s, tr("What you call it, like RT-1"));
    addKinds(catalogue);
    addLine(UnitField::place, tr("&Place"), u"unit-place"_s, tr("North wall, roof by the hatch"));
    addLine(UnitField::maker, tr("&Maker"), u"unit-maker"_s);
    addLine(UnitField::model, tr("Mo&del"), u"unit-model"_s);
    addLine(UnitField::serial, tr("Seria&l number"), u"unit-serial"_s);
    addRefrigerants();
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

void UnitForm::addRefrigerants()
{
    auto* refrigerant = new QComboBox;
    refrigerant->setEditable(true); // any text may stand on a nameplate
    refrigerant->setInsertPolicy(QComboBox::NoInsert);
    for (const Refrigerant& one : m_catalogue.refrigerants())
        refrigerant->addItem(shown(one.code));
    refrigerant->setCurrentIndex(-1);
    refrigerant->lineEdit()->setPlaceholderText(tr("As on the nameplate, like R-410A"));
    refrigerant->completer()->setCompletionMode(QCompleter::PopupCompletion); // puts nothing in by itself
    refrigerant->completer()->setFilterMode(Qt::MatchContains);
    addField(static_cast<int>(UnitField::refrigerant), tr("Re&frigerant"), refrigerant, u"unit-refrigerant"_s);
    refrigerant->lineEdit()->setAccessibleName(refrigerant->accessibleName());
    connect(refrigerant, &QComboBox::currentTextChanged, this, [this](const QString& written) {
        setHint(static_cast<int>(UnitField::refrigerant),
                refrigerantWords(written.toStdString(), m_catalogue, m_speaker));
    });
}

void UnitForm::setSites(const std::vector<Site>& sites, SiteId chosen, bool orNew)
{
    m_sites = sites;
    m_site->clear();
    for (const Site& site : m_sites)
        m_site->addItem(shown(site.name));
    const auto place = std::ranges::find(m_sites, chosen, &Site::id);
    m_site->setCurrentIndex(place == m_sites.end() ? -1 : static_cast<int>(place - m_sites.begin()));
    if (!orNew)
        return;
    m_site->setEditable(true);
    m_site->setInsertPolicy(QComboBox::NoInsert);
    m_site->lineEdit()->setAccessibleName(m_site->accessibleName());
    m_site->lineEdit()->setPlaceholderText(tr("A new name makes a new site"));
    connect(m_site, &QComboBox::currentTextChanged, this, &UnitForm::followSite);
    followSite();
}

void UnitForm::followSite()
{
    const bool isNew = site().isNull() && (!m_site->currentText().trimmed().isEmpty() || m_sites.empty());
    setFieldShown(static_cast<int>(UnitField::address), isNew);
}

SiteId UnitForm::site() const
{
    // By what is written, not by the index: that stays where it was while another name is typed.
    const QString name = m_site->currentText().trimmed();
    const int at = m_site->currentIndex();
    if (at >= 0 && m_site->itemText(at).trimmed() == name) // two sites may bear one name
        return m_sites[static_cast<std::size_t>(at)].id;
    for (const Site& one : m_sites) {
        if (shown(one.name).trimmed().compare(name, Qt::CaseInsensitive) == 0)
            return one.id;
    }
    return {};
}

Site UnitForm::newSite() const
{
    Site site;
    site.name = m_site->currentText().trimmed().toStdString();
    site.address = text(static_cast<int>(UnitField::address)).trimmed().toStdString();
    return site;
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
