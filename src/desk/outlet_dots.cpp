// SPDX-License-Identifier: MIT
#include "desk/outlet_dots.hpp"

#include <algorithm>
#include <cctype>
#include <charconv>
#include <map>
#include <set>

#include "base/folded.hpp"

namespace doorcard {
namespace {

bool is_letter(char c) { return std::isalpha(static_cast<unsigned char>(c)) != 0; }

std::string capitals(std::string_view text) {
    std::string letters;
    for (const char c : folded(text))
        if (is_letter(c)) letters += static_cast<char>(std::toupper(static_cast<unsigned char>(c)));
    return letters;
}

/// Letters of all dots, in capitals.
std::set<std::string> letters_taken(const Survey& survey) {
    std::set<std::string> taken;
    const auto take = [&](const std::string& id) {
        if (const auto dot = dot_of(id)) taken.insert(capitals(dot->letters));
    };
    for (const Outlet& outlet : survey.outlets) take(outlet.id);
    for (const Load& load : survey.loads) take(load.id);
    return taken;
}

/// The letters that most outlets of the room have.
std::optional<std::string> letters_there(const Survey& survey, const std::string& room) {
    std::map<std::string, int> counts;
    for (const Outlet& outlet : survey.outlets)
        if (outlet.room == room)
            if (const auto dot = dot_of(outlet.id)) ++counts[dot->letters];
    const auto most = std::ranges::max_element(counts, {}, &std::pair<const std::string, int>::second);
    return most == counts.end() ? std::nullopt : std::optional(most->first);
}

/// Letters of the name, ever more of them, then its first one with any other.
std::vector<std::string> letters_to_try(std::string_view title) {
    constexpr std::size_t most_letters = 4;
    const std::string name = capitals(title);
    std::vector<std::string> tries;
    for (std::size_t n = 1; n <= std::min(name.size(), most_letters); ++n) tries.push_back(name.substr(0, n));
    const std::string first = name.empty() ? "R" : name.substr(0, 1);
    if (name.empty()) tries.push_back(first);
    for (char c = 'A'; c <= 'Z'; ++c) tries.push_back(first + c);
    for (char c = 'A'; c <= 'Z'; ++c)
        for (char d = 'A'; d <= 'Z'; ++d) tries.push_back(first + c + d);
    return tries;
}

}  // namespace

std::optional<OutletDot> dot_of(std::string_view id) {
    const auto digits = std::ranges::find_if_not(id, is_letter);
    OutletDot dot{std::string(id.begin(), digits), 0};
    const std::string_view rest(digits, id.end());
    constexpr std::size_t most_digits = 5;
    if (dot.letters.empty() || rest.empty() || rest.size() > most_digits || rest.front() == '0') return std::nullopt;
    const auto [end, fault] = std::from_chars(rest.data(), rest.data() + rest.size(), dot.number);
    return fault == std::errc() && end == rest.data() + rest.size() ? std::optional(dot) : std::nullopt;
}

std::optional<KnownRoom> room_named(const Survey& survey, std::string_view name) {
    const std::string wanted = folded(name);
    for (const Room& room : survey.rooms)
        if (folded(room.title.value_or(room.id)) == wanted) return KnownRoom{room.id, room.title.value_or(room.id)};
    for (const Room& room : survey.rooms)
        if (folded(room.id) == wanted) return KnownRoom{room.id, room.title.value_or(room.id)};
    for (const Outlet& outlet : survey.outlets)
        if (outlet.room && !survey.rooms.contains(*outlet.room) && folded(*outlet.room) == wanted)
            return KnownRoom{*outlet.room, *outlet.room};
    return std::nullopt;
}

std::optional<std::string> letters_of_room(const Survey& survey, const KnownRoom& room) {
    if (auto there = letters_there(survey, room.named)) return there;
    const std::set<std::string> taken = letters_taken(survey);
    const auto tries = letters_to_try(room.title);
    const auto free = std::ranges::find_if(tries, [&](const std::string& one) { return !taken.contains(one); });
    return free == tries.end() ? std::nullopt : std::optional(*free);
}

int next_dot(const Survey& survey, std::string_view letters) {
    int highest = 0;
    const std::string wanted = capitals(letters);
    const auto look = [&](const std::string& id) {
        if (const auto dot = dot_of(id); dot && capitals(dot->letters) == wanted)
            highest = std::max(highest, dot->number);
    };
    for (const Outlet& outlet : survey.outlets) look(outlet.id);
    for (const Load& load : survey.loads) look(load.id);
    return highest + 1;
}

std::vector<std::size_t> outlets_with_dots(const Survey& survey, std::string_view letters) {
    std::vector<std::pair<int, std::size_t>> found;
    const std::string wanted = capitals(letters);
    for (std::size_t i = 0; i < survey.outlets.size(); ++i)
        if (const auto dot = dot_of(survey.outlets[i].id); dot && capitals(dot->letters) == wanted)
            found.emplace_back(dot->number, i);
    std::ranges::sort(found);
    std::vector<std::size_t> outlets;
    for (const auto& [number, at] : found) outlets.push_back(at);
    return outlets;
}

}  // namespace doorcard
