#!/usr/bin/env bash
# The command spec, cases that name their card, and jobs that do.
. "$(dirname "$0")/../cli/lib.sh"

# reads TEXT - as says, wherever the lines are broken
reads() {
  local whole=$out out
  out=$(tr -s ' \n' '  ' <<< "$whole")
  says "$1"
}
cards=$XDG_DATA_HOME/pullcord/specs
pull() { ends_with 0 "$PULLCORD" "$@"; }
refused() { ends_with 65 "$PULLCORD" "$@"; }

# ---- none yet, a new one, never over another -----------------------------------------------
pull spec; says "There is no spec card yet"
pull spec new "Plot 7 tiller" --class tiller
says "$cards/plot-7-tiller.json"
[ "$(stat -c %a "$cards/plot-7-tiller.json")" = 600 ] || { bad=$((bad + 1)); echo "the card may be read by others"; }
pull spec check "$cards/plot-7-tiller.json"; says "0 figures"; says "to fill in"
echo '{"mine": 1}' > "$cards/plot-7-tiller.json"
ends_with 73 "$PULLCORD" spec new "plot 7 TILLER"; says "is there already, and is left as it is"
grep -q mine "$cards/plot-7-tiller.json" || { bad=$((bad + 1)); echo "spec new wrote over a card"; }
refused spec new "///"; says "no card can be named"
refused spec new a --class tilller; says 'did you mean "tiller"'
pull spec new chain 'saw "one"' --class chainsaw
pull spec check "$cards/chain-saw-one.json"
grep -q mix-ratio "$cards/chain-saw-one.json" || { bad=$((bad + 1)); echo "a saw has a mix ratio"; }
grep -q valve-clearance "$cards/chain-saw-one.json" && { bad=$((bad + 1)); echo "a saw has no valves"; }

# ---- finding and showing --------------------------------------------------------------------
cp "$PULLCORD_SOURCE/demo/specs/millrace-tiller.json" "$cards"
echo 'not JSON' > "$cards/broken.json"
echo '{}' > "$cards/No Card.json"
mkfifo "$cards/pipe.json"
pull spec
says 'millrace-tiller              Millrace tiller, tiller, 18 figures'
says 'plot-7-tiller                cannot be used: '
says 'broken                       cannot be used: '
silent_on 'No Card'
silent_on 'pipe'
pull spec millrace; says "0.76 mm (0.70 mm to 0.80 mm) [maker's sheet]"; says "18 ft-lb"
pull spec the big til; says "Millrace tiller (millrace-tiller)"
pull spec mill --metric; says "0.254 mm"; says "24.4 N.m"; says "586 kPa to 793 kPa"; says "3600 rpm"
pull spec mill --us; says "0.0299 in"; says "17.7 ft-lb"; says "19.61 US fl oz"; says "0.010 in"; says "85 psi"
pull spec mill --json; says '"usual_spread":	true'
ends_with 64 "$PULLCORD" spec mill --us --metric; says "do not go together"
ends_with 66 "$PULLCORD" spec milrace; says 'did you mean "millrace-tiller"?'
ends_with 66 "$PULLCORD" spec wheelbarrow; says 'there is no spec card "wheelbarrow".'
cp "$cards/millrace-tiller.json" "$cards/millrace-two.json"
refused spec millrace; says "fits 2 spec cards: millrace-tiller, millrace-two"
pull spec millrace-tiller; says "(millrace-tiller)"
rm "$cards/millrace-two.json"
refused spec broken; says "broken.json:1: "

# ---- checking a file ------------------------------------------------------------------------
sed 's/0.76 mm/76 mm/; s/"idle-speed"/"idel-speed"/' "$cards/millrace-tiller.json" > "$work/bad.json"
refused spec check "$work/bad.json"
says "$work/bad.json:11: 76 mm cannot be right: it lies between 0.2 mm and 2 mm"
says "$work/bad.json:18: there is no figure \"idel-speed\"; did you mean \"idle-speed\"?"
says "2 to mend"
ends_with 66 "$PULLCORD" spec check "$work/none.json"
head -c 300000 /dev/zero > "$work/big.json"
refused spec check "$work/big.json"
ends_with 64 "$PULLCORD" spec check
ends_with 64 "$PULLCORD" spec new

