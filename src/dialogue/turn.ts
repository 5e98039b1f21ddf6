/** One message of one member: understood, added to what was told, answered by a question, an advice or a notice. */
import { advise, canAdvise, cautionsOn, covers, type Desk, OutOfRange } from '../advice/index.ts';
import type { Advice } from '../contracts/advice.ts';
import type { Fact, Facts, FactValue } from '../contracts/facts.ts';
import type { Message } from '../contracts/message.ts';
import type { Phrase } from '../contracts/phrase.ts';
import { noRecords, type RecordChange, type Records } from '../contracts/record.ts';
import { type ClubSettings, emptyClub, emptySession, type Session } from '../contracts/session.ts';
import type { Question, Turn } from '../contracts/turn.ts';
import { bondFacts } from '../field/bond.ts';
import { shelteredRecords } from '../field/index.ts';
import type { Places } from '../places/seas.ts';
import { knownValues } from '../rules/index.ts';
import { type NextQuestion, nextQuestion } from './ask.ts';
import { type ClubWish, changedClub, clubLines, wishesNothing, withClub, withoutClub } from './club.ts';
import { factsOf, takeBack, told, topicOf } from './fold.ts';
import type { Ears } from './hear.ts';
import { Memo } from './memo.ts';
import { outOfRange } from './out-of-range.ts';
import { type Read, readMessage } from './read.ts';
import type { Recorded, Said, Tools } from './records/context.ts';
import { aboutRecords, beginsRecord } from './records/recorder.ts';
import { onAnotherSide, otherOne } from './refer.ts';

export interface Answered {
  readonly session: Session;
  readonly turn: Turn;
  /** The club's settings, where this message set them anew. */
  readonly club?: ClubSettings;
  /** Records that this message adds, corrects or withdraws. */
  readonly changes?: readonly RecordChange[];
}

/** What came of a message, but for the language and the clock. */
interface Answer {
  readonly session: Session;
  readonly turn: Omit<Turn, 'language' | 'units' | 'resumed' | 'lead'>;
  readonly club?: ClubSettings;
}

/** After so long a talk is taken up again rather than gone on with. */
const longPause = 12 * 3600 * 1000;

function isLater(before: string | null, now: string): boolean {
  return before !== null && Date.parse(now) - Date.parse(before) > longPause;
}

export interface DialogueOptions {
  /** One question, one answer: nothing is asked back but what no answer can do without. */
  readonly oneShot: boolean;
}

/** Topics offered as buttons when it is not clear what a member wants. */
const offered = ['material', 'anchor', 'embedment', 'adhesive', 'cure', 'hole', 'load', 'cautions'];

/** What facts told without a question are about, where there is hardly another thing to ask of them. */
const guesses: readonly (readonly [topic: string, facts: readonly string[]])[] = [
  ['embedment', ['diameter_mm', 'rock']],
  ['embedment', ['embedment_mm', 'rock']],
  ['cure', ['adhesive', 'hours_since']],
  ['cure', ['adhesive', 'temperature_c']],
  ['load', ['fall_factor']],
  ['material', ['environment']],
];

const guessTopic = (facts: Facts): string | undefined =>
  guesses.find(([, ids]) => ids.every((id) => facts[id] !== undefined))?.[0];

/** Topics that reckon with the bond of an adhesive. */
const learning = ['embedment', 'pulltest-plan'];

const valuesOf = (facts: Facts): Record<string, FactValue> =>
  Object.fromEntries(Object.entries(facts).map(([id, { value }]) => [id, value]));

export class Dialogue {
  readonly #advices = new Memo<Advice>('advice');
  readonly #questions = new Memo<NextQuestion>('question');
  readonly #tools: Tools;
  readonly #cautions = new Map<string, Promise<readonly string[]>>();

