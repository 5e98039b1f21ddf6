import { defineFormula } from '../formula.ts';
import { diameter, input } from '../quantities.ts';

/**
 * Preload from torque: F = T/(K·d). T N·m, d thread mm, K 0.15 greased, 0.20 dry, 0.30 rusty or sandy; kN.
 * It fades to about half within weeks; a torque reached proves expansion, not rock.
 * Source: common practice (nut factor). Worked: T 35, d 10, K 0.20 → 17.50 kN.
 */
export const preload = defineFormula({
  id: 'preload',
  title: 'Preload from tightening torque',
  symbols: 'F = T/(K·d)',
  source: 'practice',
  clause: 'nut factor',
  inputs: {
    torque: input('T', 'tightening torque', 'N·m', 1, 500),
    nutFactor: input('K', 'nut factor', '', 0.1, 0.4),
    diameter,
  },
  unit: 'kN',
  kind: 'plain',
  compute: (i) => i.torque / (i.nutFactor * i.diameter),
});

/**
 * Depth of a concrete screw that counts: h_ef = 0.85·(h_nom − 0.5·h_t − h_s) ≤ h_nom; h_nom depth of the
 * screw, h_t thread pitch, h_s length of the tip without full thread; mm.
 * Source: habit of the screw assessments (from memory). Worked: 65, 8, 8 → 45.05 mm.
 */
export const screwEmbedment = defineFormula({
  id: 'screw-embedment',
  title: 'Depth of a screw that counts',
  symbols: 'h_ef = 0.85·(h_nom − 0.5·h_t − h_s)',
  source: 'practice',
  clause: 'habit of the screw assessments',
  inputs: {
    nominalDepth: input('h_nom', 'depth of the screw in the hole', 'mm', 30, 300),
    pitch: input('h_t', 'pitch of the screw', 'mm', 2, 20),
    tip: input('h_s', 'length of the tip', 'mm', 0, 40),
  },
  derived: [
    {
      ...input('h_ef', 'depth that counts', 'mm', 20, 300),
      of: (i) => 0.85 * (i.nominalDepth - 0.5 * i.pitch - i.tip),
    },
  ],
  unit: 'mm',
  kind: 'plain',
  compute: (i) => 0.85 * (i.nominalDepth - 0.5 * i.pitch - i.tip),
});

/**
 * Shortest installed length of a mechanical anchor: 5 times the diameter of the drilled hole; mm.
 * Source: EN 959:2018, 4.2.6. Worked: hole 12 → 60 mm.
 */
export const mechanicalMinimumLength = defineFormula({
  id: 'mechanical-minimum-length',
  title: 'Shortest installed length of a mechanical anchor',
  symbols: 'l = 5·d0',
  source: 'en-959-2018',
  clause: '4.2.6',
  inputs: { holeDiameter: input('d0', 'diameter of the drilled hole', 'mm', 6, 40) },
  unit: 'mm',
  kind: 'plain',
  compute: (i) => 5 * i.holeDiameter,
});
