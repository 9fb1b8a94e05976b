/** The Stove: rehearsals, and real cooks. */
import { Route, Switch } from 'wouter';
import { TemperatureUnitProvider } from '../../parts/TemperatureUnit.tsx';
import { LivePlace } from './live/LivePlace.tsx';
import { Preflight } from './live/Preflight.tsx';
import { RehearsalPlace } from './rehearsal/RehearsalPlace.tsx';
import './stove.css';

export default function StovePlace() {
  return (
    <TemperatureUnitProvider>
      <Switch>
        <Route path="/stove/cook" component={Preflight} />
        <Route path="/stove/cook/:id">{({ id }) => <LivePlace key={id} id={id} />}</Route>
        <Route component={RehearsalPlace} />
      </Switch>
    </TemperatureUnitProvider>
  );
}
