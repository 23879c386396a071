// SPDX-License-Identifier: MIT
#include "file/toml_text.hpp"

#include <toml++/toml.h>

#include <cassert>

#include "file/key_scan.hpp"

namespace doorcard {
namespace {

const toml::node& node_of(const void* node) { return *static_cast<const toml::node*>(node); }

Place place_of(const toml::source_region& region) {
    return {std::max(region.begin.line, toml::source_index{1}), std::max(region.begin.column, toml::source_index{1})};
}

std::int64_t nanosecond_of_day(const toml::time& time) {
    const std::int64_t seconds = (std::int64_t{time.hour} * 60 + time.minute) * 60 + time.second;
    return seconds * 1'000'000'000 + time.nanosecond;
}

Moment moment_of(const toml::date& date) { return {date.year, date.month, date.day, {}, {}}; }

Moment moment_of(const toml::date_time& written) {
    Moment moment = moment_of(written.date);
    moment.nanosecond_of_day = nanosecond_of_day(written.time);
    if (written.offset) moment.offset_minutes = written.offset->minutes;
    return moment;
}

Complaint complaint_of(const toml::parse_error& error) {
    return {place_of(error.source()), std::string(error.description()),
            "write it as TOML 1.0 has it; the rest was not read"};
}

}  // namespace

struct TomlText::Parsed {
    toml::table table;
};

TomlNode::Kind TomlNode::kind() const {
    switch (node_of(node_).type()) {
        case toml::node_type::string:
            return Kind::text;
        case toml::node_type::integer:
            return Kind::whole;
        case toml::node_type::floating_point:
            return Kind::number;
        case toml::node_type::boolean:
            return Kind::flag;
        case toml::node_type::date:
            return Kind::date;
        case toml::node_type::time:
            return Kind::time_of_day;
        case toml::node_type::date_time:
            return Kind::moment;
        case toml::node_type::array:
            return Kind::list;
        default:
            return Kind::table;
    }
}

Place TomlNode::place() const { return place_of(node_of(node_).source()); }
const std::string& TomlNode::text() const { return node_of(node_).as_string()->get(); }
std::int64_t TomlNode::whole() const { return node_of(node_).as_integer()->get(); }
bool TomlNode::flag() const { return node_of(node_).as_boolean()->get(); }
std::size_t TomlNode::size() const { return node_of(node_).as_array()->size(); }

double TomlNode::number() const {
    return is(Kind::whole) ? static_cast<double>(whole()) : node_of(node_).as_floating_point()->get();
}

Moment TomlNode::moment() const {
    return is(Kind::date) ? moment_of(node_of(node_).as_date()->get())
                          : moment_of(node_of(node_).as_date_time()->get());
}

TomlNode TomlNode::operator[](std::size_t index) const {
    return TomlNode(&static_cast<const toml::node&>((*node_of(node_).as_array())[index]));
}

void TomlNode::members_into(std::vector<TomlMember>& members) const {
    members.clear();
    for (const auto& [key, node] : *node_of(node_).as_table())
        members.push_back({key.str(), place_of(key.source()), TomlNode(&node)});
}

TomlText::TomlText(std::unique_ptr<Parsed> parsed) : parsed_(std::move(parsed)) {}
TomlText::TomlText(TomlText&&) noexcept = default;
TomlText& TomlText::operator=(TomlText&&) noexcept = default;
TomlText::~TomlText() = default;
TomlNode TomlText::root() const { return TomlNode(&static_cast<const toml::node&>(parsed_->table)); }

Outcome<TomlText> TomlText::parse(std::string_view bytes) {
    if (auto refused = refused_before_parsing(bytes)) return tl::unexpected(std::vector{std::move(*refused)});
    try {
        return TomlText(std::make_unique<Parsed>(Parsed{toml::parse(bytes)}));
    } catch (const toml::parse_error& error) {
        return tl::unexpected(std::vector{complaint_of(error)});
    }
}

std::string_view name_of(TomlNode::Kind kind) {
    switch (kind) {
        case TomlNode::Kind::text:
            return "text";
        case TomlNode::Kind::whole:
            return "a whole number";
        case TomlNode::Kind::number:
            return "a number";
        case TomlNode::Kind::flag:
            return "true or false";
        case TomlNode::Kind::date:
            return "a date";
        case TomlNode::Kind::time_of_day:
            return "a time of day without a date";
        case TomlNode::Kind::moment:
            return "a date and time";
        case TomlNode::Kind::list:
            return "a list";
        case TomlNode::Kind::table:
            return "a table";
    }
    return "";
}

}  // namespace doorcard
