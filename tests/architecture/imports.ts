import { parseSync } from "vite";

/**
 * Every module a source text names: imports and re-exports (type-only ones too), `import()` of
 * code and of types, and `new URL("...", import.meta.url)`, which is how workers are loaded.
 */
export interface Imports {
  readonly all: readonly string[];
  /** Without what is fetched only when the code that asks for it runs. */
  readonly atStart: readonly string[];
}

export function importsOf(path: string, text: string): Imports {
  const { program, errors } = parseSync(path, text);
  if (errors.length > 0) throw new Error(`${path}: ${errors[0]?.message}`);
  const found: { readonly name: string; readonly isLater: boolean }[] = [];
  visit(program, (node) => {
    const name = specifierOf(node);
    const isLater = node.type === "ImportExpression" || node.type === "NewExpression";
    if (name !== null) found.push({ name, isLater });
  });
  return {
    all: found.map(({ name }) => name),
    atStart: found.flatMap(({ name, isLater }) => (isLater ? [] : [name])),
  };
}

type Node = Readonly<Record<string, unknown>>;

function visit(value: unknown, look: (node: Node) => void): void {
  if (Array.isArray(value)) {
    for (const item of value) visit(item, look);
    return;
  }
  if (!isRecord(value)) return;
  look(value);
  for (const child of Object.values(value)) visit(child, look);
}

function specifierOf(node: Node): string | null {
  switch (node.type) {
    case "ImportDeclaration":
    case "ExportNamedDeclaration":
    case "ExportAllDeclaration":
    case "ImportExpression":
    case "TSImportType":
      return literal(node.source);
    case "NewExpression": {
      const args = Array.isArray(node.arguments) ? node.arguments : [];
      const isModuleUrl = isRecord(node.callee) && node.callee.name === "URL" && args.length === 2;
      return isModuleUrl ? literal(args[0]) : null;
    }
    default:
      return null;
  }
}

function literal(node: unknown): string | null {
  return isRecord(node) && typeof node.value === "string" ? node.value : null;
}

function isRecord(value: unknown): value is Node {
  return typeof value === "object" && value !== null;
}
