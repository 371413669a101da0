#!/usr/bin/env bash
# Builds the web page, puts it where the desk looks for it and serves it from, and prints that
# folder. wrenlet-desk and the starter classroom are built with it.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."
# shellcheck source=assets/make/web_libraries.sh
. assets/make/web_libraries.sh

have_cross_libraries
have_also fonttools zopfli
build release wrenlet-desk starter_classroom page_icons
export WRENLET_CROSS_LIBRARIES=$cross_prefix
build web page bare
page=build/release/share/wrenlet/page
rm -rf "$page.new"
cp -R build/web/page "$page.new"
rm -rf "$page"
mv "$page.new" "$page"
echo "$page"
