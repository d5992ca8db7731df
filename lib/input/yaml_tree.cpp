#include "input/yaml_tree.hpp"
#include "input/utf8.hpp"
#include "quantity/words.hpp"
#include <algorithm>
#include <array>
#include <fmt/format.h>
#include <optional>
#include <sstream>
#include <utility>
#include <yaml-cpp/depthguard.h>
#include <yaml-cpp/eventhandler.h>
#include <yaml-cpp/parser.h>

namespace lumwright::input {
namespace {
using YAML::Mark, YAML::anchor_t;
using Style = YAML::EmitterStyle::value;
constexpr std::size_t deepest = 16;

Position place(const Mark& mark, std::size_t width = 1) {
  return {mark.line + 1, mark.column + 1, static_cast<int>(width)};
}

class Lines {  // from a place to the text there
 public:
  explicit Lines(std::string_view text) : text_(text), starts_{byte_order_mark(text)} {
    for (std::size_t at = text.find('\n'); at != std::string_view::npos; at = text.find('\n', at + 1))
      starts_.push_back(at + 1);
  }
  std::string_view from(Position at) const {
    const auto line = std::min(static_cast<std::size_t>(at.line), starts_.size()) - 1;
    return text_.substr(std::min(starts_[line] + static_cast<std::size_t>(at.column) - 1, text_.size()));
  }

 private:
  std::string_view text_;
  std::vector<std::size_t> starts_;
};

// Throwing at the sixteenth level is what keeps yaml-cpp's own recursion shallow: it calls us before it goes down.
class TreeBuilder final : public YAML::EventHandler {
 public:
  TreeBuilder(const Source& source, std::vector<Fault>& faults)
      : source_(source), faults_(faults), lines_(source.text) {}
  Node root;
  // What went wrong, in a workbench user's words, at the place where it began rather than where the parser gave up.
  Fault explain(const YAML::ParserException& e) const;
  std::optional<Fault> swallowed_key(int last) const;

  void OnDocumentStart(const Mark& mark) override { root.at = place(mark); }
  void OnDocumentEnd() override {}
  void OnNull(const Mark& mark, anchor_t anchor) override {
    if (expects_key()) return take_key("", place(mark));
    Node node = start(Node::Kind::empty, mark, "", anchor);
    if (!node.key.empty()) node.at = node.key_at;  // yaml-cpp marks the next token, not the gap
    add(std::move(node));
  }
  void OnAlias(const Mark& mark, anchor_t) override {
    fail(place(mark), "a reference (`*name`) is not accepted here", "write the value out");
  }
  void OnScalar(const Mark& mark, const std::string& tag, anchor_t anchor, const std::string& text) override {
    refuse_extras(mark, tag, anchor);
    const Extent extent = extent_of(place(mark), text, tag == "!");
    const Position at = place(mark, extent.width);
    if (expects_key()) return take_key(text, at);
    Node scalar = start(Node::Kind::scalar, mark, tag, anchor);
    scalar.at = at;
    scalar.text = text;
    scalar.quoted = tag == "!";
    scalar.verbatim = extent.verbatim;
    scalar.one_line = extent.one_line;
    add(std::move(scalar));
  }
  void OnSequenceStart(const Mark& mark, const std::string& tag, anchor_t anchor, Style) override {
    open(start(Node::Kind::list, mark, tag, anchor));
  }
  void OnMapStart(const Mark& mark, const std::string& tag, anchor_t anchor, Style) override {
    open(start(Node::Kind::map, mark, tag, anchor));
  }
  void OnSequenceEnd() override { close(); }
  void OnMapEnd() override { close(); }

