import { parseSync } from "vite";

/**
 * Every module a source text names: imports and re-exports (type-only ones too), `import()` of
 * code and of types, and `new URL("...", import.meta.url)`, which is how workers are loaded.
 */
export function importsOf(path: string, text: string): readonly string[] {
  const { program, errors } = parseSync(path, text);
  if (errors.length > 0) throw new Error(`${path}: ${errors[0]?.message}`);
  const found: string[] = [];
  visit(program, found);
  return found;
}

function visit(value: unknown, found: string[]): void {
  if (Array.isArray(value)) {
    for (const item of value) visit(item, found);
    return;
  }
  if (!isRecord(value)) return;
  const specifier = specifierOf(value);
  if (specifier !== null) found.push(specifier);
  for (const child of Object.values(value)) visit(child, found);
}

function specifierOf(node: Readonly<Record<string, unknown>>): string | null {
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

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null;
}
