/** The languages that are there, each loaded when somebody first speaks it: texts, names and vocabulary. */
import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { z } from 'zod';
import type { Units } from './contracts/session.ts';
import { type Expressions, expressionsSchema } from './dialogue/expressions.ts';
import type { Ears, Understand } from './dialogue/hear.ts';
import { remembering } from './dialogue/remembering.ts';
import { loadLeaning, loadVocabulary, makeUnderstand } from './dialogue/understand/index.ts';
import { type TableWords, tableWordsSchema } from './field/table/words.ts';
import { glossaryOf } from './glossary.ts';
import { makeWords, type Words } from './render/words.ts';
import type { RuleSet } from './rules/index.ts';
import { type Translation, translationSchema } from './translation.ts';

const languagesSchema = z.strictObject({
  about: z.string(),
  languages: z.array(
    z.strictObject({ code: z.string(), name: z.string(), names: z.array(z.string()).min(1) }),
  ),
});

async function readTranslation(file: string): Promise<Translation> {
  const parsed = translationSchema.safeParse(JSON.parse(await readFile(file, 'utf8')));
  if (parsed.success) return parsed.data;
  const lines = parsed.error.issues.slice(0, 10).map(({ path, message }) => `${path.join('.')}: ${message}`);
  throw new Error(`${file} cannot be used:\n${lines.join('\n')}`);
}

/** Remembers what a loader gave, so that each language is loaded once, even when two members ask at the same time. */
function once<T>(load: (code: string) => Promise<T>): (code: string) => Promise<T> {
  const known = new Map<string, Promise<T>>();
  return (code) => {
    const found = known.get(code) ?? load(code);
    known.set(code, found);
    return found;
  };
}

export class Languages implements Ears {
  readonly words: (code: string, units?: Units) => Promise<Words>;
  readonly understand: (code: string) => Promise<Understand>;

  private constructor(
    readonly codes: readonly string[],
    readonly names: ReadonlyMap<string, string>,
    readonly expressions: Expressions,
    readonly tables: TableWords,
    folder: string,
    rules: RuleSet,
  ) {
    const metric = once(async (code) => {
      const texts = await readFile(join(folder, 'words', `${code}.ftl`), 'utf8');
      const translation =
        code === 'en' ? undefined : await readTranslation(join(folder, 'words', `${code}.json`));
      return makeWords(texts, glossaryOf(rules, translation));
    });
    const imperial = once(async (code) => (await metric(code)).first('imperial'));
    this.words = (code, units = 'metric') => (units === 'imperial' ? imperial(code) : metric(code));
    this.understand = once(async (code) => {
      const [vocabulary, leaning] = await Promise.all([
        loadVocabulary(join(folder, 'vocabulary', `${code}.json`)),
        loadLeaning(join(folder, 'leanings', `${code}.json`)),
      ]);
      return remembering(makeUnderstand([vocabulary], rules, leaning));
    });
  }

  static async find(folder: string, rules: RuleSet): Promise<Languages> {
    const file = join(folder, 'words', 'languages.json');
    const { languages } = languagesSchema.parse(JSON.parse(await readFile(file, 'utf8')));
    const there = languages.filter(({ code }) => {
      const needed = [
        join('words', `${code}.ftl`),
        join('vocabulary', `${code}.json`),
        join('leanings', `${code}.json`),
      ];
      if (code !== 'en') needed.push(join('words', `${code}.json`));
      return needed.every((name) => existsSync(join(folder, name)));
    });
    const names = there.flatMap(({ code, names }) => [code, ...names].map((name) => [name, code] as const));
    return new Languages(
      there.map(({ code }) => code),
      new Map(names),
      expressionsSchema.parse(JSON.parse(await readFile(join(folder, 'words', 'talk.json'), 'utf8'))),
      tableWordsSchema.parse(JSON.parse(await readFile(join(folder, 'words', 'tables.json'), 'utf8'))),
      folder,
      rules,
    );
  }

  /** "pt-BR" → "pt"; English where the language is not spoken here. */
  ofLocale(locale: string | undefined): string {
    const code = (locale ?? '').toLowerCase().split(/[-_]/)[0] ?? '';
    return this.codes.includes(code) ? code : 'en';
  }
}
