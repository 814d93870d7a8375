/** A strict reader of the little XML our files are made of; anything else is an error. */

export interface XmlTag {
  readonly name: string;
  readonly attributes: ReadonlyMap<string, string>;
  /** Names of the elements around it, outermost first. */
  readonly path: readonly string[];
  /** Text directly inside, unescaped. */
  text: string;
}

const ENTITIES: Readonly<Record<string, string>> = {
  "&amp;": "&",
  "&lt;": "<",
  "&gt;": ">",
  "&quot;": '"',
  "&#39;": "'",
};

function unescaped(words: string): string {
  if (/&(?!(?:amp|lt|gt|quot|#39);)/.test(words)) throw new Error(`a bare & in ${words}`);
  return words.replace(/&(?:amp|lt|gt|quot|#39);/g, (entity) => ENTITIES[entity] ?? "");
}

/** Every element in document order; throws where the text is not well formed. */
export function xmlTags(file: string): readonly XmlTag[] {
  const all: XmlTag[] = [];
  const open: XmlTag[] = [];
  const body = file.replace(/^<\?xml version="1.0" encoding="UTF-8"\?>\n/, "");
  const token = /<(\/?)([A-Za-z]+)((?:\s+[A-Za-z:-]+="[^"<]*")*)\s*(\/?)>|([^<]+)/y;
  while (token.lastIndex < body.length) {
    const at = token.lastIndex;
    const match = token.exec(body);
    if (!match) throw new Error(`not well formed: ${body.slice(at, at + 60)}`);
    const [, close, name = "", attributes = "", selfClosed, words] = match;
    const around = open.at(-1);
    if (words !== undefined) {
      if (around) around.text += unescaped(words);
      else if (words.trim() !== "") throw new Error(`text outside: ${words}`);
    } else if (close === "/") {
      if (open.pop()?.name !== name) throw new Error(`</${name}> closes nothing`);
    } else {
      const pairs = [...attributes.matchAll(/([A-Za-z:-]+)="([^"]*)"/g)].map(
        ([, key = "", value = ""]) => [key, unescaped(value)] as const,
      );
      const path = open.map((each) => each.name);
      const tag: XmlTag = { name, attributes: new Map(pairs), path, text: "" };
      if (tag.attributes.size !== pairs.length) throw new Error(`<${name}> says a thing twice`);
      all.push(tag);
      if (selfClosed !== "/") open.push(tag);
    }
  }
  if (open.length > 0) throw new Error(`<${open.at(-1)?.name}> is not closed`);
  return all;
}
