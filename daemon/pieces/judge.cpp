#include "pieces/fit.hpp"

#include <algorithm>

namespace nutward::pieces {

namespace {

// What can be made of a length, before crown and waste are looked at.
struct Made {
  Length longest; // the longest finish
  Length finish;
  int ends_to_dress = 0;
  bool near_limit = false;
  bool perhaps_dress_one = false;
};

bool within(Length a, Length limit, Length error) {
  return units::abs(a - limit) <= error;
}

// The longest dressed piece that is still tried as it is. Where dressing one end cures a piece over `most`
// that is `most` itself. Where it would leave the piece too short, one just over `most` is tried untouched.
Length longest_untouched(const Need& need, const FitSettings& s, bool curable) {
  if (curable) return *need.most;
  return std::min(*need.most + s.borderline, need.least + s.dressing_loss - Length{1});
}

Made make_rounded(Length length, int raw_ends, const Need& need, const FitSettings& s) {
  const bool curable = need.least + s.dressing_loss <= *need.most;
  if (raw_ends == 0 && length <= longest_untouched(need, s, curable)) {
    const bool near_most = within(length, *need.most, s.borderline);
    return {length, length, 0, within(length, need.least, s.borderline) || (near_most && !curable),
            near_most && curable};
  }
  const int ends = std::max(raw_ends, 1);
  const Length longest = length - ends * s.dressing_loss;
  // A dressed piece that only just reaches `least` with one more dressing would have gone in untouched if it
  // were a little shorter: its limit is no limit where the two ranges meet.
  const bool limited = raw_ends > 0 || !curable;
  return {longest, std::min(longest, need.target), ends, limited && within(longest, need.least, s.borderline),
          false};
}

Made make_filed(Length length, const Need& need, const FitSettings& s) {
  return {length, std::min(length, need.cut), 0, within(length, need.least, s.borderline), false};
}

bool crowns_differ(const PieceFacts& piece, const Wanted& wanted, const FitSettings& s) {
  return piece.crown_height && wanted.crown_height &&
         units::abs(*piece.crown_height - *wanted.crown_height) > s.crown_tolerance;
}

struct Tang {
  Length to_nip;
  Length short_by;
};

// The tang of a piece that is finished to `finish`.
Tang tang_of(const PieceFacts& piece, Length finish, const Need& need, const FitSettings& s) {
  const Length tang = std::min(piece.tang.value_or(finish), finish);
  if (!need.tang) {
    const Length reach = need.style == EndStyle::rounded ? need.least : need.arc;
    return {{}, std::max(Length{}, std::min(reach, finish) - tang)};
  }
  const Length crown = std::min(finish, need.arc);
  const Length least = std::min(*need.tang, crown - 2 * s.crown_overhang);
  const Length over = tang - *need.tang;
  return {over > s.borderline ? over : Length{}, std::max(Length{}, least - tang)};
}

Outcome outcome_of(const Verdict& v, const Made& made, const Need& need, const FitSettings& s) {
  if (made.longest < need.least && !made.near_limit) return Outcome::too_short;
  if (v.tang_short_by > Length{}) return Outcome::tang_short;
  if (v.trim > s.trim_limit && !v.leaves) return Outcome::wasteful;
  return made.near_limit ? Outcome::borderline : Outcome::fits;
}

} // namespace

Verdict judge(const PieceFacts& piece, const Wanted& wanted, const FitSettings& s) {
  const Need& need = wanted.need;
  const bool rounded = need.style == EndStyle::rounded;
  const Made made =
      rounded ? make_rounded(piece.length, piece.raw_ends, need, s) : make_filed(piece.length, need, s);
  Verdict v;
  v.finish = made.finish;
  v.trim = piece.length - made.finish;
  v.nip = v.trim - made.ends_to_dress * s.dressing_loss;
  v.off_target = units::abs(made.finish - need.target);
  v.short_by = std::max(Length{}, need.least - made.longest);
  v.ends_to_dress = made.ends_to_dress;
  const Tang tang = tang_of(piece, made.finish, need, s);
  v.tang_to_nip = tang.to_nip;
  v.tang_short_by = tang.short_by;
  v.untouched = v.trim == Length{} && made.ends_to_dress == 0 && tang.to_nip == Length{};
  v.perhaps_dress_one = made.perhaps_dress_one;
  v.less_overhang = !rounded && piece.length < need.cut;
  const Length remains = piece.length - need.cut - s.nip_loss;
  if (wanted.another && remains >= *wanted.another) v.leaves = remains;
  v.outcome = crowns_differ(piece, wanted, s) ? Outcome::crown_differs : outcome_of(v, made, need, s);
  return v;
}

Rank rank(const PieceFacts& piece, const Verdict& verdict, const Wanted& wanted) {
  const bool other_lot = wanted.lot && piece.lot != *wanted.lot;
  return {verdict.outcome,
          verdict.trim,
          verdict.off_target,
          verdict.ends_to_dress,
          verdict.tang_to_nip > Length{},
          other_lot,
          piece.added,
          piece.id};
}

} // namespace nutward::pieces
