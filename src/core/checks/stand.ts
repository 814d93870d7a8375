/**
 * A stand: a planting or a surrounding with everything the checks need resolved once - kind,
 * outline, bloom, required distance. Stands are kept from run to run while what they are made
 * from stays the same object, so moving one planting remakes one stand.
 */
import type { Bloom } from "../calendar/bloom-window.ts";
import { type BloomSetting, bloomSetting } from "../calendar/growing.ts";
import type { WhyNoBloom } from "../calendar/no-bloom-words.ts";
import { bloomForecast, partsFromDates } from "../calendar/planting-bloom.ts";
import type { Forecast, RipeSeed } from "../calendar/bloom-parts.ts";
import { forecastWithSeen } from "../calendar/forecast-with-seen.ts";
import { seenOf } from "../calendar/seen-bloom.ts";
import type { Kind, PollenCarrier } from "../kinds/crop.ts";
import type { CropBook } from "../kinds/crop-book.ts";
import { type Outline, outlineOf } from "../geometry/outline.ts";
import type {
  Climate,
  Cover,
  Layout,
  Plan,
  Planting,
  PurityLevel,
  Surrounding,
  Variety,
} from "../model/plan.ts";
import { varietyKey } from "../model/variety-key.ts";
import type { Requirement } from "./isolation-pair.ts";
import { distanceReach, requirementOf, wildRequirements } from "./requirement.ts";

/** Days between two bloom windows that count as apart where the kind names none. No source; our choice. */
export const DEFAULT_GUARD_DAYS = 7;

export interface Stand {
  readonly id: string;
  readonly kind: Kind;
  /** Stands with the same key are one variety and no risk to each other; null: unknown variety. */
  readonly varietyKey: string | null;
  readonly keepApart: boolean;
  readonly outline: Outline;
  readonly isSeedParent: boolean;
  readonly shedsPollen: boolean;
  /** The whole bloom; null when no date is known. */
  readonly bloom: Bloom | null;
  /** When it sheds pollen, and when its stigmas take pollen: the whole bloom for most kinds. */
  readonly sheds: Bloom | null;
  readonly receives: Bloom | null;
  /** Why no bloom is told; null where one is. */
  readonly whyNoBloom: WhyNoBloom | null;
  /** When the first seed is ripe; null when it cannot be told. */
  readonly ripe: RipeSeed | null;
  readonly requirement: Requirement | null;
  /** More than that from wild kinds, by id of the wild kind; null where its sources ask no more. */
  readonly wildRequirements: ReadonlyMap<string, Requirement> | null;
  /** Beyond this many metres no source is looked at; infinite where what is enough is not known. */
  readonly reachM: number;
  readonly cover: Cover;
  readonly carrier: PollenCarrier;
  readonly guardDays: number;
  readonly planting: Planting | null;
  readonly variety: Variety | null;
  readonly surrounding: Surrounding | null;
  /** Purity level a planting is held to; null for surroundings, whose seed is not kept. */
  readonly level: PurityLevel | null;
  readonly climate: Climate | undefined;
  readonly season: Plan["season"];
  /** What its bloom was told with. */
  readonly setting: BloomSetting;
  readonly book: CropBook;
}

/** What a stand is made from beside its own object. */
interface StandSettings extends Pick<Stand, "climate" | "season" | "setting" | "book"> {
  readonly level: PurityLevel;
}

/** Resolves every planting of the layout and every pollen source of the surroundings, in plan order. */
export function resolveStands(
  plan: Plan,
  layout: Layout,
  book: CropBook,
  previous?: ReadonlyMap<string, Stand>,
): readonly Stand[] {
  const varieties = new Map(plan.varieties.map((variety) => [variety.id, variety]));
  const {
    season,
    site: { climate },
  } = plan;
  const setting = bloomSetting(plan);
  const stands: Stand[] = [];
  for (const planting of layout.plantings) {
    const variety = varieties.get(planting.variety);
    const kind = variety && book.kind(variety.kind);
    if (!variety || !kind) continue;
    const level = planting.level ?? plan.level;
    const before = previous?.get(planting.id);
    const isSame =
      before !== undefined &&
      before.planting === planting &&
      before.variety === variety &&
      before.level === level &&
      before.setting === setting &&
      before.book === book;
    stands.push(
      isSame
        ? before
        : plantingStand(planting, variety, kind, { level, climate, season, setting, book }),
    );
  }
  for (const surrounding of plan.surroundings) {
    const kind = surrounding.what === "pollen" ? book.kind(surrounding.kind ?? "") : undefined;
    if (!kind) continue;
    const before = previous?.get(surrounding.id);
    const isSame =
      before !== undefined &&
      before.surrounding === surrounding &&
      before.setting === setting &&
      before.book === book;
    stands.push(
      isSame
        ? before
        : surroundingStand(surrounding, kind, {
            level: plan.level,
            climate,
            season,
            setting,
            book,
          }),
    );
  }
  return stands;
}

