; Words that owners and mechanics use for one and the same thing. Free text (a complaint in the
; owner's words, the name of a check) is put into these before it is matched, and so are the
; sayings it is matched against (says in complaints.clp). See the template same-words.
; To add one: put the word into the list it belongs to, or make a new list with an id of its own.
; A word stands in one list only; endings (-s, -ing, -ed, -ly) need not be listed, irregular ones do
; (froze, died). Inside a phrase other lists count too: with "let go of throttle", "let go of the
; trigger" is known. Check with: pullcord vet

(deffacts words-without-meaning "words that say nothing, link, deny or part"
  (same-words (id little) (sort little)
    (words "the" "a" "an" "it" "its" "itll" "itd" "i" "im" "ive" "ill" "id" "me" "my" "myself" "you"
      "your" "youre" "youve" "he" "his" "she" "her" "they" "them" "their" "we" "our" "us" "this"
      "that" "thats" "these" "those" "there" "theres" "is" "are" "was" "were" "be" "been" "being"
      "am" "do" "does" "did" "done" "has" "have" "had" "having" "will" "would" "could" "can"
      "should" "may" "might" "to" "of" "as" "if" "thing" "please" "rather" "actually" "basically"
      "think" "reckon" "seems" "kind" "sort" "sometimes" "bloody" "damn" "darn" "blasted" "wants"
      "try" "tries" "tried" "trying" "even" "wife" "husband" "one" "which" "who" "also" "own"
      "hello" "hi" "thanks" "regards" "definitely" "probably" "maybe" "perhaps" "seem" "appear"
      "apparently" "honestly" "literally" "weve" "ours" "theyre" "wed" "hes" "shes" "cheers" "mate"
      "sir")
    (basis common-practice))
  (same-words (id linking) (of complaints) (sort linking)
    (words "on" "in" "out" "up" "down" "over" "off" "back" "through" "thru" "at" "by" "with" "from" "for"
      "into" "onto" "under" "all" "just" "really" "very" "so" "too" "now" "get" "gets" "getting"
      "got" "some" "any" "when" "whenever" "while" "every" "each" "once" "what" "about" "than"
      "right" "way" "more" "like" "soon" "anymore" "almost" "still" "going" "give" "gives" "take"
      "takes" "took" "put" "say" "says" "make" "makes" "round" "around" "away" "much" "after"
      "before" "other" "always" "left" "let" "time" "times" "awful" "awfully" "terrible" "horrible"
      "nasty" "dreadful" "such" "often" "else" "properly" "whole" "nearly" "enough" "anything"
      "everything" "something" "where" "why" "how" "ever" "great" "good" "fine" "nice" "sweet"
      "perfect" "perfectly" "lovely" "well" "usually" "normally" "okay" "ok" "far")
    (basis common-practice))
  (same-words (id machine-names) (of complaints) (sort little)
    (words "mower" "lawnmower" "tractor" "ride" "tiller" "rotavator" "rototiller" "saw" "chainsaw"
      "strimmer" "trimmer" "brushcutter" "blower" "snowblower" "thrower" "snowthrower" "chipper"
      "shredder" "splitter" "washer" "weed" "whacker" "eater")
    (basis common-practice))
  (same-words (id no) (sort no)
    (words "no" "not" "never" "wont" "doesnt" "dont" "cant" "cannot" "couldnt" "wouldnt" "isnt" "arent"
      "wasnt" "didnt" "hasnt" "havent" "aint" "refuses" "fails" "unable" "impossible" "without"
      "barely" "scarcely" "nothing" "lacks" "lost" "no longer" "hardly any" "hates" "declines" "nor"
      "neither" "nowt" "useless" "no way" "not any" "nothing whatsoever" "incapable"
      "stopped being able" "fail")
    (basis common-practice))
  (same-words (id break) (sort break)
    (words "and" "but" "then" "or" "though" "although" "however" "because" "plus" "except")
    (basis common-practice))
)

(deffacts words-of-running "starting, running, stopping, speed"
  (same-words (id starts) (of complaints)
    (words "start" "started" "starts up" "start up" "fires" "fire up" "fires up" "catches" "get going"
      "gets going" "get it going" "started up" "light up" "lights up" "fire into life"
      "burst into life" "splutter into life" "kick into life" "run at all" "comes to life"
      "come alive" "kick off" "kicks in" "get it started" "get it running" "get it to run")
    (basis common-practice))
  (same-words (id restarts) (of complaints)
    (words "restart" "re start" "start again" "start back up" "starts up again" "go again" "goes again"
      "fire again" "start it again" "going again" "start a second time" "fire back up"
      "start afterwards" "start it back up" "start once more")
    (basis common-practice))
  (same-words (id no-life) (of complaints)
    (words "not a cough" "not a pop" "not even a cough" "not a splutter" "not so much as a cough"
      "not so much as a pop" "no sign of life" "dead as a doornail" "dead as a dodo" "stone dead"
      "nothing doing" "not a peep" "not a sausage" "not a kick" "no joy" "nothing happens" "no luck")
    (basis common-practice))
  (same-words (id cranks) (of complaints)
    (words "crank" "turn over" "turns over" "turning over" "cranks over" "spin over")
    (basis common-practice))
  (same-words (id dies)
    (words "die" "died" "dying" "stop" "stall" "conk" "conk out" "conks out" "conked out" "quit"
      "cut out" "cuts out" "cutting out" "cut straight out" "cuts off" "cut off" "pack up"
      "packs up" "packed up" "pack in" "packs in" "give up" "gives up" "gave up" "give up the ghost"
      "shut down" "shut off" "shuts itself off" "fizzle out" "peter out" "go off" "goes off"
      "fade out" "drops dead" "croaks" "cut right out" "give out" "gives out" "gave out" "silence"
      "kaput" "goes dead" "goes quiet" "go quiet" "drop out" "drops out" "poop out" "expire"
      "shut itself down" "turns itself off" "switches itself off" "kill" "then dead" "and dead"
      "goes silent" "comes to a halt" "grinds to a halt" "cut itself out" "splutter out"
      "loses revs and stops")
    (basis common-practice))
  (same-words (id keeps-going) (of complaints) (opposite dies)
    (words "keep running" "keeps on running" "keep going" "keeps on going" "carry on" "carries on"
      "stay running" "stays going" "stay alive" "continue running" "runs on" "carry on running"
      "carries on going" "stay on" "stay lit" "still running" "still going" "stays on"
      "keep on going" "running on" "goes on running" "went on running")
    (basis common-practice))
  (same-words (id switches-off) (of complaints)
    (words "switch off" "turn off" "turned off" "turn key off" "key off" "switch it off" "took key out"
      "take key out" "pull the key out" "key out" "key in the off" "stop lever" "let go of bar"
      "let go of the bar" "release the bar" "switch to off" "press stop" "flick the switch")
    (basis common-practice))
  (same-words (id switch) (of complaints)
    (words "switch" "stop switch" "kill switch" "off switch" "ignition switch" "stop button"
      "kill button" "cut out switch")
    (basis common-practice))
  (same-words (id runs) (of complaints)
    (words "run" "ran" "engine goes" "chug" "tick along" "purrs")
    (basis common-practice))
  (same-words (id idles)
    (words "idle" "idel" "idling" "tickover" "tick over" "ticks over" "ticking over" "slow running"
      "low idle" "lowest speed")
    (basis common-practice))
  (same-words (id speed) (words "speed" "revs" "rev" "rpm" "revolutions") (basis common-practice))
  (same-words (id full-speed) (of complaints)
    (words "flat out" "runs flat out" "running flat out" "full throttle" "wide open" "full speed" "top speed" "max" "maximum" "full revs"
      "full bore" "full power" "full chat" "wide open throttle" "max speed" "max revs" "high speed"
      "full gas" "rev out" "revs out" "top revs" "full whack" "full tilt" "throttle wide open"
      "fast enough" "proper speed" "rated speed" "all its revs" "speed it used to" "full pelt"
      "maximum revs" "hare" "get up to speed" "rev high enough")
    (basis common-practice))
  (same-words (id too-fast) (of complaints)
    (words "too fast" "way too fast" "overspeed" "over speed" "over rev" "races" "racing" "runs away"
      "screams" "revs too high" "speed too high" "head off" "revs its head off" "nuts off"
      "goes mad" "too high" "revs high" "high revs" "revs very high" "way too high" "far too fast"
      "like the clappers" "hell for leather" "sky high" "breakneck" "running away" "very fast"
      "revs through the roof" "rev its nuts off" "revs really high")
    (basis common-practice))
  (same-words (id slow) (of complaints)
    (words "slow" "slowly" "sluggish" "sluggishly" "tortoise" "half speed" "half revs" "low revs"
      "low speed" "slower" "snail" "crawling along" "half throttle")
    (basis common-practice))
  (same-words (id slows-down) (of complaints)
    (words "slow down" "slows right down" "slows down" "throttle back" "rev down" "come down" "back down"
      "drop revs" "lever to slow" "throttle lever to slow" "bring it down" "throttle it back"
      "calm down" "calms down" "come off full throttle" "quieten down" "turn the speed down"
      "bring revs down" "ease back" "reduce speed")
    (basis common-practice))
  (same-words (id speeds-up) (of complaints)
    (words "speed up" "pick up" "picks up" "rev up")
    (basis common-practice))
  (same-words (id hunts) (of complaints)
    (words "hunt" "surge" "surgeing" "up and down" "rise and fall" "rises and falls" "rising and falling"
      "speeds up and slows down" "faster and slower" "fast and slow" "in waves" "like a wave"
      "yo yo" "surge up and down" "surges up and down" "revs up and down" "goes up and down"
      "steady speed" "climbing and dropping" "climb and drop" "wander" "settle" "fluctuate" "varies"
      "changes speed" "up and then down" "erratic" "oscillate" "unsteady" "steady" "see saw"
      "rev and drop" "yoyo" "pulsing revs" "faster then slower" "cycling up and down"
      "speed goes up and down" "constant speed" "rises and drops")
    (basis common-practice))
  (same-words (id bogs) (of complaints)
    (words "bog" "bog down" "hesitate" "stumble" "falter" "flat spot" "falls on its face" "fall flat"
      "fall flat on its face" "falls over" "chokes up" "gags" "gasps" "dies on throttle"
      "hesitation" "hang back" "lag" "stutter" "hiccup" "choke up" "dies away" "gurgle"
      "nearly dies" "nearly stalls" "almost dies" "almost stalls")
    (basis common-practice))
  (same-words (id power) (of complaints)
    (words "power" "grunt" "guts" "oomph" "poke" "punch" "strength" "go in it" "torque" "beans" "pep"
      "zip" "welly" "strength in it" "muscle" "vigour" "drive in it" "pull in it" "pulling power")
    (basis common-practice))
  (same-words (id weak) (of complaints) (opposite power)
    (words "weak" "weakly" "gutless" "feeble" "underpowered" "down on power" "tired" "lacklustre"
      "power has gone" "labours" "labors" "struggles" "power down" "short of breath" "lethargic"
      "short of power" "pathetic" "wheezy" "lazy" "flagging" "lost power" "runs out of steam"
      "out of puff" "asthmatic" "down on grunt" "bit tired")
    (basis common-practice))
  (same-words (id shortly) (of complaints)
    (words "second" "moment" "straight away" "right away" "immediately" "instantly" "at once"
      "straight after" "split second" "secs" "sec" "short burst" "nearly at once" "second or two"
      "few seconds" "couple of seconds" "briefly" "instant" "momentarily" "three seconds")
    (basis common-practice))
  (same-words (id minutes) (of complaints)
    (words "minute" "min" "mins" "after a while" "hour" "half hour" "half an hour" "running a while"
      "for a while" "quarter hour" "quarter of an hour" "after an hour" "lap" "halfway round"
      "half way round" "a bit later" "15 min" "20 min" "10 min" "5 min")
    (basis common-practice))
  (same-words (id many) (of complaints)
    (words "many" "lots" "plenty" "dozens" "ages" "forever" "for ever" "hundred" "long time" "no end"
      "ten" "twenty" "thirty" "forty" "fifty" "10" "20" "30" "40" "50" "100" "umpteen" "millions"
      "eternity" "eventually" "countless" "a good few" "dozen" "repeatedly" "over and over"
      "numerous" "fifteen" "15" "60" "several" "several goes")
    (basis common-practice))
  (same-words (id morning) (of complaints)
    (words "morning" "overnight" "first start of the day" "first go of the day" "start of the day"
      "after a night")
    (basis common-practice))
)

(deffacts words-of-parts "parts and fluids"
  (same-words (id petrol) (words "petrol" "gas" "gasoline" "fuel" "juice") (basis common-practice))
  (same-words (id rope)
    (words "rope" "cord" "string" "starter rope" "starter cord" "pull starter" "recoil" "recoil starter"
      "pull handle" "starter handle" "pull start" "recoil rope")
    (basis common-practice))
  (same-words (id exhaust)
    (words "exhaust" "exaust" "muffler" "silencer" "tailpipe" "pipe" "exhaust pipe")
    (basis common-practice))
  (same-words (id carburettor)
    (words "carburettor" "carburetor" "carb" "carby" "carburator" "carburetter")
    (basis common-practice))
  (same-words (id air-filter) (of complaints)
    (words "air filter" "air cleaner" "filter")
    (basis common-practice))
  (same-words (id throttle)
    (words "throttle" "trigger" "accelerator" "gas pedal" "throttle lever" "throttle trigger")
    (basis common-practice))
  (same-words (id opens-throttle) (of complaints)
    (words "squeeze throttle" "open throttle" "opens up" "open her up" "open it up" "give it gas"
      "give it petrol" "hit throttle" "hit the gas" "blip throttle" "give it some"
      "give it throttle" "throttle up" "pull throttle" "press throttle" "give it some petrol"
      "throttle is opened" "open out" "step on the gas" "give it the beans" "put my foot down"
      "accelerate" "pull the throttle" "touch throttle" "give it the gas" "go to full throttle"
      "pull throttle quick" "open the taps" "rev hard" "give it full throttle")
    (basis common-practice))
  (same-words (id lets-off-throttle) (of complaints)
    (words "let go of throttle" "let off throttle" "release throttle" "come off throttle"
      "take finger off throttle" "let off the gas" "finger off throttle" "let go throttle"
      "back off throttle" "lift off" "let throttle go" "off throttle" "close throttle"
      "stop squeezing throttle" "stop pulling throttle" "stop pressing throttle" "take finger off"
      "let go" "throttle down" "come back to idle" "drop to idle" "back to idle" "ease off"
      "let off")
    (basis common-practice))
  (same-words (id choke) (words "choke" "choak" "chock" "full choke" "half choke") (basis common-practice))
  (same-words (id primer)
    (words "primer" "primer bulb" "bulb" "priming bulb" "purge bulb" "prime bulb")
    (basis common-practice))
  (same-words (id plug) (words "spark plug" "sparkplug" "plug" "sparking plug") (basis common-practice))
  (same-words (id starter)
    (words "starter" "starter motor" "electric starter" "electric start" "solenoid" "start motor"
      "starting motor" "little motor" "self starter" "cranking motor")
    (basis common-practice))
  (same-words (id key) (of complaints)
    (words "key" "turn the key" "start button" "turn ignition" "push button" "press the button"
      "push the button" "turn key" "button" "dash" "dashboard" "press start" "hit the button"
      "hit start" "twist the key")
    (basis common-practice))
  (same-words (id engine) (of complaints) (words "engine" "motor" "machine") (basis common-practice))
  (same-words (id tool) (of complaints)
    (words "blade" "chain" "head" "tines" "auger" "disc" "disk" "cutter" "knife" "knives" "cutting head"
      "deck" "strimmer head" "rotor")
    (basis common-practice))
  (same-words (id wheels) (of complaints) (words "wheel" "tyre") (basis common-practice))
  (same-words (id drive) (of complaints)
    (words "drive" "self propel" "self propelled" "transmission" "gearbox" "self drive" "hydrostat"
      "propel itself" "pull itself along" "pedal" "traction" "drive lever")
    (basis common-practice))
  (same-words (id drives-along) (of complaints)
    (words "forward" "forwards" "backwards" "reverse" "move forward" "go forward" "drive forward"
      "forwards or backwards" "forward or back" "go anywhere" "anywhere" "pull along" "propel"
      "move along" "ahead")
    (basis common-practice))
  (same-words (id belt) (of complaints) (words "belt") (basis common-practice))
  (same-words (id battery) (words "battery" "batt" "accumulator") (basis common-practice))
  (same-words (id socket) (of complaints)
    (words "socket" "outlet" "receptacle" "plug socket" "power point")
    (basis common-practice))
  (same-words (id electricity) (of complaints)
    (words "electricity" "electric" "volts" "voltage" "current" "output" "volt" "electrics" "amps"
      "juice out" "electrical" "electrically" "power out" "power at the socket" "appliances")
    (basis common-practice))
  (same-words (id frequency) (words "frequency" "hertz" "hz" "cycles") (basis common-practice))
  (same-words (id generator) (words "generator" "genny" "genset" "jenny" "gennie") (basis common-practice))
  (same-words (id dipstick) (of complaints)
    (words "dipstick" "dip stick" "oil level" "level")
    (basis common-practice))
  (same-words (id inside) (of complaints)
    (words "inside" "within" "crankcase" "sump" "internals" "in the engine")
    (basis common-practice))
  (same-words (id gun) (of complaints)
    (words "gun" "lance" "wand" "nozzle" "spray" "hose" "jet")
    (basis common-practice))
  (same-words (id clock) (of complaints) (words "clock" "timer") (basis common-practice))
  (same-words (id light) (of complaints)
    (words "lights" "light" "lamp" "lightbulb")
    (basis common-practice))
)

(deffacts words-of-trouble "what one sees, hears, smells and feels"
  (same-words (id pulls) (of complaints)
    (words "pull" "yank" "tug" "haul" "drag" "heave" "pull over")
    (basis common-practice))
  (same-words (id kicks-back) (of complaints)
    (words "kick back" "kickback" "kicks" "kicks like a mule" "snatch" "snatch back" "out of my hand"
      "out of hand" "jerk back" "bites back" "out of your fingers" "rips out of hand"
      "snatch out of hand" "snatch back out of hand" "pulls back out of my hand" "whips back"
      "lashes back" "flies back" "recoils back" "jumps back" "springs back" "thrown back"
      "whip out of hand" "tears out of hand" "rips the handle out" "out of your hand" "pulls back")
    (basis common-practice))
  (same-words (id hard) (of complaints)
    (words "hard" "difficult" "tough" "awkward" "pig" "a real struggle" "fight" "bugger" "nightmare"
      "stiff" "heavy" "temperamental" "reluctant" "bad" "hard work" "stiff on" "stubborn" "tricky"
      "swine" "beast" "sod" "painful" "impossible nearly" "effort" "wears me out" "out of breath"
      "hard going" "reluctantly" "finicky" "touchy" "unwilling")
    (basis common-practice))
  (same-words (id easy) (of complaints)
    (words "easy" "easily" "dead easy" "effortless")
    (basis common-practice))
  (same-words (id resistance) (of complaints)
    (words "resistance" "compression" "squeeze")
    (basis common-practice))
  (same-words (id free) (of complaints) (opposite resistance)
    (words "freewheels" "free wheels" "slack" "loose" "spins freely" "freely")
    (basis common-practice))
  (same-words (id seized)
    (words "seize" "siezed" "ceased" "locked" "jam" "stuck" "solid" "frozen" "froze" "freezes"
      "locked solid" "stuck solid" "froze up" "froze solid" "rigid" "rust" "rusted" "rusty" "locks"
      "seizure" "bind" "binding" "wedged" "immovable" "stuck tight" "seized up" "rusted solid"
      "budge" "bound" "dead stop" "welded" "locked up")
    (basis common-practice))
  (same-words (id engages) (of complaints)
    (words "engage" "grab" "bite" "grip" "mesh" "latch")
    (basis common-practice))
  (same-words (id clicks) (of complaints)
    (words "click" "tick" "clack" "tick tick" "tick tick tick" "clicking" "chatter" "click click")
    (basis common-practice))
  (same-words (id whirrs) (of complaints)
    (words "whirr" "whir" "whizz" "whiz" "whine" "buzz")
    (basis common-practice))
  (same-words (id spins) (of complaints)
    (words "spin" "spun" "turn" "rotate" "go round" "goes round" "go around" "revolve" "move"
      "going round" "spin round")
    (basis common-practice))
  (same-words (id creeps) (of complaints)
    (words "creep" "crawl" "drag itself" "drags itself" "inch forward" "moves off" "trundles" "lurches"
      "pull forward")
    (basis common-practice))
  (same-words (id works) (of complaints) (words "work" "working" "function") (basis common-practice))
  (same-words (id smells) (words "smell" "stink" "reek" "pong" "whiff" "stench") (basis common-practice))
  (same-words (id leaks)
    (words "leak" "leek" "drip" "weep" "seep" "pour" "puddle" "ooze" "dribble" "patch" "piss" "pissing"
      "gush" "spill" "come out" "coming out" "run out" "running out" "drips out" "leak out"
      "get out" "getting out" "lose" "losing" "escape" "stain" "ring" "mess" "trickle" "sticky"
      "seepage" "running out of" "come from" "coming from" "spray out" "spew" "dump" "pump out"
      "blowing out" "blow out" "wet patch" "empty itself" "empties itself" "piddle" "piddling"
      "incontinent" "pool")
    (basis common-practice))
  (same-words (id underneath) (of complaints)
    (words "underneath" "floor" "bench" "ground" "bottom" "beneath" "everywhere" "all over the place"
      "from under" "shelf" "truck" "driveway" "boot" "trunk" "carpet" "concrete" "patio" "side"
      "where I keep it" "where I park it" "outside" "down the side" "all over")
    (basis common-practice))
  (same-words (id floods) (of complaints)
    (words "flood" "swamp" "drown" "drench" "neat petrol" "too much petrol" "overfuel" "full of petrol"
      "awash")
    (basis common-practice))
  (same-words (id wet) (of complaints)
    (words "wet" "soak" "soaking wet" "sodden" "drip wet" "sopping")
    (basis common-practice))
  (same-words (id smoke) (of complaints)
    (words "smoke" "smoky" "fumes" "haze" "cloud" "puff of smoke" "clouds of smoke" "smokescreen"
      "smoke screen" "fog" "steam" "puffs" "plume" "fume" "smoking")
    (basis common-practice))
  (same-words (id blue) (of complaints)
    (words "blue" "bluish" "blueish" "bluey" "blue grey" "bluish grey")
    (basis common-practice))
  (same-words (id black) (of complaints)
    (words "black" "blackish" "dark" "charcoal")
    (basis common-practice))
  (same-words (id soot) (of complaints) (words "soot" "sooty") (basis common-practice))
  (same-words (id white) (of complaints)
    (words "white" "whitish" "grey white" "milky" "whitey" "cream")
    (basis common-practice))
  (same-words (id hot) (of complaints)
    (words "hot" "warm" "heat" "warm up" "warmed up" "warms up" "up to temperature")
    (basis common-practice))
  (same-words (id too-hot) (of complaints)
    (words "overheat" "over heat" "over heating" "too hot" "very hot" "really hot" "really really hot"
      "so hot" "red hot" "boil" "cooks" "running hot" "hot to touch" "glows" "gets too hot"
      "run hot" "awfully hot" "hot enough" "hotter" "roast" "bake" "scorch" "sizzle" "burning up"
      "boiling hot" "extremely hot" "terribly hot" "gets hot" "runs hot" "overheated" "running warm"
      "fry an egg" "hot as hell" "cooks itself")
    (basis common-practice))
  (same-words (id cold) (of complaints) (words "cold" "stone cold" "from cold") (basis common-practice))
  (same-words (id cools) (of complaints)
    (words "cool" "cool down" "cooled down" "cool off" "cools off" "gone cold" "goes cold")
    (basis common-practice))
  (same-words (id burns) (of complaints) (words "burn" "burnt" "burning") (basis common-practice))
  (same-words (id knocks) (of complaints)
    (words "knock" "clonk" "clunk" "hammer" "thud" "thump" "ping" "pink" "bottom end noise" "rod knock"
      "tapping" "bump" "thumping" "hammering" "banging inside" "tap" "clunking")
    (basis common-practice))
  (same-words (id bangs) (of complaints)
    (words "bang" "pop" "crack" "gun shot" "afterfire" "explode" "explosion")
    (basis common-practice))
  (same-words (id backfires) (of complaints)
    (words "backfire" "back fire" "backfiring")
    (basis common-practice))
  (same-words (id spits) (of complaints)
    (words "spit" "spit back" "spat" "pops back" "blow back" "cough back" "sneeze" "flame" "shoots flame"
      "spits flame")
    (basis common-practice))
  (same-words (id coughs) (of complaints)
    (words "cough" "splutter" "sputter" "misfire" "miss")
    (basis common-practice))
  (same-words (id shakes)
    (words "shake" "shook" "vibrate" "vibration" "judder" "shudder" "wobble" "shakes to bits" "numb"
      "out of balance" "unbalanced" "shaking itself to bits" "vibe" "vibes" "vibrating"
      "rattle my teeth" "rattles my teeth" "shaky" "jiggle" "bounce" "bouncing" "tremble" "quiver"
      "wobbly" "rattles itself to bits")
    (basis common-practice))
  (same-words (id noise) (of complaints)
    (words "noise" "racket" "din" "loud" "noisy" "deafening" "louder" "row" "sounds like a tractor"
      "sounds like a tank" "rattle" "squeal" "screech" "grind" "scrape" "roar" "clatter" "squeak"
      "bellow" "blare" "rumble" "clank" "jangle" "howl" "thunder" "ear" "earplugs"
      "neighbours complain" "wakes the neighbours" "noises" "shriek" "whistle" "hiss" "blowing"
      "sound like" "sounds awful" "sounds terrible" "sounds horrible")
    (basis common-practice))
  (same-words (id uses) (of complaints)
    (words "use" "used up" "drink" "drinks" "eat" "eats" "gets through" "get through" "go through"
      "goes through" "consume" "guzzle" "top up" "topping" "topping up" "topped up" "add" "swallows"
      "using up" "put oil in" "going through" "disappears" "low on oil" "needs more" "top it up"
      "going down" "goes down" "level drops" "guzzles" "gulps" "gets less")
    (basis common-practice))
  (same-words (id too-full) (of complaints)
    (words "too much" "overfull" "over full" "too full" "level went up" "level goes up" "level rises"
      "oil level rises" "oil level goes up" "oil level went up" "more than I put in"
      "more of it than" "making oil" "fills up" "filling up" "fuller" "rising" "gone up" "went up"
      "goes up by itself" "overfilled" "filled itself" "above the mark" "over the mark"
      "past the mark" "higher than" "sump full")
    (basis common-practice))
  (same-words (id thin) (of complaints)
    (words "thin" "watery" "like water" "runny")
    (basis common-practice))
  (same-words (id charges) (of complaints)
    (words "charge" "recharge" "charged up" "top the battery" "charger" "put it on charge" "alternator"
      "dynamo")
    (basis common-practice))
  (same-words (id flat) (of complaints)
    (words "flat" "dead flat" "drain" "dies overnight" "goes down overnight")
    (basis common-practice))
  (same-words (id jump) (of complaints)
    (words "jump" "jump start" "jump leads" "jumper")
    (basis common-practice))
  (same-words (id dead) (of complaints) (words "dead" "lifeless") (basis common-practice))
  (same-words (id slips) (of complaints)
    (words "slip" "slipping" "slippage" "spin on the pulley" "skid")
    (basis common-practice))
  (same-words (id dim) (of complaints)
    (words "dim" "flicker" "brown out" "brownout" "faint" "fading" "dimly")
    (basis common-practice))
  (same-words (id sucks) (of complaints)
    (words "suck" "draw water" "draws water" "lift water" "suction" "pick up water" "suck up" "draw"
      "pull water" "lift" "draw up")
    (basis common-practice))
  (same-words (id prime) (of complaints) (words "prime" "priming") (basis common-practice))
  (same-words (id pulses) (of complaints)
    (words "pulse" "pulsate" "on and off" "comes and goes" "intermittent" "pulsating" "jerky" "jerks"
      "cuts in and out" "stop start")
    (basis common-practice))
  (same-words (id ragged) (of complaints)
    (words "ragged" "uneven" "unevenly" "torn" "tear" "tears" "tuft" "clump" "scalp" "streaks" "chew"
      "rips" "untidy" "patchy" "misses bits" "miss patches" "looks dreadful" "awful finish"
      "poor job" "bad job" "rubbish job" "poor finish" "lines left" "uncut" "butchered" "hacked"
      "shreds" "mangle" "chewed" "left standing")
    (basis common-practice))
  (same-words (id blunt) (of complaints)
    (words "blunt" "dull" "dust" "crooked" "goes off to one side" "pulls to one side" "off to the side"
      "sawdust" "force it through" "have to push it through" "wanders off" "cuts crooked")
    (basis common-practice))
  (same-words (id clogs) (of complaints) (words "clog" "block" "bung" "clogs up") (basis common-practice))
)

(deffacts words-of-conditions "when it happens"
  (same-words (id tilted) (of complaints)
    (words "tilt" "tip" "tipped" "tipped up" "lean" "leaning over" "on its side" "on the side"
      "upside down" "sideways" "turned on its side" "turn it on its side" "held level"
      "on the level" "tip it up" "angle" "turn on its side" "tip it over" "hold it on its side"
      "turn it sideways" "tip on its side" "lean over" "vertical" "on end" "upright" "stood on end"
      "at an angle" "slant" "overhead" "level ground" "tipped over" "tilted over" "on edge"
      "held up" "point it down" "nose down" "nose up")
    (basis common-practice))
  (same-words (id slope) (of complaints)
    (words "slope" "bank" "hill" "uphill" "hillside" "incline" "gradient" "up hill" "downhill"
      "down hill" "steep" "ditch" "ramp" "banking" "camber" "verge" "hilly")
    (basis common-practice))
  (same-words (id load) (of complaints)
    (words "load" "under load" "put to work" "put it to work" "working hard" "thick grass" "long grass"
      "wet grass" "tall grass" "heavy grass" "in the cut" "hits grass" "deep snow" "wet snow"
      "heavy snow" "in the wood" "into the wood" "hard work on it" "start to cut" "starts to cut"
      "starts mowing" "when working" "into a log" "through a log" "in the log" "hard ground"
      "thick stuff" "touch the wood" "dig" "soil" "long stuff" "cutting wood" "any work"
      "proper work" "splitting" "a big log" "split a log" "pushing snow" "heavy going" "wood" "logs"
      "branch" "branches" "when mowing" "when cutting" "while mowing" "while cutting" "tough stuff"
      "in anger" "cutting hard" "cuts grass" "lawn" "grass" "snow" "log" "turf" "clay" "work hard"
      "put in the work")
    (basis common-practice))
  (same-words (id engages-blades) (of complaints)
    (words "engage tool" "put tool in" "put tool on" "drop tool" "engage the deck" "put the blades in"
      "pto" "engage the pto" "blades on" "engage the cutters" "tool in" "tool go in" "blade lever"
      "tool engaged" "start tool" "drop the deck" "switch the blades on" "clutch in" "blades start")
    (basis common-practice))
  (same-words (id plugs-in) (of complaints)
    (words "plug in" "plug something in" "plugged in" "plug anything in" "heater" "plug things in"
      "tool plugged in" "drill" "saw plugged in" "draw current" "extension lead")
    (basis common-practice))
  (same-words (id stood) (of complaints)
    (words "stood" "sat" "sit" "stand" "stored" "storage" "parked" "laid up" "put away" "lay" "lain"
      "standing about" "left in" "sat in" "idle since" "not been used" "not used" "not run since"
      "dug out" "got it out" "unused" "hibernated" "untouched" "not touched" "stowed" "sitting idle"
      "sitting about" "abandoned" "out of use" "not had it out" "left out" "left outside"
      "dragged out" "came out of" "out of the shed")
    (basis common-practice))
  (same-words (id long-while) (of complaints)
    (words "winter" "year" "month" "summer" "season" "spring" "autumn" "last year" "all winter"
      "last summer" "over the winter" "since last year" "fall" "winters" "years" "decade" "ages ago"
      "since autumn" "months" "donkeys years" "last time" "weeks")
    (basis common-practice))
  (same-words (id shed) (of complaints)
    (words "shed" "garage" "barn" "outhouse" "outbuilding" "cellar" "basement" "loft")
    (basis common-practice))
  (same-words (id repaired) (of complaints)
    (words "repair" "fix" "service" "change" "replace" "fit" "swap" "rebuild" "rebuilt"
      "put back together" "put it back together" "took it apart" "worked on" "work on it" "new part"
      "fiddle" "messing with" "tinker" "strip" "stripped down" "took apart" "put a new" "overhaul"
      "adjust" "new carburettor" "new plug" "new belt" "put new" "tweak" "adjusted" "took to bits"
      "taken to bits" "pulled apart" "had it in bits" "fettle" "came back from" "back from" "shop"
      "dealer" "workshop" "cleaned" "clean" "install" "put a different" "renewed" "new filter"
      "new chain" "new blade" "new coil" "new head gasket")
    (basis common-practice))
  (same-words (id since) (of complaints)
    (words "since" "ever since" "until" "till" "from when")
    (basis common-practice))
  (same-words (id worse) (of complaints)
    (words "worse" "plays up" "play up" "not right" "never been right" "not been right" "no better"
      "trouble" "misbehave" "misbehaving" "no good" "never the same" "acting up" "acts up"
      "not the same" "wrong with it" "gone wrong" "rubbish since" "not happy")
    (basis common-practice))
  (same-words (id enquiry) (of complaints)
    (words "price" "quote" "quotation" "cost" "how much" "charge for" "sell" "sale" "buy" "bought" "pay"
      "payment" "phone" "telephone" "email" "collect" "collection" "deliver" "delivery"
      "opening hours" "what time" "appointment" "booking" "book it in" "manual" "instructions"
      "invoice" "receipt" "estimate" "how long will it take" "second hand" "secondhand" "colour"
      "paint" "sticker" "guarantee" "warranty" "spare" "part number" "what oil" "what plug"
      "recommend" "worth fixing" "worth repairing" "due a service" "full service" "annual service"
      "sharpen" "customer" "belongs" "neighbour" "address" "when ready")
    (basis common-practice))
  (same-words (id intake) (of complaints)
    (words "intake" "inlet" "throat" "carburettor throat" "carburettor mouth" "carburettor intake")
    (basis common-practice))
  (same-words (id pump) (of complaints) (words "pump") (basis common-practice))
  (same-words (id stays-put) (of complaints) (opposite drives-along)
    (words "goes nowhere" "just sits there" "stays put" "stays still" "stands still" "goes no where"
      "stay where it is")
    (basis common-practice))
  (same-words (id connected) (of complaints)
    (words "connected" "attached" "linked")
    (basis common-practice))
  (same-words (id broken) (of complaints)
    (words "broken" "broke" "snapped" "snap" "bust" "busted" "gone missing" "vanished")
    (basis common-practice))
  (same-words (id hurts) (of complaints)
    (words "hurts" "wrist" "thumb" "knuckles" "shoulder" "elbow" "arm")
    (basis common-practice))
  (same-words (id pause) (of complaints)
    (words "rest" "lunch" "tea" "coffee" "cuppa" "breather" "refuel" "stop for" "empty the bag"
      "empty the box" "empty the grass box" "stop to empty" "top up the tank" "ran out of petrol"
      "run out of petrol" "gas up" "switch off for" "fill the tank" "filled it with petrol"
      "fill with petrol" "put petrol in" "fuelled up")
    (basis common-practice))
  (same-words (id first-time-out) (of complaints)
    (words "first time out" "first time this year" "first use" "first outing" "first run" "first mow")
    (basis common-practice))
)
