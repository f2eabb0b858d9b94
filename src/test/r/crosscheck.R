# Writes src/test/resources/reference/r/*.csv, which the tests of org.fadeline.stats read.
# Run from the root of the project:  Rscript src/test/r/crosscheck.R
# Needs R with the package survival; the versions used are written to versions.csv.
# Inputs are made here from a fixed seed, so that a second run gives the same files.
library(survival)
out <- "src/test/resources/reference/r"
dir.create(out, recursive = TRUE, showWarnings = FALSE)
set.seed(20260101, kind = "Mersenne-Twister", normal.kind = "Inversion", sample.kind = "Rejection")
num <- function(x) ifelse(is.na(x), "NA", formatC(x, digits = 17, format = "g", width = 1))
save <- function(d, name) {
  d[] <- lapply(d, function(x) if (is.double(x)) num(x) else x)
  write.csv(d, file.path(out, paste0(name, ".csv")), row.names = FALSE, quote = FALSE)
}
save(data.frame(tool = c("R", "survival"),
                version = c(paste(R.version$major, R.version$minor, sep = "."),
                            as.character(packageVersion("survival")))), "versions")

# Delayed-entry rows with ties: times on a grid, entry before exit, two groups, three strata.
rows <- do.call(rbind, lapply(1:6, function(set) {
  n <- c(12, 40, 40, 150, 150, 400)[set]
  grid <- c(1, 1, 0.5, 5, 1, 0.25)[set]
  entry <- if (set == 2) rep(0, n) else grid * rpois(n, 12)
  exit <- entry + grid * (1 + rgeom(n, c(0.1, 0.05, 0.05, 0.2, 0.02, 0.02)[set]))
  cause <- sample(0:2, n, replace = TRUE, prob = c(0.3, 0.45, 0.25))
  data.frame(set = set, entry = entry, exit = exit, cause = cause,
             group = sample(1:2, n, replace = TRUE), stratum = sample(1:3, n, replace = TRUE))
}))
save(rows, "survival_rows")

