/** The frame around every place: wordmark, ways between the places, theme. Each place is a script of its own. */
import { QueryClient, QueryClientProvider } from '@tanstack/react-query';
import { lazy, Suspense } from 'react';
import { Link, Route, Switch, useLocation } from 'wouter';
import { useCookUnderWay } from './parts/cookUnderWay.ts';
import { NewVersion } from './parts/NewVersion.tsx';
import { ThemeSwitch } from './parts/ThemeSwitch.tsx';
import { Wordmark } from './parts/Wordmark.tsx';

const fetchDesk = () => import('./places/desk/Desk.tsx');
const fetchStove = () => import('./places/stove/Stove.tsx');
const fetchGlass = () => import('./places/glass/Glass.tsx');
const fetchCare = () => import('./places/care/Care.tsx');
const Desk = lazy(fetchDesk);
const Stove = lazy(fetchStove);
const Glass = lazy(fetchGlass);
const Care = lazy(fetchCare);
const Watch = lazy(() => import('./places/stove/live/Watch.tsx'));
const first = location.pathname.split('/')[1] ?? '';
void ({ care: fetchCare, glass: fetchGlass, stove: fetchStove }[first] ?? fetchDesk)();

/** At home the server is on the same network: whether the internet is reachable says nothing about it. */
const client = new QueryClient({
  defaultOptions: {
    queries: { networkMode: 'always', retry: 1, staleTime: 10_000 },
    mutations: { networkMode: 'always' },
  },
});

const places = [
  { to: '/', name: 'Desk' },
  { to: '/stove', name: 'Stove' },
  { to: '/glass', name: 'Glass' },
  { to: '/care', name: 'Care' },
] as const;

export function App() {
  return (
    <QueryClientProvider client={client}>
      <Masthead />
      <CookUnderWay />
      <Suspense fallback={<main id="main" />}>
        <Switch>
          <Route path="/" component={Desk} />
          <Route path="/stove/*?" component={Stove} />
          <Route path="/glass/*?" component={Glass} />
          <Route path="/care" component={Care} />
          <Route component={Nowhere} />
        </Switch>
      </Suspense>
    </QueryClientProvider>
  );
}

function Masthead() {
  const [path] = useLocation();
  const cook = useCookUnderWay();
  const hrefOf = (to: string) => (to === '/stove' && cook && !cook.over ? `/stove/cook/${cook.id}` : to);
  return (
    <header className="masthead">
      <a className="skip" href="#main">
        To the content
      </a>
      <Link className="wordmark" href="/">
        <Wordmark />
        <span>Umberpan</span>
      </Link>
      <nav aria-label="Places">
        {places.map(({ to, name }) => (
          <Link
            key={to}
            href={hrefOf(to)}
            aria-current={path === to || (to !== '/' && path.startsWith(`${to}/`)) ? 'page' : undefined}
          >
            {name}
          </Link>
        ))}
      </nav>
      <ThemeSwitch />
    </header>
  );
}

/** A real cook's alarms are heard in every place. */
function CookUnderWay() {
  const [path] = useLocation();
  const cook = useCookUnderWay();
  if (!cook || cook.over) return <NewVersion cooking={path.startsWith('/stove/')} />;
  if (path === `/stove/cook/${cook.id}`) return null;
  return (
    <Suspense>
      <Watch />
    </Suspense>
  );
}

function Nowhere() {
  return (
    <main id="main" className="nowhere">
      <h1>There is nothing at this address</h1>
      <p>
        <Link href="/">Go to the Desk</Link>
      </p>
    </main>
  );
}
