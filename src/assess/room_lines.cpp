// SPDX-License-Identifier: MIT
#include <algorithm>

#include "assess/circuit_text.hpp"
#include "assess/room_reach.hpp"
#include "assess/thing_names.hpp"

namespace doorcard {
namespace {

using Parts = std::vector<Message::Part>;

enum class UseKind { equipment, receptacle, light, other };

constexpr std::size_t labels_named = 2;  // further ones are counted

// Outlets of one kind in a room that the same handles switch off.
struct Use {
    UseKind kind = UseKind::other;
    RoomLine line;
    int outlets = 0;
    std::vector<Message> names;       // of equipment
    std::vector<std::string> labels;  // of the rest
    bool whole = true;                // every outlet has a label
    bool general = false;             // named by its kind alone
};

bool same_handles(const RoomLine& a, const RoomLine& b) {
    return a.trust == b.trust && a.breakers == b.breakers && a.kept_off == b.kept_off;
}

Message comma(Message first, Message second) { return {tr("{0}, {1}"), {std::move(first), std::move(second)}}; }

Message kind_name(UseKind kind, bool single) {
    switch (kind) {
        case UseKind::equipment:
            return {tr("equipment"), {}};
        case UseKind::receptacle:
            return {single ? tr("receptacle") : tr("receptacles"), {}};
        case UseKind::light:
            return {tr("lights"), {}};
        default:
            return {single ? tr("outlet") : tr("outlets"), {}};
    }
}

// 'counter' of 'counter, left of sink'.
std::string head_of(const std::string& label) { return label.substr(0, label.find(',')); }

// What all labels begin with, where several outlets share it: 'counter'.
std::optional<std::string> common_head(const Use& use) {
    if (!use.whole || use.outlets < 2) return std::nullopt;
    const std::string head = head_of(use.labels.front());
    const bool all = std::ranges::all_of(use.labels, [&](const std::string& l) { return head_of(l) == head; });
    return all ? std::optional(in_sentence(head)) : std::nullopt;
}

Message listed(std::vector<Message> names) {
    const std::size_t more = names.size() > labels_named + 1 ? names.size() - labels_named : 0;
    if (more > 0) names.resize(labels_named);
    Message list = names.front();
    for (std::size_t i = 1; i < names.size(); ++i) list = comma(std::move(list), std::move(names[i]));
    if (more == 0) return list;
    return {tr("{0} and {1:.0f} more"), {std::move(list), static_cast<double>(more)}};
}

class RoomLines {
public:
    RoomLines(const Network& network, const std::vector<std::size_t>& outlets)
        : network_(network), survey_(network.survey()) {
        for (const std::size_t outlet : outlets) add(outlet);
    }

    std::vector<RoomLine> lines() {
        for (Use& use : uses_) use.line.what = named(use);
        join_general();
        set_apart();
        std::vector<RoomLine> found;
        for (const Use& use : uses_) add_line(found, use.line);
        return found;
    }

private:
    // What is plugged in moves: it names an outlet made for it, or one that nobody labelled otherwise.
    bool names_outlet(std::size_t index, const Load& load) const {
        const Outlet& outlet = survey_.outlets[index];
        if (outlet.kind == OutletKind::equipment) return true;
        if (network_.loads_at(index).size() != 1) return false;
        if (outlet.receptacles == 1) return true;
        if (outlet.label) return plain_form(verbatim(*outlet.label)) == plain_form(load_name(load));
        return std::ranges::all_of(network_.circuits_at(index),
                                   [&](std::size_t circuit) { return network_.outlets_on(circuit).size() == 1; });
    }

    std::vector<Message> equipment_at(std::size_t index) const {
        std::vector<Message> names;
        const Outlet& outlet = survey_.outlets[index];
        const bool known = !network_.circuits_at(index).empty();
        for (const std::size_t load : network_.loads_at(index)) {
            const Load& thing = survey_.loads[load];
            const bool named = !load_name(thing).empty() && known && names_outlet(index, thing);
            if (is_notable(thing) || named) names.push_back(in_sentence(load_name(thing)));
        }
        if (names.empty() && outlet.kind == OutletKind::equipment)
            names.push_back(outlet.label ? verbatim(in_sentence(*outlet.label)) : kind_name(UseKind::equipment, true));
        return names;
    }

