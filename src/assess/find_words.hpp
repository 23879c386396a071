// SPDX-License-Identifier: MIT
#pragma once
#include <string>
#include <string_view>
#include <vector>

namespace doorcard {

/// How well a word that somebody looks for fits a word that was written: 1 the same, less for plurals, the word of the
/// other language, a beginning, a part; 0 not at all. Both folded. Common practice, no source.
double fit_of_words(std::string_view wanted, std::string_view written);

/// Whether it is the same word but for a slip or two.
bool is_near_miss(std::string_view wanted, std::string_view written);

/// The words of a question, folded, each once, without those that say nothing ('the', 'de'), unless there are no
/// others.
std::vector<std::string> wanted_words(std::string_view question);

}  // namespace doorcard
