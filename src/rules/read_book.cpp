// SPDX-License-Identifier: MIT
#include <fmt/format.h>
#include <fmt/ranges.h>
#include <toml++/toml.h>

#include <algorithm>
#include <cmath>
#include <set>
#include <stdexcept>

#include "base/built_in.hpp"
#include "rules/book.hpp"

namespace doorcard {
namespace {

Place place_of(const toml::source_region& region) { return {region.begin.line, region.begin.column}; }

bool is_kebab_case(std::string_view id) {
    const auto fits = [](char c) { return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-'; };
    return !id.empty() && std::ranges::all_of(id, fits) && id.front() != '-' && id.back() != '-' &&
           id.find("--") == std::string_view::npos;
}

std::vector<std::string> editions_in(const toml::table& text) {
    std::vector<std::string> editions;
    if (const toml::array* list = text["book"]["editions"].as_array())
        for (const toml::node& edition : *list)
            if (auto name = edition.value_exact<std::string>()) editions.push_back(*std::move(name));
    return editions;
}

}  // namespace

/// Reads a text of tables into a book, or collects every complaint about it.
class BookReader {
public:
    BookReader(std::string_view edition, RuleBook base) : book_(std::move(base)) { book_.edition_ = edition; }

    Outcome<RuleBook> read(const toml::table& text) {
        known_keys(text, {"book", "table", "fact", "rule", "option", "cite"});
        read_head(text);
        entries(text, "table", [&](const toml::table& entry) { read_table(entry); });
        entries(text, "fact", [&](const toml::table& entry) { read_fact(entry); });
        entries(text, "rule", [&](const toml::table& entry) { read_rule(entry); });
        entries(text, "option", [&](const toml::table& entry) { read_option(entry); });
        entries(text, "cite", [&](const toml::table& entry) { read_cite(entry); });
        if (complaints_.empty()) return std::move(book_);
        std::ranges::stable_sort(complaints_, {}, &Complaint::place);
        return tl::unexpected(std::move(complaints_));
    }

private:
    void complain(Place place, std::string wrong, std::string right) {
        complaints_.push_back({place, std::move(wrong), std::move(right)});
    }
    void complain(const toml::node& at, std::string wrong, std::string right) {
        complain(place_of(at.source()), std::move(wrong), std::move(right));
    }

    void known_keys(const toml::table& entry, const std::vector<std::string_view>& known) {
        for (const auto& [key, value] : entry)
            if (std::ranges::find(known, key.str()) == known.end())
                complain(place_of(key.source()), fmt::format("unknown key '{}'", key.str()),
                         fmt::format("known here: {}", fmt::join(known, ", ")));
    }

    /// The value of a key, or a complaint at the entry's header where it is missing.
    const toml::node* needed(const toml::table& entry, std::string_view key) {
        const toml::node* value = entry.get(key);
        if (value == nullptr) complain(entry, fmt::format("no '{}'", key), fmt::format("give '{}'", key));
        return value;
    }

    std::string text(const toml::table& entry, std::string_view key) {
        const toml::node* value = needed(entry, key);
        if (value == nullptr) return "";
        const std::string found = value->value_exact<std::string>().value_or("");
        if (found.empty()) complain(*value, fmt::format("'{}' is not a text", key), "write it in quotes, not empty");
        return found;
    }

    std::optional<double> number(const toml::node& value) {
        const std::optional<double> found = value.is_number() ? value.value<double>() : std::nullopt;
        if (found && std::isfinite(*found)) return found;
        complain(value, "not a finite number", "write a number without quotes");
        return std::nullopt;
    }

    void read_head(const toml::table& text) {
        const toml::node* head = text.get("book");
        if (head == nullptr) return;
        if (!head->is_table()) return complain(*head, "'book' is not a table", "write [book]");
        known_keys(*head->as_table(), {"editions"});
        const toml::node* editions = needed(*head->as_table(), "editions");
        if (editions == nullptr) return;
        const auto is_edition = [&](const toml::node& one) { return one.value_exact<std::string>() == book_.edition_; };
        if (!editions->is_array() || std::ranges::none_of(*editions->as_array(), is_edition))
            complain(*editions, fmt::format("not for the edition {}", book_.edition_),
                     fmt::format("editions = [\"{}\"]", book_.edition_));
    }

    template <class Read>
    void entries(const toml::table& text, std::string_view kind, Read read) {
        const toml::node* list = text.get(kind);
        if (list == nullptr) return;
        if (!list->is_array_of_tables())
            return complain(*list, fmt::format("'{}' is no list", kind), fmt::format("write [[{}]]", kind));
        for (const toml::node& entry : *list->as_array()) read(*entry.as_table());
    }

