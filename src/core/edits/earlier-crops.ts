/** Crops of earlier years on the ground of a plan: entered one by one, or taken from last year's plan. */
import { bloomSetting } from "../calendar/growing.ts";
import { plantingBloom } from "../calendar/planting-bloom.ts";
import type { Kind } from "../kinds/crop.ts";
import { cropBook } from "../kinds/crop-book.ts";
import { kindOf } from "../kinds/own-kinds.ts";
import { localFrame } from "../geometry/local-frame.ts";
import { shapeCentre, turnShape } from "../geometry/outline.ts";
import type { Point } from "../geometry/point.ts";
import { type DayNumber, civilFromDay } from "../model/day.ts";
import type {
  AreaShape,
  EarlierCrop,
  GroundMark,
  Layout,
  OwnKind,
  Plan,
  Planting,
  PolygonShape,
  Variety,
} from "../model/plan.ts";
import { type Edit, mapItem, nextId } from "./edit.ts";
import { addGroundMarks } from "./ground.ts";
import { type ClashAnswer, type KindClash, groupWord, kindsBrought } from "./kinds-brought.ts";
import * as steps from "../words/shelf-step-words.ts";

/** What an earlier crop is, but for its id. */
export type NewEarlierCrop = Omit<EarlierCrop, "id">;
type NewMark = Omit<GroundMark, "id">;

/** Adds crops under ids of their own, in one step. */
export function addEarlierCrops(crops: readonly NewEarlierCrop[], title: string): Edit {
  return {
    title,
    apply: (plan) => {
      if (crops.length === 0) return plan;
      const list = [...plan.earlierCrops];
      for (const crop of crops) {
        const id = nextId(
          "e",
          list.map((entry) => entry.id),
        );
        list.push({ ...crop, id });
      }
      return { ...plan, earlierCrops: list };
    },
  };
}

/** Puts a crop in the place of the one with its id. */
export function changeEarlierCrop(crop: EarlierCrop): Edit {
  return {
    title: steps.changeCrop(crop.year),
    apply: (plan) => {
      const earlierCrops = mapItem(plan.earlierCrops, crop.id, () => crop);
      return earlierCrops === plan.earlierCrops ? plan : { ...plan, earlierCrops };
    },
  };
}

export function removeEarlierCrops(ids: readonly string[], title: string): Edit {
  return {
    title,
    apply: (plan) => {
      const earlierCrops = plan.earlierCrops.filter(({ id }) => !ids.includes(id));
      return earlierCrops.length === plan.earlierCrops.length ? plan : { ...plan, earlierCrops };
    },
  };
}

/** What an earlier season's plan brings along. */
export interface BroughtCrops {
  /** The calendar year its season began in. */
  readonly year: number;
  readonly layoutName: string;
  readonly crops: readonly NewEarlierCrop[];
  /** Marks on the ground that this plan has not. */
  readonly marks: readonly NewMark[];
  /** Own kinds they are of that the plan has not, under ids that are free in it. */
  readonly ownKinds: readonly OwnKind[];
  /** Crops of its plan that this plan has already. */
  readonly known: number;
  /** Crops that lie too far off to be on this sheet. */
  readonly away: number;
  /** Whether both plans say where their sheets lie, so that ground is matched by position. */
  readonly isPlaced: boolean;
}

/** What grew in an earlier plan's season, on its own sheet and of its own kinds. */
export interface GrownCrops {
  readonly layoutName: string;
  readonly crops: readonly NewEarlierCrop[];
}

/** The plantings of a plan's chosen layout, else its first, as they were planned. */
export function grownAsPlanned(plan: Plan): GrownCrops {
  const layout = chosenLayout(plan);
  const varieties = new Map(plan.varieties.map((variety) => [variety.id, variety]));
  const crops = layout.plantings.flatMap((planting: Planting): readonly NewEarlierCrop[] => {
    const variety = varieties.get(planting.variety);
    if (!variety) return [];
    const { name, kind } = variety;
    const came = outcomeAsPlanned(planting, variety, plan);
    const named = name === "" ? {} : { varietyName: name };
    return [{ outline: planting.outline, kind, ...came, ...named }];
  });
  return { layoutName: layout.name, crops };
}

