; What owners of made-up machines say when they bring one (pullcord practice): whole sentences, in
; everyday words. A sentence says its complaint and nothing else that could be checked: not that
; it hit a stump, nor that the plug is new, since nobody knows whether that fits what is hidden.
; It must be true of every machine that can have the complaint (no rope where there may be a key).
; Each is understood at the bench as its own complaint or one that owners mix up with it
; (tests/practice). To add one: put a sentence into the list of its complaint.

(deffacts owners-starting "owners whose machine will not turn or start"
  (owner-says (complaint will-not-turn) (basis estimate)
    (words "It has locked up solid. I cannot turn it over for love nor money."
      "Nothing moves. It is as if somebody had welded it: stuck solid."
      "I think it has seized. It will not turn at all."
      "It is jammed. I did not want to force it."
      "It will not turn over, not an inch."))
  (owner-says (complaint pulls-hard) (basis estimate)
    (words "It takes two of us to pull it, it is that hard."
      "It kicks back. It nearly had my fingers off."
      "The rope snatches out of my hand when I pull."
      "I can hardly pull it any more, it is so stiff."
      "It is very hard to pull. My daughter has given up on it."))
  (owner-says (complaint pulls-free) (basis estimate)
    (words "The rope just spins and nothing happens."
      "I pull and there is no resistance at all, as if nothing were on the other end."
      "The cord comes out far too easily and the engine does not turn."
      "It pulls too easy. Something has let go in there."))
  (owner-says (complaint starter-clicks) (basis estimate)
    (words "I turn the key and it just clicks."
      "Nothing when I turn the key. Not a sound, or a click at best."
      "The starter is dead. I press it and it clicks, that is all."
      "Click, click, and that is that. The starter does nothing."))
  (owner-says (complaint starter-spins) (basis estimate)
    (words "The starter whirrs away, but the engine does not turn."
      "I can hear the starter spinning and nothing else happens."
      "It makes a whirring noise on the key and the engine stands still."
      "The starter spins on its own. It does not catch the engine."))
  (owner-says (complaint no-start-cold) (basis estimate)
    (words "It will not start. I have tried until I was blue in the face."
      "Not a cough. It turns over, but it will not fire up."
      "I cannot get it to start, whatever I do."
      "It is dead. Turns over fine, but it does not catch."
      "It just will not go. Can you have it running by Saturday?"
      "It turns and turns and never starts."))
  (owner-says (complaint hard-start-cold) (basis estimate)
    (words "It takes ages to start. Once it goes, it goes."
      "It is a pig to start from cold."
      "I have to try twenty times before it starts."
      "It is slow to start these days. It gets there in the end."
      "Hard to start, every single time. I am worn out before I begin."))
  (owner-says (complaint no-start-hot) (basis estimate)
    (words "When I stop for a cup of tea it will not start again until it has cooled."
      "It will not restart when it is hot."
      "First thing it starts all right, but once it is warm I cannot restart it."
      "I have to let it cool down before it will start again.")))

