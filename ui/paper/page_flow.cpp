// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/paper/page_flow.h"

namespace padside {

namespace {

constexpr double roundingSlack = 1e-6;

class Flow
{
public:
    Flow(std::span<const FlowItem> items, std::span<const double> heads, double pageHeight)
        : m_items(items)
        , m_heads(heads)
        , m_pageHeight(pageHeight)
    {
    }

    std::vector<FlowPage> run()
    {
        for (std::size_t first = 0; first < m_items.size();) {
            const std::size_t last = lastOfChain(first);
            const bool fitsHere
                = !m_pages.empty() && m_used + chainHeight(first, last, true) <= m_pageHeight + roundingSlack;
            if (!fitsHere)
                beginPage(first);
            for (std::size_t i = first; i <= last; ++i)
                place(i);
            first = last + 1;
        }
        return std::move(m_pages);
    }

private:
    [[nodiscard]] std::size_t lastOfChain(std::size_t first) const
    {
        std::size_t last = first;
        while (m_items[last].keepWithNext && last + 1 < m_items.size())
            ++last;
        return last;
    }

    [[nodiscard]] double chainHeight(std::size_t first, std::size_t last, bool withSpace) const
    {
        double height = withSpace ? m_items[first].spaceBefore : 0;
        for (std::size_t i = first; i <= last; ++i)
            height += m_items[i].height + (i > first ? m_items[i].spaceBefore : 0);
        return height;
    }

    void beginPage(std::size_t item)
    {
        m_pages.emplace_back();
        m_used = 0;
        if (const auto head = m_items[item].head) {
            m_pages.back().push_back({*head, true, 0});
            m_used = m_heads[*head];
        }
        m_atTop = true;
    }

    void place(std::size_t item)
    {
        const double space = m_atTop ? 0 : m_items[item].spaceBefore;
        if (!m_atTop && m_used + space + m_items[item].height > m_pageHeight + roundingSlack) {
            beginPage(item); // a chain longer than a page is broken where it must be
            place(item);
            return;
        }
        m_pages.back().push_back({item, false, m_used + space});
        m_used += space + m_items[item].height;
        m_atTop = false;
    }

    std::span<const FlowItem> m_items;
    std::span<const double> m_heads;
    double m_pageHeight;
    std::vector<FlowPage> m_pages;
    double m_used = 0;
    bool m_atTop = true;
};

} // namespace

std::vector<FlowPage> flowPages(std::span<const FlowItem> items, std::span<const double> heads, double pageHeight)
{
    return Flow(items, heads, pageHeight).run();
}

} // namespace padside
