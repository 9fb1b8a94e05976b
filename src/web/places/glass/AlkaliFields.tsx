/** What alkali a sugar was browned with, for its sodium or calcium. */
import type { KeptSugar } from '../../../core/beer/keptGlass.ts';
import type { AlkaliGiven } from '../../../core/lot/lot.ts';
import { Choice } from '../../parts/Choice.tsx';
import { SheetField } from '../../parts/SheetField.tsx';
import type { GlassHand } from './useGlass.ts';

const kinds = [
  ['unknown', 'not known'],
  ['none', 'none'],
  ['sodiumHydroxide', 'NaOH'],
  ['calciumHydroxide', 'Ca(OH)₂'],
] as const;
type Kind = (typeof kinds)[number][0];
/** As the Desk proposes it. */
const usualGPerKg = 5;

interface AlkaliProps {
  readonly hand: GlassHand;
  readonly sugar: KeptSugar;
  readonly at: number;
}

export function AlkaliFields({ hand, sugar, at }: AlkaliProps) {
  const { draft, entries, type, changeDose } = hand;
  const { alkali } = sugar;
  const kind = kindOf(alkali);
  return (
    <div className="glass-pairs">
      <Choice
        label="Browned with"
        value={kind}
        options={kinds}
        hint={sugar.kind === 'lot' ? 'its plan tells, where that is kept' : undefined}
        onChoose={(chosen) => changeDose(at, { sugar: { ...sugar, alkali: alkaliOf(chosen, alkali) } })}
      />
      {(kind === 'sodiumHydroxide' || kind === 'calciumHydroxide') && (
        <SheetField sheet={draft.sheet} entries={entries} onText={type} field={`doses.${at}.alkali`} />
      )}
    </div>
  );
}

function kindOf(alkali: AlkaliGiven | null): Kind {
  if (alkali === null) return 'unknown';
  return alkali.gramsPerKgSucrose > 0 ? alkali.substance : 'none';
}

function alkaliOf(kind: Kind, before: AlkaliGiven | null): AlkaliGiven | null {
  if (kind === 'unknown') return null;
  if (kind === 'none') return { substance: 'sodiumHydroxide', gramsPerKgSucrose: 0 };
  return { substance: kind, gramsPerKgSucrose: before?.gramsPerKgSucrose || usualGPerKg };
}
