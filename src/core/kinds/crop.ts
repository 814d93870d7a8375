/**
 * What Wideberth knows of a kind: how it pollinates, what it crosses with, and every
 * published figure it carries. Every number names where it comes from.
 */

/** Where a figure was published, or why it has no publication. */
export interface Source {
  readonly id: string;
  /** Title with section or page, as a reader would cite it. */
  readonly title: string;
  readonly publisher: string;
  /** Year or edition as printed; "n.d." when the source gives none. */
  readonly edition: string;
  /**
   * `seen`: read in the source named. `common practice`: what the trade does, no publication.
   * `from memory`: recalled, not checked; never a default where a seen figure exists.
   * `own figure`: typed by the grower into the plan.
   */
  readonly trust: "seen" | "common practice" | "from memory" | "own figure";
  /**
   * How far a figure from here is followed by default: `regulator` is seed law and certification
   * rules, `teaching` a page that restates them (it may raise a distance, never lower one), `book`
   * books, papers and extension services, `other` articles and pages. Absent: `other`.
   */
  readonly authority?: Authority;
}

export type Authority = "regulator" | "teaching" | "book" | "other";

/** A value with the id of its source (see sources.ts) and an optional remark. */
export interface Sourced<T> {
  readonly value: T;
  readonly source: string;
  readonly note?: string;
  /** Found on a few varieties, and other varieties of the kind differ: it carries no more than a rule of thumb. */
  readonly fewVarieties?: true;
  /** Found in one place only: where days are known too, the bloom is what both give together. */
  readonly onePlace?: true;
}

/** A closed range [least, most], both inclusive. */
export type Range = readonly [number, number];

/** `home`: for one's own garden; `sale`: passed on or sold; `stock`: mother seed of a variety. */
export type Level = "home" | "sale" | "stock";

/** What carries foreign pollen to the flower: decides which covers help. */
export type PollenCarrier = "insects" | "wind" | "insects and wind";

export type BreedingSystem = "selfing" | "mostly selfing" | "outcrossing";
export type LifeCycle = "annual" | "biennial" | "perennial";

/** How readily two species of one crossing group cross. */
export type Relation = "freely" | "sometimes" | "rarely" | "no";

/** The class a figure is published for; levels.ts maps each to one purity level. */
export type FigureClass =
  | "us foundation"
  | "us registered"
  | "us certified"
  | "eu basic"
  | "eu certified"
  | "india foundation"
  | "india certified"
  | "fao quality declared"
  | "washington rule"
  | "handbook home"
  | "handbook commercial"
  | "practice home"
  | "own home"
  | "own sale"
  | "own stock";

/** One published isolation distance. */
export interface IsolationFigure {
  /** Stable id, unique within its kind, e.g. "us-certified"; a plan may name it. */
  readonly id: string;
  readonly figureClass: FigureClass;
  /** Flower form it holds for; left out: every form. */
  readonly form?: string;
  /** Metres, exact conversion of the published figure. */
  readonly metres: number;
  /** The figure as printed, e.g. "660 ft". A misprint corrected by us is explained in `note`. */
  readonly published: string;
  readonly source: string;
  /** The case it holds for, where one text gives several, e.g. "same variety group". */
  readonly case?: string;
  /** Why the default rule passes it over, e.g. "for hybrid seed"; a grower may still pick it. */
  readonly neverDefault?: string;
  /** Why the default rule sets it aside as far from all others; it still counts in the range. */
  readonly outlier?: string;
  /**
   * How it comes to stand for this kind; left out: its source names the kind. `reading`: a law's
   * general row that we read as covering it. `stretched`: printed for another kind, or in general.
   * `doubtful`: the source contradicts itself.
   */
  readonly standing?: "reading" | "stretched" | "doubtful";
  readonly note?: string;
}

/** A flower form that changes the distance, e.g. a tomato with an exserted stigma. */
export interface FlowerForm {
  readonly id: string;
  readonly name: string;
}