    /// The id of an entry, held to its form and to being the first of that id in the text.
    std::string read_id(const toml::table& entry) {
        const std::string id = text(entry, "id");
        if (id.empty()) return id;
        const toml::node& at = *entry.get("id");
        if (!is_kebab_case(id))
            complain(at, fmt::format("'{}' is not an id", id), "lower-case letters, digits and single hyphens");
        const auto [first, is_new] = seen_.emplace(id, place_of(at.source()));
        if (!is_new)
            complain(at, fmt::format("a second '{}'", id), fmt::format("the first is in line {}", first->second.line));
        return id;
    }

    /// Takes an id out of what the book had, so that this text's entry stands alone.
    void replace(const std::string& id) {
        book_.tables_.erase(id);
        book_.facts_.erase(id);
        book_.citations_.erase(id);
    }

    Citation read_source(const toml::table& entry) {
        const toml::node* source = needed(entry, "source");
        if (source == nullptr) return {};
        if (!source->is_table()) {
            complain(*source, "'source' is not a citation", "{ standard = \"...\", place = \"...\" }");
            return {};
        }
        const toml::table& cited = *source->as_table();
        if (cited.contains("practice")) {
            known_keys(cited, {"practice"});
            if (cited["practice"].value_exact<bool>() != true)
                complain(*cited.get("practice"), "'practice' is not true", "true, or a standard and a place");
            return {"", "", true};
        }
        known_keys(cited, {"standard", "place"});
        std::string standard = text(cited, "standard");
        if (standard == "NEC") standard += " " + year();
        return {std::move(standard), text(cited, "place"), false};
    }

    /// "2023" of the edition "NEC-2023": a text for several editions cites "NEC" alone.
    std::string year() const { return book_.edition_.substr(book_.edition_.rfind('-') + 1); }

    std::vector<std::string> read_columns(const toml::table& entry) { return read_names(entry, "columns", "column"); }

    /// A list of different names: columns, or the values of an option.
    std::vector<std::string> read_names(const toml::table& entry, std::string_view key, std::string_view one) {
        std::vector<std::string> names;
        const toml::node* list = needed(entry, key);
        if (list == nullptr) return names;
        if (!list->is_array() || list->as_array()->empty()) {
            complain(*list, fmt::format("'{}' is no list of names", key), "[\"...\", \"...\"]");
            return names;
        }
        for (const toml::node& name : *list->as_array()) {
            names.push_back(name.value_exact<std::string>().value_or(""));
            if (names.back().empty())
                complain(name, fmt::format("not the name of a {}", one), "write it in quotes, not empty");
            if (std::ranges::count(names, names.back()) > 1)
                complain(name, fmt::format("a second {} '{}'", one, names.back()),
                         fmt::format("give each {} its own name", one));
        }
        return names;
    }

    Laxer read_laxer(const toml::table& entry) {
        const toml::node* way = entry.get("laxer");
        if (way == nullptr) return Laxer::not_said;
        const auto word = way->value_exact<std::string>();
        if (word != "higher" && word != "lower") complain(*way, "'laxer' is no way", "\"higher\" or \"lower\"");
        return word == "higher" ? Laxer::higher : Laxer::lower;
    }

    bool read_fixed(const toml::table& entry) {
        const toml::node* fixed = entry.get("fixed");
        if (fixed != nullptr && fixed->value_exact<bool>() != true) complain(*fixed, "'fixed' is not true", "true");
        return fixed != nullptr;
    }

    std::optional<double> read_bound(const toml::table& entry, std::string_view key) {
        const toml::node* bound = entry.get(key);
        return bound == nullptr ? std::nullopt : number(*bound);
    }

    std::optional<Cell> read_cell(const toml::node& value) {
        if (std::optional<std::string> words = value.value_exact<std::string>()) return *std::move(words);
        if (const std::optional<double> figure = number(value)) return *figure;
        return std::nullopt;
    }

    void read_row(RuleTable& table, const toml::node& row) {
        const toml::array* cells = row.as_array();
        if (cells == nullptr || cells->size() != table.columns.size())
            return complain(row, fmt::format("a row of {} cells", cells == nullptr ? 0 : cells->size()),
                            fmt::format("{}: {}", table.columns.size(), fmt::join(table.columns, ", ")));
        std::vector<Cell> read;
        for (const toml::node& value : *cells) {
            const std::optional<Cell> cell = read_cell(value);
            if (!cell) return;
            if (!table.rows.empty() && table.rows.front()[read.size()].index() != cell->index())
                return complain(value, fmt::format("text and numbers in column '{}'", table.columns[read.size()]),
                                "write all its cells as numbers, or all in quotes");
            read.push_back(*cell);
        }
        table.rows.push_back(std::move(read));
    }

    void read_rows(RuleTable& table, const toml::table& entry) {
        const toml::node* rows = needed(entry, "rows");
        if (rows == nullptr) return;
        if (!rows->is_array() || rows->as_array()->empty())
            return complain(*rows, "'rows' is no list of rows", "[[...], [...]]");
        for (const toml::node& row : *rows->as_array()) read_row(table, row);
    }

