/**
 * Sounds of the Stove: a soft tone for advice, and 3 + 2 pulses for what must be done now. Pulses of 500-1000 Hz with harmonics
 * carry through a fan (IEC 60601-1-8, Annex D); grouped patterns tell urgency.
 */
export type Pattern = 'advice' | 'act now';

interface Pulse {
  readonly atS: number;
  readonly forS: number;
  readonly hz: number;
}

const pulses: Readonly<Record<Pattern, readonly Pulse[]>> = {
  advice: [
    { atS: 0, forS: 0.18, hz: 523 },
    { atS: 0.26, forS: 0.18, hz: 659 },
  ],
  'act now': [0, 0.25, 0.5, 1, 1.25].map((atS) => ({ atS, forS: 0.15, hz: 880 })),
};

/** Strength of the fundamental and its harmonics. */
const harmonics = [0, 1, 0.5, 0.3, 0.15];
const loudness: Readonly<Record<Pattern, number>> = { advice: 0.12, 'act now': 0.4 };
const edgeS = 0.015;

export interface Sound {
  play(pattern: Pattern): void;
  close(): void;
}

/** Call from a tap: browsers give sound to those alone. Undefined when it is refused. */
export async function createSound(): Promise<Sound | undefined> {
  try {
    const context = new AudioContext();
    await context.resume();
    if (context.state !== 'running') return undefined;
    const wave = context.createPeriodicWave(
      Float32Array.from(harmonics, () => 0),
      Float32Array.from(harmonics),
    );
    return {
      play(pattern) {
        for (const pulse of pulses[pattern]) sound(context, wave, pulse, loudness[pattern]);
      },
      close: () => void context.close(),
    };
  } catch {
    return undefined;
  }
}

function sound(context: AudioContext, wave: PeriodicWave, { atS, forS, hz }: Pulse, level: number): void {
  const from = context.currentTime + atS;
  const tone = context.createOscillator();
  tone.setPeriodicWave(wave);
  tone.frequency.value = hz;
  const gain = context.createGain();
  gain.gain.setValueAtTime(0, from);
  gain.gain.linearRampToValueAtTime(level, from + edgeS);
  gain.gain.setValueAtTime(level, from + forS - edgeS);
  gain.gain.linearRampToValueAtTime(0, from + forS);
  tone.connect(gain).connect(context.destination);
  tone.start(from);
  tone.stop(from + forS);
}
