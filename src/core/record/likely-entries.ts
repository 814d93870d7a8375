/** Which entries make sense at a plot on a day: those that fit what it is and what has happened first. */
import type { Stand } from "../checks/stand.ts";
import type { DayNumber } from "../model/day.ts";
import { entryKinds } from "../model/entry-schema.ts";
import { isStanding } from "../model/layouts.ts";
import type { Cover, Entry } from "../model/plan.ts";
import type { PlotRecord } from "./plot-record.ts";

export interface LikelyEntries {
  /** To be offered at once, the likeliest first. */
  readonly first: readonly Entry["what"][];
  /** All others that can be written of it. */
  readonly more: readonly Entry["what"][];
}

type Kinds = readonly Entry["what"][];

/** As many as the buttons a thumb finds without looking. */
const MOST_FIRST = 6;

/**
 * @param stand as planned
 * @param record what was written until that day
 */
export function likelyEntries(stand: Stand, record: PlotRecord, on: DayNumber): LikelyEntries {
  const isOurs = stand.planting !== null;
  const fitting = isOurs ? plotEntries(stand, record, on) : sourceEntries(record);
  const first = [...new Set<Entry["what"]>([...fitting, "note"])].slice(0, MOST_FIRST);
  const more = entryKinds.filter(
    (what) => what !== "done" && !first.includes(what) && (isOurs ? isOfPlot : isOfSource)(what),
  );
  return { first, more };
}

function isOfPlot(what: Entry["what"]): boolean {
  return what !== "neighbour asked";
}

const OF_SOURCES: ReadonlySet<Entry["what"]> = new Set([
  "first flower",
  "last flower",
  "looked at",
  "neighbour asked",
  "cut before bloom",
  "covered",
  "uncovered",
  "note",
]);

function isOfSource(what: Entry["what"]): boolean {
  return OF_SOURCES.has(what);
}

/** A neighbour's or a wild stand: is it open, is it over, what do its people say. */
function sourceEntries({ firstFlower, lastFlower }: PlotRecord): Kinds {
  if (lastFlower !== null) return ["neighbour asked"];
  if (firstFlower !== null) return ["last flower", "neighbour asked"];
  return ["first flower", "looked at", "neighbour asked", "cut before bloom"];
}

function plotEntries(stand: Stand, record: PlotRecord, on: DayNumber): Kinds {
  const planned = stand.planting;
  const isRaised = planned?.start?.method === "transplanted";
  const isBegunBy = planned?.start === undefined || planned.start.date <= on;
  const isBegun = record.sownOn !== null || record.setOutOn !== null || isBegunBy;
  const isGlass = isRaised && planned?.start?.sownUnderGlass !== undefined;
  const hasStood = planned !== null && isStanding(planned);
  const beginnings = hasStood ? [] : beginningsOf(record, isRaised, isGlass);
  if (!isBegun) return beginnings;
  const isToFlower = stand.shedsPollen || planned?.flowering === "cut";
  const bloom = bloomEntries(stand, record);
  // A first year's roots may bolt all the same, but that is not what one comes for.
  if (!isToFlower) return [...beginnings, "rogued", "lost", "harvested", ...bloom];
  return [...bloom, ...beginnings, "rogued", "lost", ...ends(record)];
}

/** What is written while it is young: nothing more once it flowered. */
function beginningsOf(record: PlotRecord, isRaised: boolean, isGlass: boolean): Kinds {
  if (record.firstFlower !== null) return [];
  const isUp = record.entries.some(({ what }) => what === "emerged");
  if (isRaised && record.setOutOn === null) {
    return isGlass && record.sownOn === null ? ["sown", "set out"] : ["set out"];
  }
  if (isRaised) return [];
  if (record.sownOn === null && record.setOutOn === null) return ["sown"];
  return record.sownOn !== null && record.setOutOn === null && !isUp ? ["emerged"] : [];
}

/** Flowers, and what keeps pollen off them. */
function bloomEntries({ planting, carrier }: Stand, record: PlotRecord): Kinds {
  const { firstFlower, lastFlower, cutOn } = record;
  const planned: Cover = planting?.cover ?? "none";
  const isCovered = record.covers.some(({ last }) => last === null);
  const cover: Kinds = !isCovered && planned !== "none" ? ["covered"] : [];
  if (lastFlower !== null) return isCovered ? ["uncovered", "harvested"] : ["harvested"];
  if (firstFlower !== null) {
    const byHand: Kinds = planned === "hand" ? ["hand pollinated"] : [];
    const insects: Kinds =
      isCovered && planned === "cage" && carrier !== "wind" && record.pollinatorsIn === null
        ? ["pollinators let in"]
        : [];
    return [...cover, ...byHand, ...insects, "last flower", ...(isCovered ? COVER_OFF : [])];
  }
  const cut: Kinds = planting?.flowering === "cut" && cutOn === null ? ["cut before bloom"] : [];
  return [...cut, ...cover, "first flower", "looked at"];
}

const COVER_OFF: Kinds = ["uncovered"];

function ends({ firstFlower, harvestedPlants, fruits }: PlotRecord): Kinds {
  const isHarvested = harvestedPlants !== null || fruits !== null;
  if (isHarvested) return ["cleaned", "cleared", "harvested"];
  return firstFlower === null ? [] : ["harvested"];
}
