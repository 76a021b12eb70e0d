; Templates of what is known about the trade: every fact in facts/ is one of these.
; The reader checks each fact against them before the engine sees it, so a wrong
; slot name, type or word is reported by file and line.
;
; Slots met again and again:
;   id          permanent name, lower case with hyphens; never reused, even when retired
;   needs       features the machine must have (see facts/features.clp); all of them
;   basis       published | common-practice | memory | estimate
;   source      id of a source fact; required when the basis is published or memory
;   place       where in the source: table, row, page, paragraph
; A chance is a word (never seldom sometimes even often usually always) or a number
; between 0 and 1, both ends left out.

(deftemplate source
  "A document that statements rest on. status says whether its text was read, read in
   a reproduction, or only remembered; a remembered source cannot back 'published'."
  (slot id (type SYMBOL) (default ?NONE))
  (slot title (type STRING) (default ?NONE))
  (slot edition (type STRING))
  (slot kind (type SYMBOL)
    (allowed-symbols regulator standard handbook army-manual extension textbook)
    (default ?NONE))
  (slot status (type SYMBOL) (allowed-symbols read reproduction memory) (default ?NONE))
  (slot note (type STRING)))

(deftemplate feature
  "Something a machine has or has not. A group with (one-of yes) is a choice: having one
   of the group means lacking the rest. brings: features that go with it unless told
   otherwise; bars: features that cannot go with it. ask is how the person is asked for it."
  (slot id (type SYMBOL) (default ?NONE))
  (slot name (type STRING) (default ?NONE))
  (slot group (type SYMBOL) (default ?NONE))
  (slot one-of (type SYMBOL) (allowed-symbols yes no) (default no))
  (multislot brings (type SYMBOL))
  (multislot bars (type SYMBOL))
  (slot ask (type STRING) (default ?NONE)))

(deftemplate machine-class
  "A kind of machine and what is usual on it. has: taken as true until told otherwise;
   may: fitted on some, so unknown until told. Anything else is taken as lacking.
   worth: what a sound used one is worth, in minutes of shop time."
  (slot id (type SYMBOL) (default ?NONE))
  (slot name (type STRING) (default ?NONE))
  (multislot has (type SYMBOL))
  (multislot may (type SYMBOL))
  (multislot also-called (type STRING))
  (slot worth (type INTEGER) (range 1 100000) (default 300))
  (slot basis (type SYMBOL) (allowed-symbols published common-practice memory estimate) (default ?NONE)))