(deffacts owners-running "owners whose machine stops or runs badly"
  (owner-says (complaint starts-then-dies) (basis estimate)
    (words "It starts and then dies on me, every time."
      "It fires up, runs a few seconds and cuts out."
      "It starts and stops, starts and stops. I never get further than that."
      "It goes for a moment and then it dies again."
      "It catches, runs for a breath or two, and stops."))
  (owner-says (complaint runs-on-choke-only) (basis estimate)
    (words "It only runs with the choke on. Take it off and it dies."
      "The minute I take the choke off it stops."
      "As long as the choke is on it goes. Without, no chance."
      "It dies when I take the choke off, every single time."))
  (owner-says (complaint floods) (basis estimate)
    (words "It floods. The whole thing stinks of petrol when I try."
      "It keeps flooding itself. You can smell the petrol."
      "It is always flooded. I have had petrol everywhere."
      "It floods every time, my neighbour says."))
  (owner-says (complaint dies-hot) (basis estimate)
    (words "It runs fine for ten minutes and then it dies."
      "It cuts out when it gets hot."
      "After a while it just stops, as if somebody had switched it off."
      "It goes well to begin with. Then it is hot, and it cuts out."))
  (owner-says (complaint dies-tilted) (basis estimate)
    (words "It cuts out on the slope behind the sheds. On the flat it is fine."
      "As soon as I tilt it, it dies."
      "It stops on the bank every time."
      "Hold it level and it runs. Tip it and it cuts out."))
  (owner-says (complaint dies-under-load) (basis estimate)
    (words "It runs as long as I do nothing with it. The moment I put it to work it dies."
      "It stalls as soon as it is put to work."
      "It dies under load, every time I put it to work."
      "It stops dead the moment it is put to work."))
  (owner-says (complaint hunts) (basis estimate)
    (words "It surges: up and down, up and down, all by itself."
      "It revs up and down and I am not touching anything."
      "It hunts all the time. It sounds as if it could not make up its mind."
      "The speed goes up and down like a wave."))
  (owner-says (complaint no-full-speed) (basis estimate)
    (words "It will not rev up. It never gets to full speed."
      "It is slow at full throttle, even with nothing to do."
      "There is no top speed any more."
      "It does not reach full revs like it used to."))
  (owner-says (complaint bogs) (basis estimate)
    (words "When I give it gas it bogs down."
      "It hesitates when I open the throttle, and sometimes it nearly dies."
      "Idling is fine. Open the throttle and it stumbles."
      "It bogs as soon as I open the throttle."))
  (owner-says (complaint weak) (basis estimate)
    (words "It has no power. It runs, but it does not do the work."
      "It has lost its power. It used to go through anything."
      "It runs, but it is weak. As soon as there is some work to do it slows right down."
      "There is no go in it. No power at all when it works."
      "It is feeble. My father had more strength at ninety."))
  (owner-says (complaint will-not-idle) (basis estimate)
    (words "It will not idle. I have to keep it on the throttle."
      "It stalls at idle, every time I let go."
      "It dies when I let off the throttle."
      "The idle is so rough that it stops by itself."))
  (owner-says (complaint races) (basis estimate)
    (words "It races. It frightens me how fast it goes."
      "It screams like mad and will not slow down."
      "It revs far too high, whatever I do."
      "It will not slow down when I ease it back."))
  (owner-says (complaint will-not-stop) (basis estimate)
    (words "I cannot shut it off. The switch does nothing."
      "It will not stop when I switch it off."
      "I switch it off and it keeps running."
      "It won't shut off when I flick the switch. That is not safe, is it?"))
  (owner-says (complaint backfires-intake) (basis estimate)
    (words "It spits back through the carburettor."
      "It pops back through the carb at me."
      "It backfires through the intake, a spit and a pop."
      "It spits out of the carburettor when I open it up."))
  (owner-says (complaint bangs-exhaust) (basis estimate)
    (words "It bangs in the exhaust like a shotgun."
      "There are bangs from the exhaust. The neighbours have complained."
      "It backfires out of the exhaust. I jump every time."
      "It pops and bangs in the exhaust.")))

