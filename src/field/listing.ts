/** Anchors of the register in one line each. */
import type { Phrase, PhraseArg } from '../contracts/phrase.ts';
import type { ClubRecord, RecordBody } from '../contracts/record.ts';

/** "Gannet Slab, Harbour, 3". */
export const whereOf = ({ texts }: RecordBody): string =>
  [texts.crag, texts.sector, texts.route, texts.position]
    .filter((text) => text !== undefined && text !== '')
    .join(', ');

/** "12 × 100 mm, 2024-05-02": the same in every language. */
function figuresOf({ facts, texts }: RecordBody): string {
  const [diameter, length] = [facts.diameter_mm, facts.length_mm ?? facts.embedment_mm];
  const sizes = [diameter, length].filter((one) => typeof one === 'number');
  const size = typeof diameter === 'number' ? `${sizes.join(' × ')} mm` : '';
  return [size, texts.day ?? ''].filter((text) => text !== '').join(', ');
}

export function anchorLine({ id, body }: ClubRecord): Phrase {
  const terms = ['anchor', 'metal'].flatMap((fact) => {
    const value = body.facts[fact];
    return typeof value === 'string' && value !== 'unknown' ? [{ fact, value }] : [];
  });
  const what: PhraseArg = terms.length === 0 ? { say: 'not-known' } : { together: terms };
  const figures = figuresOf(body);
  const told = { id, where: whereOf(body), what };
  return figures === ''
    ? { say: 'register-entry', with: told }
    : { say: 'register-entry-figures', with: { ...told, figures } };
}
