# What Chough says in English. Names, questions, reasons and cautions stand beside the knowledge itself, in the
# JSON files of rules/; here are the sentences that join them.

## Bits
list-last = { $first } or { $last }
line = { $text }
fewer-than = fewer than { $number }
years = { $number } years
days = { $number } days
not-known = not known
fact-line = { $fact }: { $value }
understood = I read: { $list }.
standing = Chough advises, it never certifies: local rules, the maker's instructions and a qualified installer decide.

## The frame of an answer
title-checks = Checks
title-checks-kn = Checks (1 kN is 225 lbf)
title-reject = Not to use
assumed = Not told, so I assumed (the worse case where there is one): { $list }.
title-cautions = Take care
always = Always: { $list }.
took = I took: { $list }.
rejected = { $what }: { $why }
limited = { $what }, only with limits: { $why }
reason = { $why }
deferral = This is advice, not a certificate. Local codes and the land manager, the maker's instructions, and a qualified installer on the spot come before it.
source-memory = { $title }, from memory
source-read-second-hand = { $title }, second hand
sources = Sources: { $list }.
sources-more = Sources: { $list }, and { $more } more (say "why").
footer = Answer { $id }, rules { $ruleset }. Say "why" for the whole chain.
footer-why = Answer { $id }, rules { $ruleset }.
check-mean = mean { $value }
check-characteristic = 5 % value { $value }
check-design = design value { $value }
check-plain = { $value }
check-met = { $name }: { $values }; needs { $limit }: met
check-atmost-met = { $name }: { $values }; at most { $limit }: met
check-atmost-short = { $name }: { $values }; at most { $limit }: NOT met
check-open = { $name }: { $values }; needs { $limit }: only on average, not proved
check-short = { $name }: { $values }; needs { $limit }: NOT met
check-length = installed length (EN 959)
check-plating = { $thickness } of zinc, years until it is gone
check-cure-share = share of its curing time
check-cured = hours since it was glued
check-bending = bent where it leaves the rock
check-edge = distance to the nearest edge or crack
check-spacing = distance between the anchors
check-tension = pulled out, { $mode }
check-shear = sideways, { $mode }
mode-steel = metal
mode-bondSteel = glue off the metal
mode-bondRock = glue out of the rock
mode-cone = rock cone
mode-pullThrough = through its clip
mode-pryOut = rock pried out
mode-edge = rock edge
mode-dowel = rock crushed under the shank

## why
title-why-facts = What I worked from
title-why-rules = Rules that applied
title-why-formulas = Formulas
title-why-sources = Sources
why-fact = { $line } ({ $origin })
why-rule = { $words } [{ $id }]
why-input = { $symbol } = { $value } ({ $from }; valid from { $least } to { $most })
why-from-fact = { $fact }, { $origin }
why-from-row = from the table { $row }
why-from-method = worked out on the way
why-formula = { $name }: { $symbols }; { $inputs } → { $value }{ $kind } ({ $source }, { $clause })
kind-mean = , a mean value
kind-characteristic = , a 5 % value
kind-design = , a design value
kind-plain = { "" }
origin-said = you said so
origin-assumed = assumed, nobody told
origin-club = your club's setting
origin-map = from the map
origin-measured = from the club's own tests

## Buttons
choice-dont-know = Don't know
choice-why = Why?
choice-back = Back
choice-restart = Begin anew
choice-settle = { $fact }: { $value }

## Talk
language-set = I answer in English now.
resumed = I still hold from last time: { $list }.
restarted = Forgotten. What would you like to know?
back-nothing = There is nothing to take back.
back-start = Taken back. What would you like to know?
why-nothing = I have not given an answer yet that I could explain.
what-about = Noted. What would you like to know about it?
greeting = Hello. Ask me about anchors in rock: which metal, which kind, how deep, which adhesive, how long to cure.
welcome = You are welcome. Pull-test before you trust.
help-material = Tell me where the anchor goes; rock, rain and climate help. For example: "which bolt for an overhanging limestone sea cliff?" or "is 316 ok on an inland crag?"
help-anchor = Tell me the rock and what the anchor is for. For example: "which kind of anchor for a belay in soft sandstone?"
help-embedment = Tell me kind, size, rock and adhesive. For example: "is a 10x80 glue-in in granite with epoxy deep enough?"
help-adhesive = Tell me how wet the hole and how warm the rock is. For example: "which glue in a damp hole at 8 °C?"
help-adhesive-amount = Tell me size and number. For example: "how much glue for 20 bolts 12 x 100?"
help-cure = Tell me the kind of adhesive and the temperature of the rock. For example: "how long must vinyl ester cure at 6 °C?"
help-hole = For example: "how do I clean the hole for a glue-in?"
help-spacing = Tell me the depth. For example: "how far from the edge for a 12x100?"
help-coating-life = Tell me thickness and place. For example: "how long does 50 µm of zinc last on an inland crag?"
help-inspect = Tell me what you see, on which metal, where. For example: "brown stain under a 304 hanger on a sea cliff, can I trust it?"
help-cost = Tell me price, work and life. For example: "which is cheaper over 50 years on a temperate inland crag, 316 at 20 euro or titanium at 43 euro, work 20?"
help-pulltest-plan = For example: "how do we proof test 20 belay glue-ins in granite?"
help-pulltest-result = Tell me the loads at which anchors gave way. For example: "we pulled 24.1 27.3 22.8 30.2 26 kN, what does it prove?"
help-compare = Tell me both rows of results. For example: "smooth: 33 35 37, rough: 36 44 51, is rough better?"
help-load = Tell me what is done with the anchor. For example: "how hard is a factor 1 fall with 80 kg?" or "what force on two bolts at 60 degrees with 2 kN?"
help-cautions = For example: "what should I watch out for when drilling in wet sandstone?"
help = Ask in your own words, for example:
    • which bolt for an overhanging limestone sea cliff?
    • is a 10x80 glue-in in granite with epoxy deep enough?
    • 12 x 100 in wet sandstone, 4 °C: which glue, and how much for 20 bolts?
    • how long must vinyl ester cure at 6 °C?
    Then: "why" for the chain behind an answer, "back" to take the last thing back, "restart" to begin anew. To correct something, just say it: "sorry, granite".
not-understood = I did not understand that as a question about anchors.
words-not-understood = I do not know these words: { $words }.
still-open = My last question is still open; "don't know" is a fine answer.
not-yet = I cannot answer questions on { $topic } yet. I can help with the topics below.
too-long = That is longer than { $most } characters, so I did not read it. Ask one question in a few lines.
file-not-yet = I cannot read files here. Tell me the numbers in words.
place-not-yet = I cannot read places here. Tell me how far the sea is, and whether rain reaches the anchor.
button-old = That button is from an older question and no longer fits.
impossible = "{ $text }" cannot be the { $fact }: I take { $least } to { $most }. Nothing was changed.
contradiction = { $one } and { $other } do not go together. Which of the two holds? Nothing was changed.
contradiction-relation = { $words } Nothing was changed.
out-of-range = { $what } comes to { $value }; the method covers { $least } to { $most }, so I give no number. Tell me a value within that range, or ask a qualified installer.
problem-unit-mismatch = "{ $text }": that unit does not fit. Which { $fact } do you mean? Nothing was changed.
problem-ambiguous = "{ $text }" can mean more than one thing. Please say it more exactly. Nothing was changed.
problem-conflict = "{ $text }" says two different things about the { $fact }. Which holds? Nothing was changed.
problem-not-a-number = I cannot read "{ $text }" as a number. Nothing was changed.
problem-impossible = "{ $text }" cannot be. Nothing was changed.

settings-none = Nothing is set for this chat.
settings-are = For this chat I hold, unless a message says otherwise: { $list }.
settings-how = To set: "/club soft sandstone, inland" (rock, place), "/club English", "/club inches", "/club only here". To clear: "/club clear".

## Topics, as buttons and in sentences
topic-material = which metal
topic-anchor = which kind of anchor
topic-embedment = deep and strong enough?
topic-adhesive = which adhesive
topic-adhesive-amount = how much adhesive
topic-cure = curing time
topic-load = loads
topic-pulltest-plan = planning a pull test
topic-pulltest-record = noting a pull test
topic-pulltest-result = results of pull tests
topic-compare = comparing options
topic-inspect = inspecting an anchor
topic-spacing = edges and spacing
topic-coating-life = how long a metal lasts
topic-cost = cost over the years
topic-hole = drilling and cleaning
topic-cautions = cautions
topic-permission = permission
topic-settings = club settings
topic-register = the register
topic-remind = reminders
topic-why = why
topic-help = help
topic-smalltalk = talk
topic-emergency = emergency
topic-refuse = what I do not do

## A metal, adhesive or kind that was asked for by name
asked-suitable = Yes, { $what } suits. { $why }
asked-limited = { $what }: only with limits. { $why }
asked-unsuitable = No, not { $what }. { $why }

