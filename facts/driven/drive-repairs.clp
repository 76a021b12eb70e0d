; Repairs of gears, augers, tines, pumps, hydraulics and generators.
; Add a repair as a whole fact; check with: pullcord vet

(deffacts drive-repairs "repairs of gears, augers, fans, hydraulics"
  (repair (id fill-gearbox) (name "fill the gearbox and stop its leak") (minutes 30)
    (parts-cost 10) (parts "seal or gasket as found")
    (consumables "oil or grease as the maker says") (tools "spanners" "seal tool")
    (steps "Clear wound wire from the shaft; look at the seal lips."
      "Renew a leaking seal; fill to the level plug with the right kind, no more."
      "Run ten minutes and feel the case; look for a drip.")
    (cautions plug-lead-off hot-parts aluminium-threads carbon-monoxide moving-parts)
    (reuse "A seal once out is not used again.") (basis common-practice))
  (repair (id replace-drive-gear) (name "renew the worn gears or sprocket") (minutes 65)
    (parts-cost 45) (parts "gear set, worm, key or sprocket" "gasket" "oil or grease")
    (tools "socket set" "puller" "torque wrench")
    (steps "Price it first: a gear set may cost more than the machine is worth."
      "Lead off. Open it; renew gears in pairs; wash every chip out; look at the bearings."
      "Free play by hand, gasket new, right oil. Sprocket and chain go together.")
    (off plug-boot gear-head)
    (cautions plug-lead-off pinch-belts chain-edges aluminium-threads)
    (reuse "Gears that ran together are renewed together.") (basis common-practice))
  (repair (id replace-shear-pin) (name "fit shear pins") (minutes 10) (parts-cost 3)
    (parts "shear pins or bolts of the maker's number") (tools "hammer" "punch" "pliers")
    (steps "Engine off, lead off, wait until all stands. Look for what jammed it and take it out."
      "Line the holes up, drive the rest out, fit the maker's soft pin."
      "A common hard bolt breaks the gearbox instead: never fit one.") (off plug-boot)
    (cautions plug-lead-off auger-clearing) (reuse "Pins are not used again.")
    (basis common-practice))
  (repair (id clear-auger) (name "clear the auger") (minutes 20) (tools "clearing stick or bar")
    (steps "Engine off, levers out, lead off, wait. Clear with a stick, never with the hand."
      "Ice: thaw in the warm, no hammer. Look at pins, belt and gearbox afterwards."
      "Turn it round by hand with the stick once before starting.") (off plug-boot)
    (cautions plug-lead-off auger-clearing stand-clear-tool) (basis common-practice))
  (repair (id clear-tines) (name "clear the tines and look at the seals") (minutes 30)
    (tools "wire cutter" "knife" "gloves" "pliers")
    (steps
      "Lead off. Cut and pull the wire out, tine by tine; pull the inner tines off if need be."
      "Look at the shaft seals for cuts and at the gearcase oil."
      "Tine blades the right way round, pins in.") (off plug-boot)
    (cautions plug-lead-off blade-edges) (basis common-practice))
  (repair (id clear-housing) (name "clear deck, housing or chute") (minutes 25)
    (tools "scraper" "stick" "gloves")
    (steps "Stop, lead off, wait until the tool stands. Tip carburettor and plug up."
      "Scrape it out; clear intake, fan and outlet; look at knives, vanes and belt."
      "Turn it by hand once; put guards and chute back before it runs.") (off plug-boot)
    (cautions plug-lead-off blade-edges auger-clearing lifting-tipping eye-protection)
    (basis common-practice))
  (repair (id sharpen-knives) (name "turn or sharpen the chipper knives and set the gap")
    (minutes 60) (parts-cost 15) (parts "knife bolts" "knives if cracked")
    (tools "torque wrench" "feeler gauges" "grinder" "wood wedge" "gloves")
    (steps "Lead off. Wedge the disc. Knives off, clean the seats."
      "Turn or grind all alike; renew bolts where the maker says; torque by his figure."
      "Set the gap to the counter knife by feeler; turn by hand a whole round.") (off plug-boot)
    (cautions plug-lead-off blade-edges eye-protection damaged-blade pinch-belts)
    (reuse "Knives with cracks or deep nicks are scrapped, bolts as the maker says.")
    (basis common-practice))
  (repair (id fill-hydraulic-oil) (name "fill the hydraulic oil and stop air and leaks")
    (minutes 30) (parts-cost 18) (parts "hose clamp or seal as found" "hydraulic filter")
    (consumables "hydraulic oil of the maker's kind") (tools "spanners" "cardboard" "funnel")
    (steps "Engine off, lever worked to let the pressure out; look for leaks with cardboard only."
      "Tighten or renew the suction hose clamp; mend the leak."
      "Ram in, fill to the mark, run it through ten empty strokes, top up.")
    (cautions hydraulic-injection hot-parts used-oil carbon-monoxide moving-parts)
    (reuse "Oil like milk is changed, not topped up.") (basis common-practice))
  (repair (id mend-hydraulic-leak) (name "renew the hydraulic hose or seal") (minutes 60)
    (parts-cost 35)
    (parts "hose made up for the pressure on the plate" "fitting seal" "ram seal kit")
    (consumables "hydraulic oil of the maker's kind")
    (tools "spanners" "cardboard" "drain pan" "seal pick")
    (steps "Engine off, lead off, ram in; lever worked both ways until the pressure is gone."
      "Hose: one made up for the pressure on the plate, same length, clear of edges."
      "Fitting: clean faces, new seal, held by a second spanner; snug, then the maker's torque."
      "Ram: rod scratched is renewed; seals by a kit, else a hydraulics workshop."
      "Fill, ten empty strokes from the side, top up, look with card.")
    (cautions hydraulic-injection plug-lead-off eye-protection used-oil hot-parts carbon-monoxide
      moving-parts)
    (reuse "A chafed hose is not wrapped; a crushed seal is not used again.")
    (basis common-practice))
  (repair (id replace-coupling) (name "renew the pump coupling") (minutes 70) (parts-cost 20)
    (parts "spider and key" "coupling halves if cut")
    (tools "hex keys" "puller" "feeler gauges" "spanners")
    (steps "Lead off. Pump off its bracket; renew spider and key; look at both shafts."
      "Set the gap between the halves by the maker's figure, shafts in line, screws locked."
      "Bolts into the engine's aluminium snug and no more; turn by hand, then run empty.")
    (off plug-boot) (cautions plug-lead-off hydraulic-injection aluminium-threads carbon-monoxide
      moving-parts)
    (reuse "A spider is never used twice.") (basis common-practice))
)

