// The people of the shop: who they are, where they work, what is theirs to do, and that somebody always
// leads.
#pragma once

#include "shop/bind.hpp"

#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <vector>

namespace nutward::shop {

std::string_view word_for(Role role); // "look", "bench", "lead"
// What somebody is called; "somebody" for an id that nobody has.
std::string name_of(std::int64_t actor, const View& view);
// The person that the argument means. Throws Problem{state} where `present` is wanted and they have retired.
Actor person_of(const Args& args, const View& view, bool present = true);

// Throws Problem{value} at `where` for what cannot be a name: empty, over 60 bytes, with characters that
// would not show, or a word that means the speaker or nobody.
std::string check_name(const std::string& text, std::string_view where);
// A bench, spelled as somebody who works there has it. Throws Problem{value} where nobody works at one that
// is called that.
std::string bench_of(const std::string& text, const View& view);

// Who leads, retired ones left out. Who has a uid can come in.
struct Leads {
  std::int64_t all = 0, can_come_in = 0;
};
Leads leads(const View& view);
// Throws Problem{state} where nobody leads any more, or nobody who can come in, although somebody did
// `before`: a shop without a lead cannot get one again.
void keep_a_lead(const Leads& before, const View& now);
// Throws Problem{state} where one uid would be two people.
void keep_uids_apart(const View& view);
// What more than one person is called, whatever its capitals, or more than one receiver. Wires need no look:
// none is renamed or put back.
std::set<std::string> shared_names(const View& view);
// Throws Problem{state} where more is shared now than `before`.
void keep_names_apart(const std::set<std::string>& before, const View& now);

// Who may be given work: all of role bench, and who leads as well as works. Who only leads (the daemon's
// owner, who came in by a uid and did no more than that) does not, unless nobody else is there: a lead works
// who was named by hand and never came in, has a bench, hours of their own, a job or a booking, or has
// reported work.
std::vector<Actor> workers(const View& view);

// Where a job is done: its own bench, else its builder's; "" where nobody said.
std::string bench_of(const Job& job, const View& view);
// "Ines does it, at the window bench", "it is for the window bench", "nobody does it yet".
std::string who_does(const Job& job, const View& view);
// A job that falls to somebody: they do it, or it has no builder and is for the bench where they work.
bool falls_to(const Job& job, const Actor& person);
// The person's part of the queue, the job due first leading.
std::vector<Job> open_jobs_of(const Actor& person, const View& view);

} // namespace nutward::shop
