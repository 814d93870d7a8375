/** The seed shelf with its bands and what to renew: as text, for programs, as CSV. */
import { bandWords } from "../lots/band-words.ts";
import type { CheckedLayout } from "../checks/checked-layout.ts";
import { type CsvValue, csvFile } from "../formats/csv-file.ts";
import type { Kind } from "../kinds/crop.ts";
import { standardOf } from "../lots/ageing.ts";
import { type Estimate, estimateOf, shelfPlace } from "../lots/estimate.ts";
import { varietyIndex } from "../lots/variety-index.ts";
import { latestTest } from "../lots/germination.ts";
import { amountWords, noteWords, startWords, treatmentWords } from "../lots/lot-words.ts";
import { crossedLots } from "../generations/crossed-lots.ts";
import { type Renewal, fineVarieties, renewals } from "../lots/renewal.ts";
import { plantedWords, renewalReason } from "../lots/renewal-words.ts";
import { isoFromDay, longDate } from "../model/day.ts";
import type { Lot, Variety } from "../model/plan.ts";
import { mayHaveCrossed } from "../words/crossed-lot-words.ts";
import { counted } from "../words/plurals.ts";

interface ShelfRow {
  readonly lot: Lot;
  readonly variety: Variety | undefined;
  readonly kind: Kind | undefined;
  readonly estimate: Estimate | null;
}

function shelfRows({ plan, book }: Pick<CheckedLayout, "plan" | "book">): readonly ShelfRow[] {
  const varieties = varietyIndex(plan.varieties);
  return plan.lots.map((lot) => {
    const variety = varieties.get(lot.variety);
    const kind = book.kind(variety?.kind ?? "");
    return {
      lot,
      variety,
      kind,
      estimate: kind ? estimateOf(lot, kind, plan.storagePlaces) : null,
    };
  });
}

type Shelf = Pick<CheckedLayout, "plan" | "layout" | "book">;

/** @param today day the bands are of */
export function shelfText(input: Shelf, today: number): string {
  const rows = shelfRows(input);
  if (rows.length === 0) return "No lots on the shelf.\n";
  return [
    `${counted(rows.length, { one: "lot", other: "lots" })}, ${longDate(today)}`,
    "",
    ...rows.flatMap((row) => [...lotLines(row, input, today), ""]),
    ...renewalLines(input, today),
    "Bands are estimates; a germination test wins over them. They certify nothing.",
    "",
  ].join("\n");
}

function lotLines(
  { lot, variety, kind, estimate }: ShelfRow,
  { plan }: Pick<CheckedLayout, "plan">,
  today: number,
): readonly string[] {
  const place = shelfPlace(lot, plan.storagePlaces)?.name;
  const facts = [
    lot.harvestYear === undefined ? "" : String(lot.harvestYear),
    amountWords(lot.amount),
    place ?? "",
    lot.state === "in stock" ? "" : lot.state,
    treatmentWords(lot).toUpperCase(),
    crossedLots(plan.lots).has(lot.id) ? mayHaveCrossed.toUpperCase() : "",
  ].filter((each) => each !== "");
  const head = `${lot.code}  ${variety?.name ?? ""}, ${kind?.name ?? ""}: ${facts.join(", ")}`;
  if (!kind || !estimate) return [head, "    Nothing can be said of its age: test it."];
  const band = bandWords(estimate.at(Math.max(today, estimate.startDay)));
  const standard = `standard ${Math.round(standardOf(kind) * 100)} %`;
  return [
    head,
    `    ${band}, ${startWords(estimate)}; ${standard}`,
    `    ${estimate.notes.map((note) => noteWords(note, kind)).join("; ")}`,
  ];
}

/** In three parts: what cannot wait, what can for a season or two, and what is fine. */
function renewalLines({ plan, layout, book }: Shelf, today: number): readonly string[] {
  const due = renewals(plan, book, today, { layout });
  const [now, later] = [true, false].map((isNow) =>
    due.filter(({ seasonsLeft }) => (seasonsLeft === 0) === isNow),
  );
  const fine = fineVarieties(plan, due).map(({ name }) => name);
  const part = (head: string, list: readonly Renewal[] = []) =>
    list.length === 0 ? [] : [head, ...list.map((each) => `- ${renewalLine(each, today)}`), ""];
  return [
    ...part("To renew this season, most urgent first:", now),
    ...part("To renew in one of the next seasons:", later),
    ...(due.length === 0 ? ["Nothing is to be renewed yet.", ""] : []),
    ...(fine.length === 0 ? [] : [`Fine for now: ${fine.join(", ")}.`, ""]),
  ];
}

