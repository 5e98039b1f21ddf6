import { DiscordAPIError } from 'discord.js';
import { pino } from 'pino';
import { expect, it } from 'vitest';
import { told, withoutSecrets } from '../../../src/adapters/discord/secrets.ts';

// Both invented, in the shape that the platform uses.
const bot = 'MTE3MDAwMDAwMDAwMDAwMDAw.GaBcDe.abcdefghijklmnopqrstuvwxyz0123456789AB';
const interaction = 'aW50ZXJhY3Rpb246MTE3MDAwMDAwMDAwMDAwMDAwOkFCQ0RFRkdISUpLTE1OT1BRUlNUVVZXWFla';

it.each([
  `Bot ${bot}`,
  `https://discord.com/api/v10/interactions/117/${interaction}/callback?with_response=false`,
  `https://discord.com/api/v10/webhooks/117/${interaction}/messages/%40original`,
  `{"token":"${bot}"}`,
])('takes the secret out of %s', (text) => {
  const clean = withoutSecrets(text);
  expect(clean).not.toContain(bot);
  expect(clean).not.toContain(interaction);
  expect(clean).toContain('[token]');
});

it('leaves the signature of an attachment out', () => {
  const link = 'https://cdn.discordapp.com/attachments/1/2/pull.csv?ex=66aa&is=66ab&hm=0123456789abcdef';
  expect(withoutSecrets(`fetch ${link} failed`)).toBe(
    'fetch https://cdn.discordapp.com/attachments/1/2/pull.csv failed',
  );
});

it('leaves everything else as it is', () => {
  const text =
    'answer t68b8aqs, rules d20b87c507c0, discord:1575103551305154619, channels/1575103551305154619/messages';
  expect(withoutSecrets(text)).toBe(text);
});

it("an error of the client is told without its address, which holds the interaction's token", () => {
  const url = `https://discord.com/api/v10/interactions/117/${interaction}/callback`;
  const error = new DiscordAPIError(
    { code: 10062, message: 'Unknown interaction' },
    10062,
    404,
    'POST',
    url,
    { files: undefined, body: undefined },
  );
  let written = '';
  const log = pino(
    {},
    {
      write: (text: string) => {
        written += text;
      },
    },
  );
  log.error({ err: told(error) }, 'not answered');
  expect(written).toContain('10062');
  expect(written).not.toContain(interaction);
});
