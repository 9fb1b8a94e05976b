// Takes the README's pictures of the built app: `npm run build`, then `node scripts/screenshots.mjs`.
import { spawn } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium } from 'playwright-core';
import { findChromium } from './setup/chromium.mjs';

const pictures = [
  { file: 'desk.png', width: 1440, height: 900 },
  { file: 'desk-phone.png', width: 360, height: 780 },
];

const root = fileURLToPath(new URL('..', import.meta.url));
const images = join(root, 'docs/images');
const executablePath = findChromium();
if (!executablePath) throw new Error('Chromium is not installed');

const data = mkdtempSync(join(tmpdir(), 'umberpan-'));
const server = spawn(process.execPath, [join(root, 'dist/node/cli/main.js'), 'serve', '--port', '0', '--data', data]);
const address = await new Promise((resolve, reject) => {
  let printed = '';
  server.stdout.on('data', (text) => {
    printed += text;
    const found = /http:\S+/.exec(printed);
    if (found) resolve(found[0]);
  });
  server.once('close', () => reject(new Error('the server ended')));
});
const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu'] });
try {
  mkdirSync(images, { recursive: true });
  for (const { file, width, height } of pictures) {
    const page = await browser.newPage({ viewport: { width, height }, colorScheme: 'light' });
    await page.goto(address);
    await page.locator('.pan-figure .band-edges').waitFor();
    // The field is painted coarse at first, and tells last how sure its colours are.
    await page.getByText('how sure, in a moment').waitFor({ state: 'detached', timeout: 180_000 });
    await page.waitForTimeout(1500);
    await page.screenshot({ path: join(images, file) });
    console.log(`docs/images/${file}`);
    await page.close();
  }
} finally {
  await browser.close();
  server.kill();
  rmSync(data, { recursive: true, force: true });
}
