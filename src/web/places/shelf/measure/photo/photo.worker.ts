/** Reads pictures beside the page: it takes a third of a second and more. */
import { expose } from 'comlink';
import type { Picture } from '../../../../../core/colour/photo/patch.ts';
import { type PictureRead, readPicture } from '../../../../../core/colour/photo/readPicture.ts';

type Rest = Parameters<typeof readPicture> extends [Picture, ...infer Others] ? Others : never;

let picture: Picture | undefined;

const reader = {
  hold(next: Picture): void {
    picture = next;
  },
  read(...rest: Rest): PictureRead {
    if (!picture) throw new Error('no picture is held');
    return readPicture(picture, ...rest);
  },
};

export type PictureReader = typeof reader;

expose(reader);
