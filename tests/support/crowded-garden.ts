/** Crowded random gardens of real kinds, with a neighbour, a weed and frosts: conflicts of every sort. */
import { emptyPlan } from "../../src/core/model/empty-plan.ts";
import type {
  Bed,
  Layout,
  Plan,
  Planting,
  Surrounding,
  Variety,
} from "../../src/core/model/plan.ts";
import { type SeededRandom, seededRandom } from "../properties/seeded-random.ts";

const KINDS = [
  ["beet", "chard", "beet"],
  ["summer-squash", "pumpkin", "butternut"],
  ["maize", "sweet-corn"],
  ["carrot"],
  ["tomato"],
  ["kale", "cabbage"],
  ["lettuce"],
  ["onion"],
] as const;

const SEASON_FIRST = 20_820;

/** Beds in two blocks 40 m apart, so that some moves clear and some do not. */
function beds(): readonly Bed[] {
  return Array.from({ length: 7 }, (_, index): Bed => ({
    id: `b${index}`,
    code: `B0${index + 1}`,
    outline: {
      shape: "rectangle",
      x: (index % 4) * 2 + (index > 3 ? 40 : 0),
      y: 0,
      widthM: 1.2,
      lengthM: 9,
      turnDeg: 0,
    },
  }));
}

function startOrBloom(random: SeededRandom): Pick<Planting, "start" | "bloom"> {
  if (random.chance(0.5)) {
    const first = SEASON_FIRST + random.whole(170, 210);
    return { bloom: { first, last: first + random.whole(15, 40) } };
  }
  const method = random.pick(["sown", "transplanted"] as const);
  return { start: { method, date: SEASON_FIRST + random.whole(115, 150) } };
}

function around(random: SeededRandom): readonly Surrounding[] {
  const first = SEASON_FIRST + 175;
  const base = {
    what: "pollen",
    flowering: "yes",
    cover: "none",
    bloom: { first, last: first + 60 },
  } as const;
  const at = (x: number, y: number) => ({ shape: "point", x, y }) as const;
  return [
    { ...base, id: "s1", label: "Wild carrot", kind: "wild-carrot", outline: at(20, 12) },
    {
      ...base,
      id: "s2",
      label: "Next door",
      kind: "chard",
      outline: at(-9, random.between(-9, 9)),
    },
    { ...base, id: "s3", label: "Squash next door", kind: "pumpkin", outline: at(-14, 3) },
    { ...base, id: "s4", label: "Volunteer beet", kind: "beet", outline: at(3, 7), reach: "ours" },
  ];
}

export function crowdedGarden(seed: number): Plan {
  const random = seededRandom(seed);
  const groups = [random.pick(KINDS), random.pick(KINDS), random.pick(KINDS)];
  const varieties: Variety[] = [];
  const plantings: Planting[] = [];
  const place = beds();
  for (let index = 0; index < random.whole(5, 9); index += 1) {
    const kind = random.pick(random.pick(groups));
    const own = random.chance(0.4) ? { isolationM: random.pick([4, 8, 20]) } : {};
    varieties.push({ id: `v${index}`, name: `Variety ${index}`, kind, ...own });
    const bed = place[index % 4] as Bed;
    const { x } = bed.outline as { readonly x: number };
    const lengthM = random.pick([1, 2, 3]);
    plantings.push({
      id: `p${index}`,
      code: `${bed.code}-${Math.floor(index / 4) + 1}`,
      variety: `v${index}`,
      bed: bed.id,
      outline: {
        shape: "rectangle",
        x,
        y: [-3, 0, 3][Math.floor(index / 4)] ?? 0,
        widthM: 1.2,
        lengthM,
        turnDeg: 0,
      },
      purpose: random.pick(["seed", "seed", "seed", "food"]),
      flowering: "yes",
      cover: random.pick(["none", "none", "none", "cage"]),
      plants: random.pick([12, 30, 60, 150]),
      rows: 2,
      ...startOrBloom(random),
      ...(random.chance(0.1) ? { locked: true } : {}),
    });
  }
  const empty = emptyPlan("crowded", 2027);
  const layout: Layout = { id: "layout-1", name: "Layout 1", beds: place, plantings };
  return {
    ...empty,
    varieties,
    surroundings: around(random),
    level: random.pick(["home", "home", "sale", "stock"]),
    site: random.chance(0.8)
      ? { ...empty.site, lastSpringFrost: SEASON_FIRST + 125, firstAutumnFrost: SEASON_FIRST + 290 }
      : empty.site,
    layouts: [layout],
  };
}
