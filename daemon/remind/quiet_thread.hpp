// Threads that no signal reaches: SIGTERM and its kin belong to the main thread, and a SIGPIPE raised by a
// TLS library writing to a closed connection must become an error there, not the end of the daemon.
#pragma once

#include <csignal>
#include <functional>
#include <thread>

namespace nutward::remind {

inline std::thread quiet_thread(std::function<void()> run) {
  sigset_t all, before;
  sigfillset(&all);
  pthread_sigmask(SIG_SETMASK, &all, &before); // a new thread inherits the mask
  try {
    std::thread thread(std::move(run));
    pthread_sigmask(SIG_SETMASK, &before, nullptr);
    return thread;
  } catch (...) {
    pthread_sigmask(SIG_SETMASK, &before, nullptr);
    throw;
  }
}

} // namespace nutward::remind
