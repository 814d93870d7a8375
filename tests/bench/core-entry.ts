/** What the benchmarks time of the core, bundled as it is shipped. See shipped-core.ts. */
import { isolationPairs } from "../../src/core/checks/isolation.ts";
import { runChecks } from "../../src/core/checks/run-checks.ts";
import { resolveStands } from "../../src/core/checks/stand.ts";
import { cropBook } from "../../src/core/kinds/crop-book.ts";
import { moveObjects } from "../../src/core/edits/move-objects.ts";

export const core = { cropBook, isolationPairs, moveObjects, resolveStands, runChecks };
