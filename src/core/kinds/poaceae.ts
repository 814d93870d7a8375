/** Maize, sorghum and the cereals. */
import type { IsolationFigure, Kind } from "./crop.ts";
import {
  euRow,
  from,
  fromFew,
  inFeet,
  inMetres,
  inchSpacing,
  indiaSecondary,
  recalled,
  recalledSpacing,
  recalledTiming,
  seedStandard,
  usLand,
  usMechanicalOnly,
  usTable,
} from "./figures.ts";

const grass = {
  family: "Poaceae",
  lifeCycle: "annual",
  botanySource: "general-botany",
} as const;

const maize = {
  ...grass,
  group: "maize",
  species: "Zea mays",
  carrier: "wind",
  breeding: "outcrossing",
  guardDays: from(
    "silking-extension",
    14,
    "14 days between silking dates, quoted at second hand; a garden answer prints two weeks between maturity dates, for eating quality; a week off mid-silk already cuts crossing by over 80 percent",
  ),
  population: {
    viable: from("livingseeds", 40, "absolute minimum, twice as many is better"),
    maintenance: from("garden-chart", 100, "200 by another handbook"),
  },
  seedLifeYears: from(
    "shelf-life",
    [2, 3] as const,
    "at most 3 by this list, 2 by a list of seed kept cool, dark and dry (Susan's in the Garden)",
  ),
  landYears: usLand(0),
} as const satisfies Partial<Kind>;

/**
 * First flower is the first silk. Silks of a field appear over 13 to 18 days and each stays
 * receptive 5 to 6 days more; tassels shed for one to two weeks, from 1 to 3 days before silks.
 */
const maizeParts = {
  bloomDays: from("maize-silking", [13, 18] as const, "spread of silking in a field"),
  shedding: from(
    "corn-pollination-overview",
    { afterFirst: [-3, -1], days: [7, 14] } as const,
    "pollen begins 1 to 3 days before silks",
  ),
  receptive: from(
    "maize-silking",
    { afterFirst: [0, 0], days: [18, 24] } as const,
    "13 to 18 days over which silks appear, and 5 to 6 more for which each stays receptive",
  ),
} as const;

const maizeHome: readonly IsolationFigure[] = [
  inMetres("film-home", "handbook home", 3000, "diy-seeds", {
    published: "3 km",
    note: "1 km with a natural barrier",
  }),
  inFeet("chart-home", "handbook home", 10560, "garden-chart", {
    published: "1-2 miles",
    note: 'the scan shows "12 mi." where a dash was lost; this reading is ours',
  }),
  inFeet("notes-home", "handbook home", 1760, "corn-distance-notes", {
    published: "more than 1/3 mile",
    note: "others, it says, ask over 1/2 mile",
  }),
  inFeet("yards-home", "handbook home", 1200, "corn-yards", { published: "400 yards" }),
  inFeet("blog-home", "handbook home", 300, "promiscuous-pollination", { note: "for home use" }),
];

const BORDER_NOTE =
  "410 ft where the other maize has the same colour and texture, less with border rows (footnote 12)";

