// SPDX-License-Identifier: MIT
#include "file/list_text.hpp"

#include <glib.h>

#include <memory>

namespace doorcard {
namespace {

struct Freed {
    void operator()(char* text) const { g_free(text); }
};

tl::unexpected<std::vector<Complaint>> refused(std::string wrong) {
    return tl::unexpected(
        std::vector{Complaint{{}, std::move(wrong), "save the list as CSV (UTF-8 or Latin-1) or as plain lines"}});
}

/// Byte for byte; the places that Latin-1 leaves to control characters by the code page of most spreadsheets.
std::string from_latin_1(std::string_view bytes) {
    std::string text;
    for (const char byte : bytes) {
        gsize size = 0;
        const auto code = static_cast<unsigned char>(byte);
        if (code < 0x80) {
            text += byte;
            continue;
        }
        const std::unique_ptr<char, Freed> letter(
            g_convert(&byte, 1, "UTF-8", code < 0xA0 ? "WINDOWS-1252" : "ISO-8859-1", nullptr, &size, nullptr));
        text += letter ? std::string(letter.get(), size) : " ";
    }
    return text;
}

}  // namespace

Outcome<std::string> list_text(std::string_view bytes) {
    if (bytes.size() > most_list_bytes) return refused("more than 8 MiB, which no panel's list has");
    if (bytes.starts_with("\xEF\xBB\xBF")) bytes.remove_prefix(3);
    if (bytes.starts_with("\xFF\xFE") || bytes.starts_with("\xFE\xFF")) return refused("this is UTF-16");
    if (bytes.starts_with("PK\x03\x04")) return refused("this is a spreadsheet or document, not a list");
    if (bytes.starts_with("%PDF")) return refused("this is a PDF, not a list");
    if (bytes.find('\0') != std::string_view::npos) return refused("this is no text: it has zero bytes");
    if (g_utf8_validate(bytes.data(), static_cast<gssize>(bytes.size()), nullptr)) return std::string(bytes);
    return from_latin_1(bytes);
}

}  // namespace doorcard
