// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/pages/visit/coat_panel.h"

#include "core/air/station_pressure.h"
#include "ui/drawing/level_labels.h"
#include "ui/models/record_book.h"
#include "ui/models/speaker.h"
#include "ui/pages/visit/draft_field.h"
#include "ui/pages/visit/lettering.h"
#include "ui/pages/visit/measure_field.h"

#include <QComboBox>
#include <QDateTime>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLineEdit>
#include <QPushButton>

#include <algorithm>
#include <initializer_list>

namespace padside {

using namespace Qt::Literals::StringLiterals;

namespace {

constexpr int ownKind = 0; // the first line of the list; the catalogue's follow
constexpr double usualReferenceK = 293.15; // 20 °C, as on most data sheets
enum RunChoice { unknownHours, offUntilPutOn, atHours };

std::optional<Measure> measured(const RecordBook& book, const std::optional<double>& si, QuantityKind kind)
{
    if (!si)
        return std::nullopt;
    const MeasuringUnit& unit = shownUnit(kind, book.surroundings().units);
    return Measure{*si, kind, std::string(unit.code), showMeasure(*si, unit, book.numberStyle())};
}

/// The offset of the computer's clock at a moment, moved so that it is that of `now` now.
std::chrono::minutes offsetAt(const Instant& now, std::chrono::sys_seconds moment)
{
    const auto byComputer = [](std::chrono::sys_seconds at) {
        return std::chrono::minutes(QDateTime::fromSecsSinceEpoch(at.time_since_epoch().count()).offsetFromUtc() / 60);
    };
    return now.offset + byComputer(moment) - byComputer(now.utc);
}

/// The last reading of today of one of these kinds.
std::optional<double> readToday(const VisitSheet& sheet, std::initializer_list<std::string_view> kinds)
{
    std::optional<double> last;
    for (const Reading& reading : sheet.readings) {
        if (std::ranges::find(kinds, reading.kind) != kinds.end())
            last = reading.value.si;
    }
    return last;
}

} // namespace

QString dayAndTime(const RecordBook& book, const Instant& instant)
{
    const auto offset = static_cast<int>(std::chrono::seconds(instant.offset).count());
    const auto local = QDateTime::fromSecsSinceEpoch(instant.utc.time_since_epoch().count(), Qt::OffsetFromUTC, offset);
    return book.speaker().shownDate(localDate(instant)) + u' '
        + book.surroundings().locale.toString(local.time(), QLocale::ShortFormat);
}

CoatPanel::CoatPanel(RecordBook& book, VisitLog& log, QWidget* parent)
    : QWidget(parent)
    , m_book(book)
    , m_log(log)
    , m_kind(new QComboBox)
    , m_runs(new QComboBox)
    , m_hours(new QLineEdit)
    , m_verdict(new QLabel)
    , m_take(new QPushButton(tr("Keep off until then")))
    , m_lookOver(new QPushButton(tr("Look it over later")))
{
    const auto field = [&](QuantityKind kind, const MeasuringUnit& unit, const QString& name, const QString& object) {
        auto* made = new MeasureField(book, kind, unit);
        made->setName(name);
        made->edit().setObjectName(object);
        connect(&made->edit(), &QLineEdit::textChanged, this, &CoatPanel::judge);
        return made;
    };
    const MeasuringUnit& degree = shownUnit(QuantityKind::temperature, book.surroundings().units);
    const MeasuringUnit& percent = shownUnit(QuantityKind::ratio, book.surroundings().units);
    m_surface = field(QuantityKind::temperature, degree, tr("Temperature of the surface"), u"coatSurface"_s);
    m_air = field(QuantityKind::temperature, degree, tr("Temperature of the air"), u"coatAir"_s);
    m_humidity = field(QuantityKind::ratio, percent, tr("Relative humidity of the air"), u"coatHumidity"_s);
    m_dryTime = field(QuantityKind::duration, *unitByCode("h"), tr("Hours to dry on the data sheet"), u"coatDryTime"_s);
    m_dryAt = field(QuantityKind::temperature, degree, tr("Temperature the data sheet gives them for"), u"coatDryAt"_s);
    setObjectName(u"coatPanel"_s);
    makeWidgets();
    judge();
}

void CoatPanel::makeWidgets()
{
    m_kind->setObjectName(u"coatKind"_s);
    m_kind->setAccessibleName(tr("Kind of coating"));
    m_kind->addItem(tr("another: see its data sheet"));
    for (const Coating& coating : m_book.catalogue().coatings())
        m_kind->addItem(translated(m_book, coating.name));
    m_runs->setObjectName(u"coatRuns"_s);
    m_runs->setAccessibleName(tr("When the unit runs again"));
    m_runs->addItems({tr("not known"), tr("off until put on again"), tr("at these hours:")});
    m_hours->setObjectName(u"coatHours"_s);
    m_hours->setAccessibleName(tr("Hours at which the unit usually runs"));
    m_hours->setPlaceholderText(u"22:00-6:00"_s);
    m_hours->hide();
    for (QComboBox* combo : {m_kind, m_runs}) { // a long name is not what sets the width of the page
        combo->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        combo->setMinimumContentsLength(8);
    }
    for (QWidget* control : std::initializer_list<QWidget*>{m_kind, m_runs, m_hours, m_take, m_lookOver})
        makeLarge(*control);
    m_verdict->setObjectName(u"coatVerdict"_s);
    m_verdict->setWordWrap(true);
    m_verdict->setTextFormat(Qt::PlainText);
    m_verdict->setTextInteractionFlags(Qt::TextSelectableByMouse);
    m_take->setObjectName(u"coatTake"_s);
    m_lookOver->setObjectName(u"coatLookOver"_s);
    m_lookOver->setToolTip(tr("Goes to “Look again” below with the reason written in"));

    auto* grid = new QGridLayout(this);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setVerticalSpacing(4);
    int row = 0;
    const auto put = [&](const QString& name, QWidget* widget, int columns = 1) {
        auto* label = new QLabel(name);
        label->setBuddy(widget);
        grid->addWidget(label, row, 0, Qt::AlignTop);
        grid->addWidget(widget, row, 1, 1, columns);
        levelLabel(*label, *widget);
    };
    put(tr("Kind"), m_kind, 2);
    ++row;
    put(tr("Surface"), m_surface, 2);
    ++row;
    put(tr("Air, humidity"), m_air);
    grid->addWidget(m_humidity, row++, 2, Qt::AlignTop);
    put(tr("Data sheet"), m_dryTime);
    grid->addWidget(m_dryAt, row++, 2, Qt::AlignTop);
    put(tr("Unit runs"), m_runs, 2);
    ++row;
    grid->addWidget(m_hours, row++, 1, 1, 2);
    grid->addWidget(m_verdict, row++, 0, 1, 3);
    auto* buttons = new QVBoxLayout;
    buttons->addWidget(m_take);
    buttons->addWidget(m_lookOver);
    grid->addLayout(buttons, row++, 0, 1, 3);
    grid->addWidget(quietLabel(tr("Lock the power off first. Solvents harm lungs and burn. A pitted vessel is under "
                                  "pressure: while charged, no brush to metal. The data sheet comes first.")),
                    row, 0, 1, 3);
    grid->setColumnStretch(1, 1);
    grid->setColumnStretch(2, 1);

    connect(m_kind, &QComboBox::activated, this, [this](int kind) {
        choose(kind);
        if (kind != ownKind)
            Q_EMIT kindChosen(m_kind->currentText());
    });
    connect(m_runs, &QComboBox::currentIndexChanged, this, [this](int choice) {
        m_hours->setVisible(choice == atHours);
        judge();
    });
    connect(m_hours, &QLineEdit::textChanged, this, &CoatPanel::judge);
    connect(m_take, &QPushButton::clicked, this, [this] {
        judge(); // time has gone on
        if (m_answer && m_answer->keepOffUntil)
            Q_EMIT keepOffTaken(*m_answer->keepOffUntil);
    });
    connect(m_lookOver, &QPushButton::clicked, this, &CoatPanel::lookOverWanted);
}

void CoatPanel::showLine(const ZoneLine& line, const VisitSheet& sheet)
{
    const bool another = !m_line || m_line->zone.id != line.zone.id;
    m_line = line;
    m_altitudeM = sheet.record.site.altitudeM;
    const auto key
        = [&](const char* what) { return QString::fromStdString(m_log.draftKey(what + ("/" + line.zone.id.text()))); };
    const Conditions& today = sheet.visit.conditions;
    const auto air = today.airTemperatureK ? today.airTemperatureK : readToday(sheet, {"outdoor-dry-bulb"});
    const auto humidity = today.relativeHumidity ? today.relativeHumidity
                                                 : readToday(sheet, {"outdoor-humidity", "outdoor-relative-humidity"});
    m_air->showEntered(key("coat-air"), measured(m_book, air, QuantityKind::temperature));
    m_humidity->showEntered(key("coat-humidity"), measured(m_book, humidity, QuantityKind::ratio));
    if (another) {
        m_surface->showEntered(key("coat-surface"), std::nullopt);
        m_dryTime->showEntered(key("coat-dry-time"), std::nullopt);
        m_dryAt->showEntered(key("coat-dry-at"), measured(m_book, usualReferenceK, QuantityKind::temperature));
        m_kind->setCurrentIndex(ownKind);
    }
    judge();
}

void CoatPanel::productNamed(const QString& product)
{
    const int kind = m_kind->findText(product.trimmed(), Qt::MatchFixedString);
    if (kind > ownKind && kind != m_kind->currentIndex()) {
        m_kind->setCurrentIndex(kind);
        choose(kind);
    }
}

void CoatPanel::choose(int kind)
{
    if (kind > ownKind) {
        const Coating& coating = m_book.catalogue().coatings()[static_cast<std::size_t>(kind - 1)];
        const MeasuringUnit& hour = *unitByCode("h");
        m_dryTime->settle(Measure{coating.dryTimeS, QuantityKind::duration, std::string(hour.code),
                                  showMeasure(coating.dryTimeS, hour, m_book.numberStyle())});
        m_dryAt->settle(measured(m_book, coating.referenceTemperatureK, QuantityKind::temperature));
    }
    judge();
}

void CoatPanel::settle()
{
    for (MeasureField* field : {m_surface, m_dryTime})
        field->settle(std::nullopt);
    m_dryAt->settle(measured(m_book, usualReferenceK, QuantityKind::temperature));
    m_kind->setCurrentIndex(ownKind);
    judge();
}

CoatProduct CoatPanel::product() const
{
    CoatProduct product;
    const int kind = m_kind->currentIndex();
    if (kind > ownKind)
        product = productOf(m_book.catalogue().coatings()[static_cast<std::size_t>(kind - 1)]);
    product.dryTimeS.reset(); // what is typed holds
    if (const auto dryTime = m_dryTime->understood())
        product.dryTimeS = dryTime->si;
    if (const auto dryAt = m_dryAt->understood())
        product.referenceTemperatureK = dryAt->si;
    return product;
}

std::optional<RunPlan> CoatPanel::runPlan() const
{
    switch (m_runs->currentIndex()) {
    case offUntilPutOn:
        return OffUntilPutOn{};
    case atHours:
        if (const auto hours = parseRunHours(m_hours->text().toStdString()))
            return *hours;
        return std::nullopt;
    default:
        return std::monostate{};
    }
}

std::optional<CoatDay> CoatPanel::day() const
{
    const auto surface = m_surface->understood();
    const auto air = m_air->understood();
    const auto humidity = m_humidity->understood();
    const auto runs = runPlan();
    if (!surface || !air || !humidity || !runs || (!m_dryTime->isEmpty() && !m_dryTime->understood()))
        return std::nullopt;
    const auto moist
        = moistAir({.dryBulbK = air->si, .relativeHumidity = humidity->si, .wetBulbK = {}, .dewPointK = {}},
                   stationPressurePa(m_altitudeM).value_or(seaLevelPressurePa));
    if (!moist)
        return std::nullopt;
    CoatDay day;
    day.air = *moist;
    day.surfaceTemperatureK = surface->si;
    if (m_line && m_line->found)
        day.wetness = m_line->found->wetness;
    day.product = product();
    day.now = m_book.now();
    day.runs = *runs;
    day.offsetAt = [now = day.now](std::chrono::sys_seconds moment) { return offsetAt(now, moment); };
    return day;
}

QString CoatPanel::said(const CoatAnswer& answer) const
{
    QStringList lines;
    switch (answer.verdict) {
    case CoatVerdict::mayCoat:
        lines << tr("It may be coated now.");
        break;
    case CoatVerdict::mayCoatIf:
        lines << tr("It may be coated now, on these terms:");
        break;
    case CoatVerdict::mayNotCoat:
        lines << tr("Not to be coated now:");
        break;
    }
    for (const CoatReason& reason : answer.reasons)
        lines << u"\u2022 %1 (%2)"_s.arg(m_book.speaker().said(reason.sentence), translated(m_book, reason.source));
    lines << m_book.speaker().said(coatConditions(*m_day, answer));
    if (answer.dryTimeS && answer.keepOffUntil) {
        const double hours = *answer.dryTimeS / unitByCode("h")->factor;
        lines
            << tr("Dry in %1 h at %2 (twice as long for each 10 K colder: common practice, no source): keep it off and "
                  "dry until %3.")
                   .arg(shown(m_book.speaker().number(hours, 1)),
                        shown(m_book.speaker().amount(Amount{answer.dryingTemperatureK, QuantityKind::temperature})),
                        dayAndTime(m_book, *answer.keepOffUntil));
    }
    return lines.join(u'\n');
}

void CoatPanel::say(const QString& verdict)
{
    m_verdict->setText(verdict);
    m_verdict->setAccessibleName(verdict);
    m_take->setEnabled(m_answer && m_answer->keepOffUntil);
}

void CoatPanel::judge()
{
    m_answer.reset();
    m_day = day();
    if (!m_day) {
        const auto moist = m_air->understood() && m_humidity->understood()
            ? moistAir({.dryBulbK = m_air->understood()->si,
                        .relativeHumidity = m_humidity->understood()->si,
                        .wetBulbK = {},
                        .dewPointK = {}},
                       seaLevelPressurePa)
            : Result<MoistAir>();
        if (!moist)
            return say(m_book.speaker().said(moist.error().what));
        if (!runPlan() && !m_hours->text().trimmed().isEmpty())
            return say(m_book.speaker().said(parseRunHours(m_hours->text().toStdString()).error().what));
        return say(tr("May it be coated now? Type the temperature of the surface, of the air, and its humidity."));
    }
    const auto answer = coatCheck(*m_day);
    if (!answer)
        return say(m_book.speaker().said(answer.error().what));
    m_answer = *answer;
    say(said(*m_answer));
}

QString CoatPanel::conditions() const
{
    return m_day && m_answer ? m_book.speaker().said(coatConditions(*m_day, *m_answer)) : QString();
}

} // namespace padside
