/** A picture's pixels out of its file, upright. What else the file says, such as where and when, is left behind with it. */

/** Longer side at most, pixels: more tells nothing more of an even region. */
const longest = 1600;
/** Shorter side at least: frames need room. */
const shortest = 80;

/** @throws Error in words when the browser can't read the file */
export async function decoded(file: Blob): Promise<ImageData> {
  const bitmap = await createImageBitmap(file).catch(() => {
    throw new Error('This file is no picture that this browser can read. JPEG, PNG and WebP are.');
  });
  const { width, height } = bitmap;
  if (Math.min(width, height) < shortest)
    throw new Error(`The picture has ${width} × ${height} pixels; allowed is ${shortest} and more each way.`);
  const scale = Math.min(1, longest / Math.max(bitmap.width, bitmap.height));
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(bitmap.width * scale));
  canvas.height = Math.max(1, Math.round(bitmap.height * scale));
  const context = canvas.getContext('2d', { willReadFrequently: true });
  if (!context) throw new Error('This browser gives no canvas to read a picture from.');
  context.drawImage(bitmap, 0, 0, canvas.width, canvas.height);
  bitmap.close();
  return context.getImageData(0, 0, canvas.width, canvas.height);
}
