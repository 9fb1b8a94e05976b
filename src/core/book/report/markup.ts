/** Pieces of HTML with everything that a person wrote made harmless. */

/** Text as the content of an element or of an attribute in double quotes. */
export function escaped(text: string): string {
  const names: Readonly<Record<string, string>> = {
    '&': '&amp;',
    '<': '&lt;',
    '>': '&gt;',
    '"': '&quot;',
    "'": '&#39;',
  };
  return text.replace(/[&<>"']/g, (letter) => names[letter] ?? letter);
}

/** A page that stands alone: no network, no script. @param title plain text; @param body markup */
export function pageOf(title: string, style: string, body: string): string {
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
<title>${escaped(title)}</title>
<style>${style}</style>
</head>
<body>
${body}
</body>
</html>
`;
}

/** JSON inside a script element: no end of the element can be in it. */
export function jsonInScript(id: string, value: unknown): string {
  const text = JSON.stringify(value)
    .replaceAll('<', '\\u003c')
    .replaceAll('\u2028', '\\u2028')
    .replaceAll('\u2029', '\\u2029');
  return `<script type="application/json" id="${escaped(id)}">${text}</script>`;
}

/** @param cells plain text; the first of each row is its head */
export function tableOf(caption: string, head: readonly string[], rows: readonly (readonly string[])[]): string {
  const heads = head.map((cell) => `<th scope="col">${escaped(cell)}</th>`).join('');
  const lines = rows.map(
    ([first = '', ...rest]) =>
      `<tr><th scope="row">${escaped(first)}</th>${rest.map((cell) => `<td>${escaped(cell)}</td>`).join('')}</tr>`,
  );
  return `<table><caption>${escaped(caption)}</caption><thead><tr>${heads}</tr></thead><tbody>${lines.join('\n')}</tbody></table>`;
}
