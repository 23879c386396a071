// SPDX-License-Identifier: MIT
#include "desk/new_ids.hpp"

#include <fmt/format.h>

#include <cctype>

#include "base/folded.hpp"

namespace doorcard {

std::string id_of_words(std::string_view words, std::string_view otherwise) {
    constexpr std::size_t most = 32;
    std::string id;
    for (const char c : folded(words)) {
        const bool keeps = std::isalnum(static_cast<unsigned char>(c)) != 0;
        if (keeps) id += c;
        if (!keeps && !id.empty() && id.back() != '-') id += '-';
        if (id.size() >= most) break;
    }
    while (!id.empty() && id.back() == '-') id.pop_back();
    return id.empty() ? std::string(otherwise) : id;
}

std::string new_thing_id(const Survey& survey, std::string_view words, std::size_t skip) {
    const std::string id = id_of_words(words, "thing");
    const auto is_free = [&](const std::string& one) {
        return !survey.outlets.contains(one) && !survey.loads.contains(one);
    };
    std::string unique = id;
    std::size_t passed = 0;
    for (int n = 2; !is_free(unique) || passed++ < skip; ++n) unique = fmt::format("{}-{}", id, n);
    return unique;
}

}  // namespace doorcard
