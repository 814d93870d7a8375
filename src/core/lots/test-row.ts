/** How a kind is tested officially, as one row of the tables has it. */
export interface TestConditions {
  /** Name of the row. */
  readonly row: string;
  /**
   * B: between blotters, P: on top of paper in covered dishes, T: paper towels rolled, S: sand or
   * soil, TB: on top of blotters, TS: on top of sand, C: creped paper, TC: on creped paper.
   */
  readonly substrata: string;
  /** Degrees Celsius; "20-30" is 16 hours at 20, then 8 at 30. */
  readonly temperature: string;
  /** Days to the first count; null: none is asked for. */
  readonly firstDays: number | null;
  readonly lastDays: number;
  readonly otherTemperature?: string;
  /** Hard seed can occur: it is reported apart, and the standard counts it in. */
  readonly canBeHard?: boolean;
  /** What the test needs besides. */
  readonly needs?: string;
  /** For fresh, dormant or poor seed. */
  readonly fresh?: string;
  /** Percent of the fresh weight. */
  readonly sealedMoisturePct?: number;
}
