# What Chough says in English. Names, questions, reasons and cautions stand beside the knowledge itself, in the
# JSON files of rules/; here are the sentences that join them.

## Bits
list-last = { $first } or { $last }
line = { $text }
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
check-open = { $name }: { $values }; needs { $limit }: only on average, not proved
check-short = { $name }: { $values }; needs { $limit }: NOT met
check-length = installed length (EN 959)
check-plating = { $thickness } of zinc, years until it is gone
check-cured = hours since it was glued
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
choice-settle = { $fact }: { $value }

## Talk
restarted = Forgotten. What would you like to know?
back-nothing = There is nothing to take back.
back-start = Taken back. What would you like to know?
why-nothing = I have not given an answer yet that I could explain.
what-about = Noted. What would you like to know about it?
greeting = Hello. Ask me about anchors in rock: which metal, which kind, how deep, which adhesive, how long to cure.
welcome = You are welcome. Pull-test before you trust.
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
out-of-range = { $what } comes to { $value }; the method covers { $least } to { $most }, so I give no number. Choose a size within that range, or ask a qualified installer for a pull test.
problem-unit-mismatch = "{ $text }": that unit does not fit. Which { $fact } do you mean? Nothing was changed.
problem-ambiguous = "{ $text }" can mean more than one thing. Please say it more exactly. Nothing was changed.
problem-conflict = "{ $text }" says two different things about the { $fact }. Which holds? Nothing was changed.
problem-not-a-number = I cannot read "{ $text }" as a number. Nothing was changed.
problem-impossible = "{ $text }" cannot be. Nothing was changed.

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
topic-coating-life = life of a zinc coating
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
embedment-best-case = If all that is not told were good (sound rock, dry hole, keyed shank): mean { $mean }, 5 % value { $characteristic } pulled out.
embedment-near-edge = { $diameter } × { $length }: too near an edge or crack, or its distance is not known. Measure it, and move if need be.
embedment-refuse = { $diameter } × { $length }: do not place an anchor at this spot.
embedment-cannot = Without rock, kind and size of the anchor I give no number.
embedment-cannot-next = By EN 959 a glued-in anchor sits at least 70 mm (2¾ in) deep, a mechanical one at least 5 times the diameter of its hole; softer rock needs more.
embedment-governs = Pulled out, the { $mode } goes first: mean { $mean }, 5 % value { $characteristic }. Sideways, the { $side }: mean { $sideMean }, 5 % value { $sideCharacteristic }. (5 % value: 19 of 20 hold more.)
embedment-longer = Longer, { $size }: mean { $mean }, 5 % value { $characteristic } ({ $mode }).
embedment-fatter = Thicker, { $size }: mean { $mean }, 5 % value { $characteristic } ({ $mode }).
embedment-depth = Reckoned with { $depth } in the rock, counted from the face.
embedment-upper-bound = Whether its clip slips through cannot be reckoned, only tested; the figures are an upper bound.

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
amount-too-tight = The gap is so tight that voids stay. Take the hole diameter that the maker states.
amount-too-wide = The gap is wider than most adhesives fill. Take the hole diameter that the maker states.
amount-check = If a hole takes much more than this, there is a void: stop, and do not trust it.

## cure
cure-sheet = The data sheet of your cartridge comes first; these are usual times for the kind, from memory.
cure-rock-temperature = Go by the temperature of the rock, not of the air, and by the coldest hour until it is cured.
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

## spacing
spacing-rule = Stay 1.5 times the depth, and at least 150 mm (6 in), from every edge and crack; anchors 3 times the depth, and at least 200 mm (8 in), apart.
spacing-verdict = For { $depth } depth: at least { $edge } from every edge and crack, and { $spacing } between anchors.
spacing-too-near = Too near. For { $depth } depth keep { $edge } from every edge and crack, and { $spacing } between anchors.
spacing-old-holes = Old holes count as cracks: keep twice their depth away, or fill them and keep 5 hole diameters.
spacing-hollow = Sound the whole circle with a hammer; a hollow note anywhere in it means another spot.

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
refusal-skip-safety = I do not help to leave out a safety step.
refusal-skip-safety-next = Do the step, or do not place the anchor today.
refusal-hollow-rock = No anchor and no number for hollow rock.
refusal-hollow-rock-next = Sound the rock around with a hammer and move to a spot that rings clear all round; if there is none, leave it.

failed = Something in me failed, so I give no answer rather than a wrong one. Nothing was changed; please tell whoever looks after me.

## Terminal
chat-greeting = Chough. Ask about anchors in rock in your own words; "help" shows examples, Ctrl-D ends.
chat-choose = Type a letter to choose, or answer in words:
