; Checks on carburettor metering: prime, choke effect, jets, passages, screws, throttle.
; To add a line: copy a fact, give it a new id, keep results weaker before stronger.
; check with: pullcord vet

(deffacts carburettor-shared-checks "carburettor: checks that many faults share"
  (check (id prime-test) (name "prime test") (system fuel)
    (ask "With a few drops of fresh petrol in the throat, does it start?") (kind try)
    (results starts-and-stays fires-then-dies nothing)
    (labels
      "starts and keeps running"
      "fires, then dies as the prime is burnt"
      "not a cough")
    (means
      "it starts as it should, or it only wanted a richer first charge"
      "spark and compression will do; the carburettor gives no fuel"
      "not lack of fuel: look at spark and compression, or it is flooded") (anyway 0.08 0.03)
    (minutes 3) (tools "dropper or small syringe" "plug spanner")
    (steps
      "Only if a clean start as the book says has failed."
      "Outdoors. Put 5 drops (a quarter of a mL) in the throat; no more."
      "Put the filter cover back; cap the can and set it well away."
      "Plug in, lead on, people clear of the tool; pull or crank three times."
      "Wet plug already: leave this test and dry the plug first.") (off filter-element) (engine cranking)
    (cautions prime-few-drops starting-fluid no-spark-near-fuel fuel-vapour stand-clear-tool
      carbon-monoxide)
    (mistakes
      "pouring petrol in: it floods or flares"
      "priming a flooded engine and calling it no spark"
      "judging by one pull") (also-called "priming" "few drops of gas" "fuel down the throat")
    (basis published) (source tm-5-4240-501-14p)
    (place "page 77, fires briefly on fuel put in the cylinder"))
  (check (id choke-effect) (name "what the choke does while it runs") (system fuel)
    (ask "While it runs, close the choke a little: does it run better?") (kind try)
    (results no-help runs-better runs-only-choked runs-worse)
    (labels
      "no better; it falters a little"
      "runs better or stops hunting"
      "runs only with choke or primer"
      "at once much worse, black and heavy")
    (means
      "mixture is about right"
      "lean: too little fuel or too much air"
      "very lean: hardly any fuel from the jets"
      "already rich: choke, float, air filter or air bleed") (anyway 0.06 0.01 0.1) (minutes 2)
    (steps
      "Warm the engine two minutes if it will run."
      "Close the choke a quarter to a half, wait three seconds, open again."
      "No choke: press the primer gently, or half cover the throat with a flat card."
      "Note steady, faster, slower or smoke.") (engine running)
    (cautions carbon-monoxide hot-parts moving-parts noise-hearing)
    (mistakes
      "doing it on a cold engine, which always likes choke"
      "fingers near the throat: it can spit flame")
    (also-called "choke test" "on choke it smooths out" "half choke")
    (basis common-practice)))

