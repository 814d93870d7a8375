/** Cabbage, turnip, mustard, rape, radish, rocket. */
import type { IsolationFigure, Kind, Timing } from "./crop.ts";
import {
  euBrassica,
  euOtherVegetable,
  euRow,
  from,
  fromFew,
  generalInsect,
  inFeet,
  inMetres,
  inchSpacing,
  indiaSecondary,
  recalledSpacing,
  recalledTiming,
  seedLife,
  seedStandard,
  usLand,
  usTable,
} from "./figures.ts";

const crucifer = {
  family: "Brassicaceae",
  carrier: "insects",
  breeding: "outcrossing",
  botanySource: "general-botany",
} as const;

/** Kinds of the genus Brassica, whose seed crops some districts bind. */
const districts = { cautions: ["seed-districts"] } as const;

/** Rules for every Brassica seed crop of whatever species. */
const anyBrassica: readonly IsolationFigure[] = [
  inFeet("washington", "washington rule", 10560, "wac-16-326-040", {
    published: "2 miles",
    case: "any Brassica seed crop from any other",
    neverDefault: "binds one district of one State only",
    note: "from nearest edge to nearest edge; not for what does not bloom from 1 April to 15 August",
  }),
  inMetres("new-zealand-sale", "handbook commercial", 1000, "oecd-brassica", {
    case: "normal least distance in New Zealand",
  }),
];

/** No handbook's number was read for these. */
const geneBank = from("cgn-crucifers", 50, "50 to 100 in a gene bank");

const cole = {
  ...crucifer,
  ...districts,
  species: "Brassica oleracea",
  group: "brassica",
  lifeCycle: "biennial",
  population: {
    maintenance: from(
      "learn-seed-saving",
      20,
      "printed for cabbage, 20 to 50; another guide plants 300 and keeps the best 200",
    ),
  },
} as const satisfies Partial<Kind>;

const coleFigures: readonly IsolationFigure[] = [
  inMetres("guide-home", "handbook home", 800, "learn-seed-saving", {
    published: "250-800 m",
    note: "printed for cabbage, the same species as kale, broccoli and their kin",
  }),
  inFeet("seed-bank-home", "handbook home", 5280, "washburn", {
    published: "up to one mile",
    outlier: "an upper end, no least distance",
  }),
  ...euBrassica(),
  ...anyBrassica,
];

const hybridCole = inMetres("tasmania-hybrid", "handbook commercial", 3000, "oecd-brassica", {
  published: "1.5-3 km",
  case: "hybrid cabbage and cauliflower in Tasmania",
  neverDefault: "for hybrid seed",
});

const nextSpring = recalledTiming({ set: [40, 65], bloom: [21, 42], seed: [60, 80] });

const turnipKin = {
  ...crucifer,
  ...districts,
  species: "Brassica rapa",
  group: "brassica",
  population: {
    viable: from("sussex", 6, "at least 6 plants"),
    maintenance: geneBank,
  },
  isolation: [
    inMetres("guide-home", "handbook home", 800, "learn-seed-saving", {
      published: "250-800 m",
      standing: "stretched",
      note: "printed for cabbage; 3.7 percent foreign seed was measured in turnip rape at 366 m",
    }),
    generalInsect(),
    ...euBrassica(),
    ...anyBrassica,
  ],
} as const satisfies Partial<Kind>;

const spring = recalledTiming({ sown: [50, 75], set: [30, 50], bloom: [21, 35], seed: [50, 65] });

const swedeFigures: readonly IsolationFigure[] = [
  generalInsect(),
  ...euRow("eu-66-401", 400, 200, { case: "Brassica grown for fodder seed" }),
  ...anyBrassica,
];

type ColeRow = readonly [
  id: string,
  name: string,
  otherNames: readonly string[],
  botanicalName: string,
  timing: Timing,
  rest: Pick<Kind, "spacing" | "seedLifeYears" | "germinationPercent" | "seedsPerGram">,
];