    static UseKind kind_of(const Outlet& outlet) {
        if (outlet.kind == OutletKind::receptacle) return UseKind::receptacle;
        if (outlet.kind == OutletKind::lighting) return UseKind::light;
        return UseKind::other;
    }

    void add(std::size_t index) {
        const Outlet& outlet = survey_.outlets[index];
        const RoomLine line = line_of(network_, network_.circuits_at(index));
        const std::vector<Message> names = equipment_at(index);
        Use& use = use_of(names.empty() ? kind_of(outlet) : UseKind::equipment, line);
        ++use.outlets;
        for (const Message& name : names)
            if (std::ranges::find(use.names, name) == use.names.end()) use.names.push_back(name);
        if (outlet.label)
            use.labels.push_back(*outlet.label);
        else
            use.whole = false;
    }

    Use& use_of(UseKind kind, const RoomLine& line) {
        for (Use& use : uses_)
            if (use.kind == kind && same_handles(use.line, line)) return use;
        uses_.push_back({});
        uses_.back().kind = kind;
        uses_.back().line = line;
        return uses_.back();
    }

    bool alone_of_kind(const Use& use) const {
        return std::ranges::count_if(uses_, [&](const Use& other) { return other.kind == use.kind; }) == 1;
    }

    Message named(Use& use) const {
        if (use.kind == UseKind::equipment) return listed(use.names);
        const bool alone = alone_of_kind(use);
        if (const auto head = common_head(use); head && use.kind != UseKind::light) return verbatim(*head);
        const bool labelled = use.whole && (!alone || (use.outlets == 1 && use.kind != UseKind::light));
        if (!labelled) {
            use.general = true;
            return kind_name(use.kind, alone && use.outlets == 1);
        }
        std::vector<Message> names;
        for (const std::string& label : use.labels) names.push_back(verbatim(in_sentence(label)));
        return comma(kind_name(use.kind, use.outlets == 1), listed(std::move(names)));
    }

    // Outlets of one kind that nobody labelled: all of their handles, for nobody can tell them apart.
    void join_general() {
        for (auto use = uses_.begin(); use != uses_.end(); ++use)
            for (auto other = use + 1; other != uses_.end();) {
                const bool alike =
                    use->general && other->general && use->kind == other->kind && use->line.trust == other->line.trust;
                if (!alike) {
                    ++other;
                    continue;
                }
                add_handles(use->line.breakers, other->line.breakers);
                add_handles(use->line.kept_off, other->line.kept_off);
                use->line.what = kind_name(use->kind, false);
                other = uses_.erase(other);
            }
    }

    // 'receptacles' beside other receptacles of the room are not all of them, and must not read as if.
    void set_apart() {
        for (Use& use : uses_)
            if (use.general && !alone_of_kind(use))
                use.line.what = {tr("{0}, some of them"), {std::move(use.line.what)}};
    }

    void add_handles(std::vector<std::size_t>& known, const std::vector<std::size_t>& more) const {
        for (const std::size_t breaker : more)
            if (std::ranges::find(known, breaker) == known.end()) known.push_back(breaker);
        sort_handles(network_, known);
    }

    // Lines that read alike, and are as sure, are one: all of their handles.
    void add_line(std::vector<RoomLine>& lines, const RoomLine& line) const {
        for (RoomLine& known : lines) {
            if (known.trust != line.trust || plain_form(known.what) != plain_form(line.what)) continue;
            add_handles(known.breakers, line.breakers);
            add_handles(known.kept_off, line.kept_off);
            return;
        }
        lines.push_back(line);
    }

    const Network& network_;
    const Survey& survey_;
    std::vector<Use> uses_;
};

}  // namespace

std::vector<RoomLine> lines_of_room(const Network& network, const std::vector<std::size_t>& outlets) {
    return RoomLines(network, outlets).lines();
}

}  // namespace doorcard
