/**
 * A picture of what is at rest, with room around it. While the view moves it is moved and stretched
 * instead of drawn anew; once the view rests, everything is drawn crisp again.
 */
import type { Brush } from "./brush.ts";
import type { View } from "../scene/viewport.ts";

type DrawGround = (brush: Brush) => void;

/** Room on every side, as a share of the drawing. */
const ROOM_SHARE = 0.25;
/** While the view moves, a picture it has left is made anew after so many milliseconds at the soonest. */
const LEAST_AGE_MS = 250;
/** Nor is a picture stretched further than this. */
const STRETCH_MOST = 2;

interface Picture {
  readonly canvas: HTMLCanvasElement;
  readonly brush: Brush;
  readonly draw: DrawGround;
  readonly roomPx: { readonly x: number; readonly y: number };
  readonly madeAt: number;
}

/** Puts the picture where the view has it, made anew when it no longer serves. */
export function groundPicture(): (brush: Brush, draw: DrawGround, now: number) => void {
  let picture: Picture | null = null;
  return (brush, draw, now) => {
    const known = picture !== null && isStillTrue(picture, brush, draw) ? picture : null;
    const isServing = known !== null && (now - known.madeAt < LEAST_AGE_MS || covers(known, brush));
    picture = isServing ? known : made(brush, draw, now, picture?.canvas);
    place(brush, picture);
  };
}

/** Whether nothing but the view is other than when the picture was made. */
function isStillTrue(picture: Picture, brush: Brush, draw: DrawGround): boolean {
  const before = picture.brush;
  return (
    picture.draw === draw &&
    before.colours === brush.colours &&
    before.ratio === brush.ratio &&
    before.widthPx === brush.widthPx &&
    before.heightPx === brush.heightPx
  );
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
    stretch <= STRETCH_MOST &&
    x <= 0 &&
    y <= 0 &&
    x + (before.widthPx + roomPx.x * 2) * stretch >= brush.widthPx &&
    y + (before.heightPx + roomPx.y * 2) * stretch >= brush.heightPx
  );
}

function made(
  brush: Brush,
  draw: DrawGround,
  now: number,
  canvas: HTMLCanvasElement = document.createElement("canvas"),
): Picture {
  const { widthPx, heightPx, ratio, view } = brush;
  const roomPx = {
    x: Math.round(widthPx * ROOM_SHARE * ratio) / ratio,
    y: Math.round(heightPx * ROOM_SHARE * ratio) / ratio,
  };
  // Setting the size clears it too.
  canvas.width = Math.ceil((widthPx + roomPx.x * 2) * ratio);
  canvas.height = Math.ceil((heightPx + roomPx.y * 2) * ratio);
  const context = canvas.getContext("2d");
  if (context) {
    context.scale(ratio, ratio);
    draw({
      ...brush,
      context,
      view: { ...view, x: view.x + roomPx.x, y: view.y + roomPx.y },
      widthPx: widthPx + roomPx.x * 2,
      heightPx: heightPx + roomPx.y * 2,
    });
  }
  return { canvas, brush, draw, roomPx, madeAt: now };
}

function place({ context, view, ratio }: Brush, { canvas, brush, roomPx }: Picture): void {
  const { x, y, stretch } = placeOfPicture(brush.view, roomPx, view);
  const onPixel = (px: number) => Math.round(px * ratio) / ratio;
  const isPanned = stretch === 1;
  context.save();
  context.imageSmoothingEnabled = !isPanned;
  context.drawImage(
    canvas,
    isPanned ? onPixel(x) : x,
    isPanned ? onPixel(y) : y,
    (canvas.width / ratio) * stretch,
    (canvas.height / ratio) * stretch,
  );
  context.restore();
}
