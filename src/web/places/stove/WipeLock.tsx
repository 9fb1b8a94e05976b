/**
 * Lets the screen be wiped without anything happening (TCH-7): all is out of reach of fingers but alarms, what has to be done now, and the
 * way out of it. Keys go on working: no cloth presses those.
 */
import { useRef, useState } from 'react';
import './wipeLock.css';

/** Nobody wipes this long in one place, ms. */
const holdMs = 1000;

export function WipeLock() {
  const [locked, setLocked] = useState(false);
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined);
  const letGo = () => clearTimeout(timer.current);
  const unlock = () => {
    letGo();
    setLocked(false);
  };
  if (!locked) {
    return (
      <p>
        <button type="button" onClick={() => setLocked(true)}>
          Lock to wipe the screen
        </button>
      </p>
    );
  }
  return (
    <>
      <div className="wipe-sheet" />
      <button
        type="button"
        className="main wipe-unlock"
        onPointerDown={() => {
          letGo();
          timer.current = setTimeout(unlock, holdMs);
        }}
        onPointerUp={letGo}
        onPointerLeave={letGo}
        onPointerCancel={letGo}
        // A click without a pointer comes from a key or a screen reader.
        onClick={({ detail }) => detail === 0 && unlock()}
      >
        Locked for wiping. Hold here for a second to unlock
      </button>
    </>
  );
}
