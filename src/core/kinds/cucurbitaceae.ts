/** Squashes, cucumber, melons and gourds. */
import type { IsolationFigure, Kind } from "./crop.ts";
import {
  euOtherVegetable,
  from,
  fromFew,
  inFeet,
  inMetres,
  inchSpacing,
  indiaRow,
  recalled,
  recalledSpacing,
  recalledTiming,
  seedLife,
  seedStandard,
  stretched,
  usLand,
  usTable,
} from "./figures.ts";

const gourdFamily = {
  family: "Cucurbitaceae",
  lifeCycle: "annual",
  carrier: "insects",
  breeding: "outcrossing",
  botanySource: "general-botany",
  cautions: ["bitter-cucurbits"],
} as const;

/** One Indian rule for the whole family, and what a book asks of seed for sale. */
const familyFigures: readonly IsolationFigure[] = [
  ...indiaRow(1000, 500, { case: "all cucurbits, one rule for the family" }),
  inFeet("book-sale", "handbook commercial", 2640, "cucurbit-plan-2014", {
    published: "1/4 to 1/2 mile or more",
    note: "half a mile for large plantings or few barriers",
  }),
];

const halfMile = inFeet("chart-home", "handbook home", 2640, "garden-chart", {
  published: "1/2 mile",
});

const goldman = inFeet("page-home", "handbook home", 2640, "melon-page", {
  published: "800 ft to 1/2 mile",
});

const squash = {
  ...gourdFamily,
  group: "squash",
  population: {
    maintenance: from("garden-chart", 10),
  },
  seedLifeYears: seedLife(3, 4),
} as const satisfies Partial<Kind>;

const squashFigures: readonly IsolationFigure[] = [
  inFeet("book-home", "handbook home", 2640, "national-gardening", {
    published: "about 1/2 mile",
    note: "from other growers of the same species",
  }),
  halfMile,
  ...familyFigures,
  inMetres("guide-sale", "handbook commercial", 1500, "seeds-of-diversity-2015"),
  ...euOtherVegetable(),
];

const pepoFigures: readonly IsolationFigure[] = [
  ...squashFigures,
  inMetres("network-home", "handbook home", 250, "seed-network-au"),
];

const pepoTiming = recalledTiming({
  sown: [35, 50],
  set: [20, 35],
  bloom: [40, 70],
  seed: [50, 60],
});
const bushSpacing = inchSpacing([16, 24], [36, 48]);
const vineSpacing = inchSpacing([24, 36], [36, 120]);

