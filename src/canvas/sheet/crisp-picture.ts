/**
 * The drawing of what is at rest, made in slices between frames on a canvas of its own and shown
 * when it is done: one of thousands of plantings takes longer than a frame. What was made before
 * stands in for it meanwhile, brought up to date where something was taken up or put down.
 */
import { betweenFrames } from "../../store/window/between-frames.ts";
import { type Brush, settle } from "../draw/brush.ts";

/** What a drawing is of: other objects, and it is one of something else. */
export interface DrawnOf<Ground> {
  readonly ground: Ground;
  /** Where the words stand; null while that is not known. */
  readonly labels: object | null;
}

export interface CrispDrawing<Ground> extends DrawnOf<Ground> {
  readonly brush: Brush;
  /** The ground that it was last brought up to date for. */
  patchedFor: Ground;
}

type Steps = Iterator<undefined, void>;

interface Job<Ground> {
  readonly drawing: CrispDrawing<Ground>;
  readonly steps: Steps;
  takeBack: () => void;
}

export interface CrispPicture<Ground> {
  /** Whether exactly this has been drawn. */
  readonly isDone: (brush: Brush, of: DrawnOf<Ground>) => boolean;
  /** What was drawn last, in whatever view. */
  readonly last: () => CrispDrawing<Ground> | null;
  /** Begins to draw it, unless it is at that; `isWatched`: shown while it is being made. */
  readonly begin: (
    brush: Brush,
    of: DrawnOf<Ground>,
    steps: (own: Brush) => Steps,
    isWatched: boolean,
  ) => void;
  /** Leaves what is being made, as when the view has gone on. */
  readonly stop: () => void;
  /** Puts what is done, or else what is being made, onto the layer. */
  readonly show: (brush: Brush) => void;
}

/**
 * At a time so many milliseconds go into a drawing that is waited for: there is nothing else to
 * see, and to show half of it takes a good part of what the other half does.
 */
const WATCHED_MS = 200;

/** @param onTurn called when there is more to show */
export function crispPicture<Ground>(onTurn: () => void): CrispPicture<Ground> {
  let done: CrispDrawing<Ground> | null = null;
  let job: Job<Ground> | null = null;
  let spare: HTMLCanvasElement | null = null;
  const stop = () => {
    if (!job) return;
    job.takeBack();
    spare = job.drawing.brush.context.canvas;
    job = null;
  };
  const run = (mine: Job<Ground>, isWatched: boolean, until: number) => {
    let isEnded = false;
    while (!isEnded && performance.now() < until) {
      isEnded = mine.steps.next().done === true;
      if (!isWatched) settle(mine.drawing.brush.context);
    }
    if (isEnded) {
      spare = done?.brush.context.canvas ?? null;
      done = mine.drawing;
      job = null;
    } else goOn(mine, isWatched);
    if (isEnded || isWatched) onTurn();
  };
  const goOn = (mine: Job<Ground>, isWatched: boolean) => {
    if (!isWatched) {
      mine.takeBack = betweenFrames((until) => run(mine, false, until));
      return;
    }
    const timer = setTimeout(() => run(mine, true, performance.now() + WATCHED_MS));
    mine.takeBack = () => clearTimeout(timer);
  };
  return {
    isDone: (brush, of) => done !== null && isOf(done, brush, of),
    last: () => done,
    begin: (brush, of, steps, isWatched) => {
      if (job && isOf(job.drawing, brush, of)) return;
      stop();
      const own = emptyBrush(brush, spare);
      spare = null;
      if (!own) return;
      const drawing = { ...of, brush: own, patchedFor: of.ground };
      job = { drawing, steps: steps(own), takeBack: () => undefined };
      if (isWatched) run(job, true, performance.now() + WATCHED_MS);
      else goOn(job, false);
    },
    stop,
    show: (brush) => {
      const shown = done && isSameView(done.brush, brush) ? done : job?.drawing;
      if (!shown) return;
      const { context } = brush;
      context.save();
      // Dot by dot: nothing is smoothed.
      context.setTransform(1, 0, 0, 1, 0, 0);
      context.drawImage(shown.brush.context.canvas, 0, 0);
      context.restore();
    },
  };
}

function isOf<Ground>(
  drawing: CrispDrawing<Ground>,
  brush: Brush,
  { ground, labels }: DrawnOf<Ground>,
): boolean {
  return drawing.ground === ground && drawing.labels === labels && isSameView(drawing.brush, brush);
}

/** Whether two brushes draw everything at the same places in the same way. */
export function isSameView(a: Brush, b: Brush): boolean {
  return (
    a.view.x === b.view.x &&
    a.view.y === b.view.y &&
    a.view.scale === b.view.scale &&
    a.widthPx === b.widthPx &&
    a.heightPx === b.heightPx &&
    a.ratio === b.ratio &&
    a.colours === b.colours
  );
}

/** A brush like the layer's on a canvas of its own; null where the browser gives none. */
function emptyBrush(brush: Brush, spare: HTMLCanvasElement | null): Brush | null {
  const canvas = spare ?? document.createElement("canvas");
  // Setting the size clears it too.
  canvas.width = brush.context.canvas.width;
  canvas.height = brush.context.canvas.height;
  const context = canvas.getContext("2d");
  context?.scale(brush.ratio, brush.ratio);
  return context && { ...brush, context };
}
