// SPDX-License-Identifier: MIT
#pragma once
#include <optional>
#include <string>
#include <string_view>

namespace doorcard {

/// The whole text of a survey as it would be saved, kept in `.NAME.journal` beside it while it is edited. It is swapped
/// in whole, so that after a crash there is the last one or the one before, never half of one.
struct Journal {
    std::string text;
    bool is_based_on_file = false;  ///< false: the file was changed since, by somebody else
};

std::string journal_file_of(const std::string& path);
/// `base` are the bytes that the file has. Throws std::system_error.
void write_journal(const std::string& path, std::string_view base, std::string_view text);
/// What a crash has left to offer; nullopt where there is no journal, a broken one, or one that says what the file
/// says. `file` are the bytes that the file has now.
std::optional<Journal> left_journal(const std::string& path, std::string_view file);
/// After a save, or when it is not wanted.
void drop_journal(const std::string& path);

}  // namespace doorcard
