/** A rehearsal as it is shown: advice after each reading and deed, what is new to tell, advice put aside, and how it was led. */
import type { Advice } from '../../../core/advice/advise.ts';
import { deedNames, type OpenDeeds } from '../../../core/advice/openDeeds.ts';
import { type Rehearsal, readEveryS } from '../../../core/advice/rehearsal.ts';
import type { Kit } from '../../../core/pan/kit.ts';
import type { Charge, Deed, Step } from '../../../core/pan/steps.ts';
import { unseenRanges } from '../../../core/twin/unseen.ts';
import { type Revealing, revealingOf } from './revealing.ts';
import { type Ahead, aheadOf, believedOf, openNow, type Pace, type Row, rowOf, type Told } from './view.ts';

interface Parts {
  readonly rehearsal: Rehearsal;
  readonly kit: Kit;
  readonly steps: readonly Step[];
  readonly charge: Charge;
}

export interface LiveRehearsal {
  timeS(): number;
  begun(): boolean;
  poured(): boolean;
  asksForAct(): boolean;
  moveTo(timeS: number): void;
  perform(deeds: readonly Deed[]): void;
  putAside(): void;
  /** The moment, and what is new since the last time. */
  told(turn: number, pace: Pace): Told;
}

/** Advice put aside comes back after this, if it still holds, s. */
const asideS = 60;
/** The trend is taken over this many readings. */
const trendRows = 3;

export function createLiveRehearsal({ rehearsal, kit, steps, charge }: Parts): LiveRehearsal {
  const begun = (): boolean => rehearsal.deeds.length > 0;
  let readingAtS = 0;
  let asideUntilS = -1;
  let asideKind: Advice['kind'] | undefined;
  let unseen = unseenRanges(rehearsal.twin.members, charge);
  const trail = [believedOf(rehearsal).mid];
  let advice = adviceNow();
  let open: OpenDeeds = openNow(rehearsal, kit, steps);
  let rows: Row[] = [rowOf(rehearsal, unseen)];
  let ahead: Ahead | undefined = aheadOf(rehearsal, kit);
  let reveal: Revealing | undefined;
  let deedsTold = 0;

  function adviceNow(): Advice {
    if (!begun()) {
      // The pan is cold: the first thing to do is what the plan begins with.
      const start: Deed = { kind: 'heat', notch: steps[0].approachNotch };
      return { ...rehearsal.advice(), kind: 'steer', deeds: [start], urgency: 'act soon' };
    }
    const said = rehearsal.advice();
    const { notch } = rehearsal.twin;
    const undone = said.deeds.filter((deed) => deed.kind !== 'heat' || deed.notch !== notch);
    return {
      ...said,
      deeds: undone,
      urgency: undone.length === 0 && said.kind !== 'off the heat' ? 'go on' : calm(said),
    };
  }

  /** Below a band on the way up nothing is urgent: who is late loses only time. */
  function calm(said: Advice): Advice['urgency'] {
    const onTheWay = rehearsal.progress.inBandSinceS === undefined;
    const below = believedOf(rehearsal).mid < steps[rehearsal.progress.stepIndex].bandC[0];
    return said.kind === 'steer' && onTheWay && below ? 'act soon' : said.urgency;
  }

  function look(): void {
    advice = adviceNow();
    open = openNow(rehearsal, kit, steps);
  }

  function afterReading(): void {
    readingAtS = rehearsal.twin.timeS;
    unseen = unseenRanges(rehearsal.twin.members, charge);
    trail.push(believedOf(rehearsal).mid);
    rows.push(rowOf(rehearsal, unseen));
    look();
    ahead = aheadOf(rehearsal, kit);
  }

  function isOpen(deed: Deed): boolean {
    if (!begun()) return deed.kind === 'heat' && deed.notch <= steps[0].approachNotch;
    const advised = advice.deeds.some((each) => same(each, deed));
    return advised || deedNames.some((name) => open[name].open && same(open[name].deed, deed));
  }

  function performOne(deed: Deed): void {
    rehearsal.perform(deed);
    if (deed.kind === 'pour') reveal = revealingOf(rehearsal, kit, charge);
  }

  const aside = (): boolean =>
    rehearsal.timeS < asideUntilS && advice.kind === asideKind && advice.kind !== 'off the heat';

  return {
    timeS: () => rehearsal.timeS,
    begun,
    poured: () => rehearsal.progress.poured,
    asksForAct: () => advice.deeds.length > 0 && !aside(),
    moveTo(timeS) {
      const before = Math.floor(rehearsal.timeS / readEveryS);
      rehearsal.moveTo(timeS);
      if (Math.floor(timeS / readEveryS) > before) afterReading();
    },
    perform(wanted) {
      const allowed = wanted.filter(isOpen);
      for (const deed of allowed) performOne(deed);
      asideUntilS = -1;
      if (allowed.length === 0 || rehearsal.progress.poured) return;
      look();
      ahead = aheadOf(rehearsal, kit);
    },
    putAside() {
      asideUntilS = rehearsal.timeS + asideS;
      asideKind = advice.kind;
    },
    told(turn, pace) {
      const then = trail[Math.max(0, trail.length - 1 - trendRows)];
      const spanS = Math.min(trendRows, trail.length - 1) * readEveryS;
      const view = {
        timeS: rehearsal.timeS,
        begun: begun(),
        readingC: rehearsal.readingC,
        readingAtS,
        believedC: believedOf(rehearsal),
        trendCPerMin: spanS > 0 ? ((trail[trail.length - 1] - then) / spanS) * 60 : 0,
        notch: rehearsal.twin.notch,
        progress: rehearsal.progress,
        advice,
        aside: aside(),
        unseen,
        open,
        pace,
      };
      const told = { turn, view, rows, deeds: rehearsal.deeds.slice(deedsTold), ahead, reveal };
      rows = [];
      deedsTold = rehearsal.deeds.length;
      ahead = undefined;
      return told;
    },
  };
}

function same(a: Deed, b: Deed): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}
