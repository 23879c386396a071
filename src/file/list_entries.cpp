// SPDX-License-Identifier: MIT
#include "file/list_entries.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "base/folded.hpp"
#include "file/patterns.hpp"

namespace doorcard {
namespace {

/// A text as it goes into the survey: control characters and runs of blanks as one blank, and without the apostrophe
/// that keeps a spreadsheet from taking it for a formula.
std::string clean(std::string_view cell) {
    std::string text;
    for (const char c : trimmed(cell)) {
        const auto byte = static_cast<unsigned char>(c);
        const bool blank = byte <= 0x20 || byte == 0x7F;
        if (!blank)
            text += c;
        else if (!text.empty() && text.back() != ' ')
            text += ' ';
    }
    const bool kept_from_formula =
        text.size() > 1 && text[0] == '\'' && std::string_view("=+-@").find(text[1]) != std::string_view::npos;
    return kept_from_formula ? text.substr(1) : text;
}

Complaint complaint(Place place, const CellFault& fault) { return {place, fault.wrong, fault.right}; }

void add_note(std::string& notes, std::string_view head, const std::string& text) {
    if (text.empty()) return;
    notes += notes.empty() ? "" : "; ";
    notes += head.empty() ? text : fmt::format("{}: {}", head, text);
}

void add_guards(ListEntry& entry, const std::vector<Guard>& guards) {
    for (const Guard guard : guards)
        if (std::ranges::find(entry.guards, guard) == entry.guards.end()) entry.guards.push_back(guard);
    std::ranges::sort(entry.guards);
}

}  // namespace

std::string ListSideReader::cell(const ListRow& row, Column column) {
    const auto at = side_.at.find(column);
    if (at == side_.at.end() || at->second >= row.size()) return {};
    const std::string& text = row[at->second].text;
    return is_ditto(text) ? above_[column] : text;
}

Place ListSideReader::place_of(const ListRow& row, Column column) const {
    const auto at = side_.at.find(column);
    return at == side_.at.end() || at->second >= row.size() ? row.front().place : row[at->second].place;
}

bool ListSideReader::is_empty(const ListRow& row) const {
    const auto blank = [&](std::size_t index) { return index >= row.size() || trimmed(row[index].text).empty(); };
    return std::ranges::all_of(side_.at,
                               [&](const auto& at) {
                                   return at.first == Column::leg || at.first == Column::panel || blank(at.second);
                               }) &&
           std::ranges::all_of(side_.others, [&](const auto& other) { return blank(other.second); });
}

/// Sums stand where no space is named; the first word of the row says so.
bool ListSideReader::is_total(const ListRow& row) const {
    const auto at = side_.at.find(Column::space);
    if (at != side_.at.end() && at->second < row.size() && are_spaces(row[at->second].text)) return false;
    const auto written = std::ranges::find_if(row, [](const ListCell& cell) { return !trimmed(cell.text).empty(); });
    return written != row.end() && says_total(written->text);
}

std::optional<Complaint> ListSideReader::read_ratings(const ListRow& row, ListEntry& entry) {
    const std::string written = cell(row, Column::amps);
    const auto amps = amps_in(written);
    if (!amps) return complaint(place_of(row, Column::amps), amps.error());
    const auto poles = poles_in(cell(row, Column::poles));
    if (!poles) return complaint(place_of(row, Column::poles), poles.error());
    if (*poles && amps->poles && *poles != amps->poles)
        return Complaint{place_of(row, Column::poles),
                         fmt::format("{} poles here, and \"{}\" says {}", **poles, trimmed(written), *amps->poles),
                         "write the same number of poles in both"};
    entry.amps = amps->amps;
    entry.poles = *poles ? *poles : amps->poles;
    add_guards(entry, guards_in(written).guards);
    return std::nullopt;
}

std::optional<Complaint> ListSideReader::read_load(const ListRow& row, ListEntry& entry) {
    struct Unit {
        Column column;
        std::optional<double>& into;
        double scale;
    };
    constexpr double thousand = 1000;
    for (const Unit& unit : {Unit{Column::va, entry.va, 1}, Unit{Column::kva, entry.va, thousand},
                             Unit{Column::watts, entry.watts, 1}, Unit{Column::kilowatts, entry.watts, thousand}}) {
        const std::string text = cell(row, unit.column);
        if (is_nothing(text) || entry.va || entry.watts) continue;
        const auto figure = load_in(text, unit.scale);
        if (!figure) return complaint(place_of(row, unit.column), figure.error());
        if (*figure > 0) unit.into = *figure;
    }
    return std::nullopt;
}

void ListSideReader::read_words(const ListRow& row, ListEntry& entry) {
    const std::string text = clean(cell(row, Column::description));
    const auto at = side_.at.find(Column::description);
    entry.ditto = at != side_.at.end() && at->second < row.size() && is_ditto(row[at->second].text);
    entry.spare = says_spare(text);
    entry.empty_space = says_space(text);
    if (!entry.spare && !entry.empty_space && !is_nothing(text)) entry.text = text;
    add_guards(entry, guards_in(text).guards);
    const GuardWords said = guards_in(cell(row, Column::guards));
    add_guards(entry, said.guards);
    GuardWords type = guards_in(cell(row, Column::type));
    add_guards(entry, type.guards);
    const std::string kind = folded(clean(type.rest));
    if (kind == "fuse" || kind == "pullout")
        entry.device = kind;
    else if (kind != "breaker" && !is_nothing(kind))
        add_note(entry.notes, "Type", clean(type.rest));
    if (!is_nothing(said.rest)) add_note(entry.notes, "Guards", clean(said.rest));
}

void ListSideReader::add_notes(const ListRow& row, ListEntry& entry) {
    const std::string wire = clean(cell(row, Column::wire));
    if (!is_nothing(wire)) entry.wire = wire_in(wire);
    if (!entry.wire && !is_nothing(wire)) add_note(entry.notes, "Wire", wire);
    if (const std::string room = clean(cell(row, Column::room)); !is_nothing(room)) add_note(entry.notes, "Room", room);
    if (const std::string leg = clean(cell(row, Column::leg)); !is_nothing(leg)) add_note(entry.notes, "Leg", leg);
    const std::string note = clean(cell(row, Column::note));
    if (!is_nothing(note)) add_note(entry.notes, "", note);
    add_guards(entry, guards_in(note).guards);
    for (const auto& [head, index] : side_.others)
        if (index < row.size() && !is_nothing(row[index].text))
            add_note(entry.notes, clean(head), clean(row[index].text));
}

tl::expected<std::optional<ListEntry>, Complaint> ListSideReader::read(const ListRow& row) {
    if (is_empty(row) || is_total(row)) return std::nullopt;
    ListEntry entry;
    entry.place = place_of(row, Column::space);
    entry.panel = clean(cell(row, Column::panel));
    if (entry.panel.empty()) entry.panel = panel_;
    if (!panel_id_pattern.holds(entry.panel))
        return tl::unexpected(Complaint{place_of(row, Column::panel),
                                        fmt::format("\"{}\" cannot name a panel", entry.panel.substr(0, 40)),
                                        fmt::format("write a {}", panel_id_pattern.words)});
    const auto spaces = spaces_in(cell(row, Column::space));
    if (!spaces) return tl::unexpected(complaint(entry.place, spaces.error()));
    entry.spaces = *spaces;
    read_words(row, entry);
    if (auto wrong = read_ratings(row, entry)) return tl::unexpected(std::move(*wrong));
    if (auto wrong = read_load(row, entry)) return tl::unexpected(std::move(*wrong));
    add_notes(row, entry);
    for (const auto& [column, index] : side_.at) above_[column] = cell(row, column);
    if (entry.spaces.empty())
        return tl::unexpected(
            Complaint{entry.place, "no space is named here", "write the space, or take the line out"});
    return entry;
}

}  // namespace doorcard
