/** Distances to edges, cracks, old holes and the next anchor. */
import type { Draft } from './draft.ts';
import { edgeToKeep, spacingToKeep } from './edges.ts';
import type { Worksheet } from './worksheet.ts';

export async function spacing(sheet: Worksheet): Promise<Draft> {
  sheet.row('edge-rules', 'edge');
  sheet.row('edge-rules', 'old-hole');
  const depth = sheet.number('embedment_mm') ?? sheet.number('length_mm');
  if (depth === undefined)
    return {
      stance: 'tell',
      verdict: { say: 'spacing-rule' },
      points: [{ say: 'spacing-old-holes' }],
      recommend: {},
      reject: [],
    };
  const placed = {
    depth,
    diameter: sheet.number('diameter_mm'),
    // Which kind is not always told; an anchor that spreads the rock is the worse case.
    expansion: sheet.situation.anchor_family !== 'glue-in',
  };
  const keep = { edge: edgeToKeep(sheet, placed), spacing: spacingToKeep(sheet, placed) };
  const edge = sheet.number('edge_distance_mm');
  const apart = sheet.number('spacing_mm');
  const checks = [
    edge === undefined ||
      sheet.check({
        id: 'edge',
        name: { say: 'check-edge' },
        value: edge,
        limit: keep.edge,
        unit: 'mm',
        kind: 'plain',
      }),
    apart === undefined ||
      sheet.check({
        id: 'spacing',
        name: { say: 'check-spacing' },
        value: apart,
        limit: keep.spacing,
        unit: 'mm',
        kind: 'plain',
      }),
  ];
  const far = checks.every(Boolean);
  return {
    stance: far ? 'tell' : 'stop',
    verdict: {
      say: far ? 'spacing-verdict' : 'spacing-too-near',
      with: {
        edge: { value: keep.edge, unit: 'mm', exact: true },
        spacing: { value: keep.spacing, unit: 'mm', exact: true },
        depth: { value: depth, unit: 'mm', exact: true },
      },
    },
    points: [{ say: 'spacing-old-holes' }, { say: 'spacing-hollow' }],
    recommend: { edge_mm: keep.edge, spacing_mm: keep.spacing },
    reject: [],
  };
}
