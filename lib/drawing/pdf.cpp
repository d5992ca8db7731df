// The PDF writer: the only file that names libharu.
#include "drawing/detail/lettering.hpp"
#include "drawing/detail/page.hpp"
#include "quantity/errors.hpp"
#include <algorithm>
#include <fmt/format.h>
#include <hpdf.h>
#include <memory>
#include <stdexcept>

namespace lumwright::drawing {
namespace {
constexpr double points_per_mm = 72.0 / 25.4;
HPDF_REAL real(double number) { return static_cast<HPDF_REAL>(number); }
HPDF_REAL pt(double millimetres) { return real(millimetres * points_per_mm); }

void note_error(HPDF_STATUS error, HPDF_STATUS, void* first) {  // C calls this: it must not throw
  auto& kept = *static_cast<HPDF_STATUS*>(first);
  if (kept == HPDF_OK) kept = error;
}
// Later versions of the library take dashes as reals: whole points serve both.
template <class Number, class Phase>
void set_dash(HPDF_STATUS (*set)(HPDF_Page, const Number*, HPDF_UINT, Phase), HPDF_Page page,
              const std::vector<Length>& dashes) {
  std::vector<Number> whole;
  whole.reserve(dashes.size());
  for (const Length& dash : dashes)
    whole.push_back(static_cast<Number>(std::max(1.0, std::round(in(dash, mm) * points_per_mm))));
  set(page, whole.empty() ? nullptr : whole.data(), static_cast<HPDF_UINT>(whole.size()), Phase{});
}

class PageWriter {
 public:
  PageWriter(HPDF_Page page, HPDF_Font font) : page_(page), font_(font) {}
  void stretch(const PrintOptions& options, Spot pivot) { options_ = options, pivot_ = pivot; }
  void write(const Inks& inks) {
    for (const Ink& ink : inks) {
      take(ink.look);
      std::visit([this](const auto& shape) { draw(shape); }, ink.shape);
    }
  }
  void write(const Patch& patch) {
    HPDF_Page_GSave(page_);
    if (patch.window) {
      const Spot low = map(patch.window->low), high = map(patch.window->high);
      HPDF_Page_Rectangle(page_, pt(low.x), pt(low.y), pt(high.x - low.x), pt(high.y - low.y));
      HPDF_Page_Clip(page_);
      HPDF_Page_EndPath(page_);
    }
    write(patch.inks);
    HPDF_Page_GRestore(page_);
    held_.reset();  // the pen went with the saved state
  }

 private:
  Spot map(Spot p) const { return stretched(p, pivot_, options_); }
  void take(Layer layer) {
    if (held_ == layer) return;
    held_ = layer;
    const data::Pen& p = pen(layer);
    const auto share = [&](int i) { return real(p.colour.at(static_cast<std::size_t>(i)) / 255.0); };
    HPDF_Page_SetLineWidth(page_, pt(in(p.width, mm)));
    HPDF_Page_SetRGBStroke(page_, share(0), share(1), share(2));
    HPDF_Page_SetRGBFill(page_, share(0), share(1), share(2));
    set_dash(&HPDF_Page_SetDash, page_, p.dashes);
  }
  void move(Spot p) { HPDF_Page_MoveTo(page_, pt(map(p).x), pt(map(p).y)); }
  void draw(const Stroke& s) {
    move(s.points.front());
    for (std::size_t i = 1; i < s.points.size(); ++i) {
      const Spot p = map(s.points[i]);
      HPDF_Page_LineTo(page_, pt(p.x), pt(p.y));
    }
    if (s.closed) HPDF_Page_ClosePath(page_);
    if (s.filled)
      HPDF_Page_Fill(page_);
    else
      HPDF_Page_Stroke(page_);
  }
  // Cubics of at most an eighth of a turn: 4e-6 of the radius off the circle.
  void draw(const Bow& b) {
    const int count = std::max(1, static_cast<int>(std::ceil(b.sweep / (pi / 4.0) - 1e-9)));
    const double step = b.sweep / count, reach = 4.0 / 3.0 * std::tan(step / 4.0);
    move(b.centre + b.radius * toward(b.from));
    for (int i = 0; i < count; ++i) {
      const Spot u = toward(b.from + i * step), v = toward(b.from + (i + 1) * step);
      const Spot p = map(b.centre + b.radius * (u + reach * left_of(u)));
      const Spot q = map(b.centre + b.radius * (v - reach * left_of(v))), r = map(b.centre + b.radius * v);
      HPDF_Page_CurveTo(page_, pt(p.x), pt(p.y), pt(q.x), pt(q.y), pt(r.x), pt(r.y));
    }
    if (b.whole()) HPDF_Page_ClosePath(page_);
    HPDF_Page_Stroke(page_);
  }
  void draw(const Words& w) {
    const std::string text = to_cp1252(w.text);
    HPDF_Page_SetFontAndSize(page_, font_, pt(w.height / capital_share));
    const double width = HPDF_Page_TextWidth(page_, text.c_str()) / points_per_mm;
    const double back = w.across == Across::left ? 0.0 : w.across == Across::centre ? width / 2.0 : width;
    const Spot way = toward(w.turn), at = map(w.at) - back * way;
    HPDF_Page_BeginText(page_);
    HPDF_Page_SetTextMatrix(page_, real(way.x), real(way.y), real(-way.y), real(way.x), pt(at.x), pt(at.y));
    HPDF_Page_ShowText(page_, text.c_str());
    HPDF_Page_EndText(page_);
  }