    void read_table(const toml::table& entry) {
        known_keys(entry, {"id", "title", "unit", "source", "columns", "rows", "laxer", "fixed"});
        RuleTable table{read_id(entry),     text(entry, "title"), text(entry, "unit"),
                        read_source(entry), read_columns(entry),  {},
                        read_laxer(entry),  read_fixed(entry)};
        if (!table.columns.empty()) read_rows(table, entry);
        replace(table.id);
        std::string id = table.id;
        book_.tables_.insert_or_assign(std::move(id), std::move(table));
    }

    void read_fact(const toml::table& entry) {
        known_keys(entry, {"id", "title", "value", "unit", "source", "laxer", "fixed", "least", "most"});
        RuleFact fact{read_id(entry),    text(entry, "title"), text(entry, "unit"),        read_source(entry),       0,
                      read_laxer(entry), read_fixed(entry),    read_bound(entry, "least"), read_bound(entry, "most")};
        if (const toml::node* value = needed(entry, "value")) fact.value = number(*value).value_or(0);
        replace(fact.id);
        std::string id = fact.id;
        book_.facts_.insert_or_assign(std::move(id), std::move(fact));
    }

    void read_rule(const toml::table& entry) {
        known_keys(entry, {"id", "source"});
        const std::string id = read_id(entry);
        Citation source = read_source(entry);
        replace(id);
        book_.citations_.insert_or_assign(id, std::move(source));
    }

    /// Options are written as local rules write them, with underscores.
    void read_option(const toml::table& entry) {
        known_keys(entry, {"id", "title", "values", "usual", "source"});
        RuleOption option{
            text(entry, "id"), text(entry, "title"), read_names(entry, "values", "value"), text(entry, "usual"), "",
            read_source(entry)};
        if (std::ranges::find(option.values, option.usual) == option.values.end())
            complain(entry, fmt::format("'usual' of {} is none of its values", option.id), "take one of 'values'");
        option.value = option.usual;
        std::string id = option.id;
        book_.options_.insert_or_assign(std::move(id), std::move(option));
    }

    void read_cite(const toml::table& entry) {
        known_keys(entry, {"id", "source"});
        const std::string id = read_id(entry);
        Citation source = read_source(entry);
        if (const auto table = book_.tables_.find(id); table != book_.tables_.end())
            table->second.source = std::move(source);
        else if (const auto fact = book_.facts_.find(id); fact != book_.facts_.end())
            fact->second.source = std::move(source);
        else if (const auto rule = book_.citations_.find(id); rule != book_.citations_.end())
            rule->second = std::move(source);
        else if (!id.empty())
            complain(*entry.get("id"), fmt::format("there is no '{}' to cite otherwise", id), "name what is there");
    }

    RuleBook book_;
    std::map<std::string, Place> seen_;
    std::vector<Complaint> complaints_;
};

Outcome<RuleBook> read_book(std::string_view edition, std::string_view text, RuleBook base) {
    try {
        return BookReader(edition, std::move(base)).read(toml::parse(text));
    } catch (const toml::parse_error& error) {
        return tl::unexpected(std::vector<Complaint>{
            {place_of(error.source()), std::string(error.description()), "write it as TOML 1.0"}});
    }
}

std::vector<std::string> editions_of(std::string_view text) {
    try {
        return editions_in(toml::parse(text));
    } catch (const toml::parse_error&) {
        return {};
    }
}

std::vector<std::string> built_in_editions() {
    std::set<std::string> editions;
    for (const BuiltIn& file : built_in_rule_tables())
        for (std::string& edition : editions_of(file.bytes)) editions.insert(std::move(edition));
    return {editions.begin(), editions.end()};
}

std::optional<RuleBook> built_in_book(std::string_view edition) {
    struct Text {
        std::string_view name;
        toml::table table;
        std::size_t editions;
    };
    std::vector<Text> texts;
    for (const BuiltIn& file : built_in_rule_tables()) {
        toml::table table = toml::parse(file.bytes);
        const std::vector<std::string> editions = editions_in(table);
        if (std::ranges::find(editions, edition) != editions.end())
            texts.push_back({file.name, std::move(table), editions.size()});
    }
    if (texts.empty()) return std::nullopt;
    std::ranges::stable_sort(texts, std::greater(), &Text::editions);  // over them what is of this edition alone
    RuleBook book;
    for (const Text& text : texts) {
        Outcome<RuleBook> read = BookReader(edition, std::move(book)).read(text.table);
        if (!read) throw std::logic_error(complaint_line(std::string(text.name) + ".toml", read.error().front()));
        book = *std::move(read);
    }
    return book;
}

}  // namespace doorcard
