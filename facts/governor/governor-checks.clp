; Checks of governor, throttle, speed and the stop switch, with the bands for speeds.
; Add a check as a whole fact, and bands if it is measured; check with: pullcord vet

(deffacts governor-checks "governor, throttle and stop switch"
  (check (id governor-linkage-look) (name "governor linkage and spring hole") (system governor)
    (kind look) (engine stopped) (minutes 3)
    (ask "Are rods, springs and arm in place and free, and the spring in its own hole?")
    (results right off-or-binding spring-in-wrong-hole)
    (labels "in place, free, right hole" "something off, bent or binding"
      "spring in the wrong hole")
    (means "The linkage can do its work."
      "The governor cannot move the throttle freely: hunting or wrong speed."
      "Speed and steadiness are off by the hole: small moves do much.") (anyway 0.01 0.004)
    (needs governor-flyweight) (tools "torch" "the maker's picture of the linkage")
    (steps
      "Work arm and throttle by hand over the whole travel and let go: they must fall back alone."
      "Look for worn or bright holes: the right hole is the worn one."
      "Compare with the maker's drawing, not with memory.") (cautions spring-tension-governor)
    (mistakes "Bending the spring or rod to make it fit."
      "Moving the spring without marking the hole it came from.")
    (also-called "governor spring" "linkage") (basis common-practice))
  (check (id governor-spring-look) (name "governor spring itself") (system governor) (kind look)
    (engine stopped) (minutes 2)
    (ask "Is the governor spring hooked at both ends, with its coils closed?")
    (results sound stretched-or-off)
    (labels "hooked, coils even" "stretched, bent or off its post")
    (means "The spring pulls as it should."
      "It pulls too little or not at all: the engine stays slow.") (anyway 0.005)
    (needs governor-flyweight)
    (steps "Lever to fast: the spring must tighten and pull the throttle open, engine stopped."
      "Compare the coils with a new one if there is doubt.") (cautions spring-tension-governor)
    (mistakes "Taking the thin anti-surge spring round the rod for the governor spring.")
    (basis common-practice))
  (check (id governor-arm-set) (name "governor arm on its shaft") (system governor) (kind try)
    (engine stopped) (minutes 4)
    (ask
      "Throttle held wide open: is the governor shaft at the end of its turn, and the arm tight?")
    (results right slipped) (labels "at the end, and tight" "shaft turns on, or arm loose")
    (means "The static setting is right." "The arm has slipped: it governs too late or not at all.")
    (anyway 0.004) (needs governor-flyweight) (tools "spanner" "screwdriver or pliers")
    (steps
      "Engine stopped: move the lever so that the throttle stands wide open and hold it there."
      "Turn the shaft end the way the open throttle turns it: there should be no travel left."
      "Pull at the arm: it must not turn on its shaft.")
    (cautions spring-tension-governor overspeed)
    (mistakes
      "Turning the shaft the wrong way: the arm then holds the throttle open and it overspeeds."
      "Slackening the clamp before the look: the proof is gone.")
    (also-called "static governor adjustment") (basis common-practice))
  (check (id governor-pushes-back) (name "does the governor push back") (system governor)
    (kind try) (engine running) (minutes 3)
    (ask "At medium speed, does the governor resist when you open the throttle a little by hand?")
    (results pushes-back does-not) (labels "it pushes back" "no resistance")
    (means "Weights, cup and shaft inside are at work."
      "Gear or weights inside have failed, or the arm is not on its shaft.") (anyway 0.005)
    (needs governor-flyweight)
    (steps "Start with one hand on the stop switch and the throttle arm held near idle."
      "Open it a very little with a finger and feel; let go before the speed climbs.")
    (cautions overspeed moving-parts carbon-monoxide noise-hearing hot-parts)
    (mistakes "Opening it wide to feel more: a failed governor lets it overspeed at once."
      "Trying it with the blade or tool engaged.") (basis common-practice))
  (check (id speed-with-throttle-held) (name "throttle held still by hand") (system governor)
    (kind try) (engine running) (minutes 2)
    (ask "It hunts: does it steady when the throttle is held still by hand?")
    (results no-change steadies) (labels "steady anyway, or hunts on" "it steadies")
    (means "The mixture or spark swings it, or nothing does."
      "The governor or its linkage swings it; a lean engine may half steady too.") (anyway 0.03)
    (needs governor-flyweight)
    (steps "At about half speed hold the throttle arm still with two fingers, not wide open."
      "Listen for ten seconds; then try a little choke: if that steadies it, it is lean.")
    (cautions overspeed moving-parts carbon-monoxide hot-parts)
    (mistakes "Holding it open too far: nothing governs it now.") (basis common-practice))
  (check (id air-vane-free) (name "air vane of the governor") (system governor) (kind look)
    (engine stopped) (minutes 3)
    (ask "Does the air vane swing freely and close the throttle when pushed?")
    (results free stuck-or-blocked) (labels "free and whole" "stuck, bent or packed with chaff")
    (means "Vane and link can do their work." "It cannot close the throttle, or not in time.")
    (anyway 0.02) (needs governor-air-vane) (tools "torch" "soft brush")
    (steps
      "Push the vane with a finger the way the fan blows: the throttle must close and spring back."
      "Look for grass and nests behind the shroud.")
    (cautions plug-lead-off spring-tension-governor)
    (mistakes "Blowing at it with an air gun: the vane bends.") (basis common-practice))
  (check (id idle-speed) (name "idle speed") (system governor) (kind measure) (engine hot)
    (minutes 3) (ask "What is the idle speed, warm, throttle lever at its slow stop?")
    (results right low high) (labels "as it should be" "too low" "too high")
    (means "Stop screw and idle mixture are near enough."
      "It stalls; stop screw, idle jet, drag or weak engine."
      "It creeps and bangs; stop screw, cable, air leak.") (anyway 0.03 0.03) (quantity speed)
    (unit "rpm") (tolerance 60) (possible 0 8000) (tools "tachometer")
    (steps "Warm it up for five minutes, load off, choke open."
      "Lever fully back, cable slack; hold the throttle on its stop if a governor opens it.")
    (cautions carbon-monoxide moving-parts hot-parts noise-hearing)
    (mistakes "Reading it with the cable holding the throttle off its stop."
      "Setting a two-stroke tachometer to four-stroke: the reading is half or double.")
    (also-called "tickover" "slow running speed") (basis common-practice))
  (bands (id idle-speed-four-stroke) (check idle-speed) (needs four-stroke)
    (results low right high) (limits 1200 2100) (unit "rpm")
    (note "Common governed engines: 1600 to 2000; old slow ones 1000 to 1200 by the maker.")
    (basis common-practice))
  (bands (id idle-speed-two-stroke) (check idle-speed) (needs two-stroke) (results low right high)
    (limits 2300 3300) (unit "rpm")
    (note "Hand-held machines mostly 2500 to 3100, below where the clutch takes.")
    (basis common-practice))
  (bands (id idle-speed-saw) (check idle-speed) (needs two-stroke cutting-chain)
    (results low right high) (limits 2500 3200) (unit "rpm")
    (note "Mostly 2700 to 3000; the chain must stand still.") (basis common-practice))
  (bands (id idle-speed-any) (check idle-speed) (results low right high) (limits 1200 3200)
    (unit "rpm") (note "Last resort: says little until you know the engine.") (basis estimate))
  (check (id top-speed) (name "top speed without load") (system governor) (kind measure)
    (engine hot) (minutes 3) (ask "What is the top speed, warm, load off, lever at its fast stop?")
    (results right low high) (labels "as it should be" "too low" "too high")
    (means "Governor and throttle give the speed they should."
      "Governor set low, throttle not opening, spring weak, or no power."
      "Governor set high, binding or failed: bring it down before anything else.")
    (anyway 0.03 0.02) (quantity speed) (unit "rpm") (tolerance 50) (possible 0 20000) (tools "tachometer")
    (steps
      "Warm it up, load off; open the lever slowly and watch: shut it if it goes past the limit."
      "Read when it has settled, for ten seconds.")
    (cautions overspeed carbon-monoxide moving-parts hot-parts noise-hearing stand-clear-tool)
    (mistakes "Reading it with the blade or pump loading the engine."
      "Going to full speed at once on an engine that is said to race.")
    (also-called "governed speed" "high idle" "full speed no load") (basis common-practice))
  (bands (id top-speed-governed) (check top-speed) (needs governor-flyweight)
    (results low right high) (limits 2900 3800) (unit "rpm")
    (note "Commonly 3600 and never above 3750; some are set to 3000 to 3200 by the maker.")
    (basis common-practice))
  (bands (id top-speed-mower) (check top-speed) (needs governor-flyweight blade-on-crankshaft)
    (results low right high) (limits 2600 3400) (unit "rpm")
    (note "Blade tip speed sets the limit: mostly 2800 to 3200 by the length of the blade.")
    (basis common-practice))
  (bands (id top-speed-vane) (check top-speed) (needs governor-air-vane) (results low right high)
    (limits 2600 3500) (unit "rpm") (note "Mostly mowers at 2800 to 3200.") (basis estimate))
  (bands (id top-speed-generator) (check top-speed) (needs governor-flyweight generator-end)
    (results low right high) (limits 2950 3900) (unit "rpm")
    (note "Two-pole, no load: about 3100 for 50 Hz, 3700 for 60 Hz. Judge by the plate.")
    (basis common-practice))
  (bands (id top-speed-saw) (check top-speed) (needs no-governor cutting-chain)
    (results low right high) (limits 10000 14000) (unit "rpm")
    (note "By the maker; a lean two-stroke races and sounds fine until it seizes.")
    (basis estimate))
  (bands (id top-speed-cutting-head) (check top-speed) (needs no-governor cutting-head)
    (results low right high) (limits 7000 12500) (unit "rpm")
    (note "By the maker; with line at its full length, or the tool on.") (basis estimate))
  (bands (id top-speed-fan) (check top-speed) (needs no-governor impeller-fan)
    (results low right high) (limits 6000 8500) (unit "rpm")
    (note "A blower is always loaded by its fan; more than the book: intake or housing blocked.")
    (basis estimate))
  (bands (id top-speed-any) (check top-speed) (results low right high) (limits 2600 12500)
    (unit "rpm") (note "Only for an engine of no known kind: anything from a pump to a saw.") (basis estimate))
  (check (id speed-screw-look) (name "speed limit screw") (system governor) (kind look)
    (engine stopped) (minutes 2)
    (ask "Is the governed-speed screw or tab still as the maker sealed or left it?")
    (results as-left moved) (labels "seal, paint or dust untouched" "turned or bent")
    (means "Nobody has altered the speed." "Somebody set the speed by ear: measure it.")
    (anyway 0.02) (steps "Look for paint, a cap, rust or dust across the thread.")
    (cautions overspeed) (mistakes "Turning it to see whether it moves.") (basis common-practice))
  (check (id speed-steady) (name "does the speed hold steady") (system governor) (kind listen)
    (engine running) (minutes 2) (ask "At full speed without load, is the speed steady?")
    (results steady hunts) (labels "steady" "up and down by itself")
    (means "Mixture and governor agree."
      "Lean mixture first; then governor linkage; seldom ignition.") (anyway 0.04)
    (tools "tachometer, if at hand")
    (steps "Warm, choke open, load off, half a minute of listening."
      "Close the choke a little: if it steadies, it is lean, not the governor.")
    (cautions carbon-monoxide noise-hearing moving-parts hot-parts)
    (mistakes "Judging it cold or with the choke part shut.") (also-called "surging" "hunting")
    (basis common-practice))
  (check (id throttle-cable) (name "throttle cable travel") (system governor) (kind look)
    (engine stopped) (minutes 2) (ask "Does the cable move the throttle from stop to stop?")
    (results full-travel short-or-stuck) (labels "from stop to stop" "short of a stop, or stuck")
    (means "Lever and cable do their part." "Full speed, idle, choke or stop may be out of reach.")
    (anyway 0.015)
    (steps "Engine stopped: work the lever and watch the throttle and choke at the carburettor."
      "Wire frayed, sheath slipped out of its clamp, or outer kinked?")
    (mistakes "Looking at the lever instead of at the carburettor."
      "Making up for a slipped sheath with the stop screw.")
    (also-called "bowden cable" "throttle wire") (basis common-practice))
  (check (id stop-switch-works) (name "does the stop switch stop it") (system governor) (kind try)
    (engine running) (minutes 1) (ask "Does it stop at once at the stop switch?")
    (results stops does-not-stop) (labels "stops at once" "keeps running")
    (means "Switch, wire and coil ground are whole."
      "Wire off, switch open, or the engine runs on by glowing carbon.") (anyway 0.02)
    (steps "At idle, load off, switch to stop."
      "If it runs on, shut the choke, or the tap; do not pull the plug cap by hand.")
    (cautions ignition-voltage moving-parts hot-parts carbon-monoxide)
    (mistakes "Pulling the plug lead off the running engine: shock, and the coil suffers.")
    (also-called "kill switch" "will not switch off") (basis common-practice))
  (check (id stop-switch-continuity) (name "stop switch and wire to ground") (system governor)
    (kind try) (engine stopped) (minutes 4)
    (ask "With the wire off the coil and the switch at stop: is there a path to ground?")
    (results closes stays-open) (labels "closes to ground" "stays open")
    (means "The stop circuit works when the wire is on the coil."
      "Wire broken, switch worn, or its ground bolt rusty.") (anyway 0.006)
    (tools "multimeter or lamp tester" "small screwdriver")
    (steps "Part the stop wire at its first joint; meter between wire and bare engine metal."
      "Work the switch: path at stop, none at run. Wiggle the wire.")
    (cautions kill-lead-isolate plug-lead-off)
    (mistakes "Testing with the coil still on the wire: the coil winding shows a path to ground.")
    (basis common-practice))
  (check (id idle-screw-turned) (name "idle screw turned a little") (system governor) (kind try)
    (engine running) (minutes 3) (ask "What does half a turn of the idle stop screw do?")
    (results no-change idles-now slows-now)
    (labels "nothing was wanting, or nothing changed" "in half a turn: it idles"
      "out half a turn: it slows to right")
    (means "The idle trouble lies elsewhere." "The stop was set too low (or something drags)."
      "The stop was set too high.") (anyway 0.03 0.03) (tools "screwdriver" "tachometer")
    (steps "Count the turns, so that it can go back."
      "Warm engine; quarter turns, wait after each.")
    (cautions carbon-monoxide moving-parts chain-edges hot-parts emission-sealed-screws)
    (mistakes "Turning the mixture screws instead."
      "Covering a lean idle up with more throttle: the tool then creeps.") (basis common-practice))
  (check (id shake-without-load) (name "where it shakes") (system driven) (kind try)
    (engine running) (minutes 3)
    (ask "Does the shaking stay when the tool or load is out of drive?")
    (results no-shake gone-unloaded stays)
    (labels "it does not shake" "gone with the tool out of drive"
      "stays with the tool out of drive")
    (means "Nothing to find by this." "Tool, belt or drive is out of balance, bent or loose."
      "Engine, its crankshaft or mountings.") (anyway 0.01 0.02)
    (steps "Run it through the speeds with the tool in and out of drive; feel at the handle.")
    (cautions moving-parts stand-clear-tool carbon-monoxide noise-hearing)
    (mistakes "Running on when it shakes badly: stop and look.") (basis common-practice))
)