# ---- a case that names its card -------------------------------------------------------------
cat > "$work/case.json" << 'END'
{"pullcord": "case-1", "machine": {"class": "tiller", "spec": "Millrace tiller"}, "complaint": "weak",
 "results": [{"check": "compression", "reading": "80 psi"}, {"check": "ethanol-content", "reading": "5 %"}]}
END
pull assess "$work/case.json"
reads "cranking compression 80 psi: "
reads "by the card (right from 85 psi to"
reads "class figure (ethanol-content-limit: limit 10 %"
out=$("$PULLCORD" assess --json "$work/case.json" | tr -d '\n\t')
says '"by":"card","low":"85 psi","high":"115 psi","from":"maker'"'"'s sheet","card":"millrace-tiller"'
says '"by":"class-figure","bands":"ethanol-content-limit","basis":"published"'
sed 's/"complaint": "weak"/&, "spec": [{"check": "compression", "low": "60 psi", "high": "90 psi", "from": "measured"}]/' \
  "$work/case.json" > "$work/own.json"
pull assess "$work/own.json"; reads "(right from 60 psi to 90 psi, measured)"
sed 's/Millrace tiller/Milrace tiller/' "$work/case.json" > "$work/no.json"
ends_with 66 "$PULLCORD" assess "$work/no.json"; says 'did you mean "millrace-tiller"?'
sed 's/Millrace tiller/broken/' "$work/case.json" > "$work/no.json"
refused assess "$work/no.json"; says "broken.json:1: "

# ---- at height: judged at its sea-level equivalent, unless the card was measured there -------
high() { # machine, more
  printf '{"pullcord": "case-1", "machine": {"class": "tiller"}, "complaint": "weak", "given": {"altitude": "%s"}%s,
 "results": [{"check": "compression", "reading": "68 psi"}]}' "$1" "$2" > "$work/high.json"
}
high "5000 ft" ""; pull assess "$work/high.json"; reads "68 psi: good"; reads "taken as 81.73 psi: "
high "100 m" ""; pull assess "$work/high.json"; reads "68 psi: weak"; silent_on "taken as"
high "5000 ft" ', "spec": [{"check": "compression", "low": "75 psi", "high": "95 psi", "from": "measured"}]'
pull assess "$work/high.json"; reads "68 psi: weak"; silent_on "taken as"
high "5000" ""; refused assess "$work/high.json"; says "has no unit"
high "5000 psi" ""; refused assess "$work/high.json"; says "altitude: "

# ---- jobs -----------------------------------------------------------------------------------
pull job open tiller weak under load
pull job add last spec millrace-tiller; says "Its figures judge 11 checks"
pull job add last given altitude 5000 ft
pull job add last compression 68 psi
pull job show last
says "spec-card millrace-tiller"; says "given     altitude 1524 m"; says "85 psi to 115 psi (maker's"
refused job add last given altitud 3 m; says 'did you mean "altitude"'
ends_with 66 "$PULLCORD" job add last spec milrace; says 'did you mean "millrace-tiller"'
pull job add last given altitude none
pull job add last spec none
pull job show last; says "took-back figure for cranking compression"; says "took-back altitude"; says "none any more"
"$PULLCORD" job export last > "$work/job"
ends_with 0 env XDG_STATE_HOME="$work/other" "$PULLCORD" job import "$work/job"
env XDG_STATE_HOME="$work/other" "$PULLCORD" job export --all > "$work/again"
cmp -s "$work/job" "$work/again" || { bad=$((bad + 1)); echo "a job with its card does not come back byte for byte"; }
finish
