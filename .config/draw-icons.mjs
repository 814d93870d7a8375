/** `npm run icons`: draws the program's icons, an outlined plot with a hatch, as SVG and PNG. */
import { writeFileSync } from "node:fs";
import { deflateSync } from "node:zlib";
import { repository } from "./repository.mjs";

const PAPER = [0xf6, 0xf3, 0xea];
const INK = [0x22, 0x30, 0x2e];
/** Corners of the plot in a square of side 1. */
const PLOT = [
  [0.16, 0.22],
  [0.8, 0.14],
  [0.86, 0.8],
  [0.2, 0.86],
];
const OUTLINE = 0.055;
const HATCH = 0.03;
const HATCH_EVERY = 0.13;
/** Points looked at along each side of a pixel. */
const SAMPLES = 4;

/** Every icon by its file name; `share` is how much of the square the drawing takes. */
export function drawIcons() {
  return new Map([
    ["icon.svg", Buffer.from(svg())],
    // For the tab: a drawing in SVG is laid out as a page of its own before the first picture.
    ["icon-64.png", png(64, 1)],
    ["icon-180.png", png(180, 1)],
    ["icon-192.png", png(192, 1)],
    ["icon-512.png", png(512, 1)],
    // Systems may cut a maskable icon down to a circle of four fifths of its width.
    ["icon-maskable-512.png", png(512, 0.7)],
  ]);
}

if (process.argv[1] === new URL(import.meta.url).pathname) {
  for (const [name, bytes] of drawIcons())
    writeFileSync(`${repository}src/app/public/${name}`, bytes);
}

function svg() {
  const hex = (colour) => `#${colour.map((part) => part.toString(16).padStart(2, "0")).join("")}`;
  const corners = PLOT.map((corner) => corner.map((value) => value * 100).join(",")).join(" ");
  const lines = [];
  for (let at = HATCH_EVERY; at < 2; at += HATCH_EVERY) {
    lines.push(`M${(at * 100).toFixed(0)} 0L0 ${(at * 100).toFixed(0)}`);
  }
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 100">
  <rect width="100" height="100" fill="${hex(PAPER)}"/>
  <clipPath id="plot"><polygon points="${corners}"/></clipPath>
  <path clip-path="url(#plot)" stroke="${hex(INK)}" stroke-width="${HATCH * 100}" d="${lines.join("")}"/>
  <polygon points="${corners}" fill="none" stroke="${hex(INK)}" stroke-width="${OUTLINE * 100}" stroke-linejoin="round"/>
</svg>
`;
}

/** Whether a point of the unit square is inked. */
function isInk(x, y) {
  let isInside = false;
  let nearest = Infinity;
  PLOT.forEach(([ax, ay], index) => {
    const [bx, by] = PLOT[(index + 1) % PLOT.length];
    if (ay > y !== by > y && x < ax + ((bx - ax) * (y - ay)) / (by - ay)) isInside = !isInside;
    const along = ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / ((bx - ax) ** 2 + (by - ay) ** 2);
    const share = Math.min(1, Math.max(0, along));
    nearest = Math.min(nearest, Math.hypot(x - ax - share * (bx - ax), y - ay - share * (by - ay)));
  });
  if (nearest <= OUTLINE / 2) return true;
  const steps = (x + y) / HATCH_EVERY;
  const offLine = (Math.abs(steps - Math.round(steps)) * HATCH_EVERY) / Math.SQRT2;
  return isInside && offLine <= HATCH / 2;
}

function png(size, share) {
  const rows = [];
  for (let row = 0; row < size; row += 1) {
    const line = Buffer.alloc(1 + size * 3);
    for (let column = 0; column < size; column += 1) {
      let inked = 0;
      for (let sample = 0; sample < SAMPLES * SAMPLES; sample += 1) {
        const x = (column + ((sample % SAMPLES) + 0.5) / SAMPLES) / size;
        const y = (row + (Math.floor(sample / SAMPLES) + 0.5) / SAMPLES) / size;
        if (isInk((x - 0.5) / share + 0.5, (y - 0.5) / share + 0.5)) inked += 1;
      }
      const weight = inked / SAMPLES ** 2;
      PAPER.forEach((paper, channel) => {
        line[1 + column * 3 + channel] = Math.round(paper + (INK[channel] - paper) * weight);
      });
    }
    rows.push(line);
  }
  const head = Buffer.alloc(13);
  head.writeUInt32BE(size, 0);
  head.writeUInt32BE(size, 4);
  // Eight bits each of red, green and blue.
  head.set([8, 2, 0, 0, 0], 8);
  return Buffer.concat([
    Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
    chunk("IHDR", head),
    chunk("IDAT", deflateSync(Buffer.concat(rows), { level: 9 })),
    chunk("IEND", Buffer.alloc(0)),
  ]);
}

function chunk(type, data) {
  const length = Buffer.alloc(4);
  length.writeUInt32BE(data.length);
  const body = Buffer.concat([Buffer.from(type, "latin1"), data]);
  const sum = Buffer.alloc(4);
  sum.writeUInt32BE(crc32(body));
  return Buffer.concat([length, body, sum]);
}

/** The check sum PNG wants (ISO 3309). */
function crc32(bytes) {
  let sum = 0xffffffff;
  for (const byte of bytes) {
    sum ^= byte;
    for (let bit = 0; bit < 8; bit += 1) sum = (sum >>> 1) ^ (sum & 1 ? 0xedb88320 : 0);
  }
  return (sum ^ 0xffffffff) >>> 0;
}
