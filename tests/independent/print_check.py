#!/usr/bin/env python3
# SPDX-License-Identifier: Apache-2.0
"""Prints a report with a browser, on A4 and on Letter, and looks at what came out.

    print_check.py REPORT.html FOLDER

Every word of the page is in the print, none lies in the margins or is cut by the sheet's edge, and
no row of a table goes from one sheet to the next; where `zbarimg` is there, it reads the mark from
the code on the first sheet. Exit status 77 where no browser is there.
"""
import collections
import html.parser
import pathlib
import re
import shutil
import subprocess
import sys
import xml.etree.ElementTree as xml

SHEETS = {"A4": (595.3, 841.9), "Letter": (612.0, 792.0)}
LEAST_MARGIN = 36.0  # points; the page asks for 15 mm


class Words(html.parser.HTMLParser):
    """What a reader sees, and the words of each table row."""

    def __init__(self):
        super().__init__()
        self.hidden, self.words, self.rows, self.row = 0, [], [], None

    def handle_starttag(self, tag, attrs):
        self.hidden += tag in ("style", "title")
        if tag == "tr":
            self.row = []

    def handle_endtag(self, tag):
        self.hidden -= tag in ("style", "title")
        if tag == "tr":
            self.rows.append(self.row)
            self.row = None

    def handle_data(self, data):
        if self.hidden:
            return
        self.words += data.split()
        if self.row is not None:
            self.row += data.split()


def letters(words):
    """Without spaces and hyphens: where a browser breaks a line is its own affair."""
    return collections.Counter(re.sub(r"[\s\-\u2010\u00ad]", "", "".join(words)))


def printed(browser, page, folder, sheet):
    width, height = SHEETS[sheet]
    source = folder / f"{sheet}.html"
    source.write_text(page.replace("@page{size:auto", f"@page{{size:{sheet}"))
    pdf = folder / f"{sheet}.pdf"
    subprocess.run([browser, "--headless", "--no-sandbox", "--disable-gpu", "--no-pdf-header-footer",
                    f"--print-to-pdf={pdf}", source.as_uri()], check=True, capture_output=True,
                   timeout=120)
    boxes = subprocess.run(["pdftotext", "-bbox", pdf, "-"], check=True, capture_output=True).stdout
    tree = xml.fromstring(re.sub(rb"<!DOCTYPE[^>]*>| xmlns=\"[^\"]*\"", b"", boxes))
    pages = []
    for each in tree.iter("page"):
        assert abs(float(each.get("width")) - width) < 2 and abs(float(each.get("height")) - height) < 2
        pages.append([(word.text or "", *(float(word.get(m)) for m in ("xMin", "yMin", "xMax", "yMax")))
                      for word in each.iter("word")])
    return pages


def check_margins(pages, sheet):
    width, height = SHEETS[sheet]
    for number, page in enumerate(pages, 1):
        for text, left, top, right, bottom in page:
            assert left >= LEAST_MARGIN and right <= width - LEAST_MARGIN, (sheet, number, text)
            assert top >= LEAST_MARGIN and bottom <= height - LEAST_MARGIN, (sheet, number, text)


def check_rows(pages, rows, sheet):
    """A row that is nowhere else stands whole on one of the sheets."""
    counts = [letters(word for word, *_ in page) for page in pages]

    for row in rows:
        entry = next((word for word in row if re.fullmatch(r"#\d+", word)), None)
        if entry is None or len(row) < 4:
            continue
        need = letters(row)
        on = [i for i, page in enumerate(pages) if any(word == entry for word, *_ in page)]
        assert any(not need - counts[i] for i in on), (sheet, row, on)


def check_code(page, folder, sheet):
    """In shades of grey, at a resolution that any camera has."""
    if shutil.which("zbarimg") is None or shutil.which("pdftoppm") is None:
        return "no code read: no zbarimg here"
    picture = folder / f"{sheet}-first"
    subprocess.run(["pdftoppm", "-r", "100", "-f", "1", "-l", "1", "-gray", "-png", "-singlefile",
                    folder / f"{sheet}.pdf", picture], check=True, capture_output=True)
    read = subprocess.run(["zbarimg", "-q", "--raw", f"{picture}.png"], check=False, capture_output=True)
    mark = re.search(r'<div class="mark">([0-9a-f ]+)</div>', page)[1]
    assert read.stdout.decode().strip() == mark, (sheet, read.stdout, mark)
    return "the code reads as the mark"


def main():
    browser = next(filter(None, map(shutil.which, ("chromium", "chromium-browser", "google-chrome"))), None)
    if browser is None or shutil.which("pdftotext") is None:
        print("no browser here, nothing was printed")
        sys.exit(77)
    page = pathlib.Path(sys.argv[1]).read_text()
    folder = pathlib.Path(sys.argv[2]).resolve()
    folder.mkdir(parents=True, exist_ok=True)
    seen = Words()
    seen.feed(page)
    for sheet in SHEETS:
        pages = printed(browser, page, folder, sheet)
        check_margins(pages, sheet)
        lost = letters(seen.words) - letters(word for each in pages for word, *_ in each)
        assert not lost, (sheet, lost)
        check_rows(pages, seen.rows, sheet)
        print(f"{sheet}: {len(pages)} sheets, {len(seen.words)} words, none lost or cut; "
              + check_code(page, folder, sheet))


if __name__ == "__main__":
    main()
