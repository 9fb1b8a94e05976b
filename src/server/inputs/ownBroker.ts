/**
 * A broker of Umberpan's own, for who has none: thermometers publish to it, and Umberpan alone listens. It hands nothing on,
 * keeps nothing, and whoever reaches it from the network shows a thermometer's token as password.
 */
import type { EventEmitter } from 'node:events';
import type { AddressInfo, Server, Socket } from 'node:net';
import { createServer as createPlain } from 'node:net';
import { createServer as createEncrypted } from 'node:tls';
import type { AuthenticateError, Client, PublishPacket } from 'aedes';
import type { Devices } from '../devices/devices.ts';
import { isLoopbackAddress } from '../guards/loopback.ts';
import { writeRate } from '../guards/writeRate.ts';

/** @param from the device whose token was shown; undefined for this machine itself */
type Ear = (topic: string, message: Buffer, from: string | undefined) => void;

export interface OwnBroker {
  readonly port: number;
  readonly encrypted: boolean;
  /** Tells what is published to these topics, until the function returned is called. */
  listen(topics: readonly string[], ear: Ear): () => void;
  stop(): Promise<void>;
}

export interface BrokerWish {
  readonly host: string;
  /** 0 lets the system choose. */
  readonly port: number;
  /** Told once it listens. */
  readonly opened?: (broker: OwnBroker) => void;
}

interface Parts extends BrokerWish {
  readonly tls: { readonly key: string; readonly cert: string } | undefined;
  readonly devices: Devices;
  readonly nowMs: () => number;
  readonly warn: (problem: unknown, message: string) => void;
}

/** More than any kitchen has. */
const mostClients = 50;
const connectMs = 5000;
/** Unread so far, of one packet: no thermometer writes as much, bytes. Above what a socket reads ahead by itself. */
const mostUnread = 256 * 1024;

/** @throws what listening throws, such as EADDRINUSE */
export async function openBroker({ host, port, opened, tls, devices, nowMs, warn }: Parts): Promise<OwnBroker> {
  // Loaded by those who want a broker alone.
  const { Aedes } = await import('aedes');
  const ears = new Map<string, Set<Ear>>();
  const devicesOf = new WeakMap<Client, string>();
  const packetEnds = new WeakMap<object, () => void>();
  const noteEnd = ({ conn }: Client) => packetEnds.get(conn)?.();
  const mayWrite = writeRate(nowMs);

  const aedes = await Aedes.createBroker({
    connectTimeout: connectMs,
    maxInflightInbound: 10,
    preConnect(client, packet, done) {
      noteEnd(client);
      // A session that outlives its connection would be kept for clients that never come back.
      packet.clean = true;
      done(null, true);
    },
    authenticate(client, _, password, done) {
      deviceOf(client.conn as Socket, password?.toString('utf8'), devices).then(
        (device) => {
          if (device === undefined) return done(refused(), false);
          if (device !== thisMachine) {
            devicesOf.set(client, device);
            const forget = devices.whenOut(device, () => client.close());
            client.conn.once('close', forget);
          }
          done(null, true);
        },
        (error) => done(error, false),
      );
    },
    authorizePublish(client, packet, done) {
      if (!client) return done(new Error('A will of nobody.'));
      noteEnd(client);
      const from = devicesOf.get(client);
      if (packet.topic.startsWith('$')) return done(new Error('Such topics are the broker’s own.'));
      if (!mayWrite(from ?? thisMachine)) return done(new Error('Too much is published at a time.'));
      // Nothing is kept for who comes later: nobody comes.
      packet.retain = false;
      for (const ear of ears.get(packet.topic) ?? []) ear(packet.topic, bytesOf(packet), from);
      done();
    },
    // Granted to nobody: what one thermometer sends is not told to another.
    authorizeSubscribe: (_, __, done) => done(null, null),
  });
  (aedes as EventEmitter).on('error', (error) => warn(error, 'The MQTT broker failed'));

  aedes.on('ping', (_, client) => noteEnd(client));

  /** Also of those that have not signed in, whom the broker's own list leaves out. */
  const sockets = new Set<Socket>();
  const take = (socket: Socket) => {
    sockets.add(socket);
    socket.once('close', () => sockets.delete(socket));
    packetEnds.set(socket, limitPackets(socket));
    aedes.handle(socket);
  };
  const server: Server = tls ? createEncrypted(tls, take) : createPlain(take);
  server.maxConnections = mostClients;
  try {
    await listening(server, host, port);
  } catch (error) {
    await closed(aedes);
    throw error;
  }

  const own: OwnBroker = {
    port: (server.address() as AddressInfo).port,
    encrypted: tls !== undefined,
    listen(topics, ear) {
      for (const topic of topics) ears.set(topic, (ears.get(topic) ?? new Set()).add(ear));
      return () => topics.forEach((topic) => void ears.get(topic)?.delete(ear));
    },
    async stop() {
      server.close();
      await closed(aedes);
      for (const socket of sockets) socket.destroy();
    },
  };
  opened?.(own);
  return own;
}

const thisMachine = 'this machine';

/** As over HTTP: this machine needs no token, and one that is shown has to count. */
async function deviceOf(socket: Socket, password: string | undefined, devices: Devices): Promise<string | undefined> {
  if (password === undefined) return isLoopbackAddress(socket.remoteAddress) ? thisMachine : undefined;
  const device = await devices.ofToken(password);
  return device?.role === 'probe' ? device.id : undefined;
}

/** Return code 4 of MQTT 3.1.1, section 3.2.2.3: bad user name or password. */
function refused(): AuthenticateError {
  return Object.assign(new Error('A token of a thermometer is wanted as password.'), { returnCode: 4 });
}

function bytesOf({ payload }: PublishPacket): Buffer {
  return typeof payload === 'string' ? Buffer.from(payload) : payload;
}

/**
 * A packet is kept until it is whole, however long it says that it is: up to 256 MB (MQTT 3.1.1, section 2.2.3). Who sends
 * too much without ending one is cut off.
 *
 * @returns to be called at each packet that ended
 */
function limitPackets(socket: Socket): () => void {
  let ended = 0;
  socket.on('readable', () => {
    if (socket.bytesRead - ended > mostUnread) socket.destroy();
  });
  return () => {
    ended = socket.bytesRead;
  };
}

function listening(server: Server, host: string, port: number): Promise<void> {
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, host, () => {
      server.off('error', reject);
      resolve();
    });
  });
}

function closed(aedes: { close(done: () => void): void }): Promise<void> {
  return new Promise((resolve) => aedes.close(resolve));
}
