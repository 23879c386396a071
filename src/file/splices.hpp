// SPDX-License-Identifier: MIT
#pragma once
#include <string>
#include <string_view>
#include <vector>

#include "file/toml_scan.hpp"

namespace doorcard {

/// Changes to a text, each at its place in the text as it was, made all at once at the end. What is put in at one place
/// stands in the order in which it was given, what is appended to the stretch that ends there first, and all of it
/// before what is taken out there.
class Splices {
public:
    explicit Splices(std::string_view text) : text_(text) {}
    std::string_view text() const { return text_; }

    void insert(std::size_t at, std::string bytes) { splices_.push_back({{at, at}, std::move(bytes), false}); }
    /// The same, as part of the stretch that ends there.
    void append(std::size_t at, std::string bytes) { splices_.push_back({{at, at}, std::move(bytes), true}); }
    void remove(Span span) { splices_.push_back({span, {}, false}); }
    void replace(Span span, std::string bytes) { splices_.push_back({span, std::move(bytes), false}); }
    /// Takes a stretch out and gives it with all changes made in it so far.
    std::string cut(Span span);
    std::string applied() const;

private:
    struct Splice {
        Span span;
        std::string bytes;
        bool appended;
        bool is_inside(Span) const;
    };
    static std::string applied(std::string_view text, Span within, std::vector<Splice> splices);

    std::string_view text_;
    std::vector<Splice> splices_;
};

}  // namespace doorcard
