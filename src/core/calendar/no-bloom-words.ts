/** Why no bloom is told, and what would tell it. */

/**
 * - `no-start`: neither a start nor dates. `no-figure`: the kind gives no days for this start.
 * - `first-year`: a biennial sown, or set out too late in spring to be an overwintered one.
 * - `autumn-start`: figures of spring, started in another season.
 * - `over-winter`: the count would run into or through a winter.
 * - `heat-not-met`: the heat is not reached by frost, winter or the end of the season.
 * - `after-frost`: it would open after the first autumn frost, which kills it.
 * - `before-season`: it would be over before the season begins.
 * - `later-years`: a perennial past its first bloom.
 * - `cleared`: it is cleared well before its earliest first flower; it sheds nothing.
 */
export type WhyNoBloom =
  | "no-start"
  | "no-figure"
  | "first-year"
  | "autumn-start"
  | "over-winter"
  | "heat-not-met"
  | "after-frost"
  | "before-season"
  | "later-years"
  | "cleared";

const words: Readonly<Record<WhyNoBloom, string>> = {
  "no-start": "It has no start date.",
  "no-figure": "No days to flower are known for this start.",
  "first-year":
    "A biennial flowers after a winter. Days to flower hold for overwintered roots or plants set out in spring.",
  "autumn-start":
    "The days or heat to flower known for it hold for spring sowings, not for this one.",
  "over-winter":
    "Counted from its start it would flower in or after a winter, which no days or heat to flower tell.",
  "heat-not-met":
    "The heat it needs is not reached before frost, winter or the end of the season in the climate given.",
  "after-frost":
    "By its days it would flower after the first autumn frost, which it does not outlive.",
  "before-season": "Counted from its start it would be over before the season begins.",
  "later-years":
    "Days from its start tell the first bloom of a perennial, not those of later years.",
  cleared: "It is cleared before it can flower.",
};

export function noBloomWords(why: WhyNoBloom): string {
  return words[why];
}
