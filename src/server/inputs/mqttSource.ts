/** Listens to a thermometer by way of the user's own MQTT broker. */
import type { IClientOptions } from 'mqtt';
import type { MqttInput } from '../../api/input.ts';
import type { Source, SourceListener } from './source.ts';
import { valueAt } from './valueAt.ts';

const longestMessage = 4096;
const againMs = 3000;

export async function mqttSource(input: MqttInput, told: SourceListener): Promise<Source> {
  // Loaded by those who have such a thermometer alone.
  const { connect } = await import('mqtt');
  const { broker, goneTopic } = input;
  const topics = goneTopic === null ? [input.topic] : [input.topic, goneTopic];
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
  client.on('message', (topic, payload, { retain }) => hear(input, told, topic, payload, retain));
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

function hear(input: MqttInput, told: SourceListener, topic: string, payload: Buffer, retained: boolean) {
  if (payload.length > longestMessage)
    return told.passedOver(`a message of ${payload.length} bytes; up to ${longestMessage} are read`);
  const message = payload.toString('utf8');
  if (topic === input.goneTopic) {
    // Also when it was kept: a thermometer that was gone before is gone now.
    if (message.trim() !== input.goneText) return;
    if (!retained) told.value(message);
    return told.state('gone', `${topic} says: ${message}`);
  }
  // The broker gives it to whoever begins to listen; how old it is nobody knows.
  if (retained) return told.passedOver('a message that the broker had kept: it may be of any age');
  told.value(valueAt(message, input.path));
}
