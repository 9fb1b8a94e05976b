/** The Book: all cooks, one of them looked back at, and several laid over one another. */
import { lazy, Suspense } from 'react';
import { Route, Switch } from 'wouter';
import { TemperatureUnitProvider } from '../../parts/TemperatureUnit.tsx';
import { BookList } from './list/BookList.tsx';
import './book.css';

const CookPage = lazy(() => import('./cook/CookPage.tsx'));
const LayOver = lazy(() => import('./over/LayOver.tsx'));

export default function BookPlace() {
  return (
    <TemperatureUnitProvider>
      <Suspense fallback={<main id="main" />}>
        <Switch>
          <Route path="/book/over" component={LayOver} />
          <Route path="/book/:id">{({ id }) => <CookPage key={id} id={id} />}</Route>
          <Route component={BookList} />
        </Switch>
      </Suspense>
    </TemperatureUnitProvider>
  );
}
