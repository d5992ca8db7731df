#include "description/schema.hpp"
#include "description/keys.hpp"
#include <doctest/doctest.h>
#include <string>
using namespace lumwright;
using namespace lumwright::description;

// Whether the schema says what the reader does is tested with a validator: tests/live/schema_check.py.
TEST_CASE("the schema names every key once in its section and states its draft") {
  const std::string schema = json_schema();
  CHECK(schema.find("\"https://json-schema.org/draft/2020-12/schema\"") != std::string::npos);
  for (const Key& key : keys()) {
    CAPTURE(key.field.key);
    CHECK(schema.find("\"" + std::string(key.field.key) + "\": {") != std::string::npos);
  }
  CHECK(schema == json_schema());
}
