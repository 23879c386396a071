// SPDX-License-Identifier: MIT
#include "desk/room_words.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <cctype>
#include <span>

#include "base/folded.hpp"
#include "desk/outlet_dots.hpp"
#include "desk/typed_words.hpp"
#include "survey/edits/edit.hpp"

namespace doorcard {
namespace {

constexpr int most_at_once = 99;

struct Token {
    std::string text;
    bool quoted = false;
    bool after_comma = false;
    bool before_colon = false;
};
using Tokens = std::vector<Token>;

bool says_on(const Token& token) {
    const std::string word = folded(token.text);
    return !token.quoted && (word == "on" || word == "en" || word == "@");
}

/// Takes a line apart into words; a colon ends a word, but in the name of a breaker's space (`@SHOP:3`).
class Taking {
public:
    explicit Taking(std::string_view line) {
        for (const char c : line) take(c);
        end();
    }
    Tokens tokens;

private:
    void take(char c) {
        if (c == '"') return in_quotes_ = !in_quotes_, now_.quoted = true, void();
        if (in_quotes_) return now_.text.push_back(c);
        if (c == ' ') return end();
        if (c == ',' || c == ';') return end(), after_comma_ = true, void();
        if (c == ':' && ends_name()) return colon();
        now_.text.push_back(c);
    }
    bool ends_name() const {
        return now_.text.find('@') == std::string::npos && (tokens.empty() || !says_on(tokens.back()));
    }
    void colon() {
        end();
        if (!tokens.empty()) tokens.back().before_colon = true;
    }
    void end() {
        if (now_.text.empty()) return now_ = {}, void();
        now_.after_comma = std::exchange(after_comma_, false);
        tokens.push_back(std::exchange(now_, {}));
    }

    Token now_;
    bool in_quotes_ = false, after_comma_ = false;
};

std::optional<OutletKind> kind_of(char letter) {
    switch (letter) {
        case 'r':
            return OutletKind::receptacle;
        case 'l':
            return OutletKind::lighting;
        case 's':
            return OutletKind::switch_;
        case 'b':
            return OutletKind::box;
        default:
            return std::nullopt;
    }
}

/// `r6`, `l`, `r2@5`. Nullopt where a word is no count.
std::optional<RoomItem> counted(const Token& token, bool in_capitals) {
    if (token.quoted || token.text.empty()) return std::nullopt;
    const std::size_t at = token.text.find('@');
    const std::string_view word = std::string_view(token.text).substr(0, at);
    if (word.empty()) return std::nullopt;
    const auto letter = static_cast<unsigned char>(word.front());
    const auto kind = kind_of(static_cast<char>(in_capitals ? std::tolower(letter) : letter));
    const std::string_view digits = word.substr(1);
    if (!kind || digits.find_first_not_of("0123456789") != std::string_view::npos) return std::nullopt;
    RoomItem item;
    item.kind = *kind;
    item.count = digits.size() > 2 ? most_at_once + 1 : digits.empty() ? 1 : std::stoi(std::string(digits));
    if (at != std::string::npos) item.on = token.text.substr(at + 1);
    return item;
}

bool has_small_letters(std::string_view line) {
    return std::ranges::any_of(line, [](char c) { return std::islower(static_cast<unsigned char>(c)) != 0; });
}

std::string joined(std::span<const Token> tokens) {
    std::string text;
    for (const Token& token : tokens) text += (text.empty() ? "" : " ") + token.text;
    return text;
}

/// How many words at the begin are the room's name.
std::size_t words_of_name(const Survey& survey, const Tokens& tokens, bool in_capitals) {
    for (std::size_t i = 0; i < tokens.size(); ++i) {
        if (counted(tokens[i], in_capitals)) return i;
        if (tokens[i].before_colon) return i + 1;
    }
    for (std::size_t n = tokens.size(); n > 0; --n)
        if (room_named(survey, joined(std::span(tokens).first(n)))) return n;
    return tokens.size();
}

/// Takes the words behind the room's name, one by one.
class ItemsReader {
public:
    explicit ItemsReader(bool in_capitals) : in_capitals_(in_capitals) {}

