/** What the talk about the club's own records works with, and what comes of it. */
import { OutOfRange } from '../../advice/index.ts';
import type { Advice } from '../../contracts/advice.ts';
import type { Facts, FactValue } from '../../contracts/facts.ts';
import type { Message } from '../../contracts/message.ts';
import type { Phrase } from '../../contracts/phrase.ts';
import type {
  ClubRecord,
  Draft,
  RecordBody,
  RecordChange,
  RecordKind,
  Records,
} from '../../contracts/record.ts';
import type { ReadRecording } from '../../contracts/recording.ts';
import type { Session } from '../../contracts/session.ts';
import type { Outcome, Question } from '../../contracts/turn.ts';
import { markOf, openIn } from '../../field/index.ts';
import { valuesToTap } from '../../field/test-record.ts';
import type { RuleSet } from '../../rules/index.ts';
import type { Ears } from '../hear.ts';

export interface Tools {
  readonly rules: RuleSet;
  readonly ears: Ears;
  /** Places of sensitive crags left out. */
  readonly records: Records;
  readonly sensitive: readonly string[];
  readonly advise: (topic: string, facts: Facts) => Promise<Advice>;
  /** Those that belong to every answer about records of this topic. */
  readonly cautions: (topic: string) => Promise<readonly string[]>;
  /** Null where no load cell's files are read. */
  readonly readRecording: ReadRecording | null;
}

/** One message and the talk it belongs to. */
export interface Said {
  readonly session: Session;
  readonly message: Message;
  /** The language to listen in first. */
  readonly own: string;
  readonly at: string;
}

type RecordOutcome = Extract<Outcome, { kind: 'record' }>;

export interface Recorded {
  readonly session: Session;
  readonly outcome: RecordOutcome;
  readonly topic: string;
  readonly facts: Readonly<Record<string, FactValue>>;
  readonly understood: readonly string[];
  readonly missing: readonly string[];
  readonly changes?: readonly RecordChange[];
  readonly language?: string;
}

const testTopic = 'pulltest-record';

export const topicOfKind = (kind: RecordKind): string => (kind === 'test' ? testTopic : 'register');

const plainOutcome: RecordOutcome = {
  kind: 'record',
  lines: [],
  choices: [],
  open: null,
  advice: null,
  cautions: [],
  files: [],
  pictures: [],
  recorded: null,
};

/** Lines about records, with the cautions that every one of them carries. */
export async function saying(
  tools: Tools,
  session: Session,
  lines: readonly Phrase[],
  more: Partial<RecordOutcome> & Partial<Omit<Recorded, 'outcome' | 'session'>> = {},
): Promise<Recorded> {
  const { topic, facts, understood, missing, changes, language, ...outcome } = more;
  return {
    session,
    outcome: { ...plainOutcome, lines, cautions: await tools.cautions(topic ?? testTopic), ...outcome },
    topic: topic ?? testTopic,
    facts: facts ?? {},
    understood: understood ?? [],
    missing: missing ?? [],
    ...(changes === undefined ? {} : { changes }),
    ...(language === undefined ? {} : { language }),
  };
}

export const questionOf = (rules: RuleSet, body: RecordBody, fact: string): Question => ({
  fact,
  values: valuesToTap(rules, body, fact),
});

/** What one may be asked to confirm is marked, so that an old button does not confirm something newer. */
export const confirmChoices = (draft: Draft): RecordOutcome['choices'] => [
  { id: `r:keep:${markOf(draft)}`, say: { say: `choice-${draft.do === 'withdraw' ? 'withdraw' : 'keep'}` } },
  { id: `r:drop:${markOf(draft)}`, say: { say: 'choice-drop' } },
];

export const bodyOf = (draft: Draft | null): RecordBody | null =>
  draft === null || draft.do === 'import' ? null : draft.body;

export const stillOpen = (rules: RuleSet, draft: Draft): readonly string[] =>
  draft.do === 'add' ? openIn(rules, draft.kind, draft.body) : [];

/** Whoever wrote it down, and those who look after the group. */
export const mayChange = ({ author }: ClubRecord, { user, admin }: Message): boolean =>
  author === user || admin !== false;

/** Null where no method covers so many or such facts: what was written down still stands, and counts as not known. */
export async function advised(tools: Tools, topic: string, facts: Facts): Promise<Advice | null> {
  try {
    return await tools.advise(topic, facts);
  } catch (error) {
    if (error instanceof OutOfRange) return null;
    throw error;
  }
}
