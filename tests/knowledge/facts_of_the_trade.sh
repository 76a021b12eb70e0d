#!/usr/bin/env bash
# What every mechanic of the trade knows must be found where it is looked for: pullcord show ID
# says it, in these words or on this point. One line each: ID, then what must be in it.
set -u
failed=0

says() {
  local id="$1" text
  shift
  text="$("$PULLCORD" show "$id" | tr -s ' \n' ' ')"
  for words in "$@"; do
    if ! grep -qF -- "$words" <<<"$text"; then
      printf 'FAILED: pullcord show %s does not say: %s\n' "$id" "$words"
      failed=1
    fi
  done
}

says plug-gap "0.030 in (0.76 mm) is usual for this class"
says set-plug-gap "usual 0.030 in (0.76 mm)"
says main-jet-look "A jet with no slot is not meant to come out"
says clean-main-jet "No slot: it stays in and is cleaned there" \
  "About 15 minutes in hot water with degreaser in the ultrasonic bath" \
  "compressed air through every passage from both ends" "Prove each passage" \
  "whole and not leaking: may go back" "Torn, swollen or cut: new"
says tank-inside "A plastic tank cannot rust, but keeps dirt and shreds"
says pickup-filter-clogged "In many plastic tanks it is the only filter"
says bowl-gasket-look "May go back if it did not leak before." "it may not go back"
says carburettor "If there is an O-ring behind it, it falls off unseen" \
  "Draw the nuts up in turn, snug and no more"
says pump-never-dry "Never run a pump without water"
says change-oil "warm oil drains best" "about a tenth stays behind" \
  "Short of the book figure at first (book 650 mL, 22 US fl oz: pour 550)" \
  "up between the marks" "adding is easier than taking out"
says drain-water-and-refill "No additive turns water into fuel; it only spreads it"

# Hand-overs name the kind of person, and the warnings whose word goes before ours.
says hand-jet-through-skin "hospital now"
says hand-joined-to-the-house "licensed electrician"
says hand-gas-leak "licensed gas fitter"
says hand-flywheel-broken "maker's workshop"
says hand-blade-and-mount-damaged "engine machinist"
says high-pressure-injection "a hospital, at once"
says generator-back-feed "a licensed electrician"
says gaseous-fuel "a licensed gas fitter"
says starting-fluid "Never on a two-stroke or a heated intake"
says carbon-monoxide "the safety regulator" "NIOSH 96-118"
says compressed-air "29 CFR 1910.242(b)"
says used-oil "40 CFR 279"
says battery-acid-hydrogen "29 CFR 1910.178(g)"
says blade-brake "16 CFR 1205"

exit "$failed"
