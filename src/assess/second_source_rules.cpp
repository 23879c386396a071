// SPDX-License-Identifier: MIT
// Sources that come in beside what feeds a panel: source-over-bus (705.12(B)), backfeed-not-held (408.36(D)).
#include <algorithm>

#include "assess/rule_list.hpp"
#include "assess/rule_parts.hpp"

namespace doorcard {
namespace {

/// A source that runs in parallel with what feeds the panel: not a generator, and none behind transfer equipment or an
/// interlock.
bool is_in_parallel(const Source& source) {
    const std::string kind = source.kind.value_or("other"), interlock = source.interlock.value_or("none");
    return kind != "generator" && kind != "utility" && interlock == "none";
}

/// The second sources of one panel.
struct Seconds {
    std::vector<std::size_t> breakers;  ///< that they come in through
    Amperes output;
    bool output_known = true;
};

std::vector<Seconds> seconds_by_panel(const Reckoned& all) {
    const Survey& survey = all.network.survey();
    std::vector<Seconds> found(survey.panels.size());
    for (const Source& source : survey.sources) {
        const std::size_t b = source.through ? survey.breakers.position(*source.through) : survey.breakers.size();
        if (b >= survey.breakers.size() || all.network.panel_of(b) >= found.size() || !is_in_parallel(source)) continue;
        Seconds& of = found[all.network.panel_of(b)];
        of.breakers.push_back(b);
        of.output += source.output_a.value_or(Amperes(0));
        of.output_known = of.output_known && source.output_a;
    }
    return found;
}

enum class Answer { yes, no, unknown };

/// Rows from the physical top that a breaker takes up: the first and the last.
std::pair<int, int> rows_of(const Network& network, std::size_t p, std::size_t b) {
    int first = network.geometry(p).rows(), last = 1;
    for (const int space : network.survey().breakers[b].spaces) {
        first = std::min(first, network.geometry(p).row(space));
        last = std::max(last, network.geometry(p).row(space));
    }
    return {first, last};
}

/// Whether every source comes in at the end of the bus opposite the feed; a dwelling's center-fed bus has two ends, of
/// which one may be used.
Answer opposite_the_feed(const Reckoned& all, std::size_t p, const Seconds& seconds) {
    const Panel& panel = all.network.survey().panels[p];
    if (!panel.main_at || !panel.spaces) return Answer::unknown;
    bool all_top = true, all_bottom = true;
    for (const std::size_t b : seconds.breakers) {
        const auto [first, last] = rows_of(all.network, p, b);
        all_top = all_top && first == 1;
        all_bottom = all_bottom && last == all.network.geometry(p).rows();
    }
    if (*panel.main_at == "top") return all_bottom ? Answer::yes : Answer::no;
    if (*panel.main_at == "bottom") return all_top ? Answer::yes : Answer::no;
    return (all_top || all_bottom) && !all.network.in_occupancy(p) ? Answer::yes : Answer::no;
}

/// Whether every space of a panel is accounted for: by a breaker, or looked at and empty.
bool all_entered(const Reckoned& all, std::size_t p) {
    const Panel& panel = all.network.survey().panels[p];
    if (panel.all_breakers_entered.value_or(false)) return true;
    if (!panel.spaces) return false;
    std::vector<bool> seen(static_cast<std::size_t>(*panel.spaces) + 1, false);
    const auto see = [&](int space) {
        if (space >= 1 && space <= *panel.spaces) seen[static_cast<std::size_t>(space)] = true;
    };
    for (const int space : panel.empty_spaces.value_or(std::vector<int>{})) see(space);
    for (const std::size_t b : all.network.breakers_in(p))
        for (const int space : all.network.survey().breakers[b].spaces) see(space);
    return std::all_of(seen.begin() + 1, seen.end(), [](bool one) { return one; });
}

/// All devices but the one that protects the bus within it: proven only where every breaker and rating is known.
bool devices_within(const Reckoned& all, std::size_t p, Amperes bus) {
    if (!all_entered(all, p)) return false;
    Amperes sum(0);
    for (const std::size_t b : all.network.breakers_in(p)) {
        const Breaker& breaker = all.network.survey().breakers[b];
        if (breaker.serves_as_main.value_or(false)) continue;
        if (!breaker.amps) return false;
        sum += *breaker.amps;
    }
    return !exceeds(sum, bus);
}

Finding bus_finding(const Reckoned& all, std::size_t p, Amperes device, Amperes output, bool open_question) {
    const Panel& panel = all.network.survey().panels[p];
    const double factor = all.book.figure("source-output-factor");
    Finding finding = begin_finding("source-over-bus", open_question ? Severity::notice : Severity::warning,
                                    Basis::required, address_of(all.network, {ThingKind::panel, p}));
    finding.value = (device + factor * output).value;
    finding.limit = panel.bus_a->value;
    finding.unit = "A";
    finding.text = {
        open_question
            ? tr("{0}: {1:.4g} A of device and {2:.4g} x {3:.4g} A of second source on a bus of {4:.4g} A are "
                 "right only where it comes in at the end opposite the feed: look where the bus is fed")
            : tr("{0}: {1:.4g} A of device and {2:.4g} x {3:.4g} A of second source on a bus of {4:.4g} A"),
        {panel.id, device.value, factor, output.value, panel.bus_a->value}};
    finding.remedy = {
        tr("Move the source's breaker to the end opposite the feed where that is enough; else a smaller main "
           "if the load allows it, a larger bus, or a connection ahead of the main. Lock out all sources "
           "first."),
        {}};
    finding.sources = {all.book.cite("source-output-factor"), all.book.cite("source-opposite-share"),
                       all.book.cite("nec-705-12-b-3")};
    if (panel.main_at == "center") finding.sources.push_back(all.book.cite("nec-705-12-b-4"));
    return finding;
}

void judge_bus(const Reckoned& all, std::size_t p, const Seconds& seconds, std::vector<Finding>& findings) {
    const auto bus = all.network.survey().panels[p].bus_a;
    const auto device = protecting_device(all, p);
    if (seconds.breakers.empty() || !seconds.output_known || !bus || !device) return;
    const Amperes sum = *device + all.book.figure("source-output-factor") * seconds.output;
    if (!exceeds(sum, *bus) || devices_within(all, p, *bus)) return;
    const bool small_enough = !exceeds(sum, all.book.figure("source-opposite-share") * *bus);
    const Answer opposite = small_enough ? opposite_the_feed(all, p, seconds) : Answer::no;
    if (opposite != Answer::yes)
        findings.push_back(bus_finding(all, p, *device, seconds.output, opposite == Answer::unknown));
}

/// Interactive inverters go dead with their breaker pulled: theirs need no fastener.
bool is_interactive(const Source& source) { return source.kind == "pv" || source.kind == "battery"; }

void judge_fastener(const Reckoned& all, std::size_t b, std::vector<Finding>& findings) {
    const Breaker& breaker = all.network.survey().breakers[b];
    if (breaker.hold_down.value_or(true)) return;
    bool fed = breaker.serves_as_main.value_or(false);
    for (const Source& source : all.network.survey().sources)
        if (source.through == breaker.id) fed = fed || !is_interactive(source);
    if (!fed) return;
    Finding finding = begin_finding("backfeed-not-held", Severity::warning, Basis::required,
                                    address_of(all.network, {ThingKind::breaker, b}));
    finding.text = {tr("{0}: fed from behind and held by no fastener: pulled out, its stabs stay live"),
                    {breaker_name(all.network, b)}};
    finding.remedy = {tr("Fit the fastener that the panel's maker lists for it. Lock out first."), {}};
    finding.sources = {all.book.cite("nec-408-36-d")};
    findings.push_back(std::move(finding));
}

}  // namespace

void find_second_sources(const Reckoned& all, std::vector<Finding>& findings) {
    const std::vector<Seconds> seconds = seconds_by_panel(all);
    for (std::size_t p = 0; p < seconds.size(); ++p) judge_bus(all, p, seconds[p], findings);
    for (std::size_t b = 0; b < all.network.survey().breakers.size(); ++b) judge_fastener(all, b, findings);
}

}  // namespace doorcard
