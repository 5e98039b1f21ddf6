/**
 * What must never stand in a log: bot tokens, and the token of an interaction, with which anybody may answer in the
 * bot's name for 15 minutes. By value and not by path, because errors of the client carry them inside of addresses.
 */
export interface SecretPattern {
  readonly find: RegExp;
  readonly replace: string;
}

export const discordSecrets: readonly SecretPattern[] = [
  // Three parts joined by points: id, time, signature.
  { find: /\b[\w-]{3,40}\.[\w-]{4,40}\.[\w-]{20,}/g, replace: '[token]' },
  { find: /((?:interactions|webhooks)\/\d+\/)[^/\s"'?]+/g, replace: '$1[token]' },
  // Links to attachments are signed: whoever has one reads the file.
  { find: /(\/attachments\/[^\s"'?]+)\?[^\s"']+/g, replace: '$1' },
];

export const withoutSecrets = (text: string): string =>
  discordSecrets.reduce((clean, { find, replace }) => clean.replace(find, replace), text);

/** What a log may hold of an error. */
export function told(error: unknown): Readonly<Record<string, unknown>> {
  if (!(error instanceof Error)) return { error: withoutSecrets(String(error)) };
  const { name, message, stack = '' } = error;
  return {
    name,
    message: withoutSecrets(message),
    ...('code' in error ? { code: error.code } : {}),
    ...('status' in error ? { status: error.status } : {}),
    at: withoutSecrets(stack.split('\n').slice(1, 4).join('\n')),
  };
}
