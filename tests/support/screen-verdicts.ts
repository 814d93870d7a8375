/** What the screen holds of a plan's first layout, for judging it beside a practitioner. */
import {
  type CheckedLayout,
  checkLayout,
  wordingOf,
} from "../../src/core/checks/checked-layout.ts";
import { describeFinding, type Finding } from "../../src/core/checks/all-checks.ts";
import { allIsolationPairs } from "../../src/core/checks/isolation.ts";
import type { Layout, Plan } from "../../src/core/model/plan.ts";
import type { Given, GivenFinding } from "./verdict-given.ts";

type Words = Pick<GivenFinding, "title" | "sentences">;
type Describe = (finding: Finding, checked: CheckedLayout) => Words;

/** The words the screen shows. */
export const describeAsShown: Describe = (finding, checked) =>
  describeFinding(finding, wordingOf(checked));

/** For those who ask for verdicts only. */
export const describeNothing: Describe = () => ({ title: "", sentences: [] });

export function givenOf(plan: Plan, describe: Describe): Given {
  const checked = checkLayout(plan, (plan.layouts[0] as Layout).id);
  const { result, book } = checked;
  return {
    pairs: allIsolationPairs(result.stands, book),
    findings: result.findings.map((finding) => ({
      check: finding.check,
      severity: finding.severity,
      subjects: finding.subjects,
      ...(finding.check === "shared-cage" ? { parents: finding.parents } : {}),
      ...describe(finding, checked),
    })),
  };
}
