// SPDX-License-Identifier: MIT
#include "rules/amend.hpp"

#include <fmt/format.h>
#include <fmt/ranges.h>

#include <algorithm>
#include <cmath>
#include <utility>

#include "rules/wanted_cell.hpp"

namespace doorcard {
namespace {

constexpr double most_times = 20;  // beyond it a figure is a slip: per cent for a factor, say
constexpr std::int64_t known_format = 1;

std::vector<TomlMember> members_of(TomlNode table) {
    std::vector<TomlMember> members;
    table.members_into(members);
    return members;
}

template <class Things>
std::vector<std::string> ids_of(const Things& things) {
    std::vector<std::string> ids;
    ids.reserve(things.size());
    for (const auto& [id, thing] : things) ids.push_back(id);
    return ids;
}

/// Position of a conductor size in the ampacity table; nullopt: it is none.
std::optional<std::size_t> size_order(const RuleBook& book, const std::string& size) {
    if (!book.tables().contains("nec-310-16")) return std::nullopt;
    const RuleTable& table = book.table("nec-310-16");
    for (std::size_t row = 0; row < table.rows.size(); ++row)
        if (table.text(row, 0) == size) return row;
    return std::nullopt;
}

}  // namespace

/// Reads a text of local rules over a book, or collects every complaint about it.
class LocalRules {
public:
    explicit LocalRules(RuleBook base) : book_(std::move(base)), code_(book_) {}

    Outcome<RuleBook> read(TomlNode root) {
        const std::vector<TomlMember> members = members_of(root);
        known_keys(members, {"format", "base", "source", "amend", "option"}, "at the top");
        read_format(find_member(members, "format"));
        read_base(find_member(members, "base"));
        if (const TomlMember* source = find_member(members, "source")) general_source_ = text_in(*source);
        if (const TomlMember* list = find_member(members, "amend")) read_amendments(*list);
        if (const TomlMember* options = find_member(members, "option")) read_options(*options);
        if (!complaints_.empty()) return tl::unexpected(complaints_.sorted());
        return std::move(book_);
    }

private:
    /// A figure or cell to be changed: where it stands in the book, and what it may become.
    struct Target {
        std::string id, part, title, unit;
        Cell* cell = nullptr;      ///< of a table
        double* figure = nullptr;  ///< of a fact
        Citation* source = nullptr;
        Laxer laxer = Laxer::not_said;
        std::optional<double> least, most;
        Cell was() const { return cell ? *cell : Cell(*figure); }
    };

    std::string text_in(const TomlMember& member) { return doorcard::text_in(member, complaints_); }
    void complain(Place place, std::string wrong, std::string right) {
        complaints_.add(place, std::move(wrong), std::move(right));
    }

    void known_keys(const std::vector<TomlMember>& members, const std::vector<std::string>& known, const char* where) {
        for (const TomlMember& member : members)
            if (std::ranges::find(known, member.key) == known.end())
                complain(member.place, fmt::format("unknown key \"{}\" {}", member.key, where),
                         did_you_mean(member.key, known, fmt::format("known here: {}", fmt::join(known, ", "))));
    }

    void read_format(const TomlMember* format) {
        if (format == nullptr) return complain({}, "the file has no \"format\"", "write format = 1 at its top");
        if (!format->node.is(TomlNode::Kind::whole) || format->node.whole() != known_format)
            complain(format->node.place(), "\"format\" is not 1", "write format = 1, the one that this doorcard reads");
    }

    void read_base(const TomlMember* base) {
        const std::string right = fmt::format("base = \"{}\"", book_.edition());
        if (base == nullptr) return complain({}, "the file has no \"base\"", fmt::format("write {}", right));
        const std::string edition = text_in(*base);
        if (!edition.empty() && edition != book_.edition())
            complain(base->node.place(),
                     fmt::format("these rules amend {}, the survey is judged by {}", edition, book_.edition()),
                     fmt::format("take rules with {}, or let the survey say rules = \"{}\"", right, edition));
    }

    void read_amendments(const TomlMember& list) {
        if (!list.node.is(TomlNode::Kind::list)) return complain(list.place, "\"amend\" is no list", "write [[amend]]");
        for (std::size_t i = 0; i < list.node.size(); ++i) {
            if (list.node[i].is(TomlNode::Kind::table))
                read_amendment(list.node[i]);
            else
                complain(list.node[i].place(), "an amendment that is no table", "write [[amend]]");
        }
    }

