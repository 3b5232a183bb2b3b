import type { Sharp } from 'sharp';
import type { PhotographType, Picture } from '../store/index.ts';
import type { Result } from '../units/index.ts';
import { bad, good } from '../units/index.ts';

type Kind = PhotographType | 'phone' | 'none';

const textAt = (bytes: Uint8Array, from: number, to: number): string =>
  String.fromCharCode(...bytes.subarray(from, to));

/** Brands by which a file of the ISO base media format says that it holds a HEIF picture (ISO/IEC 23008-12). */
const phoneBrands = ['heic', 'heix', 'hevc', 'hevx', 'heim', 'heis', 'mif1', 'msf1'];

/** What a file is by its first bytes, so that no other decoder than these three ever sees what was sent. */
const kindOf = (bytes: Uint8Array): Kind => {
  if (bytes[0] === 0xff && bytes[1] === 0xd8 && bytes[2] === 0xff) return 'image/jpeg';
  if (textAt(bytes, 0, 8) === '\x89PNG\r\n\x1a\n') return 'image/png';
  if (textAt(bytes, 0, 4) === 'RIFF' && textAt(bytes, 8, 12) === 'WEBP') return 'image/webp';
  if (textAt(bytes, 4, 8) === 'ftyp' && phoneBrands.includes(textAt(bytes, 8, 12))) return 'phone';
  return 'none';
};

/** Longest side kept, pixels: print on an envelope a hand's breadth wide can still be read. */
const longestSide = 2400;
/** Most points a picture may have before it is opened: one of a few bytes can unfold to fill the memory. */
const mostMillions = 120;

const encoders: Readonly<Record<PhotographType, (image: Sharp) => Sharp>> = {
  'image/jpeg': (image) => image.jpeg({ quality: 84 }),
  'image/png': (image) => image.png({ compressionLevel: 9 }),
  'image/webp': (image) => image.webp({ quality: 84 }),
};

/** The library that opens pictures, whose compiled part is fetched when packages are installed. */
const loadSharp = async () => {
  try {
    return good((await import('sharp')).default);
  } catch (fault) {
    const reason = fault instanceof Error ? (fault.message.split('\n')[0] ?? '') : String(fault);
    return bad('server.no-picture-library', { reason });
  }
};

/**
 * The door for photographs. What comes in is opened, turned upright, made no larger than it needs to be
 * and written anew, so that nothing but the picture is kept: not where or when it was taken, nor by what.
 */
export const takeIn = async (bytes: Uint8Array): Promise<Result<Picture>> => {
  const kind = kindOf(bytes);
  if (kind === 'phone') return bad('server.picture-from-a-phone');
  if (kind === 'none') return bad('server.not-a-picture');
  const sharp = await loadSharp();
  if (!sharp.ok) return sharp;
  try {
    const image = sharp.value(bytes, { limitInputPixels: mostMillions * 1e6, failOn: 'error' });
    const upright = image
      .autoOrient()
      .resize({ width: longestSide, height: longestSide, fit: 'inside', withoutEnlargement: true });
    const { data, info } = await encoders[kind](upright).toBuffer({ resolveWithObject: true });
    return good({ mime: kind, bytes: data, width: info.width, height: info.height });
  } catch (fault) {
    // The library names no kinds of failure; this one it words so.
    if (fault instanceof Error && /pixel limit/i.test(fault.message))
      return bad('server.picture-too-many-points', { most: mostMillions });
    return bad('server.picture-damaged');
  }
};
