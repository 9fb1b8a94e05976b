// Runs before the first paint, so that a chosen theme never flashes into the other; `parts/theme.ts` keeps the choice.
try {
  const chosen = localStorage.getItem('umberpan.theme');
  if (chosen === 'light' || chosen === 'dark') document.documentElement.dataset['theme'] = chosen;
} catch {
  // Storage may be refused; the system's theme stands.
}
