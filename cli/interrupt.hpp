// Ctrl-C while the client waits: for the daemon, for an answer, for a line.
#pragma once

namespace nutward::cli {

// While one lives, SIGINT ends no process: it interrupts the system call under way and is remembered. At most
// one at a time; what SIGINT did before comes back with its end.
class Interruptible {
public:
  Interruptible();
  ~Interruptible();
  Interruptible(const Interruptible&) = delete;
  Interruptible& operator=(const Interruptible&) = delete;
};

// SIGINT came since the Interruptible began, or since `forget_interrupt`. Always false without one.
bool interrupted();
void forget_interrupt();

} // namespace nutward::cli
