// SPDX-License-Identifier: MIT
// Heat at a breaker, by what was seen, heard or smelt and by temperatures taken together: heat-at-breaker.
#include <algorithm>
#include <array>

#include "assess/rule_list.hpp"
#include "assess/rule_parts.hpp"

namespace doorcard {
namespace {

struct Sign {
    const char* key;
    const char* words;
    Severity severity;
};

constexpr std::array known_signs = {
    Sign{"scorch", tr("scorched"), Severity::danger},          Sign{"melted", tr("melted"), Severity::danger},
    Sign{"smell", tr("a smell of burning"), Severity::danger}, Sign{"buzz", tr("a buzz"), Severity::warning},
    Sign{"hot", tr("hot to the hand"), Severity::notice},      Sign{"loose", tr("loose"), Severity::notice}};

/// The temperature of a breaker at one moment, and the load that it had then.
struct Warmth {
    std::size_t breaker = 0;
    std::size_t moment = 0;
    Celsius degrees;
    std::optional<Amperes> load;
};

std::size_t moment_of(const Reckoned& all, const Reading* reading) {
    return all.readings.moments_with({reading}).front();
}

/// The current read on a breaker, or on its only circuit, at a moment.
std::optional<Amperes> load_at(const Reckoned& all, std::size_t b, std::size_t moment) {
    const Survey& survey = all.network.survey();
    std::vector<const Reading*> readings = all.readings.of(ThingKind::breaker, survey.breakers[b].id);
    if (const auto& circuits = all.network.circuits_on(b); circuits.size() == 1) {
        const auto& more = all.readings.of(ThingKind::circuit, survey.circuits[circuits.front()].id);
        readings.insert(readings.end(), more.begin(), more.end());
    }
    std::optional<Amperes> most;
    for (const Reading* reading : readings)
        if (reading->amps && is_of_hots(*reading) && moment_of(all, reading) == moment)
            most = std::max(most.value_or(*reading->amps), *reading->amps);
    return most;
}

std::vector<Warmth> warmths_in(const Reckoned& all, std::size_t panel) {
    std::vector<Warmth> found;
    for (const std::size_t b : all.network.breakers_in(panel))
        for (const Reading* reading : all.readings.of(ThingKind::breaker, all.network.survey().breakers[b].id)) {
            if (!reading->temp_c) continue;
            const std::size_t moment = moment_of(all, reading);
            found.push_back({b, moment, *reading->temp_c, load_at(all, b, moment)});
        }
    return found;
}

/// Ratings alike, and loads within a share of them.
bool are_alike(const Reckoned& all, const Warmth& one, const Warmth& other) {
    const Breaker& a = all.network.survey().breakers[one.breaker];
    const Breaker& b = all.network.survey().breakers[other.breaker];
    if (one.breaker == other.breaker || one.moment != other.moment || !one.load || !other.load) return false;
    if (!a.amps || a.amps != b.amps || a.poles() != b.poles()) return false;
    if (a.device.value_or("breaker") != b.device.value_or("breaker")) return false;
    return !exceeds(abs(*one.load - *other.load), all.book.figure("heat-like-load") * *a.amps);
}

/// The most that a breaker stands above a like one.
std::optional<double> degrees_above(const Reckoned& all, std::size_t b, const std::vector<Warmth>& warmths) {
    std::optional<double> most;
    for (const Warmth& one : warmths) {
        if (one.breaker != b) continue;
        for (const Warmth& other : warmths)
            if (are_alike(all, one, other)) {
                const double above = (one.degrees - other.degrees).value;
                most = std::max(most.value_or(above), above);
            }
    }
    return most;
}

struct Heat {
    std::optional<Severity> severity;
    std::optional<double> degrees, limit;
    std::vector<Message::Part> signs;

    void take(Severity one) { severity = severity ? std::min(*severity, one) : one; }
};

void take_signs(const Breaker& breaker, Heat& heat) {
    if (!breaker.signs) return;
    for (const Sign& sign : known_signs)
        if (std::ranges::find(*breaker.signs, sign.key) != breaker.signs->end()) {
            heat.take(sign.severity);
            heat.signs.emplace_back(Message{sign.words, {}});
        }
}

void take_degrees(std::optional<double> above, const RuleBook& book, Heat& heat) {
    const double caution = book.figure("heat-difference-caution"), danger = book.figure("heat-difference-danger");
    if (!above || exceeds(caution, *above)) return;
    const bool over = exceeds(*above, danger);
    heat.degrees = above;
    heat.limit = over ? danger : caution;
    heat.take(over ? for_measured(Severity::danger, *above, danger, book) : Severity::caution);
}

Message heat_text(const std::string& name, const Heat& heat) {
    if (!heat.degrees) return {tr("{0}: {1}"), {name, and_list(heat.signs)}};
    Message degrees{tr("{0:.3g} °C above a like breaker under like load"), {*heat.degrees}};
    if (heat.signs.empty()) return {tr("{0}: {1}"), {name, std::move(degrees)}};
    return {tr("{0}: {1}; {2}"), {name, and_list(heat.signs), std::move(degrees)}};
}

void judge_breaker(const Reckoned& all, std::size_t b, const std::vector<Warmth>& warmths,
                   std::vector<Finding>& findings) {
    Heat heat;
    take_signs(all.network.survey().breakers[b], heat);
    take_degrees(degrees_above(all, b, warmths), all.book, heat);
    if (!heat.severity) return;
    Finding finding = begin_finding("heat-at-breaker", *heat.severity, Basis::practice,
                                    address_of(all.network, {ThingKind::breaker, b}));
    finding.value = heat.degrees;
    finding.limit = heat.limit;
    if (heat.degrees) finding.unit = "°C";
    finding.text = heat_text(breaker_name(all.network, b), heat);
    finding.remedy = {
        *heat.severity <= Severity::warning
            ? tr("Switch it off and leave it off; lock out, then look at breaker, bus and terminals before "
                 "anything is used again.")
            : tr("Lock out; look at bus and terminals and tighten them as marked; measure again under load."),
        {}};
    finding.sources = {all.book.cite("heat-difference-caution"), all.book.cite("nec-110-14")};
    findings.push_back(std::move(finding));
}

}  // namespace

void find_heat(const Reckoned& all, std::vector<Finding>& findings) {
    for (std::size_t p = 0; p < all.network.survey().panels.size(); ++p) {
        const std::vector<Warmth> warmths = warmths_in(all, p);
        for (const std::size_t b : all.network.breakers_in(p)) judge_breaker(all, b, warmths, findings);
    }
}

}  // namespace doorcard
