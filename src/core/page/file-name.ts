/** Names of files made from a plan, and the revision that tells two states of a plan apart. */
import type { Layout, Plan } from "../model/plan.ts";
import type { PaperName } from "./paper.ts";

/** Without I, L, O and U, which are misread or make words. */
const SIGNS = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";

/**
 * Five signs made from everything the layouts' paper could show: the same plan and layouts give
 * the same signs, any change nearly always others (one in 33 million by chance). FNV-1a, 32 bits.
 */
export function planRevision(plan: Plan, ...layouts: readonly Layout[]): string {
  let hash = 0x811c9dc5;
  for (const char of JSON.stringify({ ...plan, layouts })) {
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
  return fileName(plan, layout.name, `${what} rev ${planRevision(plan, layout)}`, extension);
}

/** `fallow-end-2027-layouts-compared-rev-k7q2m.pdf`. */
export function compareFileName(plan: Plan, layouts: readonly Layout[]): string {
  return fileName(plan, "", `layouts compared rev ${planRevision(plan, ...layouts)}`, "pdf");
}

function fileName({ site, title, season }: Plan, of: string, end: string, extension: string) {
  const start = Array.from(dashed([site.name || title, season.name, of].join(" ")));
  return `${dashed(`${start.slice(0, 72).join("")} ${dashed(end)}`)}.${extension}`;
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
    .replace(/^-|-$/g, "");
}
