; Ignition: coil repairs.
; To add one: a (repair ...) with steps, minutes, parts by kind and cautions.
; Check with: pullcord vet

(deffacts ignition-coil-repairs "ignition: coil repairs"
  (repair (id renew-coil)
    (name "renew coil or module") (minutes 45) (parts-cost 45)
    (parts "coil or module of the listed part")
    (tools "socket set"
      "brass feelers"
      "fixed-gap spark tester")
    (steps "First: switch, stop wire off, boot shield off, gap, key and magnets all tried."
      "Clean posts to bright metal; note wire tabs and which way up it goes."
      "Bolts loose, feeler in, magnets draw it in, tighten snug and no more."
      "Turn twice by hand: no rub. Stop wire clear of flywheel."
      "Spark test, stop switch test.")
    (off coil)
    (cautions plug-lead-off kill-lead-isolate aluminium-threads)
    (reuse "Electrical parts are seldom taken back: be sure.")
    (basis common-practice))
  (repair (id set-coil-gap)
    (name "set the coil air gap") (minutes 25) (parts-cost 0)
    (tools "brass feelers"
      "socket set")
    (steps "Magnets under the legs, bolts loose, maker feeler between both legs."
      "No figure: 0.25 to 0.35 mm (0.010 to 0.014 in) serves most."
      "Let the magnets draw it in; tighten snug, gauge again."
      "Rub marks and a loose shaft: bearing first.")
    (off blower-housing)
    (cautions plug-lead-off aluminium-threads)
    (basis common-practice))
  (repair (id clean-coil-seat)
    (name "clean coil feet and posts, reset") (minutes 30) (parts-cost 0)
    (consumables "fine abrasive cloth")
    (tools "socket set"
      "brass feelers")
    (steps "Coil off; feet, posts and laminations to bright metal, no grit on the magnets."
      "Bolts with clean threads, snug and no more. Set the gap."
      "Spark test.")
    (off coil)
    (cautions plug-lead-off aluminium-threads eye-protection)
    (basis common-practice))
  (repair (id renew-flywheel-key)
    (name "renew the flywheel key") (minutes 60) (parts-cost 4)
    (parts "soft key of the listed kind")
    (tools "flywheel holder"
      "flywheel puller"
      "torque wrench")
    (steps "Hold the flywheel, nut and washer off, draw it with a puller."
      "Look at both keyways, taper and crankshaft; worn keyway: renew part."
      "Tapers clean and dry, no oil. New soft key, never steel cut to fit."
      "Nut to the listed torque: it is the taper that carries, not the key."
      "Blade struck: check blade, boss and crankshaft for bend.")
    (off flywheel)
    (cautions plug-lead-off flywheel-puller damaged-flywheel soft-key-only bent-crankshaft
      damaged-blade)
    (reuse "Never reuse a bruised key; never a steel one.")
    (basis published) (source tm-5-4240-501-14p) (place "p. 289"))
  (repair (id renew-flywheel)
    (name "renew the flywheel") (minutes 70) (parts-cost 90)
    (parts "flywheel of the listed part"
      "soft key")
    (tools "flywheel holder"
      "flywheel puller"
      "torque wrench"
      "brass feelers")
    (steps "Draw it with a puller, no hammer on the shaft."
      "Clean dry taper, new key, nut to torque."
      "Reset coil gap; spark test.")
    (off flywheel)
    (cautions plug-lead-off flywheel-puller damaged-flywheel soft-key-only)
    (reuse "Do not glue magnets: they come off at speed.")
    (basis common-practice))
  (repair (id renew-points-condenser)
    (name "clean or renew points, with condenser") (minutes 60) (parts-cost 20)
    (parts "points set"
      "condenser")
    (consumables "clean card"
      "solvent")
    (tools "feeler gauges"
      "socket set"
      "flywheel puller")
    (steps "Flywheel off by puller; box open."
      "Oily: find the leak first. Wash off, dry with card."
      "Pitted: renew points and condenser together."
      "Set the gap on the cam peak, then the timing."
      "Card through the faces last; spark test.")
    (off flywheel)
    (cautions plug-lead-off flywheel-puller gloves-solvent soft-key-only capacitor-charge)
    (reuse "Lightly oxidised points may be dressed; not pitted ones.")
    (basis published) (source tm-9-4940-421-14) (place "Table 4-1, p. 4-2.3"))
  (repair (id set-points-gap)
    (name "set points gap and timing") (minutes 45) (parts-cost 0)
    (consumables "clean card")
    (tools "feeler gauges"
      "continuity lamp"
      "flywheel puller")
    (steps "Turn to the peak of the cam; set to the maker figure."
      "No figure: army manual 0.015 in, many others 0.020 in."
      "Check opening against the marks; then card through the faces.")
    (off flywheel)
    (cautions plug-lead-off flywheel-puller soft-key-only)
    (basis published) (source tm-5-4930-227-14) (place "p. 161"))
  (repair (id restore-ignition-feed)
    (name "restore the ignition feed") (minutes 40) (parts-cost 10)
    (parts "fuse, switch, wire or plug as found")
    (tools "multimeter"
      "wiring diagram")
    (steps "Work from the battery to the coil with the meter, joint by joint."
      "Blown fuse: find the short before a new one of the same rating."
      "Clean or renew the joint; crank with the meter on.")
    (cautions battery-short ignition-voltage)
    (basis common-practice))
)
