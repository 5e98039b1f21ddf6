/** A measured pull in words: verdict first, figures in both systems, a question instead of a diagnosis, cautions, deferral. */
import type { Measure, Phrase } from '../contracts/phrase.ts';
import {
  type Pull,
  type Reading,
  type Recording,
  recordingCautions,
  shownKn,
} from '../contracts/recording.ts';
import { oneLine } from '../units/one-line.ts';
import type { Words } from './words.ts';

const kn = (value: number): Measure => ({ value: shownKn(value), unit: 'kN', exact: true });
const seconds = (words: Words, value: number): string => words.number(Number(value.toFixed(2)));

function figures(words: Words, recording: Recording, pull: Pull): Phrase[] {
  const { firstDrop, plateau, rateKnPerS, stiffnessKnPerMm, energyJ } = pull;
  const lines: Phrase[] = [{ say: 'recording-time', with: { time: seconds(words, pull.timeOfPeakS) } }];
  if (firstDrop !== null)
    lines.push({
      say: 'recording-drop',
      with: { time: seconds(words, firstDrop.timeS), from: kn(firstDrop.fromKn), to: kn(firstDrop.toKn) },
    });
  if (plateau !== null)
    lines.push({
      say: 'recording-plateau',
      with: {
        level: kn(plateau.levelKn),
        seconds: words.number(Number((plateau.toS - plateau.fromS).toFixed(1))),
      },
    });
  if (rateKnPerS !== null)
    lines.push({ say: 'recording-rate', with: { rate: { value: rateKnPerS, unit: 'kN/s' } } });
  if (stiffnessKnPerMm !== null)
    lines.push({
      say: 'recording-stiffness',
      with: { stiffness: { value: stiffnessKnPerMm, unit: 'kN/mm' } },
    });
  if (energyJ !== null)
    lines.push({ say: 'recording-energy', with: { energy: { value: energyJ, unit: 'J' } } });
  if (Math.abs(recording.restKn) > 0.005 * pull.peakKn)
    lines.push({ say: 'recording-rest', with: { rest: kn(recording.restKn) } });
  return lines;
}

/** What was measured of one pull, verdict first. */
function pullLines(words: Words, file: string, recording: Recording, pull: Pull, number: number): string[] {
  const bullet = (phrase: Phrase): string => `• ${words.say(phrase)}`;
  const reasons = pull.reasons.map((reason) => words.say({ say: `recording-reason-${reason}` })).join('; ');
  return [
    words.say({
      say: pull.failed ? 'recording-failed' : 'recording-stopped',
      with: { peak: kn(pull.peakKn) },
    }),
    words.say({ say: 'recording-title', with: { file, number } }),
    ...figures(words, recording, pull).map(bullet),
    bullet({ say: `recording-mode-${pull.mode}` }),
    bullet({ say: 'recording-reason', with: { list: reasons } }),
    ...pull.notes.map((note) => bullet({ say: `recording-note-${note}` })),
  ];
}

/** The pulls of a file without cautions and deferral, which a chat says once below them. */
export function pullsSaid(words: Words, name: string, recording: Recording): readonly string[] {
  const file = oneLine(name, 60);
  if (recording.pulls.length === 0) return [words.say({ say: 'recording-none', with: { file } })];
  return recording.pulls.map((pull, index) => pullLines(words, file, recording, pull, index + 1).join('\n'));
}

function pullText(words: Words, file: string, recording: Recording, pull: Pull, number: number): string {
  return [
    ...pullLines(words, file, recording, pull, number),
    words.say({ say: 'title-cautions' }),
    ...recordingCautions.map((id) => `• ${words.glossary.caution(id)}`),
    words.say({ say: 'deferral' }),
  ].join('\n');
}

export function recordingText(words: Words, file: string, reading: Reading): string {
  if ('problem' in reading)
    return words.say({ say: 'recording-refused', with: { file, why: reading.problem.words } });
  const { recording } = reading;
  if (recording.pulls.length === 0)
    return [words.say({ say: 'recording-none', with: { file } }), words.say({ say: 'deferral' })].join('\n');
  return recording.pulls.map((pull, index) => pullText(words, file, recording, pull, index + 1)).join('\n\n');
}
