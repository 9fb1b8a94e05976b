/** Asks for the screen to be kept on, again whenever the page comes back to view (W3C Screen Wake Lock): asked, and never promised. */
import { useEffect, useState } from 'react';

export type ScreenState = 'off' | 'asked' | 'lost' | 'not available';

export function useScreenOn(wanted: boolean): ScreenState {
  const [state, setState] = useState<ScreenState>('off');
  useEffect(() => {
    if (!wanted) return setState('off');
    // Not there outside a secure context, whatever the types say.
    const wakeLock = navigator.wakeLock as WakeLock | undefined;
    if (!wakeLock) return setState('not available');
    let held: WakeLockSentinel | undefined;
    let stopped = false;
    const ask = async () => {
      if (document.visibilityState !== 'visible' || (held && !held.released)) return;
      try {
        const lock = await wakeLock.request('screen');
        if (stopped) return void lock.release();
        held = lock;
        lock.addEventListener('release', () => !stopped && setState('lost'));
        setState('asked');
      } catch {
        if (!stopped) setState('lost');
      }
    };
    void ask();
    document.addEventListener('visibilitychange', ask);
    return () => {
      stopped = true;
      document.removeEventListener('visibilitychange', ask);
      void held?.release();
    };
  }, [wanted]);
  return state;
}
