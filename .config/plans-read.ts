/**
 * The plan of a first visit, read while the site is built: the page opens it before the reader of
 * plans has come. A sample with a fault stops the build.
 */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Plugin } from "vite";

const SAMPLE = join(import.meta.dirname, "../sample-plots/garden-to-solve.json");

export function plansRead(): Plugin {
  return {
    name: "wideberth-plans-read",
    apply: "build",
    enforce: "pre",
    load: {
      filter: { id: /\/app\/first-sample\.ts$/ },
      handler: async () => {
        const { planFromText } = await import("../src/store/keeping/plan-text.ts");
        const read = planFromText(readFileSync(SAMPLE, "utf8"), SAMPLE);
        if (!read.ok) throw new Error(JSON.stringify(read.problems));
        // Text for the engine's reader of JSON, which is quicker than the one of code.
        return `export const firstSample = JSON.parse(${JSON.stringify(JSON.stringify(read))});`;
      },
    },
  };
}
