/** The frame around every place: wordmark, ways between the places, theme. Each place is a script of its own. */
import { QueryClient, QueryClientProvider } from '@tanstack/react-query';
import { lazy, Suspense } from 'react';
import { Link, Route, Switch, useLocation } from 'wouter';
import { useCookUnderWay } from './parts/cookUnderWay.ts';
import { NewVersion } from './parts/NewVersion.tsx';
import { ThemeSwitch } from './parts/ThemeSwitch.tsx';
import { Wordmark } from './parts/Wordmark.tsx';
import { StandingLine } from './places/devices/StandingLine.tsx';
import { onPassChange } from './records/pass.ts';
import { isNotLetIn, isNotShared } from './records/reach.ts';

const fetchDesk = () => import('./places/desk/Desk.tsx');
const fetchStove = () => import('./places/stove/Stove.tsx');
const fetchShelf = () => import('./places/shelf/Shelf.tsx');
const fetchGlass = () => import('./places/glass/Glass.tsx');
const fetchBook = () => import('./places/book/Book.tsx');
const fetchKits = () => import('./places/kit/Kits.tsx');
const fetchCare = () => import('./places/care/Care.tsx');
const Desk = lazy(fetchDesk);
const Stove = lazy(fetchStove);
const Shelf = lazy(fetchShelf);
const Glass = lazy(fetchGlass);
const Book = lazy(fetchBook);
const Kits = lazy(fetchKits);
const Care = lazy(fetchCare);
const Demo = lazy(() => import('./places/demo/Demo.tsx'));
const Guide = lazy(() => import('./places/guide/Guide.tsx'));
const Devices = lazy(() => import('./places/devices/Devices.tsx'));
const Pair = lazy(() => import('./places/devices/Pair.tsx'));
const Watch = lazy(() => import('./places/stove/live/Watch.tsx'));
const first = location.pathname.split('/')[1] ?? '';
const fetches = {
  book: fetchBook,
  care: fetchCare,
  glass: fetchGlass,
  kit: fetchKits,
  shelf: fetchShelf,
  stove: fetchStove,
};
void (Object.entries(fetches).find(([place]) => place === first)?.[1] ?? fetchDesk)();

/** At home the server is on the same network: whether the internet is reachable says nothing about it. */
const client = new QueryClient({
  defaultOptions: {
    queries: {
      networkMode: 'always',
      // Asked again at once, a server that does not let this device in answers the same.
      retry: (failures, error) => failures < 1 && !isNotLetIn(error) && !isNotShared(error),
      staleTime: 10_000,
    },
    mutations: { networkMode: 'always' },
  },
});
onPassChange(() => void client.invalidateQueries());

const places = [
  { to: '/', name: 'Desk' },
  { to: '/stove', name: 'Stove' },
  { to: '/shelf', name: 'Shelf' },
  { to: '/glass', name: 'Glass' },
  { to: '/book', name: 'Book' },
  { to: '/kit', name: 'Kit' },
  { to: '/care', name: 'Care' },
] as const;

export function App() {
  return (
    <QueryClientProvider client={client}>
      <Masthead />
      <StandingLine />
      <CookUnderWay />
      <Suspense fallback={<main id="main" className="to-come" />}>
        <Switch>
          <Route path="/" component={Desk} />
          <Route path="/stove/*?" component={Stove} />
          <Route path="/shelf/*?" component={Shelf} />
          <Route path="/glass/*?" component={Glass} />
          <Route path="/book/*?" component={Book} />
          <Route path="/kit/*?" component={Kits} />
          <Route path="/care" component={Care} />
          <Route path="/guide/*?" component={Guide} />
          <Route path="/demo" component={Demo} />
          <Route path="/devices" component={Devices} />
          <Route path="/pair" component={Pair} />
          <Route component={Nowhere} />
        </Switch>
      </Suspense>
      <footer className="foot">
        <Link href="/guide">Guide</Link>
        <Link href="/demo">Demo</Link>
        <Link href="/devices">Devices</Link>
        <ThemeSwitch />
      </footer>
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
