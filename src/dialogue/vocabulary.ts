import { readFile } from 'node:fs/promises';
import { basename } from 'node:path';
import type { z } from 'zod';
import { type Vocabulary, vocabularySchema } from './understand/index.ts';

/** A vocabulary that cannot be used: which file, where in it, what is wrong. */
export class VocabularyError extends Error {
  override readonly name = 'VocabularyError';
}

export async function loadVocabulary(file: string): Promise<Vocabulary> {
  const shown = `rules/vocabulary/${basename(file)}`;
  let content: unknown;
  try {
    content = JSON.parse(await readFile(file, 'utf8'));
  } catch (error) {
    throw new VocabularyError(`${shown}: ${(error as Error).message}`);
  }
  const parsed = vocabularySchema.safeParse(content);
  if (parsed.success) return parsed.data;
  const lines = parsed.error.issues
    .slice(0, 10)
    .map((issue: z.core.$ZodIssue) => `${issue.path.join('.')}: ${issue.message}`);
  throw new VocabularyError(`${shown} cannot be used:\n${lines.join('\n')}`);
}
