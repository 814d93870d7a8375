/**
 * Texts that read as words in a module that is no words file. Ids of several words (`weakest first`)
 * are told from texts by standing in a type or in a list `as const`; what is compared, thrown or
 * asked of a list is read by nobody.
 */
import { type Node, isNode, nameOf, visit } from "./syntax.ts";

/** What keys and browsers are called in their own interfaces. */
const NAMES: ReadonlySet<string> = new Set(
  "Alt AltGraph Backspace CapsLock ContextMenu Control Delete End Enter Escape Files Home Meta Shift Space Tab".split(
    " ",
  ),
);

/** A sentence, three words in a row, one word as on a button, or the dots of a command. */
const READS =
  /^[A-Z][a-z]+,? [a-z]|[a-z]{2}[,;:.]? [a-z]{2,} [a-z]{2}|^[A-Z][a-z]{2,}$|\p{L} \.\.\.$/u;
/** A word beside a gap: `${count} beds`. */
const BESIDE_GAP = /(?:^|\s)[A-Za-z]{3,}(?:[\s.,:;]|$)/;
/** Keys of what is stored and of nodes: one word and the rest of an id. */
const KEY = /^(?:group|grid|undo|ways-out)[ :]?$|^wideberth/;
/** Selectors, markup, paths and drawing instructions. */
const CODE = /[[\]{}<>=]|^M-?\d|\dpx$/;

/** Properties that are read: one word of them is a text as well. */
const SAID_KEYS: ReadonlySet<string> = new Set(
  "caption heading hint label legend one other placeholder reason title".split(" "),
);

/** Where nothing is said: imports, types, comparisons, errors for ourselves. */
function isUnsaid(node: Node): boolean {
  if (typeof node.type !== "string") return false;
  if (
    /^(?:Import|ExportAll|BinaryExpression|ThrowStatement|TSLiteral|TSType|TSInterface)/.test(
      node.type,
    )
  ) {
    return true;
  }
  if (node.type === "NewExpression") return /Error|Exception|Set/.test(nameOf(node.callee) ?? "");
  if (node.type === "JSXAttribute")
    return /^(?:className|d|id|type)$/.test(nameOf(node.name) ?? "");
  if (node.type !== "CallExpression" || !isNode(node.callee)) return false;
  return /^(?:has|includes|startsWith|querySelector|stored)$/.test(
    nameOf(node.callee.property ?? node.callee) ?? "",
  );
}

/** Ids: what stands in types and in lists that types are made of. */
export function idsIn(tree: Node): readonly string[] {
  const ids: string[] = [];
  const take = (value: unknown) =>
    visit(value, (node) => {
      if (node.type === "Literal" && typeof node.value === "string") ids.push(node.value);
    });
  visit(tree, (node) => {
    if (node.type === "TSLiteralType") take(node.literal);
    const isList =
      node.type === "TSAsExpression" &&
      isNode(node.expression) &&
      node.expression.type === "ArrayExpression";
    if (isList && isNode(node.expression)) {
      const { elements } = node.expression;
      for (const each of Array.isArray(elements) ? elements : []) {
        if (isNode(each) && each.type === "Literal") take(each);
      }
    }
  });
  return ids;
}

/** @param ids texts that are ids wherever they stand */
export function wordsInModule(tree: Node, ids: ReadonlySet<string>): readonly string[] {
  const found: string[] = [];
  visit(tree, (node) => {
    if (isUnsaid(node)) return false;
    if (node.type === "Property" && SAID_KEYS.has(nameOf(node.key) ?? "") && isNode(node.value)) {
      const { type, value } = node.value;
      if (type === "Literal" && typeof value === "string" && /^[a-z]{3,}$/.test(value)) {
        found.push(value);
      }
    }
    if (node.type === "Literal" && typeof node.value === "string") {
      const said = node.value.trim();
      if (
        !ids.has(said) &&
        !NAMES.has(said) &&
        !CODE.test(said) &&
        !KEY.test(said) &&
        READS.test(said)
      ) {
        found.push(said);
      }
    }
    if (node.type === "TemplateLiteral" && Array.isArray(node.quasis) && node.quasis.length > 1) {
      for (const { value } of node.quasis) {
        const said = (value as { readonly cooked: string }).cooked.trim();
        const isSaid = READS.test(said) || (said !== "" && BESIDE_GAP.test(said));
        if (isSaid && !CODE.test(said) && !KEY.test(said)) found.push(said);
      }
    }
    return true;
  });
  return found;
}
