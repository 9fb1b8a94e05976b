/** Light, dark, or as the system says; `public/theme.js` applies the choice before the first paint. */
import { keep, kept } from './browserStorage.ts';

export const themes = ['system', 'light', 'dark'] as const;
export type Theme = (typeof themes)[number];

const key = 'umberpan.theme';

export function themeNow(): Theme {
  const chosen = kept(key);
  return chosen === 'light' || chosen === 'dark' ? chosen : 'system';
}

export function applyTheme(theme: Theme): void {
  keep(key, theme);
  if (theme === 'system') delete document.documentElement.dataset['theme'];
  else document.documentElement.dataset['theme'] = theme;
}