(deftemplate caution
  "A warning shown before the instructions of every check, cover or repair that names it.
   defer-to: whose word goes before ours (the maker's manual, a regulator, a licensed trade).
   needs: features without which it does not concern the machine."
  (slot id (type SYMBOL) (default ?NONE))
  (multislot needs (type SYMBOL))
  (slot text (type STRING) (default ?NONE))
  (slot defer-to (type STRING) (default ?NONE))
  (slot basis (type SYMBOL) (allowed-symbols published common-practice memory estimate) (default ?NONE))
  (slot source (type SYMBOL))
  (slot place (type STRING)))

(deftemplate cover
  "Something that has to come off to reach a part. under: the cover that must come off
   first. refit: what to look at and do when it goes back, one line each.
   run-without: may the engine be run while it is off?"
  (slot id (type SYMBOL) (default ?NONE))
  (slot name (type STRING) (default ?NONE))
  (slot under (type SYMBOL) (default nothing))
  (multislot needs (type SYMBOL))
  (slot minutes-off (type NUMBER) (range 0 600) (default ?NONE))
  (slot minutes-on (type NUMBER) (range 0 600) (default ?NONE))
  (slot run-without (type SYMBOL) (allowed-symbols yes no) (default ?NONE))
  (multislot tools (type STRING))
  (multislot cautions (type SYMBOL))
  (multislot refit (type STRING))
  (slot may-damage (type STRING))
  (slot basis (type SYMBOL) (allowed-symbols published common-practice memory estimate) (default ?NONE))
  (slot source (type SYMBOL))
  (slot place (type STRING)))

(deftemplate complaint
  "What the owner says is wrong. says: words that customers use, for matching free text.
   near: complaints that owners mix up with this one; a fault that leads to one of them may
   be told as this one (setting said-loosely). anyway: how often an owner says it of a
   machine with nothing broken."
  (slot id (type SYMBOL) (default ?NONE))
  (slot name (type STRING) (default ?NONE))
  (slot ask (type STRING) (default ?NONE))
  (multislot says (type STRING))
  (multislot near (type SYMBOL))
  (multislot needs (type SYMBOL))
  (slot runs (type SYMBOL) (allowed-symbols yes no dies unknown) (default unknown))
  (slot anyway (type SYMBOL NUMBER) (default 0.02))
  (slot basis (type SYMBOL) (allowed-symbols published common-practice memory estimate) (default ?NONE)))

(deftemplate owner-says
  "What owners of made-up machines (pullcord practice) say who have this complaint: whole
   sentences that say it and nothing else that a check could find otherwise."
  (slot complaint (type SYMBOL) (default ?NONE))
  (multislot words (type STRING))
  (slot basis (type SYMBOL) (allowed-symbols published common-practice memory estimate) (default ?NONE)))

(deftemplate check
  "Something to ask, look at, listen for, measure or try.
   results: first what a sound machine gives; then the others, the weaker before the
     stronger: where two faults would give two different results, the later one shows.
   labels, means: one text per result, in the same order.
   anyway: for every result after the first, how often it shows although nothing listed
     is wrong (one chance each; together under 1).
   engine: what the engine must be doing. any = asked or looked at without touching it.
   off: covers that must be off first (those under them are added by themselves).
   quantity, unit, tolerance: for kind measure only; tolerance is the usual error of the
     instrument, one standard deviation, in the same unit.
   possible: for kind measure only; the lowest and highest reading that can be true on any
     machine, broken ones too. What lies outside is a slip of the pen, and is asked for again.
   destroys: what may not survive the check, empty if nothing.
   mistakes: the common ways of doing it wrong."
  (slot id (type SYMBOL) (default ?NONE))
  (slot name (type STRING) (default ?NONE))
  (slot system (type SYMBOL)
    (allowed-symbols fuel air ignition compression exhaust lubrication governor starting driven use)
    (default ?NONE))
  (slot ask (type STRING) (default ?NONE))
  (slot kind (type SYMBOL) (allowed-symbols look listen measure try ask) (default ?NONE))
  (multislot results (type SYMBOL) (default ?NONE))
  (multislot labels (type STRING))
  (multislot means (type STRING))
  (multislot anyway (type SYMBOL NUMBER))
  (slot minutes (type NUMBER) (range 0.1 600) (default ?NONE))
  (multislot tools (type STRING))
  (multislot steps (type STRING))
  (multislot off (type SYMBOL))
  (multislot needs (type SYMBOL))
  (slot engine (type SYMBOL) (allowed-symbols any stopped cold cranking running hot) (default any))
  (slot quantity (type SYMBOL)
    (allowed-symbols none pressure length resistance voltage current temperature speed frequency
      volume torque time ratio mass flow angle)
    (default none))
  (slot unit (type STRING))
  (slot tolerance (type NUMBER) (default 0))
  (multislot possible (type NUMBER))
  (slot destroys (type STRING))
  (multislot cautions (type SYMBOL))
  (multislot mistakes (type STRING))
  (multislot also-called (type STRING))
  (slot basis (type SYMBOL) (allowed-symbols published common-practice memory estimate) (default ?NONE))
  (slot source (type SYMBOL))
  (slot place (type STRING)))

(deftemplate bands
  "What a reading means on one kind of engine: results in rising order of the reading and
   the limits between them (one fewer), so that there can be no gap and no overlap. Of the
   bands that fit the engine the most particular is used (most needs); the maker's figure
   on the spec card comes before all of them."
  (slot id (type SYMBOL) (default ?NONE))
  (slot check (type SYMBOL) (default ?NONE))
  (multislot needs (type SYMBOL))
  (multislot results (type SYMBOL) (default ?NONE))
  (multislot limits (type NUMBER) (default ?NONE))
  (slot unit (type STRING) (default ?NONE))
  (slot note (type STRING))
  (slot basis (type SYMBOL) (allowed-symbols published common-practice memory estimate) (default ?NONE))
  (slot source (type SYMBOL))
  (slot place (type STRING)))

(deftemplate fault
  "Something that is wrong, or is done wrong. base-rate: chance that a machine brought in
   has it (before anything is known). sort: what kind of trouble it is; use = the machine is
   sound and it is how it was used or set. looks-like: pairs of a fault it is confused with
   and the check that parts them."
  (slot id (type SYMBOL) (default ?NONE))
  (slot name (type STRING) (default ?NONE))
  (slot system (type SYMBOL)
    (allowed-symbols fuel air ignition compression exhaust lubrication governor starting driven use)
    (default ?NONE))
  (slot sort (type SYMBOL)
    (allowed-symbols wear dirt setting damage assembly consequence use) (default ?NONE))
  (multislot needs (type SYMBOL))
  (slot base-rate (type SYMBOL NUMBER) (default ?NONE))
  (slot is (type STRING) (default ?NONE))
  (slot comes-about (type STRING) (default ?NONE))
  (slot shows (type STRING) (default ?NONE))
  (multislot looks-like (type SYMBOL))
  (slot repair (type SYMBOL) (default ?NONE))
  (slot proof (type STRING) (default ?NONE))
  (slot basis (type SYMBOL) (allowed-symbols published common-practice memory estimate) (default ?NONE))
  (slot source (type SYMBOL))
  (slot place (type STRING)))

(deftemplate base-rate
  "A base rate for one machine class, where it differs from the fault's own."
  (slot fault (type SYMBOL) (default ?NONE))
  (slot class (type SYMBOL) (default ?NONE))
  (slot chance (type SYMBOL NUMBER) (default ?NONE))
  (slot basis (type SYMBOL) (allowed-symbols published common-practice memory estimate) (default ?NONE)))

(deftemplate leads
  "A fault leads to a complaint: the chance that the owner of a machine with this fault
   says so."
  (slot fault (type SYMBOL) (default ?NONE))
  (slot complaint (type SYMBOL) (default ?NONE))
  (slot chance (type SYMBOL NUMBER) (default ?NONE))
  (slot basis (type SYMBOL) (allowed-symbols published common-practice memory estimate) (default ?NONE))
  (slot source (type SYMBOL))
  (slot place (type STRING)))

(deftemplate sign
  "What a fault makes a check show: the chance of this result when the fault is there. A
   fault may have signs for several results of one check; they add to at most 1, and what
   is left falls to the first result."
  (slot fault (type SYMBOL) (default ?NONE))
  (slot check (type SYMBOL) (default ?NONE))
  (slot result (type SYMBOL) (default ?NONE))
  (slot chance (type SYMBOL NUMBER) (default ?NONE))
  (slot why (type STRING))
  (slot basis (type SYMBOL) (allowed-symbols published common-practice memory estimate) (default ?NONE))
  (slot source (type SYMBOL))
  (slot place (type STRING)))

(deftemplate repair
  "What puts a fault right. off: covers that must be off. parts: by kind, never by maker.
   reuse: what may go back and what may not."
  (slot id (type SYMBOL) (default ?NONE))
  (slot name (type STRING) (default ?NONE))
  (slot minutes (type NUMBER) (range 0.1 6000) (default ?NONE))
  (slot parts-cost (type NUMBER) (range 0 6000) (default 0))
  (multislot parts (type STRING))
  (multislot consumables (type STRING))
  (multislot tools (type STRING))
  (multislot steps (type STRING))
  (multislot off (type SYMBOL))
  (multislot cautions (type SYMBOL))
  (slot reuse (type STRING))
  (slot basis (type SYMBOL) (allowed-symbols published common-practice memory estimate) (default ?NONE))
  (slot source (type SYMBOL))
  (slot place (type STRING)))

(deftemplate no-tool
  "A tool that this shop does not have, called as the checks call it. borrow: minutes that getting
it takes, which its checks and repairs cost besides; 0: it cannot be had, and no check that needs it
is asked for."
  (slot name (type STRING) (default ?NONE))
  (slot borrow (type NUMBER) (default 0)))

(deftemplate retired
  "An id that is no longer used and must not be used again."
  (slot id (type SYMBOL) (default ?NONE))
  (slot replaced-by (type SYMBOL) (default nothing))
  (slot why (type STRING) (default ?NONE)))

(deftemplate same-words
  "Words and phrases that owners and mechanics use for one and the same thing, so that one
   stands for the other when free text is matched. opposite: the same-words that these are the
   contrary of (keeps running: not dies). sort: thing unless told otherwise; little for words
   that say nothing; linking for words that count only inside a phrase; no for ways of saying
   no; break for words between two thoughts. of: complaints when they are one thing only in
   the mouth of an owner (any blade is a tool; to name a check, blade and chain differ). Endings (-s, -ing, -ed, -ly) need not be listed. A word stands in one list only."
  (slot id (type SYMBOL) (default ?NONE))
  (multislot words (type STRING) (default ?NONE))
  (slot sort (type SYMBOL) (allowed-symbols thing little linking no break) (default thing))
  (slot of (type SYMBOL) (allowed-symbols everything complaints) (default everything))
  (slot opposite (type SYMBOL))
  (slot basis (type SYMBOL) (allowed-symbols published common-practice memory estimate) (default ?NONE)))

(deftemplate setting
  "A number that the weighing and the advice use everywhere. why: what it stands for."
  (slot id (type SYMBOL) (default ?NONE))
  (slot value (type NUMBER) (default ?NONE))
  (slot why (type STRING) (default ?NONE))
  (slot basis (type SYMBOL) (allowed-symbols published common-practice memory estimate) (default ?NONE)))
