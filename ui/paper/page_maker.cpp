// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/paper/page_maker.h"

#include "ui/paper/block_setter.h"
#include "ui/paper/table_setter.h"
#include "ui/paper/type_setting.h"

#include <QCoreApplication>

namespace padside {

namespace {

constexpr double runningHeadAbove = 64; ///< top of the running head above the text area
constexpr double footerBelow = 50; ///< top of the footer below the text area
constexpr double footerGap = 60;

void addFurniture(PaperPage& page, const PaperContent& content, const QRectF& area, std::size_t number,
                  std::size_t count)
{
    if (number > 1) {
        const QString text = shortened(content.runningHead, Face::small, area.width());
        page.runs.push_back(moved(setLeft(text, Face::small, Ink::soft), area.left(), area.top() - runningHeadAbove));
    }
    const QString pageText = QCoreApplication::translate("Paper", "Page %1 of %2").arg(number).arg(count);
    const TextRun pageRun = setRight(pageText, Face::small, Ink::soft, area.width());
    const QString footer = shortened(content.footer, Face::small, pageRun.at.x() - footerGap);
    const double top = area.bottom() + footerBelow;
    page.runs.push_back(moved(setLeft(footer, Face::small, Ink::soft), area.left(), top));
    page.runs.push_back(moved(pageRun, area.left(), top));
}

} // namespace

PaperDocument makePages(const PaperContent& content, PaperSize size)
{
    const QRectF area = textArea(size);
    const SetBlocks set = setBlocks(content.blocks, area.width(), area.height());
    std::vector<FlowItem> items;
    for (const SetItem& item : set.items)
        items.push_back(item.flow);
    std::vector<double> heads;
    for (const SetItem& head : set.heads)
        heads.push_back(head.flow.height);

    std::vector<FlowPage> flowed = flowPages(items, heads, area.height());
    if (flowed.empty())
        flowed.emplace_back();
    PaperDocument document{content.documentTitle, size, {}, false};
    for (const FlowPage& flowPage : flowed) {
        PaperPage page;
        for (const PlacedItem& placed : flowPage) {
            const SetItem& item = placed.repeatedHead ? set.heads[placed.index] : set.items[placed.index];
            append(page.runs, item.runs, area.left(), area.top() + placed.top);
        }
        addFurniture(page, content, area, document.pages.size() + 1, flowed.size());
        document.pages.push_back(std::move(page));
    }
    return document;
}

} // namespace padside