export const cucurbitaceae: readonly Kind[] = [
  {
    ...squash,
    id: "summer-squash",
    name: "summer squash",
    // `squash` alone may be any of four species, which do not cross alike: it is asked which.
    otherNames: ["zucchini", "courgette", "marrow", "pattypan", "acorn squash"],
    nameNote:
      "squash alone may be any of four species and is read as none; winter squash, butternut and cushaw are others than this",
    botanicalName: "Cucurbita pepo",
    species: "Cucurbita pepo",
    isolation: pepoFigures,
    timing: pepoTiming,
    spacing: bushSpacing,
    ...seedStandard(75, 14),
  },
  {
    ...squash,
    id: "pumpkin",
    name: "pumpkin",
    otherNames: ["pepo pumpkin", "field pumpkin"],
    botanicalName: "Cucurbita pepo",
    species: "Cucurbita pepo",
    isolation: pepoFigures,
    timing: pepoTiming,
    spacing: inchSpacing([36, 36], [36, 144]),
    ...seedStandard(75, 5),
  },
  {
    ...squash,
    id: "ornamental-gourd",
    name: "ornamental gourd",
    otherNames: ["pepo gourd", "wild gourd"],
    botanicalName: "Cucurbita pepo subsp. ovifera",
    species: "Cucurbita pepo",
    isolation: pepoFigures,
    timing: pepoTiming,
    spacing: vineSpacing,
  },
  {
    ...squash,
    id: "winter-squash",
    name: "winter squash",
    otherNames: ["maxima squash", "giant pumpkin"],
    botanicalName: "Cucurbita maxima",
    species: "Cucurbita maxima",
    isolation: squashFigures,
    timing: recalledTiming({ sown: [50, 65], set: [30, 45], bloom: [40, 60], seed: [50, 60] }),
    spacing: vineSpacing,
    ...seedStandard(75, 14),
  },
  {
    ...squash,
    id: "butternut",
    name: "butternut squash",
    otherNames: ["butternut", "moschata squash", "cheese pumpkin", "musk squash"],
    botanicalName: "Cucurbita moschata",
    species: "Cucurbita moschata",
    isolation: squashFigures,
    timing: {
      ...recalledTiming({ sown: [55, 70], set: [35, 50], bloom: [40, 60], seed: [55, 65] }),
      heatToFlower: fromFew(
        "moschata-stages",
        { method: "simple average", baseC: 12, capC: 35, cDays: [774, 891] } as const,
        "832.5 C-days to the first male flower in six tropical plantings, about 61 days; 7 percent either way is ours, and so is the simple average, since the method is not stated",
      ),
    },
    spacing: vineSpacing,
    ...seedStandard(75, 14),
  },
  {
    ...squash,
    id: "cushaw",
    name: "cushaw",
    otherNames: ["argyrosperma squash", "mixta squash", "silver-seed gourd"],
    botanicalName: "Cucurbita argyrosperma",
    species: "Cucurbita argyrosperma",
    isolation: squashFigures,
    timing: recalledTiming({ sown: [55, 70], set: [35, 50], bloom: [40, 60], seed: [55, 65] }),
    spacing: vineSpacing,
  },
  {
    ...squash,
    id: "fig-leaf-gourd",
    name: "fig-leaf gourd",
    otherNames: ["malabar gourd"],
    botanicalName: "Cucurbita ficifolia",
    species: "Cucurbita ficifolia",
    isolation: stretched(squashFigures, "the other squashes"),
    population: { maintenance: from("garden-chart", 10, "printed for the other squashes") },
    timing: recalledTiming({ sown: [60, 90], set: [40, 65], bloom: [40, 70], seed: [60, 90] }),
    spacing: recalledSpacing(1, 3),
  },
  {
    ...gourdFamily,
    id: "cucumber",
    name: "cucumber",
    otherNames: ["gherkin", "pickling cucumber"],
    nameNote:
      "gherkin is read as a small cucumber; the West India gherkin is another species and a kind of its own here",
    botanicalName: "Cucumis sativus",
    species: "Cucumis sativus",
    group: "cucumber",
    isolation: [
      halfMile,
      inFeet("seed-bank-home", "handbook home", 1320, "sussex", { published: "1/4 mile" }),
      ...familyFigures,
      ...euOtherVegetable(),
    ],
    timing: recalledTiming({ sown: [35, 45], set: [20, 30], bloom: [30, 60], seed: [40, 50] }),
    spacing: inchSpacing([12, 12], [48, 72]),
    population: { maintenance: from("garden-chart", 10) },
    seedLifeYears: seedLife(5, 4),
    ...seedStandard(80, 40),
  },
  {
    ...gourdFamily,
    id: "west-india-gherkin",
    name: "West India gherkin",
    otherNames: ["bur gherkin", "maxixe"],
    botanicalName: "Cucumis anguria",
    species: "Cucumis anguria",
    group: "west-india-gherkin",
    isolation: familyFigures,
    timing: recalledTiming({ sown: [40, 55], set: [25, 40], bloom: [40, 60], seed: [40, 50] }),
    spacing: recalledSpacing(0.4, 1.5),
    ...seedStandard(null, 153),
  },
  {
    ...gourdFamily,
    id: "melon",
    name: "melon",
    otherNames: ["muskmelon", "cantaloupe", "honeydew", "armenian cucumber"],
    botanicalName: "Cucumis melo",
    species: "Cucumis melo",
    group: "melon",
    isolation: [
      halfMile,
      inFeet("seed-bank-home", "handbook home", 1320, "sussex", {
        published: "1/4 mile",
        note: "less under cover or with tall barriers",
      }),
      goldman,
      ...familyFigures,
      ...euOtherVegetable(),
    ],
    timing: recalledTiming({ sown: [35, 45], set: [20, 30], bloom: [30, 50], seed: [35, 45] }),
    spacing: inchSpacing([6, 8], [72, 96]),
    population: { maintenance: from("garden-chart", 10) },
    seedLifeYears: seedLife(5),
    ...seedStandard(75, 45),
  },
  {
    ...gourdFamily,
    id: "watermelon",
    name: "watermelon",
    otherNames: [],
    botanicalName: "Citrullus lanatus var. lanatus",
    species: "Citrullus lanatus",
    group: "watermelon",
    isolation: [
      inFeet("book-home", "handbook home", 500, "manual-seed-saving", {
        published: "500 ft (150 m)",
      }),
      goldman,
      ...usTable(
        { foundation: 2640, registered: 2640, certified: 1320 },
        {
          note: "half as much where natural or artificial barriers protect the field (footnote 26)",
        },
      ),
      ...familyFigures,
      ...euOtherVegetable(),
    ],
    timing: recalledTiming({ sown: [45, 55], set: [25, 40], bloom: [30, 50], seed: [35, 45] }),
    spacing: recalledSpacing(0.9, 2.1),
    population: { maintenance: from("manual-seed-saving", 6, "6 to 12 plants") },
    seedLifeYears: seedLife(5),
    ...seedStandard(70, 11),
    landYears: usLand(1),
  },
  {
    ...gourdFamily,
    id: "citron-melon",
    name: "citron melon",
    otherNames: ["citron", "preserving melon"],
    botanicalName: "Citrullus lanatus var. citroides",
    species: "Citrullus lanatus",
    group: "watermelon",
    isolation: [
      inFeet("book-home", "handbook home", 500, "manual-seed-saving", {
        published: "500 ft (150 m)",
        note: "printed for watermelon, the same species",
      }),
      goldman,
      ...familyFigures,
      ...euOtherVegetable(),
    ],
    timing: recalledTiming({ sown: [45, 55], set: [25, 40], bloom: [30, 50], seed: [35, 45] }),
    spacing: recalledSpacing(0.9, 2.1),
    population: { maintenance: from("manual-seed-saving", 6, "6 to 12 plants") },
    ...seedStandard(65, 11),
  },
  {
    ...gourdFamily,
    id: "bottle-gourd",
    name: "bottle gourd",
    otherNames: ["calabash", "hard-shell gourd"],
    botanicalName: "Lagenaria siceraria",
    species: "Lagenaria siceraria",
    group: "bottle-gourd",
    isolation: familyFigures,
    timing: recalledTiming({ sown: [50, 70], set: [35, 50], bloom: [40, 70], seed: [60, 90] }),
    spacing: recalledSpacing(0.9, 2.4),
    population: { maintenance: recalled(5, "recalled: 5 to 10") },
  },
  {
    ...gourdFamily,
    id: "luffa",
    name: "luffa",
    otherNames: ["smooth luffa", "sponge gourd", "loofah"],
    botanicalName: "Luffa aegyptiaca",
    species: "Luffa aegyptiaca",
    group: "luffa",
    isolation: [inFeet("guide-home", "handbook home", 1500, "echo-luffa"), ...familyFigures],
    timing: recalledTiming({ sown: [60, 80], set: [40, 60], bloom: [40, 70], seed: [60, 90] }),
    spacing: recalledSpacing(0.6, 1.8),
    cautions: ["bitter-cucurbits", "poisonous-seed"],
  },
  {
    ...gourdFamily,
    id: "angled-luffa",
    name: "angled luffa",
    otherNames: ["ridged gourd", "ribbed gourd"],
    botanicalName: "Luffa acutangula",
    species: "Luffa acutangula",
    group: "luffa",
    isolation: [
      inFeet("guide-home", "handbook home", 1500, "echo-luffa"),
      ...familyFigures,
      inMetres("tnau-certified", "india certified", 500, "tnau", {
        note: "the class is not stated; read as certified",
      }),
    ],
    timing: recalledTiming({ sown: [60, 80], set: [40, 60], bloom: [40, 70], seed: [60, 90] }),
    spacing: recalledSpacing(0.6, 1.8),
    cautions: ["bitter-cucurbits", "poisonous-seed"],
  },
  {
    ...gourdFamily,
    id: "bitter-gourd",
    name: "bitter gourd",
    otherNames: ["bitter melon"],
    botanicalName: "Momordica charantia",
    species: "Momordica charantia",
    group: "bitter-gourd",
    cautions: ["bitter-gourd"],
    isolation: [
      ...familyFigures,
      inMetres("tnau-certified", "india certified", 500, "tnau", {
        note: "the class is not stated; read as certified",
      }),
    ],
    timing: recalledTiming({ sown: [45, 60], set: [30, 45], bloom: [40, 60], seed: [30, 40] }),
    spacing: recalledSpacing(0.6, 1.8),
  },
  {
    ...gourdFamily,
    id: "wax-gourd",
    name: "wax gourd",
    otherNames: ["winter melon", "hairy melon"],
    botanicalName: "Benincasa hispida",
    species: "Benincasa hispida",
    group: "wax-gourd",
    cautions: [],
    isolation: familyFigures,
    timing: recalledTiming({ sown: [55, 75], set: [35, 55], bloom: [40, 60], seed: [60, 90] }),
    spacing: recalledSpacing(0.9, 2.4),
  },
];
