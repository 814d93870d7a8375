/** Tomatoes, peppers, eggplant and their relatives. */
import type { IsolationFigure, Kind } from "./crop.ts";
import {
  from,
  inFeet,
  inMetres,
  inchSpacing,
  indiaRow,
  recalledFeet,
  recalledSpacing,
  recalledTiming,
  seedLife,
  seedStandard,
  stretched,
  usLand,
  usTable,
} from "./figures.ts";

const nightshade = {
  family: "Solanaceae",
  lifeCycle: "annual",
  carrier: "insects",
  botanySource: "general-botany",
} as const;

const HYBRID = { case: "hybrid seed", neverDefault: "for hybrid seed" } as const;
const HALVED = { note: "half as much between classes of one variety (footnote 25)" } as const;

const pepper = {
  ...nightshade,
  group: "pepper",
  breeding: "mostly selfing",
  timing: {
    ...recalledTiming({ sown: [90, 120], set: [30, 50], bloom: [60, 90] }),
    flowerToSeed: from(
      "pepper-seed-harvest",
      [56, 70] as const,
      "8 weeks or more for the best seed; the upper end is ours",
    ),
  },
  spacing: inchSpacing([15, 15], [18, 24]),
  population: {
    maintenance: from("koanga", 16, "at least; 10 by a garden chart"),
  },
  seedLifeYears: seedLife(3),
  ...seedStandard(55, 165),
  landYears: usLand(1),
} as const satisfies Partial<Kind>;

/** Peppers of the other species: what was measured on bell pepper says so. */
const kindredPepper = {
  ...pepper,
  timing: {
    ...pepper.timing,
    flowerToSeed: from(
      "pepper-seed-harvest",
      [56, 70] as const,
      "measured on bell pepper, Capsicum annuum; the upper end is ours",
    ),
  },
  population: {
    maintenance: from("koanga", 16, "printed for Capsicum annuum; at least"),
  },
} as const satisfies Partial<Kind>;

const usPepper = usTable({ foundation: 200, registered: 100, certified: 30 }, HALVED);

const homePepper = [
  inFeet("book-home", "handbook home", 50, "easiest-seed-crops"),
  inFeet("chart-home", "handbook home", 100, "garden-chart"),
  inMetres("guide-home", "handbook home", 50, "abundant-borders", { published: "around 50 m" }),
  inMetres("koanga-home", "handbook home", 50, "koanga", {
    published: "30-50 m",
    case: "a hot pepper from any other",
    note: "10 m between blocks with a tall crop between, where none is hot",
  }),
  inFeet("seed-bank-home", "handbook home", 500, "washburn"),
];

const chilli = indiaRow(400, 200, { case: "chilli" });

/** Peppers of other species: the law's row for pepper, the rest stretched from Capsicum annuum. */
const kindredFigures: readonly IsolationFigure[] = [
  ...stretched(homePepper, "pepper"),
  ...usPepper,
  ...stretched(chilli, "chilli"),
];

const hotCautions = ["hot-pepper-handling"] as const;

