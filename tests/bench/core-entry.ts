/** What the benchmarks time of the core, bundled as it is shipped. See shipped-core.ts. */
import { isolationPairs } from "../../src/core/checks/isolation.ts";
import { runChecks } from "../../src/core/checks/run-checks.ts";
import { resolveStands } from "../../src/core/checks/stand.ts";
import { cropBook } from "../../src/core/kinds/crop-book.ts";
import { moveObjects } from "../../src/core/edits/move-objects.ts";
import { clearGround } from "../../src/core/remedies/clear-ground.ts";
import { findRemedies } from "../../src/core/remedies/find-remedies.ts";
import { crossingEstimates } from "../../src/core/crossing-share/estimate.ts";
import { shadeOver } from "../../src/core/crossing-share/shade.ts";
import { shadeProblem } from "../../src/core/crossing-share/shade-problem.ts";

export const core = {
  clearGround,
  findRemedies,
  crossingEstimates,
  shadeOver,
  shadeProblem,
  cropBook,
  isolationPairs,
  moveObjects,
  resolveStands,
  runChecks,
};
