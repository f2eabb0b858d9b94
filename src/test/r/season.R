# Writes src/test/resources/reference/r/season_*.csv, which SeasonCrossCheckTest reads.
# Run from the root of the project:  Rscript src/test/r/season.R
# Needs R with the packages survival and boot; the versions used are written to season_versions.csv.
# Inputs are made here from a fixed seed, so that a second run gives the same files.
library(survival)
library(boot)
out <- "src/test/resources/reference/r"
set.seed(20260105, kind = "Mersenne-Twister", normal.kind = "Inversion", sample.kind = "Rejection")
num <- function(x) ifelse(is.na(x), "NA", formatC(x, digits = 17, format = "g", width = 1))
save <- function(d, name) {
  d[] <- lapply(d, function(x) if (is.double(x)) num(x) else x)
  write.csv(d, file.path(out, paste0("season_", name, ".csv")), row.names = FALSE, quote = FALSE)
}
save(data.frame(tool = c("R", "survival", "boot"),
                version = c(paste(R.version$major, R.version$minor, sep = "."),
                            as.character(packageVersion("survival")),
                            as.character(packageVersion("boot")))), "versions")

# Stretches at risk of a first bite: 30 sessions that differ, three kinds of line, some entered
# late, some left before a bite. No two times are the same, so that the Cox score test stratified by
# session is the stratified log-rank test, delayed entry and all.
rows <- do.call(rbind, lapply(1:30, function(session) {
  quick <- rgamma(1, 4, 4)
  n <- sample(3:14, 1)
  line <- sample(c("long", "margin", "short"), n, replace = TRUE)
  entry <- ifelse(runif(n) < 0.4, 0, runif(n, 0, 30))
  bite <- entry + rexp(n, quick * c(long = 0.06, margin = 0.03, short = 0.05)[line])
  left <- entry + runif(n, 5, 60)
  data.frame(session = session, line = line, entry = entry, exit = pmin(bite, left),
             event = as.integer(bite <= left))
}))
stopifnot(!anyDuplicated(rows$exit))
save(rows, "rows")

tests <- NULL; curves <- NULL
for (line in sort(unique(rows$line))) {
  rows$own <- as.integer(rows$line == line)
  # Only sessions in which the kind was fed take part.
  d <- rows[rows$session %in% rows$session[rows$own == 1], ]
  null <- coxph(Surv(entry, exit, event) ~ own + strata(session), d, init = 0, iter.max = 0)
  expected <- d$event - residuals(null, "martingale")
  own <- rows[rows$own == 1, ]
  starts <- sort(own$entry)
  from <- starts[sapply(starts, function(s) sum(own$entry <= s & own$exit > s)) >= 5][1]
  f <- survfit(Surv(entry, exit, event) ~ 1, own, start.time = from)
  tests <- rbind(tests, data.frame(line = line, observed = sum(d$event[d$own == 1]),
    expected = sum(expected[d$own == 1]), expected_other = sum(expected[d$own == 0]),
    chi_square = null$score, from = from, median = unname(summary(f)$table["median"])))
  k <- f$n.event > 0
  curves <- rbind(curves, data.frame(line = line, time = f$time[k], at_risk = f$n.risk[k],
    events = f$n.event[k], survival = f$surv[k]))
}
save(tests, "tests")
save(curves, "curves")

# Rates over sessions: fish and hours of each session, limits from drawing whole sessions.
data <- NULL; limits <- NULL
for (set in 1:4) {
  n <- c(5, 12, 40, 150)[set]
  hours <- round(runif(n, 0.2, 4), 2)
  fish <- rpois(n, hours * rgamma(n, 2, 2 / c(12, 3, 6, 9)[set]))
  data <- rbind(data, data.frame(set = set, fish = fish, hours = hours))
  d <- data.frame(fish, hours)
  ratio <- function(d, w) sum(d$fish * w) / sum(d$hours * w)
  b <- boot(d, ratio, R = 199999, stype = "w")
  ci <- boot.ci(b, conf = 0.95, type = c("perc", "bca"),
                L = empinf(data = d, statistic = function(d, i) ratio(d[i, ], 1), stype = "i",
                           type = "jack"))
  limits <- rbind(limits, data.frame(set = set, estimate = b$t0, percentile_low = ci$percent[4],
    percentile_high = ci$percent[5], bca_low = ci$bca[4], bca_high = ci$bca[5]))
}
save(data, "boot_data")
save(limits, "boot_limits")
