/** Runs a module in a page of Chromium whose main thread is slowed down, and in a worker that is not. */
import { type Browser, chromium } from 'playwright-core';
import { build } from 'vite';
import { findChromium } from '../../scripts/setup/chromium.mjs';

export interface Slowed {
  readonly version: string;
  /** Calls `measured` with a plain object, in the page or in its worker; what it returns must be plain, too. */
  inPage<T>(argument: unknown): Promise<T>;
  inWorker<T>(argument: unknown): Promise<T>;
}

/** The page exposes the module's function; a worker of the same script answers messages with it. */
async function scriptOf(module: string, name: string): Promise<string> {
  const built = await build({
    configFile: false,
    logLevel: 'warn',
    build: {
      write: false,
      target: 'es2022',
      lib: { entry: module, formats: ['iife'], name: 'bench' },
    },
  });
  const outputs = Array.isArray(built) ? built : [built];
  const chunk = outputs.flatMap((one) => ('output' in one ? one.output : [])).find((one) => one.type === 'chunk');
  if (!chunk) throw new Error(`nothing was built of ${module}`);
  return `${chunk.code}
    const measured = bench.${name};
    if (typeof document === 'undefined') onmessage = ({ data }) => postMessage(measured(data));
    else {
      const worker = new Worker('/bench.js');
      globalThis.inPage = measured;
      globalThis.inWorker = (argument) => new Promise((done) => {
        worker.onmessage = ({ data }) => done(data);
        worker.postMessage(argument);
      });
    }`;
}

/**
 * @param module path of a module, and the name of the function that it exports
 * @param rate how many times slower the page's main thread is made; Chromium refuses that for workers
 */
export async function slowed(
  module: string,
  name: string,
  rate: number,
  use: (slow: Slowed) => Promise<void>,
): Promise<boolean> {
  const executablePath = findChromium();
  if (!executablePath) return false;
  const script = await scriptOf(module, name);
  const browser: Browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu'] });
  try {
    const page = await browser.newPage();
    await page.route('**/*', (route) =>
      route.request().url().endsWith('.js')
        ? route.fulfill({ contentType: 'text/javascript', body: script })
        : route.fulfill({ contentType: 'text/html', body: '<script src="/bench.js"></script>' }),
    );
    await page.goto('http://bench.invalid/');
    const devtools = await page.context().newCDPSession(page);
    await devtools.send('Emulation.setCPUThrottlingRate', { rate });
    const call = (where: string) => (argument: unknown) =>
      page.evaluate(`globalThis.${where}(${JSON.stringify(argument)})`) as Promise<never>;
    await use({ version: browser.version(), inPage: call('inPage'), inWorker: call('inWorker') });
  } finally {
    await browser.close();
  }
  return true;
}
