/** Beet, chard, spinach, amaranth, quinoa. */
import type { IsolationFigure, Kind } from "./crop.ts";
import {
  cmSpacing,
  euOtherVegetable,
  euRow,
  from,
  inFeet,
  inMetres,
  inchSpacing,
  recalled,
  recalledFeet,
  recalledSpacing,
  recalledTiming,
  seedStandard,
} from "./figures.ts";

const goosefoot = { family: "Amaranthaceae", botanySource: "general-botany" } as const;

const beet = {
  ...goosefoot,
  species: "Beta vulgaris",
  group: "beet",
  lifeCycle: "biennial",
  carrier: "wind",
  breeding: "outcrossing",
  cautions: ["seed-districts"],
  timing: recalledTiming({ set: [60, 85], bloom: [28, 42], seed: [45, 60] }),
  population: {
    maintenance: from("garden-organic-16", 20, "at least 20; others print 25, 60 and more"),
  },
} as const satisfies Partial<Kind>;

const beetHome: readonly IsolationFigure[] = [
  inMetres("film-home", "handbook home", 1000, "diy-seeds", {
    published: "1 km",
    note: "500 m with a natural barrier",
  }),
  inMetres("guide-home", "handbook home", 950, "learn-seed-saving"),
  inMetres("film-sale", "handbook commercial", 7000, "diy-seeds", {
    published: "7 km",
    case: "in regions of commercial beet seed",
  }),
];

const beetEurope: readonly IsolationFigure[] = [
  ...euRow("eu-2002-55", 1000, 1000, {
    case: "from any beet pollen but that of the two milder cases",
  }),
  ...euRow(
    "eu-2002-55",
    1000,
    600,
    { case: "from a variety of the same subspecies in another variety group" },
    "-other-group",
  ),
  ...euRow(
    "eu-2002-55",
    600,
    300,
    { case: "from a variety of the same subspecies in the same variety group" },
    "-same-group",
  ),
];

const fieldBeetBasic = inMetres("eu-basic", "eu basic", 1000, "wales-2005-3037", {
  case: "from any beet pollen",
});

const amaranth = {
  ...goosefoot,
  group: "amaranth",
  lifeCycle: "annual",
  carrier: "insects and wind",
  breeding: "mostly selfing",
  timing: recalledTiming({ sown: [60, 80], set: [40, 60], bloom: [21, 35], seed: [30, 45] }),
  spacing: recalledSpacing(0.3, 0.6),
  population: { maintenance: recalled(10, "recalled: 10 to 25") },
} as const satisfies Partial<Kind>;

const amaranthPage = inMetres("page-home", "handbook home", 400, "amaranth-page");

const grainAmaranth: readonly IsolationFigure[] = [
  inFeet("guide-home", "handbook home", 10560, "issi", {
    published: "1/2 mile to 2 miles",
    case: "grain amaranths",
    note: "or bag the heads",
  }),
  amaranthPage,
  inMetres("paper-weeds", "handbook home", 325, "amaranth-pigweed", {
    case: "clearing weedy relatives",
    note: "extrapolated from 12.9 percent within 10 m and 0.45 percent at 150 m",
  }),
];

/** A beetroot guideline's number, for the kinds of the species it does not name. */
const kindredBeet = {
  ...beet,
  population: {
    maintenance: from("garden-organic-16", 20, "printed for beetroot and chard; at least 20"),
  },
} as const satisfies Partial<Kind>;

