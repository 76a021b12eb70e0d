#!/usr/bin/env bash
# Runs one of the checks here with Debian's own python3; ends with 77 (skipped), saying so,
# when what it needs is not there.
set -u
: "${PULLCORD:?}" "${PULLCORD_SOURCE:?}" "${PULLCORD_BUILD:?}" "${PULLCORD_SAMPLES:?}"
here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)

skip() {
  printf 'SKIPPED: %s was NOT checked: %s\n' "$1" "$2"
  exit 77
}
[[ -x /usr/bin/python3 ]] || skip "$1" 'there is no /usr/bin/python3 (package python3)'
if [[ $1 == check_form.py ]] && ! /usr/bin/python3 -c 'import jsonschema' 2>/dev/null; then
  skip "$1" 'the package python3-jsonschema is not installed'
fi
if [[ $1 == check_pdf.py ]] && ! command -v pdftotext pdfinfo >/dev/null; then
  skip "$1" 'there is no pdftotext (package poppler-utils)'
fi
export PULLCORD_KNOWLEDGE=$PULLCORD_BUILD/share/pullcord XDG_DATA_HOME=/nonexistent/data
exec /usr/bin/python3 -B "$here/$1" "${@:2}"
