/**
 * Raising plants: how many weeks they stand under glass, and when they may go out. For offers only;
 * the days typed decide.
 */
import type { Kind, Range, Source, Sourced } from "./crop.ts";
import { recalled } from "./figures.ts";
import { growthOf } from "./growth.ts";
import { citedAs } from "./sources.ts";

const raisingSources: readonly Source[] = [
  {
    id: "seedling-weeks",
    title: "When should I start my vegetable seedlings?",
    publisher: "Better Homes and Gardens",
    edition: "n.d.",
    trust: "seen",
  },
  {
    id: "setting-out-hardy",
    title: "When is it safe to plant your garden?",
    publisher: "News and Record, Greensboro",
    edition: "11 April 2021",
    trust: "seen",
  },
];

const byId = new Map(raisingSources.map((source) => [source.id, source]));

/** Who says it: title and publisher, or why there is neither. */
export function raisingCited(id: string): string {
  const source = byId.get(id);
  return source ? `${source.title}, ${source.publisher}` : citedAs(id);
}

function seen(least: number, most = least): Sourced<Range> {
  return { value: [least, most], source: "seedling-weeks" };
}

const weeks: ReadonlyMap<string, Sourced<Range>> = new Map([
  ["artichoke", seen(4, 6)],
  ["broccoli", seen(5, 7)],
  ["brussels-sprouts", seen(4, 6)],
  ["cabbage", seen(5, 7)],
  ["cauliflower", seen(5, 7)],
  ["chives", seen(6, 8)],
  ["collards", seen(4, 6)],
  ["cucumber", seen(4)],
  ["eggplant", seen(6, 9)],
  ["endive", seen(4, 6)],
  ["kale", seen(4, 6)],
  ["kohlrabi", seen(4, 6)],
  ["lettuce", seen(3, 5)],
  ["melon", seen(3, 4)],
  ["okra", seen(4, 6)],
  ["onion", seen(12)],
  ["pepper", seen(6, 8)],
  ["hot-pepper", seen(6, 8)],
  ["spinach", seen(6, 8)],
  ["summer-squash", seen(3, 4)],
  ["winter-squash", seen(3, 4)],
  ["pumpkin", seen(3, 4)],
  ["butternut", seen(3, 4)],
  ["tomato", seen(5, 7)],
  ["watermelon", seen(3, 4)],
  ["leek", recalled([10, 12])],
  ["bunching-onion", recalled([8, 10])],
  ["celery", recalled([10, 12])],
  ["celeriac", recalled([10, 12])],
  ["parsley", recalled([8, 10])],
  ["basil", recalled([5, 7])],
  ["currant-tomato", recalled([5, 7])],
  ["husk-tomato", recalled([5, 7])],
  ["tomatillo", recalled([5, 7])],
  ["habanero", recalled([8, 10])],
  ["aji", recalled([8, 10])],
  ["bird-pepper", recalled([8, 10])],
  ["rocoto", recalled([10, 12])],
  ["tobacco", recalled([8, 10])],
  ["bottle-gourd", recalled([3, 4])],
  ["luffa", recalled([4, 6])],
  ["angled-luffa", recalled([4, 6])],
  ["bitter-gourd", recalled([3, 4])],
  ["zinnia", recalled([4, 6])],
  ["french-marigold", recalled([6, 8])],
  ["african-marigold", recalled([6, 8])],
]);

/**
 * Kinds that are sown in place though plants of them can be raised: they take moving badly and run
 * to flower where it checks them. By common practice.
 */
const sownInPlace: ReadonlySet<string> = new Set(["spinach"]);

/** How a kind is usually started: set out as a plant where it is raised under glass, else sown. */
export function usualMethod(kind: Pick<Kind, "id">): "transplanted" | "sown" {
  return weeksUnderGlass(kind) && !sownInPlace.has(kind.id) ? "transplanted" : "sown";
}

/** Weeks from sowing under glass to a plant that can be set out; undefined: not known. */
export function weeksUnderGlass({ id }: Pick<Kind, "id">): Sourced<Range> | undefined {
  return weeks.get(id);
}

/**
 * Days from the last spring frost at which plants go out; less than 0 before it. Hardy kinds about
 * three weeks before it (setting-out-hardy); tender ones a week after it, by common practice.
 */
export function setOutAfterFrost(kind: Pick<Kind, "id">): Sourced<number> {
  return growthOf(kind).isTender
    ? { value: 7, source: "home-practice" }
    : { value: -21, source: "setting-out-hardy" };
}

/** Kinds named above, for the test that each is a kind. */
export const raisedKinds: readonly string[] = [...weeks.keys()];
