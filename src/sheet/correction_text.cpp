// SPDX-License-Identifier: MIT
#include "sheet/correction_parts.hpp"
#include "sheet/panel_facts.hpp"
#include "sheet/plain_lines.hpp"

namespace doorcard {
namespace {

class TextList {
public:
    explicit TextList(const CorrectionContent& content) : content_(content), words_(content.words) {}

    std::vector<std::string> lines() {
        head();
        std::size_t number = 0;
        for (const Finding* finding : content_.part.items) item(*finding, ++number);
        notices();
        if (content_.part.items.empty() && content_.part.notices.empty()) {
            add(nothing_found(words_));
            lines_.emplace_back();
        }
        foot();
        return std::move(lines_);
    }

private:
    static constexpr std::size_t indent = 4;

    void add(const std::string& text, std::size_t blanks = 0) {
        for (const std::string& line : wrapped(text, plain_columns - blanks))
            lines_.push_back(std::string(blanks, ' ') + line);
    }
    /// "[ ] 1  DANGER: ..."
    void add_boxed(const std::string& text) {
        bool first = true;
        for (const std::string& line : wrapped(text, plain_columns - indent)) {
            lines_.push_back((first ? "[ ] " : "    ") + line);
            first = false;
        }
    }

    void head() {
        add(part_name(content_) + "   " + part_title(content_));
        if (content_.survey().heading.title) add(*content_.survey().heading.title);
        if (content_.of_panel())
            add(words_(tr("fed from")) + ": " + fed_from_text(content_.network, content_.part.panel, words_));
        if (const std::string counts = counts_text(content_.part, words_); !counts.empty()) add(counts);
        if (!content_.choice.left_out.empty()) add(content_.choice.left_out);
        lines_.emplace_back();
    }

    void item(const Finding& finding, std::size_t number) {
        add_boxed(std::to_string(number) + "  " + signal_word(finding.severity, words_) + ": " +
                  words_.say(finding.text));
        add(words_.say(finding.remedy), indent);
        add(short_sources(finding.sources, words_) + "; " + basis_text(finding, words_), indent);
        add(words_(tr("date ____________  initials ______")), indent);
        lines_.emplace_back();
    }

    void notices() {
        constexpr std::size_t most_named = 60;
        if (content_.part.notices.empty()) return;
        add(words_(tr("Notices, and what nobody has looked at yet: tick what was seen to")));
        for (const NoticeGroup& group : content_.part.notices)
            for (const std::string& line : notice_lines(content_.network, group, most_named, words_)) add_boxed(line);
        lines_.emplace_back();
    }

    void foot() {
        add(words_(tr("Off here is not proof of dead. Test before you touch.")));
        add(words_(tr("Work inside is for qualified persons: lock out, tag, test dead.")) + " " +
            words_(tr("Not a permit. Local code and the authority having jurisdiction decide.")));
        add(content_.choice.rules + "   " + dated(content_.survey(), words_));
        lines_.emplace_back();
    }

    const CorrectionContent& content_;
    const Words& words_;
    std::vector<std::string> lines_;
};

}  // namespace

std::vector<std::string> correction_lines(const CorrectionContent& content) { return TextList(content).lines(); }

}  // namespace doorcard