function renewalLine(renewal: Renewal, today: number): string {
  const { variety, kind, plants, lot, estimate } = renewal;
  const band = estimate?.at(Math.max(today, estimate.startDay));
  const now = band && lot ? ` ${lot.code} now: ${bandWords(band)}.` : "";
  const sow = lot ? `, sow ${lot.code}` : "";
  const todo = plantedWords(renewal) || `Grow ${plants} plants${sow}.`;
  return `${variety.name}, ${kind.name}: ${renewalReason(renewal)}${now} ${todo}`;
}

/** Rates are fractions of 1, days ISO 8601; null where nothing is known. */
export function shelfJson(input: Shelf, today: number): object {
  const { plan, layout, book } = input;
  const due = renewals(plan, book, today, { layout });
  const iso = (day: number | null) => (day === null ? null : isoFromDay(day));
  return {
    date: isoFromDay(today),
    lots: shelfRows(input).map(({ lot, variety, kind, estimate }) => {
      const under = kind && estimate?.under(standardOf(kind));
      return {
        code: lot.code,
        variety: variety?.name ?? null,
        kind: kind?.id ?? null,
        harvestYear: lot.harvestYear ?? null,
        amount: lot.amount ?? null,
        state: lot.state,
        keptAt: shelfPlace(lot, plan.storagePlaces)?.name ?? null,
        treated: lot.treated ?? null,
        crossedBy: crossedLots(plan.lots).get(lot.id) ?? [],
        band: estimate?.at(Math.max(today, estimate.startDay)) ?? null,
        basis: estimate ? { from: estimate.from, since: iso(estimate.startDay) } : null,
        notes: estimate?.notes ?? [],
        standard: kind?.germinationPercent ? standardOf(kind) : null,
        underStandard: under
          ? {
              earliest: iso(under.earliest),
              likely: iso(under.likely),
              latest: iso(under.latest),
            }
          : null,
      };
    }),
    renew: due.map((renewal) => ({
      variety: renewal.variety.name,
      kind: renewal.kind.id,
      cause: renewal.cause,
      reason: renewalReason(renewal),
      seasonsLeft: renewal.seasonsLeft,
      by: renewal.by,
      plants: renewal.plants,
      lot: renewal.lot?.code ?? null,
      inLayout: { plots: renewal.plots, plants: renewal.plantsPlaced },
      earliest: iso(renewal.earliest),
      likely: iso(renewal.likely),
      latest: iso(renewal.latest),
    })),
    fine: fineVarieties(plan, due).map(({ name }) => name),
  };
}

const HEADINGS = [
  "code",
  "variety",
  "kind",
  "harvest year",
  "amount",
  "unit",
  "kept at",
  "state",
  "latest test",
  "least %",
  "most %",
  "standard %",
  "may be under from",
  "likely under from",
  "surely under from",
];

export function shelfCsv(input: Pick<CheckedLayout, "plan" | "book">, today: number): string {
  const rows = shelfRows(input).map(({ lot, variety, kind, estimate }): readonly CsvValue[] => {
    const band = estimate?.at(Math.max(today, estimate.startDay));
    const under = kind && estimate?.under(standardOf(kind));
    const test = latestTest(lot);
    const iso = (day: number | null | undefined) =>
      day === null || day === undefined ? null : isoFromDay(day);
    return [
      lot.code,
      variety?.name,
      kind?.name,
      lot.harvestYear,
      lot.amount?.value,
      lot.amount?.unit,
      shelfPlace(lot, input.plan.storagePlaces)?.name,
      lot.state,
      iso(test?.date),
      band && Math.floor(band[0] * 100),
      band && Math.ceil(band[1] * 100),
      kind?.germinationPercent?.value,
      iso(under?.earliest),
      iso(under?.likely),
      iso(under?.latest),
    ];
  });
  return csvFile(HEADINGS, rows);
}
