// A photo in, a picture small enough to keep out: at most so many px, and nothing in it of what a camera writes
// beside the image (place, time, owner).

interface Scaled {
  readonly image: Blob;
  readonly width: number;
  readonly height: number;
}

/** null where the file is no picture that this browser reads. */
export type ScalePicture = (file: Blob) => Promise<Scaled | null>;

/** px; of the longer side. */
const MOST = 1600;
const QUALITY = 0.85;

/** No picture is made larger. */
export function fitted(width: number, height: number): { width: number; height: number } {
  const by = Math.min(1, MOST / Math.max(width, height));
  return {
    width: Math.max(1, Math.round(width * by)),
    height: Math.max(1, Math.round(height * by)),
  };
}

export const scalePicture: ScalePicture = async (file) => {
  try {
    const photo = await createImageBitmap(file);
    const size = fitted(photo.width, photo.height);
    const canvas = new OffscreenCanvas(size.width, size.height);
    canvas.getContext("2d")?.drawImage(photo, 0, 0, size.width, size.height);
    photo.close();
    const webp = await canvas.convertToBlob({ type: "image/webp", quality: QUALITY });
    // What a browser cannot write it writes as a PNG, many times as large.
    const image =
      webp.type === "image/webp"
        ? webp
        : await canvas.convertToBlob({ type: "image/jpeg", quality: QUALITY });
    return { image, ...size };
  } catch {
    return null;
  }
};
