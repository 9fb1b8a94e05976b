/** A drawing as a PNG: the same SVG, in the app's own typeface, whatever the machine has. */
import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { initWasm, Resvg } from '@resvg/resvg-wasm';

/** Pixels for each px of the drawing. */
const zoom = 2;
const family = '@expo-google-fonts/atkinson-hyperlegible-next';
const weights = ['400Regular', '700Bold'] as const;

export async function rasterised(svg: string): Promise<Buffer> {
  const file = (name: string) => readFile(createRequire(import.meta.url).resolve(name));
  const [wasm, ...fontBuffers] = await Promise.all([
    file('@resvg/resvg-wasm/index_bg.wasm'),
    ...weights.map((weight) => file(`${family}/${weight}/AtkinsonHyperlegibleNext_${weight}.ttf`)),
  ]);
  await initWasm(wasm);
  const options = { fitTo: { mode: 'zoom', value: zoom }, font: { fontBuffers, loadSystemFonts: false } } as const;
  return Buffer.from(new Resvg(svg, options).render().asPng());
}