    Outcome<std::vector<RoomItem>> read(std::span<const Token> tokens) {
        for (std::size_t i = 0; i < tokens.size(); ++i) {
            const bool placed = says_on(tokens[i]);
            if (placed && i + 1 == tokens.size())
                return refused(fmt::format("nothing stands behind \"{}\"", tokens[i].text),
                               "write the breaker's space");
            auto taken = placed ? place_all(tokens[++i].text) : take(tokens[i]);
            if (!taken) return tl::unexpected(std::move(taken.error()));
        }
        return std::move(items_);
    }

private:
    using Taken = Outcome<bool>;

    Taken take(const Token& token) {
        if (auto item = counted(token, in_capitals_)) return add(std::move(*item));
        if (!token.quoted && token.text.front() == '@') return place_all(token.text.substr(1));
        Guards guards;
        if (!token.quoted && add_guard_word(token.text, guards)) return guard(token);
        add_name(token);
        return true;
    }

    Taken add(RoomItem item) {
        if (item.count < 1 || item.count > most_at_once)
            return refused("1 to 99 outlets of a kind go in at once", "write as many as there are, as r6");
        items_.push_back(std::move(item));
        in_name_ = false;
        return true;
    }

    Taken guard(const Token& token) {
        in_name_ = false;
        if (items_.empty())
            return refused(fmt::format("\"{}\" stands before any outlet", token.text),
                           "write it behind those that have it: r2 gf");
        add_guard_word(token.text, items_.back().guards);
        return true;
    }

    /// All that is not on a breaker yet.
    Taken place_all(const std::string& place) {
        in_name_ = false;
        bool any = false;
        for (RoomItem& item : items_)
            if (item.on.empty()) item.on = place, any = true;
        if (!any) return refused("no outlet stands before the breaker", "write it behind its outlets: r2 on 5");
        return true;
    }

    void add_name(const Token& token) {
        if (!in_name_ || token.after_comma) items_.emplace_back();
        std::string& label = items_.back().label;
        label += (label.empty() ? "" : " ") + token.text;
        in_name_ = true;
    }

    std::vector<RoomItem> items_;
    bool in_capitals_;
    bool in_name_ = false;  ///< the last item is a name that may go on
};

}  // namespace

Outcome<RoomWords> room_words(const Survey& survey, std::string_view line) {
    const bool in_capitals = !has_small_letters(line);
    const Tokens tokens = Taking(line).tokens;
    const std::size_t name = words_of_name(survey, tokens, in_capitals);
    RoomWords words;
    words.room = joined(std::span(tokens).first(name));
    if (words.room.empty()) return refused("no room is named", "begin with the room: Kitchen r6 l2");
    auto items = ItemsReader(in_capitals).read(std::span(tokens).subspan(name));
    if (!items) return tl::unexpected(std::move(items.error()));
    words.items = *std::move(items);
    return words;
}

Outcome<OutletWords> outlet_words(std::string_view rest) {
    const bool may_be_label = rest.starts_with(':') || rest.starts_with(" :");
    if (may_be_label) rest.remove_prefix(rest.find(':') + 1);
    OutletWords words;
    for (rest = trimmed(rest); !rest.empty();) {
        std::string_view word = first_word(rest);
        const std::string_view behind = trimmed(rest.substr(word.size()));
        if (word.starts_with('@') && word.size() > 1) {
            words.on = word.substr(1);
        } else if (says_on({std::string(word), false, false, false}) && typed_place(first_word(behind), "")) {
            words.on = first_word(behind);
            word = rest.substr(0, static_cast<std::size_t>(behind.data() - rest.data()) + words.on.size());
        } else if (!add_guard_word(word, words.guards)) {
            break;
        }
        rest = trimmed(rest.substr(word.size()));
    }
    if (!rest.empty() && !may_be_label)
        return refused(fmt::format("\"{}\" is no word for an outlet", rest),
                       "write its label behind a colon: K3: behind sofa");
    words.label = rest;
    return words;
}

}  // namespace doorcard