  HPDF_Page page_;
  HPDF_Font font_;
  PrintOptions options_{};
  Spot pivot_{0.0, 0.0};
  std::optional<Layer> held_;
};

std::string bytes(HPDF_Doc document) {
  HPDF_SaveToStream(document);
  std::string out(HPDF_GetStreamSize(document), '\0');
  auto size = static_cast<HPDF_UINT32>(out.size());
  HPDF_ReadFromStream(document, reinterpret_cast<HPDF_BYTE*>(out.data()), &size);
  out.resize(size);
  return out;
}
std::string ascii(std::string text) {
  std::replace_if(
      text.begin(), text.end(), [](char c) { return static_cast<unsigned char>(c) > 0x7E; }, '?');
  return text;
}
}  // namespace

std::string pdf(const Drawing& drawing, const PrintOptions& options) {
  require_stretch(options);
  if (drawing.sheets.empty()) throw ModelError("a drawing without sheets makes no PDF");
  HPDF_STATUS error = HPDF_OK;
  const std::unique_ptr<HPDF_Doc_Rec, void (*)(HPDF_Doc)> owner(HPDF_New(note_error, &error), HPDF_Free);
  if (!owner) throw std::runtime_error("libharu cannot begin a document");
  const HPDF_Doc document = owner.get();
  HPDF_SetCompressionMode(document, HPDF_COMP_NONE);  // the bytes then depend on no version of a compressor
  HPDF_SetViewerPreference(document, HPDF_PRINT_SCALING_NONE);
  HPDF_SetInfoAttr(document, HPDF_INFO_TITLE, ascii(clean(drawing.title.name)).c_str());
  HPDF_SetInfoAttr(document, HPDF_INFO_CREATOR, "lumwright");
  const HPDF_Font font = HPDF_GetFont(document, "Helvetica", "WinAnsiEncoding");
  for (std::size_t sheet = 0; sheet < drawing.sheets.size(); ++sheet) {
    const Page page = compose(drawing, sheet);
    const HPDF_Page target = HPDF_AddPage(document);
    HPDF_Page_SetWidth(target, pt(page.width));
    HPDF_Page_SetHeight(target, pt(page.height));
    PageWriter writer(target, font);
    writer.write(page.fixed);
    writer.stretch(options, page.pivot);
    for (const Patch& patch : page.to_scale) writer.write(patch);
  }
  std::string out = bytes(document);
  if (error != HPDF_OK) throw std::runtime_error(fmt::format("libharu error 0x{:04X}", error));
  return out;
}
}  // namespace lumwright::drawing
