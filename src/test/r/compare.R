# Writes src/test/resources/reference/r/compare_rates.csv and compare_log_rank.csv from the counts and
# stretches of two pairs of sample sessions (compare_counts.csv and compare_rows.csv, written by the main
# of org.fadeline.report.CompareReferenceTest). Run from the root of the project:
#   Rscript src/test/r/compare.R
# Needs R with the package survival; versions in versions.csv.
library(survival)
dir <- "src/test/resources/reference/r"
num <- function(x) ifelse(is.na(x), "NA", formatC(x, digits = 17, format = "g", width = 1))
save <- function(d, name) {
  d[] <- lapply(d, function(x) if (is.double(x)) num(x) else x)
  write.csv(d, file.path(dir, paste0(name, ".csv")), row.names = FALSE, quote = FALSE)
}
counts <- read.csv(file.path(dir, "compare_counts.csv"))
rates <- do.call(rbind, lapply(seq_len(nrow(counts)), function(i) {
  r <- counts[i, ]
  n <- c(r$first, r$second); hours <- c(r$first_hours, r$second_hours)
  # Given the total, the first count is binomial: limits of its share by Clopper and Pearson, put back
  # as odds. binom.test and poisson.test must agree.
  ends <- binom.test(n[1], sum(n))$conf.int
  binomial <- ends / (1 - ends) * hours[2] / hours[1]
  poisson <- poisson.test(n, hours)$conf.int
  stopifnot(all(abs(binomial / poisson - 1) < 1e-9 | binomial == poisson))
  ratio <- (n[1] / hours[1]) / (n[2] / hours[2])
  half <- qnorm(0.975) * sqrt(1 / n[1] + 1 / n[2] + 2 * 0.5^2)
  data.frame(pair = r$pair, rate = r$rate, ratio = ratio, low = poisson[1], high = poisson[2],
             low_days = ratio * exp(-half), high_days = ratio * exp(half))
}))
save(rates, "compare_rates")

rows <- read.csv(file.path(dir, "compare_rows.csv"))
tests <- do.call(rbind, lapply(split(rows, rows$pair), function(d) {
  # No two bites of a stratum fall at one time, so the score test of Cox's model is the log-rank test,
  # late entry and strata and all; survdiff itself takes no late entry.
  stopifnot(!any(duplicated(d[d$bite == 1, c("stratum", "exit")])))
  w <- suppressWarnings(coxph(Surv(entry, exit, bite) ~ I(session == 1) + strata(stratum), d))
  data.frame(pair = d$pair[1], observed = sum(d$bite[d$session == 1]), chisq = w$score,
             p = pchisq(w$score, 1, lower.tail = FALSE))
}))
save(tests, "compare_log_rank")
