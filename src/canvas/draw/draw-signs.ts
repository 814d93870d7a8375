/** Small signs beside a code: what covers a planting, and that it is in flower. */
import type { Cover } from "../../core/model/plan.ts";
import type { Point } from "../../core/geometry/point.ts";
import { type Brush, stroke } from "./brush.ts";

/** Room a sign takes along the line of words, pixels. */
export const SIGN_PX = 15;
const HALF = 5;

/** Cage: a net. Bags: a tied bag. Hand: a flower taped shut, a cross in a ring. */
export function drawCoverSign(brush: Brush, { x, y }: Point, cover: Exclude<Cover, "none">): void {
  const { context, colours } = brush;
  context.beginPath();
  switch (cover) {
    case "cage":
      for (const step of [-HALF, 0, HALF]) {
        context.moveTo(x - HALF, y + step);
        context.lineTo(x + HALF, y + step);
        context.moveTo(x + step, y - HALF);
        context.lineTo(x + step, y + HALF);
      }
      break;
    case "bags":
      context.moveTo(x - 2, y - HALF);
      context.lineTo(x + 2, y - HALF);
      context.lineTo(x + HALF, y + HALF);
      context.lineTo(x - HALF, y + HALF);
      context.closePath();
      context.moveTo(x - 3, y - 2.5);
      context.lineTo(x + 3, y - 2.5);
      break;
    case "hand":
      context.arc(x, y, HALF, 0, Math.PI * 2);
      context.moveTo(x - 3, y - 3);
      context.lineTo(x + 3, y + 3);
      context.moveTo(x + 3, y - 3);
      context.lineTo(x - 3, y + 3);
      break;
  }
  stroke(brush, { colour: colours.ink, widthPx: 1.1 });
}

/** Six rays: open flowers. */
export function drawFlowerSign(brush: Brush, { x, y }: Point): void {
  const { context, colours } = brush;
  context.beginPath();
  for (let ray = 0; ray < 3; ray += 1) {
    const angle = (ray * Math.PI) / 3 + Math.PI / 6;
    const [dx, dy] = [Math.cos(angle) * 5.5, Math.sin(angle) * 5.5];
    context.moveTo(x - dx, y - dy);
    context.lineTo(x + dx, y + dy);
  }
  stroke(brush, { colour: colours.ink, widthPx: 1.6 });
}

/** A padlock on paper: the object is not moved, resized or deleted. */
export function drawLockSign(brush: Brush, { x, y }: Point): void {
  const { context, colours } = brush;
  context.beginPath();
  context.arc(x, y, 9, 0, Math.PI * 2);
  context.fillStyle = colours.sheet;
  context.fill();
  stroke(brush, { colour: colours.inkSoft, widthPx: 1 });
  context.beginPath();
  context.arc(x, y - 1.5, 2.6, Math.PI, 0);
  context.lineTo(x + 2.6, y);
  context.moveTo(x - 2.6, y - 1.5);
  context.lineTo(x - 2.6, y);
  stroke(brush, { colour: colours.ink, widthPx: 1.3 });
  context.beginPath();
  context.rect(x - 4, y - 0.5, 8, 5.5);
  context.fillStyle = colours.ink;
  context.fill();
}
