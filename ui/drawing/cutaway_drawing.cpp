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
{
}

CutawayDrawing::~CutawayDrawing() = default;

QSvgRenderer& CutawayDrawing::plain() const
{
    if (!m_plain) {
        m_plain = std::make_unique<QSvgRenderer>(withStyle(m_svg, cutawayStyle(m_theme, m_tints)));
        Q_ASSERT(m_plain->isValid());
    }
    return *m_plain;
}

QSizeF CutawayDrawing::size() const
{
    return plain().viewBoxF().size();
}

bool CutawayDrawing::has(const QString& id) const
{
    return m_svg.contains((u" id=\""_s + id + u'"').toUtf8());
}

std::string CutawayDrawing::codeOf(const std::string& partKind, const std::string& position) const
{
    const std::string code = partKind + '.' + position;
    return !position.empty() && has(QString::fromStdString(code)) ? code : partKind;
}

std::optional<CutawayPlace> CutawayDrawing::placeOf(const std::string& partKind, const std::string& position) const
{
    const std::string code = codeOf(partKind, position);
    if (const auto known = m_places.find(code); known != m_places.end())
        return known->second;
    const QString id = QString::fromStdString(code);
    if (!has(id))
        return std::nullopt;
    const QPointF origin = plain().viewBoxF().topLeft();
    const QRectF body = plain().boundsOnElement(id).translated(-origin);
    const QString mark = id + u".mark"_s;
    const QPointF anchor = has(mark) ? plain().boundsOnElement(mark).translated(-origin).center() : body.center();
    return m_places.emplace(code, CutawayPlace{code, body, anchor}).first->second;
}

void CutawayDrawing::tint(const CutawayContent& content)
{
    CutawayTints tints;
    for (const CutawayPart& part : content.parts) {
        const std::string code = codeOf(part.kind, part.position);
        if (!part.grade || !has(QString::fromStdString(code)))
            continue;
        const auto [worst, fresh] = tints.try_emplace(code, *part.grade);
        if (!fresh)
            worst->second = std::max(worst->second, *part.grade);
    }
    if (tints == m_tints)
        return;
    m_tints = std::move(tints);
    m_plain.reset();
}

void CutawayDrawing::paint(QPainter& painter, const QRectF& area) const
{
    plain().render(&painter, area);
}

void CutawayDrawing::paintLit(QPainter& painter, const QRectF& area, const CutawayPlace& place) const
{
    if (!m_lit)
        m_lit = std::make_unique<QSvgRenderer>(withStyle(m_svg, cutawayLitStyle(m_theme)));
    m_lit->render(&painter, QString::fromStdString(place.code), placed(place.body, size(), area));
}

} // namespace padside
