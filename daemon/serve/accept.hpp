// What kind of answer a client would rather have (RFC 9110, 12.5.1).
#pragma once

#include <string_view>

namespace nutward::serve {

enum class Rather {
  json,         // also where nothing was said, or nothing that there is
  picture,      // image/svg+xml where the answer has one, else JSON
  picture_only, // image/svg+xml, or else 406
};

// `accept`: the Accept field as sent. A picture is meant where it is wanted more than JSON; what is equally
// welcome (*/*, a browser's address line) gets JSON.
Rather rather(std::string_view accept);

} // namespace nutward::serve
