/** How and when several plantings start, in words. */
export const sharedStartWords = {
  method: "Started",
  methods: { sown: "sown in place", transplanted: "set out (plants, roots, bulbs)" },
  usual: "Each as its kind usually starts",
  usualHint: (count: string) =>
    `Sown or set out, counted from the last spring frost: known for ${count}. Biennials as roots or plants of last year; where you have none, mark them as in their first year.`,
  known: ["planting", "plantings"],
  setUsual: (what: string) => `Set the usual start of ${what}`,
  setStart: (what: string) => `Set start of ${what}`,
  setMethod: (what: string) => `Change how ${what} start`,
} as const;
