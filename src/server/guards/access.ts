/** Who may do what: by the part of the API that an address belongs to. What is not named here is for keepers alone. */
import type { DeviceRole } from '../../api/device.ts';

/** `anybody`: also a device that was never let in. */
type Who = 'anybody' | readonly DeviceRole[];

interface Access {
  /** GET and HEAD. */
  readonly look: Who;
  /** Everything else. */
  readonly change: Who;
}

const keeper = ['keeper'] as const;
const household = ['keeper', 'cook'] as const;
const onlookers = ['keeper', 'cook', 'reader'] as const;
const everyDevice = ['keeper', 'cook', 'reader', 'probe'] as const;
const records: Access = { look: onlookers, change: household };
const open: Access = { look: 'anybody', change: keeper };

const accessTo: Readonly<Record<string, Access>> = {
  health: open,
  problems: open,
  schemas: open,
  'openapi.json': open,
  standing: open,
  authority: open,
  pairing: { look: keeper, change: 'anybody' },
  time: { look: everyDevice, change: keeper },
  readings: { look: keeper, change: ['keeper', 'cook', 'probe'] },
  book: records,
  cooks: records,
  plans: records,
  kits: records,
  lots: records,
  glasses: records,
  inputs: { look: household, change: keeper },
  workspace: { look: keeper, change: keeper },
  demo: { look: onlookers, change: keeper },
  devices: { look: keeper, change: keeper },
  invitations: { look: keeper, change: keeper },
};

/** What a guest may ask for who is let in for one cook: that cook, as it goes on and as it was. */
export const sharedRoutes: ReadonlySet<string | undefined> = new Set([
  '/api/cooks/:id',
  '/api/cooks/:id/events',
  '/api/cooks/:id/file',
  '/api/cooks/:id/live',
  '/api/time',
]);

/** @param path of the route, such as `/api/cooks/:id` */
export function areaOf(path: string): string | undefined {
  return /^\/api\/([^/?]+)/.exec(path)?.[1];
}

export function whoMay(method: string, area: string): Who {
  const access = accessTo[area];
  if (!access) return keeper;
  return method === 'GET' || method === 'HEAD' ? access.look : access.change;
}
