"""Functions that headers of lib declare and that nothing in lib or cli calls.

    unused.py

Read as text: a name is used where it stands in the code once more than it is declared and defined. So a name that two
functions share hides an unused one; what is found is unused for sure, but for what a template or a class calls itself.
"""
import collections
import re
import sys
from pathlib import Path

ROOT = Path(__file__).resolve().parents[2]
# what a program around the library calls, and what a class asks of the functions that are given to it
FOR_OTHERS = {'build_of', 'picture_file', 'prepare', 'read_item'}
NO_FUNCTION = {'if', 'for', 'while', 'switch', 'return', 'sizeof', 'decltype', 'static_assert', 'noexcept', 'alignas'}
DECLARED = re.compile(r'^(?:  )?(?:template\s*<[^;{]*?>\s*)?(?:\[\[nodiscard\]\]\s*)?'
                      r'(?:inline |constexpr |static |explicit |friend |virtual )*'
                      r'[A-Za-z_][\w:<>,\s\*&\.]*?[\s&\*>]([a-z_]\w*)\s*\(', re.M)
DEFINED = re.compile(r'^[A-Za-z_][\w:<>,\*& ]*?[\s&\*>](?:\w+::)?([a-z_]\w*)\s*\([^;{}]*\)[^;{}]*\{', re.M)


def code(text):
    text = re.sub(r'R"(\w*)\(.*?\)\1"', '""', text, flags=re.S)
    text = re.sub(r'//[^\n]*|/\*.*?\*/', '', text, flags=re.S)
    text = re.sub(r'"(?:\\.|[^"\\\n])*"', '""', text)
    return re.sub(r'^\s*#include[^\n]*', '', text, flags=re.M)


def main():
    files = {p: code(p.read_text()) for d in ('lib', 'cli') for p in (ROOT / d).rglob('*') if p.suffix in ('.hpp', '.cpp')}
    words, defined, declared = collections.Counter(), collections.Counter(), collections.defaultdict(set)
    for path, text in files.items():
        words.update(re.findall(r'\b[A-Za-z_]\w*\b', text))
        if path.suffix == '.cpp':
            defined.update(m[1] for m in DEFINED.finditer(text))
        elif path.is_relative_to(ROOT / 'lib'):
            for m in DECLARED.finditer(text):
                declared[m[1]].add(path)
    unused = []
    for name, places in sorted(declared.items()):
        lines = sum(len(re.findall(r'^(?:  )?(?:[^\n=;(]*?)[\s&\*>]' + name + r'\s*\(', files[p], re.M)) for p in places)
        if name not in NO_FUNCTION | FOR_OTHERS and words[name] <= lines + defined[name]:
            unused.append(f'{sorted(places)[0].relative_to(ROOT)}: {name} is called nowhere in lib or cli')
    print('\n'.join(unused))
    if len(declared) < 300:
        sys.exit(f'only {len(declared)} functions were found: this looks in the wrong place')
    print(f'{len(declared)} functions, {len(unused)} without a caller')
    sys.exit(1 if unused else 0)


main()
