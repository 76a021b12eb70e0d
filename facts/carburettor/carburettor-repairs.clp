; Repairs of carburettor, choke, primer and solenoid.
; To add a line: copy a fact, give it a new id, keep results weaker before stronger.
; check with: pullcord vet

(deffacts carburettor-metering-repairs "cleaning and metering"
  (repair (id clean-main-jet) (name "clean main jet and bowl") (minutes 40) (parts-cost 4)
    (parts "bowl gasket")
    (consumables "carburettor cleaner" "water-based degreaser")
    (tools "jet driver" "ultrasonic bath" "air gun with guard" "lamp")
    (steps
      "Fuel off, clean outside, bowl off; photograph links and gaskets first."
      "Jet with a slot: out with a driver that fits. No slot: it stays in and is cleaned there."
      "Rubber, float and diaphragms out before bath or cleaner."
      "About 15 minutes in hot water with degreaser in the ultrasonic bath, no petrol in it."
      "Rinse, then compressed air through every passage from both ends."
      "Prove each passage: cleaner squirted in must come out at the far end."
      "Hold the jet to the light. No wire, no drill."
      "Clean bowl, fresh fuel; find where the dirt came from.") (off carburettor bowl)
    (cautions passages-no-wire fuel-vapour no-spark-near-fuel waste-fuel eye-protection
      gloves-solvent compressed-air ultrasonic-no-fuel aluminium-threads)
    (reuse "Bowl gasket whole and not leaking: may go back. Torn, swollen or cut: new.")
    (basis common-practice) (source tm-5-4210-230-14p-1)
    (place "page 743: no drills or wires, keep solvent off rubber"))
  (repair (id clean-idle-passages) (name "clean idle passages") (minutes 50) (parts-cost 8)
    (parts "carburettor gasket set")
    (consumables "carburettor cleaner" "water-based degreaser")
    (tools "ultrasonic bath" "air gun with guard" "lamp")
    (steps
      "Carburettor off and stripped of rubber; count screw turns in before taking them out."
      "Pilot jet out if it is meant to come out; sealed screws stay."
      "About 15 minutes in hot water with degreaser in the ultrasonic bath, no petrol in it."
      "Cleaner in at the jet seat until every hole in the bore spits."
      "Compressed air the same way, closing holes by finger in turn."
      "All holes proved: back together with whole gaskets, nuts in turn.") (off carburettor bowl)
    (cautions passages-no-wire fuel-vapour no-spark-near-fuel waste-fuel eye-protection
      gloves-solvent compressed-air ultrasonic-no-fuel emission-sealed-screws
      aluminium-threads)
    (reuse "Bowl gasket whole and not leaking: may go back. Torn, swollen or cut: new.")
    (basis common-practice))
  (repair (id clean-emulsion-tube) (name "clean emulsion tube and air bleeds") (minutes 45)
    (parts-cost 4)
    (parts "bowl gasket")
    (consumables "carburettor cleaner")
    (tools "wooden stick" "jet driver" "ultrasonic bath" "air gun with guard")
    (steps
      "Jet out, tap the tube down with a wooden stick; soak if it sticks."
      "About 15 minutes in hot water with degreaser in the ultrasonic bath, no petrol in it."
      "Open every cross hole with cleaner and air, no drill."
      "Bleeds in the mouth: cleaner in, it must come out in the post."
      "Tube back the right way up; jet snug.") (off carburettor bowl)
    (cautions passages-no-wire fuel-vapour no-spark-near-fuel waste-fuel eye-protection
      gloves-solvent compressed-air ultrasonic-no-fuel)
    (reuse "Bowl gasket whole and not leaking: may go back. Torn, swollen or cut: new.")
    (basis common-practice))
  (repair (id clean-suction-carburettor) (name "clean a suction-lift carburettor") (minutes 50)
    (parts-cost 8)
    (parts "diaphragm and gasket")
    (consumables "carburettor cleaner") (tools "ultrasonic bath" "air gun with guard")
    (steps
      "Carburettor off the tank; tank emptied and rinsed."
      "Needle out counting turns, diaphragm off, pickup pipe and its screen cleaned."
      "About 15 minutes in hot water with degreaser in the ultrasonic bath, no petrol in it."
      "The two small holes in the throat and the metering holes: cleaner through, no wire."
      "New diaphragm and tank gasket; tank top must be flat.") (off carburettor)
    (cautions passages-no-wire fuel-vapour no-spark-near-fuel waste-fuel eye-protection
      gloves-solvent compressed-air ultrasonic-no-fuel)
    (reuse "Diaphragm wrinkled or stiff: new. Tank gasket: always new.")
    (basis common-practice))
  (repair (id fit-right-jet) (name "fit the listed main jet") (minutes 30) (parts-cost 6)
    (parts "main jet" "bowl gasket") (tools "jet driver")
    (steps
      "Number from the parts list of this engine."
      "Jet out, new one in, snug in brass, no more."
      "A drilled jet is scrap; a post hit by the drill: new carburettor.") (off bowl)
    (cautions fuel-vapour no-spark-near-fuel waste-fuel)
    (reuse "Bowl gasket whole and not leaking: may go back. Torn, swollen or cut: new.")
    (basis common-practice))
  (repair (id set-mixture-screws) (name "set the mixture screws") (minutes 20)
    (tools "screw tool" "tachometer")
    (steps
      "First: clean filter, fresh fuel, no air leak, clear muffler. Only then the screws."
      "Sealed or capped: only inside the stops, by the maker."
      "Both to the book turns, warm up, work off the tool or hold it clear."
      "Low: best idle, then richer an eighth until it picks up cleanly."
      "High: never leaner than the book; check with a tachometer at full throttle."
      "Idle stop last: tool stands still.")
    (cautions emission-sealed-screws two-stroke-lean-seizure overspeed moving-parts
      chain-edges stand-clear-tool carbon-monoxide noise-hearing hot-parts)
    (basis common-practice) (source cfr-40-1068)
    (place "1068.101(b)(1): emission settings and seals are not to be defeated"))
  (repair (id renew-mixture-needle) (name "renew the mixture needle") (minutes 30) (parts-cost 8)
    (parts "mixture needle with ring") (tools "small driver" "tachometer")
    (steps
      "Count turns in, old needle out, seat looked at with a glass."
      "New needle with spring, washer and ring; seat lightly and back to the count."
      "Seat spread or a point broken in it: new carburettor."
      "Set as for mixture screws.")
    (cautions emission-sealed-screws two-stroke-lean-seizure fuel-vapour no-spark-near-fuel)
    (reuse "A grooved needle is scrap.")
    (basis common-practice)))

