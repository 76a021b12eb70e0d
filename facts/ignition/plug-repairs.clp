; Ignition: plug repairs.
; To add one: a (repair ...) with steps, minutes, parts by kind and cautions.
; Check with: pullcord vet

(deffacts ignition-plug-repairs "ignition: plug repairs"
  (repair (id renew-plug)
    (name "renew the plug") (minutes 10) (parts-cost 6)
    (parts "plug of the listed kind")
    (tools "plug socket"
      "wire gauge"
      "torque wrench")
    (steps "Clean round the plug before it comes out."
      "Gap the new one with wires, bend only the side electrode."
      "Start it by hand the whole thread; if it binds, back off."
      "14 mm flat seat in aluminium: 15 to 22 lb-ft dry; taper seat 7 to 15; maker first."
      "Black or wet again soon: find what fouls it.")
    (off plug)
    (cautions plug-lead-off hot-parts aluminium-threads)
    (reuse "A sound sooty plug may be cleaned and regapped; sand-blasted grit ruins bores.")
    (basis published) (source lsu-plug-torque) (place "table: 14 mm gasket and taper seat"))
  (repair (id clean-oiled-plug)
    (name "new plug and clear the oil") (minutes 20) (parts-cost 6)
    (parts "plug of the listed kind")
    (consumables "clean rag")
    (tools "plug socket")
    (steps "Plug out, lead grounded, pull until no more oil comes; stand clear of the hole."
      "Oil level: drain to the mark if too high. Two-stroke: right mix in."
      "New plug; run until the smoke clears."
      "Oils again: leak-down, guides, breather.")
    (off plug)
    (cautions plug-lead-off spark-test-grounded eye-protection used-oil aluminium-threads
      carbon-monoxide)
    (reuse "An oiled plug seldom cleans well: renew.")
    (basis common-practice))
  (repair (id set-plug-gap)
    (name "set the plug gap") (minutes 6) (parts-cost 0)
    (tools "wire gauge"
      "gap bender"
      "plug socket")
    (steps "Plug out, look for cracks."
      "Bend the side electrode to the figure with a gap tool; usual 0.030 in (0.76 mm)."
      "Refit by hand, then tighten as listed.")
    (off plug)
    (cautions plug-lead-off hot-parts aluminium-threads)
    (reuse "Reuse unless worn round or cracked.")
    (basis published) (source tm-5-4930-227-14) (place "p. 161"))
  (repair (id fit-right-plug)
    (name "fit the listed plug") (minutes 10) (parts-cost 6)
    (parts "plug of the listed kind")
    (tools "plug socket"
      "wire gauge"
      "torque wrench")
    (steps "Look up plug by engine number, not by the old one."
      "Too long a reach was in: look at piston crown and for carbon in the thread."
      "Gap, start by hand, tighten as listed.")
    (off plug)
    (cautions plug-lead-off hot-parts aluminium-threads)
    (reuse "Throw the wrong one away so that nobody matches it again.")
    (basis common-practice))
  (repair (id refit-plug)
    (name "clean the seat and refit the plug; save the thread") (minutes 30) (parts-cost 8)
    (parts "plug"
      "thread insert if stripped")
    (tools "plug socket"
      "thread tap"
      "torque wrench")
    (steps "Plug out cold. Wipe seat and thread, keep dirt out of the hole."
      "Thread rough: chase with a greased tap. Stripped: insert, chips kept out of the bore."
      "New gasket or plug, hand tight, then to torque: snug and no more."
      "Without a wrench: new gasket plug half a turn, used one an eighth to a quarter.")
    (off plug)
    (cautions plug-lead-off hot-parts aluminium-threads eye-protection compressed-air)
    (reuse "A crushed gasket seals once only as well as new.")
    (basis published) (source lsu-plug-torque) (place "table: 14 mm gasket and taper seat"))
  (repair (id renew-plug-lead)
    (name "renew or shorten the plug lead") (minutes 30) (parts-cost 12)
    (parts "plug lead or coil with lead"
      "boot and clip")
    (tools "side cutters"
      "fixed-gap spark tester")
    (steps "Lead moulded in: cut back to sound wire if long enough, else a new coil."
      "Screw-in lead: unscrew, fit new, seal at the coil."
      "New boot and clip; clip must bite the core."
      "Route clear of fins, muffler and edges.")
    (off blower-housing)
    (cautions plug-lead-off hot-parts)
    (reuse "Tape is no repair for a leaking lead.")
    (basis published) (source tm-9-4940-421-14) (place "Table 4-1, p. 4-2.3"))
  (repair (id renew-plug-boot)
    (name "renew the plug boot") (minutes 10) (parts-cost 8)
    (parts "boot of the same kind, with shield or resistor as fitted")
    (tools "side cutters"
      "multimeter")
    (steps "Unscrew or pull the old boot; cut 5 mm off a green lead end."
      "Screw the new one on until the core is held; meter a resistor boot first."
      "Shield, if there was one, back on clean and dry."
      "Spark test.")
    (off plug-boot)
    (cautions plug-lead-off ignition-voltage)
    (reuse "A tracked boot leaks again: do not reuse it.")
    (basis common-practice))
  (repair (id dry-ignition)
    (name "dry and clean the ignition") (minutes 20) (parts-cost 0)
    (consumables "clean cloth"
      "dielectric grease")
    (tools "low-pressure air")
    (steps "Wipe plug porcelain, boot, lead, coil. Blow out switch plugs gently."
      "Let it stand warm. Tiny smear of dielectric grease inside the boot lip."
      "Look for the crack that let water in.")
    (off plug-boot)
    (cautions plug-lead-off compressed-air eye-protection)
    (basis common-practice))
)
