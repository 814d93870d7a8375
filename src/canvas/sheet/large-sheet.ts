/** Drawing what is at rest where it is thousands of things: fetched when a plan has so many. */
import { keptOf } from "../../core/checks/carried-run.ts";
import { betweenFrames } from "../../store/window/between-frames.ts";
import type { Brush } from "../draw/brush.ts";
import type { Labels } from "../draw/draw-items.ts";
import type { Box } from "../draw/draw-text.ts";
import { boxAround } from "../draw/ground-boxes.ts";
import { type GroundPicture, groundPicture } from "../draw/ground-picture.ts";
import { sheetItems } from "../scene/sheet-items.ts";
import { toSheet } from "../scene/viewport.ts";
import { type CrispDrawing, type CrispPicture, crispPicture, isSameView } from "./crisp-picture.ts";
import { dropLabels, prepareLabels } from "./many-labels.ts";
import {
  type Drawn,
  type Ground,
  drawUnder,
  groundSteps,
  restingSteps,
  wholeSteps,
  workOff,
} from "./resting-steps.ts";
import { restingItems, restingLabels } from "./sheet-labels.ts";

interface Pictures {
  readonly crisp: CrispPicture<Ground>;
  readonly picture: GroundPicture;
  /** The sharp drawing that the other was last made of. */
  kept: CrispDrawing<Ground> | null;
}

export interface LargeDrawing {
  /**
   * Shows a picture of it, sharp where there is one, and has one made where there is none.
   * @param isReady whether all words have their places
   * @returns whether it is sharp
   */
  readonly draw: (brush: Brush, ground: Ground, drawn: Drawn, isReady: boolean) => boolean;
  readonly stop: () => void;
}

/** @param onTurn called when there is more to show */
export function largeDrawing(onTurn: () => void): LargeDrawing {
  const pictures: Pictures = {
    crisp: crispPicture<Ground>(onTurn),
    picture: groundPicture(),
    kept: null,
  };
  return {
    draw: (brush, ground, drawn, isReady) => drawLarge(brush, pictures, ground, drawn, isReady),
    stop: pictures.crisp.stop,
  };
}

function drawLarge(
  brush: Brush,
  pictures: Pictures,
  ground: Ground,
  drawn: Drawn,
  isReady: boolean,
): boolean {
  const { crisp, picture } = pictures;
  const { isMoving } = drawn;
  if (isMoving) dropLabels();
  else if (!isReady) prepareLabels(brush, drawn);
  const of = { ground, labels: isReady ? restingLabels(brush, drawn) : null };
  const last = crisp.last();
  if (!isMoving && last && crisp.isDone(brush, of)) {
    crisp.show(brush);
    if (isReady && pictures.kept !== last) {
      picture.keep(last.brush, ground);
      pictures.kept = last;
      // What lies near what is asked for at the first press: it is reckoned before that.
      betweenFrames(() => void keptOf(drawn.result));
    }
    return true;
  }
  const isKnown = last !== null && isSameLayout(last.ground, ground);
  const isNear = !isMoving && isKnown && isSameView(last.brush, brush);
  if (isKnown && !isNear && !picture.shows(brush, ground)) {
    // Drawn before something was taken up or done, or at another size: until it rests that serves.
    patch(last, ground, drawn, isMoving ? "if few" : "all");
    picture.keep(last.brush, ground);
  }
  const isBare = !isMoving && !isNear && !picture.shows(brush, ground);
  if (isMoving) crisp.stop();
  else if (isReady || isBare) {
    crisp.begin(brush, of, (own) => wholeSteps(own, drawn), isBare && !isKnown);
    // A plan just opened is drawn at once where that does not take long.
    if (isBare && crisp.isDone(brush, of)) {
      crisp.show(brush);
      return true;
    }
  }
  // In other colours nothing made before can stand in.
  if (isBare && isKnown) {
    workOff(wholeSteps(brush, drawn));
    return true;
  }
  if (isNear) patch(last, ground, drawn, "all");
  if (isNear || isBare) crisp.show(brush);
  else {
    drawUnder(brush, drawn);
    picture.paint(brush, ground, (wide) => lightSteps(wide, drawn), performance.now());
  }
  return false;
}

const NO_LABELS: Labels = new Map();

/** Without words and lines: most of the time goes into them. */
function lightSteps(brush: Brush, drawn: Drawn): Generator<undefined, void> {
  return groundSteps(brush, drawn, restingItems(brush, drawn), { labels: NO_LABELS });
}

function isSameLayout(before: Ground, now: Ground): boolean {
  return before.plan.id === now.plan.id && before.layout.id === now.layout.id;
}

/** Around what was taken up, put down or changed so much is drawn anew, pixels: codes may stand there. */
const PATCH_PX = 28;
/** More than these are not patched one by one. */
const PATCHES_MOST = 40;

/**
 * Brings a drawing up to date where something was taken up or put down since it was made.
 * @param which `if few`: left as it is where drawing it would take longer than a frame
 */
function patch(
  last: CrispDrawing<Ground>,
  ground: Ground,
  drawn: Drawn,
  which: "all" | "if few",
): void {
  const before = last.patchedFor;
  if (before === ground) return;
  const ids = new Set([...before.live, ...ground.live]);
  const changed = [...ids].filter((id) => before.live.has(id) !== ground.live.has(id));
  const isMany = changed.length > PATCHES_MOST;
  if (isMany && which === "if few") return;
  last.patchedFor = ground;
  const { brush } = last;
  if (isMany) {
    brush.context.clearRect(0, 0, brush.widthPx, brush.heightPx);
    workOff(wholeSteps(brush, drawn));
    return;
  }
  const was = sheetItems(before.plan, before.layout, before.book).byId;
  const is = sheetItems(ground.plan, ground.layout, ground.book).byId;
  for (const id of changed) {
    for (const item of new Set([was.get(id), is.get(id)])) {
      if (item) drawAnew(brush, boxAround(brush, item), drawn);
    }
  }
}

/** Draws everything in a box again. */
function drawAnew(brush: Brush, box: Box, drawn: Drawn): void {
  const { context, view } = brush;
  const [left, top] = [Math.floor(box.left - PATCH_PX), Math.floor(box.top - PATCH_PX)];
  const [width, height] = [Math.ceil(box.width), Math.ceil(box.height)].map(
    (side) => side + PATCH_PX * 2 + 1,
  ) as [number, number];
  context.save();
  context.beginPath();
  context.rect(left, top, width, height);
  context.clip();
  context.clearRect(left, top, width, height);
  drawUnder(brush, drawn);
  const upper = toSheet(view, { x: left - PATCH_PX, y: top - PATCH_PX });
  const lower = toSheet(view, { x: left + width + PATCH_PX, y: top + height + PATCH_PX });
  const near = sheetItems(drawn.plan, drawn.layout, drawn.book).within({
    minX: upper.x,
    minY: lower.y,
    maxX: lower.x,
    maxY: upper.y,
  });
  workOff(restingSteps(brush, drawn, near, { left, top, width, height }));
  context.restore();
}
