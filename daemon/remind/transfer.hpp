// One attempt as libcurl sees it. Lives on the deliverer's thread; private to remind/deliver.
#pragma once

#include "remind/deliver.hpp"

#include <curl/curl.h>

#include <array>
#include <memory>

namespace nutward::remind {

class Transfer {
public:
  // Throws BadUrl, or std::runtime_error for what else cannot be sent.
  Transfer(const Attempt& attempt, Deliverer::Done done, std::shared_ptr<const Policy> policy,
           const Limits& limits);
  Transfer(const Transfer&) = delete;
  Transfer& operator=(const Transfer&) = delete;

  CURL* handle() const { return easy_.get(); }
  Outcome outcome(CURLcode result) const;
  const Deliverer::Done& done() const { return done_; }

private:
  struct EasyCleanup {
    void operator()(CURL* easy) const { curl_easy_cleanup(easy); }
  };
  struct ListCleanup {
    void operator()(curl_slist* list) const { curl_slist_free_all(list); }
  };

  static curl_socket_t open_socket(void* self, curlsocktype purpose, curl_sockaddr* address);
  static std::size_t take_header(char* data, std::size_t one, std::size_t size, void* self);
  static std::size_t take_body(char* data, std::size_t one, std::size_t size, void* self);
  std::size_t count(std::size_t size);
  void add_header(const std::string& name, const std::string& value);
  void set_request(const Attempt& attempt);
  void set_bounds();
  std::string what_went_wrong(CURLcode result) const;

  Deliverer::Done done_;
  std::shared_ptr<const Policy> policy_;
  const Limits& limits_;
  Scheme scheme_;
  std::string body_; // libcurl reads it while sending
  std::string refused_;
  std::size_t received_ = 0;
  bool full_ = false;     // the answer went over its bound
  bool answered_ = false; // headers of a final answer are complete
  std::array<char, CURL_ERROR_SIZE> error_{};
  std::unique_ptr<curl_slist, ListCleanup> headers_;
  std::unique_ptr<CURL, EasyCleanup> easy_; // last: goes first, while what it points at is still there
};

} // namespace nutward::remind