    void read_amendment(TomlNode entry) {
        const std::vector<TomlMember> members = members_of(entry);
        known_keys(members, {"table", "row", "column", "fact", "value", "source", "reason"}, "in [[amend]]");
        const TomlMember* value = find_member(members, "value");
        const TomlMember* source = find_member(members, "source");
        const TomlMember* reason = find_member(members, "reason");
        if (value == nullptr) complain(entry.place(), "no \"value\"", "write what holds here: value = 15");
        if (source == nullptr)
            complain(entry.place(), "no \"source\"", "write who says so: source = \"County ordinance 12-34\"");
        const std::string cited = source ? text_in(*source) : "";
        const std::string why = reason ? text_in(*reason) : "";
        const std::optional<Target> target = target_of(entry, members);
        if (target && value && !cited.empty()) change(*target, *value, cited, why);
    }

    std::optional<Target> target_of(TomlNode entry, const std::vector<TomlMember>& members) {
        const TomlMember* table = find_member(members, "table");
        const TomlMember* fact = find_member(members, "fact");
        if ((table == nullptr) == (fact == nullptr)) {
            complain(entry.place(), table ? "a table and a fact in one amendment" : "no \"table\" and no \"fact\"",
                     "name one: table = \"nec-240-4-d\" with its row, or fact = \"continuous-factor\"");
            return std::nullopt;
        }
        if (table) return target_in_table(entry, *table, members);
        for (const char* key : {"row", "column"})
            if (const TomlMember* member = find_member(members, key))
                complain(member->place, fmt::format("a fact has no {}", key), "take it out, or name a table");
        return target_fact(*fact);
    }

    std::optional<Target> target_fact(const TomlMember& named) {
        const std::string id = text_in(named);
        if (id.empty()) return std::nullopt;
        const auto found = book_.facts_.find(id);
        if (found == book_.facts_.end()) {
            complain(named.node.place(), fmt::format("there is no figure \"{}\"", id),
                     book_.tables_.contains(id)
                         ? fmt::format("that is a table: table = \"{}\"", id)
                         : did_you_mean(id, ids_of(book_.facts_), "docs/local-rules.md has them"));
            return std::nullopt;
        }
        return target_of_fact(found->second, named.node.place());
    }

    std::optional<Target> target_of_fact(RuleFact& fact, Place place) {
        if (fact.fixed) return cannot_be_amended(place, fact.id);
        Target target{fact.id, "", fact.title, fact.unit, nullptr, &fact.value, &fact.source, fact.laxer, {}, {}};
        target.least = fact.least;
        target.most = fact.most;
        return target;
    }

    std::nullopt_t cannot_be_amended(Place place, const std::string& id) {
        complain(place, fmt::format("\"{}\" cannot be amended", id),
                 "it says how other tables are read; amend the figure itself");
        return std::nullopt;
    }

    std::optional<Target> target_in_table(TomlNode entry, const TomlMember& named,
                                          const std::vector<TomlMember>& members) {
        const std::string id = text_in(named);
        if (id.empty()) return std::nullopt;
        const auto found = book_.tables_.find(id);
        if (found == book_.tables_.end()) {
            complain(named.node.place(), fmt::format("there is no table \"{}\"", id),
                     book_.facts_.contains(id)
                         ? fmt::format("that is a single figure: fact = \"{}\"", id)
                         : did_you_mean(id, ids_of(book_.tables_), "docs/local-rules.md has them"));
            return std::nullopt;
        }
        RuleTable& table = found->second;
        if (table.fixed) return cannot_be_amended(named.node.place(), id);
        if (table.columns.size() < 2) {
            complain(named.node.place(), fmt::format("\"{}\" is a list, it has no figure to amend", id),
                     "amend the figure that the list is used with");
            return std::nullopt;
        }
        const TomlMember* row = find_member(members, "row");
        if (row == nullptr || !row->node.is(TomlNode::Kind::table)) {
            complain(row ? row->node.place() : entry.place(), row ? "\"row\" is no row" : "no \"row\"",
                     fmt::format("say which: row = {{ {} = ... }}", table.columns.front()));
            return std::nullopt;
        }
        return target_cell(table, *row, find_member(members, "column"));
    }

