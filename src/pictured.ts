/** Draws the pictures that an answer wishes for, with the words of the member's language. Without one the words still say it all. */
import type { ReplyFile } from './contracts/message.ts';
import type { PictureWish } from './contracts/picture.ts';
import type { GroupData } from './contracts/pictures.ts';
import type { Rendered, Silence } from './contracts/reply.ts';
import { groupAlt, groupTexts } from './render/pictures.ts';
import type { Words } from './render/words.ts';

async function groupPicture(words: Words, data: GroupData): Promise<ReplyFile> {
  const { draw, groupComparison } = await import('./pictures/index.ts');
  const png = await draw(groupComparison(data, groupTexts(words, data)));
  return { name: 'pulls.png', mime: 'image/png', base64: png.toString('base64'), alt: groupAlt(words, data) };
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
    if (wish.kind !== 'groups') continue;
    const groups = wish.data.groups.map((group) => ({ ...group, name: words.say(group.name) }));
    try {
      files.push(await groupPicture(words, { name: words.say({ say: 'ours-picture' }), groups }));
    } catch (error) {
      const { log } = await import('./ops/log.ts');
      log.error({ err: error }, 'a picture could not be drawn');
    }
  }
  const { reply } = rendered;
  return { ...rendered, reply: { ...reply, files: [...reply.files, ...files] } };
}
