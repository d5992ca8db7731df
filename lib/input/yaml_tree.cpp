#include "input/yaml_tree.hpp"
#include "input/utf8.hpp"
#include <fmt/format.h>
#include <optional>
#include <sstream>
#include <utility>
#include <yaml-cpp/depthguard.h>
#include <yaml-cpp/eventhandler.h>
#include <yaml-cpp/parser.h>

namespace lumwright {
namespace {
using YAML::Mark, YAML::anchor_t;
using Style = YAML::EmitterStyle::value;
constexpr std::size_t deepest = 16;

Position place(const Mark& mark, std::size_t width = 1) { return {mark.line + 1, mark.column + 1, static_cast<int>(width)}; }

// Throwing at the sixteenth level is what keeps yaml-cpp's own recursion shallow: it calls us before it goes down.
class TreeBuilder final : public YAML::EventHandler {
 public:
  TreeBuilder(const Source& source, std::vector<Fault>& faults) : source_(source), faults_(faults) {}
  Node root;

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
    const bool quoted = tag == "!";
    const Position at = place(mark, text.size() + (quoted ? 2 : 0));
    if (expects_key()) return take_key(text, at);
    Node scalar = start(Node::Kind::scalar, mark, tag, anchor);
    scalar.at = at;
    scalar.text = text;
    scalar.quoted = quoted;
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
  bool expects_key() const { return !open_.empty() && open_.back().kind == Node::Kind::map && !key_; }
  void take_key(const std::string& text, Position at) {
    if (text == "<<") fail(at, "a merge key (`<<`) is not accepted here", "write the keys out");
    if (const Node* earlier = child(open_.back(), text))
      faults_.push_back({at, path() + text, "this key is given twice", fmt::format("it stands first on line {}", earlier->key_at.line)});
    key_ = {text, at};
  }
  std::string path() const {
    std::string text;
    for (const Node& node : open_)
      if (!node.key.empty()) text += node.key + ".";
    return text;
  }
  Node start(Node::Kind kind, const Mark& mark, const std::string& tag, anchor_t anchor) {
    if (anchor != 0) fail(place(mark), "an anchor (`&name`) is not accepted here");
    if (!tag.empty() && tag != "?" && tag != "!") fail(place(mark), "a tag (`!name`) is not accepted here");
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
    add(std::move(done));
  }
  void add(Node node) {
    if (open_.empty()) root = std::move(node);
    else open_.back().children.push_back(std::move(node));
  }

  const Source& source_;
  std::vector<Fault>& faults_;
  std::vector<Node> open_;                               // the collections we are inside of, outermost first
  std::optional<std::pair<std::string, Position>> key_;  // a key whose value has not come yet
};

[[noreturn]] void refuse(const Source& source, std::vector<Fault>& faults, Position at, std::string message, std::string help = "") {
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
  try {
    std::istringstream in(source.text);
    YAML::Parser parser(in);
    TreeBuilder document(source, faults), rest(source, faults);
    if (!parser.HandleNextDocument(document)) refuse(source, faults, {}, "the file is empty", "`lumwright new` writes a description to start from");
    if (parser.HandleNextDocument(rest))  // twice at most: yaml-cpp 0.7 finds documents in `,` for ever
      refuse(source, faults, rest.root.at, "there is more text behind the end of the description", "a file holds one description");
    return std::move(document.root);
  } catch (const YAML::DeepRecursion&) {
    refuse(source, faults, {}, "this is nested too deeply");
  } catch (const YAML::ParserException& e) {
    refuse(source, faults, {e.mark.line + 1, e.mark.column + 1, 1}, "this is not YAML that can be read: " + e.msg);
  }
}
}  // namespace lumwright