(deffacts pump-repairs "repairs of pumps and washers"
  (repair (id prime-pump) (name "fill and prime the pump") (minutes 10)
    (steps "Hose under water, strainer hung clear; body filled to the brim; plug tight."
      "Start; open the outlet; water within two minutes, or stop and look for air."
      "Tell the owner: never started dry, and drained before frost.")
    (cautions pump-never-dry carbon-monoxide noise-hearing) (basis common-practice))
  (repair (id mend-suction-side) (name "make the suction side tight") (minutes 25) (parts-cost 12)
    (parts "gaskets" "clamps" "suction hose") (tools "spanner" "screwdriver")
    (steps "New gaskets in the couplings; clamps tight on whole hose; cut off cracked ends."
      "Hose with a stiff wall; strainer well under water and off the bottom."
      "Fill the pump and try each joint with water or grease as it runs.")
    (cautions pump-never-dry carbon-monoxide) (reuse "Hardened gaskets are not used again.")
    (basis common-practice))
  (repair (id clean-pump-strainer) (name "clean strainer and inlet") (minutes 10) (parts-cost 4)
    (parts "screen or seal if torn") (tools "brush")
    (steps "Engine off, pressure let out. Strainer or screen out, rinse, look for tears."
      "Rinse the hose through before it goes back; seal in place; soap hose shut or in soap."
      "Hang a pond strainer in a basket off the bottom.")
    (cautions high-pressure-injection pump-never-dry) (basis common-practice))
  (repair (id replace-pump-seal) (name "renew the pump's shaft seal") (minutes 75) (parts-cost 25)
    (parts "shaft seal, both faces" "pump gasket") (tools "spanners" "puller" "clean rag")
    (steps "Lead off, drain. Pump head and impeller off; old seal out without scoring the shaft."
      "New faces clean and dry or wetted with water, not touched by fingers; square."
      "Head on by the maker's torque, fill before the first start.") (off plug-boot pump-head)
    (cautions plug-lead-off pump-never-dry aluminium-threads)
    (reuse "Both seal faces are renewed together; the gasket is new.") (basis common-practice))
  (repair (id clear-or-replace-impeller) (name "clear or renew the impeller") (minutes 60)
    (parts-cost 30) (parts "impeller" "gasket" "volute if worn")
    (tools "spanners" "puller" "feeler gauges")
    (steps "Lead off, drain, head off. Stone out; look at vanes and volute."
      "Worn more than the maker's clearance: renew. Many impellers unscrew by engine rotation."
      "Turn by hand, new gasket, fill before the first start.") (off plug-boot pump-head)
    (cautions plug-lead-off pump-never-dry aluminium-threads)
    (reuse "Gasket new; seal looked at while it is open.") (basis common-practice))
  (repair (id better-water-supply) (name "give it enough water") (minutes 10)
    (tools "bucket" "watch")
    (steps "Short wide hose, tap full open, no small couplings, screen clean."
      "Measure: a third more than the plate asks; else a tank with its own feed."
      "Water through the gun before the engine is started.")
    (cautions pump-never-dry high-pressure-injection) (basis common-practice))
  (repair (id clean-or-replace-nozzle) (name "clean or renew the nozzle") (minutes 10)
    (parts-cost 8) (parts "nozzle of the size for this pump") (tools "nozzle needle")
    (steps "Engine off, gun squeezed, lock the gun. Nozzle off; needle through, rinse backwards."
      "Oval or burred: renew by the size chart of the machine."
      "Rinse the lance through before the nozzle goes on.")
    (cautions high-pressure-injection eye-protection) (reuse "A worn nozzle is scrapped.")
    (basis common-practice))
  (repair (id free-unloader) (name "free or renew the unloader") (minutes 40) (parts-cost 20)
    (parts "O-rings" "valve kit") (consumables "silicone grease") (tools "spanners" "pick")
    (steps "Engine off, pressure out, water off. Count the adjuster's turns before it comes out."
      "Clean off lime and grit, new O-rings, a little silicone grease."
      "Back to the same turns; gauge: never above the plate.")
    (cautions high-pressure-injection eye-protection aluminium-threads)
    (reuse "O-rings are new. A scored piston is renewed.") (basis common-practice))
  (repair (id rebuild-pump-valves) (name "renew valves and packings of the washer pump")
    (minutes 80) (parts-cost 45) (parts "valve set" "packings and seals" "pump oil")
    (tools "sockets" "pick" "torque wrench")
    (steps "Price it against a new pump first."
      "Pressure out, water off. Valves out one by one, same place back; seats clean."
      "Packings: head off evenly; grease; bolts crosswise by the maker's figure."
      "Water through it before the engine is started.") (off plug-boot)
    (cautions plug-lead-off high-pressure-injection aluminium-threads pump-never-dry)
    (reuse "Packings and O-rings are not used again.") (basis common-practice))
)

