/** The link with which a club takes the bot in: no token, and no right that it does not use. */
import { OAuth2Scopes, PermissionFlagsBits, PermissionsBitField } from 'discord.js';

/** What each right is for; there is no other. */
export const rights = {
  /** To be mentioned in a channel at all. */
  ViewChannel: PermissionFlagsBits.ViewChannel,
  /** To answer mentions; commands are answered without it. */
  SendMessages: PermissionFlagsBits.SendMessages,
  SendMessagesInThreads: PermissionFlagsBits.SendMessagesInThreads,
  /** Plots of tests, lists of anchors. */
  AttachFiles: PermissionFlagsBits.AttachFiles,
  /** The platform lets nobody reply to a message without it. */
  ReadMessageHistory: PermissionFlagsBits.ReadMessageHistory,
} as const;

export function inviteLink(application: string): string {
  const { bitfield } = new PermissionsBitField(Object.values(rights));
  const query = new URLSearchParams({
    client_id: application,
    scope: `${OAuth2Scopes.Bot} ${OAuth2Scopes.ApplicationsCommands}`,
    permissions: String(bitfield),
  });
  return `https://discord.com/oauth2/authorize?${query}`;
}
