// Making the Unix socket that clients connect to: plain system calls, no network library.
#pragma once

#include "serve/door.hpp"

#include <sys/types.h>

namespace nutward::serve {

// Binds options.socket with its mode and group, never wider for a moment than that, and listens. Removes a
// socket that is there already. Throws DoorError; nothing is left behind then.
struct Listening {
  int descriptor; // close-on-exec; the caller owns it
  dev_t device;   // with `inode`, which file it is
  ino_t inode;
};
Listening listen_at(const DoorOptions& options);

// Removes the socket's file, unless another one stands in its place by now. Never fails.
void unlink_socket(const std::string& path, const Listening& own) noexcept;

} // namespace nutward::serve
