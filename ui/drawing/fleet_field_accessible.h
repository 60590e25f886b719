// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

namespace padside {

/// Lets a screen reader meet each mark of a FleetFieldView as an item of its own, with its unit's tag (or how many are
/// gathered), the reason why it is there as description, and a press that goes there. Once for the program is enough.
void installFleetFieldAccessibility();

} // namespace padside
