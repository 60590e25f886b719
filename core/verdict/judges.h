// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "core/verdict/measured.h"
#include "core/verdict/verdict.h"

#include <vector>

namespace padside {

/// Each says what it knows of one subject, one file each; nothing where its readings were not taken.
using Judge = void (*)(const Measured& measured, std::vector<Verdict>& verdicts);

void judgeSense(const Measured& measured, std::vector<Verdict>& verdicts); ///< readings that can hardly be
void judgeSuperheat(const Measured& measured, std::vector<Verdict>& verdicts);
void judgeSubcooling(const Measured& measured, std::vector<Verdict>& verdicts);
void judgeSplits(const Measured& measured, std::vector<Verdict>& verdicts); ///< condenser, evaporator
void judgeSupplyAir(const Measured& measured, std::vector<Verdict>& verdicts);
void judgeSweating(const Measured& measured, std::vector<Verdict>& verdicts);
void judgeCapacitors(const Measured& measured, std::vector<Verdict>& verdicts);
void judgeMotorCurrents(const Measured& measured, std::vector<Verdict>& verdicts);
void judgeSupplyVoltage(const Measured& measured, std::vector<Verdict>& verdicts);
void judgeInsulation(const Measured& measured, std::vector<Verdict>& verdicts);
void judgeCrankcaseHeater(const Measured& measured, std::vector<Verdict>& verdicts);
void judgePlainLimits(const Measured& measured, std::vector<Verdict>& verdicts); ///< one reading, one bound

} // namespace padside