/**
 * What grew in an earlier plan's season, and the crops it knew of itself, as earlier crops of a
 * plan. Where both sites have a position, outlines are laid on the ground of the plan's sheet; else
 * the two sheets are taken to be one.
 */
export function cropsOfPlan(
  earlier: Plan,
  plan: Plan,
  grown: GrownCrops = grownAsPlanned(earlier),
): BroughtCrops {
  const { year } = civilFromDay(earlier.season.first);
  const place = placer(earlier, plan);
  const kinds = kindsBrought(earlier.ownKinds, plan, crossesAlike);
  const known = new Set(plan.ownKinds);
  const all = [...grown.crops, ...earlier.earlierCrops].map((crop): NewEarlierCrop => ({
    ...crop,
    outline: place(crop.outline),
    kind: kinds.idOf(crop.kind),
  }));
  const marks = marksOf(earlier, plan, place, kinds.idOf);
  const taken = new Set(plan.earlierCrops.map(cropSign));
  const here = all.filter(({ outline }) => isOnSheet(outline));
  const crops = here.filter((crop) => !taken.has(cropSign(crop)));
  const used = new Set([
    ...crops.map(({ kind }) => kind),
    ...marks.flatMap((mark) => mark.kinds ?? []),
  ]);
  return {
    year,
    layoutName: grown.layoutName,
    crops,
    marks,
    ownKinds: kinds.ownKinds.filter((own) => !known.has(own) && used.has(own.id)),
    known: here.length - crops.length,
    away: all.length - here.length,
    isPlaced: earlier.site.position !== undefined && plan.site.position !== undefined,
  };
}

/** Marks of the earlier plan on the ground of this one's sheet, those it has already left out. */
function marksOf(
  earlier: Plan,
  plan: Plan,
  place: (outline: AreaShape) => AreaShape,
  kindId: (id: string) => string,
): readonly NewMark[] {
  const known = new Set(plan.groundMarks.map(signOfMark));
  return earlier.groundMarks
    .map((mark): NewMark => ({
      ...mark,
      outline: place(mark.outline),
      ...(mark.kinds ? { kinds: mark.kinds.map(kindId) } : {}),
    }))
    .filter((mark) => isOnSheet(mark.outline) && !known.has(signOfMark(mark)));
}

/** Takes them into the plan in one step. */
export function takeOverCrops({ crops, marks, ownKinds }: BroughtCrops, title: string): Edit {
  const [addCrops, addMarks] = [addEarlierCrops(crops, title), addGroundMarks(marks, title)];
  return {
    title,
    apply: (plan) =>
      addMarks.apply(
        addCrops.apply(
          ownKinds.length === 0 ? plan : { ...plan, ownKinds: [...plan.ownKinds, ...ownKinds] },
        ),
      ),
  };
}

/** What a planting left on its ground, as far as a plan alone tells. */
type Outcome = Pick<NewEarlierCrop, "year" | "code" | "wentToSeed" | "knownFrom">;

/**
 * The calendar year a planting was harvested in, and whether it went to seed, by its plan. The year
 * is that of its end, else of its ripe seed, else of the end of its bloom, within its season. Where
 * no date tells, the year the season ended in: the later, the more careful.
 */
