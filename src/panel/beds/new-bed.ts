/** A bed from typed numbers. */
import { nextBedCode } from "../../core/beds/codes.ts";
import { drawnIds, nextId } from "../../core/edits/edit.ts";
import { type GroundOnPlot, groundOnPlot } from "../../core/beds/bed-on-plot.ts";
import { type Outline, outlineOf } from "../../core/geometry/outline.ts";
import { protrusion } from "../../core/geometry/containment.ts";
import { roundShape } from "../../core/geometry/round.ts";
import type { Bed, Layout, Plan } from "../../core/model/plan.ts";
import * as words from "./words.ts";

export interface TypedBed {
  readonly code: string;
  /** Round beds have their width as diameter, and neither length nor turn. */
  readonly isRound: boolean;
  readonly widthM: number;
  readonly lengthM: number;
  readonly turnDeg: number;
  readonly x: number;
  readonly y: number;
}

/** Path left between a new bed and the last one, metres. No source; our choice. */
const PATH_M = 0.6;

/** The next bed as the last one suggests it: same size and turn, one path further to the right. */
export function suggestedBed({ site }: Plan, layout: Layout): TypedBed {
  const code = nextBedCode(layout);
  const last = layout.beds.at(-1)?.outline;
  if (last?.shape !== "rectangle") {
    const first = { code, isRound: false, widthM: 1.2, lengthM: 10, turnDeg: 0 };
    if (last) return { ...first, x: besideAll(layout, 1.2), y: 0 };
    const spot = site.outline && spotOnPlot(outlineOf(site.outline), first.widthM, first.lengthM);
    return { ...first, x: 0, y: 0, ...spot };
  }
  const { widthM, lengthM, turnDeg } = last;
  const step = widthM + PATH_M;
  const angle = (turnDeg * Math.PI) / 180;
  const round = (metres: number) => Math.round(metres * 100) / 100;
  return {
    code,
    isRound: false,
    widthM,
    lengthM,
    turnDeg,
    x: round(last.x + step * Math.cos(angle)),
    y: round(last.y - step * Math.sin(angle)),
  };
}

/** Ground for the first beds of a plot that has an edge: on it, a path away from the edge. */
export function spotOnPlot(plot: Outline, widthM: number, lengthM: number): GroundOnPlot | null {
  return groundOnPlot(plot, { widthM, lengthM, marginM: PATH_M });
}

/** Sticking out by less is drawing, metres. */
const OFF_PLOT_M = 0.01;

/** Codes of beds that would reach out of the plot; none where it has no edge. */
export function offPlot({ site }: Plan, beds: readonly Bed[]): readonly string[] {
  if (!site.outline) return [];
  const plot = outlineOf(site.outline);
  return beds
    .filter(({ outline }) => protrusion(outlineOf(outline), plot).distanceM > OFF_PLOT_M)
    .map(({ code }) => code);
}

/** Middle of a bed of a width that lies to the right of all others, metres. */
function besideAll(layout: Layout, widthM: number): number {
  const right = Math.max(...layout.beds.map(({ outline }) => outlineOf(outline).bounds.maxX));
  return Math.ceil((right + PATH_M + widthM / 2) * 10) / 10;
}

/** Why a code cannot be given to a bed or planting of the layout, or null. */
export function codeProblem(layout: Layout, code: string, ownId: string | null): string | null {
  if (code.trim() === "") return words.codeNeeded;
  if (code.length > 40) return words.codeTooLong;
  const taken = [...layout.beds, ...layout.plantings].find(
    (item) => item.code === code.trim() && item.id !== ownId,
  );
  return taken ? words.codeTaken(code.trim()) : null;
}

export function bedFromTyped(plan: Plan, layout: Layout, typed: TypedBed): Bed {
  const { code, isRound, x, y, widthM, lengthM, turnDeg } = typed;
  return {
    id: nextId("bed-", drawnIds(plan, layout)),
    code: code.trim(),
    outline: isRound
      ? roundShape({ x, y, diameterM: widthM })
      : { shape: "rectangle", x, y, widthM, lengthM, turnDeg },
  };
}
