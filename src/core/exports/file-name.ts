/** Names of files made from a plan, and the revision that tells two states of a plan apart. */
import type { Layout, Plan } from "../model/plan.ts";
import type { PaperName } from "./paper.ts";

/** Without I, L, O and U, which are misread or make words. */
const SIGNS = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";

/**
 * Five signs made from everything the layout's paper could show: the same plan and layout give
 * the same signs, any change nearly always others (one in 33 million by chance). FNV-1a, 32 bits.
 */
export function planRevision(plan: Plan, layout: Layout): string {
  let hash = 0x811c9dc5;
  for (const char of JSON.stringify({ ...plan, layouts: [layout] })) {
    hash = Math.imul(hash ^ (char.codePointAt(0) ?? 0), 0x01000193);
  }
  return Array.from({ length: 5 }, (_, place) => SIGNS[(hash >>> (place * 5)) & 31]).join("");
}

/**
 * `fallow-end-2027-layout-1-plot-map-rev-k7q2m.pdf`: site, season, layout, what, revision, in
 * letters and digits of any script, joined by dashes.
 */
export function exportFileName(
  plan: Plan,
  layout: Layout,
  what: string,
  extension: string,
): string {
  const start = Array.from(
    dashed([plan.site.name || plan.title, plan.season.name, layout.name].join(" ")),
  );
  const end = dashed(`${what} rev ${planRevision(plan, layout)}`);
  return `${dashed(`${start.slice(0, 72).join("")} ${end}`)}.${extension}`;
}

/** `fallow-end-2027-layout-1-a4-plot-map-rev-k7q2m.pdf`: maps on other paper are other files. */
export function plotMapFileName(plan: Plan, layout: Layout, paper: PaperName): string {
  return exportFileName(plan, layout, `${paper} plot map`, "pdf");
}

function dashed(words: string): string {
  return words
    .normalize("NFC")
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, "-")
    .replace(/^-+|-+$/g, "");
}
