// Where a number comes from.
#pragma once

namespace lumwright::model {
/// What the user wrote, what stands in where he is silent, what a logged lighting-up taught, what the model worked out.
enum class Origin { written, assumed, tuned, computed };
}  // namespace lumwright::model
