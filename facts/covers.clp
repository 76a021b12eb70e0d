; What has to come off to reach a part, and what to look at and do when it goes back. under: the
; cover that comes off first. run-without: may the engine run while it is off. Minutes are for a
; clean machine and hand tools. To add a line: new id, refit notes one per string. They stand in the
; order in which they come off when several are in the way; what is off goes back in the reverse of
; it, what lies under another first. So a new one goes where it is taken off, not at the end.
; Check with: pullcord vet

; first in the file, so that it is the last to go back
(deffacts cover-plug-boot "lead and boot of the plug"
  (cover (id plug-boot) (name "plug boot") (minutes-off 0.3) (minutes-on 0.3) (run-without no)
    (cautions plug-lead-off ignition-voltage hot-parts)
    (refit "Twist and pull on the boot, never on the lead."
      "The boot goes back last of all, after tools and hands are clear; feel it click.")
    (may-damage "The lead pulls out of an old boot.")
    (basis common-practice)))

(deffacts covers-air-and-fuel "air side, carburettor, fuel"
  (cover (id handheld-top-cover) (name "top cover of a handheld") (needs diaphragm)
    (minutes-off 2) (minutes-on 2) (run-without no) (tools "screwdriver or key")
    (cautions hot-parts chain-edges)
    (refit "Brush off before it comes off: what falls goes into the carburettor."
      "Plug lead in its groove, choke lever through its slot, seal strip in place."
      "Plastic threads: turn back until the screw drops into its old thread, then in.")
    (may-damage "Clips and screw posts of brittle plastic.")
    (basis common-practice))
  (cover (id filter-element) (name "air filter element") (minutes-off 1) (minutes-on 1)
    (run-without yes) (tools "screwdriver") (cautions moving-parts)
    (refit "Sealing lip all round, clean side to the engine, cover latched."
      "Foam: oiled and squeezed out if the maker wants it oiled; paper: always dry.")
    (may-damage "Dust falls into the throat if it is pulled out dirty side down.")
    (basis common-practice))
  (cover (id air-box) (name "air filter box") (minutes-off 3) (minutes-on 4) (run-without no)
    (tools "screwdriver" "8 mm and 10 mm spanner or socket")
    (cautions hot-parts fuel-vapour)
    (refit "Look at the gasket between box and carburettor: two vent holes in it must line up."
      "Push the breather tube on until it seats; a kinked one oils the filter."
      "Nuts by hand first, then snug and no more: the box is plastic on thin studs."
      "Wipe dust out before it goes back, throat covered meanwhile.")
    (may-damage "The breather tube splits where it hardened; the gasket tears.")
    (basis common-practice))
  (cover (id fuel-tank) (name "fuel tank") (minutes-off 12) (minutes-on 14) (run-without no)
    (tools "spanner set" "line clamp" "fuel can" "funnel")
    (cautions fuel-vapour refuel-cool fuel-storage-container waste-fuel)
    (refit "Drain it into a can first, outdoors, engine cold."
      "Rubber pads and sleeves back on every bolt, or the tank cracks."
      "Lines and clips home, no rub on fin, silencer or linkage; fill a little and look for weeps.")
    (may-damage "Tap spigots of plastic tanks snap; old grommets leak once moved.")
    (basis common-practice))
  (cover (id fuel-line) (name "fuel line off the carburettor") (minutes-off 2) (minutes-on 2)
    (run-without no) (tools "line clamp or pliers with taped jaws" "can" "rag")
    (cautions fuel-vapour no-spark-near-fuel hot-parts)
    (refit "Twist before pulling; cut a stuck end off rather than bend the spigot."
      "Line past the bead, clip behind it, no kink and clear of hot metal."
      "Tap open, look for drips, wipe dry before any spark.")
    (may-damage "Hardened line splits; brass or plastic spigots bend.")
    (basis common-practice))
  (cover (id carburettor) (name "carburettor") (under air-box)
    (minutes-off 10) (minutes-on 14) (run-without no)
    (tools "10 mm spanner" "pliers for clips" "line clamp" "fuel can" "camera")
    (cautions fuel-vapour hot-parts spring-tension-governor passages-no-wire emission-sealed-screws)
    (refit "Photograph the linkage first: which hole each governor spring and rod goes in."
      "If there is an O-ring behind it, it falls off unseen: find it before and after."
      "Gasket, spacer, gasket in the order they came off, holes lined up, faces clean and dry."
      "Hook rod and springs in before the carburettor goes home on its studs."
      "Draw the nuts up in turn, snug and no more: the flange is soft and warps."
      "Tap on, prime the bowl, wait a minute and look for drips before the first pull."
      "Work the throttle stop to stop by hand: the plate must shut and open fully.")
    (may-damage "Gaskets tear; a hard fuel line splits at its end; springs get stretched.")
    (basis common-practice))
  (cover (id bowl) (name "carburettor bowl") (needs float-bowl) (minutes-off 3) (minutes-on 4)
    (run-without no) (tools "10 mm or 12 mm ring spanner" "line clamp" "clean tray")
    (cautions fuel-vapour hot-parts no-spark-near-fuel)
    (refit "Look at the bowl ring in its groove: swollen or pinched, fit a new one."
      "Washer under the bowl bolt: it seals, and on some the bolt is the jet."
      "Dent and drain to the same side as before, clear of the float."
      "Bolt snug and no more; open the tap and look for a weep for a minute.")
    (may-damage "The bowl ring swells with fuel and will not go back until it has dried.")
    (basis common-practice))
  (cover (id intake-manifold) (name "intake pipe or spacer") (under carburettor)
    (minutes-off 6) (minutes-on 8) (run-without no)
    (tools "screwdriver or hex key" "straight edge") (cautions hot-parts aluminium-threads)
    (refit "Rag in the port while it is off."
      "New gasket, faces clean, spacer flat by a straight edge."
      "Heat spacer the same way round, pulse hole not covered."
      "Screws in turn, snug and no more into aluminium.")
    (may-damage "Screws round off; plastic spacers crack if tightened one side first.")
    (basis common-practice))
  (cover (id diaphragm-cover) (name "diaphragm carburettor cover") (under handheld-top-cover)
    (needs diaphragm) (minutes-off 12) (minutes-on 14) (run-without no)
    (tools "small screwdriver" "clean white tray") (cautions fuel-vapour gloves-solvent)
    (refit "Metering side: gasket to the body, diaphragm to the cover. Pump side: the reverse."
      "Button of the diaphragm hooked or resting on the lever as it was."
      "Lever spring seated on its dimple before the cover closes."
      "Screws crosswise, snug; then press the purge bulb and look for leaks.")
    (may-damage "An old diaphragm cracks or tears when peeled off; have a kit at hand.")
    (basis common-practice)))

