// The pages of the guide and the examples, compiled into the program (lib/data/embed.cmake).
#pragma once
#include "data/embedded.hpp"
#include <span>

namespace lumwright::cli {
std::span<const data::EmbeddedFile> guide_pages();       // "01-what-it-is.md", in their order
std::span<const data::EmbeddedFile> shipped_examples();  // "examples/tarn-beck.yaml"
}  // namespace lumwright::cli
