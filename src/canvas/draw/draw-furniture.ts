/** Scale bar and north arrow, fixed in the corners. */
import { METRES_PER_FOOT, type LengthUnit } from "../../core/model/length.ts";
import { type Brush, turned } from "./brush.ts";
import { drawWords, wordsWidth } from "./draw-text.ts";

const BAR_MOST_PX = 190;
const BAR_PARTS = 4;

/** The longest of 1, 2, 5 times a power of ten whose length on the screen is at most the bar's. */
export function scaleBarLength(scale: number, unit: LengthUnit): number {
  const unitPx = (unit === "m" ? 1 : METRES_PER_FOOT) * scale;
  const most = BAR_MOST_PX / unitPx;
  const power = 10 ** Math.floor(Math.log10(most));
  return ([5, 2, 1].find((step) => step * power <= most) ?? 1) * power;
}

/** On a sheet lower than this, as above a phone's drawer, every strip of ground counts. */
const LOW_PX = 320;
const LOW_BAR_SHARE = 0.5;

/** With its figures and the grid's on paper of its own; on a low sheet a thin one along the foot. */
export function drawScaleBar(brush: Brush, unit: LengthUnit, gridText: string): void {
  if (brush.heightPx < LOW_PX) drawLowBar(brush, unit);
  else drawFullBar(brush, unit, gridText);
}

/** The bar alone and its length, on no paper: what lies beneath is seen. */
function drawLowBar(brush: Brush, unit: LengthUnit): void {
  const { context, view, heightPx, colours } = brush;
  const length = scaleBarLength(view.scale / LOW_BAR_SHARE, unit);
  const longPx = length * (unit === "m" ? 1 : METRES_PER_FOOT) * view.scale;
  const [left, top] = [8, heightPx - 9];
  for (const [part, colour] of [colours.ink, colours.sheet].entries()) {
    context.beginPath();
    context.rect(left + (part * longPx) / 2, top, longPx / 2, 4);
    context.fillStyle = colour;
    context.fill();
    context.strokeStyle = colours.ink;
    context.lineWidth = 1;
    context.setLineDash([]);
    context.stroke();
  }
  drawWords(
    brush,
    { x: left + longPx + 6, y: top + 1 },
    { face: "small", colour: colours.ink, text: `${length} ${unit}`, align: "left", hasHalo: true },
  );
}

function drawFullBar(brush: Brush, unit: LengthUnit, gridText: string): void {
  const { context, view, heightPx, colours } = brush;
  const length = scaleBarLength(view.scale, unit);
  const partPx = (length * (unit === "m" ? 1 : METRES_PER_FOOT) * view.scale) / BAR_PARTS;
  const left = 26;
  const top = heightPx - 28;
  const end = left + partPx * BAR_PARTS;
  const right = Math.max(end + 26, left + wordsWidth(brush, "plain", gridText));
  context.globalAlpha = 0.88;
  context.fillStyle = colours.sheet;
  context.fillRect(left - 14, top - 22, right - left + 24, 46);
  context.globalAlpha = 1;
  for (let part = 0; part < BAR_PARTS; part += 1) {
    context.beginPath();
    context.rect(left + part * partPx, top, partPx, 5);
    context.fillStyle = part % 2 === 0 ? colours.ink : colours.sheet;
    context.fill();
    context.strokeStyle = colours.ink;
    context.lineWidth = 1;
    context.setLineDash([]);
    context.stroke();
  }
  const words = { face: "small", colour: colours.ink } as const;
  const figure = (share: number) => String(Number((length * share).toPrecision(3)));
  drawWords(brush, { x: left, y: top - 9 }, { ...words, text: "0" });
  if (partPx * 2 > 44) {
    drawWords(brush, { x: left + partPx * 2, y: top - 9 }, { ...words, text: figure(0.5) });
  }
  drawWords(brush, { x: end, y: top - 9 }, { ...words, text: `${figure(1)} ${unit}` });
  drawWords(
    brush,
    { x: left, y: top + 15 },
    { face: "plain", colour: colours.inkSoft, text: gridText, align: "left" },
  );
}

/** @param upBearingDeg true bearing of the sheet's up direction */
export function drawNorthArrow(brush: Brush, upBearingDeg: number): void {
  const { context, widthPx, colours } = brush;
  const at = { x: widthPx - 34, y: 62 };
  const angle = (-upBearingDeg * Math.PI) / 180;
  turned(brush, at, angle, () => {
    context.lineJoin = "miter";
    context.beginPath();
    context.moveTo(0, -20);
    context.lineTo(7, 18);
    context.lineTo(0, 12);
    context.closePath();
    context.fillStyle = colours.sheet;
    context.fill();
    context.strokeStyle = colours.ink;
    context.lineWidth = 1;
    context.setLineDash([]);
    context.stroke();
    context.beginPath();
    context.moveTo(0, -20);
    context.lineTo(-7, 18);
    context.lineTo(0, 12);
    context.closePath();
    context.fillStyle = colours.ink;
    context.fill();
    context.stroke();
  });
  const away = { x: at.x + Math.sin(angle) * 30, y: at.y - Math.cos(angle) * 30 };
  drawWords(brush, away, { text: "N", face: "note", colour: colours.ink, hasHalo: true });
}