(deffacts covers-ignition-and-starting "cooling shroud, starter, ignition, battery"
  (cover (id plug) (name "spark plug") (under plug-boot) (minutes-off 1) (minutes-on 1)
    (run-without no) (tools "plug socket" "torque wrench")
    (cautions plug-lead-off no-spark-near-fuel aluminium-threads hot-parts)
    (refit "Blow or brush round it before it comes out."
      "Thread by hand until it seats; if it binds, back out and look."
      "To the maker's torque; without one, a new washer takes half a turn past finger tight."
      "Gap checked with a wire gauge.")
    (may-damage "Threads in the head, if taken out hot or started crooked.")
    (basis common-practice))
  (cover (id recoil-starter) (name "recoil starter") (needs recoil) (minutes-off 4)
    (minutes-on 4) (run-without no) (tools "8 mm or 10 mm socket" "hex key")
    (cautions plug-lead-off recoil-spring moving-parts)
    (refit "Rope under tension stays in its housing: do not let the pulley go."
      "Pull the rope a hand's length so that the pawls catch the cup, then the screws."
      "Screws in turn; pull slowly twice and look that it centres and lets go.")
    (may-damage "The spring jumps out if the centre screw is undone.")
    (basis common-practice))
  (cover (id blower-housing) (name "blower housing (starter and shroud)") (minutes-off 8)
    (minutes-on 10) (run-without no) (tools "10 mm socket" "screwdriver" "brush")
    (cautions plug-lead-off moving-parts hot-parts)
    (refit "Clean fins and screen while it is open, from the engine side outwards."
      "Stop wire and plug lead in their clips, clear of fan and fins."
      "All screws back: it carries the cooling air and an engine cooks without it."
      "Turn it by rope slowly: nothing may touch the fan.")
    (may-damage "Tank or control brackets share its screws; mark which is the long one.")
    (basis common-practice))
  (cover (id coil) (name "ignition coil") (under blower-housing) (minutes-off 3)
    (minutes-on 5) (run-without no) (tools "screwdriver or 8 mm socket" "feeler gauge")
    (cautions ignition-voltage plug-lead-off)
    (refit "Legs and magnets bright and clean."
      "Gap with a non-magnetic gauge at both legs, magnet under the coil, then the screws."
      "Stop wire on its tab, lead clear of fan; turn once by hand and listen for a scrape.")
    (may-damage "Stop-wire tab breaks off; screws into aluminium bosses strip.")
    (basis common-practice))
  (cover (id flywheel) (name "flywheel") (under blower-housing) (minutes-off 12)
    (minutes-on 12) (run-without no)
    (tools "puller as the maker says" "strap or holder" "torque wrench" "socket")
    (cautions flywheel-puller damaged-flywheel soft-key-only eye-protection)
    (refit "Taper and bore clean and dry, no oil, no burr."
      "Key of the maker's kind, whole and flush in both slots."
      "Cup spring washer hollow side to the flywheel; nut to the maker's torque."
      "Magnets free of steel dust; set the coil gap afterwards and turn it round once by hand.")
    (may-damage "Fins, magnets and shaft end, if pried or struck.")
    (basis common-practice))
  (cover (id battery-cover) (name "battery cover") (needs battery) (minutes-off 2)
    (minutes-on 3) (run-without yes) (tools "screwdriver" "10 mm spanner")
    (cautions battery-short battery-acid-hydrogen)
    (refit "Earth lead last, terminals bright and tight, a smear of grease."
      "Boots over the posts, vent tube to the outside, strap tight.")
    (may-damage "Plastic catches.")
    (basis common-practice))
  (cover (id control-panel) (name "handle or dash control panel") (minutes-off 6)
    (minutes-on 8) (run-without no) (tools "screwdriver" "camera")
    (cautions interlock-never-bypass plug-lead-off battery-short)
    (refit "Photograph cables and plugs first."
      "Cables in their clips with the play they had; choke and throttle move full travel."
      "Try every stop and interlock before it goes back.")
    (may-damage "Cable ends and switch tabs of old plastic.")
    (basis common-practice))
  (cover (id generator-end-cover) (name "generator end cover") (needs generator-end)
    (minutes-off 5) (minutes-on 6) (run-without no) (tools "screwdriver" "8 mm socket" "meter")
    (cautions generator-shock capacitor-charge)
    (refit "Brushes straight in their holders and leads clear of the rotor."
      "Every earth strap and washer back where it was."
      "Cover right home before it runs: open terminals kill.")
    (may-damage "Brushes chip if the rotor moves while they are down.")
    (basis common-practice)))

