/** Connects this page with a thermometer, where the browser can; where it can't, says so and what to do instead. */
import { useState, useSyncExternalStore } from 'react';
import { inUnit, type TemperatureUnit } from '../../../parts/temperature.ts';
import { faultWords } from '../inputs/inputWords.ts';
import { bluetoothHere, chooseBluetooth } from './bluetooth.ts';
import type { Instrument } from './instrument.ts';
import { type ListeningState, listeningNow, listenTo, stopListening, subscribe } from './listening.ts';
import { SerialChoice } from './SerialChoice.tsx';
import { serialHere } from './webSerial.ts';
import './connect.css';

export function ConnectInstrument({ unit }: { readonly unit: TemperatureUnit }) {
  const listening = useSyncExternalStore(subscribe, listeningNow);
  const [trouble, setTrouble] = useState('');
  const bluetooth = bluetoothHere();
  const serial = serialHere();
  const connect = (choosing: Promise<Instrument>) => {
    setTrouble('');
    choosing.then(listenTo, (error: Error) => setTrouble(`Not connected: ${error.message}`));
  };
  if (listening) return <Listening state={listening} unit={unit} />;
  return (
    <div className="connect-instrument">
      {bluetooth && (
        <button type="button" onClick={() => connect(chooseBluetooth(bluetooth))}>
          Bluetooth thermometer
        </button>
      )}
      {serial && <SerialChoice serial={serial} onChoose={connect} />}
      <p className="small quiet">{canWords(Boolean(bluetooth), Boolean(serial))}</p>
      <p role="status">{trouble}</p>
    </div>
  );
}

function Listening({ state, unit }: { readonly state: ListeningState; readonly unit: TemperatureUnit }) {
  const { name, reading, fault, lost } = state;
  const shown = reading?.valueC == null ? 'no temperature' : `${inUnit(reading.valueC, unit).toFixed(1)} °${unit}`;
  return (
    <div className="connect-instrument">
      <p role="status">
        <strong>{name}</strong>: {lost ? `${lost}; looking for it again` : reading ? shown : 'waiting for a reading'}
        {!lost && fault && ` (${faultWords[fault]})`}
      </p>
      <button type="button" onClick={stopListening}>
        Stop listening
      </button>
    </div>
  );
}

function canWords(bluetooth: boolean, serial: boolean): string {
  if (bluetooth || serial) return 'It sends while this page is open on this device.';
  if (!isSecureContext)
    return 'Over plain http no browser lets a page reach Bluetooth or a serial port. On the machine that serves, or with a certificate, it may.';
  return 'This browser reaches neither Bluetooth nor serial ports. Let the thermometer send to Umberpan itself.';
}
