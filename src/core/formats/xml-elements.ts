/**
 * The elements of an XML text (W3C XML 1.0, Fifth Edition), as far as data files use them: no
 * document types, so nothing is fetched and no entity can swell.
 */

export interface XmlElement {
  /** Without a namespace's prefix. */
  readonly name: string;
  readonly attributes: ReadonlyMap<string, string>;
  readonly children: readonly XmlElement[];
  /** Its own text, without that of its children. */
  readonly text: string;
}

export type ReadXml =
  | { readonly ok: true; readonly root: XmlElement }
  | { readonly ok: false; readonly line: number; readonly reason: string };

const MAX_DEPTH = 64;
const TOKEN =
  /<!--[\s\S]*?-->|<\?[\s\S]*?\?>|<!\[CDATA\[(?<data>[\s\S]*?)\]\]>|<\/(?<closed>[^\s<>]+)\s*>|<(?<opened>[^\s/<>!?]+)(?<attributes>(?:\s+[^\s=/<>]+\s*=\s*(?:"[^"<]*"|'[^'<]*'))*)\s*(?<isEmpty>\/?)>|(?<text>[^<]+)/y;
/** One after the other from the first on, never looked for from places in between. */
const ATTRIBUTE = /\s+([^\s=/<>]+)\s*=\s*(?:"([^"<]*)"|'([^'<]*)')/gy;
const NAMED = new Map([
  ["amp", "&"],
  ["lt", "<"],
  ["gt", ">"],
  ["quot", '"'],
  ["apos", "'"],
]);

interface Open {
  readonly tag: string;
  readonly name: string;
  readonly attributes: ReadonlyMap<string, string>;
  readonly children: XmlElement[];
  text: string;
}

export function xmlElements(source: string): ReadXml {
  const text = source.replace(/^\uFEFF/, "");
  const top: Open = { tag: "", name: "", attributes: new Map(), children: [], text: "" };
  const open: Open[] = [top];
  let at = 0;
  const fault = (reason: string): ReadXml => ({
    ok: false,
    line: text.slice(0, at).split("\n").length,
    reason,
  });
  while (at < text.length) {
    TOKEN.lastIndex = at;
    const match = TOKEN.exec(text);
    if (!match) {
      return fault(
        text.startsWith("<!DOCTYPE", at) ? "a document type, which is not read" : "broken XML",
      );
    }
    const { data, closed, opened, attributes = "", isEmpty, text: words } = match.groups ?? {};
    const inner = open.at(-1) ?? top;
    if (words !== undefined) inner.text += plain(words);
    else if (data !== undefined) inner.text += data;
    else if (opened !== undefined) {
      if (open.length > MAX_DEPTH) return fault(`elements within more than ${MAX_DEPTH} others`);
      const element = { ...begun(opened, attributes), children: [], text: "" };
      if (isEmpty === "/") inner.children.push(element);
      else open.push(element);
    } else if (closed !== undefined) {
      if (open.length === 1 || inner.tag !== closed)
        return fault(`</${closed}> that closes nothing`);
      open.pop();
      open.at(-1)?.children.push(inner);
    }
    at = TOKEN.lastIndex;
  }
  const left = open.at(-1) ?? top;
  if (left !== top) return fault(`<${left.tag}> that is never closed`);
  const [root] = top.children;
  return root && top.children.length === 1 ? { ok: true, root } : fault("not one XML document");
}

function begun(tag: string, attributes: string): Pick<Open, "tag" | "name" | "attributes"> {
  const read = [...attributes.matchAll(ATTRIBUTE)].map(
    ([, name = "", double, single]) => [name, plain(double ?? single ?? "")] as const,
  );
  return { tag, name: tag.slice(tag.indexOf(":") + 1), attributes: new Map(read) };
}

/** Text with its character references written out; unknown ones stay as they are. */
function plain(text: string): string {
  return text.replace(/&(#x[0-9a-f]{1,6}|#\d{1,7}|\w+);/gi, (whole, name: string) => {
    if (!name.startsWith("#")) return NAMED.get(name) ?? whole;
    const isHex = /^#x/i.test(name);
    const code = parseInt(name.slice(isHex ? 2 : 1), isHex ? 16 : 10);
    return code > 0 && code <= 0x10_ff_ff ? String.fromCodePoint(code) : whole;
  });
}
