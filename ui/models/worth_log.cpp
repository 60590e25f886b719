// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/models/worth_log.h"

#include "core/catalogue/cost_figures.h"
#include "core/review/unit_worth.h"
#include "core/store/judgement_book.h"
#include "core/store/own_catalogue.h"
#include "core/store/record_reader.h"
#include "core/store/store.h"
#include "resources/resources.h"
#include "ui/models/record_book.h"
#include "ui/models/speaker.h"

#include <QUndoCommand>
#include <QUndoStack>

#include <algorithm>

namespace padside {

namespace {

/// Costs and general figures before and after, as the patch that the file keeps.
class ChangeFiguresCommand final : public QUndoCommand
{
public:
    ChangeFiguresCommand(RecordBook& book, WorthLog& log, std::string before, std::string after)
        : QUndoCommand(WorthLog::tr("change of costs"))
        , m_book(book)
        , m_log(log)
        , m_before(std::move(before))
        , m_after(std::move(after))
    {
    }

    void redo() override { put(m_after); }
    void undo() override { put(m_before); }

private:
    void put(const std::string& patch)
    {
        const bool well = m_book.attempt([&] { m_book.store().ownCatalogue().setChanges(patch); });
        setObsolete(!well);
        if (well)
            Q_EMIT m_log.costsChanged();
    }

    RecordBook& m_book;
    WorthLog& m_log;
    std::string m_before;
    std::string m_after;
};

class AssumeCommand final : public QUndoCommand
{
public:
    AssumeCommand(RecordBook& book, WorthLog& log, UnitId unit, std::string code, std::optional<double> before,
                  std::optional<double> after)
        : QUndoCommand(WorthLog::tr("change of an assumption"))
        , m_book(book)
        , m_log(log)
        , m_unit(unit)
        , m_code(std::move(code))
        , m_before(before)
        , m_after(after)
    {
    }

    void redo() override { put(m_after); }
    void undo() override { put(m_before); }

private:
    void put(std::optional<double> value)
    {
        const bool well = m_book.attempt([&] {
            if (value)
                m_book.store().judgements().assume(m_unit, {m_code, *value});
            else
                m_book.store().judgements().forgetAssumption(m_unit, m_code);
        });
        setObsolete(!well);
        if (well)
            Q_EMIT m_log.unitAssumed(m_unit);
    }

    RecordBook& m_book;
    WorthLog& m_log;
    UnitId m_unit;
    std::string m_code;
    std::optional<double> m_before;
    std::optional<double> m_after;
};

/// What is wrong with the figure at a path, as the person knows it.
QString said(const Sentence& trouble, const OwnChanges& changes, const JsonPath& path, const LocalSpeaker& speaker)
{
    auto fields = changes.fields().money({});
    const auto ofKind = changes.fields().costs(path.at(1));
    fields.insert(fields.end(), ofKind.begin(), ofKind.end());
    const auto found = std::ranges::find(fields, path, &OwnField::path);
    if (found == fields.end())
        return speaker.said(trouble);
    return speaker.said(troubleWith(*found, say(found->label, speaker), trouble));
}

void put(OwnChanges& changes, const WorthLog::Figure& figure)
{
    if (figure.second)
        changes.set(figure.first, *figure.second);
    else
        changes.putBack(figure.first);
}

} // namespace

WorthLog::WorthLog(RecordBook& book, QUndoStack& stack, QObject* parent)
    : QObject(parent)
    , m_book(book)
    , m_stack(stack)
{
}

OwnChanges WorthLog::ownChanges() const
{
    const auto shipped = shippedCatalogue();
    if (auto changes = OwnChanges::read(shipped, m_book.store().ownCatalogue().changes()))
        return *std::move(changes);
    return OwnChanges::read(shipped, {}).value(); // ours is built in and tested
}

std::optional<WorthLog::Refusal> WorthLog::setFigures(const std::vector<Figure>& figures)
{
    std::optional<Refusal> refusal;
    const bool read = m_book.attempt([&] {
        const auto shipped = shippedCatalogue();
        const std::string before = m_book.store().ownCatalogue().changes();
        const auto kept = OwnChanges::read(shipped, before);
        if (!kept) { // never overwritten: it may be of use again
            refusal = Refusal{0, m_book.speaker().said(kept.error().what)};
            return;
        }
        OwnChanges changes = *kept;
        for (const Figure& figure : figures)
            put(changes, figure);
        if (costFigures(shipped, changes.patch())) {
            if (changes.patch() != kept->patch()) {
                const int steps = m_stack.index();
                m_stack.push(new ChangeFiguresCommand(m_book, *this, before, changes.patch()));
                if (m_stack.index() == steps)
                    refusal = Refusal{};
            }
            return;
        }
        refusal = firstRefused(shipped, *kept, figures);
    });
    return read ? refusal : Refusal{};
}

std::optional<WorthLog::Refusal> WorthLog::firstRefused(const std::vector<std::string>& shipped, OwnChanges changes,
                                                        const std::vector<Figure>& figures) const
{
    for (std::size_t i = 0; i < figures.size(); ++i) {
        put(changes, figures[i]);
        if (const auto costs = costFigures(shipped, changes.patch()); !costs)
            return Refusal{i, said(costs.error().what, changes, figures[i].first, m_book.speaker())};
    }
    return std::nullopt;
}

QString WorthLog::assume(UnitId unit, const std::string& code, std::optional<double> value)
{
    const auto field = std::ranges::find(unitFigureFields(), code, &UnitFigureField::code);
    if (value && !(*value >= field->lowest && *value <= field->highest)) {
        return m_book.speaker().said({PADSIDE_SAY("{0}: must lie between {1} and {2}."),
                                      {Word{field->label}, Number{field->lowest, 0}, Number{field->highest, 0}}});
    }
    m_book.attempt([&] {
        const UnitRecord record = m_book.record(unit);
        const auto found = std::ranges::find(record.assumptions, code, &UnitAssumption::code);
        std::optional<double> before;
        if (found != record.assumptions.end())
            before = found->value;
        if (before != value)
            m_stack.push(new AssumeCommand(m_book, *this, unit, code, before, value));
    });
    return {};
}

} // namespace padside
