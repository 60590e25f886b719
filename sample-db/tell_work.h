// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include "sample-db/unit_life.h"

namespace padside {

// The parts of tellWork, one subject each.
void tellTreatments(Telling& telling, const Catalogue& catalogue);
void tellReplacements(Telling& telling, const Catalogue& catalogue);
void tellRefrigerant(Telling& telling);
void tellPromises(Telling& telling);
void coatVesselBottom(Telling& telling); ///< the seafront unit, on the days its script says

/// Takes the fitted part of this kind out and fits a new one, with the treatment that says so.
void replaceNow(Telling& telling, const Catalogue& catalogue, const std::string& partKind, const std::string& because,
                double cost);
/// A treatment of a zone's part with the grade it was left in.
Treatment& treat(Telling& telling, TreatmentKind kind, const ZoneState& zone, const std::string& product,
                 const std::string& note);
void leave(Telling& telling, ZoneState& zone, Grade grade);
/// The last grade seen of this zone at this visit, if it was.
[[nodiscard]] const Finding* findingToday(const Telling& telling, ZoneId zone);

} // namespace padside
