// SPDX-FileCopyrightText: 2026 The Padside authors
// SPDX-License-Identifier: Apache-2.0
#pragma once

// Everything about the trend of one measured series. Include the single headers where one subject is enough.
#include "core/trend/crossing.h"
#include "core/trend/mann_kendall.h"
#include "core/trend/reading_series.h"
#include "core/trend/series_summary.h"
#include "core/trend/theil_sen.h"
#include "core/trend/trend_point.h"