(deffacts carburettor-throttle-repairs "throttle and icing"
  (repair (id renew-throttle-shaft) (name "renew throttle shaft, bush or carburettor")
    (minutes 60) (parts-cost 25)
    (parts "shaft, bushes or carburettor")
    (consumables "thread lock") (tools "small driver" "file" "lamp")
    (steps
      "Carburettor off; file the staked screw end, plate out and marked."
      "Shaft and bush or seal new; body worn: new carburettor."
      "Plate centred shut, screw locked and staked."
      "Check for wear dust in the engine: look at filter and throat.") (off carburettor)
    (cautions fuel-vapour no-spark-near-fuel aluminium-threads eye-protection)
    (reuse "Plate may go back; its screw not.")
    (basis common-practice))
  (repair (id free-throttle-plate) (name "free throttle plate and link") (minutes 25)
    (consumables "carburettor cleaner") (tools "small pliers" "lamp")
    (steps
      "Find what holds it: link, spring, cable, gum, bent lever."
      "Clean shaft ends with cleaner; a drop of light oil outside only."
      "Bent link straightened to pattern or new; spring in the hole it came from."
      "Cable with full travel both ways; never start before it shuts by itself.") (off air-box)
    (cautions overspeed spring-tension-governor moving-parts)
    (basis common-practice))
  (repair (id secure-throttle-plate) (name "centre and lock the throttle plate") (minutes 40)
    (parts-cost 2)
    (parts "throttle plate screw")
    (consumables "thread lock") (tools "small driver" "small punch")
    (steps
      "Carburettor off, plate loosened, shut so that it centres itself."
      "New screw with thread lock, end staked; it must not come back."
      "Old screw missing: look for it in port and cylinder before starting.") (off carburettor)
    (cautions fuel-vapour no-spark-near-fuel overspeed)
    (reuse "A staked screw is not used twice.")
    (basis common-practice))
  (repair (id stop-icing) (name "stop carburettor icing") (minutes 15)
    (consumables "fresh fuel")
    (steps
      "Let it melt; nothing is broken."
      "Fit the winter cover or turn the intake to warm air if the maker gives one."
      "Fresh fuel, right grade for the season; work it harder or idle less.")
    (cautions carbon-monoxide hot-parts)
    (basis common-practice)))

