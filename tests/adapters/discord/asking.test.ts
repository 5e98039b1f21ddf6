import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { Stage } from './support/stage.ts';

let stage: Stage;
beforeAll(async () => {
  stage = await Stage.set();
});
afterEach(() => stage.check());
afterAll(() => stage.strike());

const whole = 'which bolt for an overhanging limestone sea cliff in the Mediterranean?';

describe('asking', () => {
  it('a command is answered for all to see, with cautions and deferral in the first message', async () => {
    const member = stage.member();
    const answer = await stage.answer(member.runs('material', whole));
    expect(answer.private).toBe(false);
    expect(answer.content).toMatch(/^\*\*.+\*\*/);
    expect(answer.content).toContain('Take care');
    expect(answer.content).toContain('not a certificate');
    expect(answer.content.length).toBeLessThanOrEqual(2000);
  });
});
