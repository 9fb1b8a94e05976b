/** The tray that hard sugar is cast on, by how thick the slab shall be. */
import { useId } from 'react';
import type { Account } from '../../../../core/planning/account.ts';
import { trayText } from './accountWords.ts';
import { Row } from './Row.tsx';

const slabsMm = ['3', '4', '5', '6', '8', '10', '15'] as const;

interface TrayRowProps {
  readonly tray: Account['tray'];
  readonly slabMm: string;
  readonly onSlab: (mm: string) => void;
}

export function TrayRow({ tray, slabMm, onSlab }: TrayRowProps) {
  const id = useId();
  return (
    <Row name="Tray" figure={tray && trayText(tray, Number(slabMm) / 1000)}>
      <span className="account-slab">
        <label htmlFor={id}>for a slab of</label>
        <select id={id} className="inline-pick" value={slabMm} onChange={({ target }) => onSlab(target.value)}>
          {slabsMm.map((mm) => (
            <option key={mm} value={mm}>
              {mm} mm
            </option>
          ))}
        </select>
      </span>
    </Row>
  );
}
