; Checks of the exhaust: silencer, spark arrester, port, noise and smoke.
; To add a line: copy a fact, keep results and texts in the same order, give a basis.
; check with: pullcord vet

(deffacts exhaust-checks "exhaust checks"
  (check (id muffler-look) (name "silencer seen inside")
    (system exhaust) (kind look) (engine cold) (minutes 6)
    (ask "Is the silencer clear inside?")
    (results clear carboned blocked)
    (labels "clear" "oily or thick carbon" "blocked, crushed or nested")
    (means "Gas gets out." "Narrowed; clean it." "It cannot breathe: no power, hot, may not start.")
    (anyway 0.06 0.003)
    (off muffler)
    (tools "lamp")
    (steps
      "Cold. Look in at both ends with a lamp; shake it: loose baffles rattle."
      "Mouse nest, mud-wasp plug, crushed outlet: look from outside first."
      "Tap it over paper: carbon falls out.")
    (mistakes "Looking only at the outlet.")
    (cautions hot-parts)
    (also-called "muffler blocked" "silencer")
    (basis common-practice))
  (check (id spark-arrester-look) (name "spark arrester screen")
    (system exhaust) (kind look) (engine cold) (minutes 5)
    (ask "Is the spark arrester screen clear?")
    (results clear carboned)
    (labels "clear mesh" "mesh clogged")
    (means "Gas gets out." "It will not rev; clean or renew the screen, never leave it out.")
    (anyway 0.03)
    (needs spark-arrester)
    (steps
      "Cold. Screen out of the silencer outlet."
      "Hold it to the light: every mesh should show.")
    (mistakes "Running without the screen in dry country: fire.")
    (cautions hot-parts)
    (also-called "exhaust screen" "arrestor")
    (basis common-practice))
  (check (id exhaust-port-look) (name "exhaust port carbon")
    (system exhaust) (kind look) (engine cold) (minutes 8)
    (ask "Is the exhaust port clear of carbon?")
    (results clear carboned)
    (labels "clear" "narrowed by carbon")
    (means "Port is open." "Scrape it with the piston covering the port.")
    (anyway 0.01)
    (needs two-stroke)
    (off muffler)
    (tools "lamp")
    (steps
      "Silencer off, cold. Look at the port with the piston down."
      "A quarter of the area gone is enough to feel.")
    (mistakes "Scraping with the piston down: carbon falls into the cylinder.")
    (cautions hot-parts plug-lead-off)
    (basis common-practice))
  (check (id muffler-off-run) (name "run with the outlet opened")
    (system exhaust) (kind try) (engine running) (minutes 8)
    (ask "Does it run better for a moment with the exhaust opened?")
    (results no-change runs-better)
    (labels "no change" "revs and pulls clearly better")
    (means "The exhaust is not holding it back." "Silencer, screen or port is blocked behind it.")
    (anyway 0.015)
    (steps
      "Outdoors, nothing that burns near. Slacken the silencer or take the screen out."
      "Start, a few seconds at speed, stop. Flame and noise: ears and hands clear."
      "Do not run it longer without: hot gas reaches hose, wires and fins.")
    (mistakes
      "Running a long time open: burns, and a two-stroke goes lean."
      "Taking louder for stronger.")
    (cautions hot-parts noise-hearing carbon-monoxide eye-protection)
    (basis common-practice))
  (check (id exhaust-noise) (name "exhaust blowing")
    (system exhaust) (kind listen) (engine running) (minutes 2)
    (ask "Does the exhaust blow at its joint?")
    (results quiet blowing)
    (labels "as quiet as it was" "blows, ticks or is loud")
    (means "Joint and silencer are whole." "Gasket, bolts or a hole.")
    (anyway 0.06)
    (steps
      "Run outdoors, hand well clear, listen round the joint at speed."
      "Look cold for a soot fan at the flange.")
    (mistakes "Taking a tick from wide valve clearance for a blow.")
    (cautions hot-parts noise-hearing carbon-monoxide)
    (basis common-practice))
  (check (id exhaust-joint-look) (name "exhaust joint and silencer body")
    (system exhaust) (kind look) (engine cold) (minutes 4)
    (ask "How do exhaust joint and silencer look?")
    (results sound bolts-loose gasket-soot holed)
    (labels
      "dry joint, bolts tight, no holes"
      "bolts loose, lost or stripped"
      "bolts tight, soot at the gasket"
      "holed or rusted through")
    (means
      "The exhaust is whole."
      "It shakes and wears its flange."
      "Gasket blown or face warped."
      "New silencer.")
    (anyway 0.015 0.01 0.01)
    (steps
      "Cold. Shake the silencer, try both bolts and their lock tabs."
      "Soot fan at the joint, rust holes underneath.")
    (mistakes "Tightening one bolt against a bent flange.")
    (cautions hot-parts aluminium-threads)
    (basis common-practice))
  (check (id exhaust-smoke) (name "exhaust smoke")
    (system exhaust) (kind look) (engine running) (minutes 3)
    (ask "What colour is the smoke when it runs?")
    (results none white blue black)
    (labels "none after the first puff" "white or grey-white" "blue" "black, sooty")
    (means
      "Burning cleanly, or it does not run."
      "Oil burning off hot metal, or water vapour when cold. Not coolant: there is none."
      "Oil gets into the cylinder (two-stroke: rich in oil)."
      "Too much fuel or too little air.")
    (anyway 0.04 0.05 0.04)
    (steps
      "Outdoors, clear of the outlet. Look at the start, at idle and when the throttle snaps."
      "A little blue is normal on a two-stroke."
      "If it does not run, leave this check out.")
    (mistakes
      "Calling white smoke a blown gasket as on a car: there is no water in it."
      "Calling steam on a cold morning smoke.")
    (cautions carbon-monoxide hot-parts moving-parts)
    (also-called "smoke colour" "smokes")
    (basis common-practice))
  (check (id smoke-when) (name "when it smokes")
    (system exhaust) (kind look) (engine running) (minutes 5)
    (ask "When does it smoke?")
    (results not at-start on-overrun under-load)
    (labels
      "not, or only a puff"
      "a cloud at the start, then less"
      "when the throttle shuts"
      "under load and at full speed")
    (means
      "Nothing in it."
      "Oil had run in while it stood: guides, tipping, overfill."
      "Drawn past guides, or breather."
      "Past the rings and bore.")
    (anyway 0.05 0.02 0.03)
    (needs four-stroke)
    (steps
      "Warm it, work it hard a minute, let it down sharply, idle, open it again."
      "Watch the outlet against a dark ground.")
    (mistakes "Judging only the first ten seconds.")
    (cautions carbon-monoxide hot-parts moving-parts noise-hearing)
    (basis published) (source tm-5-4210-230-14p-1) (place "p. 876, blue smoke rows"))
  (check (id smoke-after-ten-minutes) (name "smoke after ten minutes")
    (system exhaust) (kind look) (engine running) (minutes 12)
    (ask "Is the smoke gone after ten minutes of running?")
    (results gone still-smokes)
    (labels "gone or nearly" "still smokes")
    (means
      "Oil that had run in has burnt off: nothing is broken."
      "Oil keeps coming, or the fuel is too rich.")
    (anyway 0.04)
    (steps
      "Level and oil quantity right first."
      "Outdoors, half to full speed for ten minutes; look again.")
    (mistakes "Stripping an engine that only had to burn off tipped oil.")
    (cautions carbon-monoxide hot-parts noise-hearing)
    (basis common-practice)))
