// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/drawing/cutaway_drawing.h"

#include "resources/resources.h"
#include "ui/drawing/theme.h"

#include <QFile>
#include <QPainter>
#include <QSvgRenderer>

namespace padside {

using namespace Qt::Literals::StringLiterals;

namespace {

QByteArray drawingText(const std::string& unitKind)
{
    std::string path = drawingPath(unitKind);
    if (path.empty())
        path = drawingPath("split-air-conditioner");
    QFile file(QString::fromStdString(path));
    const bool opened = file.open(QIODevice::ReadOnly);
    Q_ASSERT(opened); // built into the program itself
    return file.readAll();
}

/// A rectangle of the drawing, as it lies in `area`.
QRectF placed(const QRectF& body, const QSizeF& size, const QRectF& area)
{
    const double x = area.width() / size.width();
    const double y = area.height() / size.height();
    return {area.left() + body.left() * x, area.top() + body.top() * y, body.width() * x, body.height() * y};
}

} // namespace

CutawayDrawing::CutawayDrawing(const std::string& unitKind, const Theme& theme)
    : m_theme(theme)
    , m_svg(drawingText(unitKind))
    , m_plain(std::make_unique<QSvgRenderer>(withStyle(m_svg, cutawayStyle(theme, {}))))
    , m_origin(m_plain->viewBoxF().topLeft())
    , m_size(m_plain->viewBoxF().size())
{
    Q_ASSERT(m_plain->isValid());
}

CutawayDrawing::~CutawayDrawing() = default;

std::optional<CutawayPlace> CutawayDrawing::placeOf(const std::string& partKind, const std::string& position) const
{
    std::string code = partKind + '.' + position;
    if (position.empty() || !m_plain->elementExists(QString::fromStdString(code)))
        code = partKind;
    const QString id = QString::fromStdString(code);
    if (!m_plain->elementExists(id))
        return std::nullopt;
    const QRectF body = m_plain->boundsOnElement(id).translated(-m_origin);
    const QString mark = id + u".mark"_s;
    const QPointF anchor
        = m_plain->elementExists(mark) ? m_plain->boundsOnElement(mark).translated(-m_origin).center() : body.center();
    return CutawayPlace{code, body, anchor};
}

void CutawayDrawing::tint(const CutawayContent& content)
{
    CutawayTints tints;
    for (const CutawayPart& part : content.parts) {
        const auto place = placeOf(part.kind, part.position);
        if (!place || !part.grade)
            continue;
        const auto [worst, fresh] = tints.try_emplace(place->code, *part.grade);
        if (!fresh)
            worst->second = std::max(worst->second, *part.grade);
    }
    if (tints == m_tints)
        return;
    m_tints = std::move(tints);
    m_plain->load(withStyle(m_svg, cutawayStyle(m_theme, m_tints)));
}

void CutawayDrawing::paint(QPainter& painter, const QRectF& area) const
{
    m_plain->render(&painter, area);
}

void CutawayDrawing::paintLit(QPainter& painter, const QRectF& area, const CutawayPlace& place) const
{
    if (!m_lit)
        m_lit = std::make_unique<QSvgRenderer>(withStyle(m_svg, cutawayLitStyle(m_theme)));
    m_lit->render(&painter, QString::fromStdString(place.code), placed(place.body, m_size, area));
}

} // namespace padside
