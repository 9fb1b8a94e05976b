/** The Shelf: every sugar that was made, what is known of it, how it keeps, and the label on its jar. */
import { Route, Switch } from 'wouter';
import { TemperatureUnitProvider } from '../../parts/TemperatureUnit.tsx';
import { BlindTasting } from './blind/BlindTasting.tsx';
import { LotPage } from './LotPage.tsx';
import { Lots } from './Lots.tsx';
import { LabelPage } from './label/LabelPage.tsx';
import { SideBySidePage } from './SideBySidePage.tsx';
import { ToldLotPage } from './told/ToldLotPage.tsx';
import './shelf.css';

export default function ShelfPlace() {
  return (
    <TemperatureUnitProvider>
      <Switch>
        <Route path="/shelf" component={Lots} />
        <Route path="/shelf/new" component={ToldLotPage} />
        <Route path="/shelf/blind" component={BlindTasting} />
        <Route path="/shelf/compare" component={SideBySidePage} />
        <Route path="/shelf/:id">{({ id }) => <LotPage key={id} id={id} />}</Route>
        <Route path="/shelf/:id/label">{({ id }) => <LabelPage key={id} id={id} />}</Route>
      </Switch>
    </TemperatureUnitProvider>
  );
}
