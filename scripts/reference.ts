// Writes the generated pages of `docs/reference`: `npm run reference`.
import { mkdirSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { referencePages } from './reference/pages.ts';

const folder = fileURLToPath(new URL('../docs/reference/', import.meta.url));
mkdirSync(folder, { recursive: true });
for (const [name, text] of Object.entries(await referencePages())) {
  writeFileSync(`${folder}${name}.md`, text);
  console.log(`docs/reference/${name}.md`);
}
