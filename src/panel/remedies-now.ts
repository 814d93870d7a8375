import { findRemedies } from "../core/arrange/find-remedies.ts";
import type { Remedy } from "../core/arrange/remedy.ts";
import { describeFinding, wordingFor } from "../core/checks/describe-finding.ts";
import { countBySeverity, runChecks } from "../core/checks/run-checks.ts";
import { planBook } from "../core/crops/own-kinds.ts";
import type { Plan } from "../core/model/plan.ts";
import { layoutOf } from "../store/plan-store.ts";

export interface Remedies {
  /** Title of the finding they are for; null when the plan no longer has it. */
  readonly title: string | null;
  readonly remedies: readonly Remedy[];
}

/** Ways out of an isolation finding of the committed plan, made when asked for. */
export function remediesNow(plan: Plan, layoutId: string, findingId: string): Remedies {
  const layout = layoutOf(plan, layoutId);
  const book = planBook(plan);
  const result = runChecks(plan, layout, book);
  const finding = result.findings.find((entry) => entry.id === findingId);
  if (finding?.check !== "isolation") return { title: null, remedies: [] };
  const wording = wordingFor(plan, layout, (id) => result.standById.get(id));
  return {
    title: describeFinding(finding, wording).title,
    remedies: findRemedies({ plan, layout, book, result }, finding),
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
