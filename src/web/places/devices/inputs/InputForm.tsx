/** A new thermometer: what it is called, what it sends, and where it is heard. */
import { useState } from 'react';
import { Choice } from '../../../parts/Choice.tsx';
import { Field } from '../../../parts/Field.tsx';
import { ProblemError } from '../../../records/answer.ts';
import { failureOf } from '../../../records/failureOf.ts';
import { emptyDraft, type InputDraft, inputOf } from './inputDraft.ts';
import { bauds, unitOptions } from './inputWords.ts';
import { useAddInput, usePorts } from './useInputs.ts';

const kinds = [
  ['mqtt', 'By an MQTT broker'],
  ['own', 'By MQTT, to Umberpan itself'],
  ['serial', 'At a serial port of the server'],
] as const;

interface PartProps {
  readonly draft: InputDraft;
  readonly set: (change: Partial<InputDraft>) => void;
  readonly refusals: Readonly<Record<string, string>>;
}

interface InputFormProps {
  /** Whether Umberpan runs with its own. */
  readonly hasBroker: boolean;
  readonly onDone: () => void;
}

export function InputForm({ hasBroker, onDone }: InputFormProps) {
  const [draft, setDraft] = useState(emptyDraft);
  const add = useAddInput();
  const refusals = refusalsOf(add.error);
  const set = (change: Partial<InputDraft>) => {
    add.reset();
    setDraft((before) => ({ ...before, ...change }));
  };
  const part = { draft, set, refusals };
  return (
    <form
      className="devices-form"
      onSubmit={(event) => {
        event.preventDefault();
        add.mutate(inputOf(draft), { onSuccess: onDone });
      }}
    >
      <Choice label="How it comes" value={draft.kind} options={kinds} onChoose={(kind) => set({ kind })} wide />
      <TextOf {...part} field="name" label="Name" hint="such as Pan, by radio" />
      <TextOf {...part} field="probe" label="Probe" hint="as the log names it" />
      <Choice label="It sends" value={draft.unit} options={unitOptions} onChoose={(unit) => set({ unit })} />
      <TextOf {...part} field="everyS" label="Every, s" hint="0.2 to 60" />
      {draft.kind === 'mqtt' && <BrokerPart {...part} />}
      {draft.kind === 'own' && !hasBroker && <NoBroker />}
      {draft.kind === 'serial' ? <SerialPart {...part} /> : <TopicPart {...part} />}
      <div className="devices-buttons wide">
        <button type="submit" className="main" disabled={add.isPending}>
          Listen to it
        </button>
        <button type="button" onClick={onDone}>
          Never mind
        </button>
      </div>
      <p role="status" className="wide">
        {add.error && failureOf(add.error, 'Not added')}
      </p>
    </form>
  );
}

function NoBroker() {
  return (
    <p className="wide">
      <strong>Umberpan runs without its broker now.</strong> Stop it and start it with{' '}
      <code>umberpan serve --lan --broker 1883</code>.
    </p>
  );
}

function BrokerPart(part: PartProps) {
  return (
    <>
      <TextOf {...part} field="broker" label="Broker" hint="mqtt://name or mqtts://name, with :port" wide />
      <TextOf {...part} field="user" label="User" hint="empty for none" />
      <TextOf {...part} field="password" label="Password" hint="not shown again" secret />
    </>
  );
}

function TopicPart(part: PartProps) {
  return (
    <>
      <TextOf {...part} field="topic" label="Topic" hint="such as kitchen/pan" wide />
      <TextOf
        {...part}
        field="path"
        label="Where in the message"
        hint="JSON path such as outer.temperature; empty: the message is the number"
        wide
      />
      <TextOf {...part} field="goneTopic" label="Topic of its will" hint="empty for none" />
      <TextOf {...part} field="goneText" label="Its will says" />
    </>
  );
}

function SerialPart({ draft, set, refusals }: PartProps) {
  const { data: ports = [] } = usePorts();
  const part = { draft, set, refusals };
  const found = ports.map(({ port }) => port).join(', ');
  return (
    <>
      <TextOf
        {...part}
        field="port"
        label="Port"
        hint={found ? `found: ${found}` : 'none found; such as /dev/ttyUSB0'}
        wide
      />
      <Choice label="Speed, baud" value={draft.baud} options={bauds} onChoose={(baud) => set({ baud })} />
      <TextOf {...part} field="pattern" label="A line of it" hint="{} is the number, * anything: T={} C" />
    </>
  );
}

interface TextOfProps extends PartProps {
  readonly field: Exclude<keyof InputDraft, 'kind' | 'unit' | 'baud'>;
  readonly label: string;
  readonly hint?: string;
  readonly wide?: boolean;
  readonly secret?: boolean;
}

function TextOf({ draft, set, refusals, field, label, hint, wide, secret }: TextOfProps) {
  return (
    <Field
      name={`input-${field}`}
      label={label}
      text={draft[field]}
      onText={(text) => set({ [field]: text })}
      hint={hint}
      refusal={refusals[field]}
      {...(wide && { wide })}
      {...(secret && { secret })}
    />
  );
}

function refusalsOf(error: Error | null): Readonly<Record<string, string>> {
  const errors = error instanceof ProblemError ? (error.problem.errors ?? []) : [];
  return Object.fromEntries(errors.map(({ field, message }) => [field, message]));
}
