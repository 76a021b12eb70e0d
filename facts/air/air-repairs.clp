; Repairs of intake joints, reed, filter and breather tube.
; To add a line: copy a fact, give it a new id, keep results weaker before stronger.
; check with: pullcord vet

(deffacts air-joint-repairs "joints"
  (repair (id renew-intake-gasket) (name "renew the intake gaskets") (minutes 40) (parts-cost 5)
    (parts "intake gasket set") (tools "spanner" "plastic scraper" "straightedge")
    (steps
      "Carburettor off with links noted; O-ring looked for as it comes away."
      "Faces clean with plastic scraper, stud holes too; straightedge over the flanges."
      "New gaskets in the order of the drawing, dry, every hole open."
      "Draw up in turn, a little each: snug, and no more. Aluminium threads pull."
      "Links and breather tube back, throttle works stop to stop.") (off carburettor)
    (cautions fuel-vapour no-spark-near-fuel aluminium-threads asbestos-like-dust)
    (reuse "Torn, sucked-in or hard gasket: new. A whole one that did not leak may go back.")
    (basis common-practice))
  (repair (id fit-carburettor-o-ring) (name "fit the carburettor O-ring") (minutes 30)
    (parts-cost 3)
    (parts "carburettor O-ring")
    (consumables "fuel-safe grease") (tools "spanner")
    (steps
      "Look on the floor, in the rag and on the stub before ordering."
      "Groove clean; fuel-proof ring of the right section, a smear of fuel-safe grease to hold it."
      "Push straight on, look that it did not roll."
      "Draw up in turn, a little each: snug, and no more. Aluminium threads pull.")
    (off carburettor) (cautions fuel-vapour no-spark-near-fuel aluminium-threads)
    (reuse "Flat, cut or swollen ring: new.")
    (basis common-practice))
  (repair (id fit-plate-o-ring) (name "fit the ring behind the spacer plate") (minutes 40)
    (parts-cost 4)
    (parts "plate O-ring" "carburettor gasket") (tools "spanner" "straightedge")
    (steps
      "Carburettor and plate off; old ring or its rest picked out."
      "Groove clean, plate flat on a straightedge."
      "New ring in the groove, gasket on the other face, right way round."
      "Draw up in turn, a little each: snug, and no more. Aluminium threads pull.")
    (off carburettor) (cautions fuel-vapour no-spark-near-fuel aluminium-threads)
    (reuse "Torn, sucked-in or hard gasket: new. A whole one that did not leak may go back.")
    (basis common-practice))
  (repair (id tighten-carburettor) (name "tighten the carburettor on its studs") (minutes 20)
    (parts "gasket if beaten") (tools "spanner")
    (steps
      "Look at the gasket first: a beaten one is renewed, not squeezed."
      "Draw up in turn, a little each: snug, and no more. Aluminium threads pull."
      "Pulled thread: insert or new stud, no longer bolt."
      "Run hot, cool, try once more.") (off air-box) (cautions aluminium-threads hot-parts
      carbon-monoxide)
    (reuse "Torn, sucked-in or hard gasket: new. A whole one that did not leak may go back.")
    (basis common-practice))
  (repair (id order-gaskets) (name "put gaskets and spacer in order") (minutes 40) (parts-cost 5)
    (parts "intake gasket set") (tools "spanner")
    (steps
      "Parts drawing on the bench."
      "Each gasket laid on its face: every hole in the metal open."
      "Torn in taking apart: new."
      "Draw up in turn, a little each: snug, and no more. Aluminium threads pull."
      "Prime and try before the covers go on.") (off carburettor)
    (cautions fuel-vapour no-spark-near-fuel aluminium-threads)
    (reuse "Torn, sucked-in or hard gasket: new. A whole one that did not leak may go back.")
    (basis common-practice))
  (repair (id renew-intake-boot) (name "renew the intake boot") (minutes 60) (parts-cost 18)
    (parts "intake boot" "clamp") (tools "spanner" "pressure tester")
    (steps
      "Carburettor off; boot out with its clamp or flange; pulse line off."
      "New boot lubricated with soapy water, lip even all round."
      "Clamp where it was, pulse hole in line."
      "Pressure test the crankcase before it runs.") (off carburettor intake-manifold)
    (cautions two-stroke-lean-seizure pressure-test-low fuel-vapour no-spark-near-fuel)
    (reuse "No glue, no tape on a split boot: new.")
    (basis common-practice))
  (repair (id renew-intake-manifold) (name "renew or reseat the intake manifold") (minutes 60)
    (parts-cost 20)
    (parts "manifold and gaskets") (tools "spanner" "straightedge")
    (steps
      "Carburettor and pipe off as one, supported: no weight on the pipe."
      "Straightedge over both flanges; crack or bow: new."
      "New gaskets or rings both ends."
      "Draw up in turn, a little each: snug, and no more. Aluminium threads pull.")
    (off carburettor intake-manifold)
    (cautions aluminium-threads fuel-vapour no-spark-near-fuel hot-parts)
    (reuse "Torn, sucked-in or hard gasket: new. A whole one that did not leak may go back.")
    (basis common-practice))
  (repair (id renew-reed-valve) (name "renew the reed valve") (minutes 60) (parts-cost 20)
    (parts "reed valve" "gaskets")
    (consumables "thread lock") (tools "small driver" "spanner")
    (steps
      "Reed block off; petals and stops looked at."
      "A chip missing: look in the crankcase before it runs."
      "New petals or block, smooth side as the maker says, screws locked."
      "New gasket, carburettor back.") (off carburettor intake-manifold)
    (cautions fuel-vapour no-spark-near-fuel) (reuse "Petals are not turned over.")
    (basis common-practice)))

(deffacts air-filter-repairs "filter and breather tube"
  (repair (id renew-air-filter) (name "clean or renew the air filter") (minutes 10) (parts-cost 8)
    (parts "air filter element")
    (consumables "filter oil")
    (steps
      "Paper: tap out light dust, else new; never wash or oil it."
      "Foam: wash in warm soapy water, dry, a little filter oil, squeeze out."
      "Wipe box and rim clean, carburettor mouth covered meanwhile."
      "Oil soaked: find why (tipped, overfilled, breather) or it will be so again.")
    (off air-box filter-element) (cautions fuel-vapour gloves-solvent)
    (reuse "Oiled or petrol-soaked paper: new. Crumbling foam: new.")
    (basis common-practice))
  (repair (id fit-filter-and-check-wear) (name "fit the right filter and look for wear")
    (minutes 25) (parts-cost 12)
    (parts "air filter element" "oil") (tools "compression gauge")
    (steps
      "Right element, seal rim whole, cover and clips shut evenly."
      "Wipe out box and throat; bowl looked at for grit."
      "Oil changed; compression or leak-down measured and told to the owner.")
    (off air-box filter-element) (cautions compression-test-no-fire used-oil)
    (reuse "Torn or shrunk element: new.")
    (basis common-practice))
  (repair (id refit-breather-tube) (name "refit or renew the breather tube") (minutes 15)
    (parts-cost 5)
    (parts "breather tube")
    (steps
      "Tube blown clear, ends cut back or new; oil-proof rubber."
      "Full on at both ends, no kink under the shroud."
      "Oil level right; oily filter renewed with it.") (off air-box) (cautions hot-parts)
    (basis common-practice)))
