/** The first facts of a plot while they are typed. */
import { patched } from "../../core/edits/edit.ts";
import { readPosition } from "../../core/formats/position-text.ts";
import type { DayNumber } from "../../core/model/day.ts";
import { UNNAMED_TITLE } from "../../core/model/empty-plan.ts";
import type { Plan, PolygonShape, Site } from "../../core/model/plan.ts";
import { plotWords as words } from "./plot-words.ts";

export interface TypedPlot {
  /** What the garden is called: it heads every sheet on paper. */
  readonly name: string;
  /** Metres; undefined where nothing is typed. */
  readonly acrossM: number | undefined;
  readonly upM: number | undefined;
  /** Degrees clockwise from north. */
  readonly upBearingDeg: number;
  readonly position: Site["position"];
  readonly lastSpringFrost: DayNumber | undefined;
  readonly firstAutumnFrost: DayNumber | undefined;
}

/** What is known of the site already. The size of a plot drawn otherwise stays open. */
export function plotOf(site: Site): TypedPlot {
  const { name, upBearingDeg, position, lastSpringFrost, firstAutumnFrost } = site;
  const size = sizeOf(site.outline);
  return { name, ...size, upBearingDeg, position, lastSpringFrost, firstAutumnFrost };
}

/** The size of a plot that is the rectangle this form makes; nothing of any other. */
function sizeOf(outline: PolygonShape | undefined): Pick<TypedPlot, "acrossM" | "upM"> {
  const none = { acrossM: undefined, upM: undefined };
  const [acrossM, upM] = outline?.corners[2] ?? [];
  if (!outline || acrossM === undefined || upM === undefined) return none;
  const isSame = JSON.stringify(rectanglePlot(acrossM, upM)) === JSON.stringify(outline);
  return isSame ? { acrossM, upM } : none;
}

/** From the sheet's origin to the right and up. */
export function rectanglePlot(acrossM: number, upM: number): PolygonShape {
  return {
    shape: "polygon",
    corners: [
      [0, 0],
      [acrossM, 0],
      [acrossM, upM],
      [0, upM],
    ],
  };
}

export function plotProblem({ acrossM, upM }: TypedPlot): string | null {
  return (acrossM === undefined) === (upM === undefined) ? null : words.bothSizes;
}

/** The site with what was typed; an outline stays where no size is typed. */
export function siteWith(site: Site, typed: TypedPlot): Site {
  const { acrossM, upM, ...facts } = typed;
  const outline =
    acrossM === undefined || upM === undefined ? site.outline : rectanglePlot(acrossM, upM);
  return patched<Site>(site, { ...facts, outline });
}

/** The plan with what was typed: one that nobody has named is called as its garden. */
export function plotChange(plan: Plan, typed: TypedPlot): Partial<Plan> {
  const isNamed = plan.title !== UNNAMED_TITLE || typed.name === plan.site.name;
  return { site: siteWith(plan.site, typed), ...(isNamed ? {} : { title: typed.name }) };
}

export type TypedPosition =
  | { readonly ok: true; readonly position: Site["position"] }
  | { readonly ok: false; readonly reason: string };

/** Both coordinates from one text; an empty one is no position. */
export function positionOf(text: string): TypedPosition {
  if (text.trim() === "") return { ok: true, position: undefined };
  const read = readPosition(text, "latitude");
  if (!read.ok) return read;
  const { latitude, longitude } = read;
  return latitude === undefined || longitude === undefined
    ? { ok: false, reason: words.bothAxes }
    : { ok: true, position: { latitude, longitude } };
}
