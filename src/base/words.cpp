// SPDX-License-Identifier: MIT
#include "base/words.hpp"

#include <fmt/args.h>
#include <fmt/format.h>

#include <algorithm>
#include <boost/locale/gnu_gettext.hpp>
#include <boost/locale/message.hpp>
#include <limits>
#include <map>
#include <stdexcept>

#include "base/built_in.hpp"

namespace doorcard {
namespace {

namespace gettext = boost::locale::gnu_gettext;
using Facet = boost::locale::message_format<char>;
using Arguments = fmt::dynamic_format_arg_store<fmt::format_context>;

constexpr int only_domain = 0;

gettext::messages_info source_of(const BuiltIn& file) {
    gettext::messages_info info;
    info.language = file.name;
    info.encoding = "UTF-8";
    info.domains.emplace_back("doorcard");
    info.paths.emplace_back("built-in");
    const std::vector<char> bytes(file.bytes.begin(), file.bytes.end());
    info.callback = [bytes](const std::string&, const std::string&) { return bytes; };
    return info;
}

std::string filled(const std::string& pattern, const Arguments& arguments) { return fmt::vformat(pattern, arguments); }

// A translator's slip in a field must not cost the reader the sentence: then it stands in English.
std::string filled_or_english(const std::string& translated, const std::string& english, const Arguments& arguments) {
    if (translated == english) return filled(english, arguments);
    try {
        return filled(translated, arguments);
    } catch (const fmt::format_error&) {
        return filled(english, arguments);
    }
}

int plural_number(long number) {
    constexpr long most = std::numeric_limits<int>::max();
    return static_cast<int>(std::clamp(number, -most, most));
}

}  // namespace

struct Words::Catalogue {
    std::locale locale;  // owns the facet
    const Facet* facet;

    explicit Catalogue(const BuiltIn& file)
        : locale(std::locale::classic(), gettext::create_messages_facet<char>(source_of(file))),
          facet(&std::use_facet<Facet>(locale)) {}

    static std::shared_ptr<const Catalogue> of(std::string_view language) {
        static const auto all = [] {
            std::map<std::string_view, std::shared_ptr<const Catalogue>> read;
            for (const BuiltIn& file : built_in_catalogues()) read[file.name] = std::make_shared<const Catalogue>(file);
            return read;
        }();
        const auto found = all.find(language);
        return found == all.end() ? nullptr : found->second;
    }
};

Words Words::in(std::string_view language) {
    Words words;
    words.language_ = language;
    words.catalogue_ = Catalogue::of(language);
    if (!words.catalogue_ && language != "en")
        throw std::invalid_argument(fmt::format("no catalogue for language '{}'", language));
    return words;
}

Words Words::from(std::string_view language, std::string_view catalogue) {
    Words words;
    words.language_ = language;
    words.catalogue_ = std::make_shared<const Catalogue>(BuiltIn{language, catalogue});
    return words;
}

std::vector<std::string> Words::languages() {
    std::vector<std::string> names{"en"};
    for (const BuiltIn& file : built_in_catalogues()) names.emplace_back(file.name);
    return names;
}

std::string Words::operator()(const char* english) const {
    if (!catalogue_ || *english == '\0') return english;  // the empty key holds the catalogue's own header
    const char* translated = catalogue_->facet->get(only_domain, nullptr, english);
    return translated ? translated : english;
}

std::string Words::count(const char* one, const char* many, long number) const {
    const std::string english = number == 1 ? one : many;
    const char* translated =
        catalogue_ ? catalogue_->facet->get(only_domain, nullptr, one, plural_number(number)) : nullptr;
    Arguments arguments;
    arguments.push_back(number);
    return filled_or_english(translated ? translated : english, english, arguments);
}

std::string Words::say(const Message& message) const {
    if (message.empty()) return {};
    Arguments arguments;
    for (const Message::Part& part : message.parts) {
        if (const auto* nested = std::get_if<Message>(&part))
            arguments.push_back(say(*nested));
        else if (const auto* text = std::get_if<std::string>(&part))
            arguments.push_back(*text);
        else
            arguments.push_back(std::get<double>(part));
    }
    return filled_or_english((*this)(message.pattern), message.pattern, arguments);
}

}  // namespace doorcard
