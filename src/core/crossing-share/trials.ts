/**
 * What trials measured: the share of seeds that foreign pollen made, at a distance. As printed by
 * the studies named; nothing here is worked out by us. Where only an abstract could be read it is
 * the abstract that is followed.
 */

/** One measured share. */
export interface Trial {
  /** Species of the seed parent, as in the kinds. */
  readonly species: string;
  /** Nearest and farthest metres it holds for; the same for a single distance, 0 for side by side. */
  readonly metres: readonly [number, number];
  /** Percent of seeds, lowest and highest; the same when one figure is printed. */
  readonly percent: readonly [number, number];
  /** `below`: less than the figure was found; `found`: crossing seen, share not printed. */
  readonly as?: "below" | "found";
  /** What stood where, in few words. */
  readonly design: string;
  readonly study: string;
  /** Seed parents were bait without pollen of their own: far more crossing than a bed would show. */
  readonly isBait?: boolean;
}

type Row = readonly [
  metres: number | readonly [number, number],
  percent: number | readonly [number, number],
  more?: Pick<Trial, "as" | "isBait">,
];

function trials(species: string, study: string, design: string, rows: readonly Row[]): Trial[] {
  const range = (value: number | readonly [number, number]) =>
    typeof value === "number" ? ([value, value] as const) : value;
  return rows.map(([metres, percent, more]) => ({
    species,
    study,
    design,
    metres: range(metres),
    percent: range(percent),
    ...more,
  }));
}