/** Days that predict bloom and ripe seed; all ranges are [least, most] whole days. */
export interface Timing {
  /** From sowing in place to first open flower. */
  readonly sownToFlower?: Sourced<Range>;
  /** From setting out transplants (or roots and bulbs of a biennial) to first open flower. */
  readonly transplantedToFlower?: Sourced<Range>;
  /** Length of bloom of one planting. */
  readonly bloomDays?: Sourced<Range>;
  /** From first flower to ripe seed. */
  readonly flowerToSeed?: Sourced<Range>;
  /** Heat from sowing to first flower; used in place of days when the site has a climate. */
  readonly heatToFlower?: Sourced<HeatToFlower>;
  /** Heat from first flower to the end of bloom, on the scale of `heatToFlower`. */
  readonly heatOfBloom?: Sourced<HeatToFlower>;
  /** Heat from first flower to ripe seed; on a scale of its own. */
  readonly heatToSeed?: Sourced<HeatToFlower>;
  /** Pollen shed, where it differs from the whole bloom (maize tassels). */
  readonly shedding?: Sourced<BloomPart>;
  /** Stigmas receptive, where that differs from the whole bloom (maize silks). */
  readonly receptive?: Sourced<BloomPart>;
}

/** C-days to first flower on one scale of method, base and cap, which are never mixed. */
export interface HeatToFlower {
  readonly method: "simple average" | "modified average" | "single triangle" | "single sine";
  readonly baseC: number;
  /** Null: no upper threshold. */
  readonly capC: number | null;
  readonly cDays: Range;
}

/** A part of the bloom: begins so many days after first flower and lasts so many days. */
export interface BloomPart {
  readonly afterFirst: Range;
  readonly days: Range;
}

export interface Spacing {
  /** Between plants in the row, metres. */
  readonly inRowM: Sourced<number>;
  /** Between rows, metres. */
  readonly betweenRowsM: Sourced<number>;
}

/** Least numbers of seed plants. */
export interface Population {
  /** Plants below which the seed is hardly worth keeping. */
  readonly viable?: Sourced<number>;
  /** Plants to keep a variety true over the years. */
  readonly maintenance?: Sourced<number>;
}

export interface Kind {
  /** Stable id used in plan files, e.g. "summer-squash". */
  readonly id: string;
  /** Common name, lower case, e.g. "summer squash". */
  readonly name: string;
  readonly otherNames: readonly string[];
  /**
   * Names that kinds of other species have as well, such as pumpkin: searched for, but never read as
   * this kind, or what crosses would be told apart. Common practice of the trade.
   */
  readonly sharedNames?: readonly string[];
  readonly botanicalName: string;
  readonly family: string;
  /** The species whose flowers decide crossing, without variety or group, e.g. "Cucurbita pepo". */
  readonly species: string;
  /** Id of a crossing group (groups.ts). */
  readonly group: string;
  readonly lifeCycle: LifeCycle;
  readonly carrier: PollenCarrier;
  readonly breeding: BreedingSystem;
  /** Source of life cycle, carrier and breeding system. */
  readonly botanySource: string;
  /** First form is the usual one. Without forms, form makes no difference to distance. */
  readonly forms?: readonly FlowerForm[];
  readonly isolation: readonly IsolationFigure[];
  readonly timing: Timing;
  /** Days that must lie between two bloom windows for time to clear a pair; absent: 7. */
  readonly guardDays?: Sourced<number>;
  readonly spacing?: Spacing;
  readonly population?: Population;
  readonly seedLifeYears?: Sourced<Range>;
  readonly germinationPercent?: Sourced<number>;
  readonly seedsPerGram?: Sourced<number>;
  /** Years the ground must have been free of the same crossing group. */
  readonly landYears?: Sourced<number>;
  /** What else its names are used for, where that matters to crossing. */
  readonly nameNote?: string;
  /** Ids of safety cautions (cautions.ts) that apply. */
  readonly cautions?: readonly string[];
}

/** Kinds and species that can pollinate each other. */
export interface CrossingGroup {
  readonly id: string;
  /** Shown to growers, e.g. "beet and chard". */
  readonly name: string;
  /**
   * Relation between unlike species of the group. A species crosses freely with itself; a row of
   * one species with itself names who says so.
   */
  readonly relations: readonly SpeciesRelation[];
}

export interface SpeciesRelation {
  /** Two species names; the relation holds both ways unless `oneWay`. */
  readonly between: readonly [string, string];
  /** The row speaks of the first as seed parent and the second as pollen source only. */
  readonly oneWay?: true;
  readonly relation: Relation;
  readonly source: string;
  /** Ids of sources that say otherwise; the note says what. */
  readonly otherwise?: readonly string[];
  readonly note?: string;
}
