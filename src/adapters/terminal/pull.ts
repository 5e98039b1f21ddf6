import type { Writable } from 'node:stream';
import type { Pull, Reading } from '../../contracts/recording.ts';
import { recordingText } from '../../render/recording.ts';
import type { Words } from '../../render/words.ts';
import { type Pictures, picturesBeside } from './picture-files.ts';

/** Six digits: more than any load cell has. */
const rounded = (value: number): number => Number(value.toPrecision(6));
const orNull = (value: number | null): number | null => (value === null ? null : rounded(value));

const pullInJson = (pull: Pull) => ({
  peak_kn: rounded(pull.peakKn),
  time_of_peak_s: rounded(pull.timeOfPeakS),
  first_drop:
    pull.firstDrop === null
      ? null
      : {
          time_s: rounded(pull.firstDrop.timeS),
          from_kn: rounded(pull.firstDrop.fromKn),
          to_kn: rounded(pull.firstDrop.toKn),
        },
  stiffness_kn_per_mm: orNull(pull.stiffnessKnPerMm),
  energy_j: orNull(pull.energyJ),
  rate_kn_per_s: orNull(pull.rateKnPerS),
  failed: pull.failed,
  clipped: pull.clipped,
  mode: pull.mode,
});

function inJson(words: Words, file: string, reading: Reading): string {
  if ('recording' in reading)
    return JSON.stringify({
      file,
      unit: reading.recording.unit,
      pulls: reading.recording.pulls.map(pullInJson),
    });
  const { code, line, words: phrase } = reading.problem;
  return JSON.stringify({
    file,
    unit: 'unknown',
    pulls: [],
    error: { code, line, message: words.say(phrase) },
  });
}

/** The words come first and never wait for, or fail with, a picture. */
async function inPictures(words: Words, file: string, reading: Reading, pictures: Pictures): Promise<string> {
  if ('problem' in reading) return '';
  try {
    const said = await picturesBeside(pictures, file, reading.recording);
    return said.map((line) => `${words.say(line)}\n`).join('');
  } catch {
    return `${words.say({ say: 'recording-picture-failed', with: { file: `${file}.png` } })}\n`;
  }
}

/** Reads one file after another; 1 where one of them could not be read. */
export async function runPull(
  read: (file: string) => Promise<Reading>,
  files: readonly string[],
  json: boolean,
  words: Words,
  output: Writable,
  pictures: Pictures,
): Promise<number> {
  let code = 0;
  for (const [index, file] of files.entries()) {
    const reading = await read(file);
    if ('problem' in reading) code = 1;
    if (json) output.write(`${inJson(words, file, reading)}\n`);
    else {
      output.write(`${index === 0 ? '' : '\n'}${recordingText(words, file, reading)}\n`);
      output.write(await inPictures(words, file, reading, pictures));
    }
  }
  return code;
}
