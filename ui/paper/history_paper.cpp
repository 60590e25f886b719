// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/paper/history_paper.h"

#include "ui/drawing/theme.h"
#include "ui/drawing/timeline_legend.h"
#include "ui/drawing/timeline_measure.h"
#include "ui/drawing/timeline_outlook.h"
#include "ui/drawing/timeline_painter.h"
#include "ui/paper/part_words.h"
#include "ui/paper/screen_drawing.h"
#include "ui/paper/type_setting.h"

#include <QCoreApplication>
#include <QPainter>

#include <algorithm>
#include <cmath>
#include <memory>

using namespace Qt::Literals::StringLiterals;

namespace padside {

namespace {

constexpr double margin = 120; ///< tenths of a millimetre
constexpr double legendGap = 24;

struct HistoryText
{
    Q_DECLARE_TR_FUNCTIONS(padside::HistoryPaper)
};

/// What a page's drawings are painted from; shared, because a document may be copied.
struct Sheet
{
    Timeline timeline;
    TimelineGeometry geometry;
    const Speaker& speaker;
};

double heightOf(const TimelineGroup& group, const TimelineSizes& sizes)
{
    return static_cast<double>(group.lanes.size()) * sizes.lane + sizes.groupGap;
}

/// The groups that go on each page. A part with more lanes than a page holds is cut.
std::vector<std::vector<TimelineGroup>> groupsByPage(const Timeline& timeline, const TimelineSizes& sizes,
                                                     double height)
{
    const double room = height - sizes.header - heightOf(timeline.groups.front(), sizes);
    const auto most = static_cast<std::size_t>(std::max(1.0, std::floor((room - sizes.groupGap) / sizes.lane)));
    std::vector<std::vector<TimelineGroup>> pages(1);
    double used = 0;
    for (std::size_t g = 1; g < timeline.groups.size(); ++g) {
        const TimelineGroup& whole = timeline.groups[g];
        for (std::size_t from = 0; from < whole.lanes.size(); from += most) {
            TimelineGroup group = whole;
            const auto begin = whole.lanes.begin() + static_cast<std::ptrdiff_t>(from);
            group.lanes.assign(
                begin, whole.lanes.begin() + static_cast<std::ptrdiff_t>(std::min(whole.lanes.size(), from + most)));
            if (used > 0 && used + heightOf(group, sizes) > room) {
                pages.emplace_back();
                used = 0;
            }
            used += heightOf(group, sizes);
            pages.back().push_back(std::move(group));
        }
    }
    return pages;
}

QString underTitle(const HistoryInput& input, const PartWords& words)
{
    const Unit& unit = input.record.unit;
    QStringList parts;
    const UnitKind* kind = input.catalogue.unitKind(unit.kind);
    parts << capitalised(words.word(kind ? kind->name : unit.kind));
    if (const QString made = (fromCore(unit.maker) + u' ' + fromCore(unit.model)).trimmed(); !made.isEmpty())
        parts << made;
    if (!unit.serial.empty())
        parts << HistoryText::tr("serial %1").arg(fromCore(unit.serial));
    if (!unit.refrigerant.empty())
        parts << fromCore(unit.refrigerant);
    if (unit.installedOn)
        parts << HistoryText::tr("installed %1").arg(words.day(*unit.installedOn));
    parts << HistoryText::tr("visits: %1").arg(input.record.visits.size());
    return parts.join(u"  ·  "_s);
}

/// Title, footer and what lies between them.
class HistoryPages
{
public:
    explicit HistoryPages(const HistoryInput& input)
        : m_input(input)
        , m_words(input.record, input.catalogue, input.speaker)
        , m_timeline(input.outlook != nullptr
                         ? timelineWithOutlook(input.record, input.catalogue, *input.outlook, input.today)
                         : timelineOf(input.record, input.catalogue, input.today))
    {
        m_document.size = input.size;
        m_document.landscape = true;
        m_document.title = HistoryText::tr("%1, history %2 to %3")
                               .arg(fromCore(input.record.unit.tag), QString::number(yearOf(m_timeline.first)),
                                    QString::number(yearOf(m_timeline.today)));
    }

