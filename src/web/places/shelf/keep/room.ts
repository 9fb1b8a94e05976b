/** The room that sugars are kept in, as this browser remembers it. */
import { useSyncExternalStore } from 'react';
import { type Room, roomRanges } from '../../../../core/lot/keep/keeping.ts';
import { keep, kept } from '../../../parts/browserStorage.ts';
import { heldValue } from '../../../parts/heldValue.ts';

const key = 'umberpan.room';
/** A living room (common practice, no source). */
const usual: Room = { roomC: 21, humidity: 0.5 };
const held = heldValue(remembered());

function remembered(): Room {
  try {
    const { roomC, humidity } = JSON.parse(kept(key) ?? '{}') as Partial<Room>;
    return isWithin(roomC, roomRanges.roomC) && isWithin(humidity, roomRanges.humidity) ? { roomC, humidity } : usual;
  } catch {
    return usual;
  }
}

function isWithin(value: number | undefined, [least, most]: readonly [number, number]): value is number {
  return value !== undefined && value >= least && value <= most;
}

export function useRoom(): Room {
  return useSyncExternalStore(held.subscribe, held.now);
}

export function rememberRoom(room: Room): void {
  keep(key, JSON.stringify(room));
  held.become(room);
}
