/** Ripening measured on vegetables, in days from the flower: each source gives a few kinds of several families. */
import type { Kind, Range, Sourced } from "./crop.ts";
import { from, fromFew } from "./figures.ts";

/** Measured on one kind, and taken for others of its species. */
const printedFor = (kind: string, note: string) => `measured on ${kind}: ${note}`;

const cabbage: Range = [80, 101];
const CABBAGE_NOTE = "most seed at 80 days from mid bloom, the best at 94 to 101";
const oldestFruit = (kind: string) =>
  fromFew<Range>(
    "cucurbit-fruit-age",
    [49, 54],
    `best germination, in the oldest ${kind} fruit tried`,
  );
const pepo = fromFew<Range>(
  "cucurbit-fruit-age",
  [49, 60],
  "best germination in the oldest fruit tried, 54 days; the upper end is recalled",
);
const watermelon = (note: string) => fromFew<Range>("watermelon-seed", [40, 45], note);
const WATERMELON_NOTE = "seed that keeps best";
const kindredCole = fromFew("cabbage-seed", cabbage, printedFor("cabbage", CABBAGE_NOTE));

/** First flower to ripe seed. */
const ripening: ReadonlyMap<string, Sourced<Range>> = new Map(
  Object.entries<Sourced<Range>>({
    cabbage: fromFew("cabbage-seed", cabbage, CABBAGE_NOTE),
    kale: kindredCole,
    broccoli: kindredCole,
    "sprouting-broccoli": kindredCole,
    cauliflower: kindredCole,
    "brussels-sprouts": kindredCole,
    kohlrabi: kindredCole,
    collards: kindredCole,
    "chinese-kale": kindredCole,
    carrot: fromFew(
      "carrot-seed-tasmania",
      [35, 90],
      "35 days in hot Brazil, 55 to 87 in cool Tasmania; embryos grow until 90",
    ),
    onion: fromFew(
      "onion-seed-israel",
      [45, 72],
      "field cut 45 to 60 days after first bloom, by hand 10 to 12 later; one head opens over 25 to 31",
    ),
    watermelon: watermelon(WATERMELON_NOTE),
    "citron-melon": watermelon(printedFor("watermelon", WATERMELON_NOTE)),
    cucumber: oldestFruit("cucumber"),
    melon: oldestFruit("melon"),
    "summer-squash": pepo,
    pumpkin: pepo,
    "ornamental-gourd": pepo,
    pepper: from("pepper-seed-vigour", [56, 75], "wholly red: 8th week to 75 days"),
  }),
);

/** A kind with measured ripening in the place of what was recalled. */
export function withRipening(kind: Kind): Kind {
  const flowerToSeed = ripening.get(kind.id);
  return flowerToSeed ? { ...kind, timing: { ...kind.timing, flowerToSeed } } : kind;
}
