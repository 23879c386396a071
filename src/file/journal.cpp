// SPDX-License-Identifier: MIT
#include "file/journal.hpp"

#include <fmt/format.h>
#include <unistd.h>

#include <cstdint>

#include "file/beside.hpp"
#include "file/read_text.hpp"

namespace doorcard {
namespace {

/// Fowler, Noll and Vo's hash 1a of 64 bits (from memory; draft-eastlake-fnv): tells texts apart, keeps no secrets.
std::uint64_t fingerprint(std::string_view bytes) {
    std::uint64_t hash = 0xcbf29ce484222325ULL;
    for (const char c : bytes) hash = (hash ^ static_cast<unsigned char>(c)) * 0x100000001b3ULL;
    return hash;
}

/// The first line: what the text is based on, and its own fingerprint, so that a broken journal is known.
std::string head_of(std::uint64_t base, std::string_view text) {
    return fmt::format("doorcard journal 1 {:016x} {:016x} {}\n", base, fingerprint(text), text.size());
}

}  // namespace

std::string journal_file_of(const std::string& path) { return file_beside(path, "journal"); }

void write_journal(const std::string& path, std::string_view base, std::string_view text) {
    write_beside(path, "journal", head_of(fingerprint(base), text).append(text));
}

std::optional<Journal> left_journal(const std::string& path, std::string_view file) {
    const auto source = read_text(journal_file_of(path));
    if (!source) return std::nullopt;
    const std::string_view bytes = source->bytes;
    const std::size_t end = bytes.find('\n');
    if (end == std::string_view::npos) return std::nullopt;
    const std::string_view text = bytes.substr(end + 1), head = bytes.substr(0, end + 1);
    constexpr std::size_t base_at = std::string_view("doorcard journal 1 ").size(), base_length = 16;
    if (head.size() < base_at + base_length || text == file) return std::nullopt;
    const std::string base(head.substr(base_at, base_length));
    if (base.find_first_not_of("0123456789abcdef") != std::string::npos) return std::nullopt;
    if (head != head_of(std::stoull(base, nullptr, 16), text)) return std::nullopt;
    return Journal{std::string(text), std::stoull(base, nullptr, 16) == fingerprint(file)};
}

void drop_journal(const std::string& path) { ::unlink(journal_file_of(path).c_str()); }

}  // namespace doorcard
