/** What a bed card says of a planting: where in the bed, what, when, and what must not be done. */
import { describeFinding } from "../checks/all-checks.ts";
import { type CheckedLayout, wordingOf } from "../checks/checked-layout.ts";
import { canHurt } from "../checks/safety.ts";
import { listed } from "../checks/wording.ts";
import { daysToKeep } from "../fieldwork/days-to-keep.ts";
import { seedTakingLines } from "../fieldwork/seed-taking-lines.ts";
import { lotCodesToSow } from "../lots/lot-book.ts";
import { plotCode } from "../lots/plot-code.ts";
import { longDate, shortDate } from "../model/day.ts";
import { isStanding } from "../model/layouts.ts";
import { type LengthUnit, formatLength } from "../model/length.ts";
import type { Planting } from "../model/plan.ts";
import { type BedAxes, reachOn } from "./bed-axes.ts";
import { counted } from "../words/plurals.ts";

export interface CardWords {
  /** `B04-2  Slatewing, lettuce`. */
  readonly title: string;
  readonly facts: readonly string[];
  /** What must be done or left, in bold. */
  readonly orders: readonly string[];
  /** For the square code. */
  readonly machine: string;
}

/** Ground left beside a planting that is no more than this is not worth a word; metres. */
const SIDE_M = 0.05;

export function cardWords(planting: Planting, axes: BedAxes, checked: CheckedLayout): CardWords {
  const { plan, book } = checked;
  const variety = plan.varieties.find(({ id }) => id === planting.variety);
  const kind = book.kind(variety?.kind ?? "")?.name ?? "";
  const lot = lotCodesToSow(plan, planting, variety);
  const name = [variety?.name ?? "", kind].filter((part) => part !== "").join(", ");
  return {
    title: `${planting.code}  ${name}`.trim(),
    facts: [
      [placeWords(planting, axes, plan.units), amountWords(planting, plan.units)]
        .filter((part) => part !== "")
        .join("; "),
      [
        startWords(planting),
        bloomWords(planting, checked),
        lot === "" ? "lot ________" : `lot ${lot}`,
      ]
        .filter((part) => part !== "")
        .join("; "),
      planting.note ?? "",
    ].filter((part) => part !== ""),
    orders: [
      ...safetyWords(planting, checked),
      ...ordersFor(planting, variety?.hybrid === true),
      ...seedTaking(planting.id, checked),
      ...(planting.flowering === "yes" ? watchLines(planting.id, checked) : []),
    ],
    machine: plotCode(planting.code, lot),
  };
}

/** `0 to 4.1 m from the near end`, and across where it does not fill the bed. */
function placeWords({ outline }: Planting, axes: BedAxes, unit: LengthUnit): string {
  const { along, across } = reachOn(axes, outline);
  const isWhole = across.from < SIDE_M && across.to > axes.widthM - SIDE_M;
  const side = isWhole ? "" : `, ${fromTo(across, unit)} from the left side`;
  return `${fromTo(along, unit)} from the near end${side}`;
}

function fromTo({ from, to }: { readonly from: number; readonly to: number }, unit: LengthUnit) {
  return `${from < 0.005 ? "0" : formatLength(from, unit)} to ${formatLength(to, unit)}`;
}

function amountWords({ plants, rows, outline }: Planting, unit: LengthUnit): string {
  const inRows = rows === undefined ? "" : counted(rows, { one: "row", other: "rows" });
  const apart =
    rows !== undefined && rows > 1 && outline.shape === "rectangle"
      ? `, ${formatLength(outline.widthM / rows, unit)} apart`
      : "";
  if (plants === undefined) return `${inRows}${apart}`;
  const planted = counted(plants, { one: "plant", other: "plants" });
  return inRows === "" ? planted : `${planted} in ${inRows}${apart}`;
}

/** What stands over winter says so: nobody is to sow it a second time. */
function startWords(planting: Planting): string {
  const { start } = planting;
  if (isStanding(planting)) return start ? standsSince(start) : "Stands over winter";
  if (!start) return "";
  return `${start.method === "sown" ? "Sow" : "Set out"} ${shortDate(start.date)}`;
}

function standsSince({ method, date }: NonNullable<Planting["start"]>): string {
  return `Stands over winter, ${method === "sown" ? "sown" : "set out"} ${longDate(date)}`;
}

function bloomWords({ id, flowering }: Planting, { result }: CheckedLayout): string {
  const stand = result.standById.get(id);
  if (flowering === "cut") return "";
  if (flowering === "first-year" && stand?.shedsPollen !== true) return "no bloom this year";
  const bloom = stand?.bloom;
  if (!bloom) return "";
  return bloom.isOpenEnded
    ? `bloom from ${shortDate(bloom.outer.first)} on`
    : `bloom ${shortDate(bloom.outer.first)} to ${shortDate(bloom.outer.last)}`;
}

const COVER_ORDERS: Readonly<Record<Planting["cover"], string>> = {
  none: "",
  cage: "Under a cage from before the first flower",
  bags: "Flowers in bags from before they open",
  hand: "Pollinate by hand, and tape the flowers shut",
};

function ordersFor(planting: Planting, isHybrid: boolean): readonly string[] {
  return [
    planting.purpose === "seed" ? "For seed: do not pick, do not thin without asking" : "",
    planting.purpose === "food" ? "To eat: keep no seed of it" : "",
    isHybrid ? "Hybrid: its seed does not come true" : "",
    planting.flowering === "cut" ? "Cut before it flowers" : "",
    COVER_ORDERS[planting.cover],
  ].filter((part) => part !== "");
}

function seedTaking(id: string, { result }: CheckedLayout): readonly string[] {
  const words = seedTakingLines(result.stands).get(id);
  return words === undefined ? [] : [words];
}

/** Bitter, poisonous or treated: what can hurt somebody stands on the card of the very plot. */
function safetyWords({ id }: Planting, checked: CheckedLayout): readonly string[] {
  const wording = wordingOf(checked);
  const { findings, accepted } = checked.result;
  return [...findings, ...accepted]
    .filter((finding) => canHurt(finding) && finding.subjects.includes(id))
    .map((finding) => `Caution: ${describeFinding(finding, wording).title}`);
}

/** Of pairs that only unsure dates keep apart: what the helper must report, and by when. */
function watchLines(id: string, checked: CheckedLayout): readonly string[] {
  const { overBy, notBefore } = daysToKeep(id, checked.result.pairs);
  const { nameOf } = wordingOf(checked);
  const names = (ids: readonly string[]) => listed(ids.map(nameOf));
  return [
    overBy
      ? `Must be over by ${shortDate(overBy.day)}, for ${names(overBy.others)}: if it still flowers, tell at once`
      : "",
    notBefore
      ? `Must not open before ${shortDate(notBefore.day)}, for ${names(notBefore.others)}: if it does, tell at once`
      : "",
  ].filter((line) => line !== "");
}