 private:
  [[noreturn]] void fail(Position at, std::string message, std::string help = "") {
    faults_.push_back({at, "", std::move(message), std::move(help)});
    throw InputError(source_, faults_);
  }
  void refuse_extras(const Mark& mark, const std::string& tag, anchor_t anchor) {
    if (anchor != 0) fail(place(mark), "an anchor (`&name`) is not accepted here", "write the value out");
    const bool bare_tag = tag == "!" && lines_.from(place(mark)).starts_with('!');  // "!" else means quoted
    if (bare_tag || (!tag.empty() && tag != "?" && tag != "!"))
      fail(place(mark), "a tag (`!name`) is not accepted here", "leave it out");
  }
  struct Extent {
    std::size_t width;
    bool verbatim, one_line;
  };
  // How much of its first line a scalar takes up. yaml-cpp tells where it starts, not where it ends.
  Extent extent_of(Position at, const std::string& text, bool quoted) {
    const std::string_view rest = lines_.from(at);
    if (!quoted && rest.starts_with(text)) return {text.size(), true, true};
    const bool block = rest.starts_with('|') || rest.starts_with('>');
    if (!quoted || block) return {block ? 1 : rest.substr(0, rest.find_first_of("\r\n")).size(), false, false};
    const std::size_t end = closing_quote(rest);
    if (end == std::string_view::npos) fail(at, "this quote is never closed");
    const std::size_t line = rest.substr(0, end).find_first_of("\r\n");
    if (line != std::string_view::npos && !long_quote_) long_quote_ = at;
    return {std::min(end + 1, line), rest.substr(1, end - 1) == text, line == std::string_view::npos};
  }
  static std::size_t closing_quote(std::string_view text) {  // of the quote that text begins with
    for (std::size_t i = 1; i < text.size(); ++i) {
      const bool escape = text[0] == '"' && text[i] == '\\';
      const bool doubled = text[0] == '\'' && text.substr(i).starts_with("''");
      if (escape || doubled)
        ++i;
      else if (text[i] == text[0])
        return i;
    }
    return std::string_view::npos;
  }
  bool expects_key() const { return !open_.empty() && open_.back().kind == Node::Kind::map && !key_; }
  void take_key(const std::string& text, Position at) {
    if (text.empty()) fail(at, "a key is missing here");
    if (text == "<<") fail(at, "a merge key (`<<`) is not accepted here", "write the keys out");
    if (const Node* earlier = child(open_.back(), text))
      faults_.push_back({at, path() + text, "this key is given twice",
                         fmt::format("it stands first on line {}", earlier->key_at.line)});
    key_ = {text, at};
  }
  std::string path() const {
    std::string text;
    for (const Node& node : open_)
      if (!node.key.empty()) text += node.key + ".";
    return text;
  }
  Node start(Node::Kind kind, const Mark& mark, const std::string& tag, anchor_t anchor) {
    refuse_extras(mark, tag, anchor);
    if (expects_key()) fail(place(mark), "a key must be plain text");
    Node node;
    node.kind = kind;
    node.at = place(mark);
    if (key_) {
      auto [name, at] = *std::exchange(key_, std::nullopt);
      node.key = std::move(name);
      node.key_at = at;
    }
    return node;
  }
  void open(Node node) {
    if (open_.size() == deepest) fail(node.at, fmt::format("this is nested deeper than {} levels", deepest));
    open_.push_back(std::move(node));
  }
  void close() {
    Node done = std::move(open_.back());
    open_.pop_back();
    if (done.kind == Node::Kind::map) mend_commas(done);
    add(std::move(done));
  }
  // `{ bore: 17,2 mm }` is for YAML the key `bore` and the key `2 mm`: one fault for both, and read on as one number.
  void mend_commas(Node& map) {
    std::vector<Node> kept;
    for (Node& next : map.children) {
      if (kept.empty() || !cut_by_comma(kept.back(), next)) {
        kept.push_back(std::move(next));
        continue;
      }
      Node& value = kept.back();
      const std::string parted = value.text + "," + next.key;
      value.text += "." + next.key;
      value.verbatim = false;
      value.at.width = next.key_at.column + next.key_at.width - value.at.column;
      faults_.push_back({value.at, path() + (map.key.empty() ? "" : map.key + ".") + value.key,
                         fmt::format("the comma in '{}' ends the value here, as commas do in braces", parted),
                         fmt::format("write {}, or put it in quotes: \"{}\"", value.text, parted)});
    }
    map.children = std::move(kept);
  }
  static bool cut_by_comma(const Node& value, const Node& next) {
    const bool number =
        value.kind == Node::Kind::scalar && value.verbatim && !value.quoted && is_digit(value.text.back());
    const int gap = next.key_at.column - value.at.column - static_cast<int>(value.text.size());
    return number && next.kind == Node::Kind::empty && is_digit(next.key.front()) &&
           next.key_at.line == value.at.line && gap >= 1 && gap <= 2;
  }
  void add(Node node) {
    if (open_.empty())
      root = std::move(node);
    else
      open_.back().children.push_back(std::move(node));
  }

