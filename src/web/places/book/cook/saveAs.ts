/** Hands a text that the page made to the browser as a file. */
export function saveAs(name: string, type: string, text: string): void {
  const address = URL.createObjectURL(new Blob([text], { type: `${type};charset=utf-8` }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // The browser has begun to take it by then.
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
