/** Text made safe to stand in XML, in an element or between quotes. */

const SIGNS: ReadonlyMap<string, string> = new Map([
  ["&", "&amp;"],
  ["<", "&lt;"],
  [">", "&gt;"],
  ['"', "&quot;"],
  ["'", "&#39;"],
]);

/** Signs of markup escaped; characters XML 1.0 does not allow taken out. */
export function xmlText(words: string): string {
  return words
    .replace(/\p{Cs}/gu, "")
    .replace(/[\u0000-\u0008\u000B\u000C\u000E-\u001F\u007F-\u009F\uFFFE\uFFFF]/g, "")
    .replace(/[&<>"']/g, (sign) => SIGNS.get(sign) ?? "");
}
