/** What a picture comes to, read anew beside the page whenever a frame, the light or what the phone was taught has changed and rests. */
import { type Remote, wrap } from 'comlink';
import { useEffect, useState } from 'react';
import type { Frames } from '../../../../../core/colour/photo/frames.ts';
import type { Standard } from '../../../../../core/colour/photo/photoColour.ts';
import type { PictureRead } from '../../../../../core/colour/photo/readPicture.ts';
import type { LightKind } from '../../../../../core/colour/photo/viewer.ts';
import type { PictureReader } from './photo.worker.ts';

/** A frame that is still being dragged is not read, ms. */
const restMs = 200;

interface Asked {
  readonly frames: Frames;
  readonly light: LightKind;
  readonly standards: readonly Standard[];
}

/** @returns none while it is being read */
export function usePictureRead(picture: ImageData | undefined, asked: Asked | undefined): PictureRead | undefined {
  const [reader, setReader] = useState<Remote<PictureReader>>();
  const [answer, setAnswer] = useState<{ readonly to: string; readonly read: PictureRead }>();
  useEffect(() => {
    if (!picture) return;
    const worker = new Worker(new URL('./photo.worker.ts', import.meta.url), { type: 'module' });
    const own = wrap<PictureReader>(worker);
    const { width, height, data } = picture;
    void own.hold({ width, height, data });
    setReader(() => own);
    return () => {
      setReader(undefined);
      setAnswer(undefined);
      worker.terminate();
    };
  }, [picture]);

  const question = asked && JSON.stringify(asked);
  useEffect(() => {
    if (!reader || !question) return;
    let wanted = true;
    const timer = setTimeout(async () => {
      const { frames, light, standards } = JSON.parse(question) as Asked;
      const read = await reader.read(frames, light, standards);
      if (wanted) setAnswer({ to: question, read });
    }, restMs);
    return () => {
      wanted = false;
      clearTimeout(timer);
    };
  }, [reader, question]);
  return answer && answer.to === question ? answer.read : undefined;
}