  const Source& source_;
  std::vector<Fault>& faults_;
  Lines lines_;
  std::vector<Node> open_;                               // the collections we are inside of, outermost first
  std::optional<std::pair<std::string, Position>> key_;  // a key whose value has not come yet
  std::optional<Position> long_quote_;  // the first quoted text that ends on a later line: often a forgotten quote
};

// A key without a blank behind its colon is plain text to YAML, which runs on to the next key: the parser complains
// there.
std::optional<Fault> TreeBuilder::swallowed_key(int last) const {
  for (int number = last; number >= std::max(1, last - 20); --number) {
    std::string_view line = lines_.from({number, 1, 1});
    line = line.substr(0, line.find_first_of("\r\n"));
    std::size_t start = std::min(line.find_first_not_of(" -"), line.size());
    if (colon_without_blank(line.substr(start)))
      return blank_missing({number, static_cast<int>(start) + 1, 1}, "", line.substr(start));
    const bool plain_key = line.find(": ") != std::string_view::npos || line.ends_with(':');
    if (number < last && plain_key) break;
  }
  return std::nullopt;
}

Fault TreeBuilder::explain(const YAML::ParserException& e) const {
  constexpr std::array<std::pair<std::string_view, std::string_view>, 8> helps{
      {{"illegal map value", "a value that holds `: ` needs quotes; the keys of one section start in one column"},
       {"end of map not found", "the keys of one section start in one column; nothing may stand behind a quoted value"},
       {"end of sequence not found", "the items of one list start in one column"},
       {"unknown token", "a value that starts with this character needs quotes"},
       {"illegal block entry", "a value that starts with `- ` needs quotes"},
       {"illegal flow end", "there is no bracket open that this would close"},
       {"the referenced anchor is not defined", "a value that starts with `*` needs quotes"},
       {"illegal EOF in scalar", "a quote is never closed"}}};
  if (e.msg.ends_with("flow not found") && !open_.empty()) {
    const char bracket = open_.back().kind == Node::Kind::map ? '{' : '[';
    return {open_.back().at, "", fmt::format("this `{}` is never closed", bracket),
            fmt::format("line {} was the last one read", e.mark.line + 1)};
  }
  if (auto fault = swallowed_key(e.mark.line + 1)) return *fault;
  Fault fault{place(e.mark), "", "this is not YAML that can be read: " + e.msg, ""};
  for (const auto& [message, help] : helps)
    if (e.msg == message) fault.help = help;
  const std::string_view line = lines_.from({e.mark.line + 1, 1, 1});
  if (line.substr(0, line.find_first_not_of(" \t")).find('\t') != std::string_view::npos)
    fault.help = "indent with blanks, not with tabs";
  if (long_quote_)
    fault.help =
        fmt::format("the quote that opens on line {} is closed on a later line: is one missing?", long_quote_->line);
  return fault;
}

[[noreturn]] void refuse(const Source& source, std::vector<Fault>& faults, Position at, std::string message,
                         std::string help = "") {
  faults.push_back({at, "", std::move(message), std::move(help)});
  throw InputError(source, faults);
}
void check_text(const Source& source, std::vector<Fault>& faults, std::size_t most_bytes) {
  if (source.text.size() > most_bytes)
    refuse(source, faults, {}, fmt::format("the file is larger than {} kB", most_bytes / 1024));
  if (const auto bad = first_unreadable_byte(source.text)) {
    Position at;
    for (std::size_t i = 0; i < *bad; ++i) {
      ++at.column;
      if (source.text[i] == '\n') at = {at.line + 1, 1, 1};
    }
    refuse(source, faults, at, "this byte is not readable text", "save the file as plain UTF-8 text");
  }
}
}  // namespace

const Node* child(const Node& map, std::string_view key) {
  for (const Node& node : map.children)
    if (node.key == key) return &node;
  return nullptr;
}

Node read_yaml(const Source& source, std::vector<Fault>& faults, std::size_t most_bytes) {
  check_text(source, faults, most_bytes);
  TreeBuilder document(source, faults), rest(source, faults);
  try {
    std::istringstream in(source.text);
    YAML::Parser parser(in);
    if (!parser.HandleNextDocument(document))
      refuse(source, faults, {}, "the file is empty", "`lumwright new` writes a description to start from");
    if (parser.HandleNextDocument(rest))  // twice at most: yaml-cpp 0.7 finds documents in `,` for ever
      refuse(source, faults, rest.root.at, "there is more text behind the end of the description",
             "a file holds one description");
    return std::move(document.root);
  } catch (const YAML::DeepRecursion&) {
    refuse(source, faults, {}, "this is nested too deeply");
  } catch (const YAML::ParserException& e) {
    faults.push_back(document.explain(e));
    throw InputError(source, faults);
  }
}
}  // namespace lumwright::input
