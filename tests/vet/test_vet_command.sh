#!/usr/bin/env bash
# pullcord vet and pullcord print effective from outside: exit statuses, JSON, the engine's own
# refusals, and which cases change their first answer.
# Usage: test_vet_command.sh BASE, with PULLCORD and PULLCORD_SOURCE set.
set -u
base=$1
here=$PULLCORD_SOURCE/tests/vet
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
export PULLCORD_KNOWLEDGE=$base XDG_DATA_HOME=$work/none
failures=0

fail() {
  printf 'FAILED %s\n' "$1"
  failures=$((failures + 1))
}

# expect STATUS WHAT WORDS...: runs pullcord with the words, keeps its output in $out
expect() {
  local status=$1 what=$2
  shift 2
  out=$("$PULLCORD" "$@" 2>&1)
  local got=$?
  [ $got -eq "$status" ] || fail "$what: status $got, not $status: $out"
}

says() { # says WHAT TEXT
  case $out in *"$2"*) ;; *) fail "$1: does not say \"$2\" in: $out" ;; esac
}

silent() { # silent WHAT TEXT
  case $out in *"$2"*) fail "$1: says \"$2\"" ;; esac
}

expect 0 "clean knowledge" vet
says "clean knowledge" "nothing wrong"

expect 65 "a serious finding" vet "$here/bad/no-caution"
says "a serious finding" "$here/bad/no-caution/facts/checks.clp:"
says "a serious finding" "1 to mend, 0 worth a look"

expect 0 "advice only" vet "$here/bad/no-tools"
says "advice only" "(worth a look)"

line=$(grep -n 'serious: no-caution' "$here/bad/no-caution/facts/checks.clp" | cut -d: -f1)
expect 65 "JSON" vet "$here/bad/no-caution" --json
says "JSON" '"kind":'
[ "$(printf '%s' "$out" | tr -d ' \n\t' | grep -c "\"line\":$line,\"kind\":\"no-caution\",\"serious\":true")" = 1 ] ||
  fail "JSON: no no-caution at line $line: $out"

# rules that pass the scan and that the engine refuses
mkdir -p "$work/engine/rules"
printf '%s\n' '(defrule compares-a-word' '  "[common-practice] A word is no number."' \
  '  (logical (finding (check fuel-flow) (result runs) (sure ?s&:(> ?s word))))' '  =>' \
  '  (assert (advise (about worth))))' >"$work/engine/rules/more.clp"
expect 65 "the engine's refusal" vet "$work/engine" --json
says "the engine's refusal" '"engine"'
says "the engine's refusal" "$work/engine/rules/more.clp"
sed -i 's/ word)/ 0.5)/' "$work/engine/rules/more.clp"
expect 0 "the same rule mended" vet "$work/engine"
says "the same rule mended" "nothing wrong"

# the effective whole: an own file of the same name replaces, others add
mkdir -p "$work/data/pullcord/facts"
sed 's/leaflet of a safety board/leaflet, second edition/I' "$base/facts/sources.clp" >"$work/data/pullcord/facts/sources.clp"
printf '(deffacts mine "added")\n' >"$work/data/pullcord/facts/zz-mine.clp"
XDG_DATA_HOME=$work/data expect 0 "effective" print effective
says "effective" "; ---- facts/sources.clp (yours, in place of the shipped file): $work/data/pullcord/facts/sources.clp"
says "effective" "; ---- facts/zz-mine.clp (yours, added): $work/data/pullcord/facts/zz-mine.clp"
says "effective" "; ---- facts/checks.clp (shipped): $base/facts/checks.clp"
says "effective" "leaflet, second edition"
says "effective" "2 of them yours"
silent "effective" "Leaflet of a safety board"
expect 0 "effective without own" print effective
says "effective without own" "0 of them yours"

# which cases change their first answer
mkdir -p "$work/cases/below" "$work/old"
cp -rL "$base/facts" "$base/rules" "$work/old/"
sed -i 's/(check jet-look) (result blocked) (chance usually)/(check jet-look) (result blocked) (chance seldom)/
  s/(sign (fault rings-worn) (check compression) (result low) (chance usually)/(sign (fault rings-worn) (check jet-look) (result blocked) (chance usually)/' \
  "$work/old/facts/faults.clp"
printf '{"pullcord": "case-1", "machine": {"class": "saw", "has": [], "lacks": []}, "complaints": ["weak"], "results": [{"check": "jet-look", "result": "blocked"}]}\n' \
  >"$work/cases/below/jet.json"
printf '{"about": "wrapped", "case": {"pullcord": "case-1", "machine": {"class": "mower", "has": ["fuel-tap"], "lacks": []}, "complaints": ["no-start"], "results": [{"check": "tap-position", "result": "shut"}]}}\n' \
  >"$work/cases/tap.json"
expect 0 "against" vet --against "$work/old" --cases "$work/cases"
says "against" "$work/cases/below/jet.json: was rings-worn ("
says "against" ", now jet-blocked ("
says "against" "2 cases compared: 1 changed its first answer."
silent "against" "tap.json"
expect 0 "against itself" vet --against "$base" --cases "$work/cases"
says "against itself" "2 cases compared: all have the same first answer as before."
expect 0 "against in JSON" vet --json --against "$work/old" --cases "$work/cases"
says "against in JSON" '"rings-worn"'
says "against in JSON" '"jet-blocked"'

# an old own folder is laid over the shipped knowledge
mkdir -p "$work/own/facts"
cp "$work/old/facts/faults.clp" "$work/own/facts/"
expect 0 "against an own folder" vet --against "$work/own" --cases "$work/cases"
says "against an own folder" "1 changed its first answer"

# a case that only the new knowledge can read
printf '{"pullcord": "case-1", "machine": {"class": "mower", "has": [], "lacks": []}, "complaints": ["weak"], "results": [{"check": "fuel-age", "result": "old"}]}\n' \
  >"$work/cases/age.json"
sed -i 's/(id fuel-age)/(id petrol-age)/; s/(check fuel-age)/(check petrol-age)/' "$work/old/facts/"*.clp
expect 0 "a case of one version" vet --against "$work/old" --cases "$work/cases"
says "a case of one version" "age.json: was no answer, now jet-blocked ("

expect 66 "no cases" vet --against "$base" --cases "$work/none"
expect 66 "no such folder" vet "$work/none"
expect 66 "no such old folder" vet --against "$work/none" --cases "$work/cases"
expect 64 "cases alone" vet --cases "$work/cases"
expect 64 "no value" vet --against
expect 78 "old knowledge unusable" vet --against "$here/bad/unit" --cases "$work/cases"

[ $failures -eq 0 ] && printf 'all as expected\n'
exit $((failures > 0))
