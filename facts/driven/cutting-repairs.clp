; Repairs of blades, belts, clutches, chains and mountings.
; Add a repair as a whole fact; check with: pullcord vet

(deffacts cutting-repairs "repairs of blades, belts, clutches, chain, mountings"
  (repair (id tighten-blade) (name "seat and tighten the blade") (minutes 20) (parts-cost 12)
    (parts "blade bolt and washer" "adapter or key if worn")
    (tools "torque wrench" "wood block" "gloves")
    (steps "Lead off and tied back. Blade off; look at adapter lugs, crankshaft key and bolt."
      "Renew what is worn or sheared; look at the flywheel key if it was struck."
      "Domed washer the right way; new bolt to the maker's torque, blade blocked with wood.")
    (off plug-boot blade) (cautions plug-lead-off blade-edges lifting-tipping blade-brake)
    (reuse "A stretched bolt and a worn adapter are not used again.") (basis common-practice))
  (repair (id replace-blade) (name "renew the blade") (minutes 20) (parts-cost 22)
    (parts "blade of the maker's number" "bolt and washer")
    (tools "torque wrench" "wood block" "gloves")
    (steps "Lead off. Blade off, look at adapter, shaft end and flywheel key."
      "New blade, lift side up, torque by the maker's figure."
      "Turn by hand: tips at one height. Run from behind the handle.") (off plug-boot blade)
    (cautions plug-lead-off blade-edges damaged-blade lifting-tipping blade-brake stand-clear-tool
      carbon-monoxide)
    (reuse "A bent or cracked blade is scrapped, never straightened.") (basis common-practice))
  (repair (id replace-bent-crankshaft) (name "renew the bent crankshaft, or write the engine off")
    (minutes 300) (parts-cost 120)
    (parts "crankshaft" "gaskets" "seals" "flywheel key" "blade and bolt")
    (tools "socket set" "flywheel puller" "torque wrench" "feeler gauges")
    (steps "Price it against another engine first; say so to the owner before work."
      "Engine off and open; new crankshaft, seals and key; look at rod, bearings and sump."
      "Timing marks together; end play by the maker's figure; bolts in steps."
      "New blade. First start with nobody in line with the deck.")
    (off plug-boot blade blower-housing flywheel crankcase-cover)
    (cautions plug-lead-off bent-crankshaft flywheel-puller blade-edges used-oil aluminium-threads
      damaged-blade stand-clear-tool carbon-monoxide)
    (reuse "A bent crankshaft is never straightened. Seals, key and gaskets are new.")
    (basis common-practice))
  (repair (id sharpen-blade) (name "sharpen and balance the blade") (minutes 25)
    (tools "file or grinder" "balancing cone" "torque wrench" "gloves")
    (steps "Lead off. Blade off; scrap it if bent, cracked or worn through at the lift."
      "Keep the angle; take the same off both ends; leave the edge as thick as a coin."
      "Balance on the cone; heavy end gets the file, at its end and not on the lift."
      "Lift side up, torque by the maker's figure.") (off plug-boot blade)
    (cautions plug-lead-off blade-edges eye-protection lifting-tipping damaged-blade)
    (reuse "The bolt goes back only if the maker allows it.") (basis common-practice))
  (repair (id sharpen-cutter) (name "sharpen, set or renew the cutting tool") (minutes 35)
    (parts-cost 12) (parts "line, knife or disc as found")
    (tools "file" "grinder" "feeler gauges" "torque wrench" "gloves")
    (steps "Lead off. Clean off sap; sharpen knives by their angle; set the gap between them."
      "Cutting discs are renewed, not dressed: within their date and rated speed."
      "Line head: right line, right length; guard and its cutter in place."
      "Tighten by the maker's figure; turn by hand before starting.") (off plug-boot)
    (cautions plug-lead-off blade-edges eye-protection damaged-blade overspeed)
    (reuse "Cracked discs and blades are broken up so that nobody fits them.")
    (basis common-practice))
  (repair (id balance-tool) (name "balance or renew the tool") (minutes 40) (parts-cost 25)
    (parts "disc, rotor, fan or head if damaged") (tools "balancing cone" "file" "torque wrench")
    (steps "Lead off. Clean it; look for cracks and missing pieces: any of these, renew."
      "Balance it, or renew it; seat and shaft clean, maker's torque."
      "Run it up slowly from the side, hand on the switch.") (off plug-boot)
    (cautions plug-lead-off blade-edges damaged-blade stand-clear-tool carbon-monoxide)
    (reuse "A tool that has lost a piece is not balanced but scrapped.") (basis common-practice))
  (repair (id tighten-mountings) (name "tighten or renew the mountings") (minutes 30)
    (parts-cost 8) (parts "bolts, rubbers, lock washers")
    (tools "torque wrench" "spanners" "tap for cleaning threads")
    (steps
      "Each bolt out, thread clean, look for stretch; renew doubtful ones and perished rubbers."
      "Cracked frame: out of use until a welder has mended it, tank and petrol away from it first."
      "Bolts into aluminium snug and no more, by the maker's figure; belt line true.")
    (cautions plug-lead-off aluminium-threads hot-parts pinch-belts no-spark-near-fuel)
    (reuse "Stretched or rusted bolts and flattened lock washers are not used again.")
    (basis common-practice))
  (repair (id replace-belt) (name "fit and set the drive belt") (minutes 40) (parts-cost 20)
    (parts "belt of the maker's number" "idler or spring as found")
    (tools "spanners" "pulley tool")
    (steps "Lead off, guard off; note the run and the guides. Turn idlers: rough ones are renewed."
      "Clean oil and rust from the pulleys; fit the belt by hand, never by a screwdriver edge."
      "Set the cable: tight when engaged, free when let go, guides 3 mm off the belt."
      "Blade brake, if any, must stop the blade as the maker says.") (off plug-boot belt-guard)
    (cautions plug-lead-off pinch-belts moving-parts blade-edges)
    (reuse "A belt that has come off or turned over is not used again.") (basis common-practice))
  (repair (id service-clutch) (name "renew springs or shoes of the clutch") (minutes 35)
    (parts-cost 22) (parts "springs or shoes in sets" "drum if blue or grooved")
    (consumables "brake cleaner") (tools "clutch tool" "piston stop or rope" "spanner")
    (steps "Lead off; stop the piston with rope through the plug hole; mind left-hand threads."
      "Free and clean; springs always all together; oil found means: mend the seal first."
      "Grease the drum bearing sparingly; washers in their order; maker's torque."
      "Set the idle so that the tool stands still.") (off plug-boot plug clutch-cover)
    (cautions plug-lead-off chain-edges asbestos-like-dust gloves-solvent)
    (reuse "Shoes and springs only in sets; an oily lining is not washed and used again.")
    (basis common-practice))
  (repair (id replace-drum-bearing) (name "renew the clutch drum bearing") (minutes 30)
    (parts-cost 12) (parts "needle bearing" "drum if its bore is worn")
    (consumables "bearing grease") (tools "clutch tool" "circlip pliers")
    (steps "Lead off; drum off; clean the shaft and look at its surface: pitted means more work."
      "New bearing, greased; drum must spin and not rock."
      "Washers in their order; chain tension set afterwards.") (off plug-boot clutch-cover)
    (cautions plug-lead-off chain-edges)
    (reuse "A bearing that has shed needles is never cleaned and used again.")
    (basis common-practice))
  (repair (id release-chain-brake) (name "release and clean the chain brake") (minutes 15)
    (tools "brush" "screwdriver")
    (steps "Lead off. Guard back; if it will not, cover off and ease the spring with care."
      "Clean out dust, look at the band for cracks and blueing, a trace of grease on the pivot."
      "Try it: guard forward must stop the chain at once; then look at the clutch for heat.")
    (off plug-boot clutch-cover) (cautions plug-lead-off chain-edges asbestos-like-dust)
    (reuse "A cracked or thin band is renewed.") (basis common-practice))
  (repair (id sharpen-chain) (name "sharpen the chain or renew it") (minutes 25) (parts-cost 20)
    (parts "chain, if the teeth are filed out or damaged")
    (tools "file of the chain's size" "guide" "depth gauge tool" "vice" "gloves")
    (steps "Lead off. Find the shortest tooth; file all to it at the marked angle."
      "Depth gauges by the tool, every third filing; deburr and turn the bar."
      "Tension cold; oil; look at the sprocket.") (off plug-boot)
    (cautions plug-lead-off chain-edges eye-protection)
    (reuse "Chain with cracks, loose rivets or teeth shorter than the mark is scrapped.")
    (basis common-practice))
  (repair (id set-and-oil-chain) (name "slacken, oil and dress chain and bar") (minutes 20)
    (parts-cost 5) (consumables "bar oil")
    (tools "bar file" "groove scraper" "bar spanner" "gloves")
    (steps "Lead off. Bar nose up, set it so that it pulls round by hand and does not hang."
      "Dress the bar rails, clean the groove, turn the bar over, fill with bar oil."
      "Cold tension again after the first cuts; slacken it when work ends.")
    (off plug-boot chain-and-bar) (cautions plug-lead-off chain-edges)
    (reuse "A blued or spread bar is renewed.") (basis common-practice))
  (repair (id clear-bar-oil) (name "clear the bar oil way or renew its pump") (minutes 40)
    (parts-cost 15) (parts "pickup screen" "pump or worm as found")
    (consumables "paraffin for flushing" "bar oil")
    (tools "groove scraper" "pick" "circlip pliers")
    (steps "Bar off: clear hole, slot and groove. Tank out: rinse, clean the screen."
      "Still none: drum off, look at the worm and hose; renew the pump."
      "Use bar oil, thinner grade in frost; never old engine oil.") (off plug-boot chain-and-bar)
    (cautions plug-lead-off chain-edges waste-fuel gloves-solvent)
    (reuse "A worm with one stripped tooth is renewed.") (basis common-practice))
)