    std::optional<Target> target_cell(RuleTable& table, const TomlMember& row, const TomlMember* column) {
        const std::vector<TomlMember> wanted = members_of(row.node);
        const std::optional<std::size_t> at = row_wanted(table, row, wanted, complaints_);
        if (!at) return std::nullopt;
        const std::optional<std::size_t> of = column_wanted(table, row, wanted, column, complaints_);
        if (!of) return std::nullopt;
        std::vector<std::string> part;
        for (const std::string& name : table.columns)
            if (const TomlMember* member = find_member(wanted, name))
                part.push_back(name + " " + words_of(*cell_of(member->node)));
        if (column) part.push_back(table.columns[*of]);
        return Target{table.id,
                      fmt::format("{}", fmt::join(part, ", ")),
                      table.title,
                      table.unit,
                      &table.rows[*at][*of],
                      nullptr,
                      &table.source,
                      table.laxer,
                      {},
                      {}};
    }

    /// Puts the value in its place, with its citation; or complains.
    void change(const Target& target, const TomlMember& value, const std::string& source, const std::string& reason) {
        const Cell was = target.was();
        const std::optional<Cell> cell = cell_of(value.node);
        if (!cell || cell->index() != was.index())
            return complain(value.node.place(), "\"value\" is of another kind than the figure that it amends",
                            fmt::format("it is {}{}", words_of(was), was.index() == 1 ? ", in quotes" : ""));
        const bool fits = was.index() == 1 ? fits_as_size(target, *cell, value.node.place())
                                           : fits_as_number(target, std::get<double>(*cell), value.node.place());
        if (!fits || !is_first(target, value.node.place())) return;
        if (target.cell)
            *target.cell = *cell;
        else
            *target.figure = std::get<double>(*cell);
        list(target, was, *cell, source, reason);
        cite_amended(target);
    }

    /// An amendment of the same figure that was laid over earlier gives way.
    void list(const Target& target, Cell was, const Cell& now, const std::string& source, const std::string& reason) {
        auto& all = book_.amendments_;
        const auto earlier = std::ranges::find_if(
            all, [&](const Amendment& one) { return one.id == target.id && one.part == target.part; });
        if (earlier != all.end()) {
            was = earlier->was;
            all.erase(earlier);
        }
        const std::string code = target.source->amends.empty() ? target.source->text() : target.source->amends;
        all.push_back({target.id,
                       target.part,
                       target.title,
                       was,
                       now,
                       target.unit,
                       {source, "", false, code, target.part},
                       reason,
                       is_laxer(target, was, now)});
    }

    /// Text to amend is a conductor's size, and becomes another.
    bool fits_as_size(const Target& target, const Cell& cell, Place place) {
        if (!size_order(book_, std::get<std::string>(target.was()))) {
            cannot_be_amended(place, target.id);
            return false;
        }
        if (size_order(book_, std::get<std::string>(cell))) return true;
        complain(place, fmt::format("\"{}\" is no size of conductor", std::get<std::string>(cell)),
                 "write it as Table 310.16 does: \"12\", \"2/0\", \"250\"");
        return false;
    }

    bool fits_as_number(const Target& target, double value, Place place) {
        const double code = code_figure(target);
        if (code == 0) {
            complain(place, fmt::format("{} has no figure there", target.id), "a dash of the code cannot be amended");
            return false;
        }
        const double least = target.least.value_or(code / most_times), most = target.most.value_or(code * most_times);
        if (std::isfinite(value) && value >= least && value <= most) return true;
        complain(place, fmt::format("{:g} is out of bounds for {}", value, target.id),
                 fmt::format("from {:g} to {:g}; the code has {:g}, in {}", least, most, code, target.unit));
        return false;
    }

    /// What the figure was before any of the rules of this text.
    double code_figure(const Target& target) const {
        if (target.figure) return code_.figure(target.id);
        const RuleTable& table = book_.table(target.id);
        for (std::size_t row = 0; row < table.rows.size(); ++row)
            for (std::size_t column = 0; column < table.columns.size(); ++column)
                if (&table.rows[row][column] == target.cell) return code_.table(target.id).number(row, column);
        return 0;
    }

