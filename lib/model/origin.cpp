#include "model/origin.hpp"
#include <stdexcept>

namespace lumwright {
const char* word_of(Origin origin) {
  switch (origin) {
    case Origin::written:
      return "written";
    case Origin::assumed:
      return "assumed";
    case Origin::tuned:
      return "tuned";
    case Origin::computed:
      return "computed";
  }
  throw std::logic_error("an origin without a word");
}
}  // namespace lumwright
