/**
 * Safety cautions of the kinds kept for seed, and that of seed law where seed is for sale or
 * stock seed, which is passed on too: each
 * shown once, with the plantings it is about.
 */
import { cautions } from "../kinds/caution-words.ts";
import type { Check } from "./check.ts";
import { listed } from "./wording.ts";
import { type FindingBase, compareText, findingId } from "./finding.ts";
import * as words from "../words/finding-words.ts";

/** Id of the caution that concerns seed passed on or sold. */
const SEED_LAW = "seed-law";
/** Districts bind seed crops first of all: said where seed is passed on. */
const SEED_DISTRICTS = "seed-districts";

/** A safety caution that applies to stands of this plan. */
export interface SafetyFinding extends FindingBase {
  readonly check: "safety";
  /** Id of a caution in the crop base. */
  readonly caution: string;
}

/** Whether a finding is about what can hurt somebody, not about what the law asks. */
export function canHurt(finding: { readonly check: string }): boolean {
  if (finding.check !== "safety") return false;
  const { caution } = finding as SafetyFinding;
  return caution !== SEED_LAW && caution !== SEED_DISTRICTS;
}

export const safetyCheck: Check<SafetyFinding> = {
  name: "safety",
  ignoresPlace: true,
  title: words.safety,
  run: ({ stands }) => {
    const subjectsOf = new Map<string, string[]>();
    for (const stand of stands) {
      if (stand.planting?.purpose !== "seed") continue;
      const legal = stand.level === "home" ? [] : [SEED_LAW];
      const own = (stand.kind.cautions ?? []).filter(
        (caution) => caution !== SEED_DISTRICTS || stand.level !== "home",
      );
      for (const caution of [...own, ...legal]) {
        const subjects = subjectsOf.get(caution);
        if (subjects) subjects.push(stand.id);
        else subjectsOf.set(caution, [stand.id]);
      }
    }
    return [...subjectsOf].map(([caution, subjects]): SafetyFinding => ({
      id: findingId("safety", [], caution),
      check: "safety",
      severity: "caution",
      subjects: [...subjects].sort(compareText),
      caution,
    }));
  },
  describe: ({ caution: id, subjects }, { nameOf }) => {
    const caution = cautions.find((entry) => entry.id === id);
    return {
      title: caution?.title ?? id,
      sentences: [...(caution ? [caution.text] : []), words.concerns(listed(subjects.map(nameOf)))],
    };
  },
  about: "people",
};
