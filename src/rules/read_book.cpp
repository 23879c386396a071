// SPDX-License-Identifier: MIT
#include <fmt/format.h>
#include <fmt/ranges.h>
#include <toml++/toml.h>

#include <algorithm>
#include <cmath>

#include "rules/book.hpp"

namespace doorcard {
namespace {

Place place_of(const toml::source_region& region) { return {region.begin.line, region.begin.column}; }

bool is_kebab_case(std::string_view id) {
    const auto fits = [](char c) { return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '-'; };
    return !id.empty() && std::ranges::all_of(id, fits) && id.front() != '-' && id.back() != '-' &&
           id.find("--") == std::string_view::npos;
}

}  // namespace

/// Reads a text of tables into a book, or collects every complaint about it.
class BookReader {
public:
    BookReader(std::string_view edition, RuleBook base) : book_(std::move(base)) { book_.edition_ = edition; }

    Outcome<RuleBook> read(const toml::table& text) {
        known_keys(text, {"book", "table", "fact", "rule"});
        read_head(text);
        entries(text, "table", [&](const toml::table& entry) { read_table(entry); });
        entries(text, "fact", [&](const toml::table& entry) { read_fact(entry); });
        entries(text, "rule", [&](const toml::table& entry) { read_rule(entry); });
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

    std::vector<std::string> read_columns(const toml::table& entry) {
        std::vector<std::string> columns;
        const toml::node* list = needed(entry, "columns");
        if (list == nullptr) return columns;
        if (!list->is_array() || list->as_array()->empty()) {
            complain(*list, "'columns' is no list of names", "[\"...\", \"...\"]");
            return columns;
        }
        for (const toml::node& name : *list->as_array()) {
            columns.push_back(name.value_exact<std::string>().value_or(""));
            if (columns.back().empty()) complain(name, "not the name of a column", "write it in quotes, not empty");
            if (std::ranges::count(columns, columns.back()) > 1)
                complain(name, fmt::format("a second column '{}'", columns.back()), "give each column its own name");
        }
        return columns;
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
        known_keys(entry, {"id", "title", "unit", "source", "columns", "rows"});
        RuleTable table{read_id(entry),     text(entry, "title"), text(entry, "unit"),
                        read_source(entry), read_columns(entry),  {}};
        if (!table.columns.empty()) read_rows(table, entry);
        replace(table.id);
        std::string id = table.id;
        book_.tables_.insert_or_assign(std::move(id), std::move(table));
    }

    void read_fact(const toml::table& entry) {
        known_keys(entry, {"id", "title", "value", "unit", "source"});
        RuleFact fact{read_id(entry), text(entry, "title"), text(entry, "unit"), read_source(entry), 0};
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
    std::vector<std::string> editions;
    try {
        const toml::table read = toml::parse(text);
        if (const toml::array* list = read["book"]["editions"].as_array())
            for (const toml::node& edition : *list)
                if (auto name = edition.value_exact<std::string>()) editions.push_back(*std::move(name));
    } catch (const toml::parse_error&) {
        editions.clear();
    }
    return editions;
}

}  // namespace doorcard