(deffacts carburettor-metering-checks "jets, passages, vents and screws"
  (check (id main-jet-look) (name "main jet held to the light") (system fuel)
    (ask "Bowl off: is the main jet a clean round hole against the light?") (kind look)
    (results clear blocked)
    (labels "clear: a clean round hole" "shut, narrowed or crusted")
    (means
      "the jet itself is not it; look at tube and passages"
      "main jet starves it") (anyway 0.004) (minutes 6)
    (tools "spanner for the bowl bolt" "jet driver that fits" "lamp" "magnifier")
    (steps
      "Fuel off, bowl off, catch the petrol."
      "Look where the jet is: in the bowl bolt, or up the centre post."
      "A jet with a slot comes out with a driver that fills the slot."
      "A jet with no slot is not meant to come out: look up through it."
      "Green or brown crust counts as blocked.") (off bowl) (needs float-bowl) (engine stopped)
    (destroys "The bowl gasket may not seal again.")
    (cautions fuel-vapour no-spark-near-fuel waste-fuel)
    (mistakes
      "not finding the jet in a hollow bowl bolt, cross holes too"
      "tearing the slot with a driver that does not fit"
      "poking with wire: the hole is then a bigger one")
    (also-called "jet" "main nozzle" "look through the jet")
    (basis common-practice))
  (check (id jet-number-look) (name "number on the jet against the parts list") (system fuel)
    (ask "Is the number on the main jet the one for this engine and height?") (kind look)
    (results right wrong)
    (labels "the listed jet" "another size, or drilled")
    (means
      "jet size is not it"
      "metering is out at all speeds: a wrong jet") (anyway 0.004) (minutes 5)
    (tools "magnifier" "parts list of the engine")
    (steps
      "Take out the jet and read the number on its face."
      "Compare with the parts list for this engine number and height above sea."
      "No number and a bright rough bore: somebody has drilled it.") (off bowl) (needs float-bowl)
    (engine stopped) (cautions fuel-vapour no-spark-near-fuel)
    (mistakes
      "comparing with another carburettor that looks alike"
      "taking a pattern part carburettor for the listed one")
    (basis common-practice))
  (check (id emulsion-and-bleeds) (name "emulsion tube and air bleeds") (system fuel)
    (ask "Are all cross holes of the emulsion tube and both air bleeds open?") (kind look)
    (results clear blocked)
    (labels "all holes open" "some holes or a bleed shut")
    (means
      "tube and bleeds are not it"
      "main mixture wrong with load and speed: rich if a bleed is shut") (anyway 0.005) (minutes 8)
    (tools "lamp" "driver" "carburettor cleaner with straw" "goggles")
    (steps
      "Main jet out, then tap the tube down out of the post."
      "Hold the tube to the light; count the cross holes, all must show."
      "Find the air bleeds in the mouth of the carburettor, behind the filter."
      "Squirt cleaner in each bleed: it must come out in the centre post.") (off carburettor bowl)
    (needs float-bowl) (engine stopped)
    (cautions fuel-vapour no-spark-near-fuel eye-protection gloves-solvent)
    (mistakes
      "leaving the tube in because it is stuck: soak, do not lever"
      "spraying without goggles: it comes straight back") (also-called "nozzle tube" "air jet")
    (basis common-practice))
  (check (id idle-passages) (name "idle and transfer passages") (system fuel)
    (ask "Squirted from end to end, does every idle passage pass cleaner?") (kind try)
    (results clear blocked)
    (labels "cleaner comes out of every hole" "a hole stays dry")
    (means
      "idle circuit is not it"
      "idle circuit blocked: hunts light, dies off load, hard cold start") (anyway 0.008)
    (minutes 8) (tools "carburettor cleaner with straw" "lamp" "goggles")
    (steps
      "Count the small holes in the bore by the throttle plate: one idle, two or three transfer."
      "Take out the pilot jet or idle screw, counting its turns in first."
      "Squirt in at the jet seat: look for a jet from every hole."
      "Follow with air at low pressure; shut one hole by finger to force the next.")
    (off carburettor) (engine stopped)
    (destroys "A sealing cap over an idle screw; leave sealed ones alone.")
    (cautions fuel-vapour no-spark-near-fuel eye-protection gloves-solvent compressed-air
      emission-sealed-screws)
    (mistakes
      "judging by one hole: the furthest is the one that blocks"
      "wire or drill in a passage"
      "blowing air with diaphragms or rubber still fitted")
    (also-called "pilot jet" "slow jet" "transfer holes")
    (basis common-practice))
  (check (id bowl-vent) (name "bowl vent") (system fuel)
    (ask "Can you blow through the bowl vent?") (kind look) (results clear blocked)
    (labels "open" "shut by dirt, insects or a gasket")
    (means
      "the bowl breathes"
      "bowl cannot breathe: floods or starves by turns") (anyway 0.002) (minutes 5)
    (tools "cleaner with straw" "lamp")
    (steps
      "Find the vent: a hole in the mouth, or a spigot with a hose."
      "Squirt cleaner in: it must show in the bowl."
      "See that the air-box gasket does not cover the hole.") (off air-box bowl)
    (needs float-bowl) (engine stopped) (cautions fuel-vapour no-spark-near-fuel eye-protection
      gloves-solvent)
    (mistakes
      "taking the idle air bleed for the vent"
      "forgetting a vent hose folded under the shroud")
    (basis common-practice))
  (check (id mixture-screw-turns) (name "turns of the mixture screws from shut") (system fuel)
    (ask "How many turns is each screw open from lightly seated?") (kind measure)
    (results near-book far-off)
    (labels "near the book setting" "far in or far out")
    (means
      "screws are about right; look elsewhere"
      "somebody has turned them: set by the book and see") (anyway 0.03) (minutes 4)
    (tools "small driver or the right splined tool")
    (steps
      "Sealed or capped screw: stop, write capped, and leave it."
      "Mark where it stands, turn in and count until it just seats."
      "No force: the needle point grooves at once."
      "Put it back to the count you found; write the count down.") (needs mixture-screws)
    (engine stopped) (quantity angle) (unit "turn") (tolerance 0.125) (possible 0 12)
    (cautions emission-sealed-screws)
    (mistakes
      "screwing the needle hard into its seat"
      "mixing up low and high screw"
      "setting screws to hide a dirty filter or an air leak")
    (also-called "carb adjustment" "needle setting" "L and H screws")
    (basis common-practice))
  (bands (id mixture-turns-two-stroke) (check mixture-screw-turns) (needs two-stroke)
    (results far-off near-book far-off) (limits 0.75 2.0) (unit "turn")
    (note "About 1 to 1.5 turns out is the usual start; the book goes first.")
    (basis common-practice))
  (bands (id mixture-turns-any) (check mixture-screw-turns) (results far-off near-book far-off)
    (limits 0.5 3.0) (unit "turn")
    (note "Pilot screws of four-strokes stand 1 to 2.5 turns out; the book goes first.")
    (basis common-practice))
  (check (id mixture-needle-look) (name "point of the mixture needle") (system fuel)
    (ask "Is the needle point true, and its O-ring or spring there?") (kind look)
    (results true grooved-or-bent)
    (labels
      "smooth taper, straight"
      "grooved, bent, broken off, ring or spring lost")
    (means
      "needle is sound"
      "it cannot meter; the seat may be spread too") (anyway 0.005) (minutes 5)
    (tools "small driver" "magnifier")
    (steps
      "Count turns to the seat, then screw the needle out."
      "Look along the taper under the glass; roll it on glass."
      "Look for its spring, washer and O-ring."
      "Look into the seat for a broken point.") (needs mixture-screws) (engine stopped)
    (cautions emission-sealed-screws fuel-vapour no-spark-near-fuel)
    (mistakes
      "not seeing a point left in the seat"
      "putting back without its O-ring: it sucks air")
    (basis common-practice))
  (check (id throttle-shaft-play) (name "play of the throttle shaft") (system fuel)
    (ask "Does the throttle shaft rock up and down in its body?") (kind look)
    (results tight loose)
    (labels
      "turns freely, no rock"
      "rocks clearly; wet or black round the shaft")
    (means
      "shaft does not leak air"
      "air gets in past the shaft: idle wanders") (anyway 0.015) (minutes 3) (tools "lamp")
    (steps
      "Engine stopped, throttle half open."
      "Take the lever and rock it across the shaft, not round it."
      "Play that can be seen is too much."
      "In doubt: running, a drop of oil on the shaft end changes the idle.") (off air-box)
    (engine stopped) (cautions hot-parts moving-parts carbon-monoxide)
    (mistakes
      "taking end float for wear"
      "spraying cleaner at a hot engine") (also-called "butterfly shaft worn")
    (basis common-practice))
  (check (id throttle-plate-travel) (name "throttle plate from stop to stop") (system fuel)
    (ask "Worked by hand, does the throttle plate open fully and shut to its stop?") (kind look)
    (results full does-not-open does-not-close)
    (labels
      "shut to stop, open to flat"
      "does not come fully open"
      "hangs open, does not shut")
    (means
      "throttle plate and link are free"
      "linkage off, cable short or dirt: no full speed"
      "sticks or is held: races, or spits on shutting off") (anyway 0.004 0.004) (minutes 3)
    (tools "lamp")
    (steps
      "Engine stopped, filter off, look down the throat."
      "Work the control end to end and watch the plate, not the lever."
      "Unhook the link and work the plate alone: it falls free."
      "Find what holds it: link, spring, gum, cable, bent lever.") (off filter-element) (engine stopped)
    (cautions overspeed)
    (mistakes
      "looking at the lever only: the plate can slip on its shaft"
      "testing with the engine running: it may race") (also-called "butterfly" "carb linkage")
    (basis common-practice))
  (check (id throttle-plate-look) (name "throttle plate on its shaft") (system fuel)
    (ask "Is the throttle plate tight on its shaft and even all round when shut?") (kind look)
    (results tight loose-or-skewed)
    (labels
      "screw tight, even light all round"
      "screw loose or gone, plate crooked")
    (means
      "plate is sound"
      "plate shifts: idle never the same twice; screw may go into the engine") (anyway 0.002)
    (minutes 4) (tools "small driver" "lamp")
    (steps
      "Carburettor off, hold it to the light with the plate shut."
      "An even thin ring of light, or none, is right."
      "Try the plate screw: it must not move.") (off carburettor) (engine stopped)
    (cautions fuel-vapour no-spark-near-fuel)
    (mistakes "putting in an unstaked screw: it ends in the cylinder")
    (basis common-practice))
  (check (id carburettor-icing-signs) (name "frost on the carburettor") (system fuel)
    (ask "Stopped just now: is there frost or heavy wet on the carburettor body?") (kind look)
    (results none frost)
    (labels "dry or only cool" "frost or running wet round the throttle")
    (means "no icing" "ice in the throttle bore; it melts in minutes") (anyway 0.004) (minutes 2)
    (tools "lamp")
    (steps
      "Look within a minute of the stop."
      "Feel the body at the throttle: icy or wet, and look inside for rime."
      "Wait five to ten minutes: it starts again as if nothing was wrong.") (off filter-element)
    (engine hot) (cautions hot-parts carbon-monoxide)
    (mistakes
      "looking when the ice has melted"
      "taking a flooded throat for ice water")
    (basis common-practice)))