const coleRows: readonly ColeRow[] = [
  [
    "cabbage",
    "cabbage",
    ["head cabbage", "white cabbage", "red cabbage", "pointed cabbage", "savoy", "savoy cabbage"],
    "Brassica oleracea var. capitata",
    nextSpring,
    {
      spacing: inchSpacing([12, 18], [24, 30]),
      seedLifeYears: seedLife(3, 4),
      ...seedStandard(75, 315),
    },
  ],
  [
    "kale",
    "kale",
    ["curly kale", "borecole", "lacinato kale", "tuscan kale", "cavolo nero"],
    "Brassica oleracea var. sabellica",
    recalledTiming({ set: [30, 60], bloom: [28, 42], seed: [60, 75] }),
    {
      spacing: inchSpacing([12, 18], [18, 24]),
      seedLifeYears: seedLife(2),
      ...seedStandard(75, 315),
    },
  ],
  [
    "broccoli",
    "broccoli",
    ["calabrese"],
    "Brassica oleracea var. italica",
    recalledTiming({ sown: [70, 100], set: [50, 75], bloom: [21, 42], seed: [60, 75] }),
    {
      spacing: inchSpacing([18, 24], [24, 36]),
      seedLifeYears: from("shelf-life", [5, 5] as const),
      ...seedStandard(75, 315),
    },
  ],
  [
    "sprouting-broccoli",
    "sprouting broccoli",
    ["purple sprouting broccoli", "purple sprouting", "white sprouting broccoli"],
    "Brassica oleracea var. italica",
    nextSpring,
    {
      spacing: inchSpacing([18, 24], [24, 36]),
      seedLifeYears: from("shelf-life", [5, 5] as const),
      ...seedStandard(75, 315),
    },
  ],
  [
    "cauliflower",
    "cauliflower",
    ["romanesco"],
    "Brassica oleracea var. botrytis",
    recalledTiming({ sown: [85, 120], set: [60, 90], bloom: [21, 42], seed: [60, 80] }),
    {
      spacing: inchSpacing([14, 18], [24, 30]),
      seedLifeYears: seedLife(4, 4),
      ...seedStandard(75, 315),
    },
  ],
  [
    "brussels-sprouts",
    "Brussels sprouts",
    ["sprouts"],
    "Brassica oleracea var. gemmifera",
    nextSpring,
    {
      spacing: inchSpacing([12, 18], [24, 30]),
      seedLifeYears: from("shelf-life", [4, 4] as const),
      ...seedStandard(70, 315),
    },
  ],
  [
    "kohlrabi",
    "kohlrabi",
    [],
    "Brassica oleracea var. gongylodes",
    nextSpring,
    {
      spacing: inchSpacing([12, 18], [18, 24], "memory"),
      seedLifeYears: seedLife(3),
      ...seedStandard(75, 315),
    },
  ],
  [
    "collards",
    "collards",
    ["collard greens"],
    "Brassica oleracea var. viridis",
    nextSpring,
    { spacing: inchSpacing([18, 24], [24, 30]), ...seedStandard(80, 315) },
  ],
  [
    "chinese-kale",
    "Chinese kale",
    ["gai lan", "chinese broccoli"],
    "Brassica oleracea var. alboglabra",
    recalledTiming({ sown: [50, 75], set: [35, 55], bloom: [21, 42], seed: [55, 70] }),
    { spacing: recalledSpacing(0.3, 0.5), ...seedStandard(75) },
  ],
];

/** Summer and winter radish cross, and no source tells them apart. */
const radishIsolation: Kind["isolation"] = [
  inFeet("book-home", "handbook home", 500, "manual-seed-saving", {
    published: "at least 500 ft (150 m)",
  }),
  inMetres("book-sale", "handbook commercial", 500, "manual-seed-saving", {
    published: "500 m or more",
    case: "larger quantities or a poor layout",
  }),
  inMetres("network-home", "handbook home", 250, "seed-network-au"),
  inMetres("sheet-home", "handbook home", 500, "runabergs", {
    published: "at least 500 m",
    note: "up to 1000 m for seed that is absolutely pure",
  }),
  inFeet("chart-home", "handbook home", 2640, "garden-chart", { published: "1/2 mile" }),
  ...euOtherVegetable(),
  ...indiaSecondary(1600, 1000),
];

