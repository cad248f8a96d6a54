// The file of the owner's token where the system fails: nothing of the secret is left beside it, and the
// reason is the system's own. The kernel is made to fail by a limit (setrlimit(2)) and a filter (seccomp(2)).
#include "serve/served.hpp"

#include <cerrno>
#include <csignal>
#include <cstddef>
#include <filesystem>
#include <linux/filter.h>
#include <linux/seccomp.h>
#include <sys/prctl.h>
#include <sys/resource.h>
#include <sys/syscall.h>
#include <thread>

using namespace nutward::test;

namespace {

std::string said(Served& served, const std::filesystem::path& file) {
  try {
    served.people.keep_token_file(file);
  } catch (const Problem& problem) {
    return problem.text;
  }
  return "taken";
}

// On this thread renaming fails with EIO from here on.
bool without_rename() {
  constexpr auto number = static_cast<std::uint32_t>(offsetof(seccomp_data, nr));
  std::vector<sock_filter> filter{{BPF_LD | BPF_W | BPF_ABS, 0, 0, number}};
  for (const std::uint32_t call : {
#ifdef SYS_rename
           static_cast<std::uint32_t>(SYS_rename),
#endif
#ifdef SYS_renameat
           static_cast<std::uint32_t>(SYS_renameat),
#endif
           static_cast<std::uint32_t>(SYS_renameat2)}) {
    filter.push_back({BPF_JMP | BPF_JEQ | BPF_K, 0, 1, call});
    filter.push_back({BPF_RET | BPF_K, 0, 0, SECCOMP_RET_ERRNO | EIO});
  }
  filter.push_back({BPF_RET | BPF_K, 0, 0, SECCOMP_RET_ALLOW});
  const sock_fprog program{static_cast<unsigned short>(filter.size()), filter.data()};
  return ::prctl(PR_SET_NO_NEW_PRIVS, 1, 0, 0, 0) == 0 &&
         ::prctl(PR_SET_SECCOMP, SECCOMP_MODE_FILTER, &program) == 0;
}

} // namespace

TEST_CASE("a token's file that is cut short leaves nothing behind, and says why") {
  Served served;
  const auto file = served.made.home() / "http.token";
  served.people.user(owner); // now, since nothing can be stored below
  rlimit before{};
  REQUIRE(::getrlimit(RLIMIT_FSIZE, &before) == 0);
  const auto signal_before = std::signal(SIGXFSZ, SIG_IGN);
  const rlimit ten{10, before.rlim_max};
  REQUIRE(::setrlimit(RLIMIT_FSIZE, &ten) == 0);
  errno = ENOENT; // of something else
  const std::string why = said(served, file);
  ::setrlimit(RLIMIT_FSIZE, &before);
  std::signal(SIGXFSZ, signal_before);
  CHECK(why == "The token's file " + file.string() + " cannot be used: File too large.");
  CHECK_FALSE(std::filesystem::exists(file));
  CHECK_FALSE(std::filesystem::exists(file.string() + ".new"));
  CHECK(served.people.keep_token_file(file));
}

TEST_CASE("a token's file that cannot be put in place leaves nothing behind") {
  Served served;
  const auto file = served.made.home() / "http.token";
  served.people.user(owner);
  bool filtered = false;
  std::string why;
  std::thread([&] {
    filtered = without_rename();
    if (filtered) why = said(served, file);
  }).join();
  if (!filtered) {
    WARN("this system takes no filter");
    return;
  }
  CHECK(why == "The token's file " + file.string() + " cannot be used: Input/output error.");
  CHECK_FALSE(std::filesystem::exists(file));
  CHECK_FALSE(std::filesystem::exists(file.string() + ".new"));
  CHECK(served.people.keep_token_file(file));
}
