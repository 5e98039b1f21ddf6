import { defineFormula } from '../formula.ts';
import { coneDepth, edge, edgeAcross, input, spacing } from '../quantities.ts';

/** Full cone: 1.5·h_ef to an edge, 3·h_ef between anchors (EN 1992-4:2018, 7.2.1.4). */
export const criticalEdge = (embedmentMm: number) => 1.5 * embedmentMm;

/**
 * Disturbance of the stresses by an edge: ψ_s,N = 0.7 + 0.3·c/c_cr,N ≤ 1, c_cr,N = 1.5·h_ef; mm.
 * Source: EN 1992-4:2018 Eq. (7.4). Worked: h 70, c 60 → 0.8714.
 */
export const coneEdgeFactor = defineFormula({
  id: 'cone-edge-factor',
  title: 'Edge factor of the cone',
  symbols: 'ψ_s,N = 0.7 + 0.3·c/(1.5·h_ef) ≤ 1',
  source: 'en-1992-4-2018',
  clause: 'Eq. (7.4)',
  inputs: { embedment: coneDepth, edge },
  unit: '',
  kind: 'plain',
  compute: (i) => Math.min(1, 0.7 + (0.3 * i.edge) / criticalEdge(i.embedment)),
});

/**
 * Share of the cone's ground area that is there: A_c,N/A0_c,N, A0 = 9·h_ef². One anchor (spacing 0) or a
 * pair s apart; one edge c beside the line of the pair, a second edge c2 across it; mm. A pair counts up to 2.
 * An edge that is not there is any distance ≥ 1.5·h_ef.
 * Source: EN 1992-4:2018 Eq. (7.3) and Fig. 7.4. Worked: h 70, c 60 → 0.7857; corner h 80, 60/100 → 0.6875.
 */
export const coneAreaRatio = defineFormula({
  id: 'cone-area-ratio',
  title: 'Share of the cone area',
  symbols: 'A/A0 = (min(c,1.5h)+1.5h)·(min(c2,1.5h)+min(s,3h)+1.5h)/(9h²)',
  source: 'en-1992-4-2018',
  clause: 'Eq. (7.3)',
  inputs: { embedment: coneDepth, edge, edgeAcross, spacing },
  unit: '',
  kind: 'plain',
  compute: (i) => {
    const critical = criticalEdge(i.embedment);
    const beside = Math.min(i.edge, critical) + critical;
    const across = Math.min(i.edgeAcross, critical) + Math.min(i.spacing, 2 * critical) + critical;
    return (beside * across) / (4 * critical * critical);
  },
});

/**
 * Load beside the centre of a pair: ψ_ec,N = 1/(1 + 2·e_N/s_cr,N), s_cr,N = 3·h_ef; mm.
 * Source: EN 1992-4:2018 Eq. (7.6). Worked: e 20, h 100 → 0.8824.
 */
export const coneEccentricityFactor = defineFormula({
  id: 'cone-eccentricity-factor',
  title: 'Eccentricity factor of the cone',
  symbols: 'ψ_ec,N = 1/(1 + 2·e_N/(3·h_ef))',
  source: 'en-1992-4-2018',
  clause: 'Eq. (7.6)',
  inputs: { embedment: coneDepth, eccentricity: input('e_N', 'eccentricity of the load', 'mm', 0, 1000) },
  unit: '',
  kind: 'plain',
  compute: (i) => 1 / (1 + (2 * i.eccentricity) / (3 * i.embedment)),
});

/**
 * Depth that counts on a fin or pillar with three or more near edges: h'_ef = max(c_max/1.5, s_max/3),
 * never more than h_ef; c_max largest of the near edge distances, s_max largest spacing; mm.
 * Source: EN 1992-4:2018, 7.2.1.4 (8). Worked: c_max 100, s 120, h 100 → 66.67 mm.
 */
export const narrowMemberDepth = defineFormula({
  id: 'narrow-member-depth',
  title: 'Depth that counts between three or more edges',
  symbols: "h'_ef = max(c_max/1.5, s_max/3) ≤ h_ef",
  source: 'en-1992-4-2018',
  clause: '7.2.1.4 (8)',
  inputs: {
    embedment: coneDepth,
    edge: { ...edge, symbol: 'c_max' },
    spacing: { ...spacing, symbol: 's_max' },
  },
  unit: 'mm',
  kind: 'plain',
  compute: (i) => Math.min(i.embedment, Math.max(i.edge / 1.5, i.spacing / 3)),
});

/**
 * Effect of a thin member on splitting: ψ_h,sp = (h/h_min)^⅔ ≤ max(1, ((h_ef + 1.5·c1)/h_min)^⅔) ≤ 2; mm.
 * Source: EN 1992-4:2018 Eq. (7.24) (from memory). Worked: h 300, h_min 120, h_ef 100, c1 100 → 1.631.
 */
export const splittingThicknessFactor = defineFormula({
  id: 'splitting-thickness-factor',
  title: 'Thickness factor for splitting',
  symbols: 'ψ_h,sp = (h/h_min)^⅔ ≤ max(1, ((h_ef+1.5·c1)/h_min)^⅔) ≤ 2',
  source: 'en-1992-4-2018',
  clause: 'Eq. (7.24)',
  inputs: {
    thickness: input('h', 'thickness of the member', 'mm', 40, 10_000),
    minimumThickness: input('h_min', 'minimum thickness for the product', 'mm', 40, 2000),
    embedment: coneDepth,
    edge,
  },
  derived: [
    {
      ...input('h/h_min', 'ratio of thickness to minimum thickness', '', 1, 250),
      of: (i) => i.thickness / i.minimumThickness,
    },
  ],
  unit: '',
  kind: 'plain',
  compute: (i) => {
    const limit = Math.max(1, ((i.embedment + 1.5 * i.edge) / i.minimumThickness) ** (2 / 3));
    return Math.min((i.thickness / i.minimumThickness) ** (2 / 3), limit, 2);
  },
});