    bool is_first(const Target& target, Place place) {
        const void* where = target.cell ? static_cast<const void*>(target.cell) : target.figure;
        const auto [first, is_new] = changed_.emplace(where, place);
        if (!is_new)
            complain(place, fmt::format("{} is amended a second time", target.id),
                     fmt::format("the first is in line {}", first->second.line));
        return is_new;
    }

    /// Figure or table cite what amends them, a table with the rows; and so does what cited the same article.
    void cite_amended(const Target& target) {
        Citation now{"", "", false, "", ""};
        const auto add = [](std::string& text, const std::string& more) {
            if (text.empty() || text == more)
                text = more;
            else if (text.find(more) == std::string::npos)
                text += "; " + more;
        };
        for (const Amendment& one : book_.amendments_) {
            if (one.id != target.id) continue;
            add(now.standard, one.source.standard);
            add(now.part, one.part);
            now.amends = one.source.amends;
        }
        const Citation was = std::exchange(*target.source, now);
        if (was.practice) return;
        for (auto& [id, citation] : book_.citations_)
            if (citation == was) citation = now;
    }

    bool is_laxer(const Target& target, const Cell& was, const Cell& now) const {
        if (target.laxer == Laxer::not_said) return false;
        const auto measure = [&](const Cell& cell) {
            const double* number = std::get_if<double>(&cell);
            return number ? *number : static_cast<double>(size_order(book_, std::get<std::string>(cell)).value_or(0));
        };
        return target.laxer == Laxer::higher ? measure(now) > measure(was) : measure(now) < measure(was);
    }

    void read_options(const TomlMember& options) {
        if (!options.node.is(TomlNode::Kind::table))
            return complain(options.place, "\"option\" is no table", "write [option]");
        for (const TomlMember& option : members_of(options.node)) read_option(option);
    }

    void read_option(const TomlMember& member) {
        const auto found = book_.options_.find(member.key);
        if (found != book_.options_.end()) return choose(found->second, member);
        std::string id(member.key);
        std::ranges::replace(id, '_', '-');
        const auto fact = book_.facts_.find(id);
        if (fact == book_.facts_.end()) return complain_unknown_option(member);
        if (!is_practice(fact->second.source))
            return complain(member.place, fmt::format("\"{}\" is a figure of {}", id, fact->second.source.text()),
                            fmt::format("write [[amend]] with fact = \"{}\" and its source", id));
        if (const auto target = target_of_fact(fact->second, member.place))
            change(*target, member, general_source_.empty() ? "local rules" : general_source_, "");
    }

    static bool is_practice(const Citation& source) {
        return source.practice || source.amends == Citation{"", "", true}.text();
    }

    void complain_unknown_option(const TomlMember& member) {
        std::vector<std::string> known = ids_of(book_.options_);
        for (const auto& [id, fact] : book_.facts_)
            if (is_practice(fact.source)) known.push_back(id);
        complain(member.place, fmt::format("there is no option \"{}\"", member.key),
                 did_you_mean(member.key, known, "docs/local-rules.md has them"));
    }

    void choose(RuleOption& option, const TomlMember& member) {
        const std::optional<Cell> cell = cell_of(member.node);
        const std::string value = cell ? words_of(*cell) : "";
        if (std::ranges::find(option.values, value) == option.values.end())
            return complain(
                member.node.place(), fmt::format("\"{}\" is no value of {}", value, option.id),
                did_you_mean(value, option.values, fmt::format("one of {}", fmt::join(option.values, ", "))));
        if (value == option.value) return;
        const Citation source{general_source_.empty() ? "local rules" : general_source_, "", false,
                              option.source.amends.empty() ? option.source.text() : option.source.amends, ""};
        book_.amendments_.push_back({option.id, "", option.title, option.value, value, "", source, "", false});
        option.value = value;
        option.source = source;
    }

    RuleBook book_;
    const RuleBook code_;  // as it was before this text
    std::string general_source_;
    std::map<const void*, Place> changed_;
    Complaints complaints_;
};

Outcome<RuleBook> amend(RuleBook base, std::string_view text) {
    const Outcome<TomlText> parsed = TomlText::parse(text);
    if (!parsed) return tl::unexpected(parsed.error());
    return LocalRules(std::move(base)).read(parsed->root());
}

}  // namespace doorcard
