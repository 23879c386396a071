// SPDX-License-Identifier: MIT
#pragma once
#include <string>
#include <string_view>

namespace doorcard {

enum class Existing { replace, refuse };

/// Saves a file whole or not at all: whoever reads it finds the old bytes or the new ones, and after a failure the old.
/// Links are followed and stay; mode and, where the system lets us, owner of an existing file are kept. A device or
/// pipe is written as it is. Throws std::system_error that names the path; EEXIST where it exists and is refused.
void write_whole(const std::string& path, std::string_view bytes, Existing existing = Existing::replace);

}  // namespace doorcard