## material
material-only = Use { $metals }, and nothing less: salt cracks stainless steel here.
material-anywhere = I do not know the place. What is fit for every place that I know: { $metals }. Tell me where the crag is; a milder place may allow more.
material-use = Use { $metals }.
material-limited = No metal is free of limits here; the best is { $metals }, with the limits below.
material-none = No metal that I know is fit for this place. Ask a corrosion engineer before you drill.
material-class = By the structural code this place needs resistance class { $class } (factor { $factor }).
material-class-boundary = By the structural code this place is on the limit of two classes (factor { $factor }); take { $class }.
material-beyond = The structural code for stainless steel does not cover such a place.
material-cracking = Risk that stainless steel cracks from salt: { $risk }.
material-kinds = Kind of anchor that suits what you told: { $kinds }.
material-kinds-limited = Kind of anchor, once the rock has been sounded: { $kinds }.
material-one-metal = Bolt, nut, washer, hanger, ring and chain: all of the one metal. The weakest part decides.

## two metals that touch
check-galvanic-marine = most that the two stand apart in sea water (limit by the sea)
check-galvanic-outdoors = most that the two stand apart in sea water (limit in open air inland)
check-galvanic-indoors = most that the two stand apart in sea water (limit indoors)
pairing-good = { $metal } with { $other }: one metal, they do each other no harm.
pairing-poor = { $metal } with { $other }: do not plan it; they bear each other, but the anchor is as good as the weaker of the two.
pairing-never = { $metal } with { $other }: never let these two touch.
pairing-untold = Tell me both metals; until then do not join them.
pairing-goes = Where they stay wet, the part of { $metal } is the one that goes.
pairing-small-anode = A small bolt in a big hanger of nobler metal goes fastest, and the part that goes is in the rock.
pairing-active = In a salty crevice { $metal } can lose its shield; then they stand up to { $volts } apart.
pairing-place = That they bear each other does not make either right for the place: tell me where the crag is.
pitting-line = Resistance to pitting, { $metal }: number { $pren }, place { $place } of { $count } stainless steels. It says nothing of cracking.

## salt and damp on a warm bolt
humidity-cracks = Dangerous for stainless steel: at { $surface } the air at the bolt has only { $humidity } humidity, and sea salt on it is a strong warm brine.
humidity-caution = Be careful: at { $surface } the air at the bolt has { $humidity } humidity.
humidity-low = Little danger of cracking at that moment: at { $surface } the air at the bolt has { $humidity } humidity.
humidity-none = No danger of cracking from salt: at { $surface } the air at the bolt has { $humidity } humidity.
humidity-film-concentrated = That lies in the dangerous band, { $driest } to { $wettest }: common salt dries below 75 %, but the magnesium salt of the sea stays liquid down to 33 %, as strong as it can be.
humidity-film-dilute = That is above the dangerous band, { $driest } to { $wettest }: the brine is thin now, and grows strong as it dries.
humidity-film-dry = That is below the dangerous band, { $driest } to { $wettest }: the salt is nearly dry now, and passes the band in the morning and in the evening.
humidity-dew = Dew forms on it when it is colder than { $dew }.
humidity-changes = It passes through other states every day: one reading clears no anchor. The place decides on the metal.

## coating-life
coating-place = Tell me where the crag is: without the place there is no life to reckon.
coating-life = Plan { $thickness } of zinc for { $worst }, no more; { $mean } at the usual rate.
coating-rate = Zinc loses about { $rate } in the first year there: class { $category } (between { $from } and { $to }; such an estimate is no better than −33 % to +50 %).
coating-hidden = The end of the zinc is where the steel begins to go, out of sight in the hole. Crevices and seeping water make it several times faster.

## anchor
anchor-use = Use { $kinds }.
anchor-limited = No kind is free of limits here; the best is { $kinds }, with the limits below.
anchor-none = No kind of anchor that I know is fit for what you told. Move the spot, or ask a qualified installer.
anchor-next = Tell me a size, and I check whether it is deep and strong enough.

## embedment
embedment-meets = { $diameter } × { $length } meets the minimums by this reckoning; prove it by a pull test in this rock.
embedment-test-first = { $diameter } × { $length } is not proved to be enough: test it in this rock before anyone trusts it.
embedment-too-short = { $diameter } × { $length } is too short: EN 959 asks for at least { $minimum } installed.
embedment-too-weak = { $diameter } × { $length } is too weak for this rock by this reckoning.
embedment-too-weak-assumed = { $diameter } × { $length } may be too weak: in the worst case that you have not ruled out, it is.
embedment-best-case = If all that is not told were good (sound rock, dry hole, keyed shank, no load that stays on): mean { $mean }, 5 % value { $characteristic } pulled out.
embedment-near-edge = { $diameter } × { $length }: too near an edge or crack, or its distance is not known. Measure it, and move if need be.
embedment-refuse = { $diameter } × { $length }: do not place it there, and not like this.
embedment-cannot = Without rock, kind and size of the anchor I give no number.
embedment-cannot-next = By EN 959 a glued-in anchor sits at least 70 mm (2¾ in) deep, a mechanical one at least 5 times the diameter of its hole; softer rock needs more.
embedment-governs = Pulled out, the { $mode } goes first: mean { $mean }, 5 % value { $characteristic }. Sideways, the { $side }: mean { $sideMean }, 5 % value { $sideCharacteristic }. (5 % value: 19 of 20 hold more.)
embedment-longer = Longer, { $size }: mean { $mean }, 5 % value { $characteristic } ({ $mode }).
embedment-fatter = Thicker, { $size }: mean { $mean }, 5 % value { $characteristic } ({ $mode }).
embedment-depth = Reckoned with { $depth } in the rock, counted from the face.
embedment-rebound = A rebound number of { $rebound } stands for rock of { $min } to { $max }; I count with the lower end. (Published laws read it as { $low } to { $high }.)
embedment-grade = Rock of grade { $grade } has { $min } to { $max }; I count with the lower end.
embedment-strength-capped = You told { $told }, but such rock reaches { $most } at most; I count with that.
embedment-find-class = Scratch the rock with a knife, strike it with a hammer and tell me how it answers (grade R0 to R6), or a rebound number: then I count with its class and not with its name.
embedment-lasting = The bond is counted at 60 %: the load stays on for days, or nobody told that it does not.
embedment-heat-warm = In the sun it gets warmer than 40 °C (104 °F): the bond is counted at 65 %, and only if the data sheet allows that warmth.
embedment-heat-softens = At the warmth you told, such an adhesive may soften: hardly any bond is counted.
embedment-oblique = Pulled at { $angle } from its axis: 5 % value { $characteristic }.
embedment-oblique-worst = Pulled out and sideways at once, weakest at { $angle } from its axis: 5 % value { $characteristic }.
embedment-chance = Of 1000 such anchors, pulled out, this many would hold less than { $least }: { $underLeast }; less than the { $seldom } that climbing seldom exceeds (common practice, no source): { $underSeldom }.
embedment-chance-use = Of 1000 such anchors, pulled out, this many would hold less than { $least }: { $underLeast }; less than the { $action } to count with in this use: { $underAction }; less than the { $seldom } that climbing seldom exceeds (common practice, no source): { $underSeldom }.
embedment-uiaa = Some editions of UIAA 123 ask { $aim } straight out (from memory): aim at that; about { $underAim } of 1000 would hold less.
embedment-upper-bound = Whether its clip slips through cannot be reckoned, only tested; the figures are an upper bound.

## embedment, no size told
sizing-meets = Smallest usual size that does, by this reckoning: { $diameter } × { $length } ({ $anchor }); prove it by a pull test in this rock.
sizing-test-first = Smallest usual size to try: { $diameter } × { $length } ({ $anchor }). It is not proved: test it in this rock before anyone trusts it.
sizing-average = As far as told, no usual size is sure to be enough; the strongest, { $diameter } × { $length } ({ $anchor }), is so only on average. Test it in this rock before anyone trusts it.
sizing-not-so = No size makes this right. The smallest that is strong enough is { $diameter } × { $length } ({ $anchor }), but not there or not like this.
sizing-none = No usual size is strong enough there by this reckoning.
sizing-none-next = Find sounder rock, take a better adhesive or a drier hole, or ask a qualified installer for pull tests in this rock.
sizing-best = If all that is not told were good (sound rock, dry hole, keyed shank, no load that stays on): { $diameter } × { $length } ({ $anchor }).
sizing-need = Needed: { $tension } straight out and { $shear } along the rock, held by { $share } of 100 such anchors.
sizing-kind = { $anchor }: { $diameter } × { $length }, 5 % value { $characteristic } pulled out.
sizing-kind-none = { $anchor }: no usual size is sure to be enough.
sizing-check-next = Tell me a size, and I check that one.

## adhesive
adhesive-use = Use { $what }.
adhesive-limited = No adhesive is free of limits here; { $what } can do, with the limits below.
adhesive-none = No adhesive may be used as it stands. Wait for a drier hole or warmer rock.
adhesive-cure-unknown = Tell me the temperature of the rock, and I give the curing time.

## amount
amount-size = Tell me diameter and depth, for example 12 × 100, and I reckon the amount.
amount-verdict = About { $volume } a hole, { $total } in all for { $holes ->
    [one] one hole
   *[other] { $holes } holes
 }, waste included.
amount-hole = { $volume } a hole ({ $diameter } rod in a { $hole } hole, { $depth } deep).
amount-total = { $anchors ->
    [one] 1 anchor
   *[other] { $anchors } anchors
 }, { $holes ->
    [one] 1 hole
   *[other] { $holes } holes
 }: { $total } with { $waste } % waste, at least { $cartridges ->
    [one] 1 cartridge
   *[other] { $cartridges } cartridges
 } of { $size } ml.
