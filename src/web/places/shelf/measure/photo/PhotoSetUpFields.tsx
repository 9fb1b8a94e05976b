/** What a picture does not show by itself: the dilution, the light, where the paper is, how much liquid the light passes. */
import { type LightKind, lightKinds } from '../../../../../core/colour/photo/viewer.ts';
import { type PhotoSetUp, paperPlaces } from '../../../../../core/lot/note.ts';
import { Choice } from '../../../../parts/Choice.tsx';
import { replaced, type Sheet } from '../../../../parts/entry.ts';
import { SheetFields } from '../../../../parts/SheetFields.tsx';
import { photoEntries } from './photoForm.ts';

interface FieldsProps {
  readonly sheet: Sheet<PhotoSetUp>;
  readonly onSheet: (sheet: Sheet<PhotoSetUp>) => void;
}

export const lightWords: Readonly<Record<LightKind, string>> = { daylight: 'daylight', lamp: 'a lamp' };
const paperWords = { behind: 'behind', below: 'below' } as const;
const seenFrom = { behind: 'the picture is taken from the side', below: 'the picture is taken from above' } as const;

export function PhotoSetUpFields({ sheet, onSheet }: FieldsProps) {
  const entries = photoEntries(sheet.good);
  return (
    <div className="shelf-fields">
      <SheetFields sheet={sheet} entries={entries} onSheet={onSheet} />
      <Choice
        label="White paper"
        value={sheet.good.paper}
        hint={seenFrom[sheet.good.paper]}
        options={paperPlaces.map((place) => [place, paperWords[place]] as const)}
        onChoose={(paper) => onSheet(replaced(sheet, { paper }))}
      />
      <Choice
        label="Light"
        value={sheet.good.light}
        options={lightKinds.map((kind) => [kind, lightWords[kind]] as const)}
        onChoose={(light) => onSheet(replaced(sheet, { light }))}
      />
    </div>
  );
}
