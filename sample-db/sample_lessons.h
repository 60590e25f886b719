// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "core/outlook/outlook_model.h"
#include "core/quantity/date.h"

#include <optional>
#include <string>

namespace padside {

/// The day on which the contractor of Merrowmouth accepted what their own records had taught of the lives of parts;
/// none where the record is too short to have taught anything.
[[nodiscard]] std::optional<Date> lessonsLearntOn(int years, Date lastDay);

/// The lives they accepted, as they are kept in an own catalogue: a JSON merge patch.
[[nodiscard]] std::string lessonsPatch(Date learntOn);

/// Puts the rates of those lives in the place of the priors. The catalogue is the one `model` was made of.
void useLessons(OutlookModel& model, const Catalogue& catalogue);

} // namespace padside
