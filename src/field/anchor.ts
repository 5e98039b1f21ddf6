/** Anchors of the register: where one is, which is there already, and what was seen on it. */
import type { Facts } from '../contracts/facts.ts';
import type { ClubRecord, RecordBody } from '../contracts/record.ts';
import { plain } from '../units/plain.ts';
import { isFuture } from './days.ts';
import { factsOfBody } from './test-record.ts';

/** Small letters without accents: "Gannet Slab" and "gannet slab" are one crag. */
export const foldedName = (text: string): string =>
  plain(text)
    .replaceAll(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();

/** Two anchors cannot be at one place; where no position was told, nobody knows. */
export function placeOf({ texts }: RecordBody): string | null {
  const { crag, sector = '', route = '', position } = texts;
  if (crag === undefined || position === undefined) return null;
  return [crag, sector, route, position].map(foldedName).join('|');
}

export const atSamePlace = (
  anchors: readonly ClubRecord[],
  body: RecordBody,
  but?: string,
): ClubRecord | undefined => {
  const place = placeOf(body);
  return place === null ? undefined : anchors.find((one) => one.id !== but && placeOf(one.body) === place);
};

/** As the club has it: what the register says of this anchor. */
export const factsOfAnchor = (body: RecordBody): Facts =>
  Object.fromEntries(
    Object.entries(factsOfBody(body)).map(([id, { value }]) => [id, { value, from: 'club' as const }]),
  );

/** Looks at one anchor, the oldest first. */
export const looksAt = (inspections: readonly ClubRecord[], id: string): readonly ClubRecord[] =>
  inspections
    .filter(({ body }) => body.texts.anchor === id)
    .toSorted((a, b) => dayOf(a).localeCompare(dayOf(b)));

const dayOf = ({ body, at }: ClubRecord): string => body.texts.day ?? at.slice(0, 10);

const yearMonth = /^(\d{4})(?:-(0[1-9]|1[0-2]))?$/;

/** Of old anchors often only the year is known: "1998", "1998-06". */
export function isSpan(text: string, now: string): boolean {
  const [, year = '', month = '01'] = yearMonth.exec(text) ?? [];
  return Number(year) >= 1950 && !isFuture(`${year}-${month}-01`, now);
}

/** Whole and broken years since; of a bare year since its first day, which makes the anchor no younger. */
export function yearsSince(day: string, now: string): number {
  const [year = '1950', month = '01', date = '01'] = day.split('-');
  const ms = Date.parse(now) - Date.parse(`${year}-${month}-${date}T00:00:00Z`);
  return Math.max(0, ms / (365.25 * 24 * 3600 * 1000));
}
