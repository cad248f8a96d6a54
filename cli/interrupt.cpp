#include "cli/interrupt.hpp"

#include <csignal>

namespace nutward::cli {
namespace {

volatile std::sig_atomic_t came = 0;
struct sigaction before {};

void remember(int) {
  came = 1;
}

} // namespace

Interruptible::Interruptible() {
  came = 0;
  struct sigaction action {};
  action.sa_handler = remember; // without SA_RESTART: what waits shall notice
  ::sigaction(SIGINT, &action, &before);
}

Interruptible::~Interruptible() {
  ::sigaction(SIGINT, &before, nullptr);
  came = 0;
}

bool interrupted() {
  return came != 0;
}

void forget_interrupt() {
  came = 0;
}

} // namespace nutward::cli
