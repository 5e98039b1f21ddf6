/** A chat as a member sees it: who said what, bold between asterisks, buttons in brackets, a row a line. */
import type { Message } from 'grammy/types';
import type { Room } from './world.ts';

function shown(message: Message): string {
  const words = message.text ?? message.caption ?? '';
  let text = words;
  for (const { type, offset, length } of [...(message.entities ?? [])].reverse())
    if (type === 'bold')
      text = `${text.slice(0, offset)}*${text.slice(offset, offset + length)}*${text.slice(offset + length)}`;
  return text;
}

export function screen(room: Room): string {
  return [...room.messages.values()]
    .map((message) => {
      const media = message.photo
        ? '(picture) '
        : message.document
          ? `(file ${message.document.file_name}) `
          : '';
      const rows = message.reply_markup?.inline_keyboard ?? [];
      return [
        `── ${message.from?.first_name}`,
        `${media}${shown(message)}`,
        ...rows.map((row) => row.map(({ text }) => `[ ${text} ]`).join(' ')),
      ].join('\n');
    })
    .join('\n\n')
    .concat('\n');
}