amount-legs = I took one hole for each of the two legs. If both legs sit in one hole, go by the maker's figure.
amount-too-tight = A gap of { $each } on each side is so tight that voids stay. Take the hole diameter that the maker states.
amount-too-wide = A gap of { $each } on each side is wider than any adhesive here fills. Take the hole diameter that the maker states.
amount-too-wide-for-most = A gap of { $each } on each side: by usual figures only { $who } fill it. Take the hole diameter that the maker states.
amount-nozzle = Of each cartridge { $lost } are counted as pumped away until the colour is even; a new nozzle after a break costs about as much again.
amount-gap-next = A tight or wide gap is not mended with more adhesive: find the maker's hole diameter, and leave this hole.
amount-check = If a hole takes much more than this, there is a void: stop, and do not trust it.

## cure
cure-sheet = The data sheet of your cartridge comes first; these are usual times for the kind, from memory.
cure-rock-temperature = Go by the temperature of the rock, not of the air, and by the coldest hour until it is cured.
cure-your-adhesive = Your adhesive
cure-by-sheet = Reckoned with the figures of the data sheet as you told them. Check them on the cartridge, and that they hold for a hole as wet as yours.
cure-sheet-short = The time you read on the sheet is far shorter than usual for this kind: read it again, hours and not minutes, load and not gel.
cure-below-sheet = { $what }: the coldest line you told is for { $lowest }, and the rock is colder. Read the sheet's line for that cold; without one it must not be used.
cure-above-sheet = { $what }: the warmest line you told is for { $highest }, and the rock is much warmer. Read the sheet's line for that warmth.
cure-spell = { $hours } at { $temperature }, where { $needed } are needed: { $share } % of the cure.
cure-spell-cold = { $hours } at { $temperature } count nothing: colder than this adhesive is known to cure.
cure-spells-probably = Usually cured by now: the spells you told add up to { $share } % of the curing time of { $what }. The data sheet decides.
cure-spells-not-yet = Do not load it yet: the spells you told add up to { $share } % of the curing time of { $what }.
cure-spells-rest = It needs about { $hours } more at { $temperature }.
cure-spells-warmer = As cold as it is now, waiting does not help: it needs warmer rock.
cure-spells-which = Which adhesive is it? Until you know, do not load it.
cure-spells-line = { $what }: { $share } % of its usual curing time.
cure-working = Work within { $working } of mixing; then nobody touches it.
cure-wet = Doubled, because the hole is wet or its moisture is not known.
cure-line = { $what } at { $temperature }: { $working } to work, { $hours } before load.
cure-line-wet = { $what } at { $temperature }: { $working } to work, { $hours } before load (doubled for a wet hole).
cure-too-cold = { $what }: too cold. Below { $lowest } it may never cure, however long you wait.
cure-too-hot = { $what }: too hot. Above { $highest } it sets before the bolt is in.
cure-temperature = Tell me the temperature of the rock: without it there is no curing time.
cure-any = Usual times at { $temperature }, by kind:
cure-wait = { $what } at { $temperature }: leave it { $hours } before any load.
cure-probably = { $what } at { $temperature }: usually cured after { $hours }, and { $since } have passed. The data sheet decides.
cure-not-yet = Do not load it yet: { $what } at { $temperature } needs { $hours }, and only { $since } have passed.

## hole
hole-verdict = Drill and clean in this order; a dusty hole is the commonest fault.
hole-size = Hole { $hole } wide and { $depth } deep, unless the maker says otherwise.

## inspect
inspect-trust = { $signs }: nothing that was told speaks against it. That is no proof that it is sound.
inspect-limit = { $signs }: use it only backed up, until somebody who knows has looked at it.
inspect-do-not-use = { $signs }: do not use it until somebody who knows has looked at it.
inspect-replace-now = { $signs }: do not use it again. Close it and replace it.
inspect-trust-next = Strike the rock and the anchor with a hammer, look at glue and hanger, and note what you saw.
inspect-limit-next = Back it up, tell the club, and have it tested or replaced.
inspect-do-not-use-next = Mark it so that nobody clips it, and tell the club.
inspect-replace-now-next = Mark it, take the hanger off if you can, tell the club, and look at its neighbours of the same kind and age.
inspect-interval-months-6 = Look at anchors like this every 6 months.
inspect-interval-months-12 = Look at anchors like this every year.
inspect-interval-years-2 = Look at anchors like this every 2 years.
inspect-interval-years-3 = Look at anchors like this every 3 years.
inspect-hidden = What cannot be seen: cracks in the metal, rust in the hole, glue that never cured.

## spacing
spacing-rule = Stay 1.5 times the depth, and at least 150 mm (6 in), from every edge and crack; anchors 3 times the depth, and at least 200 mm (8 in), apart.
spacing-verdict = For { $depth } depth: at least { $edge } from every edge and crack, and { $spacing } between anchors.
spacing-too-near = Too near. For { $depth } depth keep { $edge } from every edge and crack, and { $spacing } between anchors.
spacing-old-holes = Old holes count as cracks: keep twice their depth away, or fill them and keep 5 hole diameters.
spacing-hollow = Sound the whole circle with a hammer; a hollow note anywhere in it means another spot.

## load
load-cannot = Tell me what is done with the anchor, and I reckon the load: how hard a fall, the angle of two legs, span and sag of a line, or who hangs on it.
load-tell-more = For example: "factor 0.5 fall, 80 kg", "two bolts at 60 degrees, 2 kN", "lowering 90 kg", "line of 30 m, 1.5 m sag, 80 kg". Swings, jerks and stretched lines make several times the weight.
load-took-person = No weight was told: I took { $mass }, a heavy person with gear.
load-took-rescue = No weight was told: I took { $mass }, two persons and gear.
load-share = That is { $out } % of the 15 kN straight out and { $along } % of the 25 kN along the rock of EN 959: type tests in good concrete, not what your rock holds.
load-share-out = That is { $out } % of the 15 kN straight out of EN 959: a type test in good concrete, not what your rock holds.
load-share-along = That is { $along } % of the 25 kN along the rock of EN 959: a type test in good concrete, not what your rock holds.
load-above-rare = That is more than the { $rare } that common practice plans for as the rare highest load: climb or rig so that it cannot come to that.
load-design-met = Your tests' 5 % value over { $strength }, against { $load } times the load: met. Only for anchors like those tested, in that rock.
load-design-short = Your tests' 5 % value over { $strength } is less than { $load } times the load: not enough.
check-load-rare = rare highest load that common practice plans for
check-load-design = 5 % value of your tests, both factors counted
check-line-most = most line tension that slackliners advise, movement counted
load-plan = Common practice plans such an anchor for { $usual } in use and { $rare } as the rare highest load, each bolt alone.
load-haul = Hauling up over a carabiner pulls harder than lowering: { $haul }.

load-fall-bolt = Factor { $factor } fall, { $mass }: count with up to { $bolt } on the top bolt, { $climber } on the climber.
load-fall-belay = Factor { $factor } fall, { $mass }: count with up to { $climber } straight onto the belay, { $bolt } if the rope is clipped through a carabiner of it.
load-fall-common = With a common rope ({ $label } on its label), by the plain textbook sum: { $bolt } on the bolt, { $climber } on the climber.
load-fall-common-belay = With a common rope ({ $label } on its label), by the plain textbook sum: { $climber } straight onto it, { $bolt } if clipped.
load-rope-limit = No rope was told: I took the stiffest that EN 892 allows, 12 kN in its test fall. Give me the peak force on your rope's label, and I use that.
load-rope-label = I read the label as that of a single rope, tested with 80 kg; a half rope is tested with 55 kg and is stiffer than its label looks. Wet, icy or old ropes are stiffer too.
load-rope-told = Reckoned with the rope modulus that you told; wet, icy or old ropes are stiffer.
load-fall-drag = The bolt gets both strands, 1.66 times the climber's pull. Friction there keeps part of the rope from stretching, so the fall acts like factor { $effective } instead of { $factor }.
load-fall-strands = A bolt that the rope is clipped through gets both strands, 1.66 times the climber's pull.
load-fall-legs = On two bolts with { $angle }° between the legs: { $each } on each, and each must be able to take all of it.
load-fall-measured = Measured falls in a hall, for comparison: { $mean } at the bolt on average, { $most } at most. Bodies and belayers give, so most falls stay below this reckoning; never count on that.
load-fall-carabiner = A carabiner holds { $closed } with its gate shut and only { $open } with it open (EN 12275, basic kind).
load-fall-rope-out = Tell me how much rope is out: its length and the height of the fall set how hard it is.
load-fall-factor = Fall factor: height of the fall over rope out, 0 to 2. The same factor pulls as hard on a short rope as on a long one.
load-sling = Never climb above the belay on a static sling: a factor 1 fall onto it makes { $force }; slings and anchors break.
load-absorber = No number: such a fall is beyond what a rope, an anchor or a body survives without an energy absorber.
load-absorber-why = A fall factor above 2 happens on a via ferrata, where the lanyard is short and the fall is long.
load-absorber-next = Use a via ferrata set with an absorber for your weight. The rigger of the route sizes its anchors and cable.

