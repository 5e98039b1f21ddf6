/** Draws a picture's description as PNG. vega is loaded at the first picture and never before: it costs half a second. */
import { createRequire } from 'node:module';
import type { View } from 'vega';
import type { TopLevelSpec } from 'vega-lite';
import { colours, font, sizes } from './look.ts';

interface Tools {
  readonly vega: typeof import('vega');
  readonly lite: typeof import('vega-lite');
}

const faces = ['DejaVuSans.ttf', 'DejaVuSans-Bold.ttf'];

/** Without its font a canvas draws no letter and says nothing: that is an error here. */
export async function registerFont(path: string): Promise<void> {
  const { GlobalFonts } = await import('canvas');
  if (GlobalFonts.registerFromPath(path, font) === null)
    throw new Error(`${path} cannot be used as a font, so pictures would have no texts`);
}

async function loadTools(): Promise<Tools> {
  // Before vega, which measures texts as soon as it lays them out.
  const { resolve } = createRequire(import.meta.url);
  for (const face of faces) await registerFont(resolve(`dejavu-fonts-ttf/ttf/${face}`));
  const [vega, lite] = await Promise.all([import('vega'), import('vega-lite')]);
  return { vega, lite };
}

let loaded: Promise<Tools> | undefined;
const tools = (): Promise<Tools> => {
  loaded ??= loadTools();
  return loaded;
};

/** The laid-out picture; `draw` paints it, tests ask it where its texts stand. */
export async function layOut(spec: TopLevelSpec): Promise<View> {
  const { vega, lite } = await tools();
  // A warning means that something is not drawn as described: with advice on anchors that is an error.
  const problems: string[] = [];
  const logger = vega.logger(vega.Warn, 'warn', (_method, _level, said) => problems.push(said.join(' ')));
  // vega writes into the data it is given.
  const compiled = lite.compile(structuredClone(spec), { logger });
  const view = new vega.View(vega.parse(compiled.spec), { renderer: 'none', logger });
  await view.runAsync();
  if (problems.length > 0) throw new Error(`a picture cannot be drawn as described: ${problems.join('; ')}`);
  return view;
}

/** In CSS pixels, with the margins that `framed` reckoned. */
export function sizeOf(view: View): { readonly width: number; readonly height: number } {
  const padding = view.padding();
  const { left = 0, right = 0, top = 0, bottom = 0 } = typeof padding === 'number' ? {} : padding;
  return { width: view.width() + left + right, height: view.height() + top + bottom };
}

export async function draw(spec: TopLevelSpec): Promise<Buffer> {
  const [view, { createCanvas }] = await Promise.all([layOut(spec), import('canvas')]);
  try {
    const { width, height } = sizeOf(view);
    const canvas = createCanvas(Math.ceil(width * sizes.scale), Math.ceil(height * sizes.scale));
    const context = canvas.getContext('2d');
    await view.toCanvas(sizes.scale, { externalContext: context });
    context.resetTransform();
    context.strokeStyle = colours.border;
    context.lineWidth = sizes.scale;
    context.strokeRect(
      sizes.scale / 2,
      sizes.scale / 2,
      canvas.width - sizes.scale,
      canvas.height - sizes.scale,
    );
    return await canvas.encode('png');
  } finally {
    view.finalize();
  }
}
