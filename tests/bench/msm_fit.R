# SPDX-FileCopyrightText: 2026 The Padside authors
# SPDX-License-Identifier: Apache-2.0
# The panel fit by R's package msm: Rscript msm_fit.R FILE.csv, a table with the columns unit, years, grade. Answers one
# line: the best of three fits' processor time in seconds (R's start is not in it), -2 log L, the four rates per year.
suppressPackageStartupMessages(library(msm))
panel <- read.csv(commandArgs(TRUE)[1])
crude <- rbind(c(0, 1, 0, 0, 0), c(0, 0, 1, 0, 0), c(0, 0, 0, 1, 0), c(0, 0, 0, 0, 1), rep(0, 5))
best <- Inf
for (round in 1:3) {
    took <- system.time(suppressWarnings(
        fit <- msm(grade ~ years, subject = unit, data = panel, qmatrix = crude, gen.inits = TRUE,
                   method = "BFGS", control = list(fnscale = 4000, reltol = 1e-12))))
    best <- min(best, sum(took[1:2]))
}
rates <- fit$Qmatrices$baseline[cbind(1:4, 2:5)]
cat(sprintf("%.6f %.9f %s\n", best, fit$minus2loglik, paste(sprintf("%.9f", rates), collapse = " ")))
