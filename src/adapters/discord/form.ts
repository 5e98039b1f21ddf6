/** A form with one field, for an answer that cannot be tapped. */
import { type APIModalInteractionResponseCallbackData, ComponentType, TextInputStyle } from 'discord.js';
import { clip } from './markdown.ts';

export const answerField = 'answer';

export interface FormWords {
  readonly title: string;
  readonly label: string;
  /** The message under which the button stands: what it asks is said again. */
  readonly question: string;
}

export function form(
  customId: string,
  { title, label, question }: FormWords,
): APIModalInteractionResponseCallbackData {
  const lines = question
    .replace(/[\\*\u200b]/g, '')
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '');
  const asked = lines.find((line) => line.endsWith('?')) ?? lines[0];
  return {
    title: clip(title, 45),
    custom_id: customId,
    components: [
      {
        type: ComponentType.Label,
        label: clip(label, 45),
        ...(asked === undefined ? {} : { description: clip(asked, 100) }),
        component: {
          type: ComponentType.TextInput,
          custom_id: answerField,
          style: TextInputStyle.Short,
          max_length: 300,
          required: true,
        },
      },
    ],
  };
}
