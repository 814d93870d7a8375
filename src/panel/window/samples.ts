/** Sample plans, each fetched when asked for; the first opens on a first visit. */

interface SamplePlan {
  readonly title: string;
  readonly fileName: string;
  readonly load: () => Promise<string>;
}

export async function loadFirstSample(): Promise<string> {
  return (await import("../../../sample-plots/garden-to-solve.json?raw")).default;
}

export const samples: readonly SamplePlan[] = [
  {
    title: "Garden with conflicts to solve",
    fileName: "garden-to-solve.json",
    load: loadFirstSample,
  },
  {
    title: "The same garden, solved",
    fileName: "garden-solved.json",
    load: async () => (await import("../../../sample-plots/garden-solved.json?raw")).default,
  },
  {
    title: "Two-acre field with neighbours",
    fileName: "two-acre-field.json",
    load: async () => (await import("../../../sample-plots/two-acre-field.json?raw")).default,
  },
  {
    title: "Field by a lane: how much would cross",
    fileName: "lane-field.json",
    load: async () => (await import("../../../sample-plots/lane-field.json?raw")).default,
  },
  {
    title: "Walled garden: four years of ground",
    fileName: "walled-garden.json",
    load: async () => (await import("../../../sample-plots/walled-garden.json?raw")).default,
  },
  {
    title: "Seed collection: sixty varieties, five years",
    fileName: "seed-collection.json",
    load: async () => (await import("../../../sample-plots/seed-collection.json?raw")).default,
  },
];
