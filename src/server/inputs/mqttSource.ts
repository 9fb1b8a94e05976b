/** Listens to a thermometer by way of the user's own MQTT broker, or of Umberpan's. */
import type { IClientOptions } from 'mqtt';
import type { MqttInput } from '../../api/input.ts';
import type { OwnBroker } from './ownBroker.ts';
import type { Source, SourceListener } from './source.ts';
import { valueAt } from './valueAt.ts';

const longestMessage = 4096;
const againMs = 3000;

/** @param own the server's own broker, if it was started with one */
export async function mqttSource(input: MqttInput, told: SourceListener, own: OwnBroker | undefined): Promise<Source> {
  const { goneTopic } = input;
  const topics = goneTopic === null ? [input.topic] : [input.topic, goneTopic];
  if (input.broker !== 'own') return clientOf(input, topics, told);
  if (!own) throw new Error('Umberpan was started without its own broker; start it with `serve --broker 1883`');
  told.state('waiting');
  const stop = own.listen(topics, (topic, message, from) => hear(input, told, { topic, message, from }));
  return { stop: async () => stop() };
}

async function clientOf(input: MqttInput, topics: string[], told: SourceListener): Promise<Source> {
  // Loaded by those who have such a thermometer alone.
  const { connect } = await import('mqtt');
  const { broker } = input;
  told.state('connecting');
  const client = connect(broker, optionsOf(input));
  client.on('connect', () => {
    client.subscribe(topics, { qos: 0 }, (error, granted) => {
      const refused = error || granted?.some(({ qos }) => qos > 2);
      if (refused) told.state('failing', `the broker does not let it listen to ${topics.join(' and ')}`);
      else told.state('waiting');
    });
  });
  client.on('error', (error) => told.state('failing', `${broker}: ${reasonOf(error)}`));
  client.on('offline', () => told.state('failing', `${broker} is not reached`));
  client.on('message', (topic, message, { retain }) => hear(input, told, { topic, message, retain }));
  return {
    async stop() {
      client.removeAllListeners('message');
      await client.endAsync(true);
    },
  };
}

function optionsOf({ user, password }: MqttInput): IClientOptions {
  return {
    ...(user !== null && { username: user }),
    ...(password && { password }),
    connectTimeout: 5000,
    reconnectPeriod: againMs,
  };
}

const reasons: Readonly<Record<string, string>> = {
  ENOTFOUND: 'there is no machine of that name',
  ECONNREFUSED: 'nothing answers at that port',
  EHOSTUNREACH: 'that machine is not reached',
  ETIMEDOUT: 'that machine does not answer',
};

function reasonOf({ code, message }: Error & { readonly code?: unknown }): string {
  return reasons[String(code)] ?? message;
}

interface Message {
  readonly topic: string;
  readonly message: Buffer;
  /** The broker had kept it. */
  readonly retain?: boolean;
  readonly from?: string | undefined;
}

function hear(input: MqttInput, told: SourceListener, { topic, message: bytes, retain, from }: Message) {
  if (bytes.length > longestMessage)
    return told.passedOver(`a message of ${bytes.length} bytes; up to ${longestMessage} are read`);
  const message = bytes.toString('utf8');
  if (topic === input.goneTopic) {
    // Also when it was kept: a thermometer that was gone before is gone now.
    if (message.trim() !== input.goneText) return;
    if (!retain) told.value(message, from);
    return told.state('gone', `${topic} says: ${message}`);
  }
  // The broker gives it to whoever begins to listen; how old it is nobody knows.
  if (retain) return told.passedOver('a message that the broker had kept: it may be of any age');
  told.value(valueAt(message, input.path), from);
}
