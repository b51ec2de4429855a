# Works the figures of quizzes out again by R's own functions, and says where core/teach has others. The form of what is
# read stands in oracle_quizzes.cpp.
input <- file("stdin")
lines <- strsplit(readLines(input), " ")
close(input)
compared <- 0
without <- 0
wrong <- 0

check <- function(quiz, what, ours, theirs) {
  ours <- suppressWarnings(as.numeric(ours))
  compared <<- compared + 1
  if (is.na(ours) && !is.finite(theirs)) {
    without <<- without + 1
  } else if (is.na(ours) || !is.finite(theirs) || abs(ours - theirs) > 1e-9 * max(1, abs(theirs))) {
    wrong <<- wrong + 1
    cat(sprintf("quiz %d: %s is %s here and %s by R\n", quiz, what, ours, theirs))
  }
}

# Pearson's coefficient; NA where one of the two doesn't vary.
correlation <- function(x, y) {
  if (length(x) < 2 || diff(range(x)) < 1e-12 || diff(range(y)) < 1e-12) NA else cor(x, y)
}

# Cronbach's alpha; of noughts and ones KR-20.
alpha <- function(items) {
  k <- ncol(items)
  total <- rowSums(items)
  if (nrow(items) < 2 || k < 2 || diff(range(total)) < 1e-12) return(NA)
  k / (k - 1) * (1 - sum(apply(items, 2, var)) / var(total))
}

kr21 <- function(right) {
  n <- nrow(right)
  k <- ncol(right)
  total <- rowSums(right)
  if (n < 2 || k < 2 || diff(range(total)) == 0) return(NA)
  variance <- var(total) * (n - 1) / n
  k / (k - 1) * (1 - mean(total) * (k - mean(total)) / (k * variance))
}

quiz <- 0
for (line in lines) {
  word <- line[1]
  if (word == "quiz") {
    quiz <- quiz + 1
    k <- as.integer(line[3])
    people <- matrix(numeric(0), 0, 3 * k)
    ready <- FALSE
  } else if (word == "person") {
    people <- rbind(people, as.numeric(line[-1]))
  } else {
    if (!ready) {
      right <- people[, 1:k, drop = FALSE]
      score <- people[, k + 1:k, drop = FALSE]
      chosen <- people[, 2 * k + 1:k, drop = FALSE]
      total <- rowSums(right)
      ready <- TRUE
    }
    if (word == "paper") {
      theirs <- switch(line[2], mean = mean(total), deviation = sd(total), kr20 = alpha(right), kr21 = kr21(right),
                       alpha = alpha(score), error = sd(total) * sqrt(1 - alpha(right)))
      check(quiz, line[2], line[3], theirs)
    } else if (word == "passed") {
      interval <- suppressWarnings(prop.test(as.integer(line[2]), as.integer(line[3]), correct = FALSE))$conf.int
      check(quiz, "low", line[4], interval[1])
      check(quiz, "high", line[5], interval[2])
    } else if (word == "question") {
      i <- as.integer(line[2])
      theirs <- switch(line[3], difficulty = mean(right[, i]), total = correlation(right[, i], total),
                       rest = if (k == 1) NA else correlation(right[, i], total - right[, i]))
      check(quiz, paste("question", i, line[3]), line[4], theirs)
    } else if (word == "pull") {
      i <- as.integer(line[2])
      taken <- as.numeric(chosen[, i] == as.integer(line[3]))
      check(quiz, paste("pull", i, line[3]), line[4], if (k == 1) NA else correlation(taken, total - right[, i]))
    }
  }
}
cat(sprintf("%d quizzes: %d figures compared, %d times both say that there is none, %d differ\n", quiz, compared, without,
            wrong))
# A run that compared next to nothing has judged nothing.
if (wrong > 0 || compared < 10 * quiz || without == 0 || without > compared / 2) quit(status = 1)
