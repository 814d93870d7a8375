/** Laying out a seed list in words, for screen and command line alike. */
import { listed } from "../checks/wording.ts";
import { UNASKED_PLANTS } from "../edits/new-planting.ts";
import { shortDate } from "../model/day.ts";
import { type LengthUnit, formatArea, formatDistance, formatRequired } from "../model/length.ts";
import type { LayOutFault } from "./lay-out-faults.ts";
import type { LayGoal } from "./lay-out-goals.ts";
import { alikeLayouts } from "./laid-out-layouts.ts";
import type { LaidOut } from "./lay-out.ts";
import type { LeftVariety, SeedParts } from "./seed-parts.ts";
import { counted } from "../words/plurals.ts";

/** Names of the layouts. */
export const goalNames: Readonly<Record<LayGoal, string>> = {
  "all-grown": "All grown this year",
  "fewest-covers": "Fewest covers",
  roomiest: "Roomiest distances",
};

/** What each is good for, and what it gives up. */
export const goalWords: Readonly<Record<LayGoal, string>> = {
  "all-grown":
    "Every variety that finds room is grown. What ground cannot part flowers at another time or is covered.",
  "fewest-covers":
    "Distance and flowering time do all the work. What they cannot part waits for another year.",
  roomiest:
    "Distance alone keeps crossing varieties apart, as wide as the ground allows. The rest waits for another year.",
};

export const EDIT_TITLE = "Lay out the seed list";

/** Why nothing can be laid out, and what to do. */
export function faultWords(fault: LayOutFault): string {
  switch (fault.why) {
    case "no-beds":
      return "This layout has no beds: lay out beds first, then the seed list goes on them.";
    case "nothing-wanted":
      return "The seed list asks for nothing more: every variety has the plants it wants.";
    case "no-dates":
      return "No day to sow or set out can be told: type the last spring frost in the plan settings, then lay out the seed list.";
    case "no-room":
      return "No bed has free ground for even one plant at its spacing: make room or lay out larger beds.";
    case "nothing-left":
      return `Nothing of the seed list can be laid out. ${fault.left.map(leftWords).join(" ")}`;
  }
}

function plantCount(count: number): string {
  return counted(count, { one: "plant", other: "plants" });
}

/** One variety that is not laid, and why. */
export function leftWords({ variety: { name }, plants, reason }: LeftVariety): string {
  switch (reason.why) {
    case "no-room":
      return `${name}: no room for ${plantCount(plants)}.`;
    case "unknown-kind":
      return `${name}: its kind is not known, so neither spacing nor dates are.`;
    case "too-late":
      return reason.ripe === null
        ? `${name}: frost, given as ${shortDate(reason.frost)}, would catch it before it flowers.`
        : `${name}: its seed would ripen about ${shortDate(reason.ripe)}, after the first frost, given as ${shortDate(reason.frost)}.`;
    case "waits":
      if (reason.against.length === 0) return `${name} waits a year: nothing here keeps it apart.`;
      return reason.isAround
        ? `${name} is not grown: too near ${listed(reason.against)}, which another year does not take away.`
        : `${name} waits a year: too near ${listed(reason.against)}.`;
  }
}

/** What a layout costs, in short lines. */
export function costWords({ cost, left }: LaidOut, unit: LengthUnit): readonly string[] {
  const { conflicts, unknowns, covers, later, onTime, onCover, tightest } = cost;
  const waiting = left.filter(({ reason }) => reason.why === "waits").length;
  const short = left.filter(({ reason }) => reason.why === "no-room");
  const lost = short.reduce((sum, { plants }) => sum + plants, 0);
  const tight = tightest
    ? [
        `Closest of those that distance keeps apart: ${formatDistance(tightest.distanceM, unit)} of ${formatRequired(tightest.requiredM, unit)}`,
      ]
    : [];
  return [
    `${varietyCount(cost.varieties)}, ${plantCount(cost.plants)}`,
    ...(waiting > 0 ? [`${varietyCount(waiting)} not grown this year`] : []),
    ...(lost > 0 ? [`${plantCount(lost)} did not fit`] : []),
    conflictCount(conflicts),
    ...(unknowns > 0 ? [`${unknowns} not known, so not called clear`] : []),
    covers === 0 ? "No cover" : `${covers} covered`,
    ...(later > 0 ? [`${varietyCount(later)} started later than usual`] : []),
    ...restWords(onTime, "time"),
    ...restWords(onCover, "a cover"),
    `${formatArea(cost.groundM2, unit)} of ${formatArea(cost.bedsM2, unit)} of bed planted`,
    ...tight,
  ];
}

function restWords(count: number, on: string): readonly string[] {
  if (count === 0) return [];
  return [`${counted(count, { one: "pair rests", other: "pairs rest" })} on ${on} alone`];
}

function conflictCount(count: number): string {
  if (count === 0) return "No conflict found";
  return counted(count, { one: "conflict left", other: "conflicts left" });
}

function varietyCount(count: number): string {
  return counted(count, { one: "variety", other: "varieties" });
}

/** What holds for all three layouts. */
export function seedNotes({ wanted }: SeedParts): readonly string[] {
  const namesOf = (of: typeof wanted) => listed(of.map(({ variety }) => variety.name));
  const stored = wanted.filter(({ starts }) => starts.isOverwintered);
  const unasked = wanted.filter(({ variety }) => variety.wantedPlants === undefined);
  const undated = wanted.filter(({ starts }) => !starts.usual);
  return [
    ...(stored.length > 0
      ? [
          `${namesOf(stored)}: laid out as roots or plants kept over winter and set out in spring. Where you have none, mark them as in their first year.`,
        ]
      : []),
    ...(undated.length > 0
      ? [`${namesOf(undated)}: nothing tells when to start, so no day is given.`]
      : []),
    ...(unasked.length > 0
      ? [
          `${namesOf(unasked)}: no number of plants is wanted, so as many were taken as keep a variety of the kind true; ${UNASKED_PLANTS} where nobody says how many.`,
        ]
      : []),
  ];
}

/** Which layouts have come out the same; null: all differ. */
export function sameWords(laid: readonly LaidOut[]): string | null {
  const same = alikeLayouts(laid).find((alike) => alike.length > 1);
  if (!same) return null;
  return `${listed(same.map(({ goal }) => goalNames[goal]))} come out the same: there is nothing to choose between.`;
}