export const amaranthaceae: readonly Kind[] = [
  {
    ...beet,
    id: "beet",
    name: "beet",
    otherNames: ["beetroot", "red beet", "garden beet", "table beet"],
    botanicalName: "Beta vulgaris subsp. vulgaris",
    isolation: [
      ...beetHome,
      ...beetEurope,
      ...euRow(
        "de-saatv",
        1000,
        1000,
        { case: "from another species of the genus Beta (German rule)" },
        "-other-species",
      ),
    ],
    spacing: cmSpacing([30, 30], [30, 30], "garden-organic-16", "at least"),
    seedLifeYears: from("beet-guide", [4, 4] as const, "4 by a list of about 1912 too"),
    ...seedStandard(65, 60, "clusters, not single seeds"),
  },
  {
    ...beet,
    id: "chard",
    name: "chard",
    otherNames: [
      "swiss chard",
      "silverbeet",
      "silver beet",
      "rainbow chard",
      "leaf beet",
      "spinach beet",
      "perpetual spinach",
    ],
    // In India this or spinach.
    sharedNames: ["palak"],
    botanicalName: "Beta vulgaris subsp. vulgaris",
    isolation: [
      ...beetHome,
      ...beetEurope,
      inMetres("india-foundation", "india foundation", 1600, "india-palak", {
        note: "leaf beet, from chard, sugar, stock and garden beet",
      }),
      inMetres("india-certified", "india certified", 1000, "india-palak", {
        note: "leaf beet, from chard, sugar, stock and garden beet",
      }),
    ],
    spacing: cmSpacing([30, 30], [30, 30], "garden-organic-16", "at least"),
    seedLifeYears: from("learn-seed-saving", [6, 6] as const, "10 at most by another list"),
    ...seedStandard(65, 60, "clusters, not single seeds"),
  },
  {
    ...kindredBeet,
    id: "sugar-beet",
    name: "sugar beet",
    otherNames: [],
    botanicalName: "Beta vulgaris subsp. vulgaris",
    isolation: [
      fieldBeetBasic,
      inMetres("eu-certified", "eu certified", 1000, "wales-2005-3037", {
        case: "from any beet pollen but that of the milder cases",
      }),
      inMetres("eu-certified-other-ploidy", "eu certified", 600, "wales-2005-3037", {
        case: "from sugar beet of other or unknown ploidy",
      }),
      inMetres("eu-certified-diploid", "eu certified", 300, "wales-2005-3037", {
        case: "diploid pollinator, source diploid sugar beet",
      }),
    ],
    spacing: recalledSpacing(0.4, 0.6),
    ...seedStandard(null, 55),
  },
  {
    ...kindredBeet,
    id: "fodder-beet",
    name: "fodder beet",
    otherNames: ["mangel", "mangold", "mangelwurzel", "field beet"],
    botanicalName: "Beta vulgaris subsp. vulgaris",
    isolation: [fieldBeetBasic],
    spacing: recalledSpacing(0.4, 0.6),
    ...seedStandard(null, 55),
  },
  {
    ...beet,
    population: {},
    cautions: [],
    id: "sea-beet",
    name: "sea beet",
    otherNames: ["wild beet", "weed beet"],
    botanicalName: "Beta vulgaris subsp. maritima",
    lifeCycle: "perennial",
    isolation: [],
    timing: {},
  },
  {
    ...goosefoot,
    id: "spinach",
    name: "spinach",
    otherNames: [],
    sharedNames: ["palak"],
    botanicalName: "Spinacia oleracea",
    species: "Spinacia oleracea",
    group: "spinach",
    lifeCycle: "annual",
    carrier: "wind",
    breeding: "outcrossing",
    isolation: [
      inFeet("book-home", "handbook home", 650, "manual-seed-saving", {
        published: "at least 650 ft (200 m)",
      }),
      inFeet("article-home", "handbook home", 5280, "easiest-seed-crops", {
        published: "as much as 1 mile",
      }),
      inFeet("chart-home", "handbook home", 10560, "garden-chart", { published: "2 miles" }),
      ...euOtherVegetable(),
    ],
    timing: {
      ...recalledTiming({ sown: [45, 70], set: [30, 50], bloom: [21, 35], seed: [40, 50] }),
    },
    spacing: recalledSpacing(0.25, 0.6),
    population: { maintenance: from("manual-seed-saving", 25, "25 to 30; only females bear seed") },
    seedLifeYears: from("garden-chart", [4, 4] as const, "5 at most by another list"),
    ...seedStandard(60, 100),
  },
  {
    ...amaranth,
    id: "grain-amaranth",
    name: "grain amaranth",
    otherNames: ["prince's feather"],
    sharedNames: ["amaranth"],
    botanicalName: "Amaranthus hypochondriacus",
    species: "Amaranthus hypochondriacus",
    isolation: grainAmaranth,
  },
  {
    ...amaranth,
    id: "love-lies-bleeding",
    name: "love-lies-bleeding",
    otherNames: ["tassel amaranth"],
    sharedNames: ["amaranth"],
    botanicalName: "Amaranthus caudatus",
    species: "Amaranthus caudatus",
    isolation: grainAmaranth,
  },
  {
    ...amaranth,
    id: "blood-amaranth",
    name: "blood amaranth",
    otherNames: ["purple amaranth", "red amaranth", "mexican grain amaranth", "african spinach"],
    sharedNames: ["amaranth"],
    nameNote: "grown for grain, leaf and flower; one of the plants called callaloo",
    botanicalName: "Amaranthus cruentus",
    species: "Amaranthus cruentus",
    isolation: grainAmaranth,
  },
  {
    ...amaranth,
    id: "leaf-amaranth",
    name: "leaf amaranth",
    otherNames: ["tampala"],
    sharedNames: ["amaranth"],
    nameNote: "callaloo is mostly another amaranth: Amaranthus viridis, dubius or cruentus",
    botanicalName: "Amaranthus tricolor",
    species: "Amaranthus tricolor",
    isolation: [
      inFeet("guide-home", "handbook home", 2640, "issi", {
        published: "1/2 mile",
        case: "green amaranths",
      }),
      amaranthPage,
    ],
  },
  {
    ...amaranth,
    id: "pigweed",
    name: "pigweed",
    otherNames: ["smooth pigweed", "wild amaranth"],
    botanicalName: "Amaranthus hybridus",
    species: "Amaranthus hybridus",
    isolation: [],
    timing: {},
  },
  {
    ...goosefoot,
    id: "quinoa",
    name: "quinoa",
    otherNames: [],
    botanicalName: "Chenopodium quinoa",
    species: "Chenopodium quinoa",
    group: "quinoa",
    lifeCycle: "annual",
    carrier: "insects and wind",
    breeding: "mostly selfing",
    isolation: [recalledFeet(100, 200)],
    timing: recalledTiming({ sown: [60, 80], set: [45, 60], bloom: [21, 30], seed: [30, 45] }),
    spacing: recalledSpacing(0.25, 0.5),
    population: { maintenance: recalled(10, "recalled: 10 to 25") },
  },
  {
    ...goosefoot,
    id: "lambsquarters",
    name: "lambsquarters",
    otherNames: ["fat hen", "goosefoot", "lamb's quarters"],
    botanicalName: "Chenopodium album",
    species: "Chenopodium album",
    group: "quinoa",
    lifeCycle: "annual",
    carrier: "wind",
    breeding: "mostly selfing",
    isolation: [],
    timing: {},
  },
  {
    ...goosefoot,
    id: "pitseed-goosefoot",
    name: "pitseed goosefoot",
    otherNames: ["huauzontle"],
    botanicalName: "Chenopodium berlandieri",
    species: "Chenopodium berlandieri",
    group: "quinoa",
    lifeCycle: "annual",
    carrier: "insects and wind",
    breeding: "mostly selfing",
    isolation: [],
    timing: {},
  },
  {
    ...goosefoot,
    id: "orach",
    name: "orach",
    otherNames: ["mountain spinach", "orache"],
    botanicalName: "Atriplex hortensis",
    species: "Atriplex hortensis",
    group: "orach",
    lifeCycle: "annual",
    carrier: "wind",
    breeding: "outcrossing",
    isolation: [],
    timing: recalledTiming({ sown: [60, 90], bloom: [25, 40], seed: [40, 60] }),
    spacing: inchSpacing([12, 18], [18, 24], "memory"),
  },
];
