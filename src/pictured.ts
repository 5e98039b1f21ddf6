/** Draws the pictures that an answer wishes for, with the words of the member's language. Without one the words still say it all. */
import type { ReplyFile } from './contracts/message.ts';
import type { PictureWish } from './contracts/picture.ts';
import type { BondData, GroupData } from './contracts/pictures.ts';
import type { Recording } from './contracts/recording.ts';
import type { Rendered, Silence } from './contracts/reply.ts';
import type { Turn } from './contracts/turn.ts';
import { bondAlt, bondTexts, forceAlt, forceTexts, groupAlt, groupTexts } from './render/pictures.ts';
import type { Words } from './render/words.ts';

const png = (name: string, drawn: Buffer, alt: string): ReplyFile => ({
  name,
  mime: 'image/png',
  base64: drawn.toString('base64'),
  alt,
});

async function groupPicture(words: Words, data: GroupData): Promise<ReplyFile> {
  const { draw, groupComparison } = await import('./pictures/index.ts');
  return png('pulls.png', await draw(groupComparison(data, groupTexts(words, data))), groupAlt(words, data));
}

async function bondPicture(words: Words, data: BondData): Promise<ReplyFile> {
  const { bondStrength, draw } = await import('./pictures/index.ts');
  return png('bond.png', await draw(bondStrength(data, bondTexts(words, data))), bondAlt(words, data));
}

/** Force over time, and over displacement where that was recorded. */
export async function recordingPictures(
  words: Words,
  name: string,
  recording: Recording,
): Promise<ReplyFile[]> {
  const { draw, forceData, forceOverDisplacement, forceOverTime, marked } = await import(
    './pictures/index.ts'
  );
  const data = forceData(name, recording);
  const texts = forceTexts(words, data);
  const moved = forceOverDisplacement(data, texts);
  const pictures = [
    png('force-time.png', marked(await draw(forceOverTime(data, texts))), forceAlt(words, data)),
  ];
  if (moved !== undefined)
    pictures.push(
      png('force-displacement.png', marked(await draw(moved)), forceAlt(words, data, 'displacement')),
    );
  return pictures;
}

async function drawn(words: Words, wish: PictureWish): Promise<readonly ReplyFile[]> {
  switch (wish.kind) {
    case 'groups': {
      const groups = wish.data.groups.map((group) => ({ ...group, name: words.say(group.name) }));
      return [await groupPicture(words, { name: words.say({ say: 'ours-picture' }), groups })];
    }
    case 'recording':
      return recordingPictures(words, wish.data.name, wish.data.recording);
    case 'bond':
      return [await bondPicture(words, { name: words.say({ say: 'ours-picture' }), ...wish.data })];
    default:
      return [];
  }
}

export function wishesOf({ outcome }: Turn): readonly PictureWish[] {
  if (outcome.kind === 'record') return outcome.pictures;
  return outcome.kind === 'advice' ? (outcome.advice.pictures ?? []) : [];
}

/** Adds the pictures to a reply. What cannot be drawn is left out: it must never cost the answer. */
export async function pictured(
  words: Words,
  rendered: Rendered | Silence,
  wishes: readonly PictureWish[],
): Promise<Rendered | Silence> {
  if (!('reply' in rendered) || wishes.length === 0) return rendered;
  const files: ReplyFile[] = [];
  for (const wish of wishes) {
    try {
      files.push(...(await drawn(words, wish)));
    } catch (error) {
      const { log } = await import('./ops/log.ts');
      log.error({ err: error }, 'a picture could not be drawn');
    }
  }
  const { reply } = rendered;
  return { ...rendered, reply: { ...reply, files: [...reply.files, ...files] } };
}