export const poaceae: readonly Kind[] = [
  {
    ...maize,
    id: "maize",
    name: "maize",
    otherNames: ["corn", "field corn", "flint corn", "dent corn", "flour corn", "grain maize"],
    botanicalName: "Zea mays",
    isolation: [
      ...maizeHome,
      ...usTable({ certified: 660 }, { case: "open-pollinated", note: BORDER_NOTE }),
      ...usTable(
        { certified: 660 },
        { case: "hybrid", neverDefault: "for hybrid seed", note: BORDER_NOTE },
        "-hybrid",
      ),
      ...usTable(
        { foundation: 660 },
        {
          case: "inbred lines, single crosses and back crosses",
          neverDefault: "for parent lines of hybrids",
          note: "none when hand-pollinated (footnote 10)",
        },
        "-lines",
      ),
      inFeet("washington-lines", "washington rule", 660, "wac-16-302-290", {
        case: "inbred lines and foundation single crosses",
        neverDefault: "for parent lines of hybrids",
        note: "less only if no silk is receptive while the contaminant sheds pollen",
      }),
      ...euRow("eu-66-402", 200, 200),
      inMetres("fao-quality-declared", "fao quality declared", 200, "fao-qds"),
      ...indiaSecondary(400, 200),
    ],
    timing: {
      sownToFlower: fromFew(
        "corn-planting-2003",
        [61, 75] as const,
        "planting to silk: 75 days planted about 1 May, 66 about 25 May, 61 about 12 June",
      ),
      transplantedToFlower: recalled([45, 60] as const),
      heatToFlower: fromFew(
        "corn-growing-degrees",
        { method: "modified average", baseC: 10, capC: 30, cDays: [699, 777] } as const,
        "1144 to 1273 F-days (86/50) from emergence for early to late field corn, and 115 to 125 from planting to emergence",
      ),
      ...maizeParts,
      flowerToSeed: recalled([50, 65] as const),
    },
    spacing: inchSpacing([12, 12], [36, 36], "sowing-guide"),
    ...seedStandard(null, 3),
  },
  {
    ...maize,
    id: "sweet-corn",
    name: "sweet corn",
    otherNames: ["sugar corn", "sweetcorn"],
    botanicalName: "Zea mays convar. saccharata",
    isolation: [
      ...maizeHome,
      inFeet("us-certified", "us certified", 660, "cfr-201-76", {
        note: "printed 600 ft, corrected: the metric figure beside it, 201.17 m, and footnote 14 both say 660 ft",
      }),
    ],
    timing: {
      ...recalledTiming({ sown: [50, 65], set: [35, 50] }),
      ...maizeParts,
      flowerToSeed: recalled([45, 55] as const),
    },
    spacing: inchSpacing([10, 14], [30, 36]),
    ...seedStandard(75),
  },
  {
    ...maize,
    id: "popcorn",
    name: "popcorn",
    otherNames: ["pop corn"],
    botanicalName: "Zea mays convar. microsperma",
    isolation: [
      ...maizeHome,
      ...usTable(
        { certified: 660 },
        {
          case: "open-pollinated",
          note: "the table has no row for popcorn; dent-sterile popcorn needs none from dent corn (footnote 11)",
        },
      ),
    ],
    timing: {
      ...recalledTiming({ sown: [60, 75], set: [45, 60] }),
      ...maizeParts,
      flowerToSeed: recalled([50, 65] as const),
    },
    spacing: inchSpacing([8, 12], [30, 36]),
    ...seedStandard(null, 3),
  },
  {
    ...grass,
    id: "sorghum",
    name: "sorghum",
    otherNames: ["sweet sorghum", "grain sorghum", "milo"],
    botanicalName: "Sorghum bicolor",
    species: "Sorghum bicolor",
    group: "sorghum",
    carrier: "wind",
    breeding: "mostly selfing",
    isolation: [
      inFeet("us-foundation", "us foundation", 990, "cfr-201-76", {
        note: "printed 900 ft, corrected: the metric figure beside it, 301.76 m, is 990 ft, as in the registered row",
      }),
      ...usTable({ registered: 990 }),
      ...usTable(
        { certified: 660 },
        {
          note: "990 ft from sorghum of other height genes, 1320 ft from grass sorghum or broomcorn (footnote 29)",
        },
      ),
      ...euRow("eu-66-402", 400, 200),
      ...euRow(
        "eu-66-402",
        800,
        400,
        { case: "where johnsongrass or sudangrass is a crossing risk" },
        "-weedy",
      ),
      inMetres("fao-quality-declared", "fao quality declared", 100, "fao-qds"),
      ...indiaSecondary(200, 100),
    ],
    timing: recalledTiming({ sown: [60, 75], set: [45, 60], bloom: [7, 14], seed: [35, 45] }),
    spacing: recalledSpacing(0.2, 0.75),
    population: { maintenance: recalled(10, "recalled: 10 to 25") },
    ...seedStandard(null, 55),
    landYears: usLand(1),
  },
  {
    ...grass,
    id: "broomcorn",
    name: "broomcorn",
    otherNames: ["broom corn"],
    botanicalName: "Sorghum bicolor",
    species: "Sorghum bicolor",
    group: "sorghum",
    carrier: "wind",
    breeding: "mostly selfing",
    isolation: [
      ...euRow("eu-66-402", 400, 200),
      ...euRow(
        "eu-66-402",
        800,
        400,
        { case: "where johnsongrass or sudangrass is a crossing risk" },
        "-weedy",
      ),
    ],
    timing: recalledTiming({ sown: [60, 80], set: [45, 60], bloom: [7, 14], seed: [35, 45] }),
    spacing: recalledSpacing(0.15, 0.75),
    ...seedStandard(null, 60),
  },
  {
    ...grass,
    id: "johnsongrass",
    name: "johnsongrass",
    otherNames: [],
    botanicalName: "Sorghum halepense",
    species: "Sorghum halepense",
    group: "sorghum",
    lifeCycle: "perennial",
    carrier: "wind",
    breeding: "mostly selfing",
    isolation: [],
    timing: {},
    cautions: ["regulated-species"],
  },
  ...(
    [
      [
        "wheat",
        "Triticum aestivum",
        ["bread wheat", "spring wheat"],
        25,
        [55, 65],
        [7, 10],
        [30, 40],
      ],
      ["barley", "Hordeum vulgare", ["spring barley"], 30, [50, 60], [7, 10], [30, 35]],
    ] as const
  ).map(([id, species, otherNames, perGram, sown, bloom, seed]): Kind => ({
    ...grass,
    id,
    name: id,
    otherNames,
    botanicalName: species,
    species,
    group: id,
    carrier: "wind",
    breeding: "selfing",
    isolation: [
      inMetres("book-home", "handbook home", 0, "manual-seed-saving", {
        published: "ears must not be able to touch",
      }),
      ...usMechanicalOnly(),
    ],
    timing: recalledTiming({ sown, bloom, seed }),
    spacing: inchSpacing([1, 2], [6, 6], "seeds-of-diversity-2023"),
    ...seedStandard(null, perGram),
    landYears: usLand(1),
  })),
  {
    ...grass,
    id: "oat",
    name: "oat",
    otherNames: ["oats"],
    botanicalName: "Avena sativa",
    species: "Avena sativa",
    group: "oat",
    carrier: "wind",
    breeding: "selfing",
    isolation: [
      inMetres("book-home", "handbook home", 0, "manual-seed-saving", {
        published: "ears must not be able to touch",
        note: "said of all true cereals but rye",
      }),
      ...usMechanicalOnly(),
    ],
    timing: recalledTiming({ sown: [55, 65], bloom: [7, 10], seed: [30, 40] }),
    spacing: inchSpacing([1, 2], [6, 6], "seeds-of-diversity-2023"),
    ...seedStandard(null, 35, "printed 35-50; the smaller is entered"),
    landYears: usLand(1),
  },
  {
    ...grass,
    id: "rye",
    name: "rye",
    otherNames: ["winter rye", "cereal rye"],
    botanicalName: "Secale cereale",
    species: "Secale cereale",
    group: "rye",
    carrier: "wind",
    breeding: "outcrossing",
    isolation: [
      inFeet("book-home", "handbook home", 1000, "manual-seed-saving", {
        published: "1000 ft (300 m)",
      }),
      inFeet("book-sale", "handbook commercial", 7920, "manual-seed-saving", {
        published: "1.5 miles (2.5 km)",
      }),
      ...usTable(
        { foundation: 660, registered: 660, certified: 660 },
        { note: "15 ft between diploid and tetraploid rye (footnote 18)" },
      ),
      ...euRow("eu-66-402", 300, 250),
    ],
    timing: recalledTiming({ bloom: [10, 16], seed: [35, 45] }),
    spacing: inchSpacing([1, 2], [6, 6], "seeds-of-diversity-2023"),
    ...seedStandard(null, 40),
    landYears: usLand(1),
    cautions: ["ergot"],
  },
  {
    ...grass,
    id: "rice",
    name: "rice",
    otherNames: [],
    botanicalName: "Oryza sativa",
    species: "Oryza sativa",
    group: "rice",
    carrier: "wind",
    breeding: "selfing",
    isolation: usTable(
      { foundation: 10, registered: 10, certified: 10 },
      {
        case: "neighbours drilled",
        note: "50 ft if broadcast, 100 ft if sown from the air (footnote 39)",
      },
    ),
    timing: recalledTiming({ sown: [75, 110], set: [55, 85], bloom: [7, 14], seed: [30, 40] }),
    spacing: recalledSpacing(0.15, 0.2),
    ...seedStandard(null, 65),
    landYears: usLand(1),
  },
  ...(
    [
      ["proso-millet", "proso millet", "Panicum miliaceum", 185],
      ["foxtail-millet", "foxtail millet", "Setaria italica", 480],
    ] as const
  ).map(([id, name, species, perGram]): Kind => ({
    ...grass,
    id,
    name,
    otherNames: [],
    botanicalName: species,
    species,
    group: id,
    carrier: "wind",
    breeding: "selfing",
    isolation: usMechanicalOnly().map((figure) => ({
      ...figure,
      case: "self-pollinated millet; that this is one is our reading",
    })),
    timing: recalledTiming({ sown: [45, 60], bloom: [10, 20], seed: [30, 40] }),
    spacing: recalledSpacing(0.05, 0.3),
    ...seedStandard(null, perGram),
    landYears: usLand(1),
  })),
  {
    ...grass,
    id: "pearl-millet",
    name: "pearl millet",
    otherNames: [],
    botanicalName: "Pennisetum glaucum",
    species: "Pennisetum glaucum",
    group: "pearl-millet",
    carrier: "wind",
    breeding: "outcrossing",
    isolation: [
      ...usTable(
        { foundation: 1320, registered: 1320, certified: 660 },
        {
          case: "cross-pollinated millet; that this is one is our reading",
          note: "6 ft between millets of different genera (footnote 40)",
        },
      ),
      inMetres("fao-quality-declared", "fao quality declared", 100, "fao-qds", {
        case: "millet, open-pollinated",
      }),
    ],
    timing: recalledTiming({ sown: [45, 65], bloom: [10, 20], seed: [30, 40] }),
    spacing: recalledSpacing(0.15, 0.6),
    ...seedStandard(null, 180),
    landYears: usLand(1),
  },
];
