#include "remind/transfer.hpp"

#include <fmt/format.h>
#include <sys/socket.h>

#include <algorithm>
#include <string_view>

namespace nutward::remind {

namespace {

constexpr std::size_t longest_url = 2000;
constexpr const char* remedy = "Give a URL as in https://host.example/path or http://192.168.1.20:8080/path.";

template <class T>
void set(CURL* easy, CURLoption option, T value) {
  const CURLcode code = curl_easy_setopt(easy, option, value);
  if (code != CURLE_OK)
    throw std::runtime_error(
        fmt::format("libcurl refuses option {}: {}.", static_cast<int>(option), curl_easy_strerror(code)));
}

bool printable(std::string_view text) {
  return std::all_of(text.begin(), text.end(), [](char c) { return c >= 0x20 && c <= 0x7e; });
}

struct Url {
  CURLU* handle = curl_url();
  Url() {
    if (handle == nullptr) throw std::bad_alloc();
  }
  Url(const Url&) = delete;
  Url& operator=(const Url&) = delete;
  ~Url() { curl_url_cleanup(handle); }
  std::string part(CURLUPart which) const {
    char* text = nullptr;
    if (curl_url_get(handle, which, &text, 0) != CURLUE_OK) return "";
    std::string out(text);
    curl_free(text);
    return out;
  }
};

} // namespace

Scheme check_url(const std::string& url) {
  if (url.size() > longest_url)
    throw BadUrl(fmt::format("The URL is longer than {} bytes.", longest_url), remedy);
  Url parsed;
  const CURLUcode code = curl_url_set(parsed.handle, CURLUPART_URL, url.c_str(), 0);
  if (code == CURLUE_UNSUPPORTED_SCHEME) throw BadUrl("Receivers are called by http or https only.", remedy);
  if (code != CURLUE_OK || url.find('\0') != std::string::npos)
    throw BadUrl(fmt::format("This is not a URL: {}.", curl_url_strerror(code)), remedy);
  if (parsed.part(CURLUPART_HOST).empty()) throw BadUrl("The URL names no host.", remedy);
  const std::string scheme = parsed.part(CURLUPART_SCHEME);
  if (scheme == "http") return Scheme::http;
  if (scheme == "https") return Scheme::https;
  throw BadUrl("Receivers are called by http or https only.", remedy);
}

Transfer::Transfer(const Attempt& attempt, Deliverer::Done done, std::shared_ptr<const Policy> policy,
                   const Limits& limits)
    : done_(std::move(done)), policy_(std::move(policy)), limits_(limits), scheme_(check_url(attempt.url)),
      body_(attempt.body), easy_(curl_easy_init()) {
  if (!easy_) throw std::runtime_error("libcurl has no room for another attempt.");
  set_request(attempt);
  set_bounds();
}

void Transfer::add_header(const std::string& name, const std::string& value) {
  if (value.empty() || !printable(value))
    throw std::runtime_error(
        fmt::format("The header {} would be empty or hold characters that no header may.", name));
  curl_slist* longer = curl_slist_append(headers_.get(), fmt::format("{}: {}", name, value).c_str());
  if (longer == nullptr) throw std::bad_alloc();
  (void)headers_.release(); // the list grew at its end: same head, or a new one where there was none
  headers_.reset(longer);
}

void Transfer::set_request(const Attempt& attempt) {
  if (attempt.secrets.empty())
    throw std::runtime_error("A message without a secret cannot be signed; give the receiver one.");
  add_header("webhook-id", attempt.id);
  add_header("webhook-timestamp", std::to_string(attempt.at.s));
  add_header("webhook-signature", sign(attempt.secrets, attempt.id, attempt.at, attempt.body));
  add_header("Content-Type", attempt.content_type);
  CURL* easy = easy_.get();
  set(easy, CURLOPT_URL, attempt.url.c_str());
  set(easy, CURLOPT_HTTPHEADER, headers_.get());
  set(easy, CURLOPT_USERAGENT, "nutward/" NUTWARD_VERSION);
  set(easy, CURLOPT_POST, 1L);
  set(easy, CURLOPT_POSTFIELDS, body_.c_str());
  set(easy, CURLOPT_POSTFIELDSIZE_LARGE, static_cast<curl_off_t>(body_.size()));
}

void Transfer::set_bounds() {
  CURL* easy = easy_.get();
  set(easy, CURLOPT_PRIVATE, static_cast<void*>(this));
  set(easy, CURLOPT_ERRORBUFFER, error_.data());
  set(easy, CURLOPT_NOSIGNAL, 1L);
  set(easy, CURLOPT_TIMEOUT_MS, static_cast<long>(limits_.timeout.count()));
  set(easy, CURLOPT_PROTOCOLS_STR, "http,https");
  set(easy, CURLOPT_FOLLOWLOCATION, 0L);
  set(easy, CURLOPT_PROXY, ""); // not the environment's either
  set(easy, CURLOPT_HTTP_VERSION, static_cast<long>(CURL_HTTP_VERSION_1_1));
  set(easy, CURLOPT_HTTP09_ALLOWED, 0L);
  // A connection of its own: one kept open was judged by an older policy, and would wake us when it closes.
  set(easy, CURLOPT_FRESH_CONNECT, 1L);
  set(easy, CURLOPT_FORBID_REUSE, 1L);
  // Without this, giving up on a name server that does not answer waits for it, and with it everybody else.
  set(easy, CURLOPT_QUICK_EXIT, 1L);
  set(easy, CURLOPT_OPENSOCKETFUNCTION, &Transfer::open_socket);
  set(easy, CURLOPT_OPENSOCKETDATA, static_cast<void*>(this));
  set(easy, CURLOPT_HEADERFUNCTION, &Transfer::take_header);
  set(easy, CURLOPT_HEADERDATA, static_cast<void*>(this));
  set(easy, CURLOPT_WRITEFUNCTION, &Transfer::take_body);
  set(easy, CURLOPT_WRITEDATA, static_cast<void*>(this));
  if (!limits_.ca_file.empty()) set(easy, CURLOPT_CAINFO, limits_.ca_file.c_str());
}

curl_socket_t Transfer::open_socket(void* self, curlsocktype, curl_sockaddr* address) {
  auto& transfer = *static_cast<Transfer*>(self);
  Verdict verdict =
      allowed(&address->addr, static_cast<socklen_t>(address->addrlen), transfer.scheme_, *transfer.policy_);
  if (!verdict.allowed) {
    transfer.refused_ = std::move(verdict.why);
    return CURL_SOCKET_BAD; // libcurl goes on to the name's next address, if it has one
  }
  return socket(address->family, address->socktype | SOCK_CLOEXEC, address->protocol);
}

// 0 makes libcurl break the transfer off.
std::size_t Transfer::count(std::size_t size) {
  received_ += size;
  full_ = received_ > limits_.reply_bytes;
  return full_ ? 0 : size;
}

std::size_t Transfer::take_header(char* data, std::size_t, std::size_t size, void* self) {
  auto& transfer = *static_cast<Transfer*>(self);
  const std::string_view line(data, size);
  if (line == "\r\n" || line == "\n") {
    long status = 0;
    curl_easy_getinfo(transfer.easy_.get(), CURLINFO_RESPONSE_CODE, &status);
    if (status >= 200) transfer.answered_ = true; // 1xx only announce the answer
  }
  return transfer.count(size);
}

std::size_t Transfer::take_body(char*, std::size_t, std::size_t size, void* self) {
  return static_cast<Transfer*>(self)->count(size);
}

std::string Transfer::what_went_wrong(CURLcode result) const {
  if (result == CURLE_OK) return answered_ ? "" : "The receiver closed the connection without an answer.";
  if (result == CURLE_COULDNT_CONNECT && !refused_.empty()) return refused_;
  if (full_) return fmt::format("The receiver's answer is longer than {} bytes.", limits_.reply_bytes);
  if (result == CURLE_OPERATION_TIMEDOUT)
    return fmt::format("The receiver was not done within {} ms.", limits_.timeout.count());
  const char* detail = error_[0] != '\0' ? error_.data() : curl_easy_strerror(result);
  return fmt::format("The attempt failed: {}.", detail);
}

Outcome Transfer::outcome(CURLcode result) const {
  Outcome out;
  long status = 0;
  curl_off_t wait = 0, took = 0;
  curl_easy_getinfo(easy_.get(), CURLINFO_RESPONSE_CODE, &status);
  curl_easy_getinfo(easy_.get(), CURLINFO_RETRY_AFTER, &wait);
  curl_easy_getinfo(easy_.get(), CURLINFO_TOTAL_TIME_T, &took);
  if (answered_) out.status = static_cast<int>(status);
  if (answered_ && wait > 0) out.retry_after = std::chrono::seconds{wait};
  out.error = what_went_wrong(result);
  out.took = std::chrono::duration_cast<std::chrono::milliseconds>(std::chrono::microseconds{took});
  return out;
}

} // namespace nutward::remind