(deffacts carburettor-diaphragm-repairs "diaphragm carburettors"
  (repair (id fit-diaphragm-kit) (name "fit a diaphragm and gasket kit") (minutes 60)
    (parts-cost 14)
    (parts "diaphragm and gasket kit")
    (consumables "carburettor cleaner") (tools "small driver" "pump tester" "lever gauge")
    (steps
      "Clean outside; photograph the layers as they come."
      "Metering side: gasket and diaphragm in the order of this carburettor. Pump side the same."
      "Screen clean, needle free, lever by the gauge."
      "Passages cleaned and proved; no high air pressure near the nozzle valve."
      "Holds on the pump tester before it goes back on.") (off carburettor diaphragm-cover)
    (cautions passages-no-wire fuel-vapour no-spark-near-fuel waste-fuel eye-protection
      gloves-solvent compressed-air pressure-test-low)
    (reuse
      "Diaphragms and gaskets of an opened old carburettor: new kit. Body and screws may go back.")
    (basis common-practice))
  (repair (id set-metering-lever) (name "set the metering lever") (minutes 35) (parts-cost 4)
    (parts "metering gasket") (tools "lever gauge" "small pliers")
    (steps
      "Needle, spring and pin in; pin screw tight."
      "Straightedge or maker gauge across: set by bending at the fork, needle not pressed."
      "Diaphragm and gasket right way; pump test after.") (off carburettor diaphragm-cover)
    (cautions fuel-vapour no-spark-near-fuel)
    (reuse
      "Diaphragms and gaskets of an opened old carburettor: new kit. Body and screws may go back.")
    (basis common-practice))
  (repair (id free-inlet-needle) (name "free or renew a stuck inlet needle") (minutes 45)
    (parts-cost 10)
    (parts "needle kit")
    (consumables "carburettor cleaner") (tools "small driver" "pump tester")
    (steps
      "Metering side open, pin out, lever and needle out, do not lose the spring."
      "Soak seat, clean with a soft stick, no wire."
      "Tip without ridge: may go back. Else new needle."
      "Lever height, then pump test wet.") (off carburettor diaphragm-cover)
    (cautions passages-no-wire fuel-vapour no-spark-near-fuel waste-fuel eye-protection
      gloves-solvent compressed-air pressure-test-low)
    (reuse
      "Diaphragms and gaskets of an opened old carburettor: new kit. Body and screws may go back.")
    (basis common-practice))
  (repair (id renew-inlet-needle) (name "renew the inlet needle and clean its seat") (minutes 45)
    (parts-cost 10)
    (parts "needle kit") (tools "small driver" "pump tester" "magnifier")
    (steps
      "Needle, spring and lever out; look at the seat under a glass."
      "Seat cleaned with a soft stick; scored seat: new carburettor."
      "New needle and spring, lever by the gauge."
      "Pump test wet: holds below its opening pressure for 30 s."
      "Find the grit: pickup filter, tank, line.") (off carburettor diaphragm-cover)
    (cautions passages-no-wire fuel-vapour no-spark-near-fuel waste-fuel eye-protection
      gloves-solvent compressed-air pressure-test-low)
    (reuse
      "Diaphragms and gaskets of an opened old carburettor: new kit. Body and screws may go back.")
    (basis common-practice))
  (repair (id renew-welch-plug) (name "renew the welch plug") (minutes 50) (parts-cost 8)
    (parts "welch plug kit") (tools "small punch" "flat punch")
    (steps
      "Pierce the old plug at its edge, shallow, and lever it out."
      "Clean the pocket and prove the idle holes."
      "New plug dome up, flatten with a punch of its size; seal the rim as the maker says.")
    (off carburettor diaphragm-cover)
    (cautions passages-no-wire fuel-vapour no-spark-near-fuel waste-fuel eye-protection
      gloves-solvent compressed-air) (reuse "A plug once out is scrap.")
    (basis common-practice))
  (repair (id renew-nozzle-valve) (name "free or renew the main nozzle valve") (minutes 50)
    (parts-cost 20)
    (parts "nozzle valve or carburettor") (tools "nozzle driver")
    (steps
      "Soak and blow lightly from the metering side."
      "Still stuck or leaking: press out and fit a new one if the maker sells it."
      "No part: new carburettor.") (off carburettor diaphragm-cover)
    (cautions passages-no-wire fuel-vapour no-spark-near-fuel waste-fuel eye-protection
      gloves-solvent compressed-air)
    (reuse
      "Diaphragms and gaskets of an opened old carburettor: new kit. Body and screws may go back.")
    (basis common-practice))
  (repair (id clean-carburettor-screen) (name "clean or renew the inlet screen") (minutes 30)
    (parts-cost 8)
    (parts "inlet screen" "pickup filter") (tools "small driver" "magnifier")
    (steps
      "Pump cover off, note gasket and flap order."
      "Screen out, new or soaked clean; well wiped."
      "Pump flap soft and flat, else kit."
      "New pickup filter, tank rinsed, or it clogs again.") (off carburettor)
    (cautions passages-no-wire fuel-vapour no-spark-near-fuel waste-fuel eye-protection
      gloves-solvent compressed-air)
    (reuse
      "Diaphragms and gaskets of an opened old carburettor: new kit. Body and screws may go back.")
    (basis common-practice)))