(deffacts covers-engine "exhaust, valves, head, crankcase"
  (cover (id muffler) (name "silencer") (minutes-off 8) (minutes-on 10) (run-without no)
    (tools "socket set" "penetrating oil" "wire brush")
    (cautions hot-parts noise-hearing asbestos-like-dust carbon-monoxide)
    (refit "New gasket, port face scraped clean with the piston covering the port on a two-stroke."
      "Nuts up in turn; nip them again when it has been hot and cooled."
      "Guard and spark screen back: a bare silencer burns and starts fires.")
    (may-damage "Studs and screws rusted in aluminium shear off: soak them, work back and forth.")
    (basis common-practice))
  (cover (id rocker-cover) (name "rocker cover") (needs four-stroke) (minutes-off 4)
    (minutes-on 5) (run-without no) (tools "10 mm socket" "rag" "scraper of plastic")
    (cautions hot-parts plug-lead-off)
    (refit "Look at the gasket: whole, soft and dry, else a new one or a thin bead of sealer."
      "Breather passage and plate in the cover clear."
      "Screws in turn, snug and no more; run and look for oil.")
    (may-damage "Gasket tears; tin cover bends if pried in the middle.")
    (basis common-practice))
  (cover (id breather-cover) (name "breather or tappet chest cover") (needs four-stroke)
    (minutes-off 4) (minutes-on 5) (run-without no) (tools "screwdriver or socket")
    (cautions hot-parts)
    (refit "Reed or disc free, drain hole downwards and open."
      "New gasket, tube home at both ends.")
    (may-damage "The gasket tears.")
    (basis common-practice))
  (cover (id cylinder-head) (name "cylinder head") (under blower-housing) (minutes-off 25)
    (minutes-on 35) (run-without no)
    (tools "torque wrench" "socket set" "straight edge" "scraper of plastic")
    (cautions hot-parts plug-lead-off asbestos-like-dust aluminium-threads)
    (refit "Note which bolt came from where: lengths differ."
      "New gasket, both faces clean and flat by a straight edge; no sealer unless the maker says."
      "Push rods in their own places, cup on the tappet, piston at top of compression."
      "Bolts crosswise in three steps to the maker's torque, then the valve clearance."
      "Check the bolts again cold where the maker asks it.")
    (may-damage "The gasket is scrap; a head pried at the fins cracks.")
    (basis common-practice))
  (cover (id crankcase-cover) (name "crankcase cover (sump)") (needs four-stroke)
    (minutes-off 45) (minutes-on 60) (run-without no)
    (tools "socket set" "torque wrench" "soft hammer" "drain pan" "seal sleeve or tape")
    (cautions used-oil plug-lead-off lifting-tipping)
    (refit "Shaft end free of rust and burr before it is drawn over the seal."
      "Governor spool and arm engaged, cam marks in line, dowels in."
      "New gasket of the same thickness: it sets the end play."
      "Bolts crosswise in steps; shaft still turns free; oil in before any pull.")
    (may-damage "Seal lip, if drawn over a rough shaft; the gasket is scrap.")
    (basis common-practice)))