export const solanaceae: readonly Kind[] = [
  {
    ...nightshade,
    id: "tomato",
    name: "tomato",
    otherNames: ["cherry tomato", "beefsteak tomato", "plum tomato", "paste tomato"],
    botanicalName: "Solanum lycopersicum",
    species: "Solanum lycopersicum",
    group: "tomato",
    breeding: "mostly selfing",
    forms: [
      { id: "regular", name: "regular-leaf" },
      { id: "potato-leaf", name: "potato-leaf or long-styled" },
    ],
    isolation: [
      inFeet("practice-regular", "practice home", 10, "home-practice", {
        form: "regular",
        published: "about 10 ft",
      }),
      inFeet("practice-potato-leaf", "practice home", 25, "home-practice", {
        form: "potato-leaf",
        published: "about 25 ft",
        note: "flowers with a long style stand open to foreign pollen",
      }),
      inFeet("chart-home", "handbook home", 10, "garden-chart", { form: "regular" }),
      inFeet("book-home", "handbook home", 200, "organic-seed-grower", {
        published: "10-200 ft (3-61 m)",
        note: "by type of crop and barriers; the larger end is entered",
      }),
      recalledFeet(50, 150, "potato-leaf"),
      ...usTable({ foundation: 200, registered: 100, certified: 30 }, HALVED),
      ...indiaRow(50, 25, { case: "varieties" }),
      ...indiaRow(200, 100, HYBRID, "-hybrid"),
    ],
    timing: {
      ...recalledTiming({ sown: [70, 95], set: [25, 45], bloom: [50, 80] }),
      flowerToSeed: from(
        "tomato-seed-harvest",
        [50, 60] as const,
        "heaviest seed at 50 days and best emergence at 60 in spring; later in autumn",
      ),
    },
    spacing: inchSpacing([24, 36], [36, 48]),
    population: {
      viable: from("koanga", 1, "one plant is enough, more is better"),
      maintenance: from("garden-chart", 10),
    },
    seedLifeYears: seedLife(5, 4),
    ...seedStandard(75, 405),
    landYears: usLand(1),
  },
  {
    ...nightshade,
    id: "currant-tomato",
    name: "currant tomato",
    otherNames: ["wild tomato"],
    botanicalName: "Solanum pimpinellifolium",
    species: "Solanum pimpinellifolium",
    group: "tomato",
    breeding: "mostly selfing",
    isolation: [recalledFeet(100, 150)],
    timing: recalledTiming({ sown: [70, 95], set: [25, 45], bloom: [60, 100], seed: [45, 60] }),
    spacing: recalledSpacing(0.75, 1),
  },
  {
    ...pepper,
    id: "pepper",
    name: "sweet pepper",
    otherNames: ["pepper", "bell pepper", "capsicum", "paprika"],
    botanicalName: "Capsicum annuum",
    species: "Capsicum annuum",
    isolation: [
      ...homePepper,
      ...usPepper,
      ...indiaRow(200, 100, { case: "sweet pepper (capsicum)" }),
    ],
    cautions: ["hot-into-sweet"],
  },
  {
    ...pepper,
    id: "hot-pepper",
    name: "hot pepper",
    otherNames: [
      "chilli",
      "chili",
      "chile",
      "chilli pepper",
      "chili pepper",
      "cayenne",
      "jalapeno",
    ],
    botanicalName: "Capsicum annuum",
    species: "Capsicum annuum",
    isolation: [...homePepper, ...usPepper, ...chilli],
    cautions: hotCautions,
  },
  {
    ...kindredPepper,
    id: "habanero",
    name: "habanero",
    otherNames: ["chinense pepper", "scotch bonnet"],
    botanicalName: "Capsicum chinense",
    species: "Capsicum chinense",
    isolation: kindredFigures,
    cautions: hotCautions,
  },
  {
    ...kindredPepper,
    id: "bird-pepper",
    name: "bird pepper",
    otherNames: ["frutescens pepper"],
    botanicalName: "Capsicum frutescens",
    species: "Capsicum frutescens",
    isolation: kindredFigures,
    cautions: hotCautions,
  },
  {
    ...kindredPepper,
    id: "aji",
    name: "aji pepper",
    otherNames: ["aji", "baccatum pepper"],
    botanicalName: "Capsicum baccatum",
    species: "Capsicum baccatum",
    isolation: kindredFigures,
    cautions: hotCautions,
  },
  {
    ...kindredPepper,
    id: "rocoto",
    name: "rocoto",
    otherNames: ["tree chilli", "manzano pepper"],
    botanicalName: "Capsicum pubescens",
    species: "Capsicum pubescens",
    lifeCycle: "perennial",
    // Self-incompatible by some reports, disputed by others: the careful reading is taken.
    breeding: "outcrossing",
    isolation: kindredFigures,
    cautions: hotCautions,
  },
  {
    ...nightshade,
    id: "eggplant",
    name: "eggplant",
    otherNames: ["aubergine", "brinjal"],
    botanicalName: "Solanum melongena",
    species: "Solanum melongena",
    group: "eggplant",
    breeding: "mostly selfing",
    isolation: [
      inFeet("chart-home", "handbook home", 50, "garden-chart"),
      inFeet("wales-home", "handbook home", 50, "permaculture-wales"),
      inMetres("koanga-home", "handbook home", 30, "koanga", { published: "20-30 m" }),
      ...indiaRow(200, 100),
    ],
    timing: recalledTiming({ sown: [95, 125], set: [40, 60], bloom: [60, 90], seed: [50, 60] }),
    spacing: inchSpacing([18, 24], [24, 30]),
    population: { maintenance: from("koanga", 16, "at least; 10 by a garden chart") },
    seedLifeYears: seedLife(5, 5),
    ...seedStandard(60, 230),
  },
  {
    ...nightshade,
    id: "husk-tomato",
    name: "husk tomato",
    otherNames: ["ground cherry", "groundcherry"],
    nameNote:
      "husk tomato is also a name of the tomatillo, which is a kind of its own here and sets no seed alone",
    botanicalName: "Physalis pubescens",
    species: "Physalis pubescens",
    group: "husk-tomato",
    breeding: "mostly selfing",
    isolation: [],
    timing: recalledTiming({ sown: [70, 95], set: [25, 45], bloom: [60, 90], seed: [50, 70] }),
    spacing: recalledSpacing(0.6, 0.9),
    ...seedStandard(50, 1240),
  },
  {
    ...nightshade,
    id: "tomatillo",
    name: "tomatillo",
    otherNames: ["tomate verde", "mexican husk tomato"],
    botanicalName: "Physalis philadelphica",
    species: "Physalis philadelphica",
    group: "husk-tomato",
    breeding: "outcrossing",
    isolation: [inMetres("network-home", "handbook home", 250, "seed-network-au")],
    timing: recalledTiming({ sown: [70, 95], set: [25, 45], bloom: [60, 90], seed: [50, 70] }),
    spacing: recalledSpacing(0.6, 0.9),
  },
  {
    ...nightshade,
    id: "tobacco",
    name: "tobacco",
    otherNames: [],
    botanicalName: "Nicotiana tabacum",
    species: "Nicotiana tabacum",
    group: "tobacco",
    breeding: "mostly selfing",
    isolation: usTable(
      { foundation: 150, registered: 150, certified: 150 },
      {
        case: "between varieties of one type",
        note: "1320 ft between unlike types, unless bagged or topped before bloom (footnote 37)",
      },
    ),
    timing: recalledTiming({ set: [55, 75], bloom: [21, 35], seed: [25, 35] }),
    spacing: recalledSpacing(0.5, 1),
    ...seedStandard(null, 15625),
    landYears: usLand(0, "a new or sterilised plant bed each year (footnote 36)"),
    cautions: ["regulated-species"],
  },
];