km <- NULL; med <- NULL; lr <- NULL; aj <- NULL; untied <- NULL
for (set in unique(rows$set)) {
  d <- rows[rows$set == set, ]
  d$event <- as.integer(d$cause == 1)
  for (band in c("log", "log-log", "plain")) for (level in c(0.95, 0.8)) {
    for (start in c(-Inf, quantile(d$exit[d$event == 1], 0.25, type = 1))) {
      f <- if (is.infinite(start)) {
        survfit(Surv(entry, exit, event) ~ 1, d, conf.type = band, conf.int = level)
      } else {
        survfit(Surv(entry, exit, event) ~ 1, d, conf.type = band, conf.int = level,
                start.time = start)
      }
      # Not quantile(): it takes the limits to fall throughout, which a log-log lower limit with few
      # at risk early does not; the printed table takes the smallest time at or below one half.
      q <- unname(summary(f)$table[7:9])
      med <- rbind(med, data.frame(set = set, band = band, level = level, start = start,
        median = q[1], low = q[2], high = q[3]))
      k <- f$n.event > 0
      km <- rbind(km, data.frame(set = set, band = band, level = level, start = start,
        time = f$time[k], at_risk = f$n.risk[k], events = f$n.event[k], survival = f$surv[k],
        se = (f$std.err * f$surv)[k], low = f$lower[k], high = f$upper[k]))
    }
  }
  # Where no events tie, the Cox score test is the log-rank test, delayed entry and all: break the
  # ties by far less than the spacing of times and take coxph's answer too.
  u <- d
  u$exit <- u$exit + rank(runif(nrow(u))) * 1e-4
  untied <- rbind(untied, data.frame(set = set, exit = u$exit))
  for (stratified in c(FALSE, TRUE)) {
    # survdiff takes no delayed entry, so the sums are taken time by time from their definition.
    o <- e <- v <- 0
    for (s in if (stratified) unique(d$stratum) else 0) {
      x <- if (stratified) d[d$stratum == s, ] else d
      for (t in sort(unique(x$exit[x$event == 1]))) {
        risk <- x$entry < t & t <= x$exit
        tab <- table(factor(x$group[risk], 1:2), factor((x$exit == t & x$event == 1)[risk], c(FALSE, TRUE)))
        n <- sum(tab); m <- sum(tab[, 2])
        o <- o + tab[1, 2]; e <- e + m * sum(tab[1, ]) / n
        if (n > 1) v <- v + m * (sum(tab[1, ]) / n) * (sum(tab[2, ]) / n) * (n - m) / (n - 1)
      }
    }
    lr <- rbind(lr, data.frame(set = set, stratified = as.integer(stratified), observed = o,
      expected = e, variance = v, chisq = (o - e)^2 / v,
      p = pchisq((o - e)^2 / v, 1, lower.tail = FALSE), by = "sums"))
    if (all(d$entry == 0)) {
      w <- if (stratified) survdiff(Surv(exit, event) ~ group + strata(stratum), d)
           else survdiff(Surv(exit, event) ~ group, d)
      lr <- rbind(lr, data.frame(set = set, stratified = as.integer(stratified),
        observed = sum(as.matrix(w$obs)[1, ]), expected = sum(as.matrix(w$exp)[1, ]), variance = w$var[1, 1],
        chisq = w$chisq, p = pchisq(w$chisq, 1, lower.tail = FALSE), by = "survdiff"))
    } else {
      w <- if (stratified) coxph(Surv(entry, exit, event) ~ I(group == 1) + strata(stratum), u)
           else coxph(Surv(entry, exit, event) ~ I(group == 1), u)
      lr <- rbind(lr, data.frame(set = set, stratified = as.integer(stratified), observed = NA,
        expected = NA, variance = NA, chisq = w$score,
        p = pchisq(w$score, 1, lower.tail = FALSE), by = "coxph"))
    }
  }
  d$id <- seq_len(nrow(d))
  for (start in c(-Inf, quantile(d$exit[d$event == 1], 0.25, type = 1))) {
    f <- if (is.infinite(start)) {
      survfit(Surv(entry, exit, factor(cause, 0:2)) ~ 1, d, id = id, conf.type = "log-log")
    } else {
      survfit(Surv(entry, exit, factor(cause, 0:2)) ~ 1, d, id = id, conf.type = "log-log",
              start.time = start)
    }
    k <- rowSums(f$n.event) > 0
    # survfit's multi-state error is the infinitesimal jackknife, the same as Greenwood's kind
    # only where nobody enters late.
    late <- any(d$entry != 0)
    for (cause in 1:2) {
      aj <- rbind(aj, data.frame(set = set, start = start, cause = cause, time = f$time[k],
        at_risk = f$n.risk[k, 1], incidence = f$pstate[k, cause + 1], none = f$pstate[k, 1],
        se = if (late) NA else f$std.err[k, cause + 1],
        low = if (late) NA else f$lower[k, cause + 1],
        high = if (late) NA else f$upper[k, cause + 1]))
    }
  }
}
save(untied, "untied_exits"); save(km, "kaplan_meier"); save(med, "medians"); save(lr, "log_rank"); save(aj, "aalen_johansen")

pt <- NULL
for (n in c(0, 1, 2, 3, 5, 10, 20, 49, 100, 1000, 4095, 4096, 25000)) for (level in c(0.5, 0.8, 0.9, 0.95, 0.99)) {
  exposure <- c(0.05, 1, 2.5)[1 + n %% 3]
  ci <- poisson.test(n, exposure, conf.level = level)$conf.int
  pt <- rbind(pt, data.frame(count = n, exposure = exposure, level = level, low = ci[1], high = ci[2]))
}
for (n in c(0.05, 0.3, 0.5, 1.7, 6.25, 13.9, 333.3)) for (level in c(0.8, 0.95)) {
  a <- (1 - level) / 2
  pt <- rbind(pt, data.frame(count = n, exposure = 1, level = level,
    low = qchisq(a, 2 * n) / 2, high = qchisq(a, 2 * n + 2, lower.tail = FALSE) / 2))
}
save(pt, "poisson_intervals")

rr <- NULL
for (i in 1:40) {
  y <- rpois(2, c(0.7, 3, 15, 60)[1 + i %% 4]); t <- round(runif(2, 0.2, 6), 2)
  level <- c(0.95, 0.8)[1 + i %% 2]
  w <- poisson.test(y, t, conf.level = level)
  prob <- t[1] / sum(t)
  central <- min(1, 2 * min(pbinom(y[1], sum(y), prob), pbinom(y[1] - 1, sum(y), prob, lower.tail = FALSE)))
  rr <- rbind(rr, data.frame(y1 = y[1], t1 = t[1], y2 = y[2], t2 = t[2], level = level,
    ratio = unname(w$estimate), low = w$conf.int[1], high = w$conf.int[2], central_p = central))
}
save(rr, "rate_ratios")

