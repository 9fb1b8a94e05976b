/** The colour that is wished for: typed on one of the scales, as dark as a swatch, or like any colour; and what still counts as landed. */
import { Choice } from '../../../parts/Choice.tsx';
import { Field } from '../../../parts/Field.tsx';
import { type ColourScale, colourScales, readColour, readNear, written } from './colourScales.ts';
import { PickedColour } from './PickedColour.tsx';
import { Swatches } from './Swatches.tsx';

export interface ColourTyped {
  readonly scale: ColourScale;
  readonly text: string;
  readonly near: string;
  /** What a beer may need, EBC: holds for the colour that was sent with it alone, in place of what is near enough. */
  readonly beerEbc: readonly [number, number] | undefined;
}

interface WishedColourProps {
  readonly typed: ColourTyped;
  readonly onTyped: (typed: ColourTyped) => void;
}

const scales = (Object.keys(colourScales) as ColourScale[]).map((scale) => [scale, scale] as const);

export function WishedColour({ typed, onTyped }: WishedColourProps) {
  const { scale, text, near, beerEbc } = typed;
  const { a430, trouble } = readColour(text, scale);
  const wish = (next: string) => onTyped({ ...typed, text: next, beerEbc: undefined });
  const pick = (picked: number) => wish(written(picked, scale));
  /** A share stays as it is; so much on one scale is so much on another. */
  const rescaled = (next: ColourScale): string => {
    const { within } = readNear(near, scale);
    return within && 'a430' in within ? written(within.a430, next) : near;
  };
  return (
    <>
      <div className="wish-colour">
        <Field
          name="colour-wish"
          label={`Land at, ${scale} of a 10 % solution`}
          text={text}
          onText={wish}
          hint={beerEbc ? `the beer may need ${beerEbc[0]} to ${beerEbc[1]} EBC` : 'dose and holds follow from it'}
          trouble={trouble}
          keyboard="decimal"
        />
        <Choice
          label="Counted in"
          value={scale}
          options={scales}
          onChoose={(next) =>
            onTyped({
              ...typed,
              scale: next,
              near: rescaled(next),
              ...(a430 !== undefined && { text: written(a430, next) }),
            })
          }
        />
      </div>
      <Swatches scale={scale} a430={a430} onPick={pick} />
      <PickedColour a430={a430} onPick={pick} />
      <Field
        name="near-enough"
        label="Near enough, to either side"
        text={near}
        onText={(next) => onTyped({ ...typed, near: next, beerEbc: undefined })}
        hint={`as 10 %, or as much in ${scale}; the odds are told for it`}
        trouble={beerEbc ? undefined : readNear(near, scale).trouble}
      />
    </>
  );
}
