/** The Kit: what cooks are made with, what checks measure of it, and what cooks have taught. */
import { Route, Switch } from 'wouter';
import { TemperatureUnitProvider } from '../../parts/TemperatureUnit.tsx';
import { CheckPage } from './check/CheckPage.tsx';
import { ImportPage } from './import/ImportPage.tsx';
import { KitPage } from './KitPage.tsx';
import { LearnPage } from './learn/LearnPage.tsx';
import { WithKit } from './WithKit.tsx';
import './kit.css';

export default function KitPlace() {
  return (
    <TemperatureUnitProvider>
      <Switch>
        <Route path="/kit/:id/check/:kind">
          {({ id, kind }) => (
            <WithKit id={id}>{(hand) => <CheckPage key={`${id}/${kind}`} hand={hand} kind={kind} />}</WithKit>
          )}
        </Route>
        <Route path="/kit/:id/learn/:cook?">
          {({ id, cook }) => <WithKit id={id}>{(hand) => <LearnPage key={cook} hand={hand} cookId={cook} />}</WithKit>}
        </Route>
        <Route path="/kit/:id/import">
          {({ id }) => <WithKit id={id}>{(hand) => <ImportPage hand={hand} />}</WithKit>}
        </Route>
        <Route path="/kit/:id?">
          {({ id }) => <WithKit id={id}>{(hand) => <KitPage key={hand.record?.id ?? 'new'} hand={hand} />}</WithKit>}
        </Route>
      </Switch>
    </TemperatureUnitProvider>
  );
}