nb <- NULL
for (a in c(0.3, 1, 2.5, 13, 238, 5000.5)) for (b in c(0.1, 2.25, 10)) for (f in c(0.01, 1.75, 40)) {
  p <- b / (b + f)
  for (q in c(0.025, 0.5, 0.95, 0.999)) {
    k <- qnbinom(q, size = a, prob = p)
    nb <- rbind(nb, data.frame(shape = a, rate = b, exposure = f, p = q, k = k,
      probability = dnbinom(k, a, p), cumulative = pnbinom(k, a, p),
      survival = pnbinom(k, a, p, lower.tail = FALSE)))
  }
}
save(nb, "negative_binomial")

# Fay and Feuer limits written out with qgamma.
ff <- NULL
for (i in 1:20) {
  w <- round(exp(rnorm(sample(1:25, 1), 6.5, 0.6))); e <- round(runif(1, 0.05, 5), 3)
  y <- sum(w); v <- sum(w^2); m <- max(w); level <- c(0.95, 0.8)[1 + i %% 2]; a <- (1 - level) / 2
  ff <- rbind(ff, data.frame(weights = paste(w, collapse = " "), exposure = e, level = level,
    low = qgamma(a, y^2 / v, scale = v / y) / e,
    high = qgamma(a, (y + m)^2 / (v + m^2), scale = (v + m^2) / (y + m), lower.tail = FALSE) / e))
}
save(ff, "fay_feuer")

# Leaving rule: counts by minutes into a visit, the decline by glm, its profile limits and the
# leaving time by uniroot, none of which knows Lambert's W.
lv <- NULL; bins <- NULL
for (i in 1:12) {
  moving <- c(4, 12, 25)[1 + i %% 3]; phi <- c(1, 1, 1.4)[1 + i %% 3]
  lengths <- round(runif(3 + i %% 3, 15, 70), 1)
  minute <- unlist(lapply(lengths, function(l) seq_len(ceiling(l)) - 1))
  hours <- unlist(lapply(lengths, function(l) pmin(1, l - (seq_len(ceiling(l)) - 1)))) / 60
  middle <- minute + hours * 30
  count <- rpois(length(middle), c(14, 25)[1 + i %% 2] * exp(-c(log(2) / 40, log(2) / 90)[1 + i %% 2] * middle) * hours)
  bins <- rbind(bins, data.frame(set = i, middle = middle, hours = hours, count = count))
  fit <- glm(count ~ middle + offset(log(hours)), family = poisson, control = list(epsilon = 1e-14, maxit = 100))
  flat <- glm(count ~ 1 + offset(log(hours)), family = poisson, control = list(epsilon = 1e-14, maxit = 100))
  decay <- -unname(coef(fit)[2])
  profile <- function(c) deviance(glm(count ~ 1 + offset(log(hours) - c * middle), family = poisson,
    control = list(epsilon = 1e-14, maxit = 100)))
  limit <- function(f, to) uniroot(function(c) (profile(c) - deviance(fit)) / f - qchisq(0.95, 1),
    c(decay, to), tol = 1e-14)$root
  p <- function(f) {
    half <- pchisq((deviance(flat) - deviance(fit)) / f, 1, lower.tail = FALSE) / 2
    if (decay > 0) half else 1 - half
  }
  # The longest stay for which what is still to come pays more than the whole round so far.
  leave <- function(c) if (c <= 0) NA else
    uniroot(function(x) exp(-c * x) - (1 - exp(-c * x)) / c / (x + moving), c(1e-9, 1e5), tol = 1e-13)$root
  low <- limit(1, decay - 0.5); high <- limit(1, decay + 0.5)
  wide_low <- limit(phi, decay - 0.5); wide_high <- limit(phi, decay + 0.5)
  lv <- rbind(lv, data.frame(set = i, visits = length(lengths), moving = moving, phi = phi,
    start = exp(unname(coef(fit)[1])), decay = decay, decay_low = low, decay_high = high,
    p = p(1), p_wide = p(phi), leave = leave(decay), leave_low = leave(high), leave_high = leave(low),
    wide_low = leave(wide_high), wide_high = leave(wide_low)))
}
save(bins, "leaving_bins"); save(lv, "leaving")
