/** The tray's size by steppers, and what it stands on. */
import { Picks } from '../../../parts/Picks.tsx';
import { Stepper } from '../../../parts/Stepper.tsx';
import { bases, sideCm, type Tray } from './tray.ts';

interface TrayEntryProps {
  readonly tray: Tray;
  readonly thicknessM: number | undefined;
  readonly onTray: (tray: Tray) => void;
}

export function TrayEntry({ tray, thicknessM, onTray }: TrayEntryProps) {
  return (
    <section className="set-tray" aria-labelledby="set-tray">
      <h3 id="set-tray">The tray</h3>
      <div className="set-steppers">
        <Stepper
          label="Width, cm"
          value={tray.widthCm}
          steps={[1, 5]}
          range={[sideCm.least, sideCm.most]}
          onChange={(widthCm) => onTray({ ...tray, widthCm })}
        />
        <Stepper
          label="Length, cm"
          value={tray.lengthCm}
          steps={[1, 5]}
          range={[sideCm.least, sideCm.most]}
          onChange={(lengthCm) => onTray({ ...tray, lengthCm })}
        />
      </div>
      <Picks legend="It stands on" value={tray.base} options={bases} onPick={(base) => onTray({ ...tray, base })} />
      <p className="small quiet" role="status">
        {thicknessM !== undefined && `The slab is about ${(thicknessM * 1000).toFixed(0)} mm thick.`}
      </p>
    </section>
  );
}
