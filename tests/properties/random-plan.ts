/** Crowded random plans and random edits of them, for comparing two ways to compute the same. */
import { joinGroundReckoning } from "../../src/core/checks/ground-checks.ts";
import { joinSeedReckoning } from "../../src/core/checks/seed-lots.ts";
import { groundReckoning } from "../../src/core/ground/ground-reckoning.ts";
import { seedReckoning } from "../../src/core/shelf/seed-reckoning.ts";
import { cropBook } from "../../src/core/kinds/crop-book.ts";
import { acceptFinding, withdrawAcceptance } from "../../src/core/edits/accept-finding.ts";
import type { Edit } from "../../src/core/edits/edit.ts";
import { moveObjects, setOutline, turnObjects } from "../../src/core/edits/move-objects.ts";
import {
  addPlantings,
  changePlan,
  changePlantings,
  changeSurrounding,
  changeVariety,
  removeObjects,
} from "../../src/core/edits/object-edits.ts";
import { emptyPlan } from "../../src/core/model/empty-plan.ts";
import type {
  AreaShape,
  Bed,
  Layout,
  Plan,
  Planting,
  Surrounding,
  Variety,
} from "../../src/core/model/plan.ts";
import { randomStar } from "../support/shape-pairs.ts";
import type { SeededRandom } from "./seeded-random.ts";

joinSeedReckoning(seedReckoning);
joinGroundReckoning(groundReckoning);

export const book = cropBook();

const KINDS = [
  "tomato",
  "beet",
  "chard",
  "carrot",
  "summer-squash",
  "winter-squash",
  "butternut",
  "maize",
  "husk-tomato",
  "common-bean",
  "lettuce",
  "onion",
] as const;
const SEASON_FIRST = 20_820;

function randomArea(random: SeededRandom, spread: number): AreaShape {
  const [x, y] = [random.between(0, spread), random.between(0, spread)];
  if (random.chance(0.3)) return randomStar(random, x, y, random.between(0.5, 3)) as AreaShape;
  return {
    shape: "rectangle",
    x,
    y,
    widthM: random.between(0.5, 2),
    lengthM: random.between(0.5, 6),
    turnDeg: random.pick([0, 12, random.between(-180, 180)]),
  };
}

function randomWindow(random: SeededRandom) {
  const first = SEASON_FIRST + random.whole(100, 260);
  return { first, last: first + random.whole(3, 40) };
}

function traits(random: SeededRandom): Partial<Planting> {
  return {
    purpose: random.pick(["seed", "seed", "seed", "food"]),
    flowering: random.pick(["yes", "yes", "yes", "yes", "cut", "first-year"]),
    cover: random.pick(["none", "none", "none", "cage", "bags", "hand"]),
    plants: random.whole(0, 60),
    ...(random.chance(0.3) ? { isolationM: random.pick([0, 1, 5, 20, 1000]) } : {}),
    ...(random.chance(0.1) ? { keepApart: true } : {}),
    ...(random.chance(0.2) ? { level: random.pick(["home", "sale", "stock"]) } : {}),
    ...(random.chance(0.15) ? { end: SEASON_FIRST + random.whole(120, 300) } : {}),
    ...(random.chance(0.8) ? { bloom: randomWindow(random) } : {}),
    ...(random.chance(0.5)
      ? {
          start: {
            method: random.pick(["sown", "transplanted"]),
            date: SEASON_FIRST + random.whole(60, 200),
          },
        }
      : {}),
  };
}

function randomPlanting(
  random: SeededRandom,
  id: string,
  layout: Layout,
  plan: Plan,
  spread: number,
): Planting {
  return {
    id,
    code: id,
    variety: random.pick(plan.varieties).id,
    outline: randomArea(random, spread),
    purpose: "seed",
    flowering: "yes",
    cover: "none",
    ...(layout.beds.length > 0 && random.chance(0.7) ? { bed: random.pick(layout.beds).id } : {}),
    ...traits(random),
  };
}

