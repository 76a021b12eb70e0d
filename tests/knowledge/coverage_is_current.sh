#!/usr/bin/env bash
# docs/coverage.md must be what the program prints; make it anew with
#   pullcord print coverage > docs/coverage.md
set -u
if diff "$PULLCORD_KNOWLEDGE/docs/coverage.md" <("$PULLCORD" print coverage) | head -20 | grep .; then
  printf 'FAILED: docs/coverage.md is not what the knowledge says now. In the top folder:\n'
  printf '  pullcord print coverage > docs/coverage.md\n'
  exit 1
fi
