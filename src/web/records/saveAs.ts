/** Hands what the page made or fetched to the browser as a file. */
export function saveAs(name: string, content: Blob): void {
  const href = URL.createObjectURL(content);
  Object.assign(document.createElement('a'), { href, download: name }).click();
  // Once the browser has taken it.
  setTimeout(() => URL.revokeObjectURL(href), 60_000);
}

/** A name that people gave, as files may be called everywhere. */
export function fileName(name: string): string {
  return name.replace(/[^\p{L}\p{N}]+/gu, '-').replace(/^-|-$/g, '') || 'cook';
}
