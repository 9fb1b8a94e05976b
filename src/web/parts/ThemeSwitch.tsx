import { useState } from 'react';
import { applyTheme, type Theme, themeNow, themes } from './theme.ts';

const names: Record<Theme, string> = { system: 'System', light: 'Light', dark: 'Dark' };

export function ThemeSwitch() {
  const [theme, setTheme] = useState(themeNow);
  return (
    <label className="theme">
      <span className="small quiet">Theme</span>
      <select
        value={theme}
        onChange={(event) => {
          const chosen = event.target.value as Theme;
          applyTheme(chosen);
          setTheme(chosen);
        }}
      >
        {themes.map((each) => (
          <option key={each} value={each}>
            {names[each]}
          </option>
        ))}
      </select>
    </label>
  );
}
