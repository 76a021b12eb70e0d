; Checks of the plug, its lead and boot. To add one: copy a (check ...); a measured check wants
; (bands ...) with results in rising order. Check with: pullcord vet

(deffacts plug-checks "ignition: plug, lead and boot"
  (check (id plug-look) (name "read the plug") (system ignition) (kind look)
    (ask "What does the firing end of the plug look like?")
    (results tan-dry worn black-dry white-blistered fuel-wet oil-wet bridged-or-cracked)
    (labels "tan or grey, dry" "edges rounded, gap grown" "black, dry, sooty"
      "white, chalky or blistered" "wet with petrol" "wet or caked with oil"
      "bridged across or porcelain cracked")
    (means "Mixture and heat about right; a dry clean plug on a no-start points to no fuel."
      "Worn out: wants more voltage than a tired coil gives."
      "Rich, choke part shut, dirty filter, weak spark or too cold a plug."
      "Too hot: lean, air leak, timing, loose plug or too hot a plug."
      "Fuel comes but is not lit: flooded, or no spark."
      "Oil past rings, guides or breather; on a two-stroke too much oil in the mix."
      "No spark at the gap whatever the coil gives.")
    (anyway 0.08 0.05 0.015 0.04 0.01 0.003) (minutes 3)
    (tools "plug socket" "good light" "magnifier")
    (steps "Read it straight after the trouble shows, not after ten more pulls."
      "Brush dirt away from the seat before it comes out."
      "Look at colour, wetness (smell it: petrol or oil), edges, and all round the porcelain.")
    (off plug) (engine stopped) (cautions plug-lead-off hot-parts aluminium-threads)
    (mistakes "Reading a plug after long idling or choking: it is black on any engine."
      "Taking fuel-wet for flooding when there is no spark to burn it.")
    (also-called "read plug" "spark plug colour" "plug condition")
    (basis published) (source tm-10-3930-653-14p) (place "para 4-7-9"))
  (check (id plug-gap) (name "plug gap") (system ignition) (kind measure)
    (ask "What is the plug gap, with a wire gauge?")
    (results right narrow wide) (labels "right" "too narrow" "too wide")
    (means "Gap is not the trouble." "Thin short spark: misses at idle and when cold."
      "Needs more voltage: hard start, misses when loaded or warm.")
    (anyway 0.015 0.03) (minutes 3) (tools "wire gauge" "plug socket" "gap bender")
    (steps "Plug out, tip wiped." "Slide the wires through: one drags, the next will not go."
      "Measure at two places; a worn centre electrode fools a flat feeler.")
    (off plug) (engine stopped) (quantity length) (unit "mm") (tolerance 0.04) (possible 0 5)
    (cautions plug-lead-off hot-parts aluminium-threads)
    (mistakes "Flat feeler on worn electrodes reads too small."
      "Bending the centre electrode: the porcelain cracks.")
    (also-called "spark plug gap" "electrode gap")
    (basis published) (source navedtra-14273) (place "Inspecting spark plugs, p. 69"))
  (bands (id plug-gap-any) (check plug-gap) (results narrow right wide) (limits 0.58 0.95)
    (unit "mm")
    (note "0.030 in (0.76 mm) is usual for this class; makers print 0.6 to 1.0 mm.")
    (basis common-practice))
  (bands (id plug-gap-two-stroke) (check plug-gap) (needs two-stroke)
    (results narrow right wide) (limits 0.48 0.85) (unit "mm")
    (note "0.5 to 0.8 mm is usual on two-strokes.") (basis common-practice))
  (bands (id plug-gap-points) (check plug-gap) (needs four-stroke breaker-points)
    (results narrow right wide) (limits 0.46 0.85) (unit "mm")
    (note "Old points magnetos are printed from 0.020 to 0.030 in (0.51 to 0.76 mm).")
    (basis common-practice))
  (check (id plug-right-kind) (name "right kind of plug") (system ignition) (kind look)
    (ask "Is the plug the listed one: reach, thread, seat, heat range, resistor?")
    (results right wrong) (labels "right kind" "wrong kind")
    (means "Kind is not the trouble."
      "Wrong heat fouls or burns; wrong reach hits the piston or leaves threads bare.")
    (anyway 0.04) (minutes 4) (tools "parts list" "steel rule")
    (steps "Read the number on the plug; compare with the maker's list, not the old plug."
      "Lay the reach against the hole depth; look for coked or shiny threads."
      "Flat seat with gasket, or taper without: see that the head matches.")
    (off plug) (engine stopped) (cautions plug-lead-off aluminium-threads hot-parts)
    (mistakes "Matching the old plug: the wrong one may have been in for years.")
    (also-called "heat range" "plug number" "plug reach") (basis common-practice))
  (check (id plug-tightness) (name "plug tight in its hole") (system ignition) (kind try)
    (ask "Is the plug tight, with no hiss or oil bubbles round it?")
    (results tight loose) (labels "tight" "loose, hissing or thread gone")
    (means "Seals." "Leaks and overheats; the thread may be on its way out.")
    (anyway 0.006) (minutes 2) (tools "plug socket" "torque wrench")
    (steps "Cold engine, lead off: feel with the socket whether it moves under light hand."
      "Drop of oil round the seat, turn the engine over: bubbles mean a leak."
      "Out and look: seat gasket flat, thread in head clean.")
    (off plug-boot) (engine cold) (cautions plug-lead-off aluminium-threads hot-parts)
    (mistakes "Heaving on a loose-feeling plug: the aluminium thread is what gives.")
    (also-called "loose plug" "plug blowing") (basis common-practice))
  (check (id plug-lead-look) (name "plug lead and boot") (system ignition) (kind look)
    (ask "Are lead and boot sound: no cracks, chafe, burn track, loose clip?")
    (results sound loose-or-cracked) (labels "sound" "loose, cracked, chafed or burnt")
    (means "Nothing to be seen; leaks can still show in the dark."
      "Spark is lost on the way or the clip does not touch the plug.")
    (anyway 0.015) (minutes 3) (tools "light")
    (steps "Twist the boot off; look inside for the spring or clip and a green or burnt end."
      "Bend the lead along its length; look where it passes the shroud and the cylinder."
      "Push it back: it must snap or grip.")
    (off plug-boot) (engine stopped) (cautions plug-lead-off hot-parts)
    (mistakes "Pulling on the lead instead of the boot: the clip stays on the plug.")
    (also-called "HT lead" "plug wire" "plug cap") (basis published)
    (source tm-9-4940-421-14) (place "Table 4-1, p. 4-2.3"))
  (check (id plug-boot-resistance) (name "resistance of the resistor boot") (system ignition)
    (kind measure)
    (ask "What does the resistor boot measure from end to end?")
    (results right open-or-high) (labels "right" "open or far too high")
    (means "Boot passes the spark." "Resistor burnt out: weak spark or none, misses hot.")
    (anyway 0.01) (minutes 4) (tools "multimeter")
    (steps "Unscrew or pull the boot off the lead." "Meter from lead screw to plug clip."
      "Press and wriggle while reading.")
    (off plug-boot) (needs resistor-plug) (engine stopped)
    (quantity resistance) (unit "kohm") (tolerance 0.3) (possible 0 100000) (cautions plug-lead-off)
    (mistakes "Measuring with the boot still on the coil: the coil is in the reading."
      "Taking 5 kilohm for a fault: that is what a resistor boot has.")
    (also-called "suppressor cap" "resistor cap") (basis common-practice))
  (bands (id plug-boot-resistance-any) (check plug-boot-resistance)
    (results right open-or-high) (limits 15) (unit "kohm")
    (note "Most resistor boots and plugs are about 5 kilohm; one maker prints 7.5 to 12.5.")
    (basis common-practice))
)
