/**
 * A camera's notes put into a JPEG file: Exif as in CIPA DC-008 (JEITA CP-3451), an APP1 segment
 * with a TIFF structure: orientation and a GPS directory with a position.
 */

/** Degrees, minutes, seconds written into the notes. */
const NORTH = [50, 46, 12] as const;
const EAST = [7, 6, 48] as const;

/** Orientation 6: the first row of the picture is its right side. */
const TURNED_RIGHT = 6;

/** The same picture with camera's notes after its first two bytes. */
export function withCameraNotes(jpeg: Uint8Array): Uint8Array {
  const notes = exifSegment();
  const bytes = new Uint8Array(jpeg.length + notes.length);
  bytes.set(jpeg.subarray(0, 2), 0);
  bytes.set(notes, 2);
  bytes.set(jpeg.subarray(2), 2 + notes.length);
  return bytes;
}

function exifSegment(): Uint8Array {
  const tiff = new DataView(new ArrayBuffer(160));
  const entry = (at: number, tag: number, type: number, count: number, value: number) => {
    tiff.setUint16(at, tag);
    tiff.setUint16(at + 2, type);
    tiff.setUint32(at + 4, count);
    if (type === 3) tiff.setUint16(at + 8, value);
    else tiff.setUint32(at + 8, value);
  };
  // Big-endian header, first directory at 8.
  tiff.setUint16(0, 0x4d4d);
  tiff.setUint16(2, 42);
  tiff.setUint32(4, 8);
  tiff.setUint16(8, 2);
  entry(10, 0x0112, 3, 1, TURNED_RIGHT);
  entry(22, 0x8825, 4, 1, 38);
  // The GPS directory: latitude and longitude with their hemispheres.
  tiff.setUint16(38, 4);
  entry(40, 1, 2, 2, 0x4e00_0000);
  entry(52, 2, 5, 3, 100);
  entry(64, 3, 2, 2, 0x4500_0000);
  entry(76, 4, 5, 3, 124);
  [...NORTH, ...EAST].forEach((value, index) => {
    tiff.setUint32(100 + index * 8, value);
    tiff.setUint32(104 + index * 8, 1);
  });
  const name = new TextEncoder().encode("Exif\0\0");
  const bytes = new Uint8Array(4 + name.length + tiff.byteLength);
  new DataView(bytes.buffer).setUint16(0, 0xff_e1);
  new DataView(bytes.buffer).setUint16(2, bytes.length - 2);
  bytes.set(name, 4);
  bytes.set(new Uint8Array(tiff.buffer), 4 + name.length);
  return bytes;
}

/** Markers of the segments before the picture's own data, such as 0xE1 for a camera's notes. */
export function jpegSegments(jpeg: Uint8Array): readonly number[] {
  const markers: number[] = [];
  let at = 2;
  while (jpeg[at] === 0xff && jpeg[at + 1] !== 0xda) {
    markers.push(jpeg[at + 1] ?? 0);
    at += 2 + (jpeg[at + 2] ?? 0) * 256 + (jpeg[at + 3] ?? 0);
  }
  return markers;
}
