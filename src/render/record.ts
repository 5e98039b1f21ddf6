/** Answers about the club's own records: lines, a question or an advice, and the cautions that go with every one of them. */
import type { ReplyFile } from '../contracts/message.ts';
import type { Paragraph } from '../contracts/reply.ts';
import type { FileToSend, Outcome } from '../contracts/turn.ts';
import { adviceParagraphs, cautionsText } from './answer.ts';
import { pullsSaid } from './recording.ts';
import type { Words } from './words.ts';

type RecordOutcome = Extract<Outcome, { kind: 'record' }>;

export function showRecord(
  words: Words,
  { lines, open, advice, cautions, recorded }: RecordOutcome,
  understood: string,
): readonly (readonly Paragraph[])[] {
  const said = lines.map((line) => words.say(line));
  const asked = open === null ? [] : [words.glossary.ask(open.fact), words.glossary.whyAsked(open.fact)];
  const head = [...(open === null ? [] : [understood]), ...said, ...asked].filter((line) => line !== '');
  const first: Paragraph = { text: head.join('\n'), first: true };
  // An advice brings its own cautions, sources and deferral.
  if (advice !== null) return [[first, ...adviceParagraphs(words, advice)]];
  const must = (text: string): Paragraph => ({ text, first: true });
  // Beside a question only the first that is said in full: it is read again and again.
  const full = cautions.filter((id) => words.glossary.cautionInShort(id) === undefined);
  const shown = open === null ? cautions : full.slice(0, 1);
  const standing = [must(cautionsText(words, shown)), must(words.say({ say: 'standing' }))];
  if (recorded === null) return [[first, ...standing]];
  // Beside a measured load the cautions are said in full, as on the command line.
  const pulls = pullsSaid(words, recorded.name, recorded.recording).map(must);
  const inFull = [
    words.say({ say: 'title-cautions' }),
    ...cautions.map((id) => `• ${words.glossary.caution(id)}`),
  ];
  return [[...pulls, must(inFull.join('\n')), must(words.say({ say: 'deferral' })), first]];
}

export const filesSent = (words: Words, files: readonly FileToSend[]): readonly ReplyFile[] =>
  files.map(({ name, mime, base64, alt }) => ({ name, mime, base64, alt: words.say(alt) }));
