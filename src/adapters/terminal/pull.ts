import type { Writable } from 'node:stream';
import type { Pull, Reading } from '../../contracts/recording.ts';
import { recordingText } from '../../render/recording.ts';
import type { Words } from '../../render/words.ts';

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

/** Reads one file after another; 1 where one of them could not be read. */
export async function runPull(
  read: (file: string) => Promise<Reading>,
  files: readonly string[],
  json: boolean,
  words: Words,
  output: Writable,
): Promise<number> {
  let code = 0;
  for (const [index, file] of files.entries()) {
    const reading = await read(file);
    if ('problem' in reading) code = 1;
    if (json) output.write(`${inJson(words, file, reading)}\n`);
    else output.write(`${index === 0 ? '' : '\n'}${recordingText(words, file, reading)}\n`);
  }
  return code;
}
