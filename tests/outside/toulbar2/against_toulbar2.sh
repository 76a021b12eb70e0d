#!/bin/bash
# against_toulbar2.sh EXPORT_SETS - the most probable sets held against toulbar2, an exact solver
# for graphical models of all kinds (Debian package toulbar2).
#
# First toulbar2 itself is held against a network whose answer is known by hand, then the first
# three of our sets against its optimum on the networks of a sample of real cases: the same
# cost (-ln of the joint chance) to 1e-9 and the same set, or another of just that cost (a
# tie). Status 0: all agree; 1: some do not; 77: toulbar2 is not installed.
set -euo pipefail

here=$(cd "$(dirname "$0")" && pwd)
export_sets=$1
source=${PULLCORD_SOURCE:-$(cd "$here/../../.." && pwd)}
every=29 # of the cases, a prime so that it goes through all the folders

if ! command -v toulbar2 >/dev/null; then
  echo "SKIPPED, most probable sets NOT held against an exact solver: no toulbar2 (Debian: toulbar2)"
  exit 77
fi

work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
export LC_ALL=C.UTF-8 PULLCORD_KNOWLEDGE=$source XDG_DATA_HOME=$work/none

# solve NET.cfn: "cost set" of the optimum, or nothing when it was not proved in time
solve() {
  (cd "$work" && toulbar2 "$1" -timer=60 -s=1 2>&1) | awk '
    /^New solution:/ { getline; set = $0; gsub(/ /, "", set) }
    /^Optimum:/ { print $2, set }'
}

# by hand: faults of 1/10 and 1/5; seen was what the first always brings and the second half
# the time, and nothing else: .1 x .8 against .9 x .2 x .5 = .09, so the second alone
cat >"$work/hand.cfn" <<'NET'
{"problem": {"name": "hand", "mustbe": "<100000.00000000000"}, "variables": {"a": 2, "b": 2},
"functions": {"pa": {"scope": ["a"], "costs": [0.10536051566, 2.30258509299]},
 "pb": {"scope": ["b"], "costs": [0.22314355131, 1.60943791243]},
 "seen": {"scope": ["a", "b"], "costs": [100000, 0.69314718056, 0, 0]}}}
NET
read -r cost set < <(solve hand.cfn) || true
if [ "${set:-}" != 01 ] || ! awk -v c="$cost" 'BEGIN { exit !(c + log(.09) < 1e-9 && c + log(.09) > -1e-9) }'; then
  echo "toulbar2 itself gives \"${cost:-} ${set:-}\" where 01 at 2.40794560865 is right"
  exit 1
fi

cases=()
at=0
for file in "$source"/tests/cases/*/*.json; do
  at=$((at + 1))
  if [ $((at % every)) -eq 11 ]; then cases+=("$file"); fi
done
# a case that cannot be read is for other tests to report; here most must do
"$export_sets" "$work" "${cases[@]}" >"$work/ours" 2>"$work/log" || grep -v ' faults, ' "$work/log" || true
awk '/ faults, / { n++; for (i = 2; i <= NF; i++) if ($i == "faults,") faults += $(i - 1) }
     END { printf "%d networks of %.1f faults\n", n, faults / (n ? n : 1); exit !(n >= 20 && faults / n >= 20) }' "$work/log"

while read -r net cost set; do
  printf '%s %s %s %s\n' "$(basename "$net")" "$cost" "$set" "$(solve "$net")"
done <"$work/ours" >"$work/both"
awk '
  NF != 5 { print "not solved:", $0; bad++; next }
  { d = $2 - $4; if (d < 0) d = -d; n++; if (d > most) most = d
    size[gsub(/1/, "1", $3)]++
    if (d > 1e-9) { bad++; print "differs:", $0 } else if ($3 != $5) ties++ }
  END { printf "ours against toulbar2: %d sets (%d of two faults or more), largest difference %.2g, %d tied, %d wrong\n",
               n, n - size[0] - size[1], most, ties, bad
        exit bad > 0 || n < 60 || n - size[0] - size[1] < 10 || ties * 4 > n }' "$work/both"
