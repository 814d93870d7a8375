import { findRemedies } from "../../core/remedies/find-remedies.ts";
import type { Remedy } from "../../core/remedies/remedy.ts";
import { tangleOf, tangleWords } from "../../core/remedies/tangle.ts";
import { describeFinding, severityWord, wordingFor } from "../../core/checks/describe-finding.ts";
import type { Finding } from "../../core/checks/finding.ts";
import { countBySeverity, runChecks } from "../../core/checks/run-checks.ts";
import { planBook } from "../../core/kinds/own-kinds.ts";
import type { Plan } from "../../core/model/plan.ts";
import { layoutOf } from "../../store/plan/plan-store.ts";

/** A way out, and what else it would change. */
export interface ShownRemedy extends Remedy {
  /** Titles of other conflicts it clears. */
  readonly alsoClears: readonly string[];
  /** Titles of what it brings, each with its severity. */
  readonly bringsWords: readonly string[];
}

export interface Remedies {
  /** Title of the finding they are for; null when the plan no longer has it. */
  readonly title: string | null;
  /** Distance the finding requires now, metres. */
  readonly requiredM: number | null;
  readonly remedies: readonly ShownRemedy[];
  /** What can be said of all plantings tangled in conflicts with these; empty for a mere pair. */
  readonly tangle: readonly string[];
}

const NONE: Remedies = { title: null, requiredM: null, remedies: [], tangle: [] };

/** Ways out of an isolation finding of the committed plan, made when asked for. */
export function remediesNow(plan: Plan, layoutId: string, findingId: string): Remedies {
  const layout = layoutOf(plan, layoutId);
  const book = planBook(plan);
  const result = runChecks(plan, layout, book);
  const finding = result.findings.find((entry) => entry.id === findingId);
  if (finding?.check !== "isolation") return NONE;
  const wording = wordingFor(plan, layout, (id) => result.standById.get(id));
  const titleOf = (entry: Finding) => describeFinding(entry, wording).title;
  const byId = new Map(result.findings.map((entry) => [entry.id, entry]));
  const tangle = tangleOf(result, finding);
  return {
    title: titleOf(finding),
    requiredM: finding.requiredM,
    tangle: tangle ? tangleWords(tangle, wording.nameOf) : [],
    remedies: findRemedies({ plan, layout, book, result }, finding).map((remedy) => ({
      ...remedy,
      alsoClears: remedy.clears
        .filter((id) => id !== findingId)
        .flatMap((id) => byId.get(id) ?? [])
        .map(titleOf),
      bringsWords: remedy.brings.map(
        (entry) => `${severityWord[entry.severity]}: ${titleOf(entry)}`,
      ),
    })),
  };
}

/** What a remedy does to the findings: "clears 2, brings 1 caution". */
export function effectWords(remedy: Remedy): string {
  const brought = countBySeverity(remedy.brings);
  const bringing = [
    counted(brought.caution, "caution"),
    counted(brought.unknown, "unknown"),
  ].filter((part) => part !== null);
  const clears = `clears ${remedy.clears.length}`;
  return bringing.length === 0 ? clears : `${clears}, brings ${bringing.join(" and ")}`;
}

function counted(count: number, word: string): string | null {
  if (count === 0) return null;
  return count === 1 ? `1 ${word}` : `${count} ${word}s`;
}
