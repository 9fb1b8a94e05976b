// Draws the app's icons from their SVG, in the sizes that the manifest names: `node scripts/icons.mjs`, after a change of the drawing.
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';
import { findChromium } from './setup/chromium.mjs';

const folder = new URL('../src/web/public/icons/', import.meta.url);
const executablePath = findChromium();
if (!executablePath) throw new Error('Chromium is not installed');

const drawing = readFileSync(new URL('icon.svg', folder), 'utf8');
const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu'] });
for (const size of [192, 512]) {
  const page = await browser.newPage({ viewport: { width: size, height: size } });
  await page.setContent(`<style>body { margin: 0 } svg { display: block; width: ${size}px }</style>${drawing}`);
  await page.screenshot({ path: fileURLToPath(new URL(`icon-${size}.png`, folder)) });
}
await browser.close();
