/** Stopped, killed, started again: nothing is lost, what may come twice says so, and what was private stays so. */
import { setTimeout as sleep } from 'node:timers/promises';
import { afterEach, describe, expect, it } from 'vitest';
import { Stage, until } from './support/stage.ts';

const whole = 'is 304 ok on an overhanging tropical sea cliff?';
let stage: Stage | null = null;
afterEach(async () => {
  stage?.check();
  await stage?.strike();
  stage = null;
});

describe('started again', () => {
  it('sends what was left over, marked as a repeat, in the language of the answer', async () => {
    stage = await Stage.set({ bot: { retryMs: [] } });
    const on = stage;
    on.server.faults.plan('POST', /messages$/, { kind: 'error', status: 502 }, 4);
    const member = on.member();
    member.types('¿vale el 304 en un acantilado tropical desplomado junto al mar?', { mention: true });
    await until('that it was given up', () => on.bot.counters.failures === 1);
    await on.bot.stop();
    expect(await on.outstanding(member)).toHaveLength(1);
    await on.startBot();
    const answer = await on.nth(member);
    expect(answer.content).toMatch(/^\(Enviado otra vez|^\(Reenviado|^\(.*interrupción/);
    expect(answer.content).toContain('304');
    await on.delivered(member);
  });

  it('writes over the "thinking" of a command that was under way, where it is not too late', async () => {
    let hold = true;
    stage = await Stage.set({
      bot: { deferAfterMs: 50, retryMs: [] },
      wrap: (handle) => async (message, posting) => {
        const rendered = await handle(message, posting);
        // Kept in the store; the program is killed before it is shown.
        if (hold) await new Promise(() => undefined);
        return rendered;
      },
    });
    const on = stage;
    const member = on.member();
    const one = member.runs('material', whole);
    await until('thinking', () => one.state === 'thinking');
    await sleep(400);
    await on.bot.client.destroy();
    hold = false;
    await on.startBot();
    await until('the answer', () => one.state === 'answered');
    expect(one.original?.content).toContain('304');
    await on.delivered(member);
  });

  it('does not post to all what was for one member', async () => {
    let hold = true;
    stage = await Stage.set({
      bot: { deferAfterMs: 5000 },
      wrap: (handle) => async (message, posting) => {
        const rendered = await handle(message, posting);
        if (hold) await new Promise(() => undefined);
        return rendered;
      },
    });
    const on = stage;
    const member = on.member();
    const one = member.runs('help');
    await sleep(400);
    await on.bot.client.destroy();
    hold = false;
    if (one.timer) clearTimeout(one.timer);
    await on.startBot();
    await on.delivered(member);
    expect(on.posted(member)).toEqual([]);
  });
});

describe('stopping', () => {
  it('finishes what is under way and answers the rest with one line, well within 10 seconds', async () => {
    stage = await Stage.set({
      wrap: (handle) => async (message, posting) => {
        await sleep(300);
        return handle(message, posting);
      },
    });
    const on = stage;
    const [first, late] = [on.member(), on.member()];
    const under = first.runs('material', whole);
    await sleep(100);
    const started = Date.now();
    const stopped = on.bot.stop();
    const turned = late.runs('material', whole);
    await stopped;
    expect(Date.now() - started).toBeLessThan(3000);
    expect(under.original?.content).toContain('not a certificate');
    expect(turned.original?.content).toContain('being restarted');
    expect(turned.original?.private).toBe(true);
    await on.startBot();
  });

  it('does not wait for ever for a program that hangs', { timeout: 20_000 }, async () => {
    stage = await Stage.set({ bot: { deferAfterMs: 50 }, wrap: () => () => new Promise(() => undefined) });
    const on = stage;
    on.member().runs('material', whole);
    await sleep(100);
    const started = Date.now();
    await on.bot.stop();
    expect(Date.now() - started).toBeLessThan(10_000);
    await on.startBot();
  });
});