(deffacts deck-repairs "repairs of the deck"
  (repair (id seal-bar-oil-tank) (name "seal the bar oil tank") (minutes 25) (parts-cost 6)
    (parts "cap or its ring" "oil hose, if split")
    (tools "screwdriver" "pliers" "rag")
    (steps "Lead off. Tank emptied into a can; cap ring and seat wiped clean, ring looked at."
      "Ring hard or flat, cap thread worn: new. Hose split where it enters the tank: new."
      "A cracked case is renewed, not glued. Fill with bar oil, stand it on card.")
    (cautions plug-lead-off chain-edges used-oil)
    (reuse "A hard ring is not used again.") (basis common-practice))
  (repair (id replace-spindle-bearings) (name "renew the spindle bearings") (minutes 60)
    (parts-cost 25) (parts "bearings, or the spindle housing complete" "blade bolt")
    (tools "puller or press" "torque wrench" "gloves" "wood block")
    (steps "Key out, lead off; deck off and upside down on blocks; draw the belt run first."
      "Blade off, pulley off, spindle out; look at shaft and housing bore before bearings are bought."
      "Bearings in square by the outer ring; spacer between them; shields whole."
      "Blade lift side up, bolt to the maker's torque; turn each spindle by hand: free and quiet.")
    (off cutting-deck)
    (cautions plug-lead-off blade-edges pinch-belts lifting-tipping eye-protection)
    (reuse "A bearing that was driven out is not used again; a bored-out housing neither.")
    (basis common-practice)))
