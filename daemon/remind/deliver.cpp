#include "remind/deliver.hpp"

#include "remind/quiet_thread.hpp"
#include "remind/transfer.hpp"

#include <atomic>
#include <deque>
#include <limits>
#include <mutex>
#include <thread>
#include <unordered_map>
#include <utility>

namespace nutward::remind {

namespace {

void set_up_libcurl_once() {
  static const CURLcode code =
      curl_global_init(CURL_GLOBAL_DEFAULT); // once in the process, whoever comes first
  if (code != CURLE_OK) throw std::runtime_error("libcurl cannot be set up, so no message can be sent.");
}

struct MultiCleanup {
  void operator()(CURLM* multi) const { curl_multi_cleanup(multi); }
};

} // namespace

struct Deliverer::Engine {
  struct Waiting {
    Attempt attempt;
    Done done;
    std::shared_ptr<const Policy> policy;
  };

  Engine(Policy first, Limits given)
      : limits(std::move(given)), policy(std::make_shared<const Policy>(std::move(first))),
        multi(curl_multi_init()) {
    if (!multi) throw std::runtime_error("libcurl cannot be set up, so no message can be sent.");
  }

  void run() noexcept;
  std::optional<Waiting> next();
  void begin_all();
  void begin(Waiting waiting);
  void finish_all();

  const Limits limits;
  std::mutex mutex;
  std::deque<Waiting> queue;            // guarded by mutex
  std::shared_ptr<const Policy> policy; // guarded by mutex
  std::atomic<bool> stopping{false};
  std::atomic<std::uint64_t> wakeups{0};
  std::unique_ptr<CURLM, MultiCleanup> multi;
  std::unordered_map<CURL*, std::unique_ptr<Transfer>> flying; // the thread's own
  std::thread thread;
};

std::optional<Deliverer::Engine::Waiting> Deliverer::Engine::next() {
  std::lock_guard lock(mutex);
  if (queue.empty() || flying.size() >= limits.in_flight) return std::nullopt;
  Waiting waiting = std::move(queue.front());
  queue.pop_front();
  return waiting;
}

void Deliverer::Engine::begin_all() {
  while (!stopping) {
    auto waiting = next();
    if (!waiting) return;
    begin(std::move(*waiting));
  }
}

void Deliverer::Engine::begin(Waiting waiting) {
  try {
    auto transfer =
        std::make_unique<Transfer>(waiting.attempt, waiting.done, std::move(waiting.policy), limits);
    CURL* easy = transfer->handle();
    if (curl_multi_add_handle(multi.get(), easy) != CURLM_OK)
      throw std::runtime_error("libcurl has no room for another attempt.");
    flying.emplace(easy, std::move(transfer));
  } catch (const std::exception& wrong) {
    Outcome outcome;
    outcome.error = wrong.what();
    waiting.done(outcome);
  }
}

void Deliverer::Engine::finish_all() {
  int left = 0;
  while (CURLMsg* message = curl_multi_info_read(multi.get(), &left)) {
    if (message->msg != CURLMSG_DONE) continue;
    CURL* easy = message->easy_handle;
    const CURLcode result = message->data.result; // read now: removing the handle frees the message
    curl_multi_remove_handle(multi.get(), easy);
    auto node = flying.extract(easy);
    const Outcome outcome = node.mapped()->outcome(result);
    const Done done = node.mapped()->done();
    node.mapped().reset(); // its socket is closed before anybody hears of it
    done(outcome);
    if (stopping) return;
  }
}

void Deliverer::Engine::run() noexcept {
  while (!stopping) {
    begin_all();
    int running = 0;
    curl_multi_perform(multi.get(), &running);
    const std::size_t before = flying.size();
    finish_all();
    // Places that became free may be taken by those who wait, before going to sleep.
    if (flying.size() < before) continue;
    // While transfers are under way libcurl wakes up in time for them by itself; otherwise only start() does.
    curl_multi_poll(multi.get(), nullptr, 0, std::numeric_limits<int>::max(), nullptr);
    ++wakeups;
  }
  for (const auto& [easy, transfer] : flying)
    curl_multi_remove_handle(multi.get(), easy);
  flying.clear();
}

Deliverer::Deliverer(Policy policy, Limits limits) {
  set_up_libcurl_once();
  engine_ = std::make_unique<Engine>(std::move(policy), std::move(limits));
  engine_->thread = quiet_thread([engine = engine_.get()] { engine->run(); });
}

Deliverer::~Deliverer() {
  engine_->stopping = true;
  curl_multi_wakeup(engine_->multi.get());
  engine_->thread.join();
}

void Deliverer::start(Attempt attempt, Done done) {
  {
    std::lock_guard lock(engine_->mutex);
    engine_->queue.push_back({std::move(attempt), std::move(done), engine_->policy});
  }
  curl_multi_wakeup(engine_->multi.get());
}

void Deliverer::set_policy(Policy policy) {
  auto next = std::make_shared<const Policy>(std::move(policy));
  std::lock_guard lock(engine_->mutex);
  engine_->policy = std::move(next);
}

std::uint64_t Deliverer::wakeups() const {
  return engine_->wakeups;
}

} // namespace nutward::remind
