/** The Glass: what sugars give a beer, how much of which it takes, priming, and how it tasted. */
import { useDeferredValue, useMemo } from 'react';
import { type Given, givenBy } from '../../../core/beer/given.ts';
import type { Glass } from '../../../core/beer/glass.ts';
import { WrongMark } from '../../parts/Field.tsx';
import { TemperatureUnitProvider } from '../../parts/TemperatureUnit.tsx';
import { useTitle } from '../../parts/useTitle.ts';
import { BeerForm } from './BeerForm.tsx';
import { Doses } from './Doses.tsx';

import { KeepingActs } from './KeepingActs.tsx';
import { KeptGlasses } from './KeptGlasses.tsx';
import { Look } from './Look.tsx';
import { Mind } from './Mind.tsx';
import { mineralsTold } from './mineralsTold.ts';
import { NumbersTable } from './NumbersTable.tsx';
import { Priming } from './Priming.tsx';
import { Reach } from './Reach.tsx';
import { Size } from './Size.tsx';
import { Swap } from './Swap.tsx';
import { Tastings } from './Tastings.tsx';
import { type GlassHand, useGlass } from './useGlass.ts';
import { useKept } from './useKept.ts';
import { useSentLot } from './useSentLot.ts';
import './glass.css';

export default function GlassPlace() {
  return (
    <TemperatureUnitProvider>
      <GlassPage />
    </TemperatureUnitProvider>
  );
}

type Told =
  | { readonly kind: 'given'; readonly glass: Glass; readonly given: Given }
  | { readonly kind: 'no'; readonly why: string };

function GlassPage() {
  const hand = useGlass();
  const keeping = useKept(hand.draft, hand.setDraft);
  useSentLot(hand, keeping);
  const { good } = hand.draft.sheet;
  // Four hundred draws take a moment: the field that is typed into comes first.
  const poured = useDeferredValue(hand.poured);
  const price = useDeferredValue(good.boughtPricePerKg);
  const told = useMemo(() => (poured.kind === 'glass' ? toldOf(poured.glass, price) : undefined), [poured, price]);
  useTitle(`${good.name} · Glass`);

  return (
    <main id="main" className="glass" data-old={hand.wrong ? '' : undefined}>
      <header className="glass-head">
        <h1>{good.name}</h1>
        <KeepingActs keeping={keeping} draft={hand.draft} possible={!hand.wrong} />
      </header>
      <div className="look">
        {hand.wrong && (
          <p className="glass-stale">A field can't be read: this is the last beer that could be reckoned.</p>
        )}
        {hand.poured.kind === 'unknown' && (
          <p className="glass-refused" role="alert">
            A lot in this glass is not known here: the server may be away. Nothing is reckoned without it.
          </p>
        )}
        {told?.kind === 'no' && (
          <p className="glass-refused" role="alert">
            <WrongMark /> No such beer: {told.why}
          </p>
        )}
        {told?.kind === 'given' && <Look glass={told.glass} given={told.given} units={hand.units} />}
      </div>
      <div className="glass-entries">
        <BeerForm hand={hand} />
        <Doses hand={hand} />
        <KeptGlasses glasses={keeping.glasses} openId={hand.draft.base?.id} onOpen={keeping.open} />
      </div>
      {told?.kind === 'given' && (
        <>
          <NumbersTable given={told.given} units={hand.units} minerals={mineralsTold(told.glass)} />
          <Mind glass={told.glass} given={told.given} />
        </>
      )}
      <div className="told">
        {told?.kind === 'given' && <Asking hand={hand} glass={told.glass} volumeL={told.given.beer.volumeL.mid} />}
        <Tastings hand={hand} kept={keeping.kept} />
      </div>
    </main>
  );
}

interface AskingProps {
  readonly hand: GlassHand;
  readonly glass: Glass;
  /** Of the beer, sugars in it. */
  readonly volumeL: number;
}

/** Questions the other way round. */
function Asking({ hand, glass, volumeL }: AskingProps) {
  return (
    <div className="asking">
      <Reach hand={hand} glass={glass} />
      <div className="asking-beside">
        <Swap hand={hand} glass={glass} />
        <Size hand={hand} glass={glass} volumeL={volumeL} />
      </div>
      <Priming hand={hand} volumeL={volumeL} />
    </div>
  );
}

function toldOf(glass: Glass, boughtPricePerKg: number | null): Told {
  try {
    return { kind: 'given', glass, given: givenBy(glass, { boughtPricePerKg: boughtPricePerKg ?? undefined }) };
  } catch (error) {
    if (error instanceof RangeError) return { kind: 'no', why: error.message };
    throw error;
  }
}
