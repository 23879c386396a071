// SPDX-License-Identifier: MIT
#include "desk/face_words.hpp"

#include <fmt/format.h>

#include "sheet/panel_facts.hpp"

namespace doorcard {
namespace {

constexpr const char* dash = "–";

std::string rating_words(const RowLoad& load) { return load.rating ? fmt::format("{:g}", load.rating->value) : dash; }

}  // namespace

std::string figures_words(const RowLoad& load, const Words& words) {
    const auto most = load.most();
    if (!most || (load.is_at_least && most->value == 0)) return dash;
    const bool is_floor = load.is_at_least && !load.most_is_measured();
    return words.say({is_floor ? tr("≥ {0:.1f} of {1}") : tr("{0:.1f} of {1}"), {most->value, rating_words(load)}});
}

std::string load_words(const RowLoad& load, const Words& words) {
    std::string text;
    if (load.calculated)
        text = words.say({load.is_at_least ? tr("calculated at least {0:.1f} A") : tr("calculated {0:.1f} A"),
                          {load.calculated->value}});
    if (load.measured)
        text += (text.empty() ? "" : ", ") + words.say({tr("measured {0:.1f} A"), {load.measured->value}});
    if (text.empty()) text = words(tr("load not known"));
    if (!load.rating) return text + ", " + words(tr("rating not seen"));
    if (const auto share = load.share())
        return words.say({*share > 1 ? tr("{0}, of {1} A: {2:.0f} %, past the rating") : tr("{0}, of {1} A: {2:.0f} %"),
                          {text, rating_words(load), *share * 100}});
    return words.say({tr("{0}, of {1} A"), {text, rating_words(load)}});
}

Message handles_message(const FaceFacts& facts, const std::vector<std::size_t>& breakers) {
    std::vector<Message::Part> handles;
    for (const std::size_t at : breakers) {
        const Breaker& breaker = facts.network.survey().breakers[at];
        const std::string name = name_of(positions_of(breaker));
        handles.emplace_back(facts.network.panel_of(at) == facts.panel ? name : breaker.panel + " " + name);
    }
    return and_list(std::move(handles));
}

namespace {

std::string with_warning(const RowNeutral& neutral, const Message& handles, const Message& amps, const Words& words) {
    if (neutral.is_on_one_leg) return words.say({tr("{0}: {1}, same leg"), {handles, amps}});
    if (neutral.is_over) return words.say({tr("{0}: {1}, past its wire"), {handles, amps}});
    return words.say({tr("{0}: {1}"), {handles, amps}});
}

}  // namespace

std::string neutral_words(const RowNeutral& neutral, const Message& handles, const Words& words) {
    const Message amps =
        neutral.amps ? Message{tr("neutral {0:.1f} A"), {neutral.amps->value}} : Message{tr("shared neutral"), {}};
    return with_warning(neutral, handles, amps, words);
}

std::string short_neutral_words(const RowNeutral& neutral, const Message& handles, const Words& words) {
    const Message amps = neutral.amps ? Message{tr("{0:.1f} A"), {neutral.amps->value}} : Message{tr("neutral"), {}};
    return with_warning(neutral, handles, amps, words);
}

std::string traced_words(const FaceFacts& facts, const Words& words) {
    return words.say({tr("{0:.0f} of {1:.0f} traced"),
                      {static_cast<double>(facts.directory.traced), static_cast<double>(facts.directory.in_use())}});
}

std::string panel_words(const FaceFacts& facts, const Words& words) {
    const Panel& panel = facts.panel_of();
    std::string text = system_text(facts.network, facts.panel, words);
    if (panel.bus_a) text += ", " + words.say({tr("bus {0:g} A"), {panel.bus_a->value}});
    if (panel.location && !panel.location->empty()) text += ", " + *panel.location;
    return text;
}

std::string main_words(const Panel& panel, const Words& words) {
    const Message amps =
        panel.main_a ? Message{tr("{0:g} A"), {panel.main_a->value}} : Message{tr("rating not seen"), {}};
    if (!panel.main) return words(tr("main: not seen"));
    if (panel.main == MainKind::breaker) return words.say({tr("main {0}"), {amps}});
    if (panel.main == MainKind::fuses) return words.say({tr("main fuses {0}"), {amps}});
    if (panel.main == MainKind::split_bus) return words(tr("split bus: several mains"));
    return words(tr("no main here: lugs"));
}

}  // namespace doorcard
