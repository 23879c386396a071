// SPDX-License-Identifier: MIT
#include "desk/face_words.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "desk/face_picture.hpp"
#include "sheet/finding_words.hpp"
#include "sheet/panel_facts.hpp"

namespace doorcard {
namespace {

std::string device_words(const Breaker& breaker, const std::string& legs, const Words& words) {
    std::string text = rating_text(breaker) + " A";
    if (breaker.poles() > 1)
        text += ", " + words.count(trn("{0} pole", "{0} poles"), static_cast<long>(breaker.poles()));
    if (!legs.empty()) text += ", " + words.say({tr("leg {0}"), {legs}});
    if (breaker.guards && std::ranges::find(*breaker.guards, Guard::ground) != breaker.guards->end())
        text += ", " + words(tr("ground guard"));
    if (breaker.guards && std::ranges::find(*breaker.guards, Guard::arc) != breaker.guards->end())
        text += ", " + words(tr("arc guard"));
    if (breaker.tied_with && !breaker.tied_with->empty())
        text +=
            ", " + words.say({tr("tied with {0}"), {and_list({breaker.tied_with->begin(), breaker.tied_with->end()})}});
    return text;
}

std::string shared_words(const FaceFacts& facts, std::size_t breaker, const Words& words) {
    std::string text;
    for (const std::size_t circuit : facts.network.circuits_on(breaker)) {
        const Circuit& of = facts.network.survey().circuits[circuit];
        const auto found = of.neutral ? facts.neutrals.find(*of.neutral) : facts.neutrals.end();
        if (found == facts.neutrals.end()) continue;
        text += text.empty() ? "" : "; ";
        text += neutral_words(found->second, verbatim(*of.neutral), words);
    }
    return text;
}

FaceListRow list_row(const FaceFacts& facts, const DirectoryRow& row, const Words& words) {
    FaceListRow line;
    line.position = row.positions.front();
    line.space = name_of(row.positions);
    line.what = words.say(row.text);
    if (row.claimed) line.what += ", " + words(tr("only claimed"));
    if (!row.breaker) return line;
    const Breaker& breaker = facts.network.survey().breakers[*row.breaker];
    line.device = device_words(breaker, facts.network.breaker_legs(*row.breaker), words);
    if (const auto load = facts.loads.find(breaker.id); load != facts.loads.end() && row.kind != RowKind::spare)
        line.load = figures_words(load->second, words);
    line.neutral = shared_words(facts, *row.breaker, words);
    if (const auto worst = facts.worst.find(breaker.id); worst != facts.worst.end())
        line.finding = signal_word(worst->second, words) + ": " + words.say(facts.worst_text.at(breaker.id));
    return line;
}

}  // namespace

std::optional<double> share_of(const RowLoad& load) {
    if (!load.rating || (!load.calculated && !load.measured)) return std::nullopt;
    const double most =
        std::max(load.calculated ? load.calculated->value : 0, load.measured ? load.measured->value : 0);
    return most / load.rating->value;
}

std::string figures_words(const RowLoad& load, const Words& words) {
    const std::string rating = load.rating ? fmt::format("{:g}", load.rating->value) : "–";
    const bool measured = load.measured && (!load.calculated || load.measured->value >= load.calculated->value);
    if (measured) return words.say({tr("{0:.1f} of {1}"), {load.measured->value, rating}});
    if (!load.calculated || (load.is_at_least && load.calculated->value == 0)) return "–";
    return words.say(
        {load.is_at_least ? tr(">= {0:.1f} of {1}") : tr("{0:.1f} of {1}"), {load.calculated->value, rating}});
}

std::string neutral_words(const RowNeutral& neutral, const Message& spaces, const Words& words) {
    const Message amps =
        neutral.amps ? Message{tr("neutral {0:.1f} A"), {neutral.amps->value}} : Message{tr("neutral shared"), {}};
    return words.say({neutral.is_on_one_leg ? tr("{0}: {1}, same leg") : tr("{0}: {1}"), {spaces, amps}});
}

std::string traced_words(const FaceFacts& facts, const Words& words) {
    return words.say({tr("{0:.0f} of {1:.0f} traced"),
                      {static_cast<double>(facts.directory.traced), static_cast<double>(facts.directory.in_use())}});
}

std::string panel_words(const FaceFacts& facts, const Words& words) {
    const Panel& panel = facts.panel_of();
    std::string text = panel.title ? panel.id : "";
    const auto add = [&](const std::string& more) {
        if (!more.empty()) text += (text.empty() ? "" : ", ") + more;
    };
    add(system_text(facts.network, facts.panel, words));
    if (panel.bus_a) add(words.say({tr("bus {0:g} A"), {panel.bus_a->value}}));
    add(panel.location.value_or(""));
    return text;
}

std::vector<FaceListRow> face_list(const FaceFacts& facts, const Words& words) {
    std::vector<FaceListRow> rows;
    for (const DirectoryRow& row : facts.directory.rows) rows.push_back(list_row(facts, row, words));
    return rows;
}

std::string face_row_words(const FaceFacts& facts, Position position, const Words& words) {
    for (const DirectoryRow& row : facts.directory.rows) {
        if (std::ranges::find(row.positions, position) == row.positions.end()) continue;
        const FaceListRow line = list_row(facts, row, words);
        std::string text = line.space;
        for (const std::string* part : {&line.what, &line.device, &line.load, &line.neutral, &line.finding})
            if (!part->empty()) text += ", " + *part;
        return text;
    }
    return name_of(position);
}

}  // namespace doorcard
