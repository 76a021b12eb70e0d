; What owners say is wrong. says: words customers use; the bench matches free text against
; them and asks before it believes itself. runs: does the engine run at all? anyway: how
; often an owner says it of a machine that has nothing broken (an estimate).

(deffacts complaints "what owners say"
  (complaint (id will-not-turn) (name "will not turn over") (runs no)
    (ask "Is the engine locked: rope or starter cannot turn it?")
    (near pulls-hard no-start-cold)
    (says "it is seized" "rope will not pull at all" "stuck solid" "will not turn over"
      "jammed" "locked up"
      "rope is stuck" "pull cord is stuck" "cannot pull the rope" "engine has seized"
      "froze up solid"
      "engine is locked" "cannot turn the blade by hand" "will not crank by hand"
      "cannot pull the cord at all" "nothing moves when I pull" "starter stops dead"
      "pulls a little way and stops dead" "crankshaft will not move")
    (anyway 0.002) (basis estimate))
  (complaint (id pulls-hard) (name "pulls hard or kicks back") (runs unknown) (needs recoil)
    (ask "Is it very hard to pull, or does the rope kick back?")
    (near will-not-turn hard-start-cold)
    (says "hard to pull" "kicks back" "yanks the rope out of my hand" "rope snatches"
      "hurts my arm"
      "stiff to pull" "stiff to turn over" "rope snatches back" "nearly broke my thumb"
      "heavy to pull"
      "pulls back out of my hand" "takes my fingers off"
      "needs two hands to pull" "hard to pull over" "cord snatches back out of my hand"
      "kicks like a mule" "heavy on the rope" "too hard to pull for me"
      "it is a struggle to pull the cord" "not strong enough to pull it"
      "takes a lot of strength to pull")
    (anyway 0.005) (basis estimate))
  (complaint (id pulls-free) (name "pulls free, no resistance") (runs no) (needs recoil)
    (ask "Does the rope pull with no resistance, or not engage?")
    (near no-start-cold)
    (says "pulls too easy" "no resistance" "rope just spins"
      "rope comes out and nothing happens" "rope will not go back in" "starter rope broken"
      "rope snapped" "rope just comes out" "pull cord does not grab"
      "pulls out with nothing on the end" "cord hangs out"
      "recoil does not catch" "starter does not engage"
      "rope will not retract" "rope will not wind back"
      "rope pulls easy" "pulls over too easily"
      "rope pulls easy now"
      "pulls easy since the bang"
      "no compression" "too easy to pull" "rope freewheels" "cord is slack"
      "engine does not turn when I pull the cord" "pulls out with no effort"
      "nothing on the end of the rope"
      "pull cord came off in my hand" "rope came away in my hand" "starter rope snapped")
    (anyway 0.003) (basis estimate))
  (complaint (id starter-clicks) (name "electric starter clicks or is dead") (runs no) (needs electric-start)
    (ask "Does the electric starter click, or do nothing?")
    (near will-not-turn starter-spins no-start-cold)
    (says "just clicks" "key does nothing" "starter dead"
      "clicking noise when I turn the key" "battery flat"
      "nothing when I turn the key" "all I get is a click" "totally dead when I turn the key"
      "turns over slowly on the starter"
      "nothing happens when I press the start button" "solenoid clicks but the starter does not turn"
      "starter only hums" "electric start does nothing" "dead when I turn the key"
      "starter does not turn the engine over" "press the button and nothing happens"
      "starter motor will not crank"
      "dead as a doornail" "completely dead with a new battery")
    (anyway 0.004) (basis estimate))
  (complaint (id starter-spins) (name "electric starter spins but does not turn the engine") (runs no) (needs electric-start)
    (ask "Does the starter whirr without turning the engine?")
    (near starter-clicks no-start-cold)
    (says "starter whirrs" "starter spins but engine does not" "grinding when starting"
      "starter whizzes round but the engine does not turn" "starter just spins"
      "starter motor runs on its own"
      "starter motor spins but does not engage" "starter whines and the engine does not turn"
      "starter turns but the engine stays still" "starter gear does not engage the flywheel"
      "hear the starter spinning but the engine does not crank" "starter spins freely"
      "starter buzzes on its own")
    (anyway 0.002) (basis estimate))
  (complaint (id no-start-cold) (name "will not start") (runs no)
    (ask "Does it turn over but not start from cold?")
    (near hard-start-cold starts-then-dies floods no-start-hot after-storage starter-clicks runs-on-choke-only)
    (says "will not start" "won't start" "no start" "does not fire" "dead" "not a cough"
      "cranks but will not start" "turns over but will not fire"
      "cannot get it to start" "does not catch" "turns over fine but will not catch"
      "not even a pop" "pulled it fifty times" "will not fire up"
      "would not go however often I pull" "will not go at all"
      "will not start at all" "cranks and cranks but never starts"
      "engine turns but does not fire" "refuses to start" "cannot start it" "dead, no sign of life"
      "new plug and fresh petrol and still will not start" "tried everything and it will not start"
      "will not start since it hit something" "hit the kerb and has not started since"
      "no spark" "no spark at the plug" "will not fire" "generator will not start" "one cough and that is it" "coughs once and that is all")
    (anyway 0.03) (basis estimate))
  (complaint (id hard-start-cold) (name "hard to start from cold") (runs yes)
    (ask "Does it start only after many tries?")
    (near no-start-cold starts-then-dies floods pulls-hard)
    (says "hard to start" "takes many pulls" "takes ages to start"
      "bad starter in the morning"
      "twenty pulls before it goes" "hard work to get going" "slow to start"
      "have to pull it many times" "lots of pulls to get it going" "takes a lot of pulling"
      "takes for ever to get going" "a pig to start first thing in the morning"
      "takes for ever to start from cold" "starts in the end" "needs easy start to get it going"
      "slow to start in the morning" "difficult to start" "have to crank it for ages before it starts"
      "starts after many pulls" "eventually starts" "hard to start after standing overnight")
    (anyway 0.02) (basis estimate))
  (complaint (id no-start-hot) (name "will not restart when hot") (runs dies)
    (ask "Does it refuse to restart while hot, and start again when cool?")
    (near dies-hot no-start-cold)
    (says "won't restart hot" "will not start when hot" "have to let it cool"
      "starts fine cold but not warm"
      "will not go again until it has cooled down" "starts from cold but not when hot"
      "stop for fuel and it will not start again"
      "will not start again when it is warm" "once warm it will not restart"
      "have to wait before it starts again"
      "will not start again after I stop it"
      "switched it off and it will not start again until it is cold"
      "starts first pull cold but not when hot" "once hot it will not start"
      "stop for a rest and it will not start again" "will not restart after refuelling"
      "hot start is impossible" "leave it for half an hour before it starts again")
    (anyway 0.008) (basis estimate))
  (complaint (id starts-then-dies) (name "starts, then dies") (runs dies)
    (ask "Does it start and stop again within seconds?")
    (near no-start-cold runs-on-choke-only hard-start-cold will-not-idle dies-hot)
    (says "starts then dies" "runs a few seconds" "fires up and cuts out" "starts and stops"
      "runs for a second and stalls"
      "starts and cuts straight out" "starts then conks out" "runs a couple of seconds then dies"
      "will not keep running" "will not stay running"
      "goes for five seconds and stops" "splutters then nothing" "coughs, splutters and stops"
      "stops after a second or two"
      "starts and dies straight away" "fires for a moment then dies"
      "runs for a few seconds and stops" "starts up then packs up" "starts but will not stay running"
      "catches and stops again" "starts and cuts out again")
    (anyway 0.01) (basis estimate))
  (complaint (id runs-on-choke-only) (name "runs only on choke or primer") (runs dies)
    (ask "Does it run only with the choke on or while it is primed?")
    (near starts-then-dies hunts bogs)
    (says "only runs on choke" "dies when I take the choke off"
      "runs while I press the primer" "have to keep choke on"
      "dies as soon as I push the choke in" "dies when the choke is opened"
      "runs as long as I keep pushing the bulb" "will not run without choke"
      "have to leave the choke on or it cuts out"
      "only runs with the choke on" "take the choke off and it dies" "stops when I open the choke"
      "keeps going only if I pump the primer bulb" "have to leave it on full choke"
      "runs on half choke but not on run" "needs choke to keep running" "dies off choke"
      "goes as long as the choke is on")
    (anyway 0.003) (basis estimate))
  (complaint (id floods) (name "floods") (runs unknown)
    (ask "Does it flood: petrol smell, wet plug, fuel running out of the carburettor or filter?")
    (near no-start-cold leaks-fuel smoke-black)
    (says "floods" "flooding" "smells of petrol" "plug always wet" "fuel in the air filter"
      "petrol dripping from the air cleaner"
      "spark plug is soaking wet" "floods itself" "strong smell of petrol" "swamped with petrol"
      "plug is soaking wet with petrol" "keeps flooding" "too much petrol getting in"
      "flooded with fuel" "plug comes out wet" "wet spark plug"
      "fuel pours out of the air filter"
      "petrol comes out of the exhaust")
    (anyway 0.005) (basis estimate))
  (complaint (id dies-hot) (name "dies when hot or after some minutes") (runs dies)
    (ask "Does it run well and then die after some minutes?")
    (near no-start-hot starts-then-dies dies-under-load)
    (says "dies after ten minutes" "cuts out when hot" "stops after a while"
      "runs then dies when warm" "quits after twenty minutes"
      "runs for ten minutes then dies" "cuts out after running a while"
      "runs great then dies and will not go again for half an hour" "dies once it is warm"
      "just stops after fifteen minutes" "stops after a while as if switched off"
      "runs well for half an hour then stops" "dies when it gets hot" "once warm it cuts out"
      "stops when hot and starts again when it has cooled" "runs for a while then fades and dies"
      "shuts off after ten minutes" "goes for fifteen minutes then dies" "dies when warmed up"
      "stops after an hour and starts again after a rest"
      "stops by itself and restarts after a rest")
    (anyway 0.008) (basis estimate))
  (complaint (id dies-tilted) (name "dies when tilted") (runs dies)
    (ask "Does it die on a slope or when tilted?")
    (near dies-hot dies-under-load)
    (says "dies on a slope" "cuts out when I tilt it" "stops on a bank"
      "stops when turned on its side"
      "dies if I turn it sideways" "cuts out when I tip it" "dies when I hold it on its side"
      "stops when mowing the bank"
      "cuts out on hills" "dies when I lean it over"
      "stops when I tip it up" "will not run upside down" "will not run on its side"
      "only runs when held level" "dies on the slope" "stalls when leaning over"
      "cuts out at an angle" "engine dies going across a slope")
    (anyway 0.003) (basis estimate))
  (complaint (id dies-under-load) (name "dies when put to work") (runs dies)
    (ask "Does it die as soon as it is put to work?")
    (near weak bogs dies-hot starts-then-dies)
    (says "dies when I engage the blades" "stalls when I pull the trigger"
      "dies in long grass" "stalls under load" "dies when I plug something in"
      "dies as soon as I put the blades in" "dies when I hit thick grass"
      "dies as soon as it starts to cut" "stops when I put it to work"
      "dies as it goes into the wood" "cuts out when I engage the deck"
      "cuts out when it starts mowing"
      "cuts out over bumps"
      "dies when it goes into the grass" "cuts out when it is working"
      "stops as soon as it touches the wood" "stalls when the ram pushes"
      "engine stalls when something is plugged in" "engine quits when I engage the blades"
      "dies as soon as you ask it to do any work" "stalls when I pull the gun trigger"
      "cuts out in thick stuff" "engine dies when I engage the drive"
      "dies in the concrete" "stalls in the cut"
      "cuts out whenever I put it in gear"
      "stalls when I let go of the gun")
    (anyway 0.006) (basis estimate))
  (complaint (id hunts) (name "hunts or surges") (runs yes)
    (ask "Does the speed go up and down by itself?")
    (near no-full-speed weak will-not-idle runs-on-choke-only bogs)
    (says "surges" "hunts" "revs up and down" "speed goes up and down" "runs like a wave"
      "revs up and down on its own" "keeps surging" "will not hold a steady speed"
      "revs rise and fall" "engine note goes up and down"
      "hunts up and down" "engine surges" "speed rises and falls" "revs keep changing"
      "will not hold its speed" "surges at idle" "speeds up and slows down" "rpm goes up and down"
      "speed yo-yos on its own"
      "surges at full throttle" "surges at top speed")
    (anyway 0.005) (basis estimate))
  (complaint (id no-full-speed) (name "does not reach full speed") (runs yes)
    (ask "Does it stay below full speed with no load?")
    (near weak bogs hunts)
    (says "will not rev" "no top speed" "slow at full throttle" "revs too low"
      "won't get up to speed"
      "will not rev up" "only goes half throttle" "only half speed" "does not rev out"
      "will not pick up speed"
      "does not reach full revs" "only half of full speed" "runs slow with the throttle wide open"
      "will not go over half throttle" "stays at low speed" "stuck at low revs" "will not speed up"
      "will not reach top speed" "slower than it used to be")
    (anyway 0.006) (basis estimate))
  (complaint (id bogs) (name "bogs when the throttle is opened") (runs yes)
    (ask "Does it falter or die when the throttle is opened?")
    (near weak dies-under-load no-full-speed hunts)
    (says "bogs down" "hesitates" "stumbles when I give it gas"
      "dies when I squeeze the trigger" "falls on its face"
      "idles but dies when I give it throttle" "idles all right then dies on the throttle"
      "bogs when I pull the trigger" "chokes up when I open it up" "hit the gas and it dies"
      "dies when I open the throttle" "nearly stalls when I open the throttle"
      "idles fine but dies when I pull the trigger" "no pick up" "hesitates when opened up"
      "stumbles on the throttle" "chokes when I rev it" "flat spot when I squeeze the throttle"
      "idles but dies when I blip the throttle" "dies as soon as I blip it" "idles well and dies when I open it up")
    (anyway 0.005) (basis estimate))
  (complaint (id weak) (name "weak under load") (runs yes)
    (ask "Is it weak: runs, but has no power at work?")
    (near no-full-speed bogs dies-under-load)
    (says "no power" "weak" "lost its power" "bogs in thick grass" "slows down too much"
      "gutless"
      "struggles in long grass" "struggles" "not pulling like it used to" "power has gone"
      "no grunt"
      "no power in thick grass" "struggles up hill" "slows down under load" "labours when working"
      "will not pull through a log" "lost its guts" "feels tired" "down on power"
      "loses power when working" "slows right down in the cut" "weak when the tines bite"
      "runs flat" "feels flat"
      "slows to a crawl when it works")
    (anyway 0.01) (basis estimate))
  (complaint (id will-not-idle) (name "will not idle") (runs dies)
    (ask "Does it stop or run rough at idle?")
    (near starts-then-dies hunts)
    (says "won't idle" "stalls at idle" "dies when I let off the throttle" "rough idle"
      "idle goes up and down"
      "will not tick over" "dies every time I let off the trigger"
      "dies when I let go of the throttle" "will not idle on its own"
      "stops when I let go of the trigger" "stalls when I let off the throttle"
      "have to keep the throttle open or it dies" "have to keep my finger on the trigger or it stops"
      "runs on full throttle but will not idle" "dies when throttled back"
      "cuts out when I put the lever to slow" "dies at low speed")
    (anyway 0.008) (basis estimate))
  (complaint (id races) (name "races or will not slow down") (runs yes)
    (ask "Does it run too fast, or not slow down?")
    (near creeps-at-idle will-not-idle)
    (says "races" "revs too high" "screams" "will not slow down" "overspeeds"
      "idles too fast"
      "revving its head off" "idle is too high" "cannot slow it down" "flat out all the time"
      "goes flat out all the time" "runs too fast" "stuck on full throttle"
      "throttle lever makes no difference" "engine screams" "revs its head off"
      "will not come down from full speed" "throttle stuck open" "runs away" "far too fast"
      "over revs" "revs far too high" "over revs straight from the start" "screams as soon as it starts"
      "flat out and will not slow down" "stuck flat out")
    (anyway 0.004) (basis estimate))
  (complaint (id will-not-stop) (name "will not stop") (runs yes)
    (ask "Does it keep running when switched off?")
    (says "won't stop" "won't shut off" "keeps running" "switch does not stop it"
      "runs on after switching off"
      "have to choke it to stop it" "switch does not turn it off" "cannot turn it off"
      "switch does nothing" "stop switch does nothing" "keeps running with the key off"
      "engine carries on when I let go of the bar" "cannot switch it off" "kill switch does not work"
      "cannot stop the engine" "turned it off and it keeps going"
      "blade keeps spinning a long time after I let go"
      "blade runs on after I let go of the bar" "let go of the bar and it does not stop"
      "takes too long to stop")
    (anyway 0.003) (basis estimate))
  (complaint (id backfires-intake) (name "spits or backfires through the intake") (runs unknown)
    (ask "Does it spit or bang back through the carburettor?")
    (near bangs-exhaust no-start-cold bogs)
    (says "spits back" "backfires through the carburettor" "pops in the carb"
      "flame out of the air filter" "coughs back"
      "spits flame out of the carburettor" "blows back through the carburettor"
      "backfires through the intake" "spits petrol back out of the carburettor"
      "coughs through the carburettor" "pops back through the air filter"
      "sneezes through the carburettor")
    (anyway 0.003) (basis estimate))
  (complaint (id bangs-exhaust) (name "bangs in the exhaust") (runs yes)
    (ask "Does it bang in the exhaust?")
    (near backfires-intake)
    (says "backfires" "bangs when I shut it off" "pops in the exhaust"
      "loud bang from the muffler" "afterfire"
      "big bang out of the exhaust when I turn it off" "bangs and pops out the back"
      "bang from the exhaust when I switch it off" "backfires through the exhaust"
      "exhaust pops and bangs"
      "flame out of the exhaust")
    (anyway 0.006) (basis estimate))
  (complaint (id smoke-black) (name "black smoke") (runs yes)
    (ask "Is the smoke black?")
    (near smoke-blue weak)
    (says "black smoke" "sooty exhaust" "smells rich" "soot"
      "puffing black smoke" "chucks out black smoke"
      "dark smoke" "black sooty smoke" "thick black smoke under load" "black soot from the exhaust"
      "smoke is black and smells of petrol")
    (anyway 0.003) (basis estimate))
  (complaint (id smoke-blue) (name "blue smoke") (runs yes)
    (ask "Is the smoke blue?")
    (near smoke-white uses-oil smoke-black)
    (says "blue smoke" "smokes a lot" "burning oil smell" "clouds of smoke"
      "smoking really badly" "smokes like a chimney" "lots of smoke"
      "blue haze" "burning oil and smoking" "smokes blue" "smells of burnt oil"
      "smoke and burning oil smell" "blue cloud")
    (anyway 0.006) (basis estimate))
  (complaint (id smoke-white) (name "white smoke") (runs yes)
    (ask "Is the smoke white?")
    (near smoke-blue)
    (says "white smoke" "whitish smoke" "steam from the exhaust" "clouds of white smoke"
      "cloud of white smoke after I tipped it"
      "exhaust is white" "thick white smoke" "white clouds" "white steam"
      "smoked white after it was turned over")
    (anyway 0.005) (basis estimate))
  (complaint (id overheats) (name "overheats") (runs yes)
    (ask "Does it get too hot?")
    (near dies-hot weak)
    (says "overheats" "gets too hot" "smells hot" "burning smell" "glowing muffler"
      "muffler glows red" "gets really hot" "too hot to touch"
      "running hot" "runs very hot"
      "overheating" "runs too hot" "gets very hot and smells"
      "boiling hot"
      "gets very hot and loses power" "loses power when it is hot")
    (anyway 0.003) (basis estimate))
  (complaint (id knocks) (name "knocks") (runs yes)
    (ask "Does it knock?")
    (near noisy vibrates)
    (says "knocking" "knocks" "hammering noise" "rattling from inside the engine" "pinging"
      "horrible knocking noise" "knocking from the engine" "clonking inside"
      "knocking noise inside the engine" "thudding in the engine" "clonk from the crankcase"
      "hammering inside" "engine knocks under load" "pinking when it pulls hard")
    (anyway 0.003) (basis estimate))
  (complaint (id vibrates) (name "vibrates") (runs yes)
    (ask "Does it shake more than it should?")
    (near noisy knocks)
    (says "vibrates" "shakes" "shaking badly" "makes my hands numb"
      "shaking to bits" "vibrates like mad" "shakes since I hit something" "wobbles"
      "shudders"
      "shakes since it hit something"
      "terrible vibration" "vibrates badly through the handles" "shakes itself to bits" "shakes since it hit a stump" "judders" "shaking when the blade spins")
    (anyway 0.006) (basis estimate))
  (complaint (id leaks-fuel) (name "leaks fuel") (runs unknown)
    (ask "Does fuel leak out?")
    (near floods)
    (says "leaks petrol" "leaks gas" "fuel on the floor" "petrol dripping" "puddle of fuel"
      "petrol dripping from under the carburettor" "petrol leaking all over the floor"
      "petrol everywhere"
      "petrol leaking from the carburettor" "petrol leaking from the tank" "fuel drips underneath"
      "tank runs empty overnight" "puddle of petrol under it" "fuel line dripping"
      "smell of petrol and a wet patch"
      "leaves a trail of petrol" "petrol leaking out of the bowl")
    (anyway 0.004) (basis estimate))
  (complaint (id leaks-oil) (name "leaks oil") (runs unknown)
    (ask "Does oil leak out?")
    (near uses-oil)
    (says "leaks oil" "oil on the floor" "oil dripping" "oily mess underneath"
      "bar oil leaks"
      "oil all over the bottom" "oil running out" "bar oil leaks overnight" "covered in oil"
      "puddle of oil"
      "oil leaking" "oil leaking from the seal" "patch of oil underneath"
      "oil coming out of the breather" "oil on the side of the engine" "loses oil onto the floor"
      "oil all over the air filter" "oil in the air filter")
    (anyway 0.006) (basis estimate))
  (complaint (id uses-oil) (name "uses oil") (runs yes) (needs four-stroke)
    (ask "Does it use up oil?")
    (near smoke-blue leaks-oil)
    (says "uses oil" "burns oil" "have to top up the oil"
      "always topping up the oil" "gets through a lot of oil"
      "drinks oil" "goes through oil"
      "uses a lot of oil" "burning oil and no leak" "keep adding oil" "oil keeps going down"
      "dipstick always low" "topping up the oil" "needs oil every time")
    (anyway 0.005) (basis estimate))
  (complaint (id oil-level-rises) (name "oil level rises or smells of fuel") (runs unknown) (needs four-stroke)
    (ask "Does the oil rise on the dipstick or smell of petrol?")
    (near smoke-white)
    (says "oil smells of petrol" "too much oil on the dipstick" "oil level went up"
      "oil is thin like water"
      "dipstick smells of petrol" "dipstick reads over full" "petrol in the oil"
      "crankcase full of petrol" "oil overfull" "oil level goes up by itself" "oil has gone up"
      "dipstick over full" "oil thin and smells of petrol" "more oil than I put in"
      "oil is milky" "oil looks like coffee with milk" "water in the oil" "grey foam on the dipstick")
    (anyway 0.002) (basis estimate))
  (complaint (id noisy) (name "noisy") (runs yes)
    (ask "Is it louder than it was?")
    (near vibrates knocks)
    (says "loud" "noisy" "sounds like a tank" "exhaust blowing" "rattles" "screeching"
      "gone really loud" "sounds like a tractor" "grinding noise" "squealing" "makes a racket"
      "horrible noise" "makes an awful noise" "very noisy" "much louder than before" "grinding sound"
      "rattling and squealing" "exhaust is loud")
    (anyway 0.008) (basis estimate))
  (complaint (id creeps-at-idle) (name "tool moves at idle") (runs yes)
    (ask "Does the tool move when the engine idles?")
    (near races)
    (says "chain moves at idle" "blade keeps turning" "head spins at idle" "creeps"
      "chain will not stop"
      "chain keeps going round at idle" "chain turns on tickover"
      "head still spins when I let go of the trigger" "blade does not stop"
      "chain keeps moving when I let go of the trigger" "blades turn at idle"
      "tines turn on their own" "disc spins at idle" "tool keeps going when I let off")
    (anyway 0.004) (basis estimate))
  (complaint (id pump-weak) (name "pump weak or pulsing") (runs yes)
    (ask "Is the pump weak, pulsing or dead?")
    (near cuts-badly weak)
    (says "no pressure" "pulsing pressure" "weak spray" "does not suck water" "no water"
      "will not prime"
      "pump runs but no water comes out" "no pressure from the lance" "no pressure at the gun"
      "loses its prime"
      "pressure low" "pressure surges"
      "no water comes out" "hardly any water" "water just dribbles out" "will not draw water"
      "no suction" "pressure goes up and down" "no pressure when I pull the trigger"
      "pump will not build pressure"
      "sucks air"
      "pressure keeps dropping" "pressure comes and goes" "loses pressure")
    (anyway 0.02) (basis estimate))
  (complaint (id no-output) (name "generator gives no or low output") (runs yes) (needs generator-end)
    (ask "Does the generator give no or low voltage?")
    (near wrong-frequency)
    (says "no power" "no power out" "no electricity" "lights dim" "low voltage" "outlets dead"
      "runs but no power at the sockets" "lights go dim and flicker"
      "nothing comes out of the sockets" "socket dead"
      "generator puts out nothing" "runs but gives nothing"
      "no power at the sockets" "sockets are dead" "no voltage" "engine runs but no electricity"
      "lights are dim" "will not power anything" "low volts"
      "tools run slow off it" "drill runs slow" "breaker trips" "trips as soon as I plug things in" "meter shows zero at the socket"
      "no power comes out" "nothing at the plugs")
    (anyway 0.02) (basis estimate))
  (complaint (id wrong-frequency) (name "generator gives the wrong frequency") (runs yes) (needs generator-end)
    (ask "Is the generator's frequency wrong?")
    (near no-output hunts)
    (says "wrong frequency" "clocks run fast" "frequency too low" "hertz wrong"
      "motor hums slow"
      "clock gains time on the generator" "clocks run slow on the generator"
      "lights flicker fast"
      "meter shows the wrong hertz" "hertz too low"
      "hertz reading is wrong" "frequency is too high" "clock runs fast"
      "frequency is all over the place" "inverter will not accept the generator" "frequency wandering")
    (anyway 0.005) (basis estimate))
  (complaint (id not-charging) (name "battery is not charged") (runs yes) (needs charging)
    (ask "Does the battery not get charged?")
    (near starter-clicks)
    (says "battery goes flat" "does not charge" "have to jump it every time"
      "battery keeps going dead" "battery keeps going flat"
      "have to charge the battery every time" "battery will not stay charged"
      "not charging the battery" "battery goes flat again" "new battery goes flat" "no charge"
      "alternator does not charge" "battery flat every week" "needs a jump start every time")
    (anyway 0.005) (basis estimate))
  (complaint (id drive-slips) (name "drive slips or does not move") (runs yes)
    (ask "Does the drive or tool slip or not turn although the engine runs?")
    (near cuts-badly weak)
    (says "does not drive" "belt slips" "wheels do not turn" "tines will not turn"
      "auger stopped" "chain will not turn" "won't throw snow" "splitter will not push"
      "wheels do not go round" "drive is not working" "auger will not spin" "blades do not turn"
      "revs up but the blades do not move"
      "chain does not move when I rev it" "will not pull itself along" "ram will not move"
      "will not move forward" "will not go forward or back"
      "will not move" "self propel does not work" "engine runs but it will not move forward"
      "wheels do not drive" "belt squeals and slips" "slips up hill" "tines do not turn"
      "auger does not turn" "blades will not engage" "blades will not come on" "chain does not turn when I rev it"
      "have to push it"
      "auger is stuck" "auger jammed" "auger frozen with ice"
      "one side turns and the other does not" "one auger turns and the other does not"
      "belt smells" "smell of burning rubber"
      "tines only turn one way" "drives one way only")
    (anyway 0.01) (basis estimate))
  (complaint (id cuts-badly) (name "works badly although the engine runs well") (runs yes)
    (ask "Does the tool do bad work although the engine runs well?")
    (near drive-slips weak vibrates)
    (says "cuts badly" "ragged cut" "chain cuts crooked" "does not throw far"
      "blows weakly"
      "leaves the lawn ragged" "leaves grass uncut" "will not cut straight"
      "makes dust instead of chips" "leaves clumps"
      "bar smokes" "bar and chain go blue" "no oil on the chain" "chain runs dry" "bar gets hot"
      "cuts unevenly" "uneven cut"
      "grass brown at the tips" "torn grass"
      "torn and brown at the tips"
      "grass looks torn"
      "tears the grass"
      "blunt chain" "chain makes dust" "leaves tufts" "does not pick up the grass"
      "clogs up with grass" "chews the hedge"
      "does not cut well" "does not collect clippings" "finish is poor"
      "does not throw half as far" "throws only half as far" "others throw twice as far"
      "will not dig" "skips over the ground" "no air comes out" "hardly blows"
      "grass box stays empty")
    (anyway 0.01) (basis estimate))
  (complaint (id after-repair) (name "trouble straight after a repair") (runs unknown)
    (ask "Did it start right after somebody worked on it?")
    (says "since I cleaned the carburettor" "after service it" "since it was repaired"
      "worked on it and now" "put it back together and"
      "was running fine until I cleaned the carburettor" "ever since I changed"
      "just had it serviced and now" "fitted a new part and now"
      "started after I changed the plug" "trouble since the service"
      "never been right since it was repaired" "worse since I changed the carburettor"
      "new carburettor and now it is worse"
      "fiddled with it and made it worse" "plays up since it was serviced"
      "fine until somebody serviced it" "changed the plug and now" "since the belt was changed")
    (anyway 0.01) (basis estimate))
  (complaint (id after-storage) (name "trouble after standing") (runs unknown)
    (ask "Did it start after the machine had stood for weeks or months?")
    (says "sat all winter" "after storage" "stood in the shed" "has not run since last year"
      "first start of the season"
      "sat in the shed since last summer" "first time out this year" "not been used for months"
      "been standing all winter" "got it out of the garage"
      "sat in the shed all winter" "has not been used for years" "put away with petrol in it"
      "old petrol left in it" "was not drained before winter" "been in storage" "parked for years"
      "stood with old petrol in it" "trying to get it going after years")
    (anyway 0.05) (basis estimate))
)
