// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/unit/unit_header.h"

#include "ui/models/refrigerant_words.h"
#include "ui/models/speaker.h"

#include <QApplication>
#include <QEvent>
#include <QGridLayout>
#include <QLabel>
#include <QStringList>
#include <QToolButton>
#include <QVBoxLayout>

#include <cmath>

using namespace Qt::Literals::StringLiterals;

namespace padside {

namespace {

QLabel* softLabel()
{
    auto* label = new QLabel;
    label->setForegroundRole(QPalette::PlaceholderText); // second-rank text in every theme
    label->setWordWrap(true);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    label->setTextFormat(Qt::PlainText);
    return label;
}

constexpr double tagSize = 1.7; ///< of the letters
constexpr int nameplateColumns = 3; ///< pairs of name and value side by side

} // namespace

UnitHeader::UnitHeader(const Catalogue& catalogue, const LocalSpeaker& speaker, QWidget* parent)
    : QWidget(parent)
    , m_catalogue(catalogue)
    , m_speaker(speaker)
    , m_tag(new QLabel)
    , m_where(new QLabel)
    , m_facts(softLabel())
    , m_unfold(new QToolButton)
    , m_nameplate(new QWidget)
    , m_lines(new QGridLayout(m_nameplate))
{
    fitTag();
    m_tag->setTextFormat(Qt::PlainText);
    m_tag->setObjectName(u"unitTag"_s);
    m_where->setObjectName(u"unitWhere"_s);
    m_where->setTextFormat(Qt::PlainText);
    m_where->setWordWrap(true);
    m_facts->setObjectName(u"unitFacts"_s);

    m_unfold->setText(tr("&Nameplate"));
    m_unfold->setObjectName(u"unfoldNameplate"_s);
    m_unfold->setAccessibleName(tr("Show the nameplate"));
    m_unfold->setToolTip(tr("Show or hide what the nameplate says (Alt+N)"));
    m_unfold->setCheckable(true);
    m_unfold->setArrowType(Qt::RightArrow);
    m_unfold->setToolButtonStyle(Qt::ToolButtonTextBesideIcon);
    m_unfold->setAutoRaise(true);
    m_unfold->setFocusPolicy(Qt::StrongFocus);
    m_nameplate->setObjectName(u"nameplate"_s);
    m_nameplate->setVisible(false);
    m_lines->setContentsMargins(0, 2, 0, 4);
    m_lines->setHorizontalSpacing(10);
    connect(m_unfold, &QToolButton::toggled, this, [this](bool open) {
        m_unfold->setArrowType(open ? Qt::DownArrow : Qt::RightArrow);
        m_nameplate->setVisible(open);
    });

    auto* grid = new QGridLayout;
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setHorizontalSpacing(14);
    grid->setVerticalSpacing(1);
    grid->setColumnStretch(1, 1);
    grid->addWidget(m_tag, 0, 0, 2, 1, Qt::AlignVCenter);
    grid->addWidget(m_where, 0, 1);
    grid->addWidget(m_facts, 1, 1);
    grid->addWidget(m_unfold, 0, 2, 2, 1, Qt::AlignVCenter);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(2);
    column->addLayout(grid);
    column->addWidget(m_nameplate);
}

QString UnitHeader::whereText(const UnitSnapshot& snapshot) const
{
    const Unit& unit = snapshot.record.unit;
    const UnitKind* kind = m_catalogue.unitKind(unit.kind);
    QStringList parts{shown(kind ? m_speaker.translate(kind->name) : unit.kind), shown(snapshot.record.site.name)};
    if (!unit.place.empty())
        parts << shown(unit.place);
    return parts.join(u" \u00b7 "_s);
}

QString UnitHeader::factsText(const UnitSnapshot& snapshot) const
{
    const Unit& unit = snapshot.record.unit;
    QStringList parts;
    if (unit.installedOn) {
        const int years = static_cast<int>(std::floor(yearsBetween(*unit.installedOn, snapshot.review.today)));
        parts << (years < 1        ? tr("less than a year old")
                      : years == 1 ? tr("1 year old")
                                   : tr("%n years old", nullptr, years));
    } else {
        parts << tr("age unknown");
    }
    if (!unit.refrigerant.empty())
        parts << shown(unit.refrigerant);
    const auto& visits = snapshot.record.visits;
    if (visits.empty())
        parts << tr("no visit yet");
    else
        parts << tr("last visit %1, %2", "date, reason")
                     .arg(m_speaker.shownDate(visits.back().on),
                          shown(m_speaker.translate(std::string(wordOf(visits.back().reason)))));
    if (unit.retiredOn)
        parts << tr("retired %1").arg(m_speaker.shownDate(*unit.retiredOn));
    if (!unit.note.empty())
        parts << shown(unit.note);
    return parts.join(u" \u00b7 "_s);
}

void UnitHeader::fillNameplate(const UnitSnapshot& snapshot)
{
    while (QLayoutItem* item = m_lines->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    int count = 0;
    const auto add = [&](const QString& name, const QString& value) {
        if (value.isEmpty())
            return;
        auto* nameLabel = new QLabel(name);
        nameLabel->setForegroundRole(QPalette::PlaceholderText);
        nameLabel->setWordWrap(true);
        auto* valueLabel = new QLabel(value);
        valueLabel->setTextFormat(Qt::PlainText);
        valueLabel->setTextInteractionFlags(Qt::TextSelectableByMouse);
        const int column = 2 * (count % nameplateColumns);
        m_lines->addWidget(nameLabel, count / nameplateColumns, column);
        m_lines->addWidget(valueLabel, count / nameplateColumns, column + 1);
        m_lines->setColumnStretch(column + 1, 1);
        ++count;
    };
    const Unit& unit = snapshot.record.unit;
    add(tr("maker"), shown(unit.maker));
    add(tr("model"), shown(unit.model));
    add(tr("serial number"), shown(unit.serial));
    if (unit.installedOn)
        add(tr("installed"), m_speaker.shownDate(*unit.installedOn));
    if (unit.metering != Metering::unknown)
        add(tr("metering"), shown(m_speaker.translate(std::string(wordOf(unit.metering)))));
    for (const NameplateValue& line : unit.nameplate) {
        const NameplateItem* item = m_catalogue.nameplateItem(line.item);
        const Measure& value = line.value;
        add(shown(item ? m_speaker.translate(item->name) : line.item),
            shown(value.typed.empty() ? m_speaker.amount(Amount{value.si, value.kind}) : value.typed));
    }
    if (const QString words = refrigerantWords(unit.refrigerant, m_catalogue, m_speaker); !words.isEmpty()) {
        auto* about = new QLabel(words);
        about->setObjectName(u"refrigerantFacts"_s);
        about->setTextFormat(Qt::PlainText);
        about->setTextInteractionFlags(Qt::TextSelectableByMouse);
        about->setWordWrap(true);
        m_lines->addWidget(about, count / nameplateColumns + 1, 0, 1, 2 * nameplateColumns);
    } else if (count == 0) {
        m_lines->addWidget(new QLabel(tr("Nothing of the nameplate has been written down.")), 0, 0);
    }
}

void UnitHeader::setSnapshot(const UnitSnapshot& snapshot)
{
    m_tag->setText(shown(snapshot.record.unit.tag));
    m_where->setText(whereText(snapshot));
    m_facts->setText(factsText(snapshot));
    fillNameplate(snapshot);
}

void UnitHeader::fitTag()
{
    QFont large = QApplication::font();
    large.setPointSizeF(large.pointSizeF() * tagSize);
    large.setBold(true);
    m_tag->setFont(large);
}

void UnitHeader::changeEvent(QEvent* event)
{
    if (event->type() == QEvent::ApplicationFontChange)
        fitTag();
    QWidget::changeEvent(event);
}

} // namespace padside
