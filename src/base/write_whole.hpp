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

/// Where a link points in the end, also when nothing is there yet; the path itself where it is no link.
std::string target_of(std::string path);
/// The folder that a path is in.
std::string folder_of(const std::string& path);

/// Takes away what saves that were killed have left in a folder: only files that `write_whole` has made, ours, that
/// nobody is writing and that are older than a minute. Nothing of it matters enough to be told.
void sweep_temporaries(const std::string& folder);

}  // namespace doorcard
