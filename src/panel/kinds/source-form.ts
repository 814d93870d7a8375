/** A pollen source while it is typed: its kind, its name, where it lies. */
import { drawnIds, nextId } from "../../core/edits/edit.ts";
import { freeLabel } from "../../core/edits/ground.ts";
import { shapeCentre } from "../../core/geometry/outline.ts";
import type { Point } from "../../core/geometry/point.ts";
import { roundShape } from "../../core/geometry/round.ts";
import { layoutOf } from "../../core/model/layouts.ts";
import type { Layout, Plan, Shape, Surrounding } from "../../core/model/plan.ts";
import { placeTowards } from "../../core/record/found-source.ts";

/** `given`: where it was pressed or drawn. */
export type SourcePlace = "given" | "measured" | "typed";

export interface TypedSource {
  readonly kind: string | null;
  /** Empty: named for its kind. */
  readonly label: string;
  readonly place: SourcePlace;
  /** Id of the bed or planting it is measured from; empty: the sheet's origin. */
  readonly from: string;
  readonly distanceM: number;
  /** Degrees clockwise from true north. */
  readonly bearingDeg: number;
  readonly x: number;
  readonly y: number;
  /** How wide the stand is, metres; undefined: a single plant, a point. */
  readonly acrossM?: number | undefined;
}

/** A neighbour a little beyond the fence, until it is measured. No source; our choice. */
const FIRST_DISTANCE_M = 20;

export function startOfSource(layout: Layout, given: Shape | null): TypedSource {
  const at = given ? shapeCentre(given) : { x: 0, y: 0 };
  return {
    kind: null,
    label: "",
    place: given ? "given" : "measured",
    from: layout.beds[0]?.id ?? "",
    distanceM: FIRST_DISTANCE_M,
    bearingDeg: 0,
    ...at,
  };
}

/** The places it can be measured from. */
export function measuredFrom(
  layout: Layout,
): readonly { readonly id: string; readonly code: string }[] {
  return [...layout.beds, ...layout.plantings].map(({ id, code }) => ({ id, code }));
}

function spotOf(plan: Plan, layout: Layout, typed: TypedSource): Point {
  if (typed.place === "typed") return { x: typed.x, y: typed.y };
  const item = [...layout.beds, ...layout.plantings].find(({ id }) => id === typed.from);
  const start = item ? shapeCentre(item.outline) : { x: 0, y: 0 };
  const { upBearingDeg } = plan.site;
  const { x, y } = placeTowards(start, typed.distanceM, typed.bearingDeg, upBearingDeg);
  return { x: Math.round(x * 1e6) / 1e6, y: Math.round(y * 1e6) / 1e6 };
}

/** A stand is measured to from its edge: a field that lies as a point would seem half a field farther. */
function wideAs(place: Point & { readonly shape: "point" }, acrossM: number | undefined): Shape {
  const { x, y } = place;
  return acrossM === undefined ? place : roundShape({ x, y, diameterM: acrossM });
}

/** The surrounding it becomes; null as long as nobody said what flowers there. */
export function typedSource(
  plan: Plan,
  layoutId: string,
  typed: TypedSource & { readonly kindName: string },
  given: Shape | null,
): Surrounding | null {
  if (typed.kind === null) return null;
  const layout = layoutOf(plan, layoutId);
  const word = typed.kindName.charAt(0).toUpperCase() + typed.kindName.slice(1);
  const place: Shape =
    typed.place === "given" && given ? given : { shape: "point", ...spotOf(plan, layout, typed) };
  const outline = place.shape === "point" ? wideAs(place, typed.acrossM) : place;
  return {
    id: nextId("source-", drawnIds(plan, layout)),
    label: typed.label === "" ? freeLabel(plan, word) : typed.label,
    what: "pollen",
    kind: typed.kind,
    outline,
    flowering: "yes",
    cover: "none",
  };
}

/**
 * What was pressed or drawn, as ground that says nothing yet: it stays on the sheet while it is asked
 * what flowers there. Null: it is placed by numbers.
 */
export function unsaidSource(
  plan: Plan,
  layoutId: string,
  label: string,
  given: Shape | null,
): Surrounding | null {
  if (!given) return null;
  const id = nextId("source-", drawnIds(plan, layoutOf(plan, layoutId)));
  return { id, label, what: "other", outline: given, flowering: "yes", cover: "none" };
}

/** Kinds of the plan, the likeliest to matter: what is in it can cross with them. */
export function kindsOfPlan(plan: Plan): readonly string[] {
  const ids = [
    ...plan.varieties.map(({ kind }) => kind),
    ...plan.surroundings.flatMap(({ kind }) => kind ?? []),
  ];
  return [...new Set(ids)];
}
