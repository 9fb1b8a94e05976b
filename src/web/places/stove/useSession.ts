import { useSyncExternalStore } from 'react';
import { sessionNow, subscribe } from './session.ts';

/** The rehearsal under way, as it changes. */
export const useSession = () => useSyncExternalStore(subscribe, sessionNow);