/** @param spread side of the square the plan fills, metres */
export function randomPlan(random: SeededRandom, plantingCount: number, spread = 40): Plan {
  const varieties = Array.from({ length: 14 }, (_, index): Variety => ({
    id: `v${index}`,
    name: random.pick([`Variety ${index}`, "One Name"]),
    kind: random.pick(KINDS),
    ...(random.chance(0.3) ? { form: "potato-leaf" } : {}),
    ...(random.chance(0.1) ? { hybrid: true } : {}),
    ...(random.chance(0.7) ? { isolationM: random.between(0, 30) } : {}),
  }));
  const surroundings = Array.from({ length: 4 }, (_, index): Surrounding => ({
    id: `s${index}`,
    label: `Source ${index}`,
    what: random.chance(0.8) ? "pollen" : "hedge",
    kind: random.pick([...KINDS, "wild-carrot"]),
    outline: random.chance(0.5)
      ? { shape: "point", x: random.between(0, spread), y: random.between(0, spread) }
      : randomArea(random, spread),
    flowering: "yes",
    cover: "none",
    ...(random.chance(0.7) ? { bloom: randomWindow(random) } : {}),
  }));
  const beds = Array.from({ length: 6 }, (_, index): Bed => ({
    id: `b${index}`,
    code: `B${index}`,
    outline: randomArea(random, spread),
  }));
  const earlierCrops = Array.from({ length: 3 }, (_, index): Plan["earlierCrops"][number] => ({
    id: `c${index}`,
    kind: random.pick(KINDS),
    year: 2027 - random.whole(1, 4),
    outline: randomArea(random, spread),
  }));
  const empty = { ...emptyPlan("random", 2027), varieties, surroundings, earlierCrops };
  const layout: Layout = { id: "layout-1", name: "Layout 1", beds, plantings: [] };
  const plantings = Array.from({ length: plantingCount }, (_, index) =>
    randomPlanting(random, `p${index}`, layout, empty, spread),
  );
  return { ...empty, layouts: [{ ...layout, plantings }] };
}

/** A random edit of the first layout, of the sorts the screen offers. */
export function randomEdit(random: SeededRandom, plan: Plan, findingIds: readonly string[]): Edit {
  const layout = plan.layouts[0] as Layout;
  const drawn = [...layout.plantings, ...layout.beds, ...plan.surroundings];
  const any = random.pick(drawn);
  const planting = random.pick(layout.plantings);
  const variety = random.pick(plan.varieties);
  const edits: readonly (() => Edit)[] = [
    () => moveObjects(layout.id, [any.id], random.between(-5, 5), random.between(-5, 5)),
    () => moveObjects(layout.id, [planting.id], random.between(-20, 20), random.between(-20, 20)),
    () =>
      moveObjects(
        layout.id,
        layout.plantings.map(({ id }) => id),
        1,
        1,
      ),
    () => turnObjects(layout.id, [any.id, planting.id], { x: 9, y: 9 }, random.between(-90, 90)),
    () => setOutline(layout.id, planting.id, randomArea(random, 30)),
    () => changePlantings(layout.id, [planting.id], traits(random), "Change"),
    () => changePlantings(layout.id, [planting.id], { bloom: undefined }, "Take dates away"),
    () => changeVariety(variety.id, { kind: random.pick(KINDS) }, "Change kind"),
    () => changeVariety(variety.id, { name: random.pick(["One Name", "Another"]) }, "Rename"),
    () =>
      changeVariety(
        variety.id,
        { isolationM: random.between(0, 30), hybrid: random.chance(0.3) },
        "Change",
      ),
    () => removeObjects(layout.id, [any.id]),
    () =>
      addPlantings(
        layout.id,
        [randomPlanting(random, `n${random.whole(0, 1e9)}`, layout, plan, 30)],
        "Add",
      ),
    () => changePlan({ level: random.pick(["home", "sale", "stock"]) }, "Change level"),
    () =>
      changePlan(
        { site: { ...plan.site, firstAutumnFrost: SEASON_FIRST + random.whole(240, 330) } },
        "Frost",
      ),
    () =>
      acceptFinding({
        finding: random.pick(["none", ...findingIds]),
        requiredM: random.pick([null, 5]),
        reason: "So be it",
        ...(random.chance(0.5) ? { layout: layout.id, measuredM: random.between(0, 9) } : {}),
      }),
    () =>
      withdrawAcceptance(
        random.pick(["none", ...plan.accepted.map(({ finding }) => finding)]),
        layout.id,
      ),
    () => ({
      title: "Order anew",
      apply: (before) => ({
        ...before,
        layouts: [
          { ...layout, plantings: [...layout.plantings.slice(3), ...layout.plantings.slice(0, 3)] },
        ],
      }),
    }),
  ];
  const source = plan.surroundings[0];
  return source && random.chance(0.05)
    ? changeSurrounding(source.id, { bloom: randomWindow(random) }, "Change source")
    : random.pick(edits)();
}
