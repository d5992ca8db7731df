// Files in and out: a description read whole, an answer written whole.
#pragma once
#include "input/source.hpp"
#include "report/named_text.hpp"
#include <stdexcept>
#include <string>

namespace lumwright::cli {
/// A file that cannot be read, or one that is there already.
struct FileError : std::runtime_error {
  using std::runtime_error::runtime_error;
};
/// The answer could not be written; there is nothing else to say it with but the complaint.
struct WriteError : std::runtime_error {
  using std::runtime_error::runtime_error;
};
/// Whoever read the answer has seen enough (`| head`): nobody is there to complain to.
struct ReaderGone : std::runtime_error {
  ReaderGone() : std::runtime_error("nobody reads the answer") {}
};

/// The file, or standard input for "-". Of an endless one no more is read than the reader needs to refuse it.
/// Throws FileError with the reason.
input::Source read_file(const std::string& name);
/// Throws WriteError unless every byte has left the program, ReaderGone where it leads into a closed pipe.
void write_output(const std::string& text);
/// True for a file that is there, whether or not it can be read.
bool file_exists(const std::string& name);
bool same_file(const std::string& one, const std::string& other);
/// Puts the text in place of the file in one step: whoever reads it meets the old one or the new one, whole. Throws
/// FileError where nothing can be written beside it, WriteError where it cannot be filled; the old file stays.
void replace_file(const std::string& name, const std::string& text);
/// Creates the file whole in the same step in which it makes sure that there was none. Throws FileError where there is
/// one or none can be made; WriteError, with the torso removed, where it cannot be filled.
void create_file(const std::string& name, const std::string& text);
/// Writes all files into a folder, which is made if it is not there: each under a passing name first, and only when all
/// are whole are they given their own, so that each is whole or absent. Files of these names are replaced, others left
/// alone. Throws FileError or WriteError.
void write_folder(const std::string& folder, const std::vector<report::NamedText>& files);
/// A name fit to be shown.
std::string printable_name(const std::string& name);
}  // namespace lumwright::cli
