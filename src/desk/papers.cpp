// SPDX-License-Identifier: MIT
#include "desk/papers.hpp"

#include "sheet/card_back.hpp"
#include "sheet/correction_list.hpp"
#include "sheet/schedule.hpp"

namespace doorcard {
namespace {

Paper paper_of(PaperSize size, bool landscape) {
    if (landscape) return size == PaperSize::a4 ? a4_landscape : letter_landscape;
    if (size == PaperSize::half_letter) return half_letter_paper;
    return size == PaperSize::a4 ? a4_paper : letter_paper;
}

}  // namespace

Message name_of(PaperKind kind) {
    constexpr const char* names[] = {tr("Front"), tr("Back, by room"), tr("Schedule"), tr("Corrections")};
    return {names[static_cast<std::size_t>(kind)], {}};
}

Sheet paper_sheet(const PaperChoice& choice, const Assessed& assessed, const RuleBook& book, const Words& words) {
    if (!assessed.survey.panels.contains(choice.panel)) return {};
    const Network network = network_of(assessed.survey);
    const CardChoice card{{choice.panel}, paper_of(choice.size, false), {}, book.cite("nec-408-4-b").text()};
    switch (choice.kind) {
        case PaperKind::front:
            return card_sheet(network, assessed.assessment, card, words);
        case PaperKind::back:
            return card_back_sheet(network, assessed.assessment, card, words);
        case PaperKind::schedule:
            return schedule_sheet(network, schedules_of(network, assessed.assessment, book),
                                  {{choice.panel}, paper_of(choice.size, true)}, words);
        case PaperKind::corrections:
            return correction_list(network, assessed.assessment, {paper_of(choice.size, false), book.edition(), ""},
                                   words);
    }
    return {};
}

}  // namespace doorcard
