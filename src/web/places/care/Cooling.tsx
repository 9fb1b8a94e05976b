/** Twenty minutes under cool running water, counted down: started by one tap, without a network, and still there after a reload. */
import { useEffect, useState } from 'react';
import { keep, kept } from '../../parts/browserStorage.ts';
import { coolingLeft, minutesAndSeconds, saidOf } from './cooling.ts';

const key = 'umberpan.care.cooling';

function keptStart(): number | undefined {
  const text = kept(key);
  return text ? Number(text) : undefined;
}

export function Cooling() {
  const [begun, setBegun] = useState(keptStart);
  const [now, setNow] = useState(Date.now);
  const left = coolingLeft(begun, now);
  const running = left !== undefined && left > 0;
  useEffect(() => {
    if (!running) return;
    const timer = setInterval(() => setNow(Date.now()), 250);
    return () => clearInterval(timer);
  }, [running]);

  const start = () => {
    const at = Date.now();
    keep(key, String(at));
    setBegun(at);
    setNow(at);
  };
  const end = () => {
    keep(key, '');
    setBegun(undefined);
  };
  return (
    <section className="cooling screen" aria-label="Cooling a burn">
      {left === undefined ? (
        <>
          <button type="button" className="main" onClick={start}>
            Burned: count 20 minutes
          </button>
          <p>Cool running water first. This counts the time, also without a network.</p>
        </>
      ) : (
        <>
          <span className="left" role="timer" aria-label="Time left under cool water">
            {minutesAndSeconds(left)}
          </span>
          <p>
            {running
              ? 'Keep it under cool running water. Heat off, pan aside.'
              : 'Twenty minutes are over. Cover it loosely, and see below who needs a doctor.'}
          </p>
          <button type="button" onClick={end}>
            {running ? 'Stop counting' : 'Done'}
          </button>
        </>
      )}
      <p className="unseen" role="status">
        {left !== undefined && saidOf(left)}
      </p>
    </section>
  );
}
