// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

namespace padside {

/// Lets a screen reader meet each part of a CutawayView as an item of its own, with its name, its last finding as
/// description and a press that goes there. Once for the program is enough; more often does no harm.
void installCutawayAccessibility();

} // namespace padside
