/** What is to be heard at this moment: alarms that sound, the loudest of them, and advice that is new. */
import type { Urgency } from '../../../../core/advice/advise.ts';
import { type AlarmId, alarmCatalogue, alarmIds, type SoundPattern } from '../../../../core/advice/alarms/catalogue.ts';
import type { Alarms } from '../../../../core/advice/alarms/engine.ts';

type States = Alarms['states'];

const loudestFirst: readonly SoundPattern[] = ['threeAndTwo', 'three', 'one'];

/**
 * Alarms that have sounded since the page last looked, loudest first. By when they sounded and not by who sounds now: the engine
 * may take several steps between two looks, and the page may look twice at one step.
 * @param before undefined: the page has just been opened, and only what sounds now is new to it
 */
export function newlySounded(before: States | undefined, { states, sounding }: Alarms): readonly AlarmId[] {
  const heard = alarmIds.filter((id) => {
    const { phase, soundedS } = states[id];
    if (phase !== 'new' && phase !== 'gone unseen') return false;
    return before ? soundedS !== null && soundedS !== before[id].soundedS : sounding.includes(id);
  });
  return loudFirst(heard);
}

/** After a mute: what has come and is on, and nobody has seen. */
export function stillUnseen(states: States): readonly AlarmId[] {
  return loudFirst(alarmIds.filter((id) => states[id].phase === 'new' && states[id].sounds > 0));
}

function loudFirst(ids: readonly AlarmId[]): readonly AlarmId[] {
  const loudness = (id: AlarmId): number => loudestFirst.indexOf(alarmCatalogue[id].sound);
  return ids.toSorted((a, b) => loudness(a) - loudness(b));
}

/** Advice is told when it asks for something else than before; what was on view when the page opened is not new. */
export function isNewAdvice(beforeKey: string | undefined, key: string, urgency: Urgency): boolean {
  return beforeKey !== undefined && key !== beforeKey && urgency !== 'go on';
}