(deffacts owners-smoke-noise-leaks "owners who saw, heard or smelt something"
  (owner-says (complaint smoke-black) (basis estimate)
    (words "There is black smoke coming out of it."
      "It blows black smoke and there is soot all over."
      "The exhaust is sooty, and the smoke is black."
      "Black smoke, like an old bus."))
  (owner-says (complaint smoke-blue) (basis estimate)
    (words "It blows blue smoke."
      "Blue smoke, clouds of it. You cannot see the beans."
      "It smokes blue and smells of burning oil."
      "There is bluish smoke from the exhaust the whole time."))
  (owner-says (complaint smoke-white) (basis estimate)
    (words "White smoke comes out of it."
      "Clouds of white smoke, like a kettle."
      "It puffs out white smoke."
      "The smoke is white. I was told to tell you that."))
  (owner-says (complaint overheats) (basis estimate)
    (words "It gets far too hot."
      "It overheats. You could fry an egg on it."
      "It runs hot, you can smell it. I have stopped using it."
      "It gets so hot that I am afraid of it."))
  (owner-says (complaint knocks) (basis estimate)
    (words "It knocks. There is a hammering inside."
      "There is a knocking noise from inside the engine."
      "Something hammers in the engine, tock, tock, tock."
      "It has started knocking and I do not like the sound of it."))
  (owner-says (complaint vibrates) (basis estimate)
    (words "It shakes so badly that my hands go numb."
      "It vibrates like mad."
      "It shakes itself to bits."
      "The vibration is terrible. I cannot hold it for long."))
  (owner-says (complaint leaks-fuel) (basis estimate)
    (words "It leaks petrol."
      "There is petrol dripping from it."
      "There was a puddle of petrol under it."
      "It is losing fuel somewhere. You can smell it and see it drip."))
  (owner-says (complaint leaks-oil) (basis estimate)
    (words "It leaks oil all over the floor."
      "There is oil dripping from it."
      "I found a puddle of oil under it."
      "It is an oily mess underneath."))
  (owner-says (complaint uses-oil) (basis estimate)
    (words "It uses oil. I have to top it up all the time."
      "It burns oil. I am for ever topping it up."
      "It drinks oil like nobody's business."
      "It needs oil every time I use it."))
  (owner-says (complaint oil-level-rises) (basis estimate)
    (words "There is too much oil on the dipstick, and it smells of petrol."
      "The oil level goes up. I never knew oil to grow."
      "The oil smells of petrol."
      "The oil has gone thin and stands too high on the stick."))
  (owner-says (complaint noisy) (basis estimate)
    (words "It has become very loud."
      "It is so noisy that the committee has written to me."
      "It is much louder than it was."
      "It sounds like a tank.")))

(deffacts owners-work "owners whose machine does not do its work"
  (owner-says (complaint creeps-at-idle) (basis estimate)
    (words "It does not stand still when it idles: the tool keeps moving."
      "It creeps at idle. The tool turns although I do nothing."
      "The tool keeps turning at idle. That cannot be right."
      "When I let go of everything the tool still moves."))
  (owner-says (complaint pump-weak) (basis estimate)
    (words "The engine runs, but there is hardly any pressure."
      "There is no pressure. It dribbles."
      "The pump is weak. It takes for ever."
      "The pump pulses, and then there is no pressure at all."))
  (owner-says (complaint no-output) (basis estimate)
    (words "It runs, but there is no electricity coming out."
      "The engine goes, but there is no power at the sockets."
      "The lights are dim or dark, although it is running."
      "It runs all right and gives no power out."))
  (owner-says (complaint wrong-frequency) (basis estimate)
    (words "My meter says the frequency is wrong."
      "The clocks run wrong on it: the frequency is off."
      "They told me the hertz are wrong."
      "The frequency is wrong. My nephew put a meter on it."))
  (owner-says (complaint not-charging) (basis estimate)
    (words "The battery goes flat all the time. It does not charge."
      "I have to jump it every time I want to use it."
      "The battery is never charged, however long I run it."
      "It does not charge the battery any more."))
  (owner-says (complaint drive-slips) (basis estimate)
    (words "The engine runs, but it does not drive."
      "It slips. The engine roars and nothing moves."
      "The engine runs and the drive does not move."
      "The drive slips as soon as it has to pull."))
  (owner-says (complaint cuts-badly) (basis estimate)
    (words "The engine runs well, but it works badly. It is a disgrace."
      "It runs sweetly and works badly. I could do better by hand."
      "It does not do its work properly any more, although the engine is fine."
      "It does its work badly, and yet the engine runs well.")))

(deffacts owners-history "owners who tell when it began"
  (owner-says (complaint after-repair) (basis estimate)
    (words "It has been wrong ever since it was repaired."
      "Somebody worked on it, and since then it has not gone properly."
      "It was fine until my brother-in-law repaired it."
      "Ever since the service it has not been right."))
  (owner-says (complaint after-storage) (basis estimate)
    (words "It stood in the shed all winter, and now it is no good."
      "I got it out after a long time, and it is not right."
      "It sat since last year. Now I need it and it is no use."
      "It has not been used for years. Could you have a look?")))
