/** Whole questions, each answered at once with an advice. */
const lengths = [90, 100, 110, 120, 130, 140];
const rocks = ['granite', 'gneiss', 'limestone', 'dolomite'];

export const questions: readonly string[] = lengths.flatMap((length) =>
  rocks.map(
    (rock) =>
      `is a 12x${length} twin-leg with epoxy in dry sound ${rock} deep enough for a lower-off, shank ribbed?`,
  ),
);
