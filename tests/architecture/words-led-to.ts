/** The words a component shows, also where its names lead to a file of words. */
import { posix } from "node:path";
import { type Node, isNode, nameOf, textsIn, treeOf, visit } from "./syntax.ts";
import { sourceFiles } from "./source-files.ts";

const files = sourceFiles();

/** Files of words by the local names a component imports from them. */
export function wordsImported(path: string, tree: Node): ReadonlyMap<string, Node> {
  const found = new Map<string, Node>();
  visit(tree, (node) => {
    if (node.type !== "ImportDeclaration" || !isNode(node.source)) return;
    const target = posix.join(posix.dirname(path), String(node.source.value));
    const text = /words|texts/.test(target) ? files.get(target) : undefined;
    if (text === undefined || !Array.isArray(node.specifiers)) return;
    const words = treeOf(target, text);
    for (const specifier of node.specifiers) {
      const [local, name] = [nameOf(specifier.local), nameOf(specifier.imported)];
      // All of the file under one name: `import * as texts`.
      if (local !== null && name === null) found.set(local, words);
      const declared = name === null ? null : declarationOf(words, name);
      if (local !== null && declared) found.set(local, declared);
    }
  });
  return found;
}

/** What stands under an exported name. */
function declarationOf(tree: Node, name: string): Node | null {
  let found: Node | null = null;
  visit(tree, (node) => {
    const isDeclared =
      node.type === "FunctionDeclaration" ||
      node.type === "VariableDeclarator" ||
      node.type === "Property";
    if (isDeclared && (nameOf(node.id) === name || nameOf(node.key) === name)) found ??= node;
  });
  return found;
}

/** Texts of an element: its own, and those its names lead to in words files. */
export function wordsOf(node: Node, words: ReadonlyMap<string, Node>): readonly string[] {
  const led: string[] = [];
  visit(node, (inner) => {
    if (inner.type === "MemberExpression") {
      const holder = words.get(nameOf(inner.object) ?? "");
      const property = holder && declarationOf(holder, nameOf(inner.property) ?? "");
      if (property) led.push(...textsIn(property.value ?? property.init));
      return false;
    }
    const declared = inner.type === "Identifier" ? words.get(nameOf(inner) ?? "") : undefined;
    if (declared) led.push(...textsIn(declared.init ?? declared.body));
    return true;
  });
  return [...textsIn(node), ...led];
}
