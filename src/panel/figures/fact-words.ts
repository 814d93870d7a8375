/** All a kind carries beside its distances, each number with its source. */
import type { Kind, Range, Sourced, Timing } from "../../core/kinds/crop.ts";
import { type LengthUnit, formatLength } from "../../core/model/length.ts";
import { type Noun, counted } from "../../core/words/plurals.ts";

const dayNoun: Noun = { one: "day", other: "days" };
const yearNoun: Noun = { one: "year", other: "years" };

export interface Fact {
  readonly name: string;
  readonly text: string;
  /** Remark on the number; null where there is none. */
  readonly note: string | null;
  /** Id of its source. */
  readonly source: string;
}

export interface FactGroup {
  readonly title: string;
  readonly facts: readonly Fact[];
}

/** Groups without a fact are left out: what is not known is not listed. */
export function kindFacts(kind: Kind, unit: LengthUnit): readonly FactGroup[] {
  return [
    { title: "How it pollinates", facts: botany(kind) },
    { title: "Time", facts: [...timing(kind.timing), ...guard(kind)] },
    { title: "Plants and ground", facts: plants(kind, unit) },
    { title: "Seed", facts: seed(kind) },
  ].filter(({ facts }) => facts.length > 0);
}

function botany(kind: Kind): readonly Fact[] {
  const fact = (name: string, text: string): Fact => ({
    name,
    text,
    note: null,
    source: kind.botanySource,
  });
  return [
    fact("Life cycle", kind.lifeCycle),
    fact("Pollen carried by", kind.carrier),
    fact("Breeding", kind.breeding),
    ...(kind.nameNote === undefined
      ? []
      : [{ name: "Names", text: kind.nameNote, note: null, source: kind.botanySource }]),
  ];
}

function sourced<T>(
  name: string,
  value: Sourced<T> | undefined,
  words: (value: T) => string,
): readonly Fact[] {
  if (!value) return [];
  // The standing remark on recalled numbers is said by their source already.
  const note = value.source === "memory" ? null : (value.note ?? null);
  return [{ name, text: words(value.value), note, source: value.source }];
}

function timing(value: Timing): readonly Fact[] {
  return [
    ...sourced("Sown to first flower", value.sownToFlower, dayWords),
    ...sourced("Set out to first flower", value.transplantedToFlower, dayWords),
    ...sourced("In bloom", value.bloomDays, dayWords),
    ...sourced("First flower to ripe seed", value.flowerToSeed, dayWords),
    ...sourced("Pollen shed", value.shedding, partWords),
    ...sourced("Stigmas receptive", value.receptive, partWords),
    ...sourced("Heat to first flower", value.heatToFlower, ({ method, baseC, capC, cDays }) => {
      const cap = capC === null ? "" : `, cap ${capC} C`;
      return `${spanned(cDays)} C-days (${method}, base ${baseC} C${cap})`;
    }),
  ];
}

function guard(kind: Kind): readonly Fact[] {
  return sourced("Wanted between two blooms", kind.guardDays, (days) => counted(days, dayNoun));
}

function plants({ population, spacing, landYears }: Kind, unit: LengthUnit): readonly Fact[] {
  const length = (metres: number) => formatLength(metres, unit);
  return [
    ...sourced("Fewest seed plants", population?.viable, String),
    ...sourced("Seed plants to keep a variety", population?.maintenance, String),
    ...sourced("Spacing in the row", spacing?.inRowM, length),
    ...sourced("Spacing between rows", spacing?.betweenRowsM, length),
    ...sourced("Ground free of it before", landYears, (years) => counted(years, yearNoun)),
  ];
}

function seed(kind: Kind): readonly Fact[] {
  return [
    ...sourced("Seed keeps", kind.seedLifeYears, ([least, most]) =>
      least === most ? counted(most, yearNoun) : `${least} to ${counted(most, yearNoun)}`,
    ),
    ...sourced("Germination standard", kind.germinationPercent, (share) => `${share} percent`),
    ...sourced("Seeds per gram", kind.seedsPerGram, String),
  ];
}

function partWords({ afterFirst, days }: { readonly afterFirst: Range; readonly days: Range }) {
  const [first, last] = afterFirst;
  const from =
    last === 0
      ? "from first flower"
      : last < 0
        ? `from ${spanned([-last, -first])} days before first flower`
        : `${spanned(afterFirst)} days after first flower`;
  return `${dayWords(days)}, ${from}`;
}

function dayWords(range: Range): string {
  return range[0] === range[1] ? counted(range[0], dayNoun) : `${spanned(range)} days`;
}

function spanned([least, most]: Range): string {
  return least === most ? String(least) : `${least} to ${most}`;
}
