// The best plan that can be found for some slots from some supply.
#pragma once

#include "cutting/draft.hpp"

namespace nutward::cutting {

struct Found {
  Draft draft;
  Cost bound; // of serving these slots; counts as Plan::bound does
};

// Exactly where that is affordable. `ranks`: the due ranks that costs count by.
Found search(const Problem& problem, const std::vector<std::size_t>& slots, const Supply& supply,
             const std::vector<int>& ranks, Chance& chance, Meter& meter);

// For any number of slots.
Found search_largely(const Problem& problem, const std::vector<std::size_t>& slots, const Supply& supply,
                     const std::vector<int>& ranks, Chance& chance, Meter& meter);

// Serves all of `slots` that it can at once, without regard to ranks: the tin first, then new wire. `round`:
// 0 for the plain order, others vary it.
Draft construct(const Problem& problem, const std::vector<std::size_t>& slots, const Supply& supply,
                int round, Chance& chance, Meter& meter);

// Serves the earliest due where there is not enough for all.
Draft serve_earliest(const Problem& problem, const std::vector<std::size_t>& slots, const Supply& supply,
                     Chance& chance, Meter& meter);

// Serves one slot after another from what still has room: pieces, then what is being cut, then new wire.
// `supply`: all there is, with what the draft uses.
void glean(const Problem& problem, const std::vector<std::size_t>& slots, const Supply& supply, Draft& draft,
           Meter& meter);

// Serves what it can of the unserved from what nothing uses yet, then from the room that is left beside what
// is cut, with a few steps of its own: no plan leaves wire lying that a slot goes without, however early the
// steps ran out. Where it is not enough, the earliest due come first.
void use_the_rest(const Problem& problem, const Supply& supply, const std::vector<int>& ranks, Chance& chance,
                  Draft& draft);

// Re-plans a few cuttings and unserved slots at a time, exactly, as long as the meter lasts.
void improve(const Problem& problem, const Supply& supply, const std::vector<int>& ranks, Draft& draft,
             Chance& chance, Meter& meter);

} // namespace nutward::cutting
