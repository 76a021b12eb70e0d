#!/usr/bin/env bash
# The spec card, what is given, and bench arithmetic in the conversation.
. "$(dirname "$0")/../cli/lib.sh"

# reads TEXT - as says, wherever the lines are broken
reads() {
  local whole=$out out
  out=$(tr -s ' \n' '  ' <<< "$whole")
  says "$1"
}
cards=$XDG_DATA_HOME/pullcord/specs

# without cards nobody is asked for one
bench tiller "runs only on choke" quit
silent_on "spec card for it?"
mkdir -p "$cards"
cp "$PULLCORD_SOURCE/demo/specs/millrace-tiller.json" "$cards"
bench no chainsaw "?" quit
silent_on "spec card for it?"

# taken when it is offered; the figure stands beside the question and the reading
bench no tiller 7 1 "runs only on choke" "coil air gap" "0.25 mm" "compression 60 psi" "ethanol content 5 %" quit
says "No such card. Type its number"
says "Spec card: Millrace tiller. Its figures judge 11 checks"
reads "by the card: 0.2032 mm to 0.3048 mm (maker's sheet)"
reads "coil air gap 0.25 mm: right, by the card"
reads "cranking compression 60 psi: weak, by the card (right from 85 psi to 115 psi, maker's"
reads "alcohol in the petrol 5 %: 10 per cent or less, class figure (ethanol-content-limit"

# the job keeps its figures, whatever becomes of the card; taken off they go
mv "$cards/millrace-tiller.json" "$work/"
bench yes path spec "plug gap 0.76 mm" "spec none" "spec milrace" quit
says 'there is no spec card "millrace-tiller"'
reads "The figures taken when it was named still count."
reads "plug gap 0.76 mm: right, by the card"
says "No spec card any more"
mv "$work/millrace-tiller.json" "$cards/"
bench yes "spec milrace" "spec big til" spec "spec none" "plug gap 0.75 mm" quit
says 'There is no spec card "milrace"; did you mean "millrace-tiller"?'
says "torque, head bolts             24 N.m [maker's sheet]"
says "plug gap 0.75 mm: right, class figure"

# given: what no check asks for
bench yes given "given altitude 5000 ft" "compression 68 psi" "given altitude 5000" "given altitud 1 m" \
  "given temperature 86 degF" given "given altitude none" quit
says "altitude           not told"
says "Noted: height above the sea 1524 m."
reads "taken as 81.73 psi"
says "has no unit"
says "did you mean altitude?"
says "altitude           1524 m"
says "temperature        30 degC"
says "Taken back: altitude."

# work: typed, filled in from the job and its card, wrong, and all of it
bench yes "spec millrace" "given altitude 1500 m" "work oil-refill" "work premix 50:1 5 L" "work compression exponent=1.25" \
  "work premx 50:1" "work premix" "work premix 5 psi" work help path quit
says "Known of this job: book=0.58 L"
says "pour to begin with        460 mL"
says "oil                       100 mL = 3.381 US fl oz"
says "Known of this job: ratio=8.2:1"
says "Known of this job: altitude=1500 m"
says 'there is no calculation "premx"; did you mean "premix"?'
says "premix takes RATIO PETROL; ratio is missing"
says "nozzle-size     8 L/min 150 bar"
says "bench arithmetic: work oil-refill 650 mL"
says "The job is kept"
bench yes "work oil-refill 1 L" quit
silent_on "Known of this job: book"
finish
