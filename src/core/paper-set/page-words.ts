/** What the lists and reports on paper say beside what the plan gives: titles, columns, cautions. */

export const calendarWords = {
  title: "Season calendar",
  day: "Day",
  what: "What",
  done: "Done, by",
  none: "No dates are known: give the plantings a start date.",
  withCaution: (job: string, caution: string) => `${job}. Caution: ${caution}`,
  doneBy: (date: string, who: string) => `${date}, ${who}`,
} as const;

/** Of something that goes on, on the next card or page. */
export const continued = (name: string) => `${name}, continued`;

export const bedCardWords = {
  title: "Bed cards",
  page: (page: number, of: number) => `Bed cards, page ${page} of ${of}`,
  bed: (code: string) => `Bed ${code}`,
  plot: (code: string) => `Plot ${code}`,
  size: (width: string, length: string) => `${width} wide, ${length} long`,
  sizeAtMost: (width: string, length: string) => `at most ${width} wide, ${length} long`,
  drawn: (size: string, ratio: string) => `${size}; drawn ${ratio}, near end left`,
  drawing: (title: string, plantings: string) => `Drawing of ${title}, ${plantings}.`,
  /** Over the boxes to write in, and the same for narrow boxes. */
  captions: ["Started", "Up", "First bloom", "Rogued", "Harvest"],
  shortCaptions: ["Started", "Up", "Bloom", "Rogued", "Harvest"],
  notes: "Notes",
  /** What stays in the ground is carried on boots and tools (common practice). */
  marked: (disease: string, seenOn: string, part: string | null) =>
    `Caution: ${disease} in the ground, seen ${seenOn}${part === null ? "" : `, ${part}`}. Come here last, clean boots and tools after it`,
  along: (from: string, to: string) => `${from} to ${to} from the near end`,
  machineCode: (code: string) => `Code for a machine: ${code}`,
} as const;

export const harvestWords = {
  title: "Harvest list",
  ripe: "First seed likely ripe",
  plot: "Plot",
  variety: "Variety, kind",
  plants: "Plants",
  how: "How to take it",
  harvested: "Harvested",
  taken: "Plants taken",
  seed: "Clean seed",
  lot: "Lot",
  nothing: "Nothing is kept for seed.",
  orLater: (first: string) => `${first} or later`,
  span: (first: string, last: string) => `${first} to ${last}`,
  notKnown: "not known",
  caution:
    "Days are estimated from bloom: look before you cut. Take no seed from plants that are not true, from a torn cover, or from what was picked up off the ground.",
} as const;

export const summaryWords = {
  title: "Summary",
  plot: "Plot",
  variety: "Variety, kind",
  plants: "Plants",
  needs: "Needs",
  weakest: "Weakest against",
  apart: "Apart",
  keptBy: "Kept apart by",
  grown: "As grown: seen, date",
  notKnown: "not known",
  nothing: "nothing that could cross",
  distance: "distance",
  time: "time alone",
  unsureTime: "time alone, by dates that are not sure",
  cover: "cover alone",
  conflict: "not reached",
  unknown: "cannot be told",
  grower: "Grower",
  seenBy: "Seen by (inspector or buyer)",
  name: "Name",
  date: "Date",
  signature: "Signature",
} as const;

export const reportWords = {
  planned: "Isolation report, as planned",
  grown: (date: string) => `Isolation report, as grown on ${date}`,
  source: "Pollen source",
  kind: "Kind",
  distance: "Distance",
  required: "Required",
  bloom: "Its bloom",
  together: "Days together",
  keptBy: "Kept apart by",
  nothing: "Nothing is kept for seed.",
  none: "Nothing in this plan that could cross with it sheds pollen.",
  allObserved: "Nothing that the record asks for was left unobserved.",
  notObserved: "Not observed:",
  unknownDistance: "a distance that is not known",
  takesPollen: (window: string, level: string, needs: string) =>
    `Takes pollen ${window}; held to the ${level} level; needs ${needs}.`,
  figureSource: (source: string) => `Source of the figure: ${source}.`,
  fromWild: (increase: string) => `from this wild kind: ${increase}`,
  ifNot: (advice: string) => `If not: ${advice}`,
  crossing: (verdict: string, said: string) => `${verdict} How much would cross: ${said}`,
  yearsTried: (years: string) => `Years tried: ${years}`,
  notKnown: "not known",
  noTime: "at no known time",
  window: (first: string, last: string, basis: string) => `${first} to ${last} (${basis})`,
} as const;

