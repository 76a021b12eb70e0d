; Repairs of the exhaust.
; To add a line: copy one; parts by kind, never by maker.
; check with: pullcord vet

(deffacts exhaust-repairs "exhaust repairs"
  (repair (id clean-the-silencer)
    (name "Clean or replace the silencer")
    (minutes 30) (parts-cost 15)
    (parts "silencer if crushed" "gasket")
    (tools "scraper")
    (steps
      "Cold, off. Nest out with a hook; carbon knocked out."
      "Two-stroke: it may be burnt out, outdoors and far from the machine and its fuel."
      "Caustic only on steel, never aluminium, face shield and rubber gloves on; rinse and dry."
      "Crushed or nested behind baffles: new one."
      "New gasket, bolts in turn.")
    (off muffler)
    (cautions hot-parts eye-protection gloves-solvent aluminium-threads no-spark-near-fuel)
    (reuse "Gasket never.")
    (basis common-practice))
  (repair (id clean-spark-arrester)
    (name "Clean or renew the spark arrester")
    (minutes 12) (parts-cost 5)
    (parts "spark arrester screen")
    (tools "wire brush")
    (steps
      "Cold. Screen out, brush it, or glow it off with a torch held in pliers, away from fuel."
      "Holed or rusted: new screen. Always put one back."
      "Look at port and silencer behind it; correct mix and idling.")
    (cautions hot-parts eye-protection no-spark-near-fuel)
    (reuse "Screen if every mesh is open and none is torn.")
    (basis common-practice))
  (repair (id clean-exhaust-port)
    (name "Clean the exhaust port")
    (minutes 35) (parts-cost 4)
    (parts "exhaust gasket")
    (tools "wooden scraper")
    (steps
      "Silencer off. Turn the piston up to cover the port fully, plug out."
      "Wood or plastic scraper; leave port edges alone."
      "Turn it over with the port down, blow the crumbs out; clean screen and silencer too.")
    (off muffler plug)
    (cautions hot-parts plug-lead-off compressed-air eye-protection)
    (reuse "Gasket never.")
    (basis common-practice))
  (repair (id renew-exhaust-gasket)
    (name "Renew the exhaust gasket")
    (minutes 20) (parts-cost 5)
    (parts "exhaust gasket" "lock tabs")
    (tools "scraper" "torque wrench")
    (steps
      "Cold, faces scraped and looked at for warp."
      "New gasket, bolts in turn, lock tabs bent up."
      "Warm up, cool, try the bolts again.")
    (off muffler)
    (cautions hot-parts aluminium-threads asbestos-like-dust carbon-monoxide)
    (reuse "Gasket and lock tabs never.")
    (basis common-practice))
  (repair (id tighten-the-silencer)
    (name "Fix the silencer bolts")
    (minutes 15) (parts-cost 4)
    (parts "bolts or studs" "lock tabs" "thread insert if stripped")
    (tools "sockets")
    (steps
      "Cold. Bolts in turn with new locks; stripped hole: insert or the next stud size."
      "Shake it: nothing moves. Gasket burnt: renew it now.")
    (cautions hot-parts aluminium-threads)
    (reuse "Stretched bolts and lock tabs never.")
    (basis common-practice))
  (repair (id replace-silencer)
    (name "Replace the silencer")
    (minutes 20) (parts-cost 30)
    (parts "silencer" "gasket")
    (tools "sockets")
    (steps
      "Cold. Rusted bolts: warm and penetrating oil before force; they shear in aluminium."
      "New silencer of the right kind with its screen and guard, new gasket, bolts in turn.")
    (off muffler)
    (cautions hot-parts aluminium-threads eye-protection)
    (reuse "Guard and screen if sound; gasket never.")
    (basis common-practice)))
