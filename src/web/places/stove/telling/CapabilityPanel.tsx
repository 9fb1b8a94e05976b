/** What this device can do at the stove, tried before the heat is on. */
import { type ReactNode, useState } from 'react';
import { type Capability, type CapabilityName, capabilities, stateWords } from './capabilities.ts';
import type { Heard } from './settings.ts';
import { useStoreFacts } from './useStoreFacts.ts';
import type { Telling } from './useTelling.ts';
import './telling.css';

export function CapabilityPanel({ telling }: { readonly telling: Telling }) {
  const { settings, sound, voice, screen } = telling;
  const { facts, askToLast } = useStoreFacts();
  const canVibrate = 'vibrate' in navigator;
  const { heard, vibration } = settings;
  const lines = capabilities({
    ...facts,
    secure: isSecureContext,
    sound,
    heard,
    canVibrate,
    vibration,
    voice,
    screen,
  });
  const controls: Readonly<Record<CapabilityName, ReactNode>> = {
    sound: <SoundTest telling={telling} />,
    vibration: canVibrate && (
      <>
        <Switch label="Vibrate" on={vibration} onChange={(on) => telling.change({ vibration: on })} />
        {vibration && (
          <button type="button" onClick={telling.tryVibration}>
            Try it
          </button>
        )}
      </>
    ),
    voice: (
      <>
        <Switch label="Voice" on={settings.voice} onChange={(on) => telling.change({ voice: on })} />
        {voice === 'on' && (
          <button type="button" onClick={telling.trySaying}>
            Try it
          </button>
        )}
      </>
    ),
    screen: screen !== 'not available' && (
      <Switch label="Keep it on" on={settings.screen} onChange={(on) => telling.change({ screen: on })} />
    ),
    offline: null,
    entries: facts.entries === 'tested' && facts.lasting === 'not asked' && (
      <button type="button" onClick={() => void askToLast()}>
        Ask the browser to keep them
      </button>
    ),
  };
  return (
    <section className="capabilities" aria-labelledby="capabilities">
      <h2 id="capabilities">This device can</h2>
      <ul>
        {lines.map((line) => (
          <Line key={line.name} line={line}>
            {controls[line.name]}
          </Line>
        ))}
      </ul>
    </section>
  );
}

const marks = { tested: '●', asked: '◐', 'not tried': '○', off: '○', lost: '△', 'not available': '✕' } as const;

function Line({ line, children }: { readonly line: Capability; readonly children: ReactNode }) {
  const { title, state, words } = line;
  return (
    <li>
      <h3>{title}</h3>
      <p role="status">
        <strong>
          <span aria-hidden="true">{marks[state]}</span> {stateWords[state]}.
        </strong>{' '}
        {words}
      </p>
      {children && <div className="capability-acts">{children}</div>}
    </li>
  );
}

interface SwitchProps {
  readonly label: string;
  readonly on: boolean;
  readonly onChange: (on: boolean) => void;
}

function Switch({ label, on, onChange }: SwitchProps) {
  return (
    <label className="switch">
      <input type="checkbox" checked={on} onChange={(event) => onChange(event.target.checked)} />
      {label}
    </label>
  );
}

/** A page can't know how loud it is: it plays the real alarm at full gain, and asks. */
function SoundTest({ telling }: { readonly telling: Telling }) {
  const { sound, settings } = telling;
  const [asking, setAsking] = useState(false);
  const answer = (given: Heard['answer']) => {
    telling.change({ heard: { answer: given, day: today() } });
    setAsking(false);
  };
  const play = async () => {
    await telling.tryAlarm();
    setAsking(true);
  };
  return (
    <>
      <button type="button" onClick={() => void play()}>
        Play the alarm
      </button>
      {asking && sound === 'on' && (
        <fieldset className="heard">
          <legend>Did you hear it at the stove with the fan on?</legend>
          <button type="button" onClick={() => answer('yes')}>
            Yes, heard
          </button>
          <button type="button" onClick={() => answer('no')}>
            No
          </button>
        </fieldset>
      )}
      <Switch label="Soft tones for advice" on={settings.prompts} onChange={(on) => telling.change({ prompts: on })} />
    </>
  );
}

/** By the clock of this device: `2026-03-14`. */
function today(): string {
  const now = new Date();
  const two = (part: number) => String(part).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
