// SPDX-License-Identifier: MIT
#include "cli/check_json.hpp"

#include "cli/json_parts.hpp"

#include "cli/rules_used.hpp"

namespace doorcard {
namespace {

Json letters(const std::string& legs) {
    Json list = Json::array();
    for (const char leg : legs) list.push_back(std::string(1, leg));
    return list;
}

template <class Things, class Make>
Json list(const Things& things, Make make) {
    Json all = Json::array();
    for (const auto& thing : things) all.push_back(make(thing));
    return all;
}

Json finding_json(const Finding& finding, const Words& words) {
    return {{"rule", finding.rule},
            {"severity", name_of(finding.severity)},
            {"basis", name_of(finding.basis)},
            {"applies", name_of(finding.applies)},
            {"of", finding.of.text()},
            {"text", words.say(finding.text)},
            {"value", number(finding.value)},
            {"limit", number(finding.limit)},
            {"unit", finding.unit.empty() ? Json(nullptr) : Json(finding.unit)},
            {"source", sources_text(finding.sources)},
            {"remedy", words.say(finding.remedy)}};
}

Json drop_json(const OutletDrop& drop) {
    return {{"outlet", drop.outlet},
            {"voltage_drop_percent", drop.voltage_drop_percent},
            {"total_drop_percent", number(drop.total_drop_percent)}};
}

Json load_json(const LoadFigures& figures, bool feeder) {
    Json json{{"id", figures.id}};
    if (feeder) json["panel"] = figures.id;
    json["breaker"] = figures.breakers;
    json["legs"] = letters(figures.legs);
    json["volts"] = number(figures.volts);
    json["rating_a"] = number(figures.rating_a);
    json["connected_va"] = number(figures.connected_va);
    json["continuous_a"] = number(figures.continuous_a);
    json["noncontinuous_a"] = number(figures.noncontinuous_a);
    json["required_a"] = number(figures.required_a);
    json["measured_a"] = number(figures.measured_a);
    json["sustained_a"] = number(figures.sustained_a);
    json["legs_a"] = Json::object();
    for (const auto& [leg, amps] : figures.legs_a) json["legs_a"][std::string(1, leg)] = number(amps);
    json["percent_of_rating"] = number(figures.percent_of_rating);
    json["ampacity_a"] = number(figures.ampacity_a);
    json["voltage_drop_percent"] = number(figures.voltage_drop_percent);
    json["total_drop_percent"] = number(figures.total_drop_percent);
    if (!feeder) json["outlet_drops"] = list(figures.outlet_drops, drop_json);
    return json;
}

Json volts_json(const std::map<char, std::optional<Volts>>& volts) {
    Json json = Json::object();
    for (const auto& [leg, value] : volts) json[std::string(1, leg)] = number(value);
    return json;
}

Json joint_json(const JointFigures& figures) {
    return {{"outlet", figures.outlet},
            {"loop_ohm", figures.loop.value},
            {"wire_ohm", number(figures.wire)},
            {"joint_ohm", number(figures.joint)}};
}

Json neutral_json(const NeutralFigures& figures) {
    return {{"id", figures.id},
            {"circuits", figures.circuits},
            {"legs", letters(figures.legs)},
            {"amps", number(figures.amps)},
            {"triplen_amps", number(figures.triplen_amps)},
            {"measured_a", number(figures.measured_a)},
            {"explained_a", number(figures.explained_a)},
            {"residual_a", number(figures.residual_a)},
            {"imbalance_percent", number(figures.imbalance_percent)},
            {"ampacity_a", number(figures.ampacity_a)},
            {"open_volts", volts_json(figures.open_volts)}};
}

Json panel_json(const PanelFigures& figures) {
    Json legs = Json::array();
    for (const PanelLegFigures& leg : figures.legs)
        legs.push_back({{"leg", std::string(1, leg.leg)},
                        {"amps", number(leg.amps)},
                        {"va", number(leg.va)},
                        {"measured_a", number(leg.measured_a)}});
    return {{"id", figures.id},
            {"system", figures.system ? Json(facts(*figures.system).name) : Json(nullptr)},
            {"legs", std::move(legs)},
            {"neutral_amps", number(figures.neutral_amps)},
            {"imbalance_percent", number(figures.imbalance_percent)}};
}

}  // namespace

std::string sources_text(const std::vector<Citation>& sources) {
    std::string text;
    for (const Citation& source : sources) text += (text.empty() ? "" : "; ") + source.text();
    return text;
}

nlohmann::ordered_json check_json(const Assessment& assessment, const Words& words) {
    const auto finding = [&](const Finding& f) { return finding_json(f, words); };
    return {{"findings", list(assessment.findings, finding)},
            {"accepted", list(assessment.accepted, finding)},
            {"assumed", list(assessment.assumed,
                             [](const Assumption& a) {
                                 return Json{{"of", a.of}, {"key", a.key}, {"value", a.value}};
                             })},
            {"circuits", list(assessment.circuits, [](const LoadFigures& f) { return load_json(f, false); })},
            {"feeders", list(assessment.feeders, [](const LoadFigures& f) { return load_json(f, true); })},
            {"neutrals", list(assessment.neutrals, neutral_json)},
            {"panels", list(assessment.panels, panel_json)},
            {"joints", list(assessment.joints, joint_json)},
            {"rules", rules_used_json(assessment.rules)}};
}

}  // namespace doorcard
