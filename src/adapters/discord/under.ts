import { ComponentType, type Message } from 'discord.js';
import { readCarried } from './controls.ts';

/** The choices that stand under a message of ours. */
export function choicesUnder(message: Message): readonly string[] {
  return message.components
    .flatMap((row) => (row.type === ComponentType.ActionRow ? row.components : []))
    .flatMap(({ customId }) => {
      const carried = readCarried(customId ?? '');
      return carried === 'old' ? [] : [carried.choice];
    });
}
