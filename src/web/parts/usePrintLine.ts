import { useEffect } from 'react';
import pkg from '#package.json' with { type: 'json' };

/** What stands at the foot of every printed page: version, date and time zone. Page margins take it from a property of the page. */
export function usePrintLine(): void {
  useEffect(() => {
    const write = () => {
      const date = new Date().toLocaleString('en-GB', { dateStyle: 'long', timeStyle: 'long' });
      document.documentElement.style.setProperty('--print-line', JSON.stringify(`Umberpan ${pkg.version}, ${date}`));
    };
    write();
    window.addEventListener('beforeprint', write);
    return () => window.removeEventListener('beforeprint', write);
  }, []);
}
