/** What whoever looks after the bot reads in the first five minutes. */

export const noTokenGuide = `chough serve answers in Telegram groups and on Discord servers. No token is set, so there is nothing to serve.

Telegram
  1. In Telegram write to @BotFather: /newbot, then a name, then a username that ends in "bot".
  2. It answers with a token. Keep it secret; whoever has it is your bot.
  3. Leave "Group Privacy" on (/setprivacy, Enable): the bot then sees only commands, mentions and replies to it.
  4. For one-line answers in any chat: /setinline. For nothing else.
  5. TELEGRAM_TOKEN=... npm start -- serve

Discord
  1. On the developer page of Discord make an application, then open "Bot".
  2. "Reset Token" shows the token once. Keep it secret.
  3. Leave all three privileged intents off (presence, server members, message content): they are not needed.
  4. DISCORD_TOKEN=... npm start -- serve
  5. Open the invite link that is then printed; it asks for no right that is not used.

Both may be set at once. Without any token: "npm start" talks in this terminal, "npm run demo" shows a club's talk.
Other settings: CHOUGH_DB (file), CHOUGH_LOCALE, CHOUGH_HTTP_PORT (health, metrics, webhook), LOG_LEVEL.
`;

export const telegramReady = (username: string): string =>
  `Telegram: @${username} is listening. Add it to your group: https://t.me/${username}?startgroup=club\n`;

export const discordReady = (name: string, invite: string): string =>
  `Discord: ${name} is listening. Invite it with the least rights: ${invite}\n`;
