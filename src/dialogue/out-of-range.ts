/** A value that no formula takes, said with the range that it does. */
import type { OutOfRange } from '../advice/index.ts';
import type { Phrase } from '../contracts/phrase.ts';

export function outOfRange(error: OutOfRange): Phrase {
  const { spec, value } = error;
  const unit = spec.unit || '1';
  return {
    say: 'out-of-range',
    with: {
      what: { of: 'quantity', id: spec.words },
      value: { value, unit },
      least: { value: spec.min, unit, exact: true },
      most: { value: spec.max, unit, exact: true },
    },
  };
}
