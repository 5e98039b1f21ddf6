/** Choices as buttons or a menu. What a button carries is all that is needed to act on it: it works after a restart. */
import {
  type APIActionRowComponent,
  type APIButtonComponentWithCustomId,
  type APIComponentInMessageActionRow,
  type APIStringSelectComponent,
  ButtonStyle,
  ComponentType,
} from 'discord.js';
import type { Choice } from '../../contracts/message.ts';
import { clip, harmless } from './markdown.ts';

/** The version of what buttons carry: `<version>:<member id, base 36>:<choice id>`. */
const version = '1';
/** Not choices of the dialogue: the menu itself, and the button that opens a form to type into. */
export const menuId = 's';
export const typeId = 'm';

const mostButtons = 5;
const mostOptions = 25;

export type Row = APIActionRowComponent<APIComponentInMessageActionRow>;

export interface ControlWords {
  readonly typeIt: string;
  readonly pick: string;
}

export const carry = (user: string, choice: string): string =>
  `${version}:${BigInt(user).toString(36)}:${choice}`;

export type Carried = { readonly user: string; readonly choice: string } | 'old';

function number36(text: string): string {
  return [...text].reduce((sum, digit) => sum * 36n + BigInt(Number.parseInt(digit, 36)), 0n).toString();
}

export function readCarried(customId: string): Carried {
  const [, made, user, choice] = /^(\d+):([0-9a-z]{1,16}):(.+)$/.exec(customId) ?? [];
  if (made !== version || user === undefined || choice === undefined) return 'old';
  return { user: number36(user), choice };
}

/** "Why?" and "Back" stand under answers and never under a question: an answer is not written over. */
export const isUnderAnswer = (choice: string): boolean => choice === 'c:why' || choice === 'c:back';
/** A value to choose, or "don't know": what stands under a question. */
export const isValue = ({ id }: Choice): boolean => id.startsWith('f:');

function button(user: string, { id, label }: Choice, main: boolean): APIButtonComponentWithCustomId {
  return {
    type: ComponentType.Button,
    style: main ? ButtonStyle.Primary : ButtonStyle.Secondary,
    label: clip(harmless(label).trim(), 80) || id,
    custom_id: carry(user, id),
  };
}

function menu(user: string, choices: readonly Choice[], placeholder: string): APIStringSelectComponent {
  return {
    type: ComponentType.StringSelect,
    custom_id: carry(user, menuId),
    placeholder: clip(placeholder, 150),
    options: choices.map(({ id, label }) => ({
      label: clip(harmless(label).trim(), 100) || id,
      value: id,
    })),
  };
}

const rowOf = (components: APIComponentInMessageActionRow[]): Row => ({
  type: ComponentType.ActionRow,
  components,
});

/** Only "don't know" to tap: the answer is a number or a word, and has to be typed. */
const mustBeTyped = (values: readonly Choice[]): boolean =>
  values.length > 0 && values.every(({ id }) => id.endsWith(':?'));

export interface Controls {
  readonly rows: Row[];
  /** Not all choices found room: the text says that the rest can be typed. */
  readonly cut: boolean;
}

/** Up to five choices are buttons; more are a menu, beside the buttons of commands. The last choice is always kept. */
export function controls(user: string, all: readonly Choice[], words: ControlWords): Controls {
  const choices = all.filter(({ id }, at) => all.findIndex((one) => one.id === id) === at);
  if (choices.length === 0) return { rows: [], cut: false };
  const type = { id: typeId, label: words.typeIt };
  const values = choices.filter(isValue);
  if (mustBeTyped(values) && choices.length < mostButtons) {
    const buttons = [button(user, type, true), ...choices.map((choice) => button(user, choice, false))];
    return { rows: [rowOf(buttons)], cut: false };
  }
  if (choices.length <= mostButtons)
    return { rows: [rowOf(choices.map((choice) => button(user, choice, false)))], cut: false };
  const commands = choices.filter(({ id }) => id.startsWith('c:')).slice(0, mostButtons - 1);
  const listed = choices.filter((choice) => !commands.includes(choice));
  const cut = listed.length > mostOptions;
  const options = cut ? [...listed.slice(0, mostOptions - 1), ...listed.slice(-1)] : listed;
  const beside = [
    ...commands.map((choice) => button(user, choice, false)),
    ...(cut ? [button(user, type, false)] : []),
  ];
  return {
    rows: [rowOf([menu(user, options, words.pick)]), ...(beside.length > 0 ? [rowOf(beside)] : [])],
    cut,
  };
}