load-legs = { $load } on two bolts at { $angle }° between the legs: { $each } on each, { $share } % of the load, as long as both share evenly.
load-legs-too-wide = Too wide: { $load } at { $angle }° between the legs puts { $each } on each bolt, { $share } % of the load. Never above 90°; 60° or less is good practice.
load-legs-unequal = { $load } on legs { $a }° and { $b }° from the vertical: { $first }, { $firstShare } %, on the first and { $second }, { $secondShare } %, on the second.
load-legs-unequal-wide = Too wide: { $load } on legs { $a }° and { $b }° from the vertical puts { $first }, { $firstShare } %, on the first and { $second }, { $secondShare } %, on the second. Never above 90° between them.
load-legs-sum = The two legs make { $sum }° between them, not { $told }°; two even legs at { $told }° would get { $each } each.
load-legs-narrow = 60° or less is good practice: lengthen the legs.
load-legs-each = Plan each bolt for all of it alone, { $load } and whatever moves and falls on top: the pull changes its direction, no sling shares evenly, and one bolt may fail.
load-legs-failure = If one leg fails and { $slack } of slack runs out in a static sling of { $length }, { $shock } comes on the other: tie it so that nothing can run out.
load-legs-triangle = Never thread one loop through both bolts (the triangle): that would be { $triangle } on each.
load-legs-lowering = While somebody is lowered over a carabiner there, all of this is 1.66 times as much: up to { $most } on one bolt.

load-line = { $load } in the middle of { $span } with { $sag } of sag: the line pulls { $tension } at each end while nobody moves. A qualified rigger decides.
load-line-tension = A line at { $tension } pulls that much at each end while nobody moves. A qualified rigger decides.
load-line-cannot = Without span and sag, or the tension, I cannot reckon what a line pulls.
load-line-rule = Rule of thumb: sag a tenth of the span pulls 2.5 times the weight on it, a twentieth 5 times, a fiftieth 12.5 times.
load-line-rigger = Highlines, rope bridges and rescue lines: I explain the forces and clear nothing. A qualified rigger plans, inspects and tests it.
load-line-bounce = Bouncing or falling into the leash made 1.7 to 1.9 times the pull of walking in published measurements: here up to { $moving }.
load-line-anchor = Riggers want each anchor point to hold at least 3 times the line tension, here { $anchor }, every leg able to take all of it (common practice).
load-line-half = Half the sag, { $sag }, would pull { $tension }.
load-line-own = The line's own weight adds { $added }.
load-line-both = Span and sag alone give { $tension }; the tension that you told is higher, so I took it.
load-line-pretension = I took the tension as that of the loaded line. If it is what you rig before anybody steps on, the loaded line pulls more.
load-line-slacken = Slackliners' advice is to keep the line below { $most }, movement counted: give it more sag.
load-line-ends = Two bolts at one end with { $angle }° between their legs: { $each } on each of that.
load-line-measured = Measured for comparison, 57 kg on 41 m of polyester webbing: 3.1 kN walking, 4.4 bouncing, 5.3 in a leash fall.

load-lower = Lowering { $mass } puts { $lower } on the top anchor; caught by a rope without slack, { $sudden }.
load-top-rope = Top-roping with { $mass }: { $lower } on the top anchor while lowering, { $sudden } when the rope catches without slack.
load-lower-friction = The anchor gets both strands: the climber's weight and what the belayer holds, 1.66 times the weight over a carabiner, twice over a pulley.
load-top-rope-slack = With slack of a tenth of the rope, on the stiffest rope that EN 892 allows: { $slack }. Measured and told of in top-roping: 1.5 to 3 kN (common practice).
load-abseil = Abseiling with { $mass }: { $hang } hanging still, { $jerky } when it goes in jerks.
load-abseil-jerk = Smooth abseiling stays at 1 to 1.5 kN a person; stops and jerks make 2 to 2.5 (common practice). Go smoothly.
load-rescue = Rescue load of { $mass }: { $hang } still, { $lower } lowered over a carabiner, { $haul } hauled over one. A qualified rigger decides.
load-rescue-rigger = I explain rescue loads and clear nothing: a qualified rigger or the rescue team plans it, on two anchors each able to take all of it.
load-rescue-shock = A slip or a shock with two persons makes { $least } to { $most } (common practice).
load-belay = A belay with { $mass } hanging in it carries { $hang }; a factor 2 fall straight onto it pulls up to { $fall }.
load-lead = A lead fall with { $mass }: plan the top bolt for { $rare }, the rare highest load; hard falls make 4 to 8 kN (common practice).
load-lead-factors = Upper estimates on the bolt, with the stiffest rope that EN 892 allows and nothing that gives: { $easy } at fall factor 0.1, { $usual } at 0.3, { $hard } at 0.5.
load-hang = { $mass } hanging still is { $hang }; let go onto a rope without slack, { $sudden }.
load-lower-of = Lowered over a carabiner: { $lower } on the anchor.

load-strength-cannot = What a bolt holds I cannot say without its rock, kind, thickness and length.
load-strength-open = Whether an anchor holds { $load } I cannot say without its rock, kind, thickness and length.
load-strength-minimums = By EN 959 a rock anchor holds 15 kN straight out and 25 kN along the rock in its type test, in good concrete. That is no working load, and soft rock holds less.
load-strength-tell = Tell me, for example, "12 x 100 glue-in in granite with epoxy"; and pull-test in that rock.
load-strength-signs = What is rusty, cracked, bent or loose has no strength that can be reckoned. Do not load it; ask me about inspecting it.

## results of pull tests
results-meets = { $count } pulls: mean { $mean }, 5 % value { $characteristic }. That is above the { $need } that EN 959 asks of a type test, and still no load to hang on.
results-upper = { $count } pulls: mean { $mean }, 5 % value { $characteristic }, but only as an upper bound, because the frame's feet stood near the anchor.
results-upper-open = { $count } pulls: mean { $mean }, 5 % value { $characteristic }; an upper bound as long as nobody says that the frame's feet stood clear of the anchor.
results-unproved = { $count } pulls: mean { $mean }, 5 % value only { $characteristic }. Not proved: it is below the { $need } that EN 959 asks of a type test.
results-weak = Too weak: { $count } pulls hold { $mean } on average, 5 % value { $characteristic }, and EN 959 asks { $need } of a type test.
results-scattered = Do not rely on these { $count } pulls: they scatter by { $scatter } %, mean { $mean }, 5 % value { $characteristic }. Find out first what differed between them.
results-too-few = { $count ->
    [0] Tell me the loads at which they gave way: at least 3 of them.
    [one] One pull says nothing about the next anchor: pull { $missing } more, of the same kind in the same rock.
   *[other] { $count } pulls say nothing about the next anchor: pull { $missing } more, of the same kind in the same rock.
 }
results-lowest = All you know is what that day's anchors held: { $value } the lowest.
results-how-many = 3 are the fewest, 5 are usual, 10 give a useful 5 % value.
results-equal = All { $count } results are the same: the readings were rounded or copied, so there is no strength in them.
results-equal-next = Read the peaks again, to a tenth of a kilonewton, or pull once more.
results-mean = Standard deviation { $deviation }, scatter { $scatter } %; the lowest held { $min }.
results-lognormal-few = 5 % value { $value } with 90 % confidence: 19 of 20 hold more. By the lognormal curve, because { $count } pulls are few{ $other }.
results-lognormal-scatter = 5 % value { $value } with 90 % confidence: 19 of 20 hold more. By the lognormal curve, because they scatter by more than 15 %{ $other }.
results-normal = 5 % value { $value } with 90 % confidence from { $count } pulls: 19 of 20 hold more. By the normal curve{ $other }.
results-other = ; the other curve gives { $value }
results-other-nonsense = ; the normal curve would fall below zero
results-cut = For scatter above 20 % (here { $scatter } %) assessments let only { $factor } of the 5 % value count: { $value }.
results-outlier-low = { $value } lies far below the rest. Ask what happened there: bad mix, void, crack, slipped frame? It stays in: such anchors are what the test is for.
results-outlier-high = { $value } lies far above the rest: check that reading. It stays in until an error is shown.
results-more = With the same mean and scatter, { $count } pulls in all would prove it.
results-more-useless = With the same mean and scatter not even { $count } pulls would prove it: longer or thicker anchors are needed.
results-bond = Bond of the glue over { $legs ->
    [one] one leg
   *[other] { $legs } legs
 } of { $diameter } × { $depth }: mean { $mean }, 5 % value { $low }.
results-bond-least = Bond, if { $legs ->
    [one] one leg
   *[other] { $legs } legs
 } of { $diameter } × { $depth } held by glue: at least { $mean } on average, 5 % value { $low }; more where something else gave way.
results-bond-update = The table says { $table } for { $adhesive }; with your pulls counted in, the middle is { $median }, the 5 % value for the next anchor { $low }.
results-direction = Taken as pulled straight out. If you pulled along the rock, hold it against { $need } instead.
results-missing = You told { $told } anchors but { $count } results. The others count too: why are they not there?
results-frame = If the feet of the frame stood nearer than twice the depth, they held the rock down: what broke shows less of the rock than of glue and metal.
results-mixed = Different failures are different rows of numbers: judge the rock, the glue and the metal apart.
results-steel = The metal broke first: rock and glue hold at least this, and how much more is not known.
results-few = { $count } results are few: each further one moves the 5 % value.
results-not-said = It holds for this rock, this kind, this installer and this weather. Of wet holes, lasting loads, corrosion and the next crag it says nothing.
results-all-above = All { $count } pulls held at least { $least }, and { $failed ->
    [0] none gave way
    [one] only one gave way
   *[other] only { $failed } gave way
 }: too few for a 5 % value.
