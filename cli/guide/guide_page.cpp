#include "guide/guide_page.hpp"
#include "data/first_words.hpp"
#include "guide/blocks.hpp"
#include "guide/pages.hpp"
#include "guide/table.hpp"
#include "report/html/parts.hpp"
#include <algorithm>
#include <fmt/format.h>
#include <stdexcept>

namespace lumwright::cli {
namespace {
using Kind = Piece::Kind;

/// "04-first-check.md" is called "first-check".
std::string id_of(const std::string& file) {
  const std::size_t from = file.find('-') + 1;
  return file.substr(from, file.rfind('.') - from);
}
std::string plain_words(const Piece& piece) {
  std::string out = piece.text;
  for (const Piece& one : piece.children) out += plain_words(one);
  return out;
}
class Writer {
 public:
  explicit Writer(Facts& facts) : facts_(facts) {}
  void all(report::Tag parent, const Piece& piece) {
    for (const Piece& one : piece.children) write(parent, one);
  }

 private:
  void write(report::Tag parent, const Piece& piece);
  void write_link(report::Tag parent, const Piece& piece);
  void write_table(report::Tag parent, const Piece& piece);
  Facts& facts_;
};
void Writer::write_link(report::Tag parent, const Piece& piece) {
  const auto pages = guide_pages();
  const bool known =
      std::any_of(pages.begin(), pages.end(), [&](const auto& page) { return piece.info == "#" + id_of(page.name); });
  if (!known) throw std::logic_error("a link leads to `" + piece.info + "`, which is no page");
  all(parent.add("a").set("href", piece.info), piece);
}
void Writer::write_table(report::Tag parent, const Piece& piece) {
  std::vector<std::string> headings;
  for (const Piece& cell : piece.children.at(0).children.at(0).children) headings.push_back(plain_words(cell));
  GuideTable table(parent, headings.front(), headings);
  for (const Piece& row : piece.children.at(1).children) {
    table.begin_row();
    for (const Piece& cell : row.children) all(table.cell(), cell);
  }
}
void Writer::write(report::Tag parent, const Piece& piece) {
  switch (piece.kind) {
    case Kind::text:
      return static_cast<void>(parent.say(facts_.filled(piece.text)));
    case Kind::code:
      return static_cast<void>(parent.add("code", facts_.filled(piece.text)));
    case Kind::emphasis:
      return all(parent.add("em"), piece);
    case Kind::strong:
      return all(parent.add("strong"), piece);
    case Kind::link:
      return write_link(parent, piece);
    case Kind::paragraph:
      return all(parent.add("p"), piece);
    case Kind::bullets:
      return all(parent.add("ul"), piece);
    case Kind::steps:
      return all(parent.add("ol"), piece);
    case Kind::item:
      return all(parent.add("li"), piece);
    case Kind::quote:
      return all(parent.add("div").set("class", "todo"), piece);
    case Kind::table:
      return write_table(parent, piece);
    case Kind::fence:
      return write_block(parent, piece, facts_);
    case Kind::heading:
      if (piece.level != 2) throw std::logic_error("a heading within a page has two marks: " + plain_words(piece));
      return all(parent.add("h3"), piece);
    default:
      throw std::logic_error("something stands where it cannot");
  }
}
struct GuidePage {
  std::string id, title;
  Piece body;
};
GuidePage read_page(const data::EmbeddedFile& file) {
  Piece body = read_markdown(file.text);
  if (body.children.empty() || body.children.front().kind != Kind::heading || body.children.front().level != 1)
    throw std::logic_error("it does not begin with its title");
  std::string title = plain_words(body.children.front());
  body.children.erase(body.children.begin());
  return {id_of(file.name), std::move(title), std::move(body)};
}
template <class Work>
void on_page(const data::EmbeddedFile& file, Work work) {
  try {
    work();
  } catch (const std::logic_error& e) {
    throw std::logic_error(fmt::format("cli/guide/{}: {}", file.name, e.what()));
  }
}
void write_guide_head(report::Tag body, const std::string& program, const std::vector<GuidePage>& pages) {
  const report::Tag header = body.add("header");
  const report::Tag facts = report::html::add_title_block(header, "From scrap bin to steam");
  report::html::add_fact(facts, "what", "a guide to the fan that raises steam in a small locomotive");
  report::html::add_fact(facts, "made by", program);
  report::html::add_fact(facts, "figures and pictures", "from runs of the examples that lie beside this page");
  const report::Tag list = body.add("nav").set("aria-label", "Contents").add("ol");
  for (const GuidePage& page : pages) list.add("li").add("a", page.title).set("href", "#" + page.id);
}
}  // namespace

std::string guide_html(Facts& facts, const std::string& program,
                       const std::function<void(std::size_t done, std::size_t of)>& progress) {
  const auto files = guide_pages();
  std::vector<GuidePage> pages;
  for (const data::EmbeddedFile& file : files) on_page(file, [&] { pages.push_back(read_page(file)); });
  const report::Markup whole("html");
  whole.root().set("lang", "en");
  report::html::write_head(whole.root(), "Lumwright: from scrap bin to steam");
  const report::Tag body = whole.root().add("body").set("class", "guide");
  write_guide_head(body, program, pages);
  const report::Tag main = body.add("main");
  Writer writer(facts);
  for (std::size_t i = 0; i < pages.size(); ++i) {
    on_page(files[i], [&] {
      writer.all(report::html::section(main, pages[i].id.c_str(), fmt::format("{}. {}", i + 1, pages[i].title)),
                 pages[i].body);
    });
    progress(i + 1, pages.size());
  }
  report::html::write_footer(body, "The engines in this guide are invented. Your own description is what counts.");
  return whole.html();
}
}  // namespace lumwright::cli
