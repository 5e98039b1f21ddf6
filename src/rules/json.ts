/** A slip in a JSON text, with its place counted from 1. */
export interface Slip {
  readonly line: number;
  readonly column: number;
  readonly wrong: string;
}

export const forbiddenKeys = ['__proto__', 'constructor', 'prototype'];

const blank = /[ \t\r\n]*/y;
const string = /"(?:[ !#-[\]-\u{10ffff}]|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4}))*"/uy;
const scalar = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?|true|false|null/y;
const deepest = 100;

class Slipped extends Error {
  constructor(
    readonly at: number,
    readonly wrong: string,
  ) {
    super(wrong);
  }
}

/**
 * The first slip in the text, or null. JSON.parse alone gives no place for half of its errors, and takes
 * a key that stands twice, or one that names a prototype, without a word.
 */
export function findSlip(text: string): Slip | null {
  let at = 0;
  const take = (pattern: RegExp): boolean => {
    pattern.lastIndex = at;
    if (!pattern.test(text)) return false;
    at = pattern.lastIndex;
    return true;
  };
  const next = () => {
    take(blank);
    return text[at];
  };
  const unexpected = (wanted: string) =>
    new Slipped(
      at,
      at >= text.length ? `the file ends where ${wanted} should stand` : `${wanted} should stand here`,
    );
  const expect = (mark: string, wanted: string) => {
    if (next() !== mark) throw unexpected(wanted);
    at += 1;
  };

  const list = (close: string, item: () => void, what: string) => {
    at += 1;
    if (next() === close) {
      at += 1;
      return;
    }
    for (;;) {
      item();
      const mark = next();
      if (mark !== ',' && mark !== close) throw unexpected(`a comma or "${close}" after ${what}`);
      at += 1;
      if (mark === close) return;
    }
  };
  const value = (depth: number): void => {
    if (depth > deepest) throw new Slipped(at, `nothing may be nested deeper than ${deepest}`);
    const mark = next();
    if (mark === '{') {
      const keys = new Set<string>();
      list('}', () => pair(keys, depth), 'the pair');
    } else if (mark === '[') list(']', () => value(depth + 1), 'the element');
    else if (!take(mark === '"' ? string : scalar)) throw unexpected('a value');
  };
  const pair = (keys: Set<string>, depth: number) => {
    next();
    const start = at;
    if (!take(string)) throw unexpected('a key in double quotes');
    const key: string = JSON.parse(text.slice(start, at));
    if (forbiddenKeys.includes(key)) throw new Slipped(start, `the key "${key}" is not allowed`);
    if (keys.has(key)) throw new Slipped(start, `the key "${key}" stands here a second time`);
    keys.add(key);
    expect(':', 'a colon');
    value(depth + 1);
  };

  try {
    value(0);
    if (next() !== undefined) throw new Slipped(at, 'nothing may follow the end of the data');
    return null;
  } catch (error) {
    if (!(error instanceof Slipped)) throw error;
    const before = text.slice(0, error.at).split('\n');
    return { line: before.length, column: (before.at(-1)?.length ?? 0) + 1, wrong: error.wrong };
  }
}
