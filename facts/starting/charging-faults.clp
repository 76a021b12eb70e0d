; Starting: charging faults: what it is, how it comes about, what it looks like, repair and
; proof.
; To add one: a (fault ...) here, its leads and signs beside it in the other files, a repair,
; two cases.
; Check with: pullcord vet

(deffacts starting-charging-faults "starting: charging faults"
  (fault (id charging-coil-bad)
    (name "charging coil open or shorted")
    (system starting) (sort wear) (base-rate 0.006)
    (needs charging)
    (is "The coil under the flywheel gives little or no a.c.")
    (comes-about "Insulation cooked or chafed by the flywheel, wire broken at the exit.")
    (shows "Battery goes flat in use; low a.c. at the coil plug.")
    (looks-like charging-regulator-bad charging-coil-output battery-sulphated
      battery-charge-holds)
    (repair renew-charging-coil)
    (proof "Full speed: battery rises above 13.3 V within minutes; no wire near the flywheel.")
    (basis common-practice))
  (fault (id charging-regulator-bad)
    (name "rectifier or regulator bad")
    (system starting) (sort wear) (base-rate 0.011)
    (needs charging)
    (is "A.c. comes in, no right d.c. goes out.")
    (comes-about
      "Bad body ground, heat, battery put in the wrong way round, battery pulled while running.")
    (shows "Battery goes flat, or boils if it no longer holds the voltage down.")
    (looks-like charging-coil-bad charging-coil-output battery-sulphated battery-charge-holds
      battery-drained battery-drain)
    (repair renew-charging-regulator)
    (proof "Full speed: rises above 13.3 V and stays under 15 V for ten minutes.")
    (basis common-practice))
  (fault (id battery-drained)
    (name "something drains the battery at rest")
    (system starting) (sort wear) (base-rate 0.008)
    (needs battery)
    (is "Current leaves the battery with the key off.")
    (comes-about "Worn key switch, leaking diode in the regulator, lamp or added gadget.")
    (shows "Charging is right, yet flat after some days; fine if a clamp is taken off.")
    (looks-like battery-sulphated battery-drain charging-regulator-bad charging-voltage)
    (repair cure-battery-drain)
    (proof "Under 0.03 A with the key off; starts well after a week standing.")
    (basis common-practice))
)
