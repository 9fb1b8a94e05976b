/** Links to files of the server, for devices that show a pass: a browser alone would ask without it. */
import { ask, passHeld } from './pass.ts';
import { saveAs } from './saveAs.ts';

/** Has the page fetch what such a link names; everywhere on the page, for as long as it is open. */
export function fetchLinkedFiles(): void {
  document.addEventListener('click', (event) => {
    const link = event.target instanceof Element ? event.target.closest('a') : null;
    if (!link?.hasAttribute('download') || !link.pathname.startsWith('/api/') || !passHeld()) return;
    event.preventDefault();
    void save(link.pathname + link.search, link.download);
  });
}

async function save(address: string, name: string): Promise<void> {
  const answer = await ask(address);
  if (!answer.ok) return;
  const [, named] = /filename="([^"]+)"/.exec(answer.headers.get('content-disposition') ?? '') ?? [];
  saveAs(named ?? (name || 'umberpan'), await answer.blob());
}