results-no-fractile = A 5 % value needs at least { $needed } pulls to failure with different results.
results-share = With 95 % confidence, up to { $share } % of such anchors may still hold less than { $least }.
results-censored = { $count } pulls, { $failed } to failure and { $stopped } stopped before: middle { $median }, 5 % value { $characteristic }. { $ends }
results-censored-meets = Above the { $need } that EN 959 asks of a type test, and still no load to hang on.
results-censored-upper = An upper bound, unless the frame's feet stood clear of the anchor.
results-censored-unproved = Not proved: below the { $need } that EN 959 asks of a type test.
results-censored-weak = Too weak: EN 959 asks { $need } of a type test.
results-censored-scattered = They scatter too much to rely on: find out what differed.
results-stopped = A stopped pull counts as "at least so much". The 5 % value is set back as { $failed } real failures deserve.
results-censored-point = Without that penalty the fitted curve has its 5 % point at { $value }; its scatter is { $scatter } %.
check-pulls-out = straight out, against the type-test minimum of EN 959
check-pulls-sideways = along the rock, against the type-test minimum of EN 959

## proof tests
proof-load = { $load }
proof-load-untold = that load
proof-held = { $count ->
    [one] One anchor
   *[other] { $count } anchors
 } held { $load }: no gross fault in { $count ->
    [one] that one
   *[other] those
 }, but of the others up to { $share } % may still be bad.
proof-proves = It proves { $load }, that day, in that direction, for those anchors. It may even have hurt one.
proof-needed = To be 95 % sure that at most one in twenty is bad, { $needed } would have to hold.
proof-little = It proves nothing about strength above that load, lasting loads, or cracks from corrosion.
proof-failure-instead = How strong the anchors are is told by at least 3, better 5 to 10, pulled until they fail.
proof-count = Tell me how many anchors held: without the number it proves nothing.
proof-one-gave-way = Stop: one anchor failed its proof test, and that puts all the others in doubt.
proof-several-gave-way = Stop: several anchors failed. Close the route and prove every one, or replace them.
proof-failed-out = What moved or failed is out: mark it, remove it, keep the part.
proof-double = Find the reason, then prove at least 5 % of all anchors there, and at least 6.
proof-all = Test all anchors of that kind there, and think again about rock, anchor and adhesive.
proof-why = Look for the reason: dust, bad mix, cold, void, soft or cracked rock, wrong hole.