(deffacts generator-repairs "repairs of generators"
  (repair (id shed-load) (name "fit the load to the generator and show the owner") (minutes 15)
    (tools "watt meter")
    (steps "Everything out; start; one thing at a time, biggest motor first."
      "Add up running watts, count starting motors two to four times; write the sum down."
      "Reset the breaker once; if it trips with little in, an appliance is at fault.")
    (cautions generator-back-feed generator-shock carbon-monoxide generator-outdoors)
    (basis common-practice))
  (repair (id reset-breaker) (name "reset the breaker and find why it went") (minutes 10)
    (steps "All plugs out; press it home once; test the safety outlet by its button."
      "Plug in one thing after another; what trips it goes to an electrician."
      "A breaker that trips with nothing in, or will not hold: licensed electrician.")
    (cautions generator-shock generator-back-feed) (basis common-practice))
  (repair (id replace-brushes) (name "renew the generator brushes") (minutes 35) (parts-cost 15)
    (parts "brush set of the maker's number") (tools "insulated tools" "fine cloth")
    (steps "Engine off, lead off, nothing plugged in, wait as the book says; cover off."
      "Mark the wires; brushes in straight, free, springs sound; wipe the rings with dry cloth."
      "Rings grooved or burnt, or anything else amiss: licensed electrician.")
    (off plug-boot generator-end-cover) (cautions plug-lead-off generator-shock capacitor-charge)
    (reuse "Brushes only in pairs.") (basis common-practice))
  (repair (id restore-field) (name "have the field restored") (minutes 30)
    (steps "By a licensed electrician, or exactly as the maker's book for this set says."
      "Nothing plugged in; afterwards volts and hertz without and with load."
      "Tell the owner: unplug the load before stopping; run it every month or two.")
    (cautions generator-shock capacitor-charge generator-back-feed carbon-monoxide) (basis common-practice))
  (repair (id hand-over-generator) (name "hand the electrical end over") (minutes 15)
    (steps "Write down speed, hertz, volts of each outlet, state of brushes and breaker."
      "Say what windings and regulator may cost against another set."
      "Hand over to a licensed electrician; mark the set as not to be used."
      "When it comes back, prove it under rated load.")
    (cautions generator-shock generator-back-feed capacitor-charge) (basis common-practice))
)
