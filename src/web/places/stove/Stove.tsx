/** The Stove: rehearsals, and real cooks. */
import { lazy, Suspense } from 'react';
import { Route, Switch } from 'wouter';
import { TemperatureUnitProvider } from '../../parts/TemperatureUnit.tsx';
import { LivePlace } from './live/LivePlace.tsx';
import { RehearsalPlace } from './rehearsal/RehearsalPlace.tsx';
import './stove.css';

/** It plans by itself, and is not needed at the stove. */
const Preflight = lazy(() => import('./live/Preflight.tsx'));

export default function StovePlace() {
  return (
    <TemperatureUnitProvider>
      <Switch>
        <Route path="/stove/cook">
          <Suspense fallback={<main id="main" />}>
            <Preflight />
          </Suspense>
        </Route>
        <Route path="/stove/cook/:id">{({ id }) => <LivePlace key={id} id={id} />}</Route>
        <Route component={RehearsalPlace} />
      </Switch>
    </TemperatureUnitProvider>
  );
}
