/**
 * Colours, sizes and fonts of all pictures. One opaque light card with a grey border: it reads in a light chat and in a dark one.
 * The palette is Okabe and Ito's, "Color Universal Design" (2008), made for the colour-blind; whatever a colour says, a shape,
 * a dash or a word says too.
 */
export const colours = {
  ink: '#1a1a1a',
  soft: '#5a5a5a',
  grid: '#dcdcd8',
  card: '#fbfbf9',
  border: '#8c8c8c',
  blue: '#0072B2',
  sky: '#56B4E9',
  orange: '#E69F00',
  vermillion: '#D55E00',
} as const;

export const font = 'DejaVu Sans';

/** In CSS pixels of a phone: the picture is as wide as its screen, and drawn with twice the pixels. */
export const sizes = {
  width: 390,
  scale: 2,
  edge: 12,
  tick: 11,
  text: 12,
  title: 14,
  line: 1.3,
} as const;

export const dashes = [
  [7, 4],
  [2, 3],
  [10, 3, 2, 3],
  [14, 4],
] as const;
