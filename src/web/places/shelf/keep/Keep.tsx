/** How a lot keeps in a room of a temperature and a humidity: what it is now, what the air makes of it, and how to pack it. */

import { useState } from 'react';
import { keepingOf, type Room, roomRanges } from '../../../../core/lot/keep/keeping.ts';
import { type Sheet, typed } from '../../../parts/entry.ts';
import { plainEntry, quantityEntry } from '../../../parts/numberEntry.ts';
import { SheetField } from '../../../parts/SheetField.tsx';
import { useTemperatureUnit } from '../../../parts/TemperatureUnit.tsx';
import { degrees, type TemperatureUnit } from '../../../parts/temperature.ts';
import type { Shown } from '../shown.ts';
import { GlassLine } from './GlassLine.tsx';
import { airSays, packSays, soonestSays, standingSays } from './keepWords.ts';
import { rememberRoom, useRoom } from './room.ts';

export function Keep({ shown }: { readonly shown: Shown }) {
  const room = useRoom();
  const { unit } = useTemperatureUnit();
  const keeping = keepingOf(shown.known.figures, room);
  const { glassC } = keeping;
  const soonest = soonestSays(keeping, room);
  return (
    <section className="keep" aria-labelledby="lot-keep">
      <h2 id="lot-keep">Keep</h2>
      <RoomFields room={room} unit={unit} />
      <p>
        <strong>{standingSays(keeping)}</strong>
      </p>
      <GlassLine keeping={keeping} roomC={room.roomC} unit={unit} />
      <p className="small quiet">
        Turns from glass to gum at {degrees(glassC.low, unit)} to {degrees(glassC.high, unit)} (glass transition, 8 in
        10).
      </p>
      <p>{airSays(keeping, room)}</p>
      {soonest && <p className="small">{soonest}</p>}
      <p>{packSays(keeping)}</p>
      <details className="small quiet">
        <summary>Where this comes from</summary>
        <ul>
          <li>Glass transition: Gordon and Taylor’s rule with the constants of Roos 1993, ± 4 K.</li>
          <li>
            Water in balance with the air: the model’s water activity, fitted at high solids to coarse sorption data
            (Sloan and Labuza 1975).
          </li>
          <li>How fast: the most that still air can carry to a surface (Chilton and Colburn 1934).</li>
          <li>Hard, tacky, sticky: by the distance from the glass transition, set on the stages of candy (assumed).</li>
        </ul>
      </details>
    </section>
  );
}

function RoomFields({ room, unit }: { readonly room: Room; readonly unit: TemperatureUnit }) {
  const [texts, setTexts] = useState<Sheet<Room>['texts']>({});
  const sheet = { good: room, texts };
  const entries = {
    roomC: quantityEntry<Room, 'temperature'>({
      label: 'Kept at',
      range: roomRanges.roomC,
      dimension: 'temperature',
      unit,
      get: ({ roomC }) => roomC,
      set: (into, roomC) => ({ ...into, roomC }),
    }),
    humidity: plainEntry<Room>({
      label: 'Humidity of the air',
      unit: '%',
      scale: 100,
      range: roomRanges.humidity,
      get: ({ humidity }) => humidity,
      set: (into, humidity) => ({ ...into, humidity }),
    }),
  };
  function type(field: string, text: string) {
    const next = typed(sheet, entries, field, text);
    setTexts(next.texts);
    rememberRoom(next.good);
  }
  return (
    <div className="shelf-fields">
      {Object.keys(entries).map((field) => (
        <SheetField key={field} sheet={sheet} entries={entries} field={field} onText={type} />
      ))}
    </div>
  );
}
