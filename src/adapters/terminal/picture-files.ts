/** Pictures beside a recording: a file that was not drawn here is never written over. */
import { readFile, writeFile } from 'node:fs/promises';
import type { ReplyFile } from '../../contracts/message.ts';
import type { Phrase } from '../../contracts/phrase.ts';
import type { Recording } from '../../contracts/recording.ts';

export interface Pictures {
  readonly draw: (name: string, recording: Recording) => Promise<readonly ReplyFile[]>;
  readonly isOurs: (bytes: Buffer) => boolean;
}

const codeOf = (error: unknown): unknown => (error as NodeJS.ErrnoException).code;

async function keep(path: string, bytes: Buffer, isOurs: Pictures['isOurs']): Promise<Phrase> {
  const say = (what: string): Phrase => ({ say: what, with: { file: path } });
  try {
    await writeFile(path, bytes, { flag: 'wx' });
    return say('recording-picture');
  } catch (error) {
    if (codeOf(error) !== 'EEXIST') return say('recording-picture-failed');
  }
  try {
    if (!isOurs(await readFile(path))) return say('recording-picture-kept');
    await writeFile(path, bytes);
    return say('recording-picture');
  } catch (error) {
    return say(codeOf(error) === 'EISDIR' ? 'recording-picture-kept' : 'recording-picture-failed');
  }
}

/** FILE.png, and FILE.displacement.png where displacement was recorded; gives what to say of each. */
export async function picturesBeside(
  { draw, isOurs }: Pictures,
  file: string,
  recording: Recording,
): Promise<readonly Phrase[]> {
  if (recording.pulls.length === 0) return [];
  const said: Phrase[] = [];
  for (const { name, base64 } of await draw(file, recording)) {
    const path = name.includes('displacement') ? `${file}.displacement.png` : `${file}.png`;
    said.push(await keep(path, Buffer.from(base64, 'base64'), isOurs));
  }
  return said;
}
