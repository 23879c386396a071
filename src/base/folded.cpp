// SPDX-License-Identifier: MIT
#include "base/folded.hpp"

#include <glib.h>

#include <cctype>
#include <memory>

namespace doorcard {
namespace {

struct Freed {
    void operator()(char* text) const { g_free(text); }
};
using Owned = std::unique_ptr<char, Freed>;

std::string ascii_lower(std::string_view text) {
    std::string lower(text);
    for (char& c : lower) c = static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
    return lower;
}

}  // namespace

std::string straight_apostrophes(std::string_view text) {
    std::string plain(text);
    for (const std::string_view curly : {"\u2019", "\u2018"})
        for (std::size_t at = plain.find(curly); at != std::string::npos; at = plain.find(curly, at))
            plain.replace(at, curly.size(), "'");
    return plain;
}

std::string folded(std::string_view text) {
    const std::string plain = straight_apostrophes(text);
    const Owned apart(g_utf8_normalize(plain.c_str(), static_cast<gssize>(plain.size()), G_NORMALIZE_ALL));
    if (!apart) return ascii_lower(plain);
    std::string bare;
    for (const char* at = apart.get(); *at != '\0'; at = g_utf8_next_char(at))
        if (!g_unichar_ismark(g_utf8_get_char(at)))
            bare.append(at, static_cast<std::size_t>(g_utf8_next_char(at) - at));
    const Owned lower(g_utf8_strdown(bare.c_str(), static_cast<gssize>(bare.size())));
    return lower.get();
}

}  // namespace doorcard
