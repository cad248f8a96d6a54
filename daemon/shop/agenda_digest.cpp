// What a plan of the agenda follows from. The members are taken apart by name, so that a new one that is left
// out here does not compile.
#include "shop/agenda_input.hpp"

#include <openssl/evp.h>

#include <fmt/format.h>

#include <array>
#include <stdexcept>
#include <type_traits>

namespace nutward::shop {

namespace {

// One more where the same problem is planned otherwise, and what is stored shall not stand for it.
constexpr std::int64_t manner = 1;

class Bytes {
public:
  void put(std::int64_t number) {
    auto left = static_cast<std::uint64_t>(number);
    for (int i = 0; i < 8; ++i, left >>= 8)
      all_ += static_cast<char>(left & 0xff);
  }
  void put(units::Instant v) { put(v.s); }
  void put(std::chrono::seconds v) { put(std::int64_t{v.count()}); }
  void put(const std::string& v) {
    put(static_cast<std::int64_t>(v.size()));
    all_ += v;
  }
  template <class E>
  requires(std::is_enum_v<E> || std::is_same_v<E, bool> || std::is_same_v<E, int> ||
           std::is_same_v<E, std::size_t>) void put(E v) {
    put(static_cast<std::int64_t>(v));
  }
  template <class T>
  void put(const std::optional<T>& v) {
    put(v.has_value());
    if (v) put(*v);
  }
  template <class T>
  void put(const std::vector<T>& list) {
    put(list.size());
    for (const T& one : list)
      put(one);
  }
  template <class... T>
  requires(sizeof...(T) > 1) void put(const T&... each) { (put(each), ...); }

  void put(const agenda::Window& v) { put(v.from, v.to); }
  void put(const agenda::Unit& v) {
    const auto& [open, shared, set_up_for] = v;
    put(open, shared, set_up_for);
  }
  void put(const agenda::Fixed& v) {
    const auto& [start, end, units] = v;
    put(start, end, units);
  }
  void put(const agenda::Task& v) {
    const auto& [work, needs, pause, set_up, set_up_work, lags_from, least, most, limit, not_before, fixed,
                 was] = v;
    static_cast<void>(was);
    put(work, needs, pause, set_up, set_up_work, lags_from, least, most, limit, not_before, fixed);
  }
  void put(const agenda::Job& v) {
    const auto& [tasks, release, due, weight, after] = v;
    put(tasks, release, due, weight, after);
  }
  void put(const agenda::DayLimit& v) {
    const auto& [from, limit] = v;
    put(from, limit);
  }
  void put(const agenda::Problem& v) {
    const auto& [from, until, units, jobs, limits, goal, keep_busy, worth] = v;
    static_cast<void>(from);
    put(until, units, jobs, limits, goal, keep_busy, worth);
  }
  void put(const AgendaUnit& v) {
    const auto& [machine, number, person] = v;
    put(machine, number, person);
  }
  void put(const AgendaTask& v) {
    const auto& [stage, recheck, booking] = v;
    put(stage, recheck, booking);
  }
  void put(const AgendaJob& v) {
    const auto& [job, tasks] = v;
    put(job, tasks);
  }
  const std::string& all() const { return all_; }

private:
  std::string all_;
};

} // namespace

std::string agenda_digest(const AgendaInput& input) {
  Bytes bytes;
  bytes.put(manner);
  const auto& [problem, units, jobs] = input;
  bytes.put(problem);
  bytes.put(units);
  bytes.put(jobs);
  std::array<unsigned char, EVP_MAX_MD_SIZE> digest{};
  unsigned int size = 0;
  if (EVP_Digest(bytes.all().data(), bytes.all().size(), digest.data(), &size, EVP_sha256(), nullptr) != 1)
    throw std::runtime_error("SHA-256 is not there");
  std::string out;
  for (unsigned int i = 0; i < size; ++i)
    out += fmt::format("{:02x}", digest.at(i));
  return out;
}

} // namespace nutward::shop
