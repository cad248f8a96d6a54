// Bearer tokens as texts: 32 random bytes, of which nothing but the SHA-256 is kept. Pure but for the
// system's random bytes.
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace nutward::serve {

// "nwt_" and 64 hex digits. The beginning is there to be recognised where a token must not be.
// Throws shop::Problem where the system gives no random bytes.
std::string new_token();

// Hex SHA-256 of the whole token.
std::string digest_of(std::string_view text);

// Takes the same time wherever the two differ.
bool same_digest(std::string_view a, std::string_view b);

bool is_token(std::string_view text);

// Whether a token, or a good part of one, stands anywhere in the text, as it is.
bool holds_token(std::string_view text);

// The same for a part of a URL: as it is, or percent-encoded once or twice. Not more often: the daemon
// decodes once, what stands behind it perhaps once more, and each pass over what a stranger sent costs time.
bool address_holds_token(std::string_view text);

// The token of an Authorization field, "Bearer" in any case (RFC 6750 §2.1, RFC 9110 §11.1); nullopt for
// another scheme or none.
std::optional<std::string_view> bearer_of(std::string_view authorization);

} // namespace nutward::serve
