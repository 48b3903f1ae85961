// SPDX-License-Identifier: MIT
#include "cover_oracle.h"

#include <glpk.h>

#include <cmath>
#include <map>
#include <set>
#include <string>

namespace dunnage {

namespace {

using Terms = std::map<int, double>;

class Oracle {
 public:
  explicit Oracle(const Catalogue& c) : c_(c), lp_(glp_create_prob()) {
    for (std::size_t u = 0; u < c.units.size(); ++u) unit_.push_back(goes(static_cast<int>(u)) ? 0 : column(1));
    for (std::size_t u = 0; u < c.units.size(); ++u)
      if (unit_[u] > 0) call_needs(static_cast<int>(u));
  }
  ~Oracle() { glp_delete_prob(lp_); }
  Oracle(const Oracle&) = delete;
  Oracle& operator=(const Oracle&) = delete;

  void ask(const Demand& d) {
    if (d.way == Way::measured) {
      Terms sum = {{missed(d.count), 1}};
      for (const int i : c_.items_serving(d.what))
        if (item(i).each) {
          const int metres = column(d.count);
          sum[metres] = 1;
          measure_[i][metres] += 1;
        }
      row(sum, d.count, d.count);
      return;
    }
    for (int n = 0; n < d.count; ++n) ask_one(d.what, d.way, d.length, d.bears, {{missed(1), 1}}, 1);
  }

  OracleAnswer solve() {
    for (const auto& [i, used] : pieces_) supply(used, [&](int u) { return holds(u, i); });
    for (auto& [i, used] : measure_)
      supply(used, [&](int u) { return holds(u, i) * (item(i).each ? item(i).each->value / unit::metre : 0); });
    for (const auto& [k, used] : cases_) supply(used, [&](int u) { return of(u) == k ? 1.0 : 0.0; });
    OracleAnswer out;
    Terms missing, unknown, mass;
    for (const int m : missing_) missing[m] = 1;
    for (std::size_t u = 0; u < unit_.size(); ++u)
      if (unit_[u] > 0) {
        const UnitMass m = c_.mass_of(static_cast<int>(u));
        (m.known ? mass : unknown)[unit_[u]] = m.known ? std::round(m.mass / unit::gram) : 1;
      }
    double best = 0;
    if (!least(missing, best)) return out;
    out.missing = std::lround(best);
    if (!least(unknown, best)) return out;
    out.unweighed = std::lround(best);
    if (!least(mass, best)) return out;
    out.kg = best / 1000;
    out.solved = true;
    return out;
  }

 private:
  const Item& item(int i) const { return c_.kit.items[static_cast<std::size_t>(i)]; }
  const Case& box(int k) const { return c_.kit.cases[static_cast<std::size_t>(k)]; }
  int of(int u) const { return c_.units[static_cast<std::size_t>(u)].case_index; }
  bool goes(int u) const { return box(of(u)).goes.kind == Goes::Kind::always; }
  double holds(int u, int i) const {
    double sum = 0;
    for (const Content& content : box(of(u)).holds)
      if (c_.item_index(content.item.value) == i) sum += content.count;
    return sum;
  }

  int column(double most) {
    const int j = glp_add_cols(lp_, 1);
    glp_set_col_kind(lp_, j, GLP_IV);
    if (most > 0)
      glp_set_col_bnds(lp_, j, GLP_DB, 0, most);
    else
      glp_set_col_bnds(lp_, j, GLP_FX, 0, 0);
    return j;
  }
  int missed(double most) {
    missing_.push_back(column(most));
    return missing_.back();
  }
  void row(const Terms& terms, double low, double high) {
    std::vector<int> index = {0};
    std::vector<double> value = {0};
    for (const auto& [j, a] : terms) {
      index.push_back(j);
      value.push_back(a);
    }
    const int r = glp_add_rows(lp_, 1);
    const int kind = low == high ? GLP_FX : std::isinf(high) ? GLP_LO : std::isinf(low) ? GLP_UP : GLP_DB;
    glp_set_row_bnds(lp_, r, kind, low, high);
    glp_set_mat_row(lp_, r, static_cast<int>(terms.size()), index.data(), value.data());
  }

  template <class Of>
  void supply(Terms used, const Of& of_unit) {
    double there = 0;
    for (std::size_t u = 0; u < unit_.size(); ++u) {
      const double each = of_unit(static_cast<int>(u));
      if (unit_[u] == 0)
        there += each;
      else if (each != 0)
        used[unit_[u]] -= each;
    }
    row(used, -INFINITY, there);
  }

