/** Advice without a number: cautions alone, permission, and an emergency. */
import type { Draft } from './draft.ts';
import type { Worksheet } from './worksheet.ts';

const tell = (verdict: string, points: readonly string[], stance: Draft['stance'] = 'tell'): Draft => ({
  stance,
  verdict: { say: verdict },
  points: points.map((say) => ({ say })),
  recommend: {},
  reject: [],
});

export async function cautionsOnly(sheet: Worksheet): Promise<Draft> {
  sheet.cite('practice');
  return tell('cautions-verdict', []);
}

export async function permission(sheet: Worksheet): Promise<Draft> {
  sheet.cite('practice');
  return tell('permission-verdict', ['permission-owner', 'permission-nature', 'permission-club'], 'stop');
}

/** Somebody hangs from what failed: no questionnaire, help first. */
export async function emergency(sheet: Worksheet): Promise<Draft> {
  sheet.cite('practice');
  return tell(
    'emergency-verdict',
    ['emergency-call', 'emergency-back-up', 'emergency-do-not-load', 'emergency-after'],
    'stop',
  );
}
