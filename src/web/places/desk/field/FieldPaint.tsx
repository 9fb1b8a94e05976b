/** The paint of the field on a canvas. */
import { memo, useLayoutEffect, useMemo, useRef } from 'react';
import type { Look } from '../../../../core/planning/aim.ts';
import type { ColourBand } from '../../../../core/planning/field/band.ts';
import { grainsFor, painted } from '../../../../core/planning/field/drawn/grains.ts';
import type { Planes } from '../../../../core/planning/field/drawn/planes.ts';

interface FieldPaintProps {
  readonly planes: Planes | undefined;
  readonly band: ColourBand | undefined;
  readonly look: Look;
  readonly width: number;
  readonly height: number;
}

/** From grain to grain, px of the page. */
const pitchPx = 3.5;
const mostPixels = 2;

export const FieldPaint = memo(function FieldPaint({ planes, band, look, width, height }: FieldPaintProps) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const scale = Math.min(mostPixels, window.devicePixelRatio);
  const grains = useMemo(
    () => grainsFor(Math.round(width * scale), Math.round(height * scale), pitchPx * scale),
    [width, height, scale],
  );
  useLayoutEffect(() => {
    const context = canvas.current?.getContext('2d');
    if (!context) return;
    if (!planes) {
      context.clearRect(0, 0, grains.width, grains.height);
      return;
    }
    const pixels = new Uint8ClampedArray(painted(grains, planes, band, look).buffer as ArrayBuffer);
    context.putImageData(new ImageData(pixels, grains.width, grains.height), 0, 0);
  }, [grains, planes, band, look]);
  return <canvas ref={canvas} width={grains.width} height={grains.height} style={{ width, height }} />;
});
