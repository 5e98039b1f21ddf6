/** One message of one member: understood, added to what was told, answered by a question, an advice or a notice. */
import { advise, canAdvise, covers, type Desk, OutOfRange } from '../advice/index.ts';
import type { Advice } from '../contracts/advice.ts';
import type { Fact, Facts, FactValue } from '../contracts/facts.ts';
import type { Message } from '../contracts/message.ts';
import type { Phrase } from '../contracts/phrase.ts';
import { emptySession, type Session } from '../contracts/session.ts';
import type { Question, Turn } from '../contracts/turn.ts';
import { knownValues } from '../rules/index.ts';
import { type NextQuestion, nextQuestion } from './ask.ts';
import { factsOf, takeBack, told, topicOf } from './fold.ts';
import { type Read, readMessage, type Understand } from './read.ts';

export interface Answered {
  readonly session: Session;
  readonly turn: Turn;
}

export interface DialogueOptions {
  /** One question, one answer: nothing is asked back but what no answer can do without. */
  readonly oneShot: boolean;
}

/** Topics offered as buttons when it is not clear what a member wants. */
const offered = ['material', 'anchor', 'embedment', 'adhesive', 'cure', 'hole', 'cautions'];

const valuesOf = (facts: Facts): Record<string, FactValue> =>
  Object.fromEntries(Object.entries(facts).map(([id, { value }]) => [id, value]));

export class Dialogue {
  constructor(
    readonly desk: Desk,
    readonly understand: Understand,
    readonly options: DialogueOptions,
  ) {}

  async turn(session: Session, message: Message): Promise<Answered> {
    const read = readMessage(this.desk.rules, this.understand, session, message);
    switch (read.kind) {
      case 'notice':
        return this.#notice(session, session, read.lines, read.offer ? offered : []);
      case 'restart':
        return this.#notice(emptySession, emptySession, [{ say: 'restarted' }], offered);
      case 'why':
        return this.#why(session);
      case 'back':
        return this.#back(session);
      case 'told':
        return this.#told(session, read);
    }
  }

  async #told(session: Session, read: Extract<Read, { kind: 'told' }>): Promise<Answered> {
    const [topic] = read.topics;
    if (topic !== undefined && topic !== 'refuse' && !canAdvise(topic))
      return this.#notice(
        session,
        session,
        [{ say: 'not-yet', with: { topic: { say: `topic-${topic}` } } }],
        offered,
      );
    const next = told(session, read.entries, topic);
    if (topicOf(next) === undefined) {
      const noted = { ...next, pending: null };
      return this.#notice(noted, noted, [{ say: 'what-about' }], offered, read.understood);
    }
    return this.#answer(next, session, read.understood, read.topics.slice(1));
  }

  /** Asks what may still change the answer, or answers. `before` is what stays if no answer can be given. */
  async #answer(
    session: Session,
    before: Session,
    understood: readonly string[],
    also: readonly string[],
  ): Promise<Answered> {
    const topic = topicOf(session) ?? 'unknown';
    const facts = factsOf(this.desk.rules, session);
    try {
      const { oneShot } = this.options;
      const next: NextQuestion = oneShot
        ? { fact: null, missing: [] }
        : await nextQuestion(this.desk, topic, facts, session.asked);
      if (next.fact !== null) return this.#ask(session, facts, next.fact, next.missing, understood);
      const advice = await advise(this.desk, topic, facts);
      const [lacking] = advice.lacking;
      if (oneShot && lacking !== undefined)
        return this.#ask(session, facts, lacking, advice.lacking, understood);
      const more = [];
      for (const other of also)
        if (canAdvise(other) && !covers[topic]?.includes(other))
          more.push(await advise(this.desk, other, facts));
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
      return this.#notice(before, before, [outOfRange(error)], []);
    }
  }

  #ask(
    session: Session,
    facts: Facts,
    fact: string,
    missing: readonly string[],
    understood: readonly string[],
  ): Answered {
    return {
      session: { ...session, pending: fact, asked: [...new Set([...session.asked, fact])] },
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

  async #why(session: Session): Promise<Answered> {
    const { answered } = session;
    if (answered === null) return this.#notice(session, session, [{ say: 'why-nothing' }], offered);
    const advice = await advise(this.desk, answered.topic, answered.facts);
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

  async #back(session: Session): Promise<Answered> {
    const earlier = takeBack(session);
    if (earlier === session) return this.#notice(session, session, [{ say: 'back-nothing' }], offered);
    if (topicOf(earlier) === undefined)
      return this.#notice(earlier, earlier, [{ say: 'back-start' }], offered);
    return this.#answer(earlier, session, Object.keys(factsOf(this.desk.rules, earlier)), []);
  }

  #notice(
    session: Session,
    shown: Session,
    lines: readonly Phrase[],
    topics: readonly string[],
    understood: readonly string[] = [],
  ): Answered {
    return {
      session,
      turn: {
        outcome: { kind: 'notice', lines, topics },
        topic: topicOf(shown) ?? 'unknown',
        facts: valuesOf(factsOf(this.desk.rules, shown)),
        understood,
        assumed: [],
        missing: [],
        settle: [],
      },
    };
  }
}

function outOfRange(error: OutOfRange): Phrase {
  const { spec, value } = error;
  const unit = spec.unit || '1';
  return {
    say: 'out-of-range',
    with: {
      what: { of: 'quantity', id: spec.words },
      value: { value, unit },
      least: { value: spec.min, unit, exact: true },
      most: { value: spec.max, unit, exact: true },
    },
  };
}
