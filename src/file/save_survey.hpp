// SPDX-License-Identifier: MIT
#pragma once
#include <exception>
#include <string>
#include <string_view>

#include "base/message.hpp"

namespace doorcard {

/// A save that was refused although the disk would have taken it: somebody else is saving, or has saved. What was there
/// is whole.
struct NotSaved : std::exception {
    explicit NotSaved(Message reason) : why(std::move(reason)) {}
    const char* what() const noexcept override { return "not saved"; }
    Message why;
};

/// Saves the text of a survey in place of `was`, the bytes that the file had when it was read: under the file's lock,
/// whole or not at all (see `write_whole`), and only where it still has those bytes. Throws NotSaved, or
/// std::system_error that names the path (a full disk, a folder closed to writing).
void save_survey(const std::string& path, std::string_view was, std::string_view text);

/// A file that is not there yet; std::system_error with EEXIST where it is.
void save_new_survey(const std::string& path, std::string_view text);

}  // namespace doorcard
