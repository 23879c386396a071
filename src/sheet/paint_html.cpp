// SPDX-License-Identifier: MIT
#include <fmt/format.h>
#include <glib.h>

#include "sheet/surfaces.hpp"

namespace doorcard {
namespace {

std::string base64(const Bytes& bytes) {
    char* text = g_base64_encode(reinterpret_cast<const guchar*>(bytes.data()), bytes.size());
    const std::string copy = text;
    g_free(text);
    return copy;
}

std::string picture(const Sheet& sheet, const Page& page) {
    Sheet single;
    single.title = sheet.title;
    single.pages = {page};
    return fmt::format(
        "<img alt=\"{}\" style=\"width:{:.1f}mm;max-width:100%\" src=\"data:image/svg+xml;base64,{}\">\n",
        escaped(page.title), page.paper.width, base64(paint_svg(single)));
}

std::string table(const Page& page) {
    std::string html = "<table>\n";
    for (std::size_t row = 0; row < page.table.size(); ++row) {
        html += "<tr>";
        for (const std::string& cell : page.table[row])
            html += fmt::format("<{0}>{1}</{0}>", row == 0 ? "th" : "td", escaped(cell));
        html += "</tr>\n";
    }
    return html + "</table>\n";
}

constexpr const char* style =
    "body{font:16px/1.4 'DejaVu Sans',sans-serif;color:#16202a;max-width:60em;margin:1em auto;padding:0 1em}"
    "img{border:1px solid #16202a}table{border-collapse:collapse;margin:1em 0 3em}"
    "th,td{border-bottom:1px solid #16202a;padding:.25em .8em .25em 0;text-align:left;vertical-align:top}"
    "@media print{table,h1{display:none}img{border:0}}";

}  // namespace

Bytes paint_html(const Sheet& sheet) {
    std::string html = fmt::format(
        "<!doctype html>\n<html lang=\"{0}\">\n<head><meta "
        "charset=\"utf-8\"><title>{1}</title><style>{2}</style></head>\n"
        "<body>\n<h1>{1}</h1>\n",
        sheet.language, escaped(sheet.title), style);
    for (const Page& page : sheet.pages) {
        html += picture(sheet, page);
        if (!page.table.empty()) html += table(page);
    }
    return html + "</body>\n</html>\n";
}

Bytes paint_text(const Sheet& sheet) {
    std::string text;
    for (const Page& page : sheet.pages)
        for (const std::string& line : page.lines) text += line + "\n";
    return text;
}

}  // namespace doorcard
