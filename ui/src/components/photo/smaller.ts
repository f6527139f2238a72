/** From this size a photo is made smaller before it is handed over. */
const LARGE_BYTES = 8_000_000;
const LONGEST = 1600;

/**
 * A large photo made smaller, so that it is handed over sooner; the app would
 * scale it anyway. What cannot be drawn is handed over as it is: the app says
 * what is wrong with it.
 */
export async function smaller(file: Blob): Promise<Blob> {
  if (file.size < LARGE_BYTES) return file;
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
