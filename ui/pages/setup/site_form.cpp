// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/setup/site_form.h"

#include "ui/models/speaker.h"
#include "ui/pages/setup/site_air_panel.h"

#include <QLineEdit>

#include <array>

namespace padside {

using namespace Qt::Literals::StringLiterals;

namespace {

constexpr std::array allFields{SiteField::name,        SiteField::address,     SiteField::contact,
                               SiteField::access,      SiteField::note,        SiteField::altitude,
                               SiteField::temperature, SiteField::humidity,    SiteField::sulphurDioxide,
                               SiteField::chloride,    SiteField::springFirst, SiteField::springLast,
                               SiteField::fallFirst,   SiteField::fallLast};

} // namespace

SiteForm::SiteForm(const InputStyle& style, const LocalSpeaker& speaker, QWidget* parent)
    : CheckedForm(parent)
    , m_style(style)
    , m_airPanel(new SiteAirPanel(style, speaker))
{
    const bool metric = style.units.system == UnitSystem::metric;
    const auto line = [this](SiteField field, const QString& label, const QString& name, const QString& example = {}) {
        auto* edit = new QLineEdit;
        edit->setPlaceholderText(example);
        addField(static_cast<int>(field), label, edit, name);
    };
    line(SiteField::name, tr("&Name"), u"site-name"_s, tr("Needed; the rest may wait"));
    line(SiteField::address, tr("A&ddress"), u"site-address"_s);
    line(SiteField::contact, tr("&Contact"), u"site-contact"_s, tr("Who opens, and how to reach them"));
    line(SiteField::access, tr("Acce&ss"), u"site-access"_s, tr("Gate, ladder, dog"));
    line(SiteField::note, tr("N&ote"), u"site-note"_s);
    addHeading(tr("Air, as means of the year"));
    line(SiteField::altitude, tr("A&ltitude"), u"site-altitude"_s, metric ? tr("In metres") : tr("In feet"));
    line(SiteField::temperature, tr("&Temperature"), u"site-temperature"_s,
         tr("In %1").arg(shown(shownUnit(QuantityKind::temperature, style.units).symbol)));
    line(SiteField::humidity, tr("Relative &humidity"), u"site-humidity"_s, tr("In %"));
    line(SiteField::sulphurDioxide, tr("Sulphur dio&xide"), u"site-sulphur"_s, tr("Deposition in mg/(m²·d)"));
    line(SiteField::chloride, tr("Chlo&ride"), u"site-chloride"_s, tr("Deposition in mg/(m²·d); salt air"));
    addWide(m_airPanel);
    for (const SiteField field :
         {SiteField::temperature, SiteField::humidity, SiteField::sulphurDioxide, SiteField::chloride})
        connect(qobject_cast<QLineEdit*>(control(static_cast<int>(field))), &QLineEdit::textChanged, this,
                &SiteForm::showAir);
    connect(m_airPanel, &SiteAirPanel::meansRead, this, &SiteForm::takeMeans);
    addHeading(tr("Weeks for visits, as calendars number them"));
    line(SiteField::springFirst, tr("S&pring from week"), u"site-spring-first"_s);
    line(SiteField::springLast, tr("Spring to &week"), u"site-spring-last"_s);
    line(SiteField::fallFirst, tr("&Fall from week"), u"site-fall-first"_s);
    line(SiteField::fallLast, tr("Fall to w&eek"), u"site-fall-last"_s);
}

void SiteForm::setInput(const SiteInput& input)
{
    for (const auto& [field, text] : input)
        setText(static_cast<int>(field), text);
}

SiteInput SiteForm::input() const
{
    SiteInput input;
    for (const SiteField field : allFields)
        input.emplace(field, text(static_cast<int>(field)));
    return input;
}

void SiteForm::showAir()
{
    m_airPanel->showAir(checkedSite(input(), {}, m_style).site.air);
}

void SiteForm::takeMeans(double temperatureK, double relativeHumidity)
{
    Site site;
    site.air.temperatureK = temperatureK;
    site.air.relativeHumidity = relativeHumidity;
    const SiteInput means = inputOf(site, m_style);
    for (const SiteField field : {SiteField::temperature, SiteField::humidity})
        setText(static_cast<int>(field), means.at(field));
}

void SiteForm::say(const std::map<SiteField, Sentence>& problems, const LocalSpeaker& speaker)
{
    std::map<int, QString> said;
    for (const auto& [field, why] : problems)
        said.emplace(static_cast<int>(field), speaker.said(why));
    setProblems(said);
}

} // namespace padside
