/** The page's start. The place asked for is fetched at once, beside the frame around it. */
import { createRoot } from 'react-dom/client';
import { App } from './app.tsx';
import { fetchLinkedFiles } from './records/files.ts';
import { followOtherTabs } from './records/pass.ts';
import { keepShell } from './serviceWorker/register.ts';
import './tokens.css';
import './app.css';

const place = document.getElementById('app');
if (place) createRoot(place).render(<App />);
fetchLinkedFiles();
followOtherTabs();
keepShell();
