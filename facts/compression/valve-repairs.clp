; Repairs of valves, valve gear and release.
; To add a line: copy one; parts by kind, never by maker.
; check with: pullcord vet

(deffacts valve-repairs "repairs of valves"
  (repair (id reseat-valves)
    (name "Reseat the valves")
    (minutes 120) (parts-cost 30)
    (parts "valve if burnt" "head gasket")
    (consumables "lapping paste")
    (tools "valve spring compressor" "seat cutter" "torque wrench")
    (steps
      "Head off, springs off, valves marked. Burnt or thin edge: new valve."
      "Cut or grind the seat narrow, lap lightly, wash off every trace of paste."
      "Paraffin in the port: none comes through."
      "Side-valve: grind the stem end for clearance. Set clearances cold, new gasket.")
    (off cylinder-head)
    (cautions plug-lead-off hot-parts gloves-solvent eye-protection asbestos-like-dust
      aluminium-threads)
    (reuse "A valve with a sharp edge or burnt face never.")
    (basis common-practice))
  (repair (id free-the-valve)
    (name "Free the stuck valve")
    (minutes 45) (parts-cost 5)
    (consumables "penetrating oil" "solvent")
    (tools "soft hammer")
    (steps
      "Cover off. Penetrating oil on the stem, piston down, tap the tip lightly, work it."
      "If it stays slow: head off, clean stem and guide, measure."
      "Look at pushrods: a stuck valve bends them."
      "Fresh fuel, tank and carburettor cleaned of gum: that is what stuck it.")
    (off rocker-cover plug)
    (cautions plug-lead-off gloves-solvent fuel-vapour eye-protection)
    (reuse "Valve if straight.")
    (basis common-practice))
  (repair (id set-valve-clearance)
    (name "Set the valve clearances")
    (minutes 25) (parts-cost 4)
    (parts "rocker cover gasket")
    (tools "feeler gauges")
    (steps
      "Cold, piston at the top on compression and a little past, release off its bump."
      "Feeler in, adjuster to a light drag, lock nut held and tightened, gauge again."
      "Turn over twice and gauge once more. Side-valve: too tight means grinding the stem end.")
    (off rocker-cover plug)
    (cautions plug-lead-off hot-parts)
    (reuse "Cover gasket only if soft and whole.")
    (basis common-practice))
  (repair (id replace-pushrod)
    (name "Replace the pushrod")
    (minutes 40) (parts-cost 12)
    (parts "pushrod" "rocker cover gasket")
    (tools "feeler gauges" "glass plate")
    (steps
      "Why first: valve free? rocker stud tight? guide plate straight?"
      "Roll rods on glass: any wobble is scrap. Each rod back in its own place."
      "Foot in the tappet cup (feel it lift), rocker on, clearance set, turn over twice by hand.")
    (off rocker-cover plug)
    (cautions plug-lead-off hot-parts)
    (reuse "A straightened rod is for testing only.")
    (basis common-practice))
  (repair (id refit-valve-seat)
    (name "Refit or renew the valve seat")
    (minutes 150) (parts-cost 40)
    (parts "valve seat or head" "head gasket")
    (tools "seat cutter" "press tool" "torque wrench")
    (steps
      "Head off, seat out. Bore worn: oversize seat, or another head."
      "Head warmed, seat cold, pressed in square, edge peened or staked all round."
      "Cut the seat, lap, clearance, new gasket. Clean the fins that overheated it.")
    (off cylinder-head)
    (cautions plug-lead-off hot-parts gloves-solvent aluminium-threads asbestos-like-dust)
    (reuse "A seat that spun never.")
    (basis common-practice))
  (repair (id replace-valve-guide)
    (name "Renew guide or stem seal")
    (minutes 120) (parts-cost 25)
    (parts "guide or seal" "head gasket")
    (tools "guide driver" "reamer" "valve spring compressor")
    (steps
      "Head off, valve out; gauge stem and guide. Seal only: new seal, oil it on."
      "Guide pressed out and in to its depth, reamed, seat recut to it."
      "New gasket, clearances.")
    (off cylinder-head)
    (cautions plug-lead-off hot-parts gloves-solvent eye-protection aluminium-threads)
    (reuse "Stem seals never.")
    (basis common-practice))
  (repair (id replace-valve-springs)
    (name "Replace the valve springs")
    (minutes 45) (parts-cost 12)
    (parts "valve springs" "keepers")
    (tools "valve spring compressor")
    (steps
      "Piston at the top and held there, or rope in the cylinder, so that the valve cannot drop."
      "Spring down, keepers out with a magnet, new spring, keepers seated, tap the tip."
      "Both springs together. Set clearances.")
    (off rocker-cover plug)
    (cautions plug-lead-off eye-protection)
    (reuse "Keepers if unmarked.")
    (basis common-practice))
  (repair (id free-the-release)
    (name "Free the decompression release")
    (minutes 30) (parts-cost 10)
    (parts "release valve or spring")
    (consumables "solvent")
    (tools "socket")
    (steps
      "Button kind: out, wash, new one if it leaks or stays in; thread sealed as the maker says."
      "Cam kind: clearance first; if the arm is gummed, sump off, wash, spring whole?"
      "Flick it backwards: springs back; pull: passes easily.")
    (cautions plug-lead-off gloves-solvent crank-kickback hot-parts)
    (reuse "Button if it seals and springs.")
    (basis common-practice))
  (repair (id renew-the-release)
    (name "Renew the decompression release")
    (minutes 120) (parts-cost 40)
    (parts "release parts or camshaft" "sump gasket" "oil")
    (tools "feeler gauges" "torque wrench")
    (steps
      "Set the clearances first: on many engines that is all it needs."
      "Button kind: new button. Cam kind: sump off, camshaft out, new arm, spring or camshaft."
      "Cam and crank marks in line, tappets in order, new gasket, oil.")
    (off rocker-cover crankcase-cover)
    (cautions plug-lead-off used-oil crank-kickback aluminium-threads)
    (reuse "Camshaft if the lobes are good and the arm can be had.")
    (basis common-practice))
  (repair (id replace-camshaft)
    (name "Replace camshaft and tappets")
    (minutes 180) (parts-cost 70)
    (parts "camshaft" "tappets" "sump gasket" "oil")
    (tools "torque wrench" "feeler gauges")
    (steps
      "Oil out, sump off, engine upside down so that tappets stay up, marks noted."
      "New camshaft and tappets together; oil the lobes well."
      "Marks in line, end play, new gasket; clearances; run at speed, not idle, at first.")
    (off flywheel crankcase-cover rocker-cover)
    (cautions plug-lead-off used-oil flywheel-puller aluminium-threads lifting-tipping
      carbon-monoxide)
    (reuse "Old tappets never on a new cam.")
    (basis common-practice))
  (repair (id set-valve-timing)
    (name "Put the cam in time")
    (minutes 120) (parts-cost 25)
    (parts "cam gear if broken" "sump gasket" "oil")
    (tools "torque wrench")
    (steps
      "Oil out, sump off; look at teeth, key and marks."
      "Broken teeth: new gear or camshaft, and fish out every tooth."
      "Marks in line, turn over twice by hand with pushrods in: nothing touches."
      "New gasket, bolts snug in turn.")
    (off crankcase-cover rocker-cover)
    (cautions plug-lead-off used-oil aluminium-threads)
    (reuse "Gasket never.")
    (basis common-practice)))
