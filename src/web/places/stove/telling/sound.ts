/** Plays tones by Web Audio. Call from a tap: browsers give sound to those alone. */
import { harmonics, levels, type Pulse, type Tone, tones } from './tones.ts';

const edgeS = 0.015;

export interface Sound {
  play(tone: Tone): void;
  /** After the device has taken sound away, as by a telephone call. */
  resume(): void;
  close(): void;
}

/** Undefined when it is refused; `onChange` says afterwards whether it runs. */
export async function createSound(onChange: (runs: boolean) => void): Promise<Sound | undefined> {
  try {
    const context = new AudioContext();
    await context.resume();
    if (context.state !== 'running') {
      void context.close();
      return undefined;
    }
    const wave = context.createPeriodicWave(new Float32Array(harmonics.length), Float32Array.from(harmonics));
    context.onstatechange = () => onChange(context.state === 'running');
    return {
      play: (tone) => schedule(context, wave, tone),
      resume: () => void context.resume().catch(() => undefined),
      close() {
        context.onstatechange = null;
        void context.close();
      },
    };
  } catch {
    return undefined;
  }
}

function schedule(context: AudioContext, wave: PeriodicWave, tone: Tone): void {
  for (const pulse of tones[tone]) sound(context, wave, pulse, levels[tone]);
}

function sound(context: AudioContext, wave: PeriodicWave, { atS, forS, hz }: Pulse, level: number): void {
  const from = context.currentTime + atS;
  const source = context.createOscillator();
  source.setPeriodicWave(wave);
  source.frequency.value = hz;
  const gain = context.createGain();
  gain.gain.setValueAtTime(0, from);
  gain.gain.linearRampToValueAtTime(level, from + edgeS);
  gain.gain.setValueAtTime(level, from + forS - edgeS);
  gain.gain.linearRampToValueAtTime(0, from + forS);
  source.connect(gain).connect(context.destination);
  source.start(from);
  source.stop(from + forS);
}
