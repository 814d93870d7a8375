/**
 * The commands that open a dialog, by what they are called, read from the source: those made with
 * `opening(...)` and those whose `run` calls `open` of a dialog. A new one is found by itself.
 */
import { posix } from "node:path";
import { sourceFiles } from "../architecture/source-files.ts";
import { type Node, isNode, nameOf, treeOf, visit } from "../architecture/syntax.ts";

const files = sourceFiles();

interface Found {
  /** `words` of `name: words.newBed`. */
  readonly holder: string;
  readonly name: string;
}

function propertyOf(object: Node, name: string): unknown {
  const properties = Array.isArray(object.properties) ? object.properties : [];
  return properties.find((each: Node) => nameOf(each.key) === name)?.value;
}

function namedBy(object: Node): readonly Found[] {
  const value = propertyOf(object, "name");
  if (!isNode(value) || value.type !== "MemberExpression") return [];
  const [holder, name] = [nameOf(value.object), nameOf(value.property)];
  return holder !== null && name !== null ? [{ holder, name }] : [];
}

function opensDialog(run: unknown): boolean {
  let opens = false;
  visit(run, (node) => {
    const callee = node.type === "CallExpression" ? node.callee : null;
    if (!isNode(callee) || callee.type !== "MemberExpression") return;
    opens ||= nameOf(callee.property) === "open" && /ialog|List$/.test(nameOf(callee.object) ?? "");
  });
  return opens;
}

function commandsIn(tree: Node): readonly Found[] {
  const found: Found[] = [];
  visit(tree, (node) => {
    if (node.type === "CallExpression" && nameOf(node.callee) === "opening") {
      const [, about] = Array.isArray(node.arguments) ? node.arguments : [];
      if (isNode(about)) found.push(...namedBy(about));
    }
    if (node.type === "ObjectExpression" && opensDialog(propertyOf(node, "run"))) {
      found.push(...namedBy(node));
    }
  });
  return found;
}

/** What a words file says under a name, at its top or in an object of words. */
function textOf(tree: Node, name: string): string | null {
  let text: string | null = null;
  visit(tree, (node) => {
    const isNamed = nameOf(node.id) === name || nameOf(node.key) === name;
    const value = node.type === "VariableDeclarator" ? node.init : node.value;
    if (isNamed && isNode(value) && value.type === "Literal" && typeof value.value === "string") {
      text ??= value.value;
    }
  });
  return text;
}

function wordsFileOf(path: string, tree: Node, holder: string): Node | null {
  let found: Node | null = null;
  visit(tree, (node) => {
    if (node.type !== "ImportDeclaration" || !isNode(node.source)) return;
    const specifiers: readonly Node[] = Array.isArray(node.specifiers) ? node.specifiers : [];
    if (!specifiers.some(({ local }) => nameOf(local) === holder)) return;
    const target = posix.join(posix.dirname(path), String(node.source.value));
    const text = files.get(target);
    if (text !== undefined) found = treeOf(target, text);
  });
  return found;
}

/** Names of the commands that open a dialog. */
export function commandsThatOpen(): readonly string[] {
  return [...files]
    .filter(([path]) => /^src\/panel\/[^/]+\/(?:[\w-]+-)?commands\.ts$/.test(path))
    .flatMap(([path, text]) => {
      const tree = treeOf(path, text);
      return commandsIn(tree).map(({ holder, name }) => {
        const words = wordsFileOf(path, tree, holder);
        const said = words && textOf(words, name);
        if (!said) throw new Error(`${path}: ${holder}.${name} is in no words file`);
        return said;
      });
    });
}
