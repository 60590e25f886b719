// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#include "ui/models/preferences.h"

#include "core/quantity/currency.h"
#include "core/record/quantity_code.h"
#include "ui/models/speaker.h"

#include <QSettings>

#include <array>
#include <utility>

namespace padside {

namespace {

const QString technicianKey = QStringLiteral("technician");
const QString contractorKey = QStringLiteral("paper/contractor");
const QString paperSizeKey = QStringLiteral("paper/size");
const QString currencyKey = QStringLiteral("currency");
const QString languageKey = QStringLiteral("language");
const QString themeKey = QStringLiteral("theme");
const QString darkKey = QStringLiteral("dark"); ///< of the time when there were two themes
const QString fieldSizeKey = QStringLiteral("field-size");
const QString unitsKey = QStringLiteral("units/all");

constexpr std::array habits{std::pair{UnitHabit::usual, ""}, std::pair{UnitHabit::metric, "metric"},
                            std::pair{UnitHabit::usCustomary, "us-customary"}};

QString keyOf(QuantityKind kind)
{
    return QStringLiteral("units/") + shown(codeOf(kind));
}

void keepText(QSettings& settings, const QString& key, const QString& text)
{
    if (text.isEmpty())
        settings.remove(key);
    else
        settings.setValue(key, text);
}

QString themeIn(const QSettings& settings)
{
    if (settings.contains(themeKey) || !settings.contains(darkKey))
        return settings.value(themeKey).toString();
    return settings.value(darkKey).toBool() ? QStringLiteral("dark") : QStringLiteral("light");
}

QString currencyIn(const QSettings& settings)
{
    const auto currency = parseCurrency(settings.value(currencyKey).toString().toStdString());
    return currency ? QString::fromStdString(*currency) : QString();
}

} // namespace

Preferences readPreferences(const QSettings& settings)
{
    Preferences read;
    read.technician = settings.value(technicianKey).toString();
    read.contractor = settings.value(contractorKey).toString();
    read.paperSize = settings.value(paperSizeKey).toString();
    read.currency = currencyIn(settings);
    read.language = settings.value(languageKey).toString();
    read.theme = themeIn(settings);
    read.fieldSize = settings.value(fieldSizeKey).toBool();
    for (const auto& [habit, code] : habits) {
        if (settings.value(unitsKey).toString() == QLatin1String(code))
            read.units = habit;
    }
    for (const auto& row : codesOf(QuantityKind{})) {
        const std::string code = settings.value(keyOf(row.value)).toString().toStdString();
        const MeasuringUnit* unit = unitByCode(code);
        if (unit && unit->kind == row.value)
            read.ownUnits[row.value] = code;
    }
    return read;
}

void keepPreferences(const Preferences& preferences, QSettings& settings)
{
    keepText(settings, technicianKey, preferences.technician);
    keepText(settings, contractorKey, preferences.contractor);
    keepText(settings, paperSizeKey, preferences.paperSize);
    keepText(settings, currencyKey, preferences.currency);
    keepText(settings, languageKey, preferences.language);
    keepText(settings, themeKey, preferences.theme);
    settings.remove(darkKey);
    if (preferences.fieldSize)
        settings.setValue(fieldSizeKey, true);
    else
        settings.remove(fieldSizeKey);
    for (const auto& [habit, code] : habits) {
        if (habit == preferences.units)
            keepText(settings, unitsKey, QLatin1String(code));
    }
    for (const auto& row : codesOf(QuantityKind{})) {
        const auto own = preferences.ownUnits.find(row.value);
        keepText(settings, keyOf(row.value),
                 own == preferences.ownUnits.end() ? QString() : QString::fromStdString(own->second));
    }
}

UnitChoice unitChoice(const Preferences& preferences, UnitSystem usual)
{
    UnitChoice choice = usual;
    if (preferences.units != UnitHabit::usual)
        choice.system = preferences.units == UnitHabit::metric ? UnitSystem::metric : UnitSystem::usCustomary;
    choice.own = preferences.ownUnits;
    return choice;
}

} // namespace padside
