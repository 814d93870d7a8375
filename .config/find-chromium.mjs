import { findProgram } from "./find-program.mjs";

/** Absolute path of a Chromium to test with: WIDEBERTH_CHROMIUM, else the first one on the PATH. */
export function findChromium() {
  return (
    process.env.WIDEBERTH_CHROMIUM || findProgram("chromium", "chromium-browser", "google-chrome")
  );
}
