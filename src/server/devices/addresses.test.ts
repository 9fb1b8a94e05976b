import type { NetworkInterfaceInfo } from 'node:os';
import { hostname } from 'node:os';
import { expect, it } from 'vitest';
import { brokerAddresses, namesOnNetwork } from './addresses.ts';

const own = {
  lo: [{ address: '127.0.0.1', internal: true, family: 'IPv4' }],
  wifi: [
    { address: '192.168.1.20', internal: false, family: 'IPv4' },
    { address: 'fe80::1', internal: false, family: 'IPv6' },
  ],
} as unknown as NodeJS.Dict<NetworkInterfaceInfo[]>;

it('gives an address first, which works where no name does, and then the names that stay when it changes', () => {
  expect(namesOnNetwork('0.0.0.0', ['pan.home'], own)).toEqual(['192.168.1.20', 'pan.home', `${hostname()}.local`]);
  expect(namesOnNetwork('192.168.1.20', ['pan.home'], own)).toEqual(['192.168.1.20', 'pan.home']);
});

it('gives none while only this machine is served', () => {
  for (const host of ['localhost', '127.0.0.1', '::1']) expect(namesOnNetwork(host, ['pan.home'], own)).toEqual([]);
});

it('gives the same for a broker, by its own port', () => {
  const addresses = ['https://192.168.1.20:8327/', 'https://pan.home:8327/'];
  expect(brokerAddresses({ port: 1883, encrypted: true }, addresses)).toEqual([
    'mqtts://192.168.1.20:1883',
    'mqtts://pan.home:1883',
  ]);
  expect(brokerAddresses({ port: 1883, encrypted: false }, [])).toEqual(['mqtt://127.0.0.1:1883']);
});
