/**
 * Keeps the app's own files in the browser, so that the page opens without its server. The list of files and its version
 * are written in at build time. A new version waits until no page of the old one is open, or until a page asks for it while
 * no tab has a cook open; it never takes over from under a cook. Nothing of `/api` passes through here.
 */
declare const SHELL: { readonly version: string; readonly files: readonly string[] };

/** What TypeScript's list of a page's globals does not have. */
interface Extendable extends Event {
  waitUntil(work: Promise<unknown>): void;
}
interface Fetching extends Extendable {
  readonly request: Request;
  respondWith(answer: Promise<Response>): void;
}
interface Worker {
  readonly clients: { claim(): Promise<void> };
  skipWaiting(): Promise<void>;
  addEventListener(name: 'install' | 'activate' | 'message', work: (event: Extendable & MessageEvent) => void): void;
  addEventListener(name: 'fetch', work: (event: Fetching) => void): void;
}
const worker = self as unknown as Worker;

const prefix = 'umberpan-shell-';
const shell = prefix + SHELL.version;
const page = '/index.html';

worker.addEventListener('install', (event) => event.waitUntil(fetchShell()));
worker.addEventListener('activate', (event) => event.waitUntil(dropOldShells().then(() => worker.clients.claim())));
worker.addEventListener('message', (event) => {
  if (event.data === 'take over') event.waitUntil(takeOverUnlessCooking());
});
worker.addEventListener('fetch', (event) => {
  const { method, mode, url } = event.request;
  const { origin, pathname } = new URL(url);
  if (method !== 'GET' || origin !== location.origin || pathname.startsWith('/api')) return;
  const file = mode === 'navigate' ? page : pathname;
  if (SHELL.files.includes(file)) event.respondWith(fromShell(file, event.request));
});

async function fetchShell() {
  const cache = await caches.open(shell);
  await cache.addAll(SHELL.files.map((file) => new Request(file, { cache: 'no-cache' })));
}

async function fromShell(file: string, request: Request): Promise<Response> {
  return (await (await caches.open(shell)).match(file)) ?? fetch(request);
}

async function dropOldShells() {
  const names = await caches.keys();
  await Promise.all(
    names.filter((name) => name.startsWith(prefix) && name !== shell).map((name) => caches.delete(name)),
  );
}

/** Each tab that writes a cook holds a lock named after it (records/cookLog/writer.ts). */
async function takeOverUnlessCooking() {
  const { held = [] } = await navigator.locks.query();
  if (!held.some(({ name }) => name?.startsWith('umberpan.cook.'))) await worker.skipWaiting();
}
