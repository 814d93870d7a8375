/** Source text as a syntax tree, and walks over it. */
import { parseSync } from "vite";

export type Node = Readonly<Record<string, unknown>>;

export function treeOf(path: string, text: string): Node {
  const { program, errors } = parseSync(path, text);
  if (errors.length > 0) throw new Error(`${path}: ${errors[0]?.message}`);
  if (!isNode(program)) throw new Error(`${path}: no program`);
  return program;
}

/** Looks at every node, parents first; what `look` answers with false is not entered. */
export function visit(value: unknown, look: (node: Node) => boolean | void): void {
  if (Array.isArray(value)) {
    for (const item of value) visit(item, look);
    return;
  }
  if (!isNode(value) || look(value) === false) return;
  for (const child of Object.values(value)) visit(child, look);
}

export function isNode(value: unknown): value is Node {
  return typeof value === "object" && value !== null && !(value instanceof RegExp);
}

/** The texts a node holds: strings, pieces of templates and of JSX, in their order. */
export function textsIn(value: unknown): readonly string[] {
  const texts: string[] = [];
  visit(value, (node) => {
    if (node.type === "JSXText" || node.type === "Literal") {
      if (typeof node.value === "string") texts.push(node.value);
    }
    if (node.type === "TemplateElement" && isNode(node.value)) {
      if (typeof node.value.cooked === "string") texts.push(node.value.cooked);
    }
    // A value that is compared is no text.
    return node.type !== "BinaryExpression";
  });
  return texts.map((text) => text.replace(/\s+/g, " ").trim()).filter((text) => text !== "");
}

/** `name` of a JSX element or attribute, of an identifier or of a property that is not computed. */
export function nameOf(node: unknown): string | null {
  if (!isNode(node)) return null;
  if (typeof node.name === "string") return node.name;
  return null;
}
