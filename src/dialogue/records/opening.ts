/** Words with which a member opens an entry of the register. */
import type { Tools } from './context.ts';
import { afterLeading } from './places-told.ts';

const command = /^\s*\/register(?:@\w+)?(?=\s|$)/i;

export const isRegisterCommand = (text: string): boolean => command.test(text);

/** What follows "register …" or "/register …"; undefined where a message does not begin so. */
export function opensAnchor(tools: Tools, text: string): string | undefined {
  if (command.test(text)) return text.replace(command, ' ').trim();
  return afterLeading(text, tools.ears.expressions.register.begin);
}
