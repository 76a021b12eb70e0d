; Checks of the spark itself: tester on the lead, tester in line, and the things taken out of
; the circuit one at a time. To add one: copy a (check ...), give every result after the first
; an anyway, and write signs for it in signs.clp. Check with: pullcord vet

(deffacts spark-checks "ignition: spark tests"
  (check (id spark-test) (name "spark across a fixed gap") (system ignition) (kind try)
    (ask "Does the spark jump a fixed-gap tester (4.2 mm) at every turn?")
    (results jumps weak none)
    (labels "jumps every time" "misses or jumps only now and then" "no spark at all")
    (means "Coil, flywheel, lead and stop circuit can make a spark. The plug is still untried."
      "Low output: air gap, bad lead or boot, points, failing coil, or pulled too slowly."
      "Nothing gets to the lead: stop circuit first, then boot and lead, coil last.")
    (anyway 0.05 0.015) (minutes 3)
    (tools "fixed-gap spark tester, about 4.2 mm" "jumper lead with clip")
    (steps "Leave the plug in its hole. Pull the lead and fit it to the tester."
      "Clip the tester to bare metal of the engine, well away from fuel and any open hole."
      "Switch on, bar held, brake on or seat pressed as the machine wants it."
      "Pull or crank briskly at least six times and watch the gap each turn.")
    (off plug-boot) (engine cranking)
    (cautions no-spark-near-fuel ignition-voltage spark-test-grounded moving-parts)
    (mistakes "Judging by brightness: only whether it jumps the gap counts."
      "Laying the plug on the head beside an open plug hole: fuel mist comes out and fires."
      "Switch off or bar not held: half of all missing sparks.")
    (also-called "spark tester" "check for spark" "fixed gap test")
    (basis published) (source tm-5-4240-501-14p) (place "p. 289"))
  (check (id spark-with-new-plug) (name "try a known good plug") (system ignition) (kind try)
    (ask "Does a known good plug of the right kind, gapped, put it right?")
    (results no-change now-good) (labels "no change" "fires or runs right with it")
    (means "Not the plug." "The old plug was the trouble; ask what fouled or killed it.")
    (anyway 0.06) (minutes 4) (tools "plug socket" "new plug of the listed kind" "wire gauge")
    (steps "Set the gap of the new plug; start the thread by hand."
      "Clear a flooded cylinder first, else the new plug is wet before it has fired."
      "Fit the lead; outdoors, start and run it as the customer does.")
    (off plug) (engine cranking) (cautions plug-lead-off aluminium-threads hot-parts
      carbon-monoxide stand-clear-tool no-spark-near-fuel)
    (mistakes "Trusting a new plug out of the box: new ones can be dead or wrongly gapped."
      "Calling the plug the cause when it was only fouled by something else.")
    (also-called "new plug" "swap the plug") (basis common-practice))
  (check (id spark-with-kill-lead-off) (name "spark with the stop wire off the coil")
    (system ignition) (kind try)
    (ask "Is there spark with the stop wire taken off at the coil itself?")
    (results no-change now-good) (labels "no change" "spark is there now")
    (means "The stop circuit is not what kills the spark."
      "Switch, wire, interlock or oil cut-out is grounding the coil: the coil is good.")
    (anyway 0.02) (minutes 12) (tools "screwdriver" "fixed-gap spark tester")
    (steps "Housing off; pull the stop wire off the tab on the coil, tape its end clear of metal."
      "Housing back on with the starter. Tester on the lead, clipped to bare metal; spin it."
      "Put the wire back on before the engine is run: that takes the housing off once more.")
    (off blower-housing) (engine cranking)
    (cautions kill-lead-isolate interlock-never-bypass no-spark-near-fuel ignition-voltage
      moving-parts spark-test-grounded)
    (mistakes "Unplugging it half way down the loom: the chafe may be on the coil side."
      "Starting the engine like this: nothing stops it but choke or fuel.")
    (also-called "kill wire off" "disconnect the kill lead" "ground wire test")
    (basis published) (source faa-h-8083-32)
    (place "opposed-engine troubleshooting, will not start: stop switch shorted"))
  (check (id spark-boot-shield-off) (name "spark with the metal boot shield off")
    (system ignition) (kind try)
    (ask "Is there spark with the metal shield slid off the plug boot?")
    (results no-change now-good) (labels "no change" "spark is there now")
    (means "The shield is not taking the spark."
      "Spark tracks through the boot to the grounded shield: boot, not coil.")
    (anyway 0.006) (minutes 4) (tools "fixed-gap spark tester" "insulated pliers")
    (steps "Slide or unclip the metal shield off the boot and bend nothing."
      "Repeat the spark test with the bare boot."
      "Look for a burnt pinhole or grey track in the rubber where the shield sat.")
    (off plug-boot) (needs shielded-boot) (engine cranking)
    (cautions no-spark-near-fuel ignition-voltage spark-test-grounded)
    (mistakes "Buying a coil before this is tried."
      "Leaving the shield off a machine that needs it against radio noise or damp.")
    (also-called "shield off" "metal plug cap") (basis common-practice))
  (check (id spark-hot) (name "spark at the moment it will not restart hot") (system ignition)
    (kind try)
    (ask "At the moment it will not restart hot, does the tester still jump?")
    (results good-hot gone-hot) (labels "still jumps hot" "gone or weak when hot")
    (means "Spark is there: look at fuel vapour, valves, compression when hot."
      "Ignition fails with heat: coil or module, condenser, a lead or a hot switch.")
    (anyway 0.012) (minutes 25) (tools "fixed-gap spark tester")
    (steps "Have the tester clipped on and ready before the engine is warmed."
      "Outdoors: run it under load until it dies by itself; do not stop it."
      "Change the lead over to the tester at once and spin it."
      "No spark: stop wire off the coil and once more, while it is still hot.")
    (off plug-boot) (engine hot)
    (cautions hot-parts no-spark-near-fuel ignition-voltage carbon-monoxide spark-test-grounded)
    (mistakes "Testing after five minutes of talk: the coil has cooled and passes."
      "Passing a coil on a cold test: it can be good cold and fail hot.")
    (also-called "hot spark test" "heat test") (basis common-practice))
  (check (id spark-while-dying) (name "in-line tester while it misses or dies")
    (system ignition) (kind look)
    (ask "With an in-line tester fitted: does the flash stop before the engine does?")
    (results spark-stays spark-goes) (labels "flashes to the end" "flash stops or misses first")
    (means "Spark goes on while the engine dies: fuel, air or the plug itself."
      "Flash goes first: coil, lead, stop circuit or a switch lets go.")
    (anyway 0.03) (minutes 8) (tools "in-line spark tester")
    (steps "Engine stopped: tester between plug and boot, both pushed home, shaded from the light."
      "Run until the fault shows and watch the flash, not the engine."
      "Wriggle the stop wire, press the seat and bar while it runs.")
    (engine running)
    (cautions ignition-voltage hot-parts moving-parts carbon-monoxide)
    (mistakes "A flash says current flows; it does not say that the plug fires under pressure."
      "Looking after the engine has slowed: every magneto stops then.")
    (also-called "inline tester" "does spark go as it dies") (basis common-practice))
  (check (id lead-in-the-dark) (name "look for stray sparks in the dark") (system ignition)
    (kind look)
    (ask "In the dark, do sparks creep from lead, boot or plug to metal?")
    (results none stray-sparks) (labels "none" "stray sparks seen or heard")
    (means "Insulation holds." "Spark leaks to metal before the plug: lead, boot or plug body.")
    (anyway 0.01) (minutes 4) (tools "water mist bottle")
    (steps "Run it outdoors at dusk; indoors only spin it, tester on the lead, light out."
      "Watch along lead and boot; listen for ticking."
      "A light mist of clean water on the lead brings out a weak place.")
    (engine running) (cautions ignition-voltage carbon-monoxide moving-parts no-spark-near-fuel)
    (mistakes "Holding the lead to feel for it." "Misting near a fuel leak or hot muffler.")
    (also-called "spark leak" "flashover") (basis common-practice))
  (check (id dry-out-test) (name "dry plug, lead and coil, try again") (system ignition) (kind try)
    (ask "Does it run right after plug top, boot, lead and switches are dried?")
    (results no-change runs-when-dry) (labels "no change" "right again when dry")
    (means "Not damp." "Water bridged the insulation; dirt or a crack lets it.")
    (anyway 0.01) (minutes 15) (tools "dry cloth" "low-pressure air")
    (steps "Lead off; wipe plug porcelain and the inside of the boot dry and clean."
      "Blow out boot, coil and switch plugs gently; let it stand in the warm."
      "Boot back on. Start it outdoors with nothing else changed.")
    (off plug-boot) (engine cranking) (cautions plug-lead-off compressed-air eye-protection
      carbon-monoxide stand-clear-tool)
    (mistakes "Drying with a flame or heat gun near fuel."
      "Filling the boot with any grease at hand: use only the kind meant for boots.")
    (also-called "dry it out" "wet ignition") (basis common-practice))
)
