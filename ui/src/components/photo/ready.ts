import type { AppError } from '../../backend/generated/types';

/** The app takes no more, bytes and pixels; a larger file is not even sent. */
const MOST_BYTES = 25_000_000;
const MOST_PIXELS = 40_000_000;
/** From this size a photo is made smaller before it is handed over, bytes. */
const LARGE_BYTES = 8_000_000;
const LONGEST = 1600;

/**
 * A photo as it is handed over. A large one is made smaller, so that it is
 * there sooner; the app would scale it anyway. What cannot be drawn, or has too
 * many pixels to be drawn here, is handed over as it is: the app says what is
 * wrong with it.
 */
export async function ready(file: Blob): Promise<Blob> {
  if (file.size > MOST_BYTES) {
    const args: AppError['say']['args'] = { megabytes: { as: 'number', value: MOST_BYTES / 1_000_000 } };
    const error: AppError = { code: 'photo_too_large', say: { key: 'error-photo-too-large', args } };
    throw error;
  }
  if (file.size < LARGE_BYTES || (await pixels(file)) > MOST_PIXELS) return file;
  try {
    const picture = await createImageBitmap(file);
    const scale = Math.min(1, LONGEST / Math.max(picture.width, picture.height));
    const canvas = document.createElement('canvas');
    canvas.width = Math.round(picture.width * scale);
    canvas.height = Math.round(picture.height * scale);
    canvas.getContext('2d')?.drawImage(picture, 0, 0, canvas.width, canvas.height);
    picture.close();
    const made = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/jpeg', 0.9));
    return made ?? file;
  } catch {
    return file;
  }
}

/** How many it has by its head, without end where none can be read: an image that is not shown is not decoded. */
function pixels(file: Blob): Promise<number> {
  const image = new Image();
  const url = URL.createObjectURL(file);
  return new Promise<number>((resolve) => {
    image.onload = () => resolve(image.naturalWidth * image.naturalHeight);
    image.onerror = () => resolve(Infinity);
    image.src = url;
  }).finally(() => URL.revokeObjectURL(url));
}
