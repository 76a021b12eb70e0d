; Checks of the pull starter and of how the engine turns on the rope. To add one: copy a
; (check ...), give every result after the first an anyway. Check with: pullcord vet

(deffacts recoil-checks "starting: recoil"
  (check (id rope-pull-feel) (name "feel of the rope") (system starting) (kind try)
    (ask "Switch off, tool out of drive: how does a slow pull on the rope feel?")
    (results normal hard free locked)
    (labels "normal, rises and falls" "hard, jerky or kicks back" "free, nothing turns"
      "locked")
    (means "Starter and engine turn as they should."
      "Timing, brake, dragging tool, oil or fuel above the piston, starter binding."
      "Pawls do not take hold, or no compression."
      "Starter jammed, tool jammed or engine seized: take the starter off and see.")
    (anyway 0.03 0.01 0.004) (minutes 1)
    (steps "Switch off, plug lead off and held clear, tool out of drive, bar held."
      "Pull slowly through two compressions; then once briskly."
      "Let the rope back by hand, do not let it fly.")
    (needs recoil) (engine stopped) (cautions plug-lead-off crank-kickback stand-clear-tool)
    (mistakes "Bar not held: the flywheel brake makes any mower pull hard."
      "Yanking a locked rope: the rope or the cup breaks.")
    (also-called "pull feel" "hard to pull" "rope feel") (basis common-practice))
  (check (id rope-and-spring-look) (name "rope, spring and how it winds back") (system starting)
    (kind look)
    (ask "Is the rope sound, and does it run out and wind back by itself?")
    (results sound frayed-or-slow broken) (labels "sound, winds back smartly"
      "frayed, rubs, or slow to go back" "rope broken or does not go back at all")
    (means "Rope and spring are good." "Rope on its way out, spring tired, dirt or dry parts."
      "Rope or spring broken, or the spring has unhooked.")
    (anyway 0.06 0.01) (minutes 3) (tools "light")
    (steps "Pull right out, slowly; look at every hand's breadth and at the eyelet."
      "Feed it back: it should draw the handle home with a little to spare."
      "At full pull the pulley should still have part of a turn in hand.")
    (needs recoil) (engine stopped) (cautions plug-lead-off recoil-spring eye-protection)
    (mistakes "Testing with the engine side of the trouble still on: a hard engine tears ropes.")
    (also-called "starter rope" "pull cord" "starter spring") (basis published)
    (source tm-10-4320-309-14) (place "Table 4-1, items 1 and 2"))
  (check (id starter-rope-look) (name "the rope itself") (system starting) (kind look)
    (ask "Is the rope itself whole from handle to pulley knot?")
    (results whole frayed-or-parted) (labels "whole" "frayed, parted or off its knot")
    (means "Rope is good: slow or dead return is the spring or dirt."
      "New rope; then see whether the spring still draws.")
    (anyway 0.06) (minutes 2) (tools "light")
    (steps "Draw it right out and look at all of it, most at the handle and the eyelet."
      "Rope stays in and the handle is off: look for the end in the housing.")
    (needs recoil) (engine stopped) (cautions plug-lead-off recoil-spring)
    (mistakes "Missing the inner end: it parts at the pulley knot.")
    (also-called "rope frayed" "cord broken") (basis common-practice))
  (check (id recoil-off-turn) (name "starter off, flywheel by hand") (system starting) (kind try)
    (ask "Starter housing off: does the flywheel turn by hand, and do the pawls come out?")
    (results turns still-locked pawls-not-catching)
    (labels "turns, pawls catch" "still stiff or locked" "pawls do not catch")
    (means "Engine turns; if the rope was stiff the starter is the trouble."
      "Brake, tool or engine holds it, not the starter."
      "Pawls, their springs or the cup are worn, dry or broken.")
    (anyway 0.005 0.005) (minutes 8) (tools "screwdriver or socket" "gloves")
    (steps "Lead off the plug. Starter housing off."
      "Turn the flywheel by its rim, in running direction, through compression."
      "Pull the rope with the starter in the hand: pawls must come out and go back."
      "Look at pawl tips, the cup they catch, springs and the centre screw.")
    (off recoil-starter) (needs recoil) (engine stopped)
    (cautions plug-lead-off blade-edges recoil-spring stand-clear-tool)
    (mistakes "Undoing the centre screw with the spring still wound."
      "Turning by the blade.")
    (also-called "starter off" "pawls" "starter dogs") (basis published)
    (source tm-10-4320-309-14) (place "Table 4-1, item 3"))
  (check (id flywheel-brake-look) (name "flywheel brake clear of the flywheel") (system starting)
    (kind look)
    (ask "Bar held: is the brake pad clear of the flywheel and the stop contact open?")
    (results clear weak drags)
    (labels "clear, contact open, comes back hard" "pad thin or glazed, or comes back weakly"
      "pad drags or contact stays shut")
    (means "Brake is off when it should be and bites when let go."
      "Pad worn, oily, or spring tired: the blade runs on."
      "Cable stretched or bracket bent: hard to pull, slow, maybe no spark as well.")
    (anyway 0.02 0.008) (minutes 8) (tools "light" "screwdriver")
    (steps "Housing off. A helper squeezes the bar home."
      "Look for daylight between pad and flywheel, and at the little stop contact."
      "Let go: the pad must come back hard.")
    (off blower-housing) (needs flywheel-brake) (engine stopped)
    (cautions plug-lead-off blade-brake spring-tension-governor)
    (mistakes "Tying the brake off." "Slackening the cable so that it no longer brakes.")
    (also-called "blade brake" "engine brake") (basis common-practice))
)
