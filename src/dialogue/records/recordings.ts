/** The recording of a load cell that a member sent: measured, its mode asked back, offered to be noted as a pull test. */
import type { Measure, Phrase } from '../../contracts/phrase.ts';
import type { Draft } from '../../contracts/record.ts';
import {
  type Pull,
  type PullMode,
  type Recording,
  recordingCautions,
  shownKn,
} from '../../contracts/recording.ts';
import type { Outcome } from '../../contracts/turn.ts';
import { domain, impossible } from '../../rules/index.ts';
import { type Recorded, type Said, saying, type Tools } from './context.ts';
import { goOn } from './drafting.ts';

type Choices = Extract<Outcome, { kind: 'record' }>['choices'];

/** Minutes of any logger; measuring more would keep other chats waiting. */
const mostBytes = 20_000_000;
/** As many as fit under a message. */
const mostOffered = 8;
const notText: readonly string[] = ['binary', 'packed'];

/** What may have given way where a pull looks so. The member has seen it and decides. */
const waysOf: Readonly<Record<PullMode, readonly string[]>> = {
  'bond-loss': ['adhesive-rock', 'adhesive-steel', 'combined'],
  brittle: ['steel', 'rock-cone'],
  'slow-slip': ['adhesive-rock', 'adhesive-steel'],
  rig: ['rig-failed'],
  stopped: ['stopped'],
};

const kn = (value: number): Measure => ({ value: shownKn(value), unit: 'kN', exact: true });

/** A load that is not known is not offered: of a clipped peak only its least is. */
const isUsable = (tools: Tools, { clipped, peakKn }: Pull): boolean =>
  !clipped && !impossible(tools.rules, 'pulls_kn', shownKn(peakKn));

const press = ({ peakKn }: Pull, way: string): string => `r:pull:${shownKn(peakKn)}:${way}`;

function offerOfOne(pull: Pull): { line: Phrase; choices: Choices } {
  const ways = waysOf[pull.mode].map((way) => ({
    id: press(pull, way),
    say: { say: 'choice-note-mode', with: { mode: { fact: 'failure_mode', value: way } } },
  }));
  return {
    line: { say: 'recording-offer', with: { peak: kn(pull.peakKn) } },
    choices: [...ways, { id: press(pull, '?'), say: { say: 'choice-note-open' } }],
  };
}

interface Numbered {
  readonly pull: Pull;
  readonly number: number;
}

/** Of several the member picks one; one that gave way is then asked for what did. */
function offerOfSeveral(
  usable: readonly Numbered[],
  strongest: Numbered,
): { line: Phrase; choices: Choices } {
  const { number, pull } = strongest;
  return {
    line: { say: 'recording-offer-several', with: { number, peak: kn(pull.peakKn) } },
    choices: usable.slice(0, mostOffered).map((one) => ({
      id: press(one.pull, one.pull.failed ? '?' : 'stopped'),
      say: { say: 'choice-note-pull', with: { number: one.number, peak: kn(one.pull.peakKn) } },
    })),
  };
}

function offerOf(tools: Tools, { pulls }: Recording): { lines: Phrase[]; choices: Choices } {
  const numbered = pulls.map((pull, index) => ({ pull, number: index + 1 }));
  const usable = numbered.filter(({ pull }) => isUsable(tools, pull));
  const [strongest] = usable.toSorted((one, other) => other.pull.peakKn - one.pull.peakKn);
  const lines: Phrase[] =
    usable.length === pulls.length
      ? []
      : [{ say: 'recording-no-offer', with: { count: pulls.length - usable.length } }];
  if (strongest === undefined) return { lines, choices: [] };
  const { line, choices } =
    pulls.length === 1 ? offerOfOne(strongest.pull) : offerOfSeveral(usable, strongest);
  return { lines: [...lines, line], choices };
}

/** `named`: its name is that of a table. Another file with words beside it is passed over where it is no recording. */
export async function recordingIn(
  tools: Tools,
  said: Said,
  name: string,
  bytes: Uint8Array,
  named: boolean,
): Promise<Recorded | null> {
  const { readRecording } = tools;
  if (readRecording === null) return named ? saying(tools, said.session, [{ say: 'table-no-text' }]) : null;
  const file = name.replaceAll(/[\p{Cc}\p{Cf}\s]+/gu, ' ').slice(0, 60);
  const refused = (code: string, why: Phrase): Promise<Recorded> =>
    saying(tools, said.session, [
      { say: 'recording-refused', with: { file, why } },
      { say: notText.includes(code) ? 'table-no-text' : 'recording-file-neither' },
    ]);
  if (bytes.length > mostBytes) return refused('too-large', { say: 'recording-problem-too-large' });
  const reading = await readRecording(bytes);
  if ('problem' in reading) {
    const words = (said.message.text ?? '').trim() !== '';
    return !named && words ? null : refused(reading.problem.code, reading.problem.words);
  }
  const { recording } = reading;
  const { lines, choices } = offerOf(tools, recording);
  return saying(tools, said.session, lines, {
    topic: 'pulltest-result',
    choices,
    cautions: recordingCautions,
    recorded: { name: file, recording },
    pictures: recording.pulls.length === 0 ? [] : [{ kind: 'recording', data: { name: file, recording } }],
  });
}

/** A tap on the offer: the draft begins with what was measured. Null where the button says nothing that can be. */
export async function notePull(
  tools: Tools,
  said: Said,
  load: string,
  way: string,
): Promise<Recorded | null> {
  const { session, at } = said;
  const load_kn = /^\d{1,4}(\.\d{1,4})?$/.test(load) ? Number(load) : null;
  const known = way === '?' || (way !== 'unknown' && domain(tools.rules, 'failure_mode').includes(way));
  if (load_kn === null || !known || impossible(tools.rules, 'pulls_kn', load_kn)) return null;
  if (session.draft !== null)
    return goOn(tools, session, session.draft, { lines: [{ say: 'record-open-first' }] });
  const facts = { load_kn, ...(way === '?' ? {} : { failure_mode: way }) };
  const draft: Draft = { do: 'add', kind: 'test', body: { facts, texts: { day: at.slice(0, 10) } } };
  return goOn(tools, session, draft, { understood: Object.keys(facts) });
}
