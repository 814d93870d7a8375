/**
 * A picture of what is at rest, with room around it. While the view moves it is moved and stretched
 * instead of drawn anew: it is made of what was drawn last at rest, words and all, and around that
 * of the grounds alone, which are quickly drawn. Once the view rests, everything is drawn crisp again.
 */
import { type Brush, settle } from "./brush.ts";
import type { View } from "../scene/viewport.ts";

/** Steps that draw the grounds alone. */
type DrawGround = (brush: Brush) => Iterator<undefined, void>;

/** Room on every side, as a share of the drawing. */
const ROOM_SHARE = 0.25;
/** While the view moves, a picture it has left is made anew after so many milliseconds at the soonest. */
const LEAST_AGE_MS = 250;
/** Of each frame so many milliseconds are given to making one while another can be shown. */
const SLICE_MS = 6;
/** The same where there is nothing else to show: what there is of it is shown as it comes. */
const BARE_SLICE_MS = 25;
/** Left and above so many pixels belong to the figures of the grid, which stay where they are. */
const MARGIN_PX = { left: 44, top: 26 } as const;

interface Picture {
  readonly canvas: HTMLCanvasElement;
  readonly brush: Brush;
  /** What it shows: another object, and it is a picture of something else. */
  readonly of: object;
  readonly roomPx: { readonly x: number; readonly y: number };
  /** Part of it that shows the sheet, pixels from its upper left corner. */
  readonly fromPx: { readonly x: number; readonly y: number };
  readonly madeAt: number;
}

export interface GroundPicture {
  /** Remembers what has just been drawn at rest. */
  readonly keep: (brush: Brush, of: object) => void;
  /** Whether there is a picture of this, at whatever view. */
  readonly shows: (brush: Brush, of: object) => boolean;
  /** Puts the picture where the view has it; made anew, the grounds drawn lightly, when it no longer serves. */
  readonly paint: (brush: Brush, of: object, drawLightly: DrawGround, now: number) => void;
}

interface Making {
  readonly picture: Picture;
  readonly steps: Iterator<undefined, void>;
}

export function groundPicture(): GroundPicture {
  let kept: Picture | null = null;
  let picture: Picture | null = null;
  let making: Making | null = null;
  /** Two by turns: the one before is part of the next. */
  let spare: HTMLCanvasElement | undefined;
  const known = (brush: Brush, of: object) =>
    [picture, kept].find((each) => each !== null && isStillTrue(each, brush, of)) ?? null;
  return {
    keep: (brush, of) => {
      kept = copied(brush, of, kept?.canvas);
      spare = making?.picture.canvas ?? picture?.canvas ?? spare;
      picture = null;
      making = null;
    },
    shows: (brush, of) => known(brush, of) !== null,
    paint: (brush, of, drawLightly, now) => {
      const before = known(brush, of);
      const isServing =
        before !== null &&
        before === picture &&
        (now - before.madeAt < LEAST_AGE_MS || covers(before, brush));
      if (!isServing) {
        if (!making || !isStillTrue(making.picture, brush, of)) {
          making = begun(brush, of, drawLightly, now, making?.picture.canvas ?? spare);
        }
        if (isMade(making, before ? SLICE_MS : BARE_SLICE_MS)) {
          spare = picture?.canvas;
          picture = { ...making.picture, madeAt: now };
          making = null;
          const context = picture.canvas.getContext("2d");
          if (before && context) placeInto(context, picture, before);
        }
      }
      const shown = known(brush, of) ?? making?.picture;
      if (shown) place(brush, shown);
    },
  };
}

/** Goes on making it for so long; whether it is done. */
function isMade({ picture, steps }: Making, forMs: number): boolean {
  const until = performance.now() + forMs;
  const context = picture.canvas.getContext("2d");
  do {
    const isDone = steps.next().done === true;
    if (context) settle(context);
    if (isDone) return true;
  } while (performance.now() < until);
  return false;
}

/** A copy of the whole drawing as it is at the moment. */
function copied(
  brush: Brush,
  of: object,
  canvas: HTMLCanvasElement = document.createElement("canvas"),
): Picture {
  const drawn = brush.context.canvas;
  canvas.width = drawn.width;
  canvas.height = drawn.height;
  canvas.getContext("2d")?.drawImage(drawn, 0, 0);
  const fromPx = { x: MARGIN_PX.left, y: MARGIN_PX.top };
  return { canvas, brush, of, roomPx: { x: 0, y: 0 }, fromPx, madeAt: 0 };
}

