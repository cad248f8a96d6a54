// Asks for a stop after some seconds, unless it goes before that.
#pragma once

#include <chrono>
#include <condition_variable>
#include <mutex>
#include <thread>

namespace nutward::bench {

class StopAfter {
public:
  explicit StopAfter(double seconds)
      : thread_([this, seconds](const std::stop_token& gone) {
          std::unique_lock lock(mutex_);
          if (!wake_.wait_for(lock, gone, std::chrono::duration<double>(seconds), [] { return false; }) &&
              !gone.stop_requested())
            source_.request_stop();
        }) {}
  std::stop_token token() const { return source_.get_token(); }

private:
  std::stop_source source_;
  std::mutex mutex_;
  std::condition_variable_any wake_;
  std::jthread thread_;
};

} // namespace nutward::bench
