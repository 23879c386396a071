// SPDX-License-Identifier: MIT
#include "survey/edits/edit.hpp"

#include "survey/edits/laws.hpp"

namespace doorcard {

tl::unexpected<std::vector<Complaint>> refused(std::string wrong, std::string right) {
    return tl::unexpected(std::vector{Complaint{{}, std::move(wrong), std::move(right)}});
}

Outcome<Survey> kept_laws(Survey survey) {
    if (auto broken = broken_law(survey)) return tl::unexpected(std::vector{std::move(*broken)});
    return survey;
}

Outcome<Survey> kept_laws(const Survey& before, Survey after) {
    if (still_keeps_laws(before, after)) return after;
    return kept_laws(std::move(after));
}

Edit together(Message name, std::vector<Edit> edits) {
    return {std::move(name), [edits = std::move(edits)](Survey survey) {
                Outcome<Survey> outcome = std::move(survey);
                for (const Edit& edit : edits) {
                    if (!outcome) return outcome;
                    outcome = edit.apply(std::move(*outcome));
                }
                return outcome;
            }};
}

}  // namespace doorcard
