/** Sample plans, each fetched when asked for; the first opens on a first visit (app/first-sample.ts). */
import * as words from "./words.ts";

interface SamplePlan {
  readonly title: string;
  readonly fileName: string;
  readonly load: () => Promise<string>;
}

export const samples: readonly SamplePlan[] = [
  {
    title: words.gardenToSolve,
    fileName: "garden-to-solve.json",
    load: async () => (await import("../../../sample-plots/garden-to-solve.json?raw")).default,
  },
  {
    title: words.gardenSolved,
    fileName: "garden-solved.json",
    load: async () => (await import("../../../sample-plots/garden-solved.json?raw")).default,
  },
  {
    title: words.twoAcreField,
    fileName: "two-acre-field.json",
    load: async () => (await import("../../../sample-plots/two-acre-field.json?raw")).default,
  },
  {
    title: words.laneField,
    fileName: "lane-field.json",
    load: async () => (await import("../../../sample-plots/lane-field.json?raw")).default,
  },
  {
    title: words.walledGarden,
    fileName: "walled-garden.json",
    load: async () => (await import("../../../sample-plots/walled-garden.json?raw")).default,
  },
  {
    title: words.seedCollection,
    fileName: "seed-collection.json",
    load: async () => (await import("../../../sample-plots/seed-collection.json?raw")).default,
  },
];