  /// One piece, served where `asked` columns (1 where it is not) come to `low`.
  void ask_one(const std::string& what, Way way, const Maybe<Length>& length, const Maybe<Mass>& bears, Terms asked,
               double low) {
    const double reach = length ? length->value / unit::metre : 0;
    if (way == Way::laid) {
      Terms laid;
      for (const auto& [j, a] : asked) laid[j] = a * reach;
      const auto fit = [&](const Maybe<Mass>& rating) { return !bears || (rating && rating->value >= bears->value); };
      for (const int i : c_.items_serving(what))
        if (item(i).length && fit(item(i).rating)) take_piece(i, laid, item(i).length->value / unit::metre);
      for (const int k : c_.cases_serving(what))
        if (box(k).length && fit(box(k).rating)) {
          const int n = column(1000);
          cases_[k][n] += 1;
          laid[n] += box(k).length->value / unit::metre;
        }
      row(laid, reach * low - 1e-7, INFINITY);
      return;
    }
    for (const int i : c_.items_serving(what))
      if (!length || (item(i).length && item(i).length->value / unit::metre >= reach - 1e-7)) {
        const int n = column(1000);
        asked[n] += 1;
        use(i, n, 1);
      }
    for (const int k : c_.cases_serving(what))
      if (!length || (box(k).length && box(k).length->value / unit::metre >= reach - 1e-7)) {
        const int n = column(1000);
        asked[n] += 1;
        cases_[k][n] += 1;
      }
    if (length) ask_joined(what, reach, asked);
    row(asked, low, INFINITY);
  }

  void use(int i, int column, double count) {
    pieces_[i][column] += count;
    if (item(i).each) measure_[i][column] += count * (item(i).each->value / unit::metre);
  }
  int take_piece(int i, Terms& sum, double each) {
    const int n = column(1000);
    use(i, n, 1);
    sum[n] += each;
    return n;
  }

  /// Up to four pieces that join alike.
  void ask_joined(const std::string& what, double reach, Terms& asked) {
    std::set<std::string> ways;
    for (const int i : c_.items_serving(what))
      if (item(i).length && item(i).joins) ways.insert(item(i).joins->value);
    for (const std::string& way : ways) {
      const int joined = column(1), joint = way == "itself" ? -1 : c_.item_index(way);
      Terms reaches = {{joined, -reach}}, few = {{joined, -4}};
      for (const int i : c_.items_serving(what)) {
        if (!item(i).length || !item(i).joins || item(i).joins->value != way) continue;
        const int n = take_piece(i, reaches, item(i).length->value / unit::metre);
        few[n] = 1;
        if (joint >= 0) use(joint, n, 1);
      }
      if (joint >= 0) use(joint, joined, -1);
      row(reaches, -1e-7, INFINITY);
      row(few, -INFINITY, 0);
      asked[joined] += 1;
    }
  }

  /// What is needed goes as far as there is any.
  void lacking_only_where_all_go(int k, int lacks, double most) {
    for (std::size_t u = 0; u < unit_.size(); ++u)
      if (of(static_cast<int>(u)) == k && unit_[u] > 0) row({{unit_[u], most}, {lacks, -1}}, 0, INFINITY);
  }

  void call_needs(int u) {
    for (const Need& need : box(of(u)).needs) {
      const int k = c_.case_index(need.code.value);
      if (k == of(u)) continue;
      for (int n = 0; n < need.each; ++n) {
        const int lacks = missed(1);
        if (k >= 0) {
          cases_[k][unit_[static_cast<std::size_t>(u)]] += 1;
          cases_[k][lacks] -= 1;
          lacking_only_where_all_go(k, lacks, 1);
        } else {
          ask_one(need.code.value, Way::each, {}, {}, {{lacks, 1}, {unit_[static_cast<std::size_t>(u)], -1}}, 0);
        }
      }
      if (need.once == 0) continue;
      const bool fresh = any_.count(of(u)) == 0;
      if (fresh) any_[of(u)] = column(1);
      const int any = any_[of(u)];
      row({{unit_[static_cast<std::size_t>(u)], 1}, {any, -1}}, -INFINITY, 0);
      if (!called_.insert({of(u), &need}).second) continue;
      if (k >= 0) {
        const int lacks = missed(need.once);
        lacking_only_where_all_go(k, lacks, need.once);
        Terms in_all = {{any, need.once}, {lacks, -1}};
        supply(in_all, [&](int other) { return of(other) == k ? 1.0 : 0.0; });
      } else {
        for (int n = 0; n < need.once; ++n) ask_one(need.code.value, Way::each, {}, {}, {{missed(1), 1}, {any, -1}}, 0);
      }
    }
  }

  bool least(const Terms& cost, double& best) {
    best = 0;
    for (int j = 1; j <= glp_get_num_cols(lp_); ++j) glp_set_obj_coef(lp_, j, 0);
    for (const auto& [j, a] : cost) glp_set_obj_coef(lp_, j, a);
    glp_iocp how;
    glp_init_iocp(&how);
    how.presolve = GLP_ON;
    how.msg_lev = GLP_MSG_OFF;
    how.tm_lim = 20'000;  // then this one kit proves nothing
    if (glp_intopt(lp_, &how) != 0 || glp_mip_status(lp_) != GLP_OPT) return false;
    best = std::round(glp_mip_obj_val(lp_));
    if (!cost.empty()) row(cost, -INFINITY, best + 0.5);
    return true;
  }

  const Catalogue& c_;
  glp_prob* lp_;
  std::vector<int> unit_;  ///< column by unit; 0: it goes anyway
  std::vector<int> missing_;
  std::map<int, Terms> pieces_, measure_, cases_;
  std::map<int, int> any_;
  std::set<std::pair<int, const Need*>> called_;
};

}  // namespace

OracleAnswer best_cover(const Catalogue& catalogue, const std::vector<Demand>& demands) {
  glp_term_out(GLP_OFF);
  Oracle oracle(catalogue);
  for (const Demand& demand : demands) oracle.ask(demand);
  return oracle.solve();
}

}  // namespace dunnage
