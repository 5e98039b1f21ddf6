import { defineFormula } from '../formula.ts';
import { force, input } from '../quantities.ts';
import { gravity } from './rope.ts';

const load = { ...force, symbol: 'W', words: 'load on the line' };
const span = input('L', 'span', 'm', 1, 2000);
const sag = input('s', 'sag', 'm', 0.01, 500);
const flat = {
  ...input('s/L', 'sag over span', '', 0.001, 0.49),
  of: (i: { sag: number; span: number }) => i.sag / i.span,
};

/**
 * Horizontal pull of a light line with a load at x: H = W·x·(L − x)/(L·s); kN, m. Mid-span: H = W·L/(4·s).
 * Static and without stretch; a bounce or a leash fall adds 70 to 90 %.
 * Source: statics. Worked: 0.8 kN, 20 m, x 10, sag 1 → 4.000 kN.
 */
export const lineHorizontal = defineFormula({
  id: 'line-horizontal',
  title: 'Horizontal pull of a tensioned line',
  symbols: 'H = W·x·(L−x)/(L·s)',
  source: 'practice',
  clause: 'statics',
  inputs: { load, span, position: input('x', 'distance of the load from one end', 'm', 0, 2000), sag },
  derived: [
    flat,
    { ...input('x/L', 'place of the load on the span', '', 0, 1), of: (i) => i.position / i.span },
  ],
  unit: 'kN',
  kind: 'plain',
  compute: (i) => (i.load * i.position * (i.span - i.position)) / (i.span * i.sag),
});

/**
 * Tension of a light line with a load at mid-span: T = W/(2·sin(atan(2s/L))); kN, m.
 * Source: statics. Worked: 0.8 kN, 20 m, sag 1 → 4.020 kN.
 */
export const lineTension = defineFormula({
  id: 'line-tension',
  title: 'Tension of a line loaded at mid-span',
  symbols: 'T = W/(2·sin(atan(2s/L)))',
  source: 'practice',
  clause: 'statics',
  inputs: { load, span, sag },
  derived: [flat],
  unit: 'kN',
  kind: 'plain',
  compute: (i) => i.load / (2 * Math.sin(Math.atan((2 * i.sag) / i.span))),
});

const lineMass = input('w', 'mass of the line per metre', 'g/m', 5, 5000);
const weightPerMetre = (grams: number) => (grams * gravity) / 1e6;

/**
 * Horizontal pull of a flat line under its own weight, parabola: H = w·L²/(8·s); g/m, m; kN.
 * Source: statics. Worked: 60 g/m, 100 m, sag 4 → 0.1839 kN.
 */
export const lineOwnWeight = defineFormula({
  id: 'line-own-weight',
  title: 'Horizontal pull of a line by its own weight',
  symbols: 'H = w·L²/(8·s)',
  source: 'practice',
  clause: 'statics, parabola',
  inputs: { lineMass, span, sag },
  derived: [flat],
  unit: 'kN',
  kind: 'plain',
  compute: (i) => (weightPerMetre(i.lineMass) * i.span ** 2) / (8 * i.sag),
});

/** Catenary parameter a with s = a·(cosh(L/2a) − 1), by bisection on u = L/2a; sag over span rises with u. */
function catenaryParameter(spanM: number, sagM: number): number {
  const wanted = (2 * sagM) / spanM;
  let low = 1e-6;
  let high = 20;
  for (let step = 0; step < 200; step++) {
    const u = (low + high) / 2;
    // cosh(u) − 1 written so that it keeps its digits for a flat line
    if ((2 * Math.sinh(u / 2) ** 2) / u < wanted) low = u;
    else high = u;
  }
  return spanM / (low + high);
}

/**
 * Horizontal pull of a heavy line, exact: H = w·a with s = a·(cosh(L/2a) − 1); g/m, m; kN.
 * Source: catenary (handbook). Worked: 100 m, sag 10, 1000 g/m → 1.242 kN.
 */
export const catenaryHorizontal = defineFormula({
  id: 'catenary-horizontal',
  title: 'Horizontal pull of a heavy line (catenary)',
  symbols: 'H = w·a, s = a·(cosh(L/2a) − 1)',
  source: 'practice',
  clause: 'catenary',
  inputs: { lineMass, span, sag },
  derived: [flat],
  unit: 'kN',
  kind: 'plain',
  compute: (i) => weightPerMetre(i.lineMass) * catenaryParameter(i.span, i.sag),
});

/**
 * Tension of a heavy line at its ends, exact: T = w·(a + s); g/m, m; kN.
 * Source: catenary (handbook). Worked: 100 m, sag 10, 1000 g/m → 1.340 kN.
 */
export const catenaryTension = defineFormula({
  id: 'catenary-tension',
  title: 'Tension of a heavy line at its ends (catenary)',
  symbols: 'T = w·(a + s)',
  source: 'practice',
  clause: 'catenary',
  inputs: { lineMass, span, sag },
  derived: [flat],
  unit: 'kN',
  kind: 'plain',
  compute: (i) => weightPerMetre(i.lineMass) * (catenaryParameter(i.span, i.sag) + i.sag),
});
