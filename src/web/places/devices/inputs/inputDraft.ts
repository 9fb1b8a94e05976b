/** A thermometer as it is typed in; the server says what of it can not be. */
import type { Input } from '../../../../api/input.ts';
import type { ReadingUnit } from '../../../../core/log/bodies.ts';
import type { bauds } from './inputWords.ts';

export interface InputDraft {
  /** own: by MQTT, to Umberpan's own broker. */
  readonly kind: 'mqtt' | 'own' | 'serial';
  readonly name: string;
  readonly probe: string;
  readonly unit: ReadingUnit;
  readonly everyS: string;
  readonly broker: string;
  readonly user: string;
  readonly password: string;
  readonly topic: string;
  readonly path: string;
  readonly goneTopic: string;
  readonly goneText: string;
  readonly port: string;
  readonly baud: (typeof bauds)[number][0];
  readonly pattern: string;
}

export const emptyDraft: InputDraft = {
  kind: 'mqtt',
  name: '',
  probe: 'pan',
  unit: 'Cel',
  everyS: '5',
  broker: '',
  user: '',
  password: '',
  topic: '',
  path: '',
  goneTopic: '',
  goneText: 'offline',
  port: '',
  baud: '9600',
  pattern: '{}',
};

export function inputOf(draft: InputDraft): Input {
  const { name, probe, unit } = draft;
  const declared = { name, probe, unit, everyS: Number(draft.everyS.replace(',', '.')), on: true };
  if (draft.kind === 'serial') {
    const { port, pattern } = draft;
    return { kind: 'serial', ...declared, port: port.trim(), baud: Number(draft.baud), pattern };
  }
  const broker =
    draft.kind === 'own'
      ? { broker: 'own', user: null, password: null }
      : { broker: draft.broker.trim(), user: draft.user || null, password: draft.password || null };
  return {
    kind: 'mqtt',
    ...declared,
    ...broker,
    topic: draft.topic.trim(),
    path: draft.path.trim(),
    goneTopic: draft.goneTopic.trim() || null,
    goneText: draft.goneText,
  };
}
