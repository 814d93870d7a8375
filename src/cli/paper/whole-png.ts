/**
 * Whether the dots of a PNG can be unpacked: the PDF library finds out too late to say so. After
 * the W3C's Portable Network Graphics (Third Edition): chunks in 5.3, filters in 9.2, passes in 8.1.
 */
import { inflateSync } from "node:zlib";
import { bytesOfBase64 } from "../../core/model/picture-header.ts";
import type { Picture } from "../../core/model/plan.ts";

/** Samples in a dot for each colour type. */
const SAMPLES: ReadonlyMap<number, number> = new Map([
  [0, 1],
  [2, 3],
  [3, 1],
  [4, 2],
  [6, 4],
]);
/** First column and row of each of Adam7's passes, and the steps between. */
const PASSES = [
  [0, 0, 8, 8],
  [4, 0, 8, 8],
  [0, 4, 4, 8],
  [2, 0, 4, 4],
  [0, 2, 2, 4],
  [1, 0, 2, 2],
  [0, 1, 1, 2],
] as const;
const MOST_FILTER = 4;

/** Why a picture's dots cannot be unpacked; null when they can, or the picture is no PNG. */
export function pngFault(picture: Picture): string | null {
  const bytes = picture.mediaType === "image/png" ? bytesOfBase64(picture.data) : null;
  if (!bytes) return null;
  const file = Buffer.from(bytes.buffer);
  const bitsInDot = (SAMPLES.get(file[25] ?? 0) ?? 0) * (file[24] ?? 0);
  const size = { width: file.readUInt32BE(16), height: file.readUInt32BE(20), bitsInDot };
  const lines = lineLengths(size, file[28] === 1);
  const whole = lines.reduce((sum, length) => sum + length, 0);
  const dots = unpacked(packedDots(file), whole);
  if (!dots) return "dots that cannot be unpacked";
  if (dots.length < whole) return "fewer dots than it states";
  let at = 0;
  for (const length of lines) {
    if ((dots[at] ?? 0) > MOST_FILTER) return "lines of dots packed in a way there is not";
    at += length;
  }
  return null;
}

interface DotSize {
  readonly width: number;
  readonly height: number;
  readonly bitsInDot: number;
}

/** Bytes of each line, that of its filter included. */
function lineLengths({ width, height, bitsInDot }: DotSize, isInPasses: boolean): number[] {
  const passes = isInPasses ? PASSES : [[0, 0, 1, 1] as const];
  return passes.flatMap(([left, top, across, down]) => {
    const columns = Math.max(0, Math.ceil((width - left) / across));
    const rows = columns === 0 ? 0 : Math.max(0, Math.ceil((height - top) / down));
    return Array.from({ length: rows }, () => 1 + Math.ceil((columns * bitsInDot) / 8));
  });
}

function packedDots(file: Buffer): Buffer {
  const parts: Buffer[] = [];
  for (let at = 8; at + 12 <= file.length; at += 12 + file.readUInt32BE(at)) {
    const isDots = file.toString("latin1", at + 4, at + 8) === "IDAT";
    if (isDots) parts.push(file.subarray(at + 8, at + 8 + file.readUInt32BE(at)));
  }
  return Buffer.concat(parts);
}

function unpacked(packed: Buffer, length: number): Buffer | null {
  try {
    return inflateSync(packed, { maxOutputLength: length + 1_000_000 });
  } catch {
    return null;
  }
}
