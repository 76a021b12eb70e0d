#!/usr/bin/env bash
# What "pullcord work --json" prints of every example fits docs/schema/work-1.json, and the schema is
# strict. Ends with 77 when there is no python3 with jsonschema.
set -u
/usr/bin/python3 -c 'import jsonschema' 2>/dev/null ||
  { echo "SKIPPED: docs/schema/work-1.json was NOT checked: python3-jsonschema is not installed"; exit 77; }
exec /usr/bin/python3 -B "$(dirname "$0")/check_json.py"
