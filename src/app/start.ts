/**
 * The first to run, long before the window's program has been received and compiled: meanwhile the
 * browser's storage is opened, which takes its time on a first visit, and asked what the opening
 * of a plan would wait for.
 */
import "./no-code-from-text.ts";
import { askRememberedPlans, rememberedHere } from "../store/keeping/last-plan.ts";

/** The faces of the first picture. Not there by then, the system's stand in, and all is set twice. */
const FIRST_FACES = [
  "1em 'Source Sans 3'",
  "1em 'Source Code Pro'",
  "600 1em 'Source Serif 4'",
  "italic 1em 'Source Serif 4'",
];

// A new tab opens the sample most often; missing, it is asked for and told about by the session.
const sample = rememberedHere() === null ? import("./first-sample.ts") : null;
sample?.catch(() => undefined);
askRememberedPlans(async () => {
  const read = (await sample)?.firstSample;
  return read?.ok ? read.value.id : null;
});
for (const face of FIRST_FACES) document.fonts.load(face).catch(() => undefined);
await import("./main.tsx");
