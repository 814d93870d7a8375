/** What is said of a distance of the grower's own that lies far below what is published. */
import { levelNames } from "./level-words.ts";

type Told = (own: string, published: string, kind: string) => string;

export const title = (names: string) => `${names}: own distance far below what is published`;
/** By whose the distance is. */
export const told: Readonly<Record<"planting" | "variety" | "kind" | "picked", Told>> = {
  planting: (own, published, kind) =>
    `${own} is typed for this planting; for ${kind} ${published} is published.`,
  variety: (own, published, kind) =>
    `${own} is typed for this variety; for ${kind} ${published} is published.`,
  kind: (own, published, kind) =>
    `${own} is typed for this kind; for ${kind} ${published} is published.`,
  picked: (own, published, kind) =>
    `The figure picked for this variety is ${own}; for ${kind} ${published} is published at this level.`,
};
export const publishedIs = (why: string, source: string) => `Published: ${why} (${source}).`;
export const wildAsks = (why: string, source: string) =>
  `A wild kind it crosses with is in the plan, and asks more: ${why} (${source}).`;
export const leastIs = (metres: string, level: "home" | "sale" | "stock") =>
  `The least that is published for ${levelNames[level]} is ${metres}.`;
export const advice = (own: string) =>
  `It stands, and what lies ${own} away or farther is called clear. If you have a reason, accept this and say so; else take the distance out.`;
