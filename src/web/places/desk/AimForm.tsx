/** The aim: what sugar is wanted, by which route, and the levers of the cook. */
import type { PlanRequest } from '../../../core/planning/request.ts';
import { Choice } from '../../parts/Choice.tsx';
import type { Entries, Sheet } from '../../parts/entry.ts';
import { Picks } from '../../parts/Picks.tsx';
import { SheetField } from '../../parts/SheetField.tsx';
import { HeatFields } from './HeatFields.tsx';

export interface AimFormProps {
  readonly sheet: Sheet<PlanRequest>;
  readonly entries: Entries<PlanRequest>;
  readonly refusals: Readonly<Record<string, string>>;
  /** What a plan that can be made would have one know of a field. */
  readonly hints: Readonly<Record<string, string>>;
  readonly onText: (field: string, text: string) => void;
  readonly onChange: (change: Partial<PlanRequest>) => void;
}

const forms = [
  { value: 'hard', name: 'Hard' },
  { value: 'syrup', name: 'Syrup' },
] as const;
const routes = [
  { value: 'pale', name: 'Pale', says: 'acid inverts, nothing browns' },
  { value: 'bright', name: 'Bright', says: 'alkali browns: fruit' },
  { value: 'deep', name: 'Deep', says: 'alkali browns, then roast' },
] as const;
const alkalis = [
  ['sodiumHydroxide', 'Sodium hydroxide, NaOH'],
  ['calciumHydroxide', 'Slaked lime, Ca(OH)₂'],
] as const;

export function AimForm(props: AimFormProps) {
  const { sheet, entries, onText, refusals, hints, onChange } = props;
  const { form, route, alkali } = sheet.good;
  const field = { sheet, entries, onText, refusals };
  return (
    <form className="sheet" aria-label="Aim" onSubmit={(event) => event.preventDefault()}>
      <h2>Aim</h2>
      <div className="pairs">
        <SheetField {...field} field="name" wide />
        <SheetField {...field} field="massKg" hint={inGrams(sheet)} wide />
        <Picks legend="Form" value={form} options={forms} onPick={(value) => onChange({ form: value })} row />
        {form === 'syrup' && <SheetField {...field} field="syrupSolids" />}
      </div>
      <Picks legend="Route" value={route} options={routes} onPick={(value) => onChange({ route: value })} />
      <HeatFields {...props} />
      {route === 'pale' ? (
        <fieldset className="pairs">
          <legend>Acid and malt</legend>
          <SheetField {...field} field="acidGPerKg" />
          <SheetField {...field} field="maltExtractGPerKg" />
        </fieldset>
      ) : (
        <fieldset className="pairs">
          <legend>Alkali and malt</legend>
          <Choice
            wide
            label="Alkali, food grade"
            value={alkali}
            options={alkalis}
            onChoose={(value) => onChange({ alkali: value })}
          />
          <SheetField {...field} field="alkaliGPerKg" />
          <SheetField {...field} field="solutionStrength" />
          {hints['solutionStrength'] && <p className="caution">{hints['solutionStrength']}</p>}
          <SheetField {...field} field="maltExtractGPerKg" wide />
          <AlkaliShares {...props} />
        </fieldset>
      )}
    </form>
  );
}

/** What of the alkali is what it should be; open from the start where it was told. */
function AlkaliShares({ sheet, entries, onText, refusals, hints }: AimFormProps) {
  const field = { sheet, entries, onText, refusals };
  const told = [sheet.good, sheet.texts].some((each) => 'alkaliActive' in each || 'alkaliCarbonate' in each);
  return (
    <details open={told}>
      <summary>More of the alkali</summary>
      <div className="pairs">
        <SheetField {...field} field="alkaliActive" />
        <SheetField {...field} field="alkaliCarbonate" />
      </div>
      {hints['alkaliCarbonate'] && <p className="caution">{hints['alkaliCarbonate']}</p>}
    </details>
  );
}

/** What a mass typed in another unit comes to. */
function inGrams({ good, texts }: Sheet<PlanRequest>): string | undefined {
  const typed = texts['massKg'];
  return typed && /[a-z]/i.test(typed) && !/^[\s\d.,]*g\s*$/.test(typed)
    ? `= ${(good.massKg * 1000).toFixed(0)} g`
    : undefined;
}
