/** The units chosen for the Glass, remembered by this browser. */
import { useState } from 'react';
import { keep, kept } from '../../parts/browserStorage.ts';
import type { GlassUnits } from './shown.ts';

const key = 'umberpan.glass.units';
const usual: GlassUnits = { volume: 'L', gravity: 'SG', colour: 'EBC' };

export function useGlassUnits() {
  const [units, setUnits] = useState<GlassUnits>(remembered);
  const choose = (change: Partial<GlassUnits>) => {
    const chosen = { ...units, ...change };
    keep(key, Object.values(chosen).join('|'));
    setUnits(chosen);
  };
  return { units, choose };
}

function remembered(): GlassUnits {
  const [volume, gravity, colour] = (kept(key) ?? '').split('|');
  return {
    volume: volume === 'gal' || volume === 'imp gal' ? volume : usual.volume,
    gravity: gravity === 'P' ? 'P' : usual.gravity,
    colour: colour === 'SRM' ? 'SRM' : usual.colour,
  };
}