export function outcomeAsPlanned(planting: Planting, variety: Variety, plan: Plan): Outcome {
  const { ownKinds, season } = plan;
  const own = ownKinds.find(({ id }) => id === variety.kind);
  const kind = own ? kindOf(own) : cropBook().kind(variety.kind);
  const parts = kind ? plantingBloom(planting, variety, kind, bloomSetting(plan)) : null;
  const day = planting.end ?? parts?.ripe?.latest ?? parts?.whole.outer.last ?? season.last;
  return {
    year: civilFromDay(Math.min(Math.max(day, season.first), season.last)).year,
    ...(planting.code === "" ? {} : { code: planting.code }),
    wentToSeed: wentToSeed(planting, kind, parts?.ripe?.earliest ?? null),
    knownFrom: "plan",
  };
}

/**
 * `no` only for what cannot have borne seed: cut before bloom, a biennial in its first year, or
 * cleared before the first seed could be ripe. What was eaten and not cut may have shed some.
 */
function wentToSeed(
  { flowering, purpose, start, end }: Planting,
  kind: Kind | undefined,
  ripeFrom: DayNumber | null,
): EarlierCrop["wentToSeed"] {
  const isFirstYear = flowering === "first-year" && kind?.lifeCycle !== "annual";
  if (flowering === "cut" || isFirstYear) return "no";
  const isCleared = end !== undefined && end >= (start?.date ?? -Infinity);
  if (isCleared && ripeFrom !== null && end < ripeFrom) return "no";
  return purpose === "seed" ? "yes" : "unknown";
}

function chosenLayout({ layouts, chosenLayout: id }: Plan): Layout {
  return layouts.find((layout) => layout.id === id) ?? (layouts[0] as Layout);
}

/** Farther from the sheet's origin, metres, no ground of the plan lies: another place altogether. */
const FARTHEST_M = 20_000;

function isOnSheet(outline: AreaShape): boolean {
  const { x, y } = shapeCentre(outline);
  return Math.abs(x) <= FARTHEST_M && Math.abs(y) <= FARTHEST_M;
}

/** The same for crops that are the same crop: outlines to the millimetre. */
export function cropSign({ outline, kind, year, varietyName = "" }: NewEarlierCrop): string {
  return rounded([kind, year, varietyName, outline]);
}

function signOfMark({ outline, disease, name = "", seenOn }: NewMark): string {
  return rounded([disease, name, seenOn, outline]);
}

function rounded(value: unknown): string {
  return JSON.stringify(value, (_, part: unknown) =>
    typeof part === "number" ? Math.round(part * 1000) / 1000 : part,
  );
}

/**
 * A kind this plan has under the same name serves where it is of the same group and species: no
 * more of it counts for what grew on the ground. Another of that name comes along beside it.
 */
function crossesAlike({ copied, here, isBuiltIn }: KindClash): ClashAnswer {
  const isAlike =
    here !== null && groupWord(here) === groupWord(copied) && here.species === copied.species;
  return isBuiltIn || isAlike ? "here" : "copied";
}

/** From the earlier sheet to the plan's, over the ground where both say where they lie. */
function placer(earlier: Plan, plan: Plan): (outline: AreaShape) => AreaShape {
  const [from, to] = [earlier.site, plan.site];
  if (!from.position || !to.position) return (outline) => outline;
  const isSame =
    from.position.longitude === to.position.longitude &&
    from.position.latitude === to.position.latitude &&
    from.upBearingDeg === to.upBearingDeg;
  if (isSame) return (outline) => outline;
  const [old, now] = [
    localFrame(from.position, from.upBearingDeg),
    localFrame(to.position, to.upBearingDeg),
  ];
  const move = (point: Point): Point => now.toSheet(old.toLonLat(point));
  return (outline) => {
    if (outline.shape === "rectangle") {
      const turned = turnShape(outline, outline, from.upBearingDeg - to.upBearingDeg);
      return { ...turned, ...move(outline) };
    }
    const moved = (ring: PolygonShape["corners"]) =>
      ring.map(([x, y]): [number, number] => {
        const corner = move({ x, y });
        return [corner.x, corner.y];
      });
    return {
      ...outline,
      corners: moved(outline.corners),
      ...(outline.holes ? { holes: outline.holes.map(moved) } : {}),
    };
  };
}
