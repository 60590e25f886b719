// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

#include <QString>

#include <functional>

namespace padside {

struct SampleOptions;

/// Makes the sample as a file of the person's own. It is made apart and put in its place when it is whole: a stop in
/// between (`tell` answers false) leaves no half of one there, and the answer is false. Throws StoreError.
bool makeOwnSample(const QString& file, const SampleOptions& options, const std::function<bool(double)>& tell);

} // namespace padside
