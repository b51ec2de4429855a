#pragma once
// An integer program: columns of whole or broken numbers, rows that must hold, and one sum to make as great
// as can be. All that is known of the solver (GLPK) is behind this.
#include <functional>
#include <memory>
#include <optional>
#include <span>
#include <vector>

namespace wm::match {

struct Term {
  int column = 0;
  double weight = 1;
};
using Values = std::vector<double>;  // one for each column

class Program {
 public:
  Program();
  ~Program();
  Program(const Program&) = delete;
  Program& operator=(const Program&) = delete;

  /// Columns are counted from 0; each lies between `least` and `most`.
  int column(double least, double most, bool whole);
  int columns() const;
  void row_at_most(std::span<const Term> terms, double most);
  void row_at_least(std::span<const Term> terms, double least);

  struct Search {
    /// Makes a whole answer of the values of a relaxed one, or not.
    std::function<std::optional<Values>(const Values& relaxed)> round;
    std::function<bool()> go_on;
    bool cuts = false;  // worth their time where relaxed answers are far from whole ones
  };
  struct Found {
    std::optional<Values> better;  // than what was begun with
    std::optional<double> bound;   // no answer's sum is more
  };
  /// The sum is a whole number at every answer. `begin` is an answer.
  Found most(std::span<const Term> sum, const Values& begin, const Search& search);

 private:
  struct Data;
  std::unique_ptr<Data> data_;
};

}  // namespace wm::match
