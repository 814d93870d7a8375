/**
 * The lists of a plan whose entries have ids, in one table: a new list of the plan's schema is
 * asked for here by the compiler, and is then counted and kept in a selection like the others.
 */
import type { Layout, Plan } from "./plan.ts";

type ListsOf<T> = {
  [K in keyof T]-?: T[K] extends readonly { readonly id: string }[] ? K : never;
}[keyof T];

/** `sheet`: drawn, and can be selected; `list`: only ever shown in lists. */
type Home = "sheet" | "list";

const ofPlan: Readonly<Record<Exclude<ListsOf<Plan>, "layouts">, Home>> = {
  surroundings: "sheet",
  varieties: "list",
  lots: "list",
  storagePlaces: "list",
  ownKinds: "list",
  earlierCrops: "list",
  groundMarks: "list",
  entries: "list",
};

const ofLayout: Readonly<Record<ListsOf<Layout>, Home>> = { beds: "sheet", plantings: "sheet" };

const planLists = Object.keys(ofPlan) as readonly (keyof typeof ofPlan)[];
const layoutLists = Object.keys(ofLayout) as readonly (keyof typeof ofLayout)[];

/** Ids of what can be selected on the sheet while a layout is shown. */
export function idsOnSheet(plan: Plan, layout: Layout): ReadonlySet<string> {
  const lists = [
    ...layoutLists.filter((name) => ofLayout[name] === "sheet").map((name) => layout[name]),
    ...planLists.filter((name) => ofPlan[name] === "sheet").map((name) => plan[name]),
  ];
  return new Set(lists.flatMap((list) => list.map(({ id }) => id)));
}

/** How many entries each list of a plan has, those of all layouts together. */
export function countEntries(plan: Plan): ReadonlyMap<string, number> {
  const total = (name: keyof typeof ofLayout) =>
    plan.layouts.reduce((sum, layout) => sum + layout[name].length, 0);
  return new Map([
    ...planLists.map((name) => [name, plan[name].length] as const),
    ...layoutLists.map((name) => [name, total(name)] as const),
  ]);
}