/** A stand whose own object alone changed: variety, kind and settings are those it had. */
export function standAgain(
  before: Stand,
  item: Planting | Surrounding,
  { level, site, season }: Pick<Plan, "level" | "site" | "season">,
): Stand {
  const { kind, setting, book, variety } = before;
  const settings = { climate: site.climate, season, setting, book };
  if (variety === null) return surroundingStand(item as Surrounding, kind, { ...settings, level });
  const planting = item as Planting;
  return plantingStand(planting, variety, kind, { ...settings, level: planting.level ?? level });
}

/** A planting's stand where nothing but the place it lies at changed. */
export function movedStand(before: Stand, planting: Planting): Stand {
  return { ...before, planting, outline: outlineOf(planting.outline) };
}

/** An annual has no year without flowers: marked as in its first, it flowers all the same. */
function isToFlower(flowering: Planting["flowering"], { lifeCycle }: Kind): boolean {
  return flowering === "yes" || (flowering === "first-year" && lifeCycle === "annual");
}

function plantingStand(
  planting: Planting,
  variety: Variety,
  kind: Kind,
  { level, climate, season, setting, book }: StandSettings,
): Stand {
  const { bloom, why } = bloomForecast(planting, variety, kind, setting);
  const flowers = isToFlower(planting.flowering, kind);
  const requirement = requirementOf(planting, variety, kind, level);
  const wild = wildRequirements(kind, requirement);
  return {
    id: planting.id,
    kind,
    varietyKey: varietyKey(variety) ?? `${kind.id}#${variety.id}`,
    keepApart: planting.keepApart === true,
    outline: outlineOf(planting.outline),
    isSeedParent: planting.purpose === "seed" && flowers && variety.hybrid !== true,
    shedsPollen: flowers && why !== "cleared",
    // Field by field: spread from an object of their own, they took a quarter of all this.
    bloom: bloom?.whole ?? null,
    sheds: bloom?.sheds ?? null,
    receives: bloom?.receives ?? null,
    ripe: bloom?.ripe ?? null,
    whyNoBloom: why,
    requirement,
    wildRequirements: wild,
    reachM: distanceReach(requirement, wild),
    cover: planting.cover,
    carrier: kind.carrier,
    guardDays: kind.guardDays?.value ?? DEFAULT_GUARD_DAYS,
    planting,
    variety,
    surrounding: null,
    level,
    climate,
    season,
    setting,
    book,
  };
}

function surroundingStand(
  surrounding: Surrounding,
  kind: Kind,
  { season, setting, book }: StandSettings,
): Stand {
  const yearly = kind.lifeCycle === "perennial" ? season : null;
  const forecast: Forecast = surrounding.bloom
    ? { bloom: partsFromDates(surrounding.bloom, null, yearly, surrounding.bloom.basis), why: null }
    : { bloom: null, why: "no-start" };
  const seen = seenOf(surrounding);
  const { bloom, why } = seen ? forecastWithSeen(forecast, seen, kind, season) : forecast;
  return {
    id: surrounding.id,
    kind,
    varietyKey: varietyKey({ kind: kind.id, name: surrounding.varietyName }),
    keepApart: false,
    outline: outlineOf(surrounding.outline),
    isSeedParent: false,
    shedsPollen: isToFlower(surrounding.flowering, kind),
    bloom: bloom?.whole ?? null,
    sheds: bloom?.sheds ?? null,
    receives: bloom?.receives ?? null,
    ripe: bloom?.ripe ?? null,
    whyNoBloom: why,
    requirement: null,
    wildRequirements: null,
    reachM: Infinity,
    cover: surrounding.cover,
    carrier: kind.carrier,
    guardDays: kind.guardDays?.value ?? DEFAULT_GUARD_DAYS,
    planting: null,
    variety: null,
    surrounding,
    level: null,
    climate: undefined,
    season,
    setting,
    book,
  };
}

/** What a seed parent needs from a pollen source of a kind. */
export function requirementFrom(parent: Stand, sourceKind: Kind): Requirement | null {
  return parent.wildRequirements?.get(sourceKind.id) ?? parent.requirement;
}

/**
 * Metres from which on distance clears a source, give or take the tolerance; infinite: none does.
 * Beyond a laxer level's figure nothing is known where the level has none: not clear, not near.
 */
export function limitOf(parent: Stand, source: Stand): number {
  const requirement = requirementFrom(parent, source.kind);
  return requirement === null || requirement.isFloor === true ? Infinity : requirement.metres;
}

/** Days that must lie between the windows of the two: the more careful kind decides. */
export function guardDaysOf(parent: Stand, source: Stand): number {
  return Math.max(parent.guardDays, source.guardDays);
}

/** Plantings of one variety add up to one population, unless the grower keeps two lots apart. */
export function isSameLot(a: Stand, b: Stand): boolean {
  if (a === b) return true;
  if (a.varietyKey === null || a.varietyKey !== b.varietyKey) return false;
  return !(a.keepApart || b.keepApart);
}

/** The same of many, asked often: of one number are one lot; 0: it is of none but itself. */
export function lotsOf(stands: readonly Stand[]): Uint32Array {
  const numbers = new Map<string, number>();
  return Uint32Array.from(stands, ({ varietyKey: key, keepApart }) => {
    if (key === null || keepApart) return 0;
    const lot = numbers.get(key) ?? numbers.size + 1;
    numbers.set(key, lot);
    return lot;
  });
}
