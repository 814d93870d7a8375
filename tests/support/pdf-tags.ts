/**
 * Our own reading of a PDF's tags, after ISO 32000-1 (14.6 to 14.8) and ISO 14289-1: the tree as
 * poppler prints it, and whether all that is painted lies in marked content.
 */
import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { inflateSync } from "node:zlib";

export interface Tag {
  readonly name: string;
  readonly depth: number;
  /** Words right below it, without those of tags inside. */
  readonly words: string;
  readonly attributes: Readonly<Record<string, string>>;
}

function pdfinfo(bytes: Uint8Array, ...options: readonly string[]): string {
  const folder = mkdtempSync(join(tmpdir(), "tags-"));
  try {
    const path = join(folder, "tagged.pdf");
    writeFileSync(path, bytes);
    return execFileSync("pdfinfo", [...options, path], { encoding: "utf8" });
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

export function infoOf(bytes: Uint8Array): string {
  return pdfinfo(bytes);
}

/** The structure tree in reading order. */
export function tagsOf(bytes: Uint8Array): readonly Tag[] {
  const tags: { name: string; depth: number; words: string; attributes: Record<string, string> }[] =
    [];
  for (const line of pdfinfo(bytes, "-struct-text").split("\n")) {
    const body = line.trim();
    const depth = (line.length - line.trimStart().length) / 2;
    const words = /^"(.*)"$/.exec(body)?.[1];
    const attribute = /^\/(\w+) (.*)$/.exec(body);
    const last = tags.at(-1);
    if (words !== undefined && last) last.words += words;
    else if (attribute && last) last.attributes[attribute[1] ?? ""] = attribute[2] ?? "";
    else if (/^\w/.test(body)) {
      const [name = ""] = body.split(/[ :(]/);
      tags.push({ name, depth, words: "", attributes: {} });
    }
  }
  return tags;
}

/** Operators that leave something on the page (ISO 32000-1, annex A). */
const PAINTS = /^(?:S|s|f|F|f\*|B|B\*|b|b\*|sh|Do|Tj|TJ|'|")$/;

/** What is painted outside of marked content, by page; empty for a PDF in which all is marked. */
export function unmarkedOf(bytes: Uint8Array): readonly string[] {
  const faults: string[] = [];
  const contents = contentsOf(bytes);
  if (contents.length === 0) faults.push("no page was read");
  for (const [index, content] of contents.entries()) {
    let depth = 0;
    const inside: string[] = [];
    for (const token of tokensOf(content)) {
      if (token === "BDC" || token === "BMC") {
        depth += 1;
        inside.push("");
      } else if (token === "EMC") {
        depth -= 1;
        inside.pop();
      } else if (PAINTS.test(token) && depth === 0) faults.push(`stream ${index}: ${token}`);
      if (depth < 0) faults.push(`stream ${index}: EMC too many`);
      if (depth > 1) faults.push(`stream ${index}: marked content in marked content`);
    }
    if (depth !== 0) faults.push(`stream ${index}: not ended`);
  }
  return faults;
}

/** Texts of the pages' contents: streams that draw. */
function contentsOf(bytes: Uint8Array): readonly string[] {
  const file = Buffer.from(bytes);
  const contents: string[] = [];
  let at = file.indexOf("stream\n");
  while (at >= 0) {
    const end = file.indexOf("\nendstream", at);
    const head = file.toString("latin1", Math.max(0, at - 200), at);
    const isDrawing =
      /\/Filter \/FlateDecode\n>>\s*$/.test(head) &&
      !/\/Subtype|\/Length1/.test(head.slice(head.lastIndexOf("obj")));
    if (isDrawing) {
      const text = unpacked(file.subarray(at + 7, end));
      if (text !== null && /\b(?:BDC|re|cm)\b/.test(text.slice(0, 400))) contents.push(text);
    }
    at = file.indexOf("stream\n", end + 10);
  }
  return contents;
}

function unpacked(packed: Buffer): string | null {
  try {
    return inflateSync(packed).toString("latin1");
  } catch {
    return null;
  }
}

/** Words of a content stream without its strings. */
function tokensOf(content: string): readonly string[] {
  return content
    .replace(/<[0-9a-fA-F]*>/g, " ")
    .replace(/\((?:\\.|[^\\)])*\)/g, " ")
    .split(/[\s[\]<>]+/);
}
