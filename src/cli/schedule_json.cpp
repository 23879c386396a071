// SPDX-License-Identifier: MIT
#include "cli/schedule_json.hpp"

#include "cli/json_parts.hpp"
#include "file/enum_words.hpp"
#include "sheet/panel_facts.hpp"

namespace doorcard {
namespace {

template <class T>
Json text(const std::optional<T>& value) {
    return value ? Json(*value) : Json(nullptr);
}

template <class E>
Json word(const std::optional<E>& value) {
    return value ? Json(enum_words<E>[static_cast<std::size_t>(*value)]) : Json(nullptr);
}

template <class T>
Json by_leg(const ByLeg<T>& figures) {
    Json json = Json::object();
    for (const auto& [leg, figure] : figures) json[std::string(1, leg)] = number(figure);
    return json;
}

Json length_json(const std::optional<Length>& length) { return length ? Json(length->feet().value) : Json(nullptr); }

Json wire_json(const Wire& wire) {
    return {{"size", text(wire.size)},
            {"metal", word(wire.metal)},
            {"insulation", text(wire.insulation)},
            {"method", text(wire.method)},
            {"length_ft", length_json(wire.length)},
            {"sets", wire.sets.value_or(1)}};
}

class RowJson {
public:
    RowJson(const Network& network, const ScheduleRow& row, const Words& words)
        : survey_(network.survey()),
          row_(row),
          words_(words),
          breaker_(row.entry.breaker ? &survey_.breakers[*row.entry.breaker] : nullptr) {}

    Json json() const {
        Json json{{"spaces", spaces_json(row_.positions())},
                  {"halves", halves_json(row_.positions())},
                  {"side", row_.on_left ? "left" : "right"},
                  {"circuits", circuits()},
                  {"text", words_.say(row_.entry.text)},
                  {"under", row_.entry.under.empty() ? Json(nullptr) : Json(words_.say(row_.entry.under))},
                  {"class", row_.duties.empty() ? Json(nullptr) : Json(class_word(row_.duties.front()))},
                  {"device", breaker_ ? Json(breaker_->device.value_or("breaker")) : Json(nullptr)}};
        add_device(json);
        add_figures(json);
        return json;
    }

private:
    Json circuits() const {
        Json ids = Json::array();
        for (const std::size_t circuit : row_.entry.circuits) ids.push_back(survey_.circuits[circuit].id);
        return ids;
    }

    void add_device(Json& json) const {
        json["amps"] = breaker_ ? number(breaker_->amps) : Json(nullptr);
        json["poles"] = breaker_ ? Json(breaker_->poles()) : Json(nullptr);
        json["guards"] = breaker_ ? guards_json(*breaker_) : Json(nullptr);
        json["state"] = breaker_ ? word(std::optional(breaker_->state.value_or(BreakerState::in_use)))
                        : row_.entry.kind == RowKind::space ? Json("space")
                                                            : Json(nullptr);
        json["wire"] = row_.wires.empty() ? Json(nullptr) : wire_json(row_.wires.front());
        json["wires"] = Json::array();
        for (const Wire& wire : row_.wires) json["wires"].push_back(wire_json(wire));
        json["ground_size"] = text(row_.ground_size);
        json["neutral"] = text(row_.neutral);
    }

    void add_figures(Json& json) const {
        json["va"] = by_leg(row_.va);
        json["va_complete"] = row_.va_complete;
        json["connected_va"] = number(row_.connected_va);
        json["continuous_va"] = number(row_.continuous_va);
        json["measured_a"] = by_leg(row_.measured_a);
        json["measured_highest_a"] = number(row_.measured_highest_a);
        json["percent_of_rating"] = number(row_.percent_of_rating);
        json["percent_by"] = !row_.percent_of_rating ? Json(nullptr)
                             : row_.percent_measured ? Json("measured")
                                                     : Json("calculated");
        json["traced"] = text(row_.traced);
        json["claimed"] = row_.entry.claimed;
    }

    const Survey& survey_;
    const ScheduleRow& row_;
    const Words& words_;
    const Breaker* breaker_;
};

Json legs_json(const std::vector<ScheduleLeg>& legs) {
    Json list = Json::array();
    for (const ScheduleLeg& leg : legs)
        list.push_back({{"leg", std::string(1, leg.leg)},
                        {"connected_va", number(leg.connected_va)},
                        {"connected_a", number(leg.connected_a)},
                        {"measured_a", number(leg.measured_a)},
                        {"va_complete", leg.complete}});
    return list;
}

Json spaces_counted(const SpaceCounts& spaces) {
    return {{"total", number(spaces.total)},
            {"used", spaces.used},
            {"spare", spaces.spare},
            {"empty", spaces.empty},
            {"unseen", spaces.unseen}};
}

void add_totals(Json& json, const PanelSchedule& schedule, const Words& words) {
    json["legs"] = legs_json(schedule.legs);
    json["demand_lines"] = Json::array();
    json["connected_va"] = number(schedule.connected_va);
    json["va_complete"] = schedule.complete;
    json["demand_va"] = nullptr;
    json["demand_a"] = nullptr;
    json["neutral_a"] = number(schedule.neutral_a);
    json["rating_a"] = number(schedule.rating_a);
    json["room_a"] = nullptr;
    json["imbalance_percent"] = number(schedule.imbalance_percent);
    json["spaces"] = spaces_counted(schedule.spaces);
    json["missing"] = Json::array();
    for (const ScheduleGap& gap : schedule.missing) json["missing"].push_back(words.say(gap.text()));
}

Json panel_json(const Network& network, const PanelSchedule& schedule, const Words& words) {
    const Panel& panel = network.survey().panels[schedule.panel];
    const auto system = network.supply(schedule.panel).system;
    Json json{{"id", panel.id},
              {"title", text(panel.title)},
              {"fed_from", panel.fed_by},
              {"system", system ? Json(facts(*system).name) : Json(nullptr)},
              {"bus_a", number(panel.bus_a)},
              {"main", {{"kind", word(panel.main)}, {"amps", number(panel.main_a)}}},
              {"feeder", panel.feeder ? wire_json(*panel.feeder) : Json(nullptr)},
              {"fault_ka", number(schedule.fault_ka)},
              {"least_interrupting_ka", number(schedule.least_interrupting_ka)},
              {"rows", Json::array()}};
    for (const ScheduleRow& row : schedule.rows) json["rows"].push_back(RowJson(network, row, words).json());
    add_totals(json, schedule, words);
    return json;
}

}  // namespace

nlohmann::ordered_json schedule_json(const Network& network, const std::vector<PanelSchedule>& schedules,
                                     const std::vector<std::string>& panels, const Words& words) {
    Json list = Json::array();
    for (const PanelSchedule& schedule : schedules)
        if (is_chosen(panels, network.survey().panels[schedule.panel].id))
            list.push_back(panel_json(network, schedule, words));
    return {{"panels", std::move(list)}};
}

}  // namespace doorcard
