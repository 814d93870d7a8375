/** Finds the places of many words between frames. Fetched with what draws a large sheet. */
import { betweenFrames } from "../../store/window/between-frames.ts";
import type { Brush } from "../draw/brush.ts";
import { furnitureBoxes } from "../draw/draw-far-marks.ts";
import { itemLabelSteps } from "../draw/draw-items.ts";
import type { View } from "../scene/viewport.ts";
import {
  type Resting,
  isSame,
  isSameView,
  keepLabels,
  labelKey,
  lookOf,
  restingItems,
  useLabelTurn,
} from "./sheet-labels.ts";

interface Job {
  readonly of: readonly unknown[];
  readonly view: View;
  takeBack: () => void;
}

let job: Job | null = null;

/** Stops finding places: they would be those of a view that has been left. */
export function dropLabels(): void {
  job?.takeBack();
  job = null;
}

/** Begins to find them, unless it is at that; useLabelTurn tells when they are there. */
export function prepareLabels(brush: Brush, resting: Resting): void {
  const of = labelKey(brush, resting);
  const { view } = brush;
  if (job && isSame(of, job.of) && isSameView(view, job.view)) return;
  dropLabels();
  const context = measuring();
  if (!context) return;
  const items = restingItems(brush, resting);
  const own = { ...brush, context };
  const steps = itemLabelSteps(own, items, lookOf(resting), furnitureBoxes(brush));
  const run = (until: number) => {
    for (;;) {
      const step = steps.next();
      if (step.done === true) {
        keepLabels(of, resting, view, step.value);
        job = null;
        useLabelTurn.setState(({ turn }) => ({ turn: turn + 1 }));
        return;
      }
      if (performance.now() > until) break;
    }
    if (job) job.takeBack = betweenFrames(run);
  };
  job = { of, view, takeBack: betweenFrames(run) };
}

let measured: CanvasRenderingContext2D | null = null;

/** To measure words with while nothing is drawn. */
function measuring(): CanvasRenderingContext2D | null {
  measured ??= document.createElement("canvas").getContext("2d");
  return measured;
}