/** Lays an earlier picture into one of the same ground, in place of what was drawn lightly there. */
function placeInto(context: CanvasRenderingContext2D, into: Picture, before: Picture): void {
  const { ratio } = into.brush;
  const view = {
    ...into.brush.view,
    x: into.brush.view.x + into.roomPx.x,
    y: into.brush.view.y + into.roomPx.y,
  };
  const { x, y, stretch } = placeOfPicture(before.brush.view, before.roomPx, view);
  const { fromPx } = before;
  const left = x + fromPx.x * stretch;
  const top = y + fromPx.y * stretch;
  const width = (before.canvas.width / ratio - fromPx.x) * stretch;
  const height = (before.canvas.height / ratio - fromPx.y) * stretch;
  context.save();
  context.setTransform(ratio, 0, 0, ratio, 0, 0);
  context.clearRect(left, top, width, height);
  context.drawImage(
    before.canvas,
    fromPx.x * ratio,
    fromPx.y * ratio,
    before.canvas.width - fromPx.x * ratio,
    before.canvas.height - fromPx.y * ratio,
    left,
    top,
    width,
    height,
  );
  context.restore();
}

/** Whether nothing but the view and the size is other than when the picture was made. */
function isStillTrue(picture: Picture, brush: Brush, of: object): boolean {
  const before = picture.brush;
  return picture.of === of && before.colours === brush.colours && before.ratio === brush.ratio;
}

/** Where the picture's upper left corner lies now, and how far it is stretched. */
export function placeOfPicture(
  before: View,
  roomPx: { readonly x: number; readonly y: number },
  now: View,
): { readonly x: number; readonly y: number; readonly stretch: number } {
  const stretch = now.scale / before.scale;
  return {
    x: now.x - (before.x + roomPx.x) * stretch,
    y: now.y - (before.y + roomPx.y) * stretch,
    stretch,
  };
}

function covers({ brush: before, roomPx }: Picture, brush: Brush): boolean {
  const { x, y, stretch } = placeOfPicture(before.view, roomPx, brush.view);
  return (
    x <= 0 &&
    y <= 0 &&
    x + (before.widthPx + roomPx.x * 2) * stretch >= brush.widthPx &&
    y + (before.heightPx + roomPx.y * 2) * stretch >= brush.heightPx
  );
}

function begun(
  brush: Brush,
  of: object,
  draw: DrawGround,
  now: number,
  canvas: HTMLCanvasElement = document.createElement("canvas"),
): Making {
  const { widthPx, heightPx, ratio, view } = brush;
  const roomPx = {
    x: Math.round(widthPx * ROOM_SHARE * ratio) / ratio,
    y: Math.round(heightPx * ROOM_SHARE * ratio) / ratio,
  };
  // Setting the size clears it too.
  canvas.width = Math.ceil((widthPx + roomPx.x * 2) * ratio);
  canvas.height = Math.ceil((heightPx + roomPx.y * 2) * ratio);
  const context = canvas.getContext("2d");
  context?.scale(ratio, ratio);
  const picture = { canvas, brush, of, roomPx, fromPx: { x: 0, y: 0 }, madeAt: now };
  const own = context && {
    ...brush,
    context,
    view: { ...view, x: view.x + roomPx.x, y: view.y + roomPx.y },
    widthPx: widthPx + roomPx.x * 2,
    heightPx: heightPx + roomPx.y * 2,
  };
  return { picture, steps: own ? draw(own) : [][Symbol.iterator]() };
}

function place({ context, view, ratio }: Brush, { canvas, brush, roomPx, fromPx }: Picture): void {
  const { x, y, stretch } = placeOfPicture(brush.view, roomPx, view);
  const onPixel = (px: number) => Math.round(px * ratio) / ratio;
  const isPanned = stretch === 1;
  const from = { x: Math.round(fromPx.x * ratio), y: Math.round(fromPx.y * ratio) };
  const [width, height] = [canvas.width - from.x, canvas.height - from.y];
  const left = (isPanned ? onPixel(x) : x) + (from.x / ratio) * stretch;
  const top = (isPanned ? onPixel(y) : y) + (from.y / ratio) * stretch;
  context.save();
  context.imageSmoothingEnabled = !isPanned;
  context.drawImage(
    canvas,
    from.x,
    from.y,
    width,
    height,
    left,
    top,
    (width / ratio) * stretch,
    (height / ratio) * stretch,
  );
  context.restore();
}
