#!/usr/bin/env bash
# Makes the manual's pictures from the demo books: LibreOffice prints a result book, pdftoppm draws its pages, ImageMagick
# crops them. Needs soffice, pdftoppm and pdftotext (poppler-utils), convert (imagemagick) and jar (the JDK).
#
#   src/docs/manual/pictures.sh                  plans the demo books with the launcher and draws every picture
#   src/docs/manual/pictures.sh BOOKS PICTURES   draws what the result books in one folder show into another
set -euo pipefail
here=$(cd "$(dirname "$0")" && pwd)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

books=${1:-$work/demo}
pictures=${2:-$here/pictures}
if [ $# -eq 0 ]; then
    "$here/../../../bagwright" demo -o "$books"
fi
books=$(cd "$books" && pwd)
mkdir -p "$pictures"

# The page of a result book that is the Nth (from 1) of a sheet, as its footer says.
page() {
    pages=$(pdftotext -layout "$work/$1-plan.pdf" - | tr '\f' '\n' | grep -oE "(^| )$2 +[0-9]+ / [0-9]+ *$" | awk '{ print $(NF - 2) }')
    echo "$pages" | sed -n "$3p"
}

# printed BOOK: a copy whose input sheets are printed too: without their print areas, which are a cell out of sight.
printed() {
    mkdir -p "$work/parts/$1"
    (
        cd "$work/parts/$1"
        jar xf "$books/$1-plan.xlsx"
        sed -i -E "s#<definedName [^>]*name=\"_xlnm.Print_Area\"[^>]*>(Start|Clubs)![^<]*</definedName>##g" xl/workbook.xml
        jar cfM "$work/$1-plan.xlsx" .
    )
}

# picture BOOK SHEET NTH HEIGHT NAME: a page cut to what is on it; at most the upper HEIGHT percent of the page. Books that
# are not there are passed over.
picture() {
    [ -f "$books/$1-plan.xlsx" ] || return 0
    if [ ! -f "$work/$1-plan.pdf" ]; then
        printed "$1"
        soffice "-env:UserInstallation=file://$work/profile" --headless --convert-to pdf --outdir "$work" \
            "$work/$1-plan.xlsx" >/dev/null 2>&1
    fi
    number=$(page "$1" "$2" "$3")
    if [ -z "$number" ]; then
        echo "pictures.sh: $1-plan.xlsx has no page $3 of the sheet $2" >&2
        exit 1
    fi
    pdftoppm -r 110 -png -singlefile -f "$number" -l "$number" "$work/$1-plan.pdf" "$work/page"
    # The footer is cut off first, so that only the sheet's own content counts.
    convert "$work/page.png" -gravity north -crop "100%x$4%+0+0" +repage -trim +repage \
        -bordercolor white -border 8 -colors 64 -depth 8 -strip "PNG8:$pictures/$5.png"
}

picture trio Start 1 92 start
picture trio Clubs 1 34 clubs-1
picture trio Plan 1 92 plan-1
picture trio Ladder 1 92 ladder-1
picture trio Steps 1 92 steps
picture trio Others 1 92 others
picture full "Bench card" 1 92 bench-card
picture full "Golfer card" 1 92 golfer-card
picture team Team 1 92 team
