/** A cook as the page is told of it: advice after each change, what is open, advice put aside, and what is new since it was last told. */
import { type Advice, situationOf } from '../../../core/advice/advise.ts';
import { readingDoubt } from '../../../core/advice/alarms/readingDoubt.ts';
import { lastReadS } from '../../../core/advice/alarms/signs.ts';
import type { Belief } from '../../../core/advice/followed.ts';
import type { LiveCook } from '../../../core/advice/liveCook.ts';
import { deedNames, type OpenDeeds, openDeeds } from '../../../core/advice/openDeeds.ts';
import { isBegun } from '../../../core/advice/progress.ts';
import type { AnyEntry } from '../../../core/log/corrections.ts';
import { furthestApart } from '../../../core/log/probesApart.ts';
import { pouredOf } from '../../../core/lot/yield.ts';
import type { Deed, TimedDeed } from '../../../core/pan/steps.ts';
import { deedOf } from '../../../core/twin/toldByLog.ts';
import {
  type Ahead,
  aheadOf,
  believedAt,
  type LastReading,
  type NewRows,
  rowOf,
  type Told,
  type View,
} from './view.ts';

export interface Sitting {
  /** Something was heard, or the twin has moved: advice and outlook are made anew. */
  look(): void;
  asksForAct(): boolean;
  isOpen(deed: Deed): boolean;
  putAside(): void;
  /** The moment, and what is new since the last time. */
  told(turn: number, timeS: number): Omit<Told, 'pace' | 'reveal'>;
}

/** Advice put aside comes back after this, if it still holds, s. */
const asideS = 60;
/** A reading that came in just now ends a silence, though its alarm lasts a little longer, s. */
const overdueS = 12;

export function createSitting(cook: LiveCook): Sitting {
  const { followed } = cook;
  let asideUntilS = -1;
  let asideKind: Advice['kind'] | undefined;
  let advice = cook.advice();
  let open: OpenDeeds = openDeeds(situationOf(followed));
  let ahead: Ahead = aheadOf(followed);
  let aheadTold = false;
  let toldBeliefs: readonly Belief[] = [];
  let poured: View['poured'];
  let nowS = 0;

  const begun = (): boolean => isBegun(followed.progress) || followed.twin.notch > 0;
  const aside = (): boolean => nowS < asideUntilS && advice.kind === asideKind && advice.kind !== 'off the heat';

  function newRows(): NewRows {
    const { beliefs } = followed;
    const known = Math.min(toldBeliefs.length, beliefs.length);
    let from = 0;
    while (from < known && toldBeliefs[from] === beliefs[from]) from++;
    toldBeliefs = [...beliefs];
    return { from, rows: beliefs.slice(from).map(rowOf) };
  }

  /** By the twin's own forecast: a reading that puts the twin right is no trend of the pan. */
  function trendCPerMin(): number {
    const [now, soon] = ahead.temperatureC;
    return now && soon ? ((soon.mid - now.mid) / ahead.everyS) * 60 : 0;
  }

  function lastReading(): LastReading | undefined {
    const entry = cook.state.believed.at(-1);
    if (!entry) return undefined;
    const { probe, valueC, quality } = entry.body;
    const { reading } = followed.beliefs.findLast((belief) => belief.reading) ?? {};
    const used = reading?.taken.used;
    const otherUnit = reading && used === false ? readingDoubt(reading.taken, reading.valueC).otherUnit : undefined;
    return { id: entry.id, probe, valueC, atS: entry.timeS, byHand: quality === 'byHand', used, otherUnit };
  }

  function view(timeS: number): View {
    const { progress, twin, beliefs } = followed;
    const last = beliefs[beliefs.length - 1] as Belief;
    return {
      timeS,
      begun: begun(),
      reading: lastReading(),
      lastReadS: lastReadS(cook.state),
      overdue: cook.alarms.states.probeLost.on && timeS - (cook.state.believed.at(-1)?.timeS ?? 0) > overdueS,
      apart: cook.alarms.states.probesApart.on ? furthestApart(cook.state.believed, timeS) : undefined,
      believedC: progress.poured ? last.believedC : believedAt(timeS, last.believedC, ahead),
      trendCPerMin: trendCPerMin(),
      notch: twin.notch,
      progress,
      advice,
      aside: aside(),
      unseen: last.unseen,
      open,
      alarms: cook.alarms,
      poured,
    };
  }

  /** Once: the twin stands still after the pour. */
  function pouredNow(): View['poured'] {
    if (!followed.progress.poured) return undefined;
    const { twin, charge, kit } = followed;
    return { atS: twin.timeS, sugar: pouredOf(twin.members, charge, kit.roomC) };
  }

  return {
    look() {
      poured = pouredNow();
      if (poured) return;
      advice = cook.advice();
      open = openDeeds(situationOf(followed));
      ahead = aheadOf(followed);
      aheadTold = false;
    },
    asksForAct: () => advice.deeds.length > 0 && !aside(),
    isOpen(deed) {
      if (advice.deeds.some((each) => same(each, deed))) return true;
      if (!begun()) return deed.kind === 'heat' && deed.notch <= (followed.steps[0]?.approachNotch ?? 0);
      return deedNames.some((name) => open[name].open && same(open[name].deed, deed));
    },
    putAside() {
      asideUntilS = nowS + asideS;
      asideKind = advice.kind;
    },
    told(turn, timeS) {
      nowS = timeS;
      const told = { ahead: aheadTold ? undefined : ahead };
      aheadTold = true;
      return { turn, view: view(timeS), newRows: newRows(), deeds: deedsOf(cook), entries: entriesOf(cook), ...told };
    },
  };
}

function deedsOf({ state }: LiveCook): TimedDeed[] {
  return state.deeds.flatMap((entry) => {
    const deed = deedOf(entry);
    return deed ? [{ timeS: entry.timeS, deed }] : [];
  });
}

/** What people did and said, without what thermometers send. */
function entriesOf({ state }: LiveCook): AnyEntry[] {
  const byHand = state.readings.filter(({ body }) => body.quality === 'byHand');
  const all: AnyEntry[] = [
    ...state.deeds,
    ...byHand,
    ...state.answers,
    ...state.probeUnits,
    ...state.measurements,
    ...state.remarks,
  ];
  return all.sort((a, b) => a.trueMs - b.trueMs);
}

function same(a: Deed, b: Deed): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}
