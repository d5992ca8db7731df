// Which of the program's files a file is, for those who give one to the command of another.
#pragma once
#include "description/build.hpp"
#include "input/source.hpp"
#include "words.hpp"

namespace lumwright::cli {
enum class FileKind { description, bin, readings, log, season, proof };
/// The file is plainly of that kind.
bool is_of_kind(const input::Source& source, FileKind kind);
/// Throws UsageError that names the right command where the file is plainly of another kind than `wanted`.
void refuse_other_kind(const input::Source& source, FileKind wanted);

/// What `read` makes of the file; where it has faults because it is of another kind, that is said in their place.
template <class Read>
auto read_as(FileKind wanted, const input::Source& source, Read read) {
  try {
    return read(source);
  } catch (const input::InputError&) {
    refuse_other_kind(source, wanted);
    throw;
  }
}
/// Throws FileError or InputError for a file that cannot be used, UsageError for one of another kind.
description::Build description_in(const Shelf* shelf, const std::string& file);
}  // namespace lumwright::cli