export const brassicaceae: readonly Kind[] = [
  ...coleRows.map(([id, name, otherNames, botanicalName, timing, rest]): Kind => ({
    ...cole,
    ...(id === "broccoli" || id === "chinese-kale" ? { lifeCycle: "annual" } : {}),
    id,
    name,
    otherNames,
    botanicalName,
    isolation:
      id === "cabbage" || id === "cauliflower" ? [...coleFigures, hybridCole] : coleFigures,
    timing,
    ...rest,
  })),
  {
    ...turnipKin,
    id: "turnip",
    name: "turnip",
    otherNames: ["turnip greens"],
    botanicalName: "Brassica rapa subsp. rapa",
    lifeCycle: "biennial",
    timing: recalledTiming({ set: [30, 55], bloom: [21, 35], seed: [50, 65] }),
    spacing: recalledSpacing(0.3, 0.5),
    seedLifeYears: seedLife(4, 5),
    ...seedStandard(80, 535),
  },
  {
    ...turnipKin,
    id: "chinese-cabbage",
    name: "Chinese cabbage",
    otherNames: ["napa cabbage", "pe-tsai"],
    botanicalName: "Brassica rapa subsp. pekinensis",
    lifeCycle: "annual",
    timing: spring,
    spacing: inchSpacing([12, 18], [24, 30], "sowing-guide"),
    seedLifeYears: from("shelf-life", [5, 5] as const),
    ...seedStandard(75, 635),
  },
  {
    ...turnipKin,
    id: "pak-choi",
    name: "pak choi",
    otherNames: ["bok choy", "pak choy", "bok choi", "tatsoi", "tat soi"],
    botanicalName: "Brassica rapa subsp. chinensis",
    lifeCycle: "annual",
    timing: {
      ...spring,
      sownToFlower: fromFew("brassica-crop-notes", [56, 60] as const, "a seed crop sown in spring"),
    },
    spacing: recalledSpacing(0.25, 0.4),
    ...seedStandard(75, 635),
  },
  {
    ...turnipKin,
    id: "mizuna",
    name: "mizuna",
    otherNames: ["mibuna"],
    botanicalName: "Brassica rapa subsp. nipposinica",
    lifeCycle: "annual",
    timing: spring,
    spacing: recalledSpacing(0.25, 0.4),
  },
  {
    ...turnipKin,
    id: "broccoli-raab",
    name: "broccoli raab",
    otherNames: ["rapini", "broccoli rabe", "cime di rapa", "turnip broccoli"],
    botanicalName: "Brassica rapa (Ruvo Group)",
    lifeCycle: "annual",
    timing: spring,
    spacing: recalledSpacing(0.2, 0.4),
  },
  {
    ...turnipKin,
    id: "mustard-spinach",
    name: "mustard spinach",
    otherNames: ["komatsuna", "tendergreen"],
    botanicalName: "Brassica rapa var. perviridis",
    lifeCycle: "annual",
    timing: spring,
    spacing: recalledSpacing(0.25, 0.4),
    ...seedStandard(75, 535),
  },
  {
    ...turnipKin,
    id: "wild-turnip",
    name: "wild turnip",
    otherNames: ["field mustard", "bird rape"],
    botanicalName: "Brassica rapa subsp. campestris",
    lifeCycle: "annual",
    isolation: [],
    population: {},
    timing: {},
    ...seedStandard(null, 425),
  },
  {
    ...crucifer,
    ...districts,
    id: "mustard",
    name: "mustard",
    otherNames: ["mustard greens", "brown mustard", "india mustard", "leaf mustard"],
    botanicalName: "Brassica juncea",
    species: "Brassica juncea",
    group: "brassica",
    lifeCycle: "annual",
    breeding: "mostly selfing",
    isolation: [
      inFeet("chart-home", "handbook home", 2640, "garden-chart", { published: "1/2 mile" }),
      ...usTable(
        { foundation: 1320, certified: 660 },
        { note: "10 ft between certified classes of one variety (footnote 24)" },
      ),
      ...euRow("eu-2002-57", 400, 200, { case: "Brassica other than B. napus" }),
      ...anyBrassica,
      ...indiaSecondary(400, 200),
    ],
    timing: recalledTiming({ sown: [35, 50], set: [25, 40], bloom: [21, 35], seed: [45, 60] }),
    spacing: inchSpacing([4, 6], [12, 18]),
    population: { maintenance: from("garden-chart", 40) },
    seedLifeYears: from("garden-chart", [5, 5] as const),
    ...seedStandard(75, 625),
    landYears: usLand(4, "foundation seed; 2 for certified"),
  },
  {
    ...crucifer,
    ...districts,
    id: "black-mustard",
    name: "black mustard",
    otherNames: [],
    botanicalName: "Brassica nigra",
    species: "Brassica nigra",
    group: "brassica",
    lifeCycle: "annual",
    isolation: [
      ...euRow("eu-2002-57", 400, 200, { case: "Brassica other than B. napus" }),
      ...anyBrassica,
    ],
    timing: recalledTiming({ sown: [40, 60], bloom: [25, 40], seed: [45, 60] }),
    spacing: recalledSpacing(0.15, 0.4),
    ...seedStandard(null, 1255),
  },
  {
    ...crucifer,
    ...districts,
    id: "rutabaga",
    name: "rutabaga",
    otherNames: ["swede"],
    botanicalName: "Brassica napus subsp. rapifera",
    species: "Brassica napus",
    group: "brassica",
    lifeCycle: "biennial",
    breeding: "mostly selfing",
    isolation: swedeFigures,
    timing: recalledTiming({ set: [35, 60], bloom: [21, 35], seed: [55, 70] }),
    spacing: recalledSpacing(0.4, 0.6),
    population: { maintenance: geneBank },
    ...seedStandard(75, 430),
  },
  {
    ...crucifer,
    ...districts,
    id: "siberian-kale",
    name: "Siberian kale",
    otherNames: ["russian kale", "red russian kale", "napus kale", "rape kale"],
    botanicalName: "Brassica napus subsp. pabularia",
    species: "Brassica napus",
    group: "brassica",
    lifeCycle: "biennial",
    breeding: "mostly selfing",
    isolation: swedeFigures,
    timing: recalledTiming({ set: [30, 55], bloom: [21, 35], seed: [55, 70] }),
    spacing: recalledSpacing(0.4, 0.6),
    ...seedStandard(75, 325),
  },
  {
    ...crucifer,
    ...districts,
    id: "oilseed-rape",
    name: "oilseed rape",
    otherNames: ["rape", "canola", "colza"],
    botanicalName: "Brassica napus subsp. napus",
    species: "Brassica napus",
    group: "brassica",
    lifeCycle: "annual",
    breeding: "mostly selfing",
    isolation: [
      ...usTable({ foundation: 1320, certified: 330 }, { case: "cross-pollinated rape" }),
      ...usTable({ foundation: 660, certified: 330 }, { case: "self-pollinated rape" }, "-self"),
      ...euRow("eu-2002-57", 200, 100, {
        case: "varieties other than hybrids",
        note: "an older Scottish text has 400 and 200",
      }),
      ...euRow(
        "eu-2002-57",
        500,
        300,
        { case: "hybrids", neverDefault: "for hybrid seed" },
        "-hybrid",
      ),
      ...anyBrassica,
    ],
    timing: recalledTiming({ sown: [45, 65], bloom: [21, 40], seed: [40, 60] }),
    spacing: recalledSpacing(0.1, 0.3),
    ...seedStandard(null, 345, "annual rape; 230 for winter rape"),
    landYears: usLand(4, "foundation seed; 2 for certified"),
  },
  {
    ...crucifer,
    id: "white-mustard",
    name: "white mustard",
    otherNames: ["yellow mustard"],
    botanicalName: "Sinapis alba",
    species: "Sinapis alba",
    group: "white-mustard",
    lifeCycle: "annual",
    isolation: euRow("eu-2002-57", 400, 200),
    timing: recalledTiming({ sown: [35, 50], bloom: [20, 35], seed: [40, 55] }),
    spacing: recalledSpacing(0.1, 0.3),
    ...seedStandard(null, 160),
  },
  {
    ...crucifer,
    id: "radish",
    name: "radish",
    otherNames: ["summer radish", "oil radish", "fodder radish", "tillage radish"],
    botanicalName: "Raphanus sativus",
    species: "Raphanus sativus",
    group: "radish",
    lifeCycle: "annual",
    isolation: radishIsolation,
    timing: recalledTiming({ sown: [40, 55], set: [25, 40], bloom: [28, 42], seed: [60, 75] }),
    spacing: { inRowM: from("seed-network-au", 0.3), betweenRowsM: from("seed-network-au", 0.3) },
    population: { maintenance: from("manual-seed-saving", 15, "15 to 20; 50 by a garden chart") },
    seedLifeYears: seedLife(2, 4),
    ...seedStandard(75, 75),
  },
  {
    ...crucifer,
    // Most store a root in autumn and flower after winter; sown in spring it may bolt at any time.
    id: "winter-radish",
    name: "winter radish",
    otherNames: ["daikon", "mooli", "black radish"],
    botanicalName: "Raphanus sativus",
    species: "Raphanus sativus",
    group: "radish",
    lifeCycle: "biennial",
    isolation: radishIsolation,
    timing: nextSpring,
    spacing: recalledSpacing(0.3, 0.6),
    population: { maintenance: from("manual-seed-saving", 15, "15 to 20; 50 by a garden chart") },
    seedLifeYears: seedLife(2, 4),
    ...seedStandard(75, 75),
  },
  {
    ...crucifer,
    id: "wild-radish",
    name: "wild radish",
    otherNames: ["jointed charlock"],
    botanicalName: "Raphanus raphanistrum",
    species: "Raphanus raphanistrum",
    group: "radish",
    lifeCycle: "annual",
    isolation: [],
    timing: {},
    cautions: ["regulated-species"],
  },
  {
    ...crucifer,
    id: "rocket",
    name: "rocket",
    otherNames: ["arugula", "salad rocket", "roquette"],
    botanicalName: "Eruca sativa",
    species: "Eruca sativa",
    group: "rocket",
    lifeCycle: "annual",
    isolation: [
      inFeet("guide-home", "handbook home", 2640, "issi", { published: "1/2 mile" }),
      inFeet("chart-home", "handbook home", 2640, "garden-chart", { published: "1/2 mile" }),
      generalInsect(),
    ],
    timing: recalledTiming({ sown: [35, 50], set: [25, 35], bloom: [21, 40], seed: [45, 60] }),
    spacing: inchSpacing([4, 4], [18, 18], "sowing-guide"),
    population: { maintenance: from("garden-chart", 40) },
    seedLifeYears: from(
      "garden-chart",
      [4, 5] as const,
      "5 by this chart; 4 or more by the International Seed Saving Institute, 2 by another list",
    ),
  },
];
