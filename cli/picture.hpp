// A picture into a file.
#pragma once

#include <optional>
#include <string>

namespace nutward::cli {

// Writes it beside and renames it, so that `path` holds the old file or the whole new one; what is no regular
// file (a pipe, a terminal) is written to as it is, and "-" is standard output. Returns why it failed.
std::optional<std::string> write_picture(const std::string& path, const std::string& svg);

} // namespace nutward::cli
