/** What of a reading is chosen from a few words: the instrument's scale, its correction, the wavelength, meter or strip. */
import { acidityMeans, type Reading, wavelengths } from '../../../../core/lot/note.ts';
import { Choice } from '../../../parts/Choice.tsx';

interface ChoicesProps {
  readonly reading: Reading;
  readonly onChange: (reading: Reading) => void;
}

export function MethodChoices({ reading, onChange }: ChoicesProps) {
  switch (reading.method) {
    case 'refractometer':
      return (
        <Choice
          wide
          label="Temperature"
          value={reading.compensated ? 'self' : 'here'}
          options={[
            ['here', 'corrected here, from 20 °C'],
            ['self', 'the instrument corrects (ATC)'],
          ]}
          onChoose={(by) => onChange({ ...reading, compensated: by === 'self' })}
        />
      );
    case 'hydrometer':
      return (
        <Choice
          label="Its scale"
          value={reading.scale}
          options={[
            ['gravity', 'gravity, 20/20'],
            ['brix', 'Brix or Plato, 20 °C'],
          ]}
          onChoose={(scale) => onChange({ ...reading, scale })}
        />
      );
    case 'acidity':
      return (
        <Choice
          label="By"
          value={reading.by}
          options={acidityMeans.map((means) => [means, means] as const)}
          onChoose={(by) => onChange({ ...reading, by })}
        />
      );
    case 'absorbance':
      return (
        <Choice
          label="Wavelength"
          value={String(reading.wavelengthNm)}
          options={wavelengths.map((nm) => [String(nm), `${nm} nm`] as const)}
          onChoose={(nm) => onChange({ ...reading, wavelengthNm: nm === '420' ? 420 : 430 })}
        />
      );
    case 'comparison':
    case 'photo':
      return null;
  }
}
