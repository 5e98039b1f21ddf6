import { Locale } from 'discord.js';

/** Discord knows Spanish and English twice and no European Portuguese. */
const locales: Readonly<Record<string, readonly Locale[]>> = {
  en: [Locale.EnglishGB, Locale.EnglishUS],
  es: [Locale.SpanishES, Locale.SpanishLATAM],
  pt: [Locale.PortugueseBR],
  fr: [Locale.French],
  it: [Locale.Italian],
  de: [Locale.German],
};

export const localesOf = (language: string): readonly Locale[] => locales[language] ?? [];