export const allTrials: readonly Trial[] = [
  ...trials(
    "Zea mays",
    "Baltazar et al. 2015, PLoS ONE 10:e0131549",
    "white maize around a yellow plot, mean of 8 sites in Mexico",
    [
      [1, 12.9],
      [2, 4.6],
      [4, 2.7],
      [8, 1.4],
      [12, 1],
      [16, 0.9],
      [20, 0.5],
      [25, 0.5],
    ],
  ),
  ...trials(
    "Zea mays",
    "Goggi et al. 2007, International Journal of Biometeorology 51:493-503",
    "1 ha in the middle of 36 ha, Iowa",
    [
      [1, 30.1],
      [10, 2.7],
      [35, 0.4],
      [100, 0.03, { as: "below" }],
    ],
  ),
  ...trials(
    "Zea mays",
    "Philippine Entomologist 17(2):183, 2003",
    "3.3 ha source, four directions",
    [
      [10, [1.68, 3.48]],
      [160, 0],
    ],
  ),
  ...trials(
    "Zea mays",
    "Luna et al. 2001, Crop Science 41:1551-1557",
    "farthest crossing, 4,000 square metres of source, Mexico",
    [[200, 0, { as: "found" }]],
  ),
  ...trials(
    "Brassica napus",
    "Yamamori, Japan Agricultural Research Quarterly 45(2):173-179",
    "downwind in one field, Japan",
    [
      [0.25, 4.1],
      [1, 1.4],
      [5, 0.4],
      [10, 0.15],
      [30, 0.09],
      [60, 0.01],
    ],
  ),
  ...trials(
    "Brassica napus",
    "Funk, Wenzel and Schwarz 2006, European Journal of Agronomy",
    "mean over the strip beside the source",
    [[[3, 11], 0.28]],
  ),
  ...trials(
    "Brassica napus",
    "Molecular Ecology 14:2269-2280, 2005",
    "male-sterile bait, nearest field over 1 km away",
    [[1000, 13, { isBait: true }]],
  ),
  ...trials(
    "Brassica rapa",
    "Effectiveness of isolation distance in turnip rape, Canada",
    "isolated blocks, six tests over two years",
    [
      [46, 8.5],
      [137, 5.8],
      [366, 3.7],
    ],
  ),
  ...trials(
    "Brassica juncea",
    "Outcrossing in rape and mustard under field conditions, Canadian Journal of Plant Science",
    "plants side by side, Saskatoon",
    [[0, 18.7]],
  ),
  ...trials(
    "Glycine max",
    "Four-year study of soybean beside transgenic soybean, Japan",
    "rows side by side and farther; farthest crossing 7 m",
    [
      [0.7, [0.16, 0.19]],
      [2.1, 0.052],
      [10.5, 0],
    ],
  ),
  ...trials(
    "Lactuca sativa",
    "D'Andrea, Felber and Guadagnuolo 2008, Environmental Biosafety Research 7:61-71",
    "lettuce to prickly lettuce, falling with distance, two sites in Switzerland",
    [
      [
        [0, 40],
        [0, 26],
      ],
    ],
  ),
  ...trials(
    "Capsicum annuum",
    "Genetics and Molecular Research 17(1), 2018",
    "whole trial, distances not printed in the abstract; central Brazil",
    [[0, 1.2]],
  ),
  ...trials(
    "Phaseolus vulgaris",
    "Wells, Isom and Waines 1988, Crop Science 28:177-178",
    "plants side by side at one place with exceptionally many bees, California; one line and the mean of five others",
    [
      [0, 66.8],
      [0, 19.3],
    ],
  ),
  ...trials(
    "Vicia faba",
    "Journal of Agricultural Science, Cambridge",
    "crossing within farm-saved stock over generations, England",
    [[0, [31, 46]]],
  ),
  ...trials(
    "Vigna unguiculata",
    "Fatokun and Ng 2007, Journal of Food, Agriculture and Environment 5:334-338",
    "alternate rows and circles; farthest crossing seen at 31 m",
    [
      [0.9, 1, { as: "below" }],
      [31, 0, { as: "found" }],
    ],
  ),
  ...trials(
    "Solanum lycopersicum",
    "Lesley, as cited by the USDA bee laboratory at Logan, Utah",
    "plants side by side, one variety with exposed stigmas and one without",
    [
      [0, 4.9],
      [0, 0.59],
    ],
  ),
  ...trials(
    "Citrullus lanatus",
    "Kumar, Dia and Wehner 2013, HortScience 48:960-964",
    "neighbours in the row, North Carolina",
    [
      [0.3, 31],
      [0.6, 35],
    ],
  ),
  ...trials(
    "Cucurbita pepo",
    "Kirkpatrick and Wilson 1988, American Journal of Botany 75:519-527",
    "cultivated to wild, carried by a solitary squash bee",
    [[1300, 5]],
  ),
  ...trials(
    "Helianthus annuus",
    "Study of crop and wild sunflower, Argentina",
    "crop to wild plants; detected to 500 m",
    [
      [3, 18],
      [[3, 500], 7],
    ],
  ),
  ...trials("Triticum aestivum", "University of Zurich, field trials 2008-10", "small plots", [
    [[0, 0.5], 0.7],
    [2.5, 0.03],
  ]),
  ...trials(
    "Triticum aestivum",
    "Wheat at commercial scale, Saskatchewan",
    "20 to 33 ha of source, single confirmed cases",
    [[[190, 2750], 0.01]],
  ),
  ...trials("Sesamum indicum", "Experimental Agriculture, Sudan", "alternate rows or holes", [
    [0, [3.1, 6.7]],
  ]),
];

/** How many metres a trial lies from a distance; 0 inside its range. */
function awayM({ metres: [near, far] }: Trial, distanceM: number): number {
  return Math.max(0, near - distanceM, distanceM - far);
}

/**
 * The trials of a species nearest to a distance, nearest first; on a tie the larger share first.
 * @param count how many at most
 */
export function nearestTrials(species: string, distanceM: number, count = 3): readonly Trial[] {
  return allTrials
    .filter((trial) => trial.species === species)
    .sort((a, b) => awayM(a, distanceM) - awayM(b, distanceM) || (b.percent[1] ?? 0) - a.percent[1])
    .slice(0, count);
}

/** Whether a distance lies farther than any trial of the species measured. */
export function isBeyondTrials(species: string, distanceM: number): boolean {
  return allTrials.every(
    (trial) => trial.species !== species || trial.isBait === true || trial.metres[1] < distanceM,
  );
}
