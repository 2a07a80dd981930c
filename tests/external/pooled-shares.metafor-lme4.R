# Writes pooled-shares.metafor-lme4.json: what metafor and lme4 say of five sets of counts. Run it by hand, from this
# folder, when the sets change: Rscript pooled-shares.metafor-lme4.R > pooled-shares.metafor-lme4.json, then npm run format
suppressMessages({ library(metafor); library(lme4) })

sets <- list(
  # Published sets that come with metadat.
  debruin2009 = with(dat.debruin2009, list(events = xi, people = ni)),
  pritz1997 = with(dat.pritz1997, list(events = xi, people = ni)),
  # Infections in the control groups of dat.nielweise2007: few events, several groups without any.
  nielweise2007 = with(dat.nielweise2007, list(events = ci, people = n2i)),
  # Invented: rare events in groups of very unequal size.
  unequal = list(events = c(0, 3, 2, 640, 1, 0), people = c(20, 1450, 521, 370369, 45, 31)),
  # Invented: no more difference than chance makes.
  alike = list(events = c(5, 11, 8, 21), people = c(100, 200, 160, 400))
)

number <- function(x) formatC(x, digits = 12, format = "g")
json <- function(names, values) paste0("{", paste0("\"", names, "\": ", values, collapse = ", "), "}")
row <- function(x) paste0("[", paste(x, collapse = ", "), "]")

one <- function(set) {
  model <- suppressMessages(suppressWarnings(
    rma.glmm(measure = "PLO", xi = set$events, ni = set$people, nAGQ = 25)))
  expected <- predict(model, transf = transf.ilogit)
  direct <- suppressMessages(suppressWarnings(glmer(
    cbind(set$events, set$people - set$events) ~ 1 + (1 | study),
    data = data.frame(study = factor(seq_along(set$events))), family = binomial, nAGQ = 25)))
  json(
    c("events", "people", "value", "low", "high", "tau2", "expectedLow", "expectedHigh", "heterogeneity",
      "lme4Value", "lme4Tau2"),
    c(row(set$events), row(set$people),
      sapply(c(expected$pred, expected$ci.lb, expected$ci.ub, model$tau2, expected$pi.lb, expected$pi.ub, model$I2,
               transf.ilogit(fixef(direct)[[1]]), VarCorr(direct)$study[[1]]), number)))
}

cat("{\n  \"made_by\": \"", R.version.string, "; metafor ", as.character(packageVersion("metafor")), "; lme4 ",
    as.character(packageVersion("lme4")), "; rma.glmm(measure = PLO, nAGQ = 25), glmer(nAGQ = 25)\",\n", sep = "")
cat(paste0("  \"", names(sets), "\": ", sapply(sets, one), collapse = ",\n"), "\n}\n", sep = "")
