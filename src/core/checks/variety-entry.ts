/**
 * What the seed list says of a variety and the checks cannot take as it stands: a hybrid kept for
 * seed, two flower forms under one name, a figure or form that its kind does not have.
 */
import { seenOf } from "../calendar/seen-bloom.ts";
import type { Planting, Variety } from "../model/plan.ts";
import type { Check } from "./check.ts";
import { type FindingBase, compareText, findingId } from "./finding.ts";
import type { Stand } from "./stand.ts";
import { listed } from "./wording.ts";
import * as words from "../words/finding-words.ts";
import { listOf } from "../words/plurals.ts";

/** Cut before it flowers it bears no seed, and nothing is checked for it. */
export interface CutSeedFinding extends FindingBase {
  readonly check: "cut-seed";
  readonly subject: string;
}

export const cutSeedCheck: Check<CutSeedFinding> = {
  name: "cut-seed",
  ignoresPlace: true,
  title: words.cutSeed,
  run: ({ stands }) =>
    stands
      .filter(({ planting, variety }) => isCutForSeed(planting) && variety?.hybrid !== true)
      .map(({ id }) => ({
        id: findingId("cut-seed", [id]),
        check: "cut-seed",
        severity: "caution",
        subjects: [id],
        subject: id,
      })),
  describe: ({ subject }, { nameOf }) => ({
    title: words.cutSeedTitle(nameOf(subject)),
    sentences: [words.cutSeedAdvice],
  }),
};

/** What was cut in the field, by its record, was cut on purpose. */
function isCutForSeed(planting: Planting | null): boolean {
  return planting?.purpose === "seed" && planting.flowering === "cut" && seenOf(planting) === null;
}

/** Seed of a hybrid will not come true. */
export interface HybridFinding extends FindingBase {
  readonly check: "hybrid-seed";
  readonly subject: string;
}

export const hybridSeedCheck: Check<HybridFinding> = {
  name: "hybrid-seed",
  ignoresPlace: true,
  title: words.hybrid,
  run: ({ stands }) =>
    stands
      .filter((stand) => stand.variety?.hybrid === true && stand.planting?.purpose === "seed")
      .map((stand): HybridFinding => ({
        id: findingId("hybrid-seed", [stand.id]),
        check: "hybrid-seed",
        severity: "caution",
        subjects: [stand.id],
        subject: stand.id,
      })),
  describe: ({ subject }, { nameOf }) => ({
    title: words.hybridTitle(nameOf(subject)),
    sentences: [words.hybridAdvice],
  }),
};

/** Plantings that count as one variety by name, and are said to have different flower forms. */
export interface TwoFormsFinding extends FindingBase {
  readonly check: "two-forms";
  /** Names of the forms, by the order of the kind. */
  readonly forms: readonly string[];
}

export const twoFormsCheck: Check<TwoFormsFinding> = {
  name: "two-forms",
  ignoresPlace: true,
  title: words.twoForms,
  run: ({ stands }) =>
    [...byVariety(stands).values()].flatMap((alike): readonly TwoFormsFinding[] => {
      const forms = (alike[0]?.kind.forms ?? []).filter(({ id }) =>
        alike.some(({ variety }) => variety?.form === id),
      );
      const entries = new Set(alike.map(({ variety }) => variety?.id ?? ""));
      if (forms.length < 2 || !alike.some(({ isSeedParent }) => isSeedParent)) return [];
      return [
        {
          id: findingId("two-forms", [...entries]),
          check: "two-forms",
          severity: "caution",
          subjects: alike.map(({ id }) => id).sort(compareText),
          forms: forms.map(({ name }) => name),
        },
      ];
    }),
  describe: ({ subjects, forms }, { nameOf }) => ({
    title: words.twoFormsTitle(listed(subjects.map(nameOf))),
    sentences: [words.twoFormsAdvice(listOf(forms))],
  }),
  about: "variety",
};

/** Stands that are no risk to each other because their names agree. */
function byVariety(stands: readonly Stand[]): ReadonlyMap<string, readonly Stand[]> {
  const alike = new Map<string, Stand[]>();
  for (const stand of stands) {
    if (stand.variety === null || stand.varietyKey === null || stand.keepApart) continue;
    const list = alike.get(stand.varietyKey);
    if (list) list.push(stand);
    else alike.set(stand.varietyKey, [stand]);
  }
  return alike;
}

/** A figure or flower form is named that the kind does not have; the default rule is followed. */
export interface UnknownChoiceFinding extends FindingBase {
  readonly check: "unknown-choice";
  readonly variety: string;
  /** What is named, by field, as it stands in the plan. */
  readonly named: readonly { readonly field: "figure" | "form"; readonly id: string }[];
}

export const unknownChoiceCheck: Check<UnknownChoiceFinding> = {
  name: "unknown-choice",
  ignoresPlace: true,
  title: words.unknownChoice,
  run: ({ stands }) => {
    const byEntry = new Map<Variety, Stand[]>();
    for (const stand of stands) {
      if (stand.variety === null || unknownOf(stand).length === 0) continue;
      const list = byEntry.get(stand.variety);
      if (list) list.push(stand);
      else byEntry.set(stand.variety, [stand]);
    }
    return [...byEntry].map(([variety, of]): UnknownChoiceFinding => {
      const named = unknownOf(of[0] as Stand);
      return {
        id: findingId("unknown-choice", [variety.id], named.map(({ id }) => id).join(" ")),
        check: "unknown-choice",
        severity: "unknown",
        subjects: of.map(({ id }) => id).sort(compareText),
        variety: variety.id,
        named,
      };
    });
  },
  describe: ({ subjects, named }, { standOf }) => {
    const stand = standOf(subjects[0] ?? "");
    const kind = stand?.kind.name ?? words.thisKind;
    const name = stand?.variety?.name ?? "";
    return {
      title: words.unknownTitle(name === "" ? words.varietyOf(kind) : name, kind),
      sentences: [
        ...named.map(({ field, id }) =>
          field === "figure" ? words.unknownFigure(id, kind) : words.unknownForm(id, kind),
        ),
        words.unknownAdvice,
      ],
    };
  },
  about: "variety",
};

function unknownOf({ variety, kind }: Stand): UnknownChoiceFinding["named"] {
  const { figure, form } = variety ?? {};
  const isFigure = figure === undefined || kind.isolation.some(({ id }) => id === figure);
  const isForm = form === undefined || (kind.forms ?? []).some(({ id }) => id === form);
  return [
    ...(isFigure || figure === undefined ? [] : [{ field: "figure" as const, id: figure }]),
    ...(isForm || form === undefined ? [] : [{ field: "form" as const, id: form }]),
  ];
}