(deffacts covers-driven "guards and driven parts"
  (cover (id belt-guard) (name "belt guard") (needs belt-drive) (minutes-off 3) (minutes-on 4)
    (run-without no) (tools "10 mm and 13 mm socket")
    (cautions plug-lead-off pinch-belts moving-parts)
    (refit "Belt keepers back with their gap to the belt, drive tried by hand."
      "Guard clear of pulley and belt all round.")
    (may-damage "Captive nuts spin in plastic.")
    (basis common-practice))
  (cover (id blade) (name "mower blade") (needs blade-on-crankshaft) (minutes-off 5)
    (minutes-on 6) (run-without no)
    (tools "socket and long bar" "block of wood" "torque wrench" "gloves")
    (cautions plug-lead-off blade-edges lifting-tipping damaged-blade)
    (refit "Lift or wings to the deck, grass side to the ground."
      "Adapter and its key or pegs whole; washer as it was."
      "Bolt to the maker's torque, new if the maker says so."
      "Balance it, turn by hand and look that both tips pass at one height.")
    (may-damage "Bolt head; adapter wings already cracked show now.")
    (basis common-practice))
  (cover (id cutting-deck) (name "cutting deck") (needs belt-drive) (minutes-off 25)
    (minutes-on 30) (run-without yes) (tools "socket set" "pins and clips tray" "blocks")
    (cautions plug-lead-off pinch-belts blade-edges lifting-tipping)
    (refit "Draw the belt path on paper before it comes off."
      "Pins and clips all back, deck level side to side, belt inside every keeper."
      "Blade clutch off, start it, then try it in and out: blades must stop as the maker says.")
    (may-damage "Spring clips fly and get lost.")
    (basis common-practice))
  (cover (id clutch-cover) (name "clutch cover") (needs centrifugal-clutch) (minutes-off 3)
    (minutes-on 4) (run-without no) (tools "scrench or socket" "brush")
    (cautions plug-lead-off chain-edges asbestos-like-dust hot-parts)
    (refit "Chain brake off before the cover comes off a saw, and tried after."
      "Brake band sits round the drum; tensioner peg in its hole.")
    (may-damage "Brake band bends if the cover is forced on with the brake set.")
    (basis common-practice))
  (cover (id chain-and-bar) (name "chain and guide bar") (under clutch-cover)
    (needs cutting-chain) (minutes-off 3) (minutes-on 5) (run-without no)
    (tools "scrench" "gloves" "groove cleaner")
    (cautions plug-lead-off chain-edges stand-clear-tool)
    (refit "Cutters on top point to the nose; drive links in the sprocket."
      "Oil hole and groove clean; bar turned over to wear even."
      "Tension with the nose held up; the chain pulls round by hand.")
    (may-damage "Drive link burrs, if the chain was thrown.")
    (basis common-practice))
  (cover (id gear-head) (name "gear head or gearbox cover") (needs gearbox) (minutes-off 12)
    (minutes-on 15) (run-without no) (tools "hex keys" "circlip pliers" "grease")
    (cautions plug-lead-off blade-edges eye-protection)
    (refit "Shims and washers in the order they came off."
      "Grease or oil of the maker's kind and amount: an overfilled head bursts its seal.")
    (may-damage "Seals, and circlips that fly.")
    (basis common-practice))
  (cover (id pump-head) (name "pump head or casing") (minutes-off 15) (minutes-on 18)
    (run-without no) (tools "hex keys" "socket set" "silicone grease" "torque wrench")
    (cautions high-pressure-injection pump-never-dry plug-lead-off)
    (refit "Pressure off first: water shut, gun open or drain plug out."
      "O-rings and seals wetted with water or the maker's grease, never mineral oil."
      "Valves each in its own hole, the same way round; bolts crosswise in steps."
      "Fill with water and vent before the engine is started.")
    (may-damage "Seals tear on a dry shaft; old casings crack at the bolts.")
    (basis common-practice)))
