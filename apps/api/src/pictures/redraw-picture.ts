import { createHash } from 'node:crypto';
import sharp, { type Sharp } from 'sharp';
import { fieldProblem, RequestProblem } from '../problems/request-problem.ts';

const MOST_PIXELS = 50_000_000;
const LEAST_SIDE = 16;
const LONGEST_SIDE = 3_000;
const THUMBNAIL_SIDE = 480;
const LONGEST_S = 30;
/** A drawing beyond this is a photograph saved as PNG, and far smaller as JPEG. */
const MOST_PNG_BYTES = 3 * 1024 * 1024;
const TAKEN_FORMATS = ['jpeg', 'png', 'webp'];
const MEND = 'Send a JPEG, PNG or WebP, as cameras and drawing programs save them.';

// Only these three readers can be reached at all: whatever else a file is (SVG, PDF ...), nothing parses it.
sharp.block({ operation: ['VipsForeignLoad'] });
sharp.unblock({
  operation: ['VipsForeignLoadJpegBuffer', 'VipsForeignLoadPngBuffer', 'VipsForeignLoadWebpBuffer'],
});
// A request draws on one core and leaves nothing behind in memory.
sharp.concurrency(1);
sharp.cache(false);

export type RedrawnPicture = {
  sha256: string;
  mediaType: 'image/jpeg' | 'image/png';
  width: number;
  height: number;
  bytes: Uint8Array<ArrayBuffer>;
  thumbnail: Uint8Array<ArrayBuffer>;
};

function open(bytes: Uint8Array): Sharp {
  return sharp(bytes, { limitInputPixels: MOST_PIXELS, failOn: 'warning', sequentialRead: true });
}

async function readShape(bytes: Uint8Array) {
  if (bytes.length === 0) throw fieldProblem('file', 'is empty', MEND);
  const read = await open(bytes)
    .metadata()
    .catch((error: unknown) => {
      if (error instanceof Error && /exceeds pixel limit/.test(error.message))
        throw fieldProblem('file', 'has more than 50 million pixels', 'Make it smaller first.');
      throw fieldProblem('file', 'is no picture that can be read', MEND);
    });
  if (!TAKEN_FORMATS.includes(read.format)) throw fieldProblem('file', `is ${read.format}`, MEND);
  if (Math.min(read.width, read.height) < LEAST_SIDE)
    throw fieldProblem('file', `is only ${read.width} x ${read.height} pixels`, 'Send a larger picture.');
  if (read.width * read.height > MOST_PIXELS)
    throw fieldProblem('file', 'has more than 50 million pixels', 'Make it smaller first.');
  return read;
}

/** Upright, in sRGB, no longer than `side`; colour profile, place and camera data are left behind. */
function draw(bytes: Uint8Array, side: number): Sharp {
  return open(bytes)
    .autoOrient()
    .resize({ width: side, height: side, fit: 'inside', withoutEnlargement: true })
    .toColourspace('srgb')
    .timeout({ seconds: LONGEST_S });
}

const asPng = (image: Sharp) => image.png({ compressionLevel: 9, palette: false });
const asJpeg = (image: Sharp) =>
  image.flatten({ background: '#ffffff' }).jpeg({ quality: 86, chromaSubsampling: '4:4:4', mozjpeg: true });

/** Transparency is kept; a drawing stays sharp as PNG, a photograph stays small as JPEG. */
async function encode(bytes: Uint8Array, from: { format: string; hasAlpha: boolean }) {
  const isSeeThrough = from.hasAlpha && !(await open(bytes).stats()).isOpaque;
  if (isSeeThrough || from.format === 'png') {
    const drawn = await asPng(draw(bytes, LONGEST_SIDE)).toBuffer({ resolveWithObject: true });
    if (isSeeThrough || drawn.data.length <= MOST_PNG_BYTES) return { ...drawn, as: asPng, isPng: true };
  }
  const drawn = await asJpeg(draw(bytes, LONGEST_SIDE)).toBuffer({ resolveWithObject: true });
  return { ...drawn, as: asJpeg, isPng: false };
}

/**
 * Makes a picture anew from a file: what comes out was drawn here, whatever else the file may have carried. What it is
 * is read from its content, not from its name.
 * @throws RequestProblem input-invalid for anything that is no whole picture within the bounds
 */
export async function redrawPicture(file: Uint8Array): Promise<RedrawnPicture> {
  const { format, hasAlpha } = await readShape(file);
  try {
    const { data, info, as, isPng } = await encode(file, { format, hasAlpha });
    const thumbnail = await as(draw(file, THUMBNAIL_SIDE)).toBuffer();
    return {
      sha256: createHash('sha256').update(data).digest('hex'),
      mediaType: isPng ? 'image/png' : 'image/jpeg',
      width: info.width,
      height: info.height,
      bytes: Uint8Array.from(data),
      thumbnail: Uint8Array.from(thumbnail),
    };
  } catch (error) {
    if (error instanceof RequestProblem) throw error;
    throw fieldProblem(
      'file',
      `is a ${format.toUpperCase()} that is damaged or not whole`,
      'Open it in a picture program, save it anew and send that.',
    );
  }
}
