/** Whether the page opens without the network, and whether entries are kept: found by trying, not by name. */
import { deleteDB, openDB } from 'idb';
import { useEffect, useState } from 'react';

export interface StoreFacts {
  readonly offline: 'ready' | 'next load' | 'not available';
  readonly entries: 'tested' | 'failed' | 'looking';
  /** Has the browser agreed to keep entries when room is short? */
  readonly lasting: 'yes' | 'no' | 'not asked' | 'not available';
}

export function useStoreFacts() {
  const [facts, setFacts] = useState<StoreFacts>({
    offline: 'not available',
    entries: 'looking',
    lasting: 'not available',
  });
  const found = (part: Partial<StoreFacts>) => setFacts((was) => ({ ...was, ...part }));
  // biome-ignore lint/correctness/useExhaustiveDependencies: looked up once
  useEffect(() => {
    void offlineNow().then((offline) => found({ offline }));
    void keepsEntries().then((keeps) => found({ entries: keeps ? 'tested' : 'failed' }));
    if (canLast()) void navigator.storage.persisted().then((yes) => found({ lasting: yes ? 'yes' : 'not asked' }));
  }, []);
  /** From a tap: some browsers ask their user. */
  const askToLast = async () => {
    const agreed = await navigator.storage.persist().catch(() => false);
    found({ lasting: agreed ? 'yes' : 'no' });
  };
  return { facts, askToLast };
}

/** Both are missing outside a secure context, whatever the types say. */
const canLast = (): boolean => typeof (navigator.storage as StorageManager | undefined)?.persist === 'function';
const workers = (): ServiceWorkerContainer | undefined => navigator.serviceWorker;

async function offlineNow(): Promise<StoreFacts['offline']> {
  const container = workers();
  if (container?.controller) return 'ready';
  const registration = await container?.getRegistration().catch(() => undefined);
  return registration ? 'next load' : 'not available';
}

const trial = 'umberpan-trial';

async function keepsEntries(): Promise<boolean> {
  try {
    const database = await openDB(trial, 1, { upgrade: (opened) => void opened.createObjectStore('entries') });
    await database.put('entries', 'kept', 'one');
    const kept = await database.get('entries', 'one');
    database.close();
    await deleteDB(trial);
    return kept === 'kept';
  } catch {
    return false;
  }
}