  constructor(
    readonly desk: Desk,
    readonly ears: Ears,
    readonly options: DialogueOptions,
    readonly places: Places | null = null,
    readonly records: Records = noRecords,
  ) {
    this.#tools = {
      rules: desk.rules,
      ears,
      records,
      sensitive: [],
      advise: (topic, facts) => this.#advise(topic, facts),
      cautions: (topic) => {
        // What is told of an old anchor holds for every entry of the register.
        const about = topic === 'register' ? 'inspect' : 'pulltest-record';
        const known = this.#cautions.get(about) ?? cautionsOn(desk, about);
        this.#cautions.set(about, known);
        return known;
      },
    };
  }

  #advise(topic: string, facts: Facts): Promise<Advice> {
    return this.#advices.get([topic, facts], () => advise(this.desk, topic, facts));
  }

  #next(topic: string, facts: Facts, asked: readonly string[]): Promise<NextQuestion> {
    return this.#questions.get([topic, facts, asked], () => nextQuestion(this.desk, topic, facts, asked));
  }

  #toolsFor({ sensitive }: ClubSettings): Tools {
    return sensitive.length === 0
      ? this.#tools
      : { ...this.#tools, sensitive, records: shelteredRecords(this.records, sensitive) };
  }

  /** `own` is the language of the member's platform; what the member asked for or wrote in comes before it. */
  async turn(before: Session, message: Message, own = 'en', club = emptyClub): Promise<Answered> {
    const { rules } = this.desk;
    const held = withClub(before, club.facts);
    const at = message.at ?? new Date().toISOString();
    const said: Said = { session: held, message, own: before.language ?? own, at };
    const tools = this.#toolsFor(club);
    const recorded = this.options.oneShot ? null : await aboutRecords(tools, said);
    if (recorded !== null) return this.#recorded(recorded, said, own, club);
    const { read, language, parsed } = await readMessage(
      rules,
      this.ears,
      held,
      message,
      said.own,
      this.places,
    );
    const begun =
      parsed === undefined || this.options.oneShot ? null : await beginsRecord(tools, said, parsed);
    if (begun !== null) return this.#recorded(begun, said, own, club);
    const resumed = isLater(before.at, at) && Object.keys(factsOf(rules, before)).length > 0;
    const answer = await this.#answerTo(held, read, club, message);
    const kept = language === own && before.language === null ? null : language;
    const quiet = answer.session === held && kept === before.language;
    return {
      session: quiet ? before : { ...withoutClub(answer.session), language: kept, at },
      turn: {
        ...answer.turn,
        language,
        units: answer.session.units ?? (answer.club ?? club).units ?? 'metric',
        resumed: resumed && read.kind !== 'restart',
        lead: read.kind === 'told' ? (read.lines ?? []) : [],
      },
      ...(answer.club === undefined ? {} : { club: answer.club }),
    };
  }

  #recorded(recorded: Recorded, { own: heardIn, at }: Said, own: string, club: ClubSettings): Answered {
    const { session, outcome, topic, facts, understood, missing, changes, language = heardIn } = recorded;
    const kept = language === own && session.language === null ? null : language;
    return {
      session: { ...withoutClub(session), language: kept, at },
      turn: {
        outcome,
        topic,
        facts,
        understood,
        assumed: [],
        missing,
        settle: [],
        language,
        units: session.units ?? club.units ?? 'metric',
        resumed: false,
        lead: [],
      },
      ...(changes === undefined ? {} : { changes }),
    };
  }

  #answerTo(session: Session, read: Read, club: ClubSettings, message: Message): Promise<Answer> | Answer {
    switch (read.kind) {
      case 'notice':
        return this.#notice(session, read.lines, read.offer ? offered : []);
      case 'language':
        return this.#notice(session, [{ say: 'language-set' }], []);
      case 'units':
        return this.#notice({ ...session, units: read.units }, [{ say: `units-set-${read.units}` }], []);
      case 'club':
        return this.#club(session, read.wish, club, message);
      case 'restart':
        return this.#notice({ ...emptySession, units: session.units }, [{ say: 'restarted' }], offered);
      case 'why':
        return this.#why(session);
      case 'back':
        return this.#back(session, message.chat);
      case 'told':
        return read.refers === undefined
          ? this.#told(session, read, message.chat)
          : this.#refers(session, read, message.chat);
    }
  }

  /** `/club sandstone, inland` sets what holds for the chat; alone it shows it, and with "clear" it clears it. */
  #club(session: Session, wish: ClubWish, club: ClubSettings, { admin, room }: Message): Answer {
    if (wishesNothing(wish)) return this.#notice(session, clubLines(club), []);
    if (admin === false) return this.#notice(session, [{ say: 'settings-admins-only' }], []);
    if (wish.asked.rooms === 'here' && room === undefined)
      return this.#notice(session, [{ say: 'settings-no-rooms' }], []);
    const changed = changedClub(this.desk.rules, club, wish, room);
    return { ...this.#notice(session, clubLines(changed), []), club: changed };
  }

  /** "And the other one?", "what about the shady side?" */
  async #refers(session: Session, read: Extract<Read, { kind: 'told' }>, chat: string): Promise<Answer> {
    const { answered } = session;
    if (read.refers === 'shade') {
      if (topicOf(session) === undefined) return this.#told(session, read, chat);
      return this.#told(onAnotherSide(session), read, chat);
    }
    const advice = answered === null ? null : await this.#advise(answered.topic, answered.facts);
    const other = otherOne(session, advice, factsOf(this.desk.rules, session));
    switch (other.kind) {
      case 'one': {
        const entry = { fact: other.fact, value: other.value, from: 'said' } as const;
        const topics = read.topics.length > 0 || answered === null ? read.topics : [answered.topic];
        const also = { either: session.either, topics, understood: [...read.understood, other.fact] };
        return this.#told(session, { ...read, ...also, entries: [...read.entries, entry] }, chat);
      }
      case 'which': {
        const answer = this.#notice(session, [{ say: 'other-which' }], []);
        const { outcome } = answer.turn;
        if (outcome.kind !== 'notice') return answer;
        const open = { fact: other.fact, values: other.values };
        return { ...answer, turn: { ...answer.turn, outcome: { ...outcome, open } } };
      }
      case 'none':
        return this.#notice(session, [{ say: 'other-none' }], []);
    }
  }

  async #told(session: Session, read: Extract<Read, { kind: 'told' }>, chat: string): Promise<Answer> {
    const [topic] = read.topics;
    const { either = null } = read;
    if (topic !== undefined && topic !== 'refuse' && !canAdvise(topic))
      return this.#notice(session, [{ say: 'not-yet', with: { topic: { say: `topic-${topic}` } } }], offered);
    const weighing = either === null ? session : { ...session, either };
    const noTopic = told(weighing, read.entries, topic);
    const guess = topicOf(noTopic) === undefined ? guessTopic(factsOf(this.desk.rules, noTopic)) : undefined;
    const next = guess === undefined ? noTopic : told(weighing, read.entries, guess);
    if (topicOf(next) === undefined) {
      const noted = { ...next, pending: null };
      return this.#notice(noted, [{ say: 'what-about' }], offered, read.understood);
    }
    return this.#answer(next, session, chat, read.understood, read.topics.slice(1));
  }

  /** Asks what may still change the answer, or answers. `before` is what stays if no answer can be given. */
  async #answer(
    session: Session,
    before: Session,
    chat: string,
    understood: readonly string[],
    also: readonly string[],
  ): Promise<Answer> {
    const topic = topicOf(session) ?? 'unknown';
    const facts = await this.#withOurs(topic, factsOf(this.desk.rules, session), chat);
    try {
      const { oneShot } = this.options;
      const next: NextQuestion = oneShot
        ? { fact: null, missing: [] }
        : await this.#next(topic, facts, session.asked);
      if (next.fact !== null) return this.#ask(session, facts, next.fact, next.missing, understood);
      const advice = await this.#advise(topic, facts);
      const [lacking] = advice.lacking;
      if (oneShot && lacking !== undefined)
        return this.#ask(session, facts, lacking, advice.lacking, understood);
      const more = [];
      for (const other of also)
        if (canAdvise(other) && !covers[topic]?.includes(other)) more.push(await this.#advise(other, facts));
      const assumedFacts: Record<string, Fact> = Object.fromEntries(
        advice.assumed.map((id) => [id, { value: advice.facts[id] ?? 'unknown', from: 'assumed' }]),
      );
      return {
        session: { ...session, pending: null, answered: { topic, facts } },
        turn: {
          outcome: { kind: 'advice', advice, also: more },
          topic: advice.topic,
          facts: valuesOf({ ...facts, ...assumedFacts }),
          understood,
          assumed: advice.assumed,
          missing: next.missing,
          settle: this.#settle(advice),
        },
      };
    } catch (error) {
      if (!(error instanceof OutOfRange)) throw error;
      return this.#notice(before, [outOfRange(error)], []);
    }
  }

  /** What the club's own pulls say of the bond, where the rock and the adhesive are known. */
  async #withOurs(topic: string, facts: Facts, chat: string): Promise<Facts> {
    const [rock, adhesive] = [facts.rock?.value, facts.adhesive?.value];
    if (!learning.includes(topic) || typeof rock !== 'string' || typeof adhesive !== 'string') return facts;
    const records = await this.records.list(chat, 'test');
    return records.length === 0
      ? facts
      : { ...facts, ...bondFacts(this.desk.rules, records, rock, adhesive) };
  }

  #ask(
    session: Session,
    facts: Facts,
    fact: string,
    missing: readonly string[],
    understood: readonly string[],
  ): Answer {
    return {
      session: { ...session, pending: fact, asked: [...session.asked, fact] },
      turn: {
        outcome: { kind: 'question', question: this.#question(fact), whyAsked: true },
        topic: topicOf(session) ?? 'unknown',
        facts: valuesOf(facts),
        understood,
        assumed: [],
        missing,
        settle: [],
      },
    };
  }

  #question(fact: string): Question {
    const definition = this.desk.rules.facts.get(fact);
    return { fact, values: definition ? knownValues(this.desk.rules, definition) : [] };
  }

  /** The first assumption that one tap can settle, with the other values it may have. */
  #settle({ assumed, facts }: Advice): readonly Question[] {
    const questions = assumed.map((fact) => {
      const { values } = this.#question(fact);
      return { fact, values: values.filter((value) => value !== facts[fact]) };
    });
    return questions.filter(({ values }) => values.length > 0 && values.length <= 6).slice(0, 1);
  }

  async #why(session: Session): Promise<Answer> {
    const { answered } = session;
    if (answered === null) return this.#notice(session, [{ say: 'why-nothing' }], offered);
    const advice = await this.#advise(answered.topic, answered.facts);
    const origins = Object.fromEntries(
      Object.entries(answered.facts)
        .filter(([id]) => !advice.assumed.includes(id))
        .map(([id, { from }]) => [id, from]),
    );
    return {
      session,
      turn: {
        outcome: { kind: 'why', advice, origins },
        topic: 'why',
        facts: advice.facts,
        understood: [],
        assumed: advice.assumed,
        missing: [],
        settle: [],
      },
    };
  }

  async #back(session: Session, chat: string): Promise<Answer> {
    const earlier = takeBack(session);
    if (earlier === session) return this.#notice(session, [{ say: 'back-nothing' }], offered);
    if (topicOf(earlier) === undefined) return this.#notice(earlier, [{ say: 'back-start' }], offered);
    return this.#answer(earlier, session, chat, Object.keys(factsOf(this.desk.rules, earlier)), []);
  }

  #notice(
    session: Session,
    lines: readonly Phrase[],
    topics: readonly string[],
    understood: readonly string[] = [],
  ): Answer {
    return {
      session,
      turn: {
        outcome: {
          kind: 'notice',
          lines,
          topics,
          open: session.pending === null ? null : this.#question(session.pending),
        },
        topic: topicOf(session) ?? 'unknown',
        facts: valuesOf(factsOf(this.desk.rules, session)),
        understood,
        assumed: [],
        missing: [],
        settle: [],
      },
    };
  }
}
