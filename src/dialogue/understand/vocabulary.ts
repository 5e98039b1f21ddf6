/** The shape of rules/vocabulary/<language>.json: every word that understanding knows. */
import { z } from 'zod';

const factId = z.string().regex(/^[a-z][a-z0-9_]*$/, 'use lower-case letters, digits and underscores');
const id = z.string().min(1);
/** A phrase as people write it. `*` stands for up to four other words (topics, requests and emergencies only). */
const phrase = z.string().trim().min(1);
const phrases = z.array(phrase).min(1);

const cues = z.strictObject({
  before: phrases.optional(),
  after: phrases.optional(),
  /** The same, for a number that has a unit. */
  beforeUnit: phrases.optional(),
  /** After a number that has a unit; "20 bolts" is a count and "12 mm bolts" is a size. */
  afterUnit: phrases.optional(),
  /** Only in a message with one of these words. */
  onlyWith: phrases.optional(),
  /** Added to the distance of a cue that may as well belong to another fact. */
  doubt: z.number().positive().optional(),
});

export const vocabularySchema = z.strictObject({
  language: z.string().regex(/^[a-z]{2}$/),
  about: phrase,
  /** Endings that may be left off or added to any word without a change of meaning. */
  endings: z.array(z.string().min(1)),

  /** Words written against the next with an apostrophe: the "l" of "l'inox". */
  elisions: z.array(z.string().min(1)).optional(),
  /** "Paroi fissurée": of two nouns equally near, the one before the word is meant. */
  nounsFirst: z.boolean().optional(),
  /** Letters that stand for one with a mark: "ae" for "ä". */
  letters: z.record(z.string().min(2), z.string().min(1)).default({}),
  /** Nouns begin with a capital, which then is no sign of a name. */
  capitalNouns: z.boolean().default(false),
  /** A full stop after one of these ends no sentence. */
  abbreviations: z.array(z.string().min(1)).default([]),
  /** Letters that stand for a word before a slash: "c/" is "com". */
  shorthand: z.record(z.string().min(1), z.string().min(1)).default({}),
  /** Words made of several: "sandsteinwand". All pieces must be `parts`; `links` may stand between them. */
  compounds: z
    .strictObject({
      parts: z.array(z.string().min(2)).min(1),
      links: z.array(z.string().min(1)),
      /** Taken apart as told here: "viertelstunde" is "viertel stunde". */
      told: z.record(z.string(), phrase),
    })
    .optional(),

  /** Words that may stand inside any phrase: "from the edge" is "from edge". */
  articles: z.array(z.string().min(1)),
  /** Forms of one word, a word a line: in gender and number they say the same. */
  variants: z.array(z.string().min(1)).default([]),
  numbers: z.strictObject({
    /** What stands between thousands: "1,000". */
    thousands: z.enum([',', '.']),
    /** A space parts thousands as well: "2 500". */
    spacedThousands: z.boolean().optional(),
    /** Written against a number they make it an ordinal: 2nd. */
    ordinals: phrases.optional(),
    words: z.record(phrase, z.number()),
    /** "half", "eighths": the number before is multiplied by it. */
    parts: z.record(phrase, z.number()),
    /** Between a part and its unit: "half a mile". */
    link: phrases,
    /** One, before a unit only: "a mile". */
    one: phrases,
    and: phrases,
    range: phrases,
    between: phrases,
    by: phrases,
    /** The same unless nouns are counted after it: "10 per 80", but "resina per 20 fittoni". */
    byWeak: z.array(phrase).default([]),
    /** A range only together, and not after a noun that has a size: "da 5 a 8", "fix da 10 a 15 cm dal bordo". */
    from: z.array(phrase).default([]),
    to: z.array(phrase).default([]),
    /** After a unit, half of it more: "un'ora e mezza". */
    half: z.array(phrase).default([]),
    minus: phrases,
    /** After a temperature: "5 below zero". */
    below: phrases,
    /** Written against the number: M10. */
    thread: phrases,
    list: phrases,
    /** Near "7c" they tell that it is the difficulty of a route and no temperature. */
    grade: phrases,
  }),
  /** Unit words, by the unit's id. */
  units: z.record(id, phrases),
  /** Pounds are money in a message with one of these, unless it speaks of weight. */
  priced: z.strictObject({ near: phrases, unless: phrases }).optional(),
  /** Unit words that are also ordinary words ("in"): they count only when nothing else can be meant. */
  weakUnits: phrases,
  /** What may follow a weak unit: "4 in deep". */
  weakNext: phrases,
  comparators: z.strictObject({ atLeast: phrases, atMost: phrases }),

  /** What points to the fact that a number belongs to. `ignore`: a number of no interest; `size`: of a bolt. */
  roles: z.record(z.string(), cues),
  /** Words that may stand between a number and its cue, or between "not" and what is denied. */
  fillers: phrases,
  /** Between a cue and a number they part the two: "what depth do I need for 10 mm". */
  breaks: phrases,
  /** Between a number and a noun they part the two: "12 in fori da 14" counts no holes. */
  parting: z.array(phrase).default([]),
  /** Facts by name: "don't know the rock". */
  factNames: z.record(factId, phrases),

  /** Between a hole and its own diameter: "a hole with 18 mm diameter". */
  having: phrases.optional(),
  /** Several anchors: "20 x 12 mm bolts". */
  plural: phrases,
  /** Joins hours to the temperature that they were spent at: "6 h at 10 °C". */
  timed: phrases.optional(),
  /** What stands behind one of these is the data sheet's. */
  sheet: phrases.optional(),
  /** Test results: before a load, or after the number that counts it ("two stopped at 25"). */
  results: z.strictObject({ stopped: phrases, failed: phrases }).optional(),
  /** With one of these, degrees above 30 are an angle. */
  angled: phrases,

  /** fact → value → phrases. A phrase may stand in several places; it then says several things. */
  values: z.record(factId, z.record(id, phrases)),
  /** Understood only as the answer to the question about that fact. */
  pendingOnly: z.record(factId, z.record(id, phrases)),
  /** A phrase that leaves the kind open; `careful` is the kind that is safe to take. */
  families: z.array(z.strictObject({ fact: factId, values: z.array(id).min(2), careful: id, say: phrases })),
  /** A phrase whose meaning hangs on the noun near it: a cracked wall, a cracked hanger. */
  byNoun: z.array(
    z.strictObject({
      say: phrases,
      options: z.array(z.strictObject({ near: id, fact: factId, value: id })).min(1),
      otherwise: z.strictObject({ fact: factId, value: id }).optional(),
    }),
  ),
  /** Groups of nouns for `byNoun`; values found for the facts named belong to the group as well. */
  nouns: z.record(id, z.strictObject({ say: phrases, facts: z.array(factId).optional() })),
  /** "soft … sandstone": a word near a value makes it a narrower one. */
  refine: z.array(
    z.strictObject({ fact: factId, of: id, by: z.record(id, phrases), unlessNext: phrases.optional() }),
  ),
  /** Values that together say more than each alone. `where`: phrases that count as a condition. */
  combine: z.array(
    z.strictObject({
      when: z.record(factId, id),
      where: phrases.optional(),
      gives: z.record(factId, id),
    }),
  ),
  /** Phrases that look like a value and are not. */
  blocked: phrases,
  /** Straight after a value they take its meaning away: "granite-coloured". */
  blockedNext: phrases,
  /** Within two words of the phrase they take its meaning away: "A2 aid". */
  unless: z.array(z.strictObject({ say: phrases, near: phrases })),
  /** Slips too short to be found by their distance. */
  misspellings: z.record(z.string(), z.string()),
  /** Ordinary words, many in a line, that are never taken for a misspelt word of this file. */
  ordinary: z.array(z.string().min(1)),

  /** topic → weight → phrases. */
  topics: z.record(id, z.record(z.string().regex(/^[1-9][0-9]?$/), phrases)),
  /** Groups of words, and the topics that one word of each group tell together, in any order. */
  together: z
    .strictObject({
      groups: z.record(id, phrases),
      rules: z.array(
        z.strictObject({
          topic: id,
          weight: z.int().min(1).max(9),
          all: z.array(id).min(2),
          none: z.array(id).optional(),
        }),
      ),
    })
    .optional(),
  /** "ok?", "good enough?": the topic then follows from the facts. */
  judge: phrases,
  /** Begins a question. */
  asks: phrases,
  /** "which", "what": asks for a choice, the topic follows from the noun. */
  either: phrases,
  compare: phrases,
  emergency: phrases,
  /** It is one only if `notEmergency` is not there, or one of these is. */
  notEmergency: phrases,
  urgent: phrases,
  requests: z.record(id, phrases),
  /** `whole`: nothing else in the message; `lead`: at its beginning; `anywhere`. */
  acts: z.record(
    id,
    z.strictObject({ whole: phrases.optional(), lead: phrases.optional(), anywhere: phrases.optional() }),
  ),
  commands: z.record(
    z.string().regex(/^[a-z]+$/),
    z.strictObject({ topic: id.optional(), act: id.optional() }),
  ),
  smalltalk: phrases,

  /** `after`: it denies what stands before it if nothing but a mark follows ("Granit ist es nicht"). */
  negation: z.strictObject({
    before: phrases,
    list: phrases,
    stop: phrases.optional(),
    after: phrases.optional(),
  }),
  hedges: phrases,
  /** They stand behind what they make unsure: "Granit oder so". */
  hedgesAfter: phrases.optional(),
  dontKnow: phrases,
  /** Proper names follow: "the route called …". */
  named: phrases,
  /** With one of these a past day tells how long the adhesive has had. */
  setAgo: phrases,
  /** "yesterday evening": so many days back, at the latest at that hour. */
  periods: z.array(
    z.strictObject({ say: phrases, daysBack: z.int().min(0), until: z.number().min(0).max(30) }),
  ),
  temperatures: z.array(z.strictObject({ say: phrases, celsius: z.number() })),
});

export type Vocabulary = z.infer<typeof vocabularySchema>;
export type RoleCues = z.infer<typeof cues>;
