/** Buttons: `1:<member in base 36>:<choice id>`. Nothing is remembered for them, so they live through a restart. */
import type { InlineKeyboardMarkup } from 'grammy/types';
import type { Choice } from '../../contracts/message.ts';
import { clean } from './html.ts';

const version = '1';
/** The platform's limit for the data of a button. */
const mostBytes = 64;

export const buttonData = (owner: number, choice: string): string =>
  `${version}:${owner.toString(36)}:${choice}`;

export type Press = { readonly owner: number; readonly choice: string } | 'unknown';

/** A button of a version that is no more, or data that somebody made up. */
export function readPress(data: string): Press {
  const match = /^1:([0-9a-z]{1,11}):([\x20-\x7e]{1,50})$/.exec(data);
  if (match === null) return 'unknown';
  return { owner: Number.parseInt(match[1] ?? '', 36), choice: match[2] ?? '' };
}

/** Three a row at most, fewer where labels are long; long lists in two columns, so that they stay on the screen. */
function columnsFor(labels: readonly string[]): number {
  if (labels.length > 5) return 2;
  const longest = Math.max(...labels.map(({ length }) => length));
  return Math.min(labels.length, longest <= 14 ? 3 : longest <= 26 ? 2 : 1);
}

export function keyboard(owner: number, choices: readonly Choice[]): InlineKeyboardMarkup | undefined {
  const buttons = choices
    .map(({ id, label }) => ({ text: clean(label), callback_data: buttonData(owner, id) }))
    // A choice that does not fit can still be typed.
    .filter(({ text, callback_data }) => text !== '' && Buffer.byteLength(callback_data) <= mostBytes);
  if (buttons.length === 0) return undefined;
  const columns = columnsFor(buttons.map(({ text }) => text));
  const rows = Array.from({ length: Math.ceil(buttons.length / columns) }, (_, row) =>
    buttons.slice(row * columns, (row + 1) * columns),
  );
  return { inline_keyboard: rows };
}
