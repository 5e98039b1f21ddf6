/** A measured recording as what its pictures show. */
import type { ForceData, ForcePoint } from '../contracts/pictures.ts';
import type { Pull, Recording } from '../contracts/recording.ts';

/** The displacement of the nearest slice. */
function movedAt({ outline: { timeS, mm } }: Pull, time: number): { mm?: number } {
  if (mm === null) return {};
  const after = timeS.findIndex((one) => one >= time);
  const moved = mm[after < 0 ? mm.length - 1 : after];
  return moved === undefined ? {} : { mm: moved };
}

/** Least before most in each slice: the line then covers all that the cell read. */
const outlined = ({ outline: { timeS, leastKn, mostKn, mm } }: Pull): ForcePoint[] =>
  timeS.flatMap((t_s, index) => {
    const moved = mm?.[index];
    const at = moved === undefined ? { t_s } : { t_s, mm: moved };
    return [leastKn[index], mostKn[index]].flatMap((kn) => (kn === undefined ? [] : [{ ...at, kn }]));
  });

export const forceData = (name: string, { pulls }: Recording): ForceData => ({
  name,
  outline: pulls.flatMap(outlined),
  pulls: pulls.map((pull) => {
    const { firstDrop } = pull;
    const at = (t_s: number, kn: number): ForcePoint => ({ t_s, kn, ...movedAt(pull, t_s) });
    const peak = at(pull.timeOfPeakS, pull.peakKn);
    return firstDrop === null ? { peak } : { peak, firstDrop: at(firstDrop.timeS, firstDrop.fromKn) };
  }),
  needs: [],
});
