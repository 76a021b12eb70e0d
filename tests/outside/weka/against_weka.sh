#!/bin/bash
# against_weka.sh EXPORT_NET - the weighing held against Weka's junction tree.
#
# First Weka itself is held against the published numbers of two textbook networks, then our
# beliefs against Weka's on the networks of a sample of real cases, to 1e-9. Status 0: all
# agree; 1: some do not; 77: Java's compiler or Weka is not installed.
set -euo pipefail

here=$(cd "$(dirname "$0")" && pwd)
export_net=$1
source=${PULLCORD_SOURCE:-$(cd "$here/../../.." && pwd)}
weka=${WEKA_JAR:-/usr/share/java/weka.jar}
every=31 # of the cases, a prime so that it goes through all the folders

skip() { echo "SKIPPED, beliefs NOT held against Weka: $1"; exit 77; }
if ! command -v java >/dev/null || ! command -v javac >/dev/null; then skip "no Java (Debian: default-jdk-headless)"; fi
[ -r "$weka" ] || skip "no $weka (Debian: weka)"

work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
export LC_ALL=C.UTF-8 PULLCORD_KNOWLEDGE=$source XDG_DATA_HOME=$work/none

# margins REQUESTS: each line with Weka's chance at its end
margins() {
  (cd "$here" && java -cp "$weka:$work" Margins "$1") 2>"$work/errors" || { tail -5 "$work/errors"; return 1; }
}

# compare FILE WHAT AT-LEAST: lines end "... chance allowed theirs"
compare() {
  awk -v what="$2" -v least="$3" '
    { d = $NF - $5; if (d < 0) d = -d; n++; if (d > most) most = d
      if (!(d <= $6)) { bad++; print "differs:", $0 } }
    END { printf "%s: %d chances, largest difference %.2g, %d beyond what is allowed\n", what, n, most, bad
          exit bad > 0 || n < least }' "$1"
}

javac -cp "$weka" -d "$work" "$here/Margins.java"
margins "$here/published.txt" >"$work/published"
compare "$work/published" "Weka against the textbooks" 35

cases=()
at=0
for file in "$source"/tests/cases/*/*.json; do
  at=$((at + 1))
  if [ $((at % every)) -eq 7 ]; then cases+=("$file"); fi
done
# a case that cannot be read is for other tests to report; here most must do
"$export_net" "$work" "${cases[@]}" >"$work/requests" 2>"$work/log" || grep -v ' faults, ' "$work/log" || true
awk '/ faults, / { n++ } { for (i = 2; i <= NF; i++) {
       if ($i == "between") mixed += $(i - 1); if ($i == "softly") soft += $(i - 1); if ($i == "biased" ) biased += $(i - 2) } }
     END { printf "%d networks: %d readings between results, %d softly sound, %d biased faults\n", n, mixed, soft, biased
           exit !(n >= 20 && mixed > 0 && soft > 0 && biased > 0) }' "$work/log"
margins "$work/requests" >"$work/ours"
compare "$work/ours" "ours against Weka" 200