(deffacts carburettor-diaphragm-checks "diaphragm carburettors"
  (check (id diaphragm-look) (name "metering diaphragm") (system fuel)
    (ask "Is the metering diaphragm soft and whole?") (kind look) (results supple stiff-or-torn)
    (labels "soft as cloth, flat, whole" "stiff, wrinkled, holed or torn")
    (means
      "diaphragm is sound"
      "it cannot lift the lever: starves warm, or floods if torn at the button") (anyway 0.03)
    (minutes 5) (tools "small driver" "lamp")
    (steps
      "Clean round the cover first: one grain is enough."
      "Lift cover, gasket and diaphragm; note the order."
      "Hold to the light for pinholes, flex it: it must not crackle."
      "The button in the middle is tight and touches the lever.")
    (off carburettor diaphragm-cover) (needs diaphragm) (engine stopped)
    (destroys "The diaphragm gasket may tear.") (cautions fuel-vapour no-spark-near-fuel)
    (mistakes
      "swapping diaphragm and gasket order"
      "cleaner on a diaphragm you mean to keep"
      "mistaking the pump flap for it") (also-called "membrane" "carb kit")
    (basis common-practice))
  (check (id metering-lever-height) (name "metering lever height") (system fuel)
    (ask "With a straightedge over the chamber, where is the lever?") (kind look)
    (results flush low high)
    (labels
      "as the book: mostly flush with the floor or body"
      "below: too low"
      "above: too high")
    (means
      "lever is set right"
      "opens late: lean, slow to draw, dies on opening up"
      "opens early: rich, floods, loads up at idle") (anyway 0.03 0.03) (minutes 4)
    (tools "straightedge or the gauge of the maker" "lamp")
    (steps
      "Needle, spring and lever in place and the pin screw tight."
      "Lay the edge across the chamber as the book shows."
      "Some are set to the chamber floor, some to the body: know which."
      "Lever must spring back freely.") (off carburettor diaphragm-cover) (needs diaphragm)
    (engine stopped) (cautions fuel-vapour no-spark-near-fuel)
    (mistakes
      "setting all makes flush: some stand proud or below by book"
      "pressing the lever down on the needle to bend it")
    (basis common-practice))
  (check (id inlet-needle-pop-off) (name "pop-off pressure of the inlet needle") (system fuel)
    (ask "At what pressure does the inlet needle open, wetted with fuel?") (kind measure)
    (results holds leaks opens-late)
    (labels
      "opens within limits and holds below"
      "does not hold: leaks down"
      "opens only far too high or not at all")
    (means
      "needle, seat and spring are sound"
      "needle leaks: floods standing, rich"
      "needle stuck or spring wrong: starves") (anyway 0.03 0.03) (minutes 8)
    (tools "hand pump with gauge, 0-50 psi" "hose to the inlet")
    (steps
      "Fuel line off, hand pump on the inlet nipple; wet the needle."
      "Pump slowly, watch for the drop where it opens: that is the reading."
      "See where it settles and holds for 30 s."
      "Will not build up at all: read as 0 psi. Will not open by 40 psi: stop."
      "In water, bubbles show where it leaks.") (off carburettor) (needs diaphragm)
    (engine stopped) (quantity pressure) (unit "psi") (tolerance 1.5) (possible 0 100)
    (cautions pressure-test-low fuel-vapour no-spark-near-fuel eye-protection)
    (mistakes
      "testing dry: a dry needle reads wrong"
      "pumping on past 40 psi"
      "testing with the pump diaphragm leaking at the cover")
    (also-called "pop off" "carb pressure test" "needle pressure test")
    (basis common-practice))
  (bands (id pop-off-any) (check inlet-needle-pop-off) (results leaks holds opens-late)
    (limits 7 35) (unit "psi")
    (note "Most open between 10 and 30 psi; the book for the carburettor goes first.")
    (basis common-practice))
  (check (id nozzle-valve-test) (name "check valve of the main nozzle") (system fuel)
    (ask "Blown and sucked on, does the nozzle valve pass fuel one way only?") (kind try)
    (results one-way leaks-or-stuck)
    (labels
      "opens one way, shuts the other"
      "passes both ways, or neither")
    (means
      "main nozzle valve is sound"
      "stuck shut: no full speed; leaking: idle air leaks back, will not idle") (anyway 0.02)
    (minutes 6) (tools "short clean hose" "lamp")
    (steps
      "Metering cover and diaphragm off."
      "Hose on the nozzle hole in the metering chamber: blow lightly, air comes out in the throat."
      "Suck lightly: it must shut at once."
      "Ball type: shake, it rattles. Disc type: look for gum.") (off carburettor diaphragm-cover)
    (needs diaphragm) (engine stopped) (cautions fuel-vapour no-spark-near-fuel)
    (mistakes
      "high pressure: it blows the valve out of its bore"
      "sucking up petrol: use clean, dry hose and a dry carburettor")
    (basis common-practice))
  (check (id welch-plug-look) (name "welch plugs of the carburettor") (system fuel)
    (ask "Are the welch plugs tight, dry and flat at the rim?") (kind look)
    (results sound loose-or-wet)
    (labels "tight and dry" "wet rim, loose, dented through")
    (means
      "plugs are tight"
      "leaks: idle mixture cannot be set, loads up or leans out") (anyway 0.01) (minutes 5)
    (tools "lamp" "magnifier")
    (steps
      "Diaphragm off; find the round tin plugs over the idle pocket."
      "Look for wet rim, gap or a dent from a punch."
      "A drop of petrol on the rim with the pocket blown from the bore: bubbles show it.")
    (off carburettor diaphragm-cover) (needs diaphragm) (engine stopped)
    (destroys "A plug once out is scrap.") (cautions fuel-vapour no-spark-near-fuel)
    (mistakes "prising out a sound plug to look under it")
    (basis common-practice))
  (check (id carburettor-screen-look) (name "inlet screen inside the carburettor") (system fuel)
    (ask "Pump cover off: is the small inlet screen clean?") (kind look) (results clean clogged)
    (labels "clean" "gummed or full of dirt")
    (means
      "screen passes fuel"
      "screen chokes the flow: dies at full throttle") (anyway 0.03) (minutes 5)
    (tools "small driver" "magnifier" "soft brush")
    (steps
      "Clean outside, take off the pump cover (one screw)."
      "Lift the pump flap, look at the fine screen in its well."
      "Brown film is gum: hold it to the light, it must be open.") (off carburettor)
    (needs diaphragm) (engine stopped) (cautions fuel-vapour no-spark-near-fuel)
    (mistakes
      "pushing the screen through with a pick"
      "losing the order of gasket and flap")
    (basis common-practice)))
