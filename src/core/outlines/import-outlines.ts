/** What the grower makes of a file of outlines, as one edit of the plan. */
import { nextBedCode } from "../beds/codes.ts";
import { type Edit, drawnIds, inLayout, nextId } from "../edits/edit.ts";
import { type LonLat, localFrame, middlePlace } from "../geometry/local-frame.ts";
import { outlineOf } from "../geometry/outline.ts";
import type { AreaShape, Bed, Layout, Plan, Surrounding } from "../model/plan.ts";
import {
  type PlacedTrace,
  type TraceChoice,
  type TraceRole,
  placeTrace,
  rolesFor,
  traceRoles,
} from "./place-trace.ts";
import type { Trace } from "./trace.ts";
import { counted } from "../words/plurals.ts";

/** Longest name of an outline that is taken for a bed's code. */
const LONGEST_CODE = 12;

export interface ImportedTrace {
  readonly trace: Trace;
  readonly choice: TraceChoice;
  readonly placed: PlacedTrace;
}

/** Where the sheet's origin lies, or would lie: with no position yet, the middle of the file. */
export function importOrigin(plan: Plan, traces: readonly Trace[]): LonLat {
  return plan.site.position ?? middlePlace(traces.flatMap((trace) => trace.places));
}

/**
 * What to make of a trace until the grower says so: what the file says; a bed of an area, or of a
 * track that ends where it began; else nothing.
 */
export function suggestedRole({ sort, role, places }: Trace): TraceRole {
  const said = traceRoles.find((each) => each === (role === "source" ? "pollen" : role));
  if (said !== undefined && rolesFor(sort).includes(said)) return said;
  const [first, last] = [places[0], places.at(-1)];
  const isRound =
    places.length >= 4 &&
    first?.longitude === last?.longitude &&
    first?.latitude === last?.latitude;
  return role === null && (sort === "area" || isRound) ? "bed" : "skip";
}

/** Every trace that is not skipped, on the sheet or with what is wrong with it. */
export function placedTraces(
  plan: Plan,
  traces: readonly Trace[],
  choiceOf: (trace: Trace) => TraceChoice,
  toleranceM: number,
): readonly ImportedTrace[] {
  const frame = localFrame(importOrigin(plan, traces), plan.site.upBearingDeg);
  return traces
    .map((trace) => ({ trace, choice: choiceOf(trace) }))
    .filter(({ choice }) => choice.role !== "skip")
    .map((each) => ({ ...each, placed: placeTrace(each.trace, each.choice, frame, toleranceM) }));
}

/** What stands in the way of taking them all; empty when nothing does. */
export function importProblems(plan: Plan, imported: readonly ImportedTrace[]): readonly string[] {
  const sites = imported.filter(({ choice }) => choice.role === "site");
  const hasPollen = imported.some(({ choice }) => choice.role === "pollen");
  return [
    ...imported.flatMap(({ trace, placed }) =>
      placed.ok ? [] : [`${traceName(trace)} ${placed.problem}.`],
    ),
    ...(sites.length > 1
      ? [`A site has one outline: ${sites.length} are chosen. Take the others as something else.`]
      : []),
    ...(hasPollen && pollenKind(plan) === undefined
      ? [
          "What flowers at a pollen source cannot be said yet: add a variety to the seed list first.",
        ]
      : []),
  ];
}

/** What a pollen source flowers with until its particulars say otherwise: the first variety's kind. */
export function pollenKind(plan: Plan): string | undefined {
  return plan.varieties[0]?.kind;
}

function traceName({ number, name }: Trace): string {
  return name === "" ? `Number ${number}` : `Number ${number}, ${name}`;
}

/**
 * Beds and site outline into the layout and plan, the rest into the surroundings. A site without a
 * position gets the middle of the file as the sheet's origin.
 */
export function importOutlines(
  layoutId: string,
  traces: readonly Trace[],
  imported: readonly ImportedTrace[],
  fileName: string,
): Edit {
  const count = counted(imported.length, { one: "outline", other: "outlines" });
  return {
    title: `Take ${count} from ${fileName}`,
    apply: (plan) => {
      const position = importOrigin(plan, traces);
      const site = { ...plan.site, position };
      const start: Plan = plan.site.position ? plan : { ...plan, site };
      return imported.reduce((next, each) => taken(next, layoutId, each), start);
    },
  };
}

function taken(plan: Plan, layoutId: string, { trace, choice, placed }: ImportedTrace): Plan {
  const layout = plan.layouts.find(({ id }) => id === layoutId);
  if (!placed.ok || !layout) return plan;
  const { shape } = placed;
  switch (choice.role) {
    case "skip":
      return plan;
    case "bed":
      return shape.shape === "point"
        ? plan
        : inLayout(plan, layoutId, () => ({
            ...layout,
            beds: [...layout.beds, newBed(plan, layout, trace, shape)],
          }));
    case "site":
      return shape.shape === "point"
        ? plan
        : { ...plan, site: { ...plan.site, outline: asPolygon(shape) } };
    default: {
      const kind = pollenKind(plan);
      const surrounding: Surrounding = {
        id: nextId(
          choice.role === "pollen" ? "source-" : `${choice.role}-`,
          drawnIds(plan, layout),
        ),
        label: trace.name.slice(0, 200) || WORDS[choice.role],
        what: choice.role,
        outline: shape,
        ...(choice.role === "pollen" && kind !== undefined ? { kind } : {}),
        flowering: "yes",
        cover: "none",
      };
      return { ...plan, surroundings: [...plan.surroundings, surrounding] };
    }
  }
}

function newBed(plan: Plan, layout: Layout, trace: Trace, outline: AreaShape): Bed {
  const isCode = trace.name !== "" && trace.name.length <= LONGEST_CODE;
  const isFree = layout.beds.every(({ code }) => code !== trace.name);
  const code = isCode && isFree ? trace.name : nextBedCode(layout);
  return { id: nextId("bed-", drawnIds(plan, layout)), code, outline };
}

/** A site's outline is kept as corners. */
function asPolygon(shape: AreaShape): NonNullable<Plan["site"]["outline"]> {
  if (shape.shape === "polygon") return shape;
  const [ring = new Float64Array()] = outlineOf(shape).rings;
  return {
    shape: "polygon",
    corners: Array.from(
      { length: ring.length / 2 },
      (_, index) => [ring[index * 2] ?? 0, ring[index * 2 + 1] ?? 0] as const,
    ),
  };
}

const WORDS: Readonly<Record<Surrounding["what"], string>> = {
  hedge: "Hedge",
  fence: "Fence",
  path: "Path",
  building: "Building",
  water: "Water",
  tree: "Tree",
  pollen: "Pollen source",
  slope: "Slope",
  other: "Note",
};
