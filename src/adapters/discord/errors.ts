/** The platform's error codes that are no fault of the program, and what each means for it. */
import { RESTJSONErrorCodes as Code, DiscordAPIError, HTTPError } from 'discord.js';

export function codeOf(error: unknown): number | null {
  return error instanceof DiscordAPIError && typeof error.code === 'number' ? error.code : null;
}

/** The platform no longer takes an answer to this interaction: too late, token over, or never acknowledged. */
const late: readonly number[] = [
  Code.UnknownInteraction,
  Code.UnknownWebhook,
  Code.InvalidWebhookToken,
  Code.UnknownMessage,
];
/** Nothing can be posted there any more, and asking again would only be held against us. */
const closed: readonly number[] = [
  Code.MissingAccess,
  Code.MissingPermissions,
  Code.UnknownChannel,
  Code.UnknownGuild,
  Code.CannotSendMessagesToThisUser,
];

const oneOf = (codes: readonly number[]) => (error: unknown) => codes.includes(codeOf(error) ?? -1);

export const isLate = oneOf(late);
export const isClosed = oneOf(closed);
export const isTaken = oneOf([Code.InteractionHasAlreadyBeenAcknowledged]);
export const isUnknownInteraction = oneOf([Code.UnknownInteraction]);
export const isArchived = oneOf([50083]);
/** Replying to a message needs the right to read the history. */
export const isNoHistory = oneOf([160002]);

/** It may have been done or not: the line broke, the server failed, or nobody answered. */
export const isUnclear = (error: unknown): boolean =>
  error instanceof HTTPError || !(error instanceof DiscordAPIError);
