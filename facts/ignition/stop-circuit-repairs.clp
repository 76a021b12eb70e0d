; Ignition: stop-circuit repairs.
; To add one: a (repair ...) with steps, minutes, parts by kind and cautions.
; Check with: pullcord vet

(deffacts ignition-stop-circuit-repairs "ignition: stop-circuit repairs"
  (repair (id renew-stop-switch)
    (name "renew the stop switch") (minutes 20) (parts-cost 10)
    (parts "stop switch")
    (tools "screwdriver"
      "multimeter")
    (steps "Unplug, meter: run open, stop closed (magneto kind)."
      "Fit new; route the wire as it was."
      "Test that it stops the engine.")
    (cautions plug-lead-off kill-lead-isolate carbon-monoxide)
    (reuse "A wet switch may dry out and fail again: renew.")
    (basis common-practice))
  (repair (id repair-stop-wire)
    (name "mend and reroute the stop wire") (minutes 30) (parts-cost 4)
    (parts "wire, sleeve, clip")
    (tools "crimper"
      "heat-shrink")
    (steps "Cut out the bad length; crimp and sleeve a new one of the same kind."
      "Clip it clear of edges, muffler, flywheel, folding handle."
      "Meter open at run, closed at stop. Test that it stops.")
    (off blower-housing)
    (cautions plug-lead-off kill-lead-isolate hot-parts carbon-monoxide)
    (reuse "Tape over a chafe on a hot part does not last.")
    (basis common-practice))
  (repair (id reroute-stop-wire)
    (name "free and reroute the trapped wire") (minutes 30) (parts-cost 2)
    (parts "wire or sleeve if cut")
    (tools "socket set"
      "brass feelers"
      "multimeter")
    (steps "Housing and coil off as far as needed; look at every wire the last hand moved."
      "Mend the cut; lay it in its clip or groove; right tab."
      "Set the coil gap again, meter the stop circuit, then covers on and meter again.")
    (off coil)
    (cautions plug-lead-off kill-lead-isolate aluminium-threads)
    (basis common-practice))
  (repair (id renew-interlock-switch)
    (name "set or renew the interlock switch") (minutes 40) (parts-cost 18)
    (parts "switch of the same kind (open or closed)")
    (tools "multimeter"
      "wiring diagram")
    (steps "See first if the striker or cable is bent or out of set: set that."
      "Renew the switch with the same kind; clean the plug."
      "Try every interlock in turn: it must stop or refuse as it should.")
    (cautions plug-lead-off interlock-never-bypass stand-clear-tool carbon-monoxide)
    (reuse "Never hand it back bridged or tied.")
    (basis common-practice))
  (repair (id renew-oil-cutout)
    (name "renew or clear the oil cut-out") (minutes 90) (parts-cost 25)
    (parts "float switch or module"
      "gasket")
    (consumables "fresh oil")
    (tools "multimeter"
      "socket set")
    (steps "Oil to the mark on level ground and tried first."
      "Wire chafed at the case: mend that, it is the cheap one."
      "Module outside: renew. Float inside: drain, cover off, wash out sludge or renew."
      "New gasket, fresh oil; plugged in again; test.")
    (cautions plug-lead-off used-oil kill-lead-isolate hot-parts)
    (reuse "Never leave it unplugged to get a job out.")
    (basis common-practice))
)
