// SPDX-License-Identifier: MIT
#include "assess/old_work.hpp"

namespace doorcard {

std::optional<int> year_of_circuit(const Network& network, std::size_t circuit) {
    const Survey& survey = network.survey();
    const auto& installed = survey.circuits[circuit].installed;
    return installed ? installed : survey.heading.built;
}

void call_old(Finding& finding) {
    finding.applies = Applies::existing;
    finding.text = {tr("{0} (may have been lawful when installed; the hazard remains)"), {std::move(finding.text)}};
}

}  // namespace doorcard
