/** Glasses that are kept, to open. */
import type { GlassRecord } from '../../../api/glass.ts';
import { dayText } from '../../parts/dayText.ts';

interface KeptGlassesProps {
  readonly glasses: readonly GlassRecord[];
  readonly openId: string | undefined;
  readonly onOpen: (glass: GlassRecord) => void;
}

export function KeptGlasses({ glasses, openId, onOpen }: KeptGlassesProps) {
  return (
    <section className="glass-kept" aria-labelledby="kept-glasses">
      <h2 id="kept-glasses">Kept glasses</h2>
      {glasses.length === 0 && <p className="quiet small">None yet.</p>}
      <ul>
        {glasses.map((record) => {
          const { id, glass, created } = record;
          const when = glass.bottledOn ? `bottled ${dayText(glass.bottledOn)}` : dayText(created);
          return (
            <li key={id}>
              <a
                href={`/glass/${id}`}
                aria-current={id === openId ? 'true' : undefined}
                onClick={(event) => {
                  if (event.metaKey || event.ctrlKey || event.shiftKey) return;
                  event.preventDefault();
                  onOpen(record);
                }}
              >
                <strong>{glass.name}</strong>
                <span className="small quiet">{when}</span>
              </a>
            </li>
          );
        })}
      </ul>
    </section>
  );
}
