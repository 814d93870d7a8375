/** What the jobs of the season calendar say. */

export const jobWords = {
  /** A planting in a job: `A01-1 Tarn Coral (beet)`. */
  plot: (code: string, variety: string, kind: string) => `${code} ${variety} (${kind})`,
  /** A neighbour's or a wild stand. */
  stand: (label: string, kind: string) => `${label} (${kind})`,
  sow: (name: string) => `Sow ${name}`,
  setOut: (name: string) => `Set out ${name}`,
  underGlass: (name: string, until: string) => `Sow ${name} under glass, to set out on ${until}`,
  clear: (name: string) => `Clear ${name}`,
  clearSooner: "if one shows a flower sooner, clear it then",
  ifNot: (advice: string) => `if not, ${advice}`,
  ripe: (name: string, from: string, until: string) =>
    `First seed of ${name} likely ripe (from ${from} to ${until})`,
  ripeIfWarm: (name: string, from: string) =>
    `First seed of ${name} likely ripe (from ${from}; heat for it may be wanting)`,
  afterFrost: (frost: string) => `may come after the first frost, given as ${frost}`,
  cut: (name: string, from: string, until: string) =>
    `Cut ${name} before a flower opens (from ${from}); look again each week until ${until}`,
  rogue: (name: string) => `Rogue ${name} before it flowers`,
  cageOn: (name: string) => `Cage on ${name}`,
  bagsOn: (name: string) => `Bags on ${name}`,
  cageOff: (name: string) => `Cage off ${name}, once all flowers have set`,
  bagsOff: (name: string) => `Bags off ${name}, once all flowers have set`,
  evenings: (name: string, close: string, until: string) =>
    `Evenings at ${name}: ${close}; until ${until} or enough is marked`,
  mornings: (name: string, pollinate: string, until: string) =>
    `Mornings at ${name}: ${pollinate}; until ${until} or enough is marked`,
  firstFlower: (name: string, from: string) => `${name} likely begins to flower (from ${from})`,
  lastFlower: (name: string, by: string) => `Bloom of ${name} likely over (by ${by})`,
  allPlots: (taking: string) => `${taking}, all its plots together`,
} as const;

/** Roots of biennials between their two years. */
export const rootWords = {
  lift: (name: string, hardiness: string) =>
    `Lift or protect ${name} before hard frost${hardiness}`,
  store: (name: string, air: string, limit: string) =>
    `What was lifted of ${name}: keep at ${air}; as food it keeps ${limit}`,
  lookOver: (name: string) =>
    `Look over what is stored of ${name}, every four weeks until it is set out: take out what rots`,
  setOut: (name: string) =>
    `Set out the best of ${name} for seed, about four weeks before the last spring frost: plan it in next season`,
  longer: (weeks: number) =>
    `${weeks} weeks from lifting to setting out: sources differ on whether it keeps so long, so store some to spare`,
  longest: (weeks: number) =>
    `${weeks} weeks from lifting to setting out, longer than is printed for food: store more than you need and look it over often`,
  shortOfCold: "outdoors a winter here may be too short of cold for some of it to flower",
  tooWarm: "a winter here has too little cold for it to flower: give it the rest in a store",
  stands: (least: number, worst: number, source: string) =>
    `; left standing it takes ${least} to ${worst} °C for long (${source}), less where frost and thaw take turns`,
  mayBeLeft: (stands: string, coldest: number) =>
    `${stands}: coldest on record here ${coldest} °C, may be left`,
  liftIt: (stands: string, coldest: number) =>
    `${stands}: coldest on record here ${coldest} °C, lift it, or some of it`,
} as const;

/** After the harvest. */
export const seedJobWords = {
  batch: (plot: string, harvested: string) => `${plot}, harvested ${harvested}`,
  dry: (name: string, limits: string) => `Dry the seed of ${name}: ${limits}`,
  store: (name: string, from: string) =>
    `Seed of ${name} is likely dry (from ${from}): small seed snaps, large seed shatters under a hammer (common practice). Label it, store it dry and cool; seal only dry seed`,
  test: (name: string) =>
    `Lay a germination test of ${name}; seed fresh from the plant may still sleep (common practice)`,
  ferment: (name: string, how: string) =>
    `Squeeze out and ferment ${name}, loosely covered: ${how}`,
  stir: (name: string) =>
    `Stir ${name} twice a day; pour off and rinse as soon as good seed sinks, earlier when warm (common practice)`,
  rinse: (name: string, by: string) =>
    `Pour off and rinse ${name}, after two to three days, earlier when warm, by ${by} at the latest (common practice)`,
  wash: (name: string, how: string) => `Wash the seed out of ${name}: ${how}`,
  thresh: (name: string, least: number, most: number) =>
    `Thresh and clean ${name}, cured under a roof since the harvest (${least} to ${most} days, common practice)`,
} as const;

/** How flowers are pollinated by hand, to follow the name of a planting. */
export const handWords = {
  tapeBuds: "tape shut male and female buds that will open next morning",
  brushTaped:
    "early in the morning brush male flowers of other plants of the variety over each female one, tape it shut again and mark the fruit",
  bagBuds: "bag male and female flowers in insect-proof bags before they open",
  brushBagged:
    "early in the morning brush male flowers of other plants of the variety over each female one, bag it again and mark the fruit",
  bagEars: "bag the ears before silks show, and the tassels",
  shakeTassels:
    "shake the pollen of bagged tassels over the silks, bag the ear again at once and mark it",
  closeSelfing: "bag or tape buds before they open",
  shakeSelfing: "shake or brush the closed flowers once they open, keep them closed and mark each",
  bagBranches: "bag the flowering branches before buds open",
  brushBranches:
    "brush pollen from plant to plant of the variety, bag the branches again and mark them",
} as const;

/** Fixed marks that the stakes are measured from. */
export const markWords = {
  corner: (side: string, of: string) => `${side} corner of ${of}`,
  unnamed: { building: "the building", fence: "the fence", tree: "the tree's trunk" },
  trunk: (tree: string) => `the trunk of ${tree}`,
  siteEdge: "the site's edge",
} as const;
