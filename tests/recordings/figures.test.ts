/** Against closed forms: a linear spring pulled at a steady rate has E = F²/(2k), and its rate and stiffness are known. */
import { describe, expect, it } from 'vitest';
import { bytesSource, readRecording } from '../../src/recordings/index.ts';

function spring(kn: number, stiffness: number, rate: number, hertz: number): string {
  const lines = ['Time [s];Force [kN];Displacement [mm]'];
  const seconds = kn / rate;
  for (let row = 0; row <= (seconds + 3) * hertz; row += 1) {
    const time = row / hertz - 1;
    const load = time < 0 || time > seconds ? 0 : rate * time;
    const move = time > seconds ? (kn / stiffness) * 1.2 : load / stiffness;
    lines.push(`${(row / hertz).toFixed(4)};${load.toFixed(5)};${move.toFixed(6)}`);
  }
  return `${lines.join('\n')}\n`;
}

describe('a linear spring', () => {
  it.each([
    [25, 8, 1, 100],
    [12, 2.5, 0.4, 50],
    [40, 10, 2, 1000],
    [18, 5, 3, 10],
  ])('%d kN at %d kN/mm and %d kN/s, %d Hz', async (kn, stiffness, rate, hertz) => {
    // With little room blocks hold several rows, and the ends of the rise are known less well.
    for (const [room, slack] of [
      [undefined, 0.02],
      [1024, 0.04],
    ] as const) {
      const { pulls } = await readRecording(
        bytesSource(Buffer.from(spring(kn, stiffness, rate, hertz))),
        room,
      );
      const [pull] = pulls;
      expect(pulls).toHaveLength(1);
      expect(Math.abs((pull?.peakKn ?? 0) / kn - 1)).toBeLessThan(0.005 + rate / hertz / kn);
      expect(Math.abs((pull?.rateKnPerS ?? 0) / rate - 1)).toBeLessThan(0.005);
      expect(Math.abs((pull?.stiffnessKnPerMm ?? 0) / stiffness - 1)).toBeLessThan(0.005);
      expect(Math.abs((pull?.energyJ ?? 0) / (kn ** 2 / (2 * stiffness)) - 1)).toBeLessThan(slack);
      expect(pull?.mode).toBe('brittle');
    }
  });
});
