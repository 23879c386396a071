// SPDX-License-Identifier: MIT
#include "file/splices.hpp"

#include <algorithm>
#include <iterator>
#include <tuple>

namespace doorcard {

/// What stands at the very edge is inside only where it was appended to the stretch.
bool Splices::Splice::is_inside(Span stretch) const {
    if (span.begin < stretch.begin || span.end > stretch.end) return false;
    const bool is_insertion = span.begin == span.end;
    if (is_insertion && span.begin == stretch.end) return appended;
    return !is_insertion || span.begin > stretch.begin;
}

std::string Splices::applied(std::string_view text, Span within, std::vector<Splice> splices) {
    const auto earlier = [](const Splice& a, const Splice& b) {
        const auto rank = [](const Splice& s) {
            return std::tuple(s.span.begin, s.span.end != s.span.begin, !s.appended);
        };
        return rank(a) < rank(b);
    };
    std::ranges::stable_sort(splices, earlier);
    std::string result;
    result.reserve(within.end - within.begin + 64);
    std::size_t at = within.begin;
    for (const Splice& splice : splices) {
        if (splice.span.begin > at) result += text.substr(at, splice.span.begin - at);
        result += splice.bytes;
        at = std::max(at, splice.span.end);
    }
    return result += text.substr(at, within.end - at);
}

std::string Splices::cut(Span span) {
    std::vector<Splice> inside;
    const auto is_outside = [&](const Splice& splice) { return !splice.is_inside(span); };
    const auto first_inside = std::stable_partition(splices_.begin(), splices_.end(), is_outside);
    std::move(first_inside, splices_.end(), std::back_inserter(inside));
    splices_.erase(first_inside, splices_.end());
    remove(span);
    return applied(text_, span, std::move(inside));
}

std::string Splices::applied() const { return applied(text_, {0, text_.size()}, splices_); }

}  // namespace doorcard
