// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/drawing/timeline_legend.h"

#include "ui/drawing/grade_mark.h"
#include "ui/drawing/theme.h"
#include "ui/drawing/timeline_outlook_painter.h"
#include "ui/drawing/timeline_signs.h"
#include "ui/drawing/timeline_words.h"

#include <QFontMetricsF>
#include <QPainter>
#include <QPixmap>
#include <QResizeEvent>

#include <cmath>
#include <functional>
#include <set>

namespace padside {

namespace {

constexpr int leastWidth = 400;

/// One sign and its words.
struct LegendSign
{
    double width;
    std::function<void(const QRectF&)> sign;
    QString text;
};

/// Which signs a timeline has.
struct Used
{
    bool found = false;
    bool left = false;
    bool notSeen = false;
    bool fitted = false;
    bool photo = false;
    bool corrected = false;
    bool callOut = false;
    bool runs = false; ///< equal grades one after the other
    bool added = false;
    bool taken = false;
    bool outlook = false;
    std::set<TreatmentKind> treatments;
};

Used usedIn(const Timeline& timeline)
{
    Used used;
    for (const TimelineGroup& group : timeline.groups) {
        for (const TimelineLane& lane : group.lanes) {
            used.outlook |= lane.outlook.has_value();
            for (const TimelineMark& mark : lane.marks) {
                used.found |= mark.found.has_value();
                used.left |= mark.left.has_value();
                used.notSeen |= mark.notSeen.has_value();
                used.fitted |= mark.fitted;
                used.photo |= mark.photos > 0 && mark.subject == TimelineMark::Subject::zone;
                used.corrected |= !mark.correction.empty();
                used.runs |= mark.found && mark.found == mark.before;
                for (const ChargeEntry& charge : mark.charges)
                    (charge.direction == ChargeDirection::added ? used.added : used.taken) = true;
                used.callOut |= mark.reason == VisitReason::callOut;
                for (const Treatment& treatment : mark.treatments)
                    used.treatments.insert(treatment.kind);
            }
        }
    }
    return used;
}

/// Makes the entries; sizes follow the text.
class LegendSigns
{
    Q_DECLARE_TR_FUNCTIONS(padside::TimelineLegend)
public:
    LegendSigns(QPainter& painter, const Timeline& timeline, const Speaker& speaker, const Theme& theme, double side)
        : m_painter(painter)
        , m_theme(theme)
        , m_words(speaker)
        , m_side(side)
    {
        const Used used = usedIn(timeline);
        if (used.found)
            addGrades(used);
        if (used.notSeen)
            add(side * 2.2, tr("not seen, and since then"), [this](const QRectF& area) {
                paintBand(m_painter, QRectF(area.left(), area.center().y() - 3, area.width(), 6), Grade::marked, false,
                          m_theme);
                paintNotSeen(m_painter, QRectF(area.topLeft(), QSizeF(m_side, m_side)), m_theme);
            });
        if (used.runs)
            add(side * 1.6, tr("the same, looked at again"), [this](const QRectF& area) { paintRun(area); });
        for (const TreatmentKind kind : used.treatments) {
            if (kind != TreatmentKind::replace)
                add(small(), m_words.word(wordOf(kind)),
                    [this, kind](const QRectF& area) { paintTreatmentSign(m_painter, smallIn(area), kind, m_theme); });
        }
        if (used.fitted || used.treatments.contains(TreatmentKind::replace))
            add(small(), tr("new part fitted"),
                [this](const QRectF& area) { paintFittedSign(m_painter, area, m_theme); });
        if (used.photo)
            add(side, tr("with photo"), [this](const QRectF& area) {
                paintNoFinding(m_painter, area, m_theme);
                paintPhotoSign(m_painter, area, m_theme);
            });
        if (used.corrected)
            add(side, tr("corrected"), [this](const QRectF& area) {
                paintNoFinding(m_painter, area, m_theme);
                paintCorrectedSign(m_painter, area, m_theme);
            });
        if (used.runs)
            add(side, tr("more close by"), [this](const QRectF& area) {
                const QRectF mark = area.adjusted(0, 0, -2, -2);
                paintNoFinding(m_painter, mark, m_theme);
                paintMoreSign(m_painter, mark, m_theme);
            });
        if (used.added)
            add(small(), tr("refrigerant added"), [this](const QRectF& area) {
                paintChargeSign(m_painter, smallIn(area), ChargeDirection::added, m_theme);
            });
        if (used.taken)
            add(small(), tr("recovered or lost"), [this](const QRectF& area) {
                paintChargeSign(m_painter, smallIn(area), ChargeDirection::lost, m_theme);
            });
        if (used.callOut)
            add(small(), tr("call-out"), [this](const QRectF& area) {
                paintVisitSign(m_painter, smallIn(area), VisitReason::callOut, false, m_theme);
            });
        if (used.outlook)
            addOutlook();
    }

    [[nodiscard]] const std::vector<LegendSign>& all() const { return m_entries; }

private:
    void addOutlook()
    {
        add(m_side * 2.6, tr("what may come: wider is likelier"), [this](const QRectF& area) { paintFading(area); });
        add(m_side * 3, tr("spent with 10, 50, 90 %"), [this](const QRectF& area) {
            PlacedOutlook placed;
            placed.area = area;
            placed.spentFrom = area.left();
            placed.spentTo = area.right();
            placed.earlySeen = placed.lateSeen = true;
            const double side = std::round(m_side * 0.8);
            placed.spent = QRectF(std::round(area.left() + area.width() * 0.4 - side / 2),
                                  std::round(area.center().y() - side / 2), side, side);
            paintSpentRange(m_painter, placed, m_theme);
        });
    }

