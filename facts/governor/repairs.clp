; Repairs of governor, throttle and stop switch.
; Add a repair as a whole fact; check with: pullcord vet

(deffacts governor-repairs "governor repairs"
  (repair (id refit-governor-spring) (name "put the governor spring in its own hole") (minutes 10)
    (tools "long-nose pliers" "tachometer" "the maker's drawing")
    (steps "Find the right hole in the maker's drawing; a worn hole is a second-best guide."
      "Hook the spring without stretching it; work the linkage by hand to both stops."
      "Start with a hand on the switch; read the top speed; mark the hole with a dab of paint.")
    (cautions spring-tension-governor overspeed moving-parts carbon-monoxide)
    (reuse "The spring goes back if its coils lie closed and its hooks are not thin.")
    (basis common-practice))
  (repair (id replace-governor-spring) (name "fit a governor spring") (minutes 15) (parts-cost 6)
    (parts "governor spring of the maker's number for this engine")
    (tools "long-nose pliers" "tachometer")
    (steps "Note both holes; unhook the old spring."
      "Fit the new one; renew a post or bush that is worn through."
      "Top speed by tachometer, load on and off: set to the maker's figure only.")
    (cautions spring-tension-governor overspeed moving-parts carbon-monoxide)
    (reuse "A stretched spring is never bent back or shortened.") (basis common-practice))
  (repair (id free-governor-linkage) (name "free or straighten the governor linkage") (minutes 20)
    (parts-cost 5) (parts "rod, clip or bush as found") (consumables "brake cleaner")
    (tools "long-nose pliers" "screwdriver" "tachometer")
    (steps "Clean it; find where it catches by unhooking one end at a time."
      "Straighten a rod only to the drawing; renew a worn one; no oil where dust sticks."
      "Throttle must fall back by itself from any place. Check speed by tachometer.")
    (cautions spring-tension-governor overspeed gloves-solvent moving-parts carbon-monoxide)
    (reuse "Rods go back if straight and not half worn through.") (basis common-practice))
  (repair (id set-governor-arm) (name "set the governor arm") (minutes 15)
    (tools "spanner" "screwdriver" "tachometer")
    (steps "Stopped: slacken the clamp, hold the throttle wide open by the linkage."
      "Turn the shaft to its end the way the opening throttle turns it; tighten the clamp."
      "Start with a hand on the switch and the throttle held; let go slowly; read the speed.")
    (cautions spring-tension-governor overspeed moving-parts aluminium-threads carbon-monoxide)
    (reuse "Renew the clamp nut if it will not hold.") (basis common-practice))
  (repair (id replace-governor-gear) (name "renew the governor inside the crankcase") (minutes 150)
    (parts-cost 45)
    (parts "governor gear and cup kit" "crankcase gasket" "shaft seal" "engine oil")
    (consumables "gasket remover") (tools "socket set" "torque wrench" "seal tool")
    (steps "Drain the oil; engine off the machine if need be; shaft end clean of rust and burrs."
      "Crankcase cover off; renew gear, weights and cup; get every piece out of the sump."
      "Timing marks together; new gasket and seal; bolts in steps to the maker's figure."
      "Set the arm, fill with oil, first start with the throttle held by hand.")
    (off crankcase-cover)
    (cautions used-oil overspeed aluminium-threads hot-parts asbestos-like-dust carbon-monoxide)
    (reuse "Gasket, seal and snap rings are not used again.") (basis common-practice))
  (repair (id clean-air-vane) (name "clean and free the air vane") (minutes 25) (parts-cost 4)
    (parts "air vane, if broken") (tools "screwdriver" "soft brush" "nut driver")
    (steps "Shroud off, brush out chaff from vane, fan and fins together."
      "Vane must swing of its own weight; straighten a bent shroud that rubs it."
      "Hook up spring and link as they were; top speed by tachometer.") (off blower-housing)
    (cautions plug-lead-off overspeed eye-protection carbon-monoxide)
    (reuse "A plastic vane with a worn pivot is renewed.") (basis common-practice))
  (repair (id fit-throttle-cable) (name "set or renew the throttle cable") (minutes 25)
    (parts-cost 15) (parts "throttle cable with ends as found")
    (tools "pliers" "screwdriver" "tachometer")
    (steps
      "Lever to fast: pull the sheath until the throttle (and choke) stands at its stop; clamp it."
      "Lever to slow and to stop: see that the plate and the stop tab reach theirs."
      "Frayed or kinked: renew it whole; no sharp bends, clear of the silencer.")
    (cautions moving-parts overspeed hot-parts)
    (reuse "A cable with one broken strand is renewed.") (basis common-practice))
  (repair (id free-throttle) (name "hook up and free the throttle") (minutes 20) (parts-cost 5)
    (parts "link, clip or trigger part as found") (tools "pliers" "small screwdriver")
    (steps "Engine stopped, filter off: follow the movement from lever or trigger to plate."
      "Hook up what is off; free the lock-out; centre the plate and secure its screw."
      "See the plate level with the throat at full throttle; let it snap shut ten times.")
    (off air-box) (cautions overspeed moving-parts)
    (reuse "A plate screw that came loose goes back with thread lock only, or a new one.")
    (basis common-practice))
  (repair (id set-idle-speed) (name "set the idle speed") (minutes 10)
    (tools "screwdriver" "tachometer")
    (steps "Clean filter, fresh fuel, choke open, warm five minutes."
      "Set the stop screw to the maker's idle speed; the tool must stand still."
      "If it will not hold, look for air leak, idle jet and compression: do not chase it by screw.")
    (cautions moving-parts chain-edges carbon-monoxide emission-sealed-screws hot-parts)
    (basis common-practice))
  (repair (id set-top-speed) (name "set the governed speed") (minutes 15)
    (tools "tachometer or frequency meter" "bending tool or screwdriver")
    (steps "Warm, load off. Set by screw or tab to the maker's figure in small steps."
      "Never above the figure: blades, fans, discs and generators are built for it."
      "Seal the screw with paint; load it and see that it holds.")
    (cautions overspeed moving-parts carbon-monoxide noise-hearing spring-tension-governor)
    (basis common-practice))
  (repair (id repair-stop-circuit) (name "mend the stop circuit") (minutes 25) (parts-cost 10)
    (parts "stop switch or wire end as found") (tools "multimeter" "crimping pliers" "file")
    (steps
      "Follow the wire from coil to switch to ground; mend the break, bright metal at the ground."
      "Route it clear of flywheel and silencer."
      "Meter: path at stop, none at run. Stop it five times by the switch.")
    (cautions kill-lead-isolate ignition-voltage plug-lead-off carbon-monoxide)
    (reuse "A switch with a burnt or loose contact is renewed.") (basis common-practice))
)