    PaperDocument laid()
    {
        const QSizeF sheet = sheetSize(m_document);
        m_area = QRectF(QPointF(0, 0), sheet).adjusted(margin, margin, -margin, -margin);
        const double top = m_area.top() + leading(Face::title) + leading(Face::small) + legendGap;
        const double footer = leading(Face::small) + legendGap / 2;
        const double width = m_area.width() / screenScale;
        const double legend = legendHeight(m_timeline, m_input.speaker, width);
        const double height = (m_area.bottom() - footer - legendGap - top) / screenScale - legend;
        const TimelineSizes sizes = sizesFor(
            nameWidths(m_timeline, TimelineWords(m_input.speaker), labelFont(), labelPixels), labelPixels, width);
        const auto pages = groupsByPage(m_timeline, sizes, height);
        for (const auto& groups : pages) {
            Timeline part = m_timeline;
            part.groups = {m_timeline.groups.front()};
            part.groups.insert(part.groups.end(), groups.begin(), groups.end());
            const TimelineGeometry geometry = layOut(part, sizes, width, wholeSpan(part));
            addPage(std::make_shared<const Sheet>(Sheet{std::move(part), geometry, m_input.speaker}), top, legend,
                    pages.size());
        }
        return std::move(m_document);
    }

private:
    void addPage(const std::shared_ptr<const Sheet>& sheet, double top, double legend, std::size_t count)
    {
        PaperPage page;
        page.runs.push_back(
            moved(setLeft(shortened(HistoryText::tr("%1, %2: history", "tag, site")
                                        .arg(fromCore(m_input.record.unit.tag), fromCore(m_input.record.site.name)),
                                    Face::title, m_area.width()),
                          Face::title, Ink::full),
                  m_area.left(), m_area.top()));
        page.runs.push_back(
            moved(setLeft(shortened(underTitle(m_input, m_words), Face::small, m_area.width()), Face::small, Ink::soft),
                  m_area.left(), m_area.top() + leading(Face::title)));
        const double height = sheet->geometry.height * screenScale;
        page.runs.emplace_back(DrawingRun{
            QRectF(m_area.left(), top, m_area.width(), height), [sheet](QPainter& painter) {
                painter.scale(screenScale, screenScale);
                painter.setFont(labelFont());
                const TimelineGeometry& geometry = sheet->geometry;
                paintTimeline(painter, QRectF(0, 0, geometry.width, geometry.height),
                              TimelinePicture{
                                  sheet->timeline, geometry, sheet->speaker, Theme::print(), std::nullopt, {}, false});
            }});
        // The signs of the whole history, the same on every page.
        const auto whole = std::make_shared<const Timeline>(m_timeline);
        const double width = m_area.width() / screenScale;
        page.runs.emplace_back(DrawingRun{
            QRectF(m_area.left(), top + height + legendGap, m_area.width(), legend * screenScale),
            [sheet, whole, width, legend](QPainter& painter) {
                painter.scale(screenScale, screenScale);
                painter.setFont(labelFont());
                paintTimelineLegend(painter, QRectF(0, 0, width, legend), *whole, sheet->speaker, Theme::print());
            }});
        const double bottom = m_area.bottom() - leading(Face::small);
        page.runs.push_back(
            moved(setLeft(HistoryText::tr("As of %1. Padside").arg(m_words.day(m_input.today)), Face::small, Ink::soft),
                  m_area.left(), bottom));
        page.runs.push_back(moved(
            setRight(QCoreApplication::translate("Paper", "Page %1 of %2").arg(m_document.pages.size() + 1).arg(count),
                     Face::small, Ink::soft, m_area.width()),
            m_area.left(), bottom));
        m_document.pages.push_back(std::move(page));
    }

    const HistoryInput& m_input;
    PartWords m_words;
    Timeline m_timeline;
    PaperDocument m_document;
    QRectF m_area;
};

} // namespace

PaperDocument layHistory(const HistoryInput& input)
{
    return HistoryPages(input).laid();
}

QString historyFileName(const UnitRecord& record)
{
    QString name = HistoryText::tr("%1 history").arg(fromCore(record.unit.tag));
    for (const QChar sign : u"/\\:*?\"<>|"_s)
        name.remove(sign);
    return name.simplified() + u".pdf"_s;
}

} // namespace padside