    /// From surely 2 to anything, as a lane goes.
    void paintFading(const QRectF& area)
    {
        m_painter.fillRect(area, outlookGround(m_theme));
        constexpr int steps = 6;
        for (int step = 0; step < steps; ++step) {
            const double gone = step / static_cast<double>(steps - 1);
            const GradeChances chances{0, 1 - 0.75 * gone, 0.4 * gone, 0.22 * gone, 0.13 * gone};
            const double width = area.width() / steps;
            paintShares(m_painter, QRectF(area.left() + step * width, area.top(), width, area.height()), chances,
                        m_theme);
        }
    }

    void addGrades(const Used& used)
    {
        for (const auto& row : codesOf(Grade{}))
            add(m_side, m_words.word(row.word),
                [this, grade = row.value](const QRectF& area) { paintGrade(m_painter, area, grade, m_theme); });
        if (used.left)
            add(m_side * 1.9, tr("as found, as left"), [this](const QRectF& area) {
                paintGrade(m_painter, QRectF(area.topLeft(), QSizeF(m_side, m_side)), Grade::marked, m_theme);
                const double left = std::round(m_side * 0.8);
                paintGrade(m_painter, QRectF(area.left() + m_side + 1, area.center().y() - left / 2, left, left),
                           Grade::worn, m_theme);
            });
    }

    void paintRun(const QRectF& area)
    {
        paintBand(m_painter, QRectF(area.left(), area.center().y() - 3, area.width(), 6), Grade::worn, true, m_theme);
        m_painter.setPen(QPen(m_theme.ink, 1));
        const double x = std::floor(area.center().x()) + 0.5;
        m_painter.drawLine(QPointF(x, area.top() + 1), QPointF(x, area.bottom() - 1));
    }

    void add(double width, const QString& text, std::function<void(const QRectF&)> sign)
    {
        m_entries.push_back(LegendSign{width, std::move(sign), text});
    }

    [[nodiscard]] double small() const { return std::round(m_side * 0.55); }
    [[nodiscard]] QRectF smallIn(const QRectF& area) const
    {
        return {area.left(), std::round(area.center().y() - small() / 2), small(), small()};
    }

    QPainter& m_painter;
    const Theme& m_theme;
    TimelineWords m_words;
    double m_side;
    std::vector<LegendSign> m_entries;
};

} // namespace

double paintTimelineLegend(QPainter& painter, const QRectF& area, const Timeline& timeline, const Speaker& speaker,
                           const Theme& theme, bool paint)
{
    const QFontMetricsF metrics(painter.font());
    const double side = std::round(metrics.height() * 0.95);
    const double row = std::round(side * 1.45);
    const LegendSigns entries(painter, timeline, speaker, theme, side);
    if (entries.all().empty())
        return 0;
    double x = area.left();
    double y = area.top();
    for (const LegendSign& entry : entries.all()) {
        const double textWidth = metrics.horizontalAdvance(entry.text) + 2;
        const double width = entry.width + 5 + textWidth;
        if (x > area.left() && x + width > area.right()) {
            x = area.left();
            y += row;
        }
        if (paint) {
            entry.sign(QRectF(x, y + std::round((row - side) / 2), entry.width, side));
            painter.setPen(theme.softInk);
            painter.drawText(QRectF(x + entry.width + 5, y, textWidth, row), Qt::AlignVCenter | Qt::AlignLeft,
                             entry.text);
        }
        x += width + side;
    }
    return y + row - area.top();
}

TimelineLegend::TimelineLegend(const Speaker& speaker, const Theme& theme, QWidget* parent)
    : QWidget(parent)
    , m_speaker(speaker)
    , m_theme(theme)
{
    QSizePolicy policy(QSizePolicy::Preferred, QSizePolicy::Preferred);
    policy.setHeightForWidth(true);
    setSizePolicy(policy);
    setAccessibleName(tr("Meaning of the signs"));
}

void TimelineLegend::setTimeline(const Timeline& timeline)
{
    m_timeline = timeline;
    updateGeometry();
    update();
}

int TimelineLegend::heightForWidth(int width) const
{
    QPixmap nothing(1, 1);
    QPainter painter(&nothing);
    painter.setFont(font());
    return static_cast<int>(
        std::ceil(paintTimelineLegend(painter, QRectF(0, 0, width, 1000), m_timeline, m_speaker, m_theme, false)));
}

QSize TimelineLegend::sizeHint() const
{
    return {leastWidth, heightForWidth(std::max(width(), leastWidth))};
}

QSize TimelineLegend::minimumSizeHint() const
{
    return {leastWidth, heightForWidth(std::max(width(), leastWidth))};
}

void TimelineLegend::resizeEvent(QResizeEvent* event)
{
    QWidget::resizeEvent(event);
    if (event->size().width() != event->oldSize().width())
        updateGeometry(); // splitters ask for the least height alone, and that follows the width
}

void TimelineLegend::paintEvent(QPaintEvent*)
{
    QPainter painter(this);
    painter.setFont(font());
    paintTimelineLegend(painter, rect(), m_timeline, m_speaker, m_theme);
}

} // namespace padside