## comparing two groups
compare-groups = Tell me the loads of both groups, for example: smooth 33 35 37, rough 36 44 51.
compare-too-few = Each group needs at least 3 results before they can be compared.
compare-example = 5 to 10 results in each group show more.
compare-no-scatter = Neither group scatters: the readings were rounded or copied, so there is nothing to compare.
compare-first = The first group is stronger: chance alone would show such a difference in { $chance } % of cases.
compare-second = The second group is stronger: chance alone would show such a difference in { $chance } % of cases.
compare-none = No difference is shown; that does not mean that they are equal (chance alone: { $chance } % of cases).
compare-group-first = First group: { $count } pulls, mean { $mean }, scatter { $scatter } %, lowest { $min }.
compare-group-second = Second group: { $count } pulls, mean { $mean }, scatter { $scatter } %, lowest { $min }.
compare-interval = First less second: { $difference }; with 95 % confidence between { $low } and { $high }.
compare-interval-ratio = First over second: { $ratio } times; with 95 % confidence between { $low } and { $high } times.
compare-logs = Compared by their logarithms, because a group scatters by more than 20 % (Welch's test).
compare-plain = By Welch's test, which lets the two scatter differently.
compare-needed = To see a difference of 20 % at this scatter, each group needs about { $needed } pulls.
compare-hopeless = At this scatter not even { $most } pulls in each group would show a difference of 20 %.
compare-same-failure = Only pulls that failed in the same way may be compared.
compare-lowest = What counts for a life is the weakest anchor, not the mean: ask for the 5 % value of each group too.

## planning a pull test
plan-failure-first = Pull at least { $fewest } spare anchors to failure first, then prove the ones that stay with { $load }.
plan-failure = Pull at least { $fewest } anchors that you give up to failure, in this rock and of this kind.
plan-proof = Prove anchors that stay with { $load } straight out, no more: it finds gross faults only.
plan-failure-count = To failure: { $fewest } is the fewest for each rock and kind, { $good } give a useful 5 % value; in rock that will not be climbed on.
plan-failure-rate = Load steadily so that the peak comes after { $shortest } to { $longest } minutes, and go on 2 to 5 mm beyond it.
plan-failure-keep = Write down every peak and what gave way. The weak ones are the result.
plan-which-all = Proof: every anchor.
plan-which-tenth = Proof: one in ten, and at least { $fewest } of each stretch of rock.
plan-which-all-of = Proof: every anchor, { $tested } in all.
plan-which-tenth-of = Proof: one in ten, and at least { $fewest } of each stretch of rock: { $tested } of { $count }.
plan-proof-load = Proof load { $load } (usual to { $most }) straight out; hold it { $shortest } to { $longest } seconds.
plan-proof-too-high = { $wanted } is too much for an anchor that stays: a proof load may hurt what it tests, and some eyes bend from 6 to 10 kN.
plan-proof-above-half = Half of the 5 % value that I reckon is only { $cap }. Pull spare ones to failure first: a proof load above half of the true 5 % value may break good anchors.
plan-accept = Passed when the load does not drop by more than 5 %, nothing slips, a glue-in moves no more than 0.5 mm (other kinds 1 mm), and no crack or ring of dust shows.
plan-frame = Feet of the frame at least twice the depth away on each side, or the rock cannot break out and the result is too good.
plan-frame-depth = Feet of the frame at least { $side } away on each side (a ring { $ring } wide inside), or the rock cannot break out and the result is too good.
plan-energy = At { $force } a frame that moves 5 mm holds { $energy }: a 1 kg part flies off at { $speed }. Ten metres of nylon webbing in line would hold about { $times } times that: chain and rods only.
plan-stand = Nobody in line with the pull; 3 m away to the side, pump on a hose; the ground below closed; tester on an anchor of their own.
plan-write = Note rock, wetness, size, adhesive and its age, temperature, feet of the frame, peak load, what gave way; take a picture.
plan-then = Then tell me all the loads, and I work out mean and 5 % value.
check-proof = half of the reckoned 5 % value, against the proof load

## life of a metal
life-place = Tell me where the crag is: without the place there is no life to plan.
life-suitable = Plan { $range } for { $what } there: a planning range, never a guarantee.
life-limited = Plan no more than { $low } years for { $what } there, and inspect it: { $why }
life-none = Plan no life at all for { $what } there: { $why }
life-was = Where it was placed all the same it lasted { $range }, and some broke without a sign.
life-range = { $low } to { $high } years
life-range-one = { $low } years
life-because = What sets the range there: { $why }.
life-because-cracks = What sets the range there is the risk that it cracks: { $why }.
life-practice = The range is common practice, not a law of nature: the first stain, crack or loose part ends it.
life-hidden = Crevices, seeping water and welds age faster than open metal, and the part in the hole is not seen.
life-rock = Beyond that, rock, glue and wear end an anchor's life before the metal does.
life-bar = Of bare steel, { $diameter } thick, { $left } % of the section would be left after { $years } years if it rusted evenly. It does not: pits go 2 to 5 times deeper, so this is the best case.
life-bar-gone = A bar of bare steel may be rusted through within { $years } years.
coating-usual = Nobody told the thickness: I took { $thickness }, the thinnest that is usual.

## cost
cost-one = For { $name }: { $yearly } a year for each anchor over { $horizon } years, with { $holes ->
    [one] one hole
   *[other] { $holes } holes
 }.
cost-cheapest = Among what is safe there, { $name } is cheapest: { $yearly } a year for each anchor over { $horizon } years, against { $otherYearly } for { $other }.
cost-cheapest-if-safe = If all are safe at your place, { $name } is cheapest: { $yearly } a year for each anchor over { $horizon } years, against { $otherYearly } for { $other }.
cost-place = Safety comes first: tell me where the crag is, and I compare what is safe there. Until then no ranking.
cost-none-safe = None of these is safe there, so there is nothing to compare: ask which metal to use.
cost-price = Tell me what the parts for one anchor cost with { $name }, in any currency.
cost-life = Tell me how many years { $name } lasts, or where the crag is.
cost-this = It costs { $yearly } a year for each anchor over { $horizon } years, with { $holes ->
    [one] one hole
   *[other] { $holes } holes
 }.
cost-anchor = this anchor
cost-nth = option { $number }
cost-option = Each year { $yearly } for { $name } ({ $total } in today's money), { $holes ->
    [one] one hole
   *[other] { $holes } holes
 } in { $horizon } years; parts { $parts }, work { $labour }, lasts { $life }.
cost-planned = The life of { $name } is planned from the place ({ $range }, common practice, no guarantee); I reckon with the short end.
cost-no-price = Left out is { $name }: no price told.
cost-no-life = Left out is { $name }: nobody told its life, and I have none for it there.
cost-all = For { $count } anchors of { $name }: { $total } in today's money.
cost-break-price = With parts at { $price } or less, { $name } would cost no more than { $other }.
cost-break-price-never = Even with free parts, { $name } would cost more than { $other }.
cost-break-life = With a life of { $life } or more, { $name } would cost no more than { $other }.
cost-break-life-never = However long it lasts, { $name } costs more than { $other }.
cost-robust = The ranking holds even if the cheapest lasts a quarter shorter and the others a quarter longer.
cost-not-robust = The ranking turns if the cheapest lasts a quarter shorter and the others a quarter longer: do not lean on it.
cost-rates = In today's money: { $none } at 0 %, { $three } at 3 %, { $five } at 5 %.
cost-rates-same = At 0, 3 and 5 % alike, { $first } is cheapest.
cost-rates-turn = It hangs on the rate of interest: at 0 % { $none }, at 3 % { $three }, at 5 % { $five } is cheapest.
cost-terms = Reckoned over { $horizon } years at { $rate } % a year above inflation; say otherwise and I reckon anew.
cost-no-labour = The work is not counted, because nobody told what it is worth; that favours what must be replaced often.
cost-holes = Every replacement is a new hole in the rock, unless the old one can be used again.

## cautions, permission, emergency
cautions-verdict = Before you drill:
permission-verdict = Ask before you drill: I cannot say whether anchors are allowed there.
permission-owner = The owner or land manager of the crag decides, and the area's own bolting rules.
permission-nature = Protected areas, nesting seasons and heritage sites have rules of their own.
permission-club = Your club's access officer, or the regional federation, knows whom to ask.
emergency-verdict = Get help now: call the rescue service, and let nobody load that anchor.
emergency-call = Call the local emergency number. Say where you are, how many people, who is hurt.
emergency-back-up = Back the person up from something independent: another sound anchor, a tree, a second rope.
emergency-do-not-load = Do not lower, pull or climb on what failed or on its neighbours of the same kind.
emergency-after = When everybody is safe: close the route, tell the club, keep the broken part as it is.

## refusal
refusal-reason = { $why }
refusal-certify = I do not certify anything.
refusal-certify-next = A qualified installer who inspects and tests on the spot can give you a record; ask them or the land manager.
refusal-hang-people = I do not say that people may hang from it.
refusal-hang-people-next = A qualified installer or rigger has to see it, test it and decide. Until then use another anchor.
refusal-structure = I do not judge structures.
refusal-structure-next = Ask a chartered structural engineer and the owner of the structure.
refusal-banned-place = I do not help to place anchors where they are not allowed.
refusal-banned-place-next = Ask the land manager; there may be a way to apply.
refusal-expired-adhesive = Do not use it: that adhesive is past its date.
refusal-expired-adhesive-next = Take a fresh cartridge, and look at its date and how it was stored. If bolts are set with the old one already, close them, and pull test every one of them or replace them.
refusal-skip-safety = I do not help to leave out a safety step.
refusal-skip-safety-next = Do the step, or do not place the anchor today.
refusal-hollow-rock = No anchor and no number for hollow rock.
refusal-hollow-rock-next = Sound the rock around with a hammer and move to a spot that rings clear all round; if there is none, leave it.

failed = Something in me failed, so I give no answer rather than a wrong one. Nothing was changed; please tell whoever looks after me.

## Terminal
chat-greeting = Chough. Ask about anchors in rock in your own words; "help" shows examples, Ctrl-D ends.
chat-choose = Type a letter to choose, or answer in words:

## Settings, units, and words that point back
settings-admins-only = Only those who look after this group can change its settings. Nothing was changed.
settings-no-rooms = This chat has no topics or channels to choose from.
settings-language = Language, unless a member writes in another: { $name }.
settings-units-metric = Metric units first.
settings-units-imperial = Inches and pounds first.
settings-rooms = { $count ->
    [one] I answer in one topic or channel only.
   *[other] I answer in { $count } topics or channels only.
  }
units-set-metric = From now on I show you metric units first.
units-set-imperial = From now on I show you inches and pounds first.
language-en = English
language-es = español
language-pt = português
language-fr = français
language-it = italiano
language-de = Deutsch
other-which = Which of the two do you mean?
other-none = I do not know which other one you mean: please name it.

## In a group
too-fast = That was too fast for me. Give me a minute, then ask again.
group-greeting =
  Hello, I am Chough. I help with fixed anchors in rock: which metal, which kind, how deep, which adhesive, how long to cure, what a pull test shows, what rust means.
  Write to me with a command such as /material or /help, mention me, or reply to me; I am silent otherwise.
  I cannot see the rock and I never certify. A wrong anchor can kill: local rules, the maker's instructions and a qualified installer decide.
  Those who look after this group can set its rock, coast, language and units with /club, for example "/club granite, inland".
sent-again = (Sent again after an interruption; you may have had it already.)
press-for-another = This question was put to somebody else. Ask me yourself and you get your own.

## Pictures
picture-nothing = Nothing to draw: no values.
picture-more = and { $count } more
picture-axis-time = time, s
picture-axis-force = force, kN
picture-axis-displacement = displacement, mm
picture-axis-bond = bond strength, MPa
picture-axis-cost = cost per year
picture-axis-risk = chance of failing within a year
picture-force-time = Force over time: { $name }
picture-force-displacement = Force over displacement: { $name }
picture-peak = peak of a pull
picture-first-drop = first drop of the force
picture-pull = peak { $peak }
picture-pull-dropped = peak { $peak }, first drop at { $drop }
picture-need = { $name }: at least { $load }
picture-groups = Pull tests compared: { $name }
picture-failed = one test, pulled to failure
picture-stopped = one test, stopped before failure: held at least this
picture-mean = mean: half hold less
picture-characteristic = 5 % value: 19 of 20 hold more
picture-tests = { $count ->
    [one] { $count } test
   *[other] { $count } tests
 }{ $stopped ->
    [0] { "" }
   *[other] , of which stopped before failure: { $stopped }
 }
picture-group = { $name }: { $parts }
picture-group-mean = mean { $mean }
picture-group-low = 5 % value { $low }
picture-group-no-low = no 5 % value
picture-bond = Bond strength, learned and published: { $name }
picture-published = published: { $low } to { $high }
picture-learned = mean with the own tests counted in: { $mean }; with { $share } % probability between { $low } and { $high }
picture-own = own tests: { $tests }
picture-used = value used: { $used }
picture-costs = What replacement costs: { $name }
picture-policy = { $name }: { $total } in all
picture-risks = Which anchors first: { $name }
picture-share = { $share } %
picture-share-under = under { $share } %
picture-risk-act = filled: act on these first
picture-risk-watch = open: keep inspecting
picture-alt-reached = { $reached } of { $count } pulls reached { $load } ({ $name }).
picture-alt-peaks = { $count ->
    [one] One pull, peak { $most }.
   *[other] { $count } pulls, peaks from { $least } to { $most }.
 }
picture-alt-no-pulls = { $count } pulls found in this recording.
picture-alt-groups-met = In { $met } of { $count } groups the 5 % value reaches { $load } ({ $name }).
picture-alt-groups-lowest = Lowest 5 % value of { $count } groups: { $low } ({ $name }).
picture-alt-groups-no-low = { $count } groups with { $tests } tests, none with a 5 % value.
picture-alt-below = { $below } of { $count } own tests gave way below the published range.
picture-alt-range = Own tests from { $least } to { $most }.
picture-alt-cheapest = Cheapest over { $years } years: { $name }, { $total } in all.
picture-alt-policy = { $policy }, at most { $most } in one year ({ $year }).
picture-alt-no-policies = { $count } policies to compare.
picture-alt-act = { $act } of { $count } anchors: act on these first.
picture-alt-highest = Highest chance of failing within a year: { $name }, { $share }.
## Places
place-impossible = No such place: latitude runs from -90 to 90, longitude from -180 to 180. Nothing was changed.
place-null = That is the point 0, 0, which a receiver without a fix reports. Nothing was changed.
place-at-sea = That place lies in the open sea. Nothing was changed.
place-sea = By the open map the sea is about { $distance } away, give or take { $uncertainty }. I count with that; tell me if it is wrong. Lagoons and tidal rivers may be missing.
place-near-limit = By the open map the sea is about { $distance } away, give or take { $uncertainty }: too near a class limit to be sure. I count with { $used } until you tell me better. Lagoons and tidal rivers may be missing.
place-far = By the open map the sea is more than { $distance } away; I count with that. Salt lakes, pools and winter roads are salt too: tell me of them.
# telegram
telegram-old-button = This button is from an older version of me. Ask again and you get a new one.
telegram-only-words = I read words, a location or a table of test results; pictures, recordings and stickers I cannot look at. Please write what you see.
telegram-file-too-big = That file is too big for me: 4 MB at most. Send the table of results alone, as text or CSV.
telegram-file-failed = That file did not reach me. Please send it once more, or write the values in a message.
telegram-inline-private = Ask me in private
telegram-description = I help with fixed anchors in rock: which metal, which kind, how deep, which adhesive, how long to cure, what a pull test shows, what rust means. Every answer names its sources and its doubts. I cannot see the rock and I never certify: local rules, the maker's instructions and a qualified installer decide.
telegram-short-description = Cautious, sourced answers on fixed anchors in rock. I never certify; a qualified installer decides.
# discord
discord-ask-about = Ask about this message
discord-option = question
discord-option-does = Your question, in your own words
discord-type-it = Type it
discord-type-title = Your answer
discord-type-label = In your own words
discord-pick = Choose …
discord-more = Not everything fits into the menu: what is missing can be typed.
discord-empty = There is no text in that message that I could read.
discord-not-here = I answer in other channels of this server only.
discord-nothing = I have nothing to add just now. If you asked a lot at once, wait a minute.
discord-stopping = I am being restarted. Ask again in a minute.
discord-thread-closed = From a thread that is closed by now:
discord-file-too-big = That file is bigger than { $most } MB, so I did not read it.
discord-file-failed = I could not fetch that file. Send it again in a minute.
discord-file-one = I read one file at a time. Send them one by one.

## Club records
record-load = greatest load
record-fact = • { $fact }: { $value }
record-text-day = • pulled on: { $text }
record-text-crag = • crag: { $text }
record-text-route = • route: { $text }
record-text-batch = • batch: { $text }
record-text-note = • note: { $text }
record-name-day = day of the pull
record-name-crag = crag
record-name-route = route
record-name-batch = batch
record-name-note = note
record-change = • { $fact }: { $before } → { $after }
record-did-added = { $version }. Written down by { $by }, { $at }:
record-did-corrected = { $version }. Corrected by { $by }, { $at }:
record-did-withdrawn = { $version }. Withdrawn by { $by }, { $at }.
record-by-forgotten = a member who asked to be forgotten
record-draft = I would write this pull test down:
record-draft-how = Nothing is kept yet. Keep it, drop it, or say what is wrong: "it was 34 kN".
record-correct = Record { $id } would change like this:
record-withdraw = Withdraw record { $id }? It no longer counts then; its history stays.
record-kept = Kept as { $id }.
record-kept-how = To correct it: "{ $id } was 34 kN". To take it out: "withdraw { $id }". All steps: "history { $id }".
record-corrected = Corrected: { $id }. What it was before stays in its history.
record-withdrawn = Withdrawn: { $id }. It no longer counts; its history stays.
record-dropped = Dropped. Nothing was kept.
record-same = That is what { $id } says already. Nothing was changed.
record-shown = Record { $id }, version { $version }:
record-shown-withdrawn = Record { $id }, version { $version }, was withdrawn and counts for nothing:
record-history = Record { $id }, every step:
record-none = This chat has no record { $id }.
record-is-withdrawn = { $id } was withdrawn and can no longer be changed. Write the test down anew. Nothing was changed.
record-not-yours = Only whoever wrote it down, or those who look after this group, can change that record. Nothing was changed.
record-changed-meanwhile = Somebody else changed that record meanwhile. Nothing was changed; look at it again.
record-open-first = First keep or drop this one:
record-one-at-a-time = One pull at a time, please, or several as a table: a file or a pasted list with a heading. Nothing of that was taken.
record-no-day = "{ $text }" is no day. Write it like 2027-05-02. Nothing was changed.
record-future-day = { $text } is still to come. Nothing was changed.
record-load-impossible = No pull on an anchor reaches such a load, or it is too small to be one. Nothing was changed.
record-clash-glue = That kind of anchor has no glue that could let go. Which of the two is wrong? Nothing was changed.
record-clash-facts = That does not go together with the rest of the record. Nothing was changed.
choice-keep = Keep
choice-drop = Drop
choice-withdraw = Withdraw
choice-fix = Change: { $fact }
table-ready = { $count } rows can be kept. Nothing is kept yet.
table-kept = Kept: { $count } records, { $first } to { $last }.
table-read = I read { $rows } rows: { $good } can be kept, { $bad } cannot.
table-there = Already here, and left out: { $count }.
table-left = Columns that I do not know, and left out: { $names }.
table-row = • Row { $number }: { $why }
table-rows-more = • and { $count } more rows
table-range = Loads from { $least } to { $most }.
table-nothing = There is nothing to keep. Nothing was changed.
table-too-large = That file is larger than 5 MB, so I did not read it. Nothing was changed.
table-too-many = That table has more than { $most } rows, so I took none of it. Send it in parts.
table-empty = That table has a heading and no rows. Nothing was changed.
table-no-text = That file holds no text that I can read as a table. Send it as CSV. Nothing was changed.
table-column-twice = The column "{ $column }" stands there twice. Nothing was taken.
table-unit-missing = The column "{ $column }" has no unit. Write it in brackets: "peak load [kN]", "length [mm]". Nothing was taken.
table-unit-unknown = The unit in "{ $column }" does not fit that column, or I do not know it. Nothing was taken.
table-row-number = "{ $text }" is no number ({ $fact })
table-row-impossible = "{ $text }" cannot be the { $fact }
table-row-value = "{ $text }" is no { $fact } that I know
table-row-lacking = { $fact } is missing{ $text }
table-row-day = "{ $text }" is no day; write it like 2027-05-02
table-row-future = { $text } is still to come
table-row-too-wide = it has more cells than the heading
table-row-too-long = a cell is far too long; is a quotation mark missing?
table-row-clash-glue = that kind of anchor has no glue
table-row-clash-facts = two of its values do not go together
table-row-differs = { $id } is here already and says something else; correct it in words
table-exported = { $count } pull tests as a table
table-exported-how = Values stand as short names that are the same in every language. Sent back here, the file adds nothing twice.
ours-none = This chat has no pull tests yet. Tell me one: "pulled 12x100 twin-leg, epoxy, granite, 36.5 kN, resin came out clean".
ours-list = { $first }, { $rest }
ours-size = { $diameter } × { $depth }
ours-mixed = all pulls together
ours-found = Your own pulls that match: { $count }, in { $groups } groups of the same kind.
ours-no-match = Of your { $count } pulls none matches: { $what }.
ours-more = and { $count } smaller groups.
ours-about = What follows is about the group with the most failures alone: { $what }.
ours-group = • { $what }
ours-loads-failed = – gave way ({ $failed }): { $pulls }
ours-loads-stopped = – held at least ({ $stopped }): { $held }; nothing gave way
ours-loads-both = – gave way ({ $failed }): { $pulls }; held at least ({ $stopped }): { $held }
ours-figures = – mean { $mean }, 5 % value { $low }
ours-figures-fitted = – middle of the fitted curve { $mean }, 5 % value { $low }
ours-no-figures = – too few failures for a 5 % value
ours-mode = { $mode } ({ $count })
ours-modes = – { $list }
ours-first = First group: { $what }
ours-second = Second group: { $what }
ours-differ = The two also differ, or are mixed, in: { $list }. A difference may come from there.
ours-modes-differ = They did not all give way in the same way: strictly, only like failures may be compared.
ours-stopped-out = Pulls that were stopped, { $count }, are no failures and stand outside this comparison.
ours-longer = The first group is the deepest, the second the shallowest, all else of the same kind.
ours-longer-none = Your pulls do not show it: there are none of one kind at two depths. Pull at least 3, better 5 to 10, at each.
bond-ours = Bond: published { $low } to { $high }, of which I count a mean of { $published }; with your { $failures } pulls that failed in it { $median } in the middle, 5 % value { $five }.
bond-ours-least = { $others } more of your pulls ended otherwise (metal, rock, rig, or stopped): the bond held at least that.
bond-ours-lower = Yours is the lower, so I count { $used }.
bond-ours-higher = Yours is no lower, and makes nothing bolder yet: { $needed } pulls must fail in the bond before they count above what is published (EOTA TR 053, from memory); { $missing } are missing.
bond-ours-would = With yours it would be: mean { $mean }, 5 % value { $characteristic } ({ $mode }).
bond-ours-without = With the published bond alone it would be: mean { $mean }, 5 % value { $characteristic } ({ $mode }).
bond-ours-enough = { $needed } failures in the bond are enough for yours to count (EOTA TR 053, from memory): I count { $used }, and never more than the upper end of what is published, { $top }.
plan-steps = With a hand pump, in steps of at most { $share } % of what you expect, each held { $minutes } minutes while you read the movement (ASTM E488, from memory); first seat it with a twentieth.
plan-steps-expected = With a hand pump, in steps of at most { $step }, which is { $share } % of the { $mean } that I reckon on average, each held { $minutes } minutes while you read the movement (ASTM E488, from memory); first seat it with a twentieth.
plan-proof-steps = Bring it up in { $steps } even steps of { $seconds } seconds, and stop at the first movement.
plan-number = What that number can show: with { $count } results the 5 % value is about { $left } % of the mean, with { $good } about { $goodLeft } %, with hundreds about { $endless } % (scatter { $scatter } %, 90 % confidence). Few results cost strength.
plan-number-too-few = With fewer than { $fewest } results nothing can be said of the next anchor.
plan-number-compare = With { $count } pulls of each kind only a difference of { $seen } % or more is likely to show (scatter { $scatter } %, four times out of five). Pull the two in turn, not one day each.
plan-range = Thrown freely it lands up to { $range } away on level ground, and farther below a wall: close the line of the pull so far, both ways.
plan-rig = Every part of the rig rated for at least { $load }, { $factor } times the greatest load: a rig that fails throws its parts too.
plan-protect = Tie the frame and the loose parts back, lay a heavy mat over the rig, glasses and helmet; let the pressure out before anybody comes near, also when nothing broke.
plan-log = Tell me each pull with /log, and it counts for your own crag.
ours-picture = Our own pulls

## Recordings
recording-title = { $file }, pull { $number }
recording-failed = It gave way: the highest load was { $peak }.
recording-stopped = Stopped before anything gave way: it held { $peak } that once, and what it holds at most is not known.
recording-none = { $file }: no pull found. The load never rose clearly above rest.
recording-time = Peak { $time } s after the first sample.
recording-drop = First sharp drop after { $time } s: from { $from } to { $to }.
recording-plateau = After that it still held about { $level } for { $seconds } s.
recording-rate = Loaded at about { $rate }.
recording-stiffness = Stiffness before it gave way or was stopped: { $stiffness }.
recording-energy = Energy up to the peak: { $energy }.
recording-rest = The cell read { $rest } at rest; that is taken off every load here.
recording-mode-bond-loss = It looks as if the bond went first and the anchor then slipped. Is that what you saw: anchor drawn out with adhesive or dust on it?
recording-mode-brittle = It looks as if something broke at once: steel or rock. Which was it: a broken bolt, or a cone of rock?
recording-mode-slow-slip = It looks as if the anchor slid out slowly under load. Was it drawn out, and how far?
recording-mode-rig = The load fell and then rose higher than before. Did the rig settle or slip, or did the anchor move?
recording-mode-stopped = It looks as if you stopped on purpose. Is that right, and had nothing moved or cracked?
recording-reason = Why I think so: { $list }.
recording-reason-sharp-drop = it fell within about a tenth of a second
recording-reason-plateau = then it held on at a lower load
recording-reason-no-plateau = then it held next to nothing
recording-reason-rose-again = later it rose above that load
recording-reason-slow-fall = the load sank no faster than it had risen
recording-reason-moved-on = the anchor moved on while the load sank
recording-reason-taken-off = the load went down smoothly and faster than it had risen
recording-reason-ends-loaded = the recording ends with the load still on
recording-note-clipped = The top is flat: the cell may have been at its limit, and the true peak higher. Do not use this peak.
recording-note-disturbed = The cell was disturbed: spikes or drop-outs were left out. Check plugs and cable.
recording-note-gap = Samples are missing during the pull; something may have happened meanwhile.
recording-note-starts-loaded = The recording never comes back to zero. Whether that is pre-load or a wrong zero I cannot tell, so the loads may be wrong by as much.
recording-note-coarse = Fewer than about ten samples a second: a break and a quick release look alike.
recording-note-re-seated = Early on the load dipped and rose again, as when a rig settles. Make sure that it was not the anchor.
recording-refused = { $file }: { $why }
recording-problem-unreadable = There is no such file, or it cannot be read.
recording-problem-empty = The file is empty.
recording-problem-packed = This is a packed file or a spreadsheet. Save the table as CSV text and send that.
recording-problem-binary = This is not text. Export the recording as CSV text.
recording-problem-too-large = The file is larger than I read. Cut out the pulls.
recording-problem-long-line = Line { $line }: it is too long for a row of a table.
recording-problem-no-table = I find no table of numbers in it.
recording-problem-no-header = Line { $line }: the numbers begin here without a header that names columns and units. In which unit is the load: kN, N, daN, kgf or lbf?
recording-problem-no-load = I find no column with a load. Name it "Force" or "Load", with its unit.
recording-problem-many-loads = Several columns may be the load. Leave only the one that counts.
recording-problem-unit = The unit of the load is not stated, or I do not know it, and I do not guess. Is it kN, N, daN, kgf or lbf? Write it behind the name of the column.
recording-problem-no-time = I find no column with time and no sample rate above the table.
recording-problem-time-unit = In which unit is the time: s or ms? Write it behind the name of the column.
recording-problem-no-rate = The samples are numbered, but how many a second? Write a line "Sample rate: … Hz" above the table.
recording-problem-missing-cell = Line { $line }: a value is missing.
recording-problem-no-number = Line { $line }: what stands here is no number.
recording-problem-no-clock = Line { $line }: what stands here is no date or time of day.
recording-problem-formula = Line { $line }: there is a formula. I read numbers only; save the values.
recording-problem-time-back = Line { $line }: time runs backwards.
recording-problem-truncated = Line { $line }: the file was cut off here. Copy it from the logger again.
recording-problem-too-short = There are too few samples to say anything.
recording-problem-strange-text = Line { $line }: there is text amid the numbers.
recording-problem-decimal-mark = Commas and points are mixed: I cannot tell decimals from thousands. Save the numbers without thousands marks.

recording-no-offer = I do not offer { $count ->
    [one] a pull
   *[other] { $count } pulls
} to be noted: the true peak is not known.
recording-offer = Shall I note it as a pull test with { $peak }? Tap what you saw give way, or that nothing did. Nothing is kept yet.
recording-offer-several = The strongest is pull { $number } with { $peak }. Which one shall I note as a pull test? Nothing is kept yet.
choice-note-mode = Note it: { $mode }
choice-note-open = Note it, and ask me what gave way
choice-note-pull = Note pull { $number }: { $peak }
recording-file-neither = I read recordings of a load cell and tables of pull tests. Nothing was changed.
recording-picture = Picture: { $file }
recording-picture-kept = { $file } is there already and was not drawn by me, so I left it as it is.
recording-picture-failed = { $file } could not be written.
## Register
record-text-sector = • sector: { $text }
record-name-sector = sector
record-text-position = • position: { $text }
record-name-position = position
record-text-installer = • set by: { $text }
record-name-installer = set by
record-text-anchor = • anchor: { $text }
record-name-anchor = anchor
register-day-anchor = • set on: { $text }
register-day-inspection = • seen on: { $text }
register-name-day-anchor = day of setting
register-name-day-inspection = day of the look
register-day-not-known = • set on: not known
register-anchor-draft = I would enter this anchor in the register:
register-anchor-draft-how = Nothing is kept yet. Keep it, drop it, or say what is wrong or missing: "set 2024-05-02", "it is 304".
register-anchor-withdraw = Withdraw anchor { $id } from the register? It is no longer listed then; its history stays.
register-anchor-kept-how = To correct it: "{ $id } is 304". What you saw on it: "{ $id } has brown stains". To take it out: "withdraw { $id }". All steps: "history { $id }".
register-inspection-draft = I would note this look at an anchor:
register-inspection-draft-how = Nothing is kept yet. Keep it, drop it, or say what is wrong.
register-inspection-withdraw = Withdraw the look { $id }? It no longer counts then; its history stays.
register-inspection-kept-how = To take it out: "withdraw { $id }". All steps: "history { $id }".
register-which-crag = At which crag is it? Its name is enough; sector, route and position help to find it again.
register-nowhere = Without a crag nobody finds that anchor. Nothing was kept.
register-twice = { $id } is at that place already. Correct or withdraw that one, or name another position. Nothing was kept.
register-is-withdrawn = { $id } was withdrawn from the register and can no longer be changed. Nothing was changed.
register-no-day = { $text } is no day from 1950 to now. Write it like 2024-05-02, or only the year. Nothing was changed.
register-look = • { $day }: { $signs } (noted by { $by } as { $id })
register-look-of = With what the register says of { $id }, { $crag }:
register-look-note = Note it in its history? Nothing is kept yet.
register-look-later = I note nothing while another record is open: keep or drop that one first, then say this again.
register-entry = • { $id }: { $where } — { $what }
register-entry-figures = • { $id }: { $where } — { $what }, { $figures }
register-found = { $what }: { $count } in the register.
register-more = • and { $count } more. Name a sector, a route or a metal, or export the register.
register-no-match = The register has { $count } anchors, but none for: { $what }.
register-all = In the register: { $count } anchors, crags: { $crags }.
register-crag = • { $name }: { $count }
register-how = To find some: "anchors on Gannet Slab", "all zinc plated". To add one: "register bolt 3 on Gannet Slab: 12x100 316 twin-leg". What to see to first: "which anchors first?"
register-none = This chat has no anchors in its register yet. Tell me one: "register bolt 3 on Gannet Slab: 12x100 316 twin-leg, set 2024-05-02", or send a table with crag and kind of anchor.
register-exported = { $count } anchors as a table
register-row-lacking = { $what } is missing
register-row-twice = { $id } is at that place already
register-row-same = it names the same place as row { $number }
register-first = To see to first, { $shown } of { $count } anchors, the most urgent on top:
register-first-one = { $place }. { $id }: { $where }
register-first-why =    • { $why }
register-first-seen = seen { $day } ({ $id }), { $signs }. { $verdict }
register-metal-unknown = The metal is not known, which counts as worse.
register-place-unknown = The metal cannot be judged without knowing its place, which counts as worse. Say: "it is inland", "300 m from the sea".
register-age-unknown = Its age is not known, which counts as past the planned life.
register-age-only = It is { $years } years old; there are no years to plan for.
register-age-past = It is { $years } years old: that is past the shorter end of { $low } to { $high } years to plan for.
register-age-within = It is { $years } years old; { $low } to { $high } years are to be planned for, never promised.
register-first-limits = This is an order of work by what was told: signs seen, metal against place, age, use. What is not known counts as worse. An anchor further down, or missing here, is not thereby sound.
register-sensitive = Of these crags I keep and show only the name, no sector, route, position or note: { $names }. What was written down before stays in the store, and is no longer shown. To lift it: "/club not sensitive …".
register-sheltered = This crag is marked as sensitive: I leave out sector, route, position and note.