(deffacts carburettor-choke-repairs "choke, primer, solenoid"
  (repair (id set-choke-linkage) (name "set choke cable and linkage") (minutes 25) (parts-cost 6)
    (parts "cable or link if worn") (tools "small driver" "small pliers")
    (steps
      "Unhook at the carburettor: plate free by hand, else clean the shaft."
      "Link bent or worn: new. Plate slipped: centre and lock it."
      "Cable: clamp so that the plate shuts fully on choke and stands open at run."
      "Try both ends three times, looking at the plate.") (off air-box) (cautions moving-parts)
    (basis common-practice))
  (repair (id renew-choke-heater) (name "mend the heat of the automatic choke") (minutes 45)
    (parts-cost 25)
    (parts "choke element or bimetal") (tools "meter" "small driver")
    (steps
      "Electric: feed and ground first, then element; unplug before measuring."
      "Exhaust heat: plate, tube or bimetal back as on the drawing."
      "Set the plate cold as the book says; it must be free by finger.") (off air-box)
    (cautions hot-parts carbon-monoxide)
    (basis common-practice))
  (repair (id set-air-vane-choke) (name "set the air-vane choke") (minutes 50) (parts-cost 8)
    (parts "link or spring") (tools "small pliers" "spanner")
    (steps
      "Housing off: clean chaff, vane free on its pin."
      "Link straight to pattern, spring hooked as on the drawing."
      "Plate shut at rest; blow at the vane: plate opens.") (off air-box blower-housing)
    (cautions spring-tension-governor)
    (basis common-practice))
  (repair (id renew-primer-bulb) (name "renew the primer bulb") (minutes 15) (parts-cost 6)
    (parts "primer bulb with retainer") (tools "small driver" "socket as pusher")
    (steps
      "Old bulb out, retainer not bent; look at its valve and seat."
      "Clean the bore, new bulb with retainer pushed home evenly."
      "Three presses: fuel in the throat.") (off air-box)
    (cautions fuel-vapour no-spark-near-fuel) (reuse "Bulb and retainer: new.")
    (basis common-practice))
  (repair (id refit-primer-line) (name "refit primer hose or passage gasket") (minutes 20)
    (parts-cost 4)
    (parts "primer hose or gasket") (tools "small pliers" "knife")
    (steps
      "Cut back a hardened end or fit new fuel-proof hose."
      "Both ends full on, no kink under the shroud."
      "Built-in primer: new gasket, passage proved with cleaner.") (off air-box)
    (cautions fuel-vapour no-spark-near-fuel)
    (basis common-practice))
  (repair (id renew-fuel-solenoid) (name "free or renew the fuel solenoid") (minutes 30)
    (parts-cost 30)
    (parts "fuel solenoid" "washer") (tools "spanner" "test leads")
    (steps
      "Fuel off, plug off, solenoid out with its washer; catch the petrol."
      "On the bench away from the petrol: 12 V, plunger must draw in fully."
      "Gummed: clean and try. Weak or dead: new."
      "New washer; do not cut the plunger off: it is there against bangs and drain-down.")
    (off bowl) (cautions fuel-vapour no-spark-near-fuel waste-fuel battery-short)
    (reuse "Washer: new.")
    (basis common-practice))
  (repair (id restore-solenoid-feed) (name "restore the feed of the fuel solenoid") (minutes 40)
    (parts-cost 5)
    (parts "terminal, wire or fuse") (tools "meter" "crimp tool")
    (steps
      "Follow from its plug back: plug, wire, fuse, switch, ground."
      "Clean or renew the plug; mend the wire and clip it off the hot and moving parts."
      "Fuse blown: find why before fitting the next."
      "Never feed it past an interlock.")
    (cautions battery-short interlock-never-bypass no-spark-near-fuel hot-parts)
    (basis common-practice)))