export const lotIsolationWords = {
  title: "Isolation as grown",
  none: "No lot on the shelf carries a record of how it was isolated.",
  lot: (code: string, name: string) => `Lot ${code}: ${name}`,
  noSource: "No pollen source of its crossing group stood within twice these distances.",
  sources: "Pollen sources of its crossing group within twice these distances:",
  more: (count: number) => `${count} more lay within that reach, all as well apart or better.`,
  allObserved: "Not observed: nothing that the record asks for.",
  notObserved: "Not observed:",
  harvested: (year: number) => `Harvested ${year}`,
  harvestedSometime: "Harvested in a year not known",
  fromPlot: (harvested: string, plot: string) => `${harvested} from plot ${plot}`,
  inSeason: (harvested: string, season: string) => `${harvested}, season ${season}`,
  notCounted: "plants not counted",
  savedFrom: (plants: number) => `saved from ${plants} plants`,
  seed: (grams: number) => `${grams} g of clean seed`,
  sownFrom: (lots: string) => `sown from ${lots}`,
  crossed: (lots: string) => `not kept apart while it grew, so that crosses may be in it: ${lots}`,
  grownAt: (site: string) => `grown at ${site}`,
  printed: (at: string) => `printed ${at}`,
} as const;

export const sowingWords = {
  title: "Sowing list",
  fileTitle: (map: string) => `${map}: sowing list`,
  printed: (at: string) => `printed ${at}`,
  done: "Done",
  date: "Date",
  plot: "Plot",
  variety: "Variety, kind",
  lot: "Lot",
  keptAt: "Kept at",
  seeds: "Seeds",
  grams: "Grams",
  plants: "Plants",
  lookOut: "Look out",
  nothing: "Nothing is sown in this layout.",
  short: (plants: number, seeds: number) => `no seed for ${plants} plants (${seeds} seeds)`,
  plantsNotGiven: "number of plants not given",
  noLot: "no lot named",
  otherVariety: (variety: string) => `LOT OF ${variety}`,
  proposed: "lot proposed",
  andFrom: "and from",
  caution:
    'Days under glass with an "about" are counted back from setting out by the weeks of the kind; your own days go before them. Seeds are reckoned with each lot\'s tested or estimated germination, what comes up, and the spare; where no emergence is given, rules of thumb stand in. Treated seed: gloves, no children, never for food or feed; what its label and local rules say goes before this list.',
} as const;

export const setOutWords = {
  title: "Set-out table",
  nothing: "There is nothing to mark out.",
  corners: "Corners",
  corner: "Corner",
  fromP: "From P",
  fromQ: "From Q",
  toNext: "To next",
  across: "Across",
  stakes: (baseline: string) =>
    `Drive stake P, the origin, and stake Q exactly ${baseline} apart, as the sketch shows. Hook a tape on each. Where both tapes show the lengths of a corner, beyond the line from P to Q, is that corner; hold both tapes level and tight.`,
  axes: (x: string) =>
    `${x} runs from P towards Q, y square to it. Corners are counted clockwise, from the near left where the bed is a rectangle. To next: to the corner that follows, the last to the first. Across: from corner 1 to 3 and from 2 to 4; of a true rectangle both are the same, so measure them before you dig.`,
  checkX: "In the worked check x",
  noTies:
    "Where the stakes stand: the plan draws no two fixed marks near stake P, such as corners of a building, trunks or the site's edge. When they are driven, measure stake P from two marks that stay, and stake Q from one, and write it here: P ____________  ____________  Q ____________",
  ties: (
    toP: readonly [string, string],
    marks: readonly [string, string],
    side: string,
    checkToQ: string,
  ) =>
    `Where the stakes stand: P is ${toP[0]} from mark 1, the ${marks[0]}, and ${toP[1]} from mark 2, the ${marks[1]}, to the ${side} of the line between them. Check: Q is ${checkToQ} from mark 1. The marks stand as the plan has them; where yours differ, yours go before the plan.`,
  check: (
    corner: { readonly code: string; readonly number: number },
    tapes: readonly [string, string],
    place: readonly [string, string],
    worst: string,
  ) =>
    `Worked check: for ${corner.code} corner ${corner.number} the tapes ${tapes[0]} and ${tapes[1]} meet at x ${place[0]}, y ${place[1]}. Over all corners the meeting point of the printed tapes lies at most ${worst} from the corner.`,
  sketch: (beds: string) =>
    `Sketch of the beds, stakes P and Q and the fixed marks. Beds: ${beds}.`,
} as const;

export const mapPageWords = {
  notes: "Notes",
  stopped: "The plot map was stopped",
  nothing: "There is nothing to draw",
  tooManySheets: (ratio: number, paper: string, count: number, most: number) =>
    `1:${ratio} on ${paper} takes ${count} sheets, more than ${most}`,
  plan: "the plan",
  bed: (code: string) => `bed ${code}`,
} as const;
