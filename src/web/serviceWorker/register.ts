/** The page's side of the service worker. Where there is none, as over plain http, the page does without. */

/** Has the app's files kept for when the server is away. A browser that refuses leaves everything as it was. */
export function keepShell(): void {
  if (!('serviceWorker' in navigator) || !import.meta.env.PROD) return;
  const register = () => navigator.serviceWorker.register('/service-worker.js').catch(() => {});
  // After the page has what it needs itself.
  if (document.readyState === 'complete') void register();
  else window.addEventListener('load', () => void register(), { once: true });
}

/** Calls back when a new version is there and waits; returns the way to stop. */
export function onNewVersion(ready: () => void): () => void {
  if (!('serviceWorker' in navigator)) return () => {};
  const stopping = new AbortController();
  const { signal } = stopping;
  void navigator.serviceWorker.ready.then((registration) => {
    if (signal.aborted) return;
    if (registration.waiting) ready();
    const watch = () => {
      const { installing } = registration;
      installing?.addEventListener('statechange', () => installing.state === 'installed' && ready(), { signal });
    };
    registration.addEventListener('updatefound', watch, { signal });
  });
  return () => stopping.abort();
}

/** Goes over to the version that waits, and loads the page anew; while any tab has a cook open for writing, nothing happens. */
export async function takeNewVersion(): Promise<void> {
  const { waiting } = await navigator.serviceWorker.ready;
  navigator.serviceWorker.addEventListener('controllerchange', () => location.reload(), { once: true });
  waiting?.postMessage('take over');
}
