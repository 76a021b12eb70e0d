; Repairs of rod, crank, bearings and crankcase.
; To add a line: copy one; parts by kind, never by maker.
; check with: pullcord vet

(deffacts bottom-end-repairs "repairs of the bottom end"
  (repair (id replace-rod-or-engine)
    (name "Replace rod, or the engine")
    (minutes 240) (parts-cost 120)
    (parts "rod" "gasket set" "oil" "or short engine")
    (tools "micrometer" "torque wrench" "flywheel puller")
    (steps
      "Case holed or crank pin torn: short engine, or tell the owner it is not worth it."
      "Otherwise strip, wash out all pieces, gauge crank pin and bore."
      "New rod, cap its way round, dipper the right way, bolts and locks new."
      "Fresh oil, turn by hand, run in, change the oil early.")
    (off flywheel cylinder-head crankcase-cover)
    (cautions plug-lead-off used-oil flywheel-puller gloves-solvent aluminium-threads
      carbon-monoxide)
    (reuse "Rod bolts and locks never.")
    (basis common-practice))
  (repair (id replace-con-rod)
    (name "Replace the connecting rod")
    (minutes 180) (parts-cost 50)
    (parts "rod" "sump gasket" "oil")
    (tools "micrometer" "torque wrench")
    (steps
      "Oil out, sump off. Gauge the crank pin: round and in limits, or the crank goes too."
      "New rod oiled, match marks together, dipper facing as it was, bolts in turn to the figure."
      "Crank must turn and the rod slide sideways freely."
      "New gasket, fresh oil, run in.")
    (off crankcase-cover flywheel)
    (cautions plug-lead-off used-oil flywheel-puller gloves-solvent aluminium-threads
      carbon-monoxide)
    (reuse "Rod bolts and locks never.")
    (basis common-practice))
  (repair (id replace-main-bearings)
    (name "Replace main bearings and seals")
    (minutes 210) (parts-cost 60)
    (parts "bearings" "seals" "gasket set")
    (tools "press" "flywheel puller" "dial gauge")
    (steps
      "Crank out, run-out looked at between centres. Bent: scrap it."
      "Case warmed for the bearings, never hammered through the balls."
      "New seals, lips oiled and sleeved past the keyway."
      "End play, gasket, coil gap set again.")
    (off flywheel crankcase-cover)
    (cautions plug-lead-off used-oil flywheel-puller gloves-solvent aluminium-threads
      bent-crankshaft hot-parts)
    (reuse "Seals and gaskets never.")
    (basis common-practice))
  (repair (id replace-piston-pin)
    (name "Replace the piston pin")
    (minutes 150) (parts-cost 30)
    (parts "pin" "clips" "gasket set")
    (tools "micrometer" "torque wrench")
    (steps
      "Piston out. Gauge pin, piston and rod: renew what is over."
      "Clips new, gaps up or down, piston arrow as it was."
      "Gaskets, fresh oil, run in.")
    (off cylinder-head crankcase-cover)
    (cautions plug-lead-off used-oil flywheel-puller gloves-solvent aluminium-threads
      carbon-monoxide)
    (reuse "Clips never.")
    (basis common-practice))
  (repair (id replace-crank-seals)
    (name "Replace both crank seals (two-stroke)")
    (minutes 90) (parts-cost 15)
    (parts "two crank seals")
    (tools "seal puller" "flywheel puller" "hand pump")
    (steps
      "Flywheel and clutch off. Pull the seal without touching shaft or bore."
      "Look at the shaft: groove felt with a nail, sleeve or crank."
      "Lip greased, over the keyway with a sleeve, pressed to its depth, both sides."
      "Pressure and vacuum test before closing up; set the mixture again.")
    (off flywheel)
    (cautions plug-lead-off flywheel-puller pressure-test-low two-stroke-lean-seizure
      emission-sealed-screws)
    (reuse "Seals never.")
    (basis common-practice))
  (repair (id reseal-crankcase)
    (name "Reseal the crankcase joint")
    (minutes 120) (parts-cost 15)
    (parts "joint gasket" "oil")
    (tools "torque wrench" "plastic scraper")
    (steps
      "Try the bolts in turn first: slack ones may be all."
      "Joint open, faces cleaned without gouging, dowels in."
      "Gasket or the sealant the maker names, thin; bolts snug in turn, then the figure."
      "Two-stroke: pressure test. Four-stroke: oil in after the sealant has set.")
    (off flywheel)
    (cautions plug-lead-off used-oil flywheel-puller gloves-solvent aluminium-threads
      pressure-test-low asbestos-like-dust)
    (reuse "Gasket never.")
    (basis common-practice)))
