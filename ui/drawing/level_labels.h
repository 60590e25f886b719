// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0

#pragma once

class QFormLayout;
class QLabel;
class QWidget;

namespace padside {

/// Keeps `label` level with the first control of `field`, however high that is made and whatever stands below it there.
/// A form by itself puts labels above the middle of a high field.
void levelLabel(QLabel& label, QWidget& field);

/// The same for all labels of `form`; call it with all rows in the form.
void levelLabels(QFormLayout& form);

/// Makes all labels within `area` that stand before a field as wide as the widest of them, now and whenever the size of
/// letters changes: the fields of a form within a form begin where its own do.
void shareLabelWidth(QWidget& area);

} // namespace padside
